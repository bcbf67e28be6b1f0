//! `stavewright completions`.

use clap::Command;
use clap_complete::Shell;

use super::outcome::Outcome;
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

pub(super) fn run(args: &Args, command: &mut Command) -> Result<Outcome, Failure> {
    let mut script = Vec::new();
    clap_complete::generate(args.shell, command, "stavewright", &mut script);
    screen::print(&String::from_utf8_lossy(&script))?;
    Ok(Outcome::Fine)
}
