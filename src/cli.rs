//! The commands: what is asked on the command line, and how each answer ends.
//!
//! Nothing here prints or exits by itself. [`run`] writes to the handles it is given and says what
//! is to happen next, so a test can ask everything that a terminal can.

mod curve;
mod handout;
mod hundred_grams;
mod levers;
mod list;
mod manual;
mod open;
mod proof;
mod reckon;
mod run;
mod table;
mod target;
mod walk_round;

use std::ffi::{OsStr, OsString};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use clap::{CommandFactory, Parser, Subcommand};

use crate::plot::save::SaveError;
use crate::quantity::catalogue::nearest_of;

const EXAMPLES: &str = "\
Examples:
  heftwise sandpiper.toml
      Opens the window with that build.
  heftwise reckon mean-impact-force mass=\"3 kg\" impact-speed=\"36 km/h\" stop-time=\"10 ms\"
      Finds one quantity from the numbers given: 3.00 kN.

A command ends with 0 when it found what was asked, 1 when it cannot be found or a limit fails,
2 when the command was not understood.";

/// One build, every rule: your machine's own numbers held against the physics of soft ground.
#[derive(Debug, Parser)]
#[command(name = "heftwise", version, about, after_help = EXAMPLES)]
#[command(args_conflicts_with_subcommands = true, max_term_width = 100)]
struct Cli {
    /// The build to open in the window.
    build: Option<PathBuf>,
    /// Read the lessons of this folder in place of those inside the program.
    #[arg(long, value_name = "FOLDER")]
    lessons: Option<PathBuf>,
    #[command(subcommand)]
    command: Option<Command>,
}

#[derive(Debug, Subcommand)]
enum Command {
    Reckon(reckon::Reckon),
    Target(target::Target),
    Levers(levers::Levers),
    Curve(curve::Curve),
    HundredGrams(hundred_grams::HundredGrams),
    Run(run::Run),
    WalkRound(walk_round::WalkRound),
    Proof(proof::Proof),
    Handout(handout::Handout),
    List(list::List),
    Manual(manual::Manual),
}

/// What is to happen when the arguments have been seen to.
#[derive(Debug, PartialEq, Eq)]
pub enum Next {
    /// Open the window.
    Window {
        /// The build to open, if one was named.
        build: Option<PathBuf>,
        /// The folder of lessons to read in place of those inside the program.
        lessons: Option<PathBuf>,
    },
    /// End with this exit code: 0 found, 1 not found or a limit fails, 2 not understood.
    Exit(u8),
}

/// Why a command ends without success; everything said to the reader goes through here.
#[derive(Debug)]
enum Stop {
    /// The command was not understood; how to write it.
    Usage(String),
    /// What was asked cannot be had, or something is wrong with it.
    Failed(String),
    /// The output cannot be written.
    Output(io::Error),
}

impl From<SaveError> for Stop {
    fn from(error: SaveError) -> Self {
        match error {
            SaveError::Ending(_) => Self::Usage(error.to_string()),
            _ => Self::Failed(error.to_string()),
        }
    }
}

impl From<io::Error> for Stop {
    fn from(error: io::Error) -> Self {
        Self::Output(error)
    }
}

/// Does what `args` ask, the program's own name first; answers go to `out`, all else to `err`.
pub fn run<A>(args: A, out: &mut dyn Write, err: &mut dyn Write) -> Next
where
    A: IntoIterator<Item: Into<OsString>>,
{
    let args: Vec<OsString> = args.into_iter().map(Into::into).collect();
    if let Some(stop) = args.get(1).and_then(|word| misspelt(word)) {
        return Next::Exit(told(&stop, err));
    }
    let cli = match Cli::try_parse_from(args) {
        Ok(cli) => cli,
        Err(error) => return Next::Exit(told_by_clap(&error, out, err)),
    };
    let ending = match cli.command {
        None => return Next::Window { build: cli.build, lessons: cli.lessons },
        Some(Command::Reckon(command)) => command.run(out),
        Some(Command::Target(command)) => command.run(out),
        Some(Command::Levers(command)) => command.run(out),
        Some(Command::Curve(command)) => command.run(out),
        Some(Command::HundredGrams(command)) => command.run(out),
        Some(Command::Run(command)) => command.run(out),
        Some(Command::WalkRound(command)) => command.run(out),
        Some(Command::Proof(command)) => command.run(out),
        Some(Command::Handout(command)) => command.run(out),
        Some(Command::List(command)) => command.run(out),
        Some(Command::Manual(command)) => command.run(Cli::command(), out),
    };
    let ending = ending.and_then(|()| Ok(out.flush()?));
    Next::Exit(ending.map_or_else(|stop| told(&stop, err), |()| 0))
}

/// A first word that is neither a command nor a file, but near to a command.
fn misspelt(word: &OsStr) -> Option<Stop> {
    let command = Cli::command();
    let known: Vec<&str> = command.get_subcommands().map(clap::Command::get_name).collect();
    let text = word.to_str()?;
    let may_be_meant = text.starts_with('-') || text.contains(['.', '/', '\\']);
    if may_be_meant || text == "help" || known.contains(&text) || Path::new(text).exists() {
        return None;
    }
    let near = nearest_of(text, known)?;
    Some(Stop::Usage(format!(
        "There is no command or file called \"{text}\". Did you mean \"{near}\"?"
    )))
}

/// Help and version are answers; every other word of clap's is about a mistake.
fn told_by_clap(error: &clap::Error, out: &mut dyn Write, err: &mut dyn Write) -> u8 {
    let words = error.render();
    let told = if error.use_stderr() { write!(err, "{words}") } else { write!(out, "{words}") };
    // When nobody listens, the exit code still says it.
    drop(told);
    u8::try_from(error.exit_code()).unwrap_or(2)
}

fn told(stop: &Stop, err: &mut dyn Write) -> u8 {
    let (words, code) = match stop {
        // Whoever read the output has read enough.
        Stop::Output(error) if error.kind() == io::ErrorKind::BrokenPipe => return 0,
        Stop::Output(error) => (format!("The answer cannot be written: {error}."), 1),
        Stop::Failed(words) => (words.clone(), 1),
        Stop::Usage(words) => (words.clone(), 2),
    };
    let _ = writeln!(err, "{words}");
    code
}

/// Writes a JSON value and a line end.
fn write_json(out: &mut dyn Write, value: &serde_json::Value) -> Result<(), Stop> {
    writeln!(out, "{value:#}")?;
    Ok(())
}

/// "did you mean ...?", when a known word is near.
fn did_you_mean<'a>(word: &str, known: impl IntoIterator<Item = &'a str>) -> String {
    nearest_of(word, known)
        .map_or_else(String::new, |nearest| format!(" Did you mean \"{nearest}\"?"))
}
