//! `stavewright backup`.

use std::path::PathBuf;

use super::{StoreArgs, failure};
use crate::cli::outcome::Outcome;
use crate::failure::Failure;
use crate::screen;

/// Copy the store with shelf, moulds and orders into a new file.
///
/// The copy is whole even while another program writes. It is a store itself: name it with --store to
/// look into it, or put it in the place of the other to go back to it.
#[derive(Debug, clap::Args)]
#[command(after_help = "Example:
  stavewright backup workshop-2026-10-18.db")]
pub(crate) struct Args {
    /// The file to write; it must not be there yet.
    out: PathBuf,

    #[command(flatten)]
    store: StoreArgs,
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let Some(store) = args.store.existing()?.filter(|_| args.store.store.exists()) else {
        let what =
            format!("{}: there is no store here, so there is nothing to copy", args.store.store.display());
        return Err(Failure::plain(what, "Name the store with --store."));
    };
    if args.out.exists() {
        let what = format!("{}: this file is there already, and is left as it is", args.out.display());
        return Err(Failure::plain(what, "Name a file that is not there yet."));
    }
    store.copy_to(&args.out).map_err(|fault| failure(&args.out, &fault))?;
    screen::print(&format!("Wrote {}\n", args.out.display()))?;
    Ok(Outcome::Fine)
}
