//! What is installed with the program: the desktop entry, the icon, the manual, the completions and
//! the list of changes.

use heftwise::app::widget::picture::{Picture, read};
use heftwise::cli::{Next, run};

use super::ours;

fn told(arguments: &[&str]) -> String {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let next = run(std::iter::once(&"heftwise").chain(arguments), &mut out, &mut err);
    assert_eq!(next, Next::Exit(0), "{}", String::from_utf8_lossy(&err));
    String::from_utf8(out).unwrap()
}

/// The commands, as the help lists them.
fn commands() -> Vec<String> {
    let help = told(&["--help"]);
    let list = help.split_once("Commands:\n").unwrap().1.split_once("\n\n").unwrap().0;
    let names = list.lines().filter_map(|line| {
        let name = line.strip_prefix("  ").filter(|line| !line.starts_with(' '))?;
        name.split(' ').next().map(str::to_owned)
    });
    names.filter(|name| name != "help").collect()
}

#[test]
fn the_manual_has_a_page_for_each_command() {
    let commands = commands();
    assert!(commands.len() > 8 && commands.iter().any(|name| name == "walk-round"), "{commands:?}");
    let whole = told(&["manual"]);
    assert!(whole.contains(".TH heftwise 1"), "{whole}");
    for name in &commands {
        assert!(whole.contains(&name.replace('-', "\\-")), "{name} is not in the manual");
        let page = told(&["manual", name]);
        assert!(page.contains(&format!(".TH heftwise-{name} 1")), "{page}");
        assert!(page.contains("Examples:"), "{name}: {page}");
    }
}

#[test]
fn shells_complete_each_command() {
    for shell in ["bash", "zsh", "fish", "powershell", "elvish"] {
        let script = told(&["manual", "--completions", shell]);
        for name in commands() {
            assert!(script.contains(&name), "{shell} does not know {name}");
        }
    }
}

#[test]
fn a_page_that_is_not_there_names_the_nearest() {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let next = run(["heftwise", "manual", "rekon"], &mut out, &mut err);
    let said = String::from_utf8(err).unwrap();
    assert_eq!(next, Next::Exit(2), "{said}");
    assert!(said.contains("Did you mean \"reckon\"?"), "{said}");
}

/// The keys that the Desktop Entry Specification 1.5 (freedesktop.org) requires of an application,
/// and the form of its lists.
#[test]
fn the_desktop_entry_is_one() {
    let entry = ours("assets/desktop/heftwise.desktop");
    assert!(entry.starts_with("[Desktop Entry]\n"), "{entry}");
    let of = |key: &str| {
        let line = entry.lines().find_map(|line| line.strip_prefix(&format!("{key}=")));
        line.unwrap_or_else(|| panic!("no {key}")).to_owned()
    };
    assert_eq!((of("Type").as_str(), of("Name").as_str()), ("Application", "Heftwise"));
    assert!(of("Exec").starts_with("heftwise "), "{entry}");
    assert_eq!(of("Icon"), "heftwise");
    for list in ["Categories", "Keywords"] {
        assert!(of(list).ends_with(';'), "{list} has to end with a semicolon");
    }
    let icon = ours("assets/desktop/heftwise.svg");
    let Picture::Drawing { width, .. } = read("heftwise.svg", icon.as_bytes()) else {
        panic!("the icon cannot be drawn")
    };
    assert!((width - 128.0).abs() < f32::EPSILON, "{width}");
}

#[test]
fn the_newest_change_is_of_this_version() {
    let changes = ours("assets/desktop/CHANGELOG.md");
    let first = changes.lines().find(|line| line.starts_with("## ")).unwrap();
    assert!(first.contains(env!("CARGO_PKG_VERSION")), "{first}");
    assert_eq!(told(&["--version"]).trim(), format!("heftwise {}", env!("CARGO_PKG_VERSION")));
}
