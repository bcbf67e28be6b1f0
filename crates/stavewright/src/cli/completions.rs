//! `stavewright completions`.

use clap::CommandFactory;
use clap_complete::Shell;

use super::{Cli, Outcome};
use crate::failure::Failure;
use crate::screen;

/// Print what makes a shell complete stavewright's commands.
#[derive(Debug, clap::Args)]
#[command(after_help = "Example:
  stavewright completions bash > ~/.local/share/bash-completion/completions/stavewright")]
pub(super) struct Args {
    /// The shell.
    shell: Shell,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let mut script = Vec::new();
    clap_complete::generate(args.shell, &mut Cli::command(), "stavewright", &mut script);
    screen::print(&String::from_utf8_lossy(&script))?;
    Ok(Outcome::Fine)
}
