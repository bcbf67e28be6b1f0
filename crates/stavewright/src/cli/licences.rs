//! `stavewright licences`.

use super::outcome::Outcome;
use crate::failure::Failure;
use crate::screen;

/// All parts with versions and licences; a test holds the list against the lock files.
const PARTS: &str = include_str!("../../licences.txt");

/// Print the licences of the program and of all parts that it is built from.
///
/// Stavewright itself may be used under the MIT licence or the Apache licence 2.0, as you like. The
/// texts of all licences lie beside the program in the folder `licences` of its archive.
#[derive(Debug, clap::Args)]
#[command(after_help = "Example:
  stavewright licences | grep Apache")]
pub(super) struct Args {}

pub(super) fn run(_args: &Args) -> Result<Outcome, Failure> {
    let mut said = String::new();
    for line in PARTS.lines() {
        said.push_str(&screen::wrap(line, "", "    "));
        said.push('\n');
    }
    screen::print(&said)?;
    Ok(Outcome::Fine)
}
