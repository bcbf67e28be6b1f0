//! Booking what was bought or cut.

use planning::buying::Purchase;
use workshop::{Fault, Kind, Store};

use super::{StoreArgs, failure};
use crate::failure::Failure;
use crate::planned::{self, Booking};
use crate::screen;

/// Puts all that is on the list on the shelf.
pub(super) fn bought(args: &StoreArgs, note: &str, purchases: &[Purchase]) -> Result<(), Failure> {
    let mut store = args.open()?;
    let faulty = |fault: Fault| failure(&args.store, &fault);
    let booking = planned::bought(&store.items().map_err(faulty)?, purchases);
    book(&mut store, (Kind::Bought, note), &booking).map_err(faulty)?
}

/// Takes the strands that were opened from the shelf, and puts back the ends that are worth keeping.
pub(super) fn cut(args: &StoreArgs, note: &str, purchases: &[Purchase]) -> Result<(), Failure> {
    let mut store = args.open()?;
    let faulty = |fault: Fault| failure(&args.store, &fault);
    let booking = planned::cut(&store.items().map_err(faulty)?, purchases);
    let Some(booking) = booking else {
        return Err(Failure::plain(
            "not everything lies on the shelf that is to be cut, so nothing was booked",
            "Buy first, and book it with `stavewright buy FILE --bought`.",
        ));
    };
    book(&mut store, (Kind::Cut, note), &booking).map_err(faulty)?
}

fn book(
    store: &mut Store,
    (kind, note): (Kind, &str),
    Booking { items, changes }: &Booking,
) -> Result<Result<(), Failure>, Fault> {
    store.put_items(items)?;
    let id = store.book(kind, note, changes)?;
    let said = format!("Booked as movement {id}; `stavewright shelf undo` takes it back.\n");
    Ok(screen::print(&said).map_err(Failure::from))
}
