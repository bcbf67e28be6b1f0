//! Leaves and bookings as the page gets them.

use sheets::workshop::{Leaf, Section, Strip, Table};

use crate::bench::api::{
    ItemText, LeafPiece, LeafSection, LeafStrip, LeafTable, PlanBooking, PlanLeaf, ShelfChange,
};
use crate::bench::shelf;
use crate::planned::Booking;

/// A sheet as a leaf of the page.
pub(crate) fn leaf(id: &str, leaf: Leaf) -> PlanLeaf {
    PlanLeaf {
        id: id.to_owned(),
        name: leaf.name,
        sections: leaf.sections.into_iter().map(section).collect(),
    }
}

fn section(section: Section) -> LeafSection {
    let table = |Table { head, figures, rows, .. }: Table| LeafTable { head, figures, rows };
    LeafSection {
        heading: section.heading,
        notes: section.notes,
        table: section.table.map(table),
        strips: section.strips.into_iter().map(strip).collect(),
        after: section.after,
    }
}

fn strip(strip: Strip) -> LeafStrip {
    let pieces = strip.pieces.into_iter().map(|(length_mm, label)| LeafPiece { length_mm, label });
    LeafStrip { name: strip.name, length_mm: strip.length_mm, pieces: pieces.collect() }
}

/// What is booked, as the page sends it when the maker says so; none where nothing changes.
pub(super) fn booking(booking: Booking) -> Option<PlanBooking> {
    let items: Vec<ItemText> = booking.items.into_iter().map(shelf::text_of).collect();
    let changes: Vec<ShelfChange> = booking
        .changes
        .into_iter()
        .map(|change| ShelfChange { item: change.item, count: change.count })
        .collect();
    (!changes.is_empty()).then_some(PlanBooking { items, changes })
}
