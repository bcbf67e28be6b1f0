//! `stavewright worker`: no command for makers, and in no list of commands; the bench starts it.

use super::outcome::Outcome;
use crate::bench;
use crate::failure::Failure;

/// Works things out for the bench, which speaks to it over standard input and output.
pub(crate) fn run() -> Result<Outcome, Failure> {
    bench::work().map_err(|error| {
        Failure::plain(
            format!("nobody gives this worker orders: {error}"),
            "`stavewright bench` starts its own.",
        )
    })?;
    Ok(Outcome::Fine)
}
