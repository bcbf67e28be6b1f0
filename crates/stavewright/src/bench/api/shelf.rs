//! The shelf: what lies there, the moulds, and what came and went.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The shelf as it stands.
#[derive(Clone, Debug, Default, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Shelf {
    /// Whether there is one; it is made when the maker asks for it.
    pub(crate) there: bool,
    /// What lies there and was looked for, by material and name; the first of it where that is much.
    pub(crate) items: Vec<ShelfItem>,
    /// How many items were found.
    pub(crate) found: u32,
    /// How many lie there.
    pub(crate) all: u32,
    /// Colours of what lies there.
    pub(crate) colours: Vec<String>,
    /// The moulds, by name.
    pub(crate) moulds: Vec<ShelfMould>,
    /// Quotes and orders that are still to be made, the first first that needs its material first.
    pub(crate) orders: Vec<ShelfOrder>,
    /// What came and went, the last first.
    pub(crate) movements: Vec<ShelfMovement>,
}

/// Something on the shelf.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct ShelfItem {
    /// What the maker says of it, as it is typed: read again, its measures are exactly the same.
    #[serde(flatten)]
    pub(crate) text: ItemText,
    /// Its material in the reader's language.
    pub(crate) material_label: String,
    /// Its colour in the reader's language.
    pub(crate) colour_label: String,
    /// What it is bought in, in the reader's language.
    pub(crate) unit_label: String,
    /// Length of one strand to read, in both units; none for pieces used whole.
    pub(crate) length_said: Option<String>,
    /// Width to read, as the maker measured it.
    pub(crate) width_said: Option<String>,
    /// Thickness to read, as the maker measured it.
    pub(crate) thickness_said: Option<String>,
    /// Whether it is time to buy.
    pub(crate) low: bool,
}

/// A mould.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct ShelfMould {
    /// What it is called.
    pub(crate) name: String,
    /// Where it is kept.
    pub(crate) place: String,
    /// Pattern files that fit it, separated by commas.
    pub(crate) patterns: String,
    /// Anything else.
    pub(crate) note: String,
    /// Who has it; none where it is in its place.
    pub(crate) lent_to: Option<String>,
    /// The day on which it is due back, as `2026-10-18`.
    pub(crate) due: Option<String>,
}

/// A quote or an order that is still to be made.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct ShelfOrder {
    /// What it is called.
    pub(crate) name: String,
    /// Its pattern file.
    pub(crate) pattern: String,
    /// How many baskets.
    pub(crate) count: u32,
    /// The day on which its material is needed, as `2026-11-02`.
    pub(crate) needed: Option<String>,
}

/// What kind of movement it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum MovementKind {
    /// Bought, and put on the shelf.
    Bought,
    /// Cut up, with what goes back on the shelf.
    Cut,
    /// Counted anew.
    Counted,
    /// Taken off the shelf.
    Removed,
}

/// How many of an item came (above zero) or went.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct ShelfChange {
    /// The item's name.
    pub(crate) item: String,
    /// How many.
    #[cfg_attr(test, ts(type = "number"))]
    pub(crate) count: i64,
}

/// One movement.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct ShelfMovement {
    /// Its number.
    #[cfg_attr(test, ts(type = "number"))]
    pub(crate) id: i64,
    /// When, in UTC, as `2026-10-18T14:05:00Z`.
    pub(crate) at: String,
    /// What kind.
    pub(crate) kind: MovementKind,
    /// For what, in the maker's words.
    pub(crate) note: String,
    /// Whether it was taken back.
    pub(crate) undone: bool,
    /// The mould that was taken off the shelf.
    pub(crate) mould: Option<String>,
    /// What changed.
    pub(crate) changes: Vec<ShelfChange>,
}

/// What a maker says of something on the shelf. Measures and price are text as they are typed; empty where
/// nothing is said.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct ItemText {
    /// What it is called.
    pub(crate) name: String,
    /// Its material, by the name that a pattern uses.
    pub(crate) material: String,
    /// Its colour; natural if empty.
    pub(crate) colour: String,
    /// How many there are; heeded for something new alone.
    pub(crate) count: u32,
    /// Length of one strand, such as `12 ft`.
    pub(crate) length: String,
    /// Width as measured.
    pub(crate) width: String,
    /// Thickness as measured.
    pub(crate) thickness: String,
    /// What it is bought in.
    pub(crate) unit: String,
    /// Strands, or pieces, in one such unit.
    pub(crate) holds: u32,
    /// What one such unit costs, such as `12.50`.
    pub(crate) price: String,
    /// Where it is bought.
    pub(crate) bought_from: String,
    /// Below this many it is time to buy.
    pub(crate) reorder: u32,
    /// Anything else.
    pub(crate) note: String,
}

/// Something to do with the shelf; the answer is the shelf as it stands afterwards.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(tag = "do", rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) enum ShelfAct {
    /// Make a shelf where there is none.
    Begin,
    /// Put something on the shelf, or change what is said of it.
    Put {
        /// What is said of it.
        item: ItemText,
        /// Whether it must be new: then nothing of that name is changed.
        new: bool,
    },
    /// Book what came or went.
    Book {
        /// What kind of movement it is.
        kind: MovementKind,
        /// For what.
        note: String,
        /// What is new on the shelf by it; of what is there already, nothing is changed.
        items: Vec<ItemText>,
        /// What changes.
        changes: Vec<ShelfChange>,
    },
    /// Count anew.
    Count {
        /// The item.
        item: String,
        /// So many are there.
        count: u32,
    },
    /// Take something off the shelf, with all there is of it.
    Remove {
        /// The item.
        item: String,
    },
    /// Take a mould off the shelf.
    RemoveMould {
        /// The mould.
        mould: String,
    },
    /// Take a movement back.
    Undo {
        /// Its number.
        #[cfg_attr(test, ts(type = "number"))]
        movement: i64,
    },
    /// Write a mould down, or change what is said of it.
    Mould {
        /// What it is called.
        name: String,
        /// Where it is kept.
        place: String,
        /// Pattern files that fit it, separated by commas.
        patterns: String,
        /// Anything else.
        note: String,
    },
    /// Lend a mould.
    Lend {
        /// The mould.
        mould: String,
        /// To whom.
        to: String,
        /// The day on which it is due back, as `2026-10-18`; empty if none.
        due: String,
    },
    /// A mould is back.
    Back {
        /// The mould.
        mould: String,
    },
    /// Take a table in: new items as it says, and of the others their counts.
    TakeIn {
        /// The table as CSV.
        csv: String,
    },
}
