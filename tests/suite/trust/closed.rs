//! Nothing is sent out and nothing is fetched: no library that could speak over a network is in the
//! program, and no command opens a socket to one.

use std::path::Path;
use std::process::{Command, Stdio};

use super::ours;

/// Libraries that speak over a network, by what they do there. `src/` itself may not name
/// `std::net` (`tests/suite/imports.rs`).
const SPEAK: &[&str] = &[
    // HTTP and the like.
    "attohttpc",
    "awc",
    "actix-web",
    "axum",
    "curl",
    "curl-sys",
    "h2",
    "hyper",
    "hyper-util",
    "isahc",
    "minreq",
    "reqwest",
    "rouille",
    "surf",
    "tiny_http",
    "tonic",
    "ureq",
    "warp",
    "websocket",
    "tungstenite",
    "tokio-tungstenite",
    "lettre",
    "ssh2",
    "russh",
    "suppaftp",
    "git2",
    "libgit2-sys",
    // Encryption on the way, name look-up, other transports.
    "native-tls",
    "openssl",
    "openssl-sys",
    "rustls",
    "schannel",
    "security-framework",
    "quinn",
    "s2n-quic",
    "hickory-resolver",
    "trust-dns-resolver",
    "dns-lookup",
    "libp2p",
    "zmq",
    "tokio-rustls",
    "socket2",
    "smoltcp",
    // Telling tales.
    "sentry",
    "opentelemetry",
    "posthog-rs",
    "self_update",
];

/// Libraries that could open a network socket and are here for sockets of this machine alone: the
/// system's dialogs and its light or dark theme are asked for over D-Bus, a Unix socket, and the
/// window talks to the display over another.
const LOCAL: &[(&str, &[&str])] =
    &[("async-net", &["ashpd"]), ("ashpd", &["rfd"]), ("zbus", &["ashpd", "mundy"])];

fn packages() -> Vec<(String, Vec<String>)> {
    #[derive(serde::Deserialize)]
    struct Lock {
        package: Vec<Package>,
    }
    #[derive(serde::Deserialize)]
    struct Package {
        name: String,
        #[serde(default)]
        dependencies: Vec<String>,
    }
    let lock: Lock = toml::from_str(&ours("Cargo.lock")).unwrap();
    let bare = |name: &String| name.split(' ').next().unwrap_or(name).to_owned();
    lock.package
        .into_iter()
        .map(|package| (package.name, package.dependencies.iter().map(bare).collect()))
        .collect()
}

#[test]
fn no_library_speaks_over_a_network() {
    let packages = packages();
    assert!(packages.len() > 100, "the lock file was not read");
    let loud: Vec<_> = packages.iter().filter(|(name, _)| SPEAK.contains(&name.as_str())).collect();
    assert!(loud.is_empty(), "{loud:?}");
    for (local, users) in LOCAL {
        for (name, needs) in &packages {
            let known = users.contains(&name.as_str());
            assert!(known || !needs.iter().any(|need| need == local), "{name} uses {local}");
        }
    }
}

/// The runtime beside the window has its network part left out.
#[test]
fn the_runtime_has_no_network() {
    let tree = Command::new(env!("CARGO"))
        .args([
            "tree",
            "--offline",
            "--edges",
            "features,no-dev",
            "--invert",
            "tokio",
            "--depth",
            "1",
        ])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap();
    let tree = String::from_utf8(tree.stdout).unwrap();
    assert!(tree.contains("tokio feature \"rt\""), "{tree}");
    for part in ["\"net\"", "\"full\"", "\"process\""] {
        assert!(!tree.contains(&format!("tokio feature {part}")), "{tree}");
    }
}

/// Every call of a session of commands that opens a socket, as `strace` sees them: none.
/// Without `strace`, or where it may not look, the test says so and looks at nothing.
#[cfg(target_os = "linux")]
#[test]
fn commands_open_no_socket() {
    let folder = tempfile::tempdir().unwrap();
    let log = folder.path().join("calls");
    let traced = |program: &Path, arguments: &[&str]| {
        Command::new("strace")
            .args(["-f", "-qq", "-e", "trace=socket,connect,execve", "-o"])
            .arg(&log)
            .arg(program)
            .args(arguments)
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .status()
            .is_ok_and(|status| status.code().is_some_and(|code| code < 2))
            .then(|| std::fs::read_to_string(&log).unwrap())
    };
    if traced(Path::new("true"), &[]).is_none_or(|calls| !calls.contains("execve")) {
        eprintln!("not looked at: strace is not here, or may not look");
        return;
    }
    let program = assert_cmd::cargo::cargo_bin("heftwise");
    let page = folder.path().join("page.html");
    let session: [&[&str]; 9] = [
        &["--help"],
        &["list", "lessons"],
        &["reckon", "weight", "mass=6.4 kg", "--working"],
        &["walk-round", "sandpiper"],
        &["levers", "low-end-pressure", "--build", "sandpiper"],
        &["hundred-grams", "sandpiper"],
        &["curve", "ground-pressure", "--against", "track-width", "--build", "sandpiper"],
        &["handout", "pressure", "-o", page.to_str().unwrap()],
        &["proof"],
    ];
    for arguments in session {
        let calls = traced(&program, arguments).unwrap_or_default();
        assert!(calls.contains("execve"), "{arguments:?} was not run: {calls}");
        assert!(
            !calls.contains("socket(") && !calls.contains("connect("),
            "{arguments:?}: {calls}"
        );
    }
    assert!(page.exists(), "the handout was not written");
}
