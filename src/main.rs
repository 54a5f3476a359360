//! Heftwise on the command line: arguments, then the window or a command.

use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use heftwise::cli::{self, Next};

fn main() -> ExitCode {
    let next = cli::run(std::env::args_os(), &mut io::stdout().lock(), &mut io::stderr().lock());
    match next {
        Next::Exit(code) => ExitCode::from(code),
        Next::Window { build, lessons } => open_window(build, lessons.as_deref()),
    }
}

fn open_window(build: Option<PathBuf>, lessons: Option<&Path>) -> ExitCode {
    match heftwise::app::run(build, lessons) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            // If stderr is gone too, there is nobody left to tell.
            let _ = writeln!(io::stderr(), "heftwise: the window cannot open: {error}");
            ExitCode::FAILURE
        }
    }
}
