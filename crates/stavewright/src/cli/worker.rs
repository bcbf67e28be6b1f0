//! `stavewright worker`: not for makers; the bench starts it.

use super::outcome::Outcome;
use crate::bench;
use crate::failure::Failure;

/// Works things out for the bench, which speaks to it over standard input and output.
#[derive(Debug, clap::Args)]
#[command(hide = true)]
pub(super) struct Args {}

pub(super) fn run(_: &Args) -> Result<Outcome, Failure> {
    bench::work().map_err(|error| {
        Failure::plain(
            format!("nobody gives this worker orders: {error}"),
            "`stavewright bench` starts its own.",
        )
    })?;
    Ok(Outcome::Fine)
}
