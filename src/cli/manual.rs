//! `heftwise manual`: the manual page, and what a shell completes.

use std::io::Write;

use clap::{Args, Command};
use clap_complete::{Shell, generate};
use clap_mangen::Man;

use super::{Stop, did_you_mean};

/// Writes the manual page of the program or of a command, or what a shell completes
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise manual > heftwise.1
      The manual page, in the format of man; \"man ./heftwise.1\" shows it.
  heftwise manual reckon > heftwise-reckon.1
      The page of one command.
  heftwise manual --completions bash > ~/.local/share/bash-completion/completions/heftwise
      From the next terminal on, the Tab key completes commands and options.")]
pub(super) struct Manual {
    /// The command to write the page of; without it, the page of the program.
    command: Option<String>,
    /// Write what this shell completes instead.
    #[arg(long, value_name = "SHELL", conflicts_with = "command")]
    completions: Option<Shell>,
}

impl Manual {
    /// Writes what is asked for about `program`, the description of the whole command line.
    pub(super) fn run(&self, mut program: Command, out: &mut dyn Write) -> Result<(), Stop> {
        // In memory first: the generator takes a full pipe for a fault of its own.
        let mut text = Vec::new();
        match (self.completions, &self.command) {
            (Some(shell), _) => generate(shell, &mut program, "heftwise", &mut text),
            (None, None) => Man::new(program).render(&mut text)?,
            (None, Some(name)) => Man::new(command(&program, name)?).render(&mut text)?,
        }
        Ok(out.write_all(&text)?)
    }
}

/// A command by its name, called as it is typed.
fn command(program: &Command, name: &str) -> Result<Command, Stop> {
    let known = || program.get_subcommands().map(Command::get_name);
    let found = program.find_subcommand(name).ok_or_else(|| {
        let near = did_you_mean(name, known());
        let all = known().collect::<Vec<_>>().join(", ");
        Stop::Usage(format!("There is no command called \"{name}\".{near} The commands: {all}."))
    })?;
    let (typed, page) = (format!("heftwise {name}"), format!("heftwise-{name}"));
    Ok(found.clone().bin_name(typed).display_name(page).version(env!("CARGO_PKG_VERSION")))
}
