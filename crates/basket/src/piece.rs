//! What the program calls a thing in the basket. Findings, solids, drawings and the page that shows them
//! all name a piece in this one way, so that what is said can be pointed at.

use crate::message::Message;
use crate::term::Term;

/// Which vessel of a basket.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Of {
    /// The basket itself.
    #[default]
    Body,
    /// Its lid.
    Lid,
}

impl Of {
    /// Its name in data.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Body => "body",
            Self::Lid => "lid",
        }
    }
}

/// A part of the floor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FloorPart {
    /// The wooden disc.
    Disc,
    /// The groove in its edge.
    Groove,
    /// The screw that holds it on the mould.
    Screw,
    /// The plug in the screw's hole.
    Plug,
}

/// A thing in the basket, or all things of one sort. Numbers count from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Piece {
    /// The whole basket.
    Whole,
    /// The mould, while the basket is on it.
    Mould,
    /// A part of the mould, where it is made in several.
    MouldPart(u32),
    /// The band that holds the staves against the mould.
    Band,
    /// A part of the floor.
    Floor(FloorPart),
    /// All uprights.
    Uprights,
    /// One upright.
    Upright(u32),
    /// All weaving.
    Weaving,
    /// One course.
    Course(u32),
    /// A strand of a weaver in a row.
    Row {
        /// Number of the row.
        row: u32,
        /// Number of the weaver within its course.
        weaver: u32,
        /// Number of the strand within the row.
        strand: u32,
    },
    /// The rim with all that belongs to it.
    Rim,
    /// The hoop outside the uprights.
    OuterHoop,
    /// The hoop inside the uprights.
    InnerHoop,
    /// All clamps on the hoops.
    Clamps,
    /// A clamp on the hoops.
    Clamp(u32),
    /// All pins.
    Pins,
    /// The pin through one upright.
    Pin {
        /// Number of the upright.
        upright: u32,
    },
    /// All of the filler.
    Fillers,
    /// A piece of filler.
    Filler(u32),
    /// All of the lashing.
    Lashing,
    /// A wrap of the lashing.
    Wrap(u32),
    /// A tail of the lashing.
    Tail(u32),
    /// Both ears.
    Ears,
    /// One ear.
    Ear(u32),
    /// The ledge on which a lid lies.
    Ledge,
    /// The collar that holds a lid in its place.
    Collar,
    /// What one lifts a lid by.
    Lift,
    /// The loops on which a lid turns.
    Hinge,
    /// The loop that shuts a lid.
    Latch,
    /// The peg over which it goes.
    Peg,
    /// The handle.
    Handle,
    /// Both knobs.
    Knobs,
    /// One knob.
    Knob(u32),
    /// All rivets through ears and handle.
    Rivets,
    /// A rivet through ear and handle.
    Rivet(u32),
    /// All washers.
    Washers,
    /// A washer under a rivet or between ear and handle.
    Washer(u32),
}

impl Piece {
    /// What sort of thing it is, as a word of data, such as `outer-hoop`.
    pub fn kind(self) -> &'static str {
        self.term().trim_start_matches("piece-")
    }

    /// All things of its sort: of a stave all staves, of a course or row all weaving.
    #[must_use]
    pub const fn sort(self) -> Self {
        match self {
            Self::MouldPart(_) => Self::Mould,
            Self::Upright(_) => Self::Uprights,
            Self::Course(_) | Self::Row { .. } => Self::Weaving,
            Self::Clamp(_) => Self::Clamps,
            Self::Pin { .. } => Self::Pins,
            Self::Filler(_) => Self::Fillers,
            Self::Wrap(_) | Self::Tail(_) => Self::Lashing,
            Self::Ear(_) => Self::Ears,
            Self::Knob(_) => Self::Knobs,
            Self::Rivet(_) => Self::Rivets,
            Self::Washer(_) => Self::Washers,
            whole => whole,
        }
    }

    /// The numbers that tell it from its like, in the order in which they are said: none where there is
    /// but one.
    pub fn numbers(self) -> Vec<u32> {
        match self {
            Self::MouldPart(number)
            | Self::Upright(number)
            | Self::Course(number)
            | Self::Clamp(number)
            | Self::Filler(number)
            | Self::Wrap(number)
            | Self::Tail(number)
            | Self::Ear(number)
            | Self::Knob(number)
            | Self::Rivet(number)
            | Self::Washer(number)
            | Self::Pin { upright: number } => vec![number],
            Self::Row { row, weaver, strand } => vec![row, weaver, strand],
            _ => Vec::new(),
        }
    }

    /// Its name with its number, where it has one.
    pub fn name(self) -> Message {
        let name = Message::new(self.term());
        match self.numbers().first() {
            Some(number) => name.with("number", *number),
            None => name,
        }
    }
}

impl Term for Piece {
    fn term(self) -> &'static str {
        match self {
            Self::Whole => "piece-whole",
            Self::Mould => "piece-mould",
            Self::MouldPart(_) => "piece-mould-part",
            Self::Band => "piece-band",
            Self::Floor(FloorPart::Disc) => "piece-base",
            Self::Floor(FloorPart::Groove) => "piece-groove",
            Self::Floor(FloorPart::Screw) => "piece-screw",
            Self::Floor(FloorPart::Plug) => "piece-plug",
            Self::Uprights => "piece-staves",
            Self::Upright(_) => "piece-stave",
            Self::Weaving => "piece-weaving",
            Self::Course(_) => "piece-course",
            Self::Row { .. } => "piece-row",
            Self::Rim => "piece-rim",
            Self::OuterHoop => "piece-outer-hoop",
            Self::InnerHoop => "piece-inner-hoop",
            Self::Clamps => "piece-clamps",
            Self::Clamp(_) => "piece-clamp",
            Self::Pins => "piece-pins",
            Self::Pin { .. } => "piece-pin",
            Self::Fillers => "piece-fillers",
            Self::Filler(_) => "piece-filler",
            Self::Lashing => "piece-lashing",
            Self::Wrap(_) => "piece-wrap",
            Self::Tail(_) => "piece-tail",
            Self::Ears => "piece-ears",
            Self::Ear(_) => "piece-ear",
            Self::Ledge => "piece-ledge",
            Self::Collar => "piece-collar",
            Self::Lift => "piece-lift",
            Self::Hinge => "piece-hinge",
            Self::Latch => "piece-latch",
            Self::Peg => "piece-peg",
            Self::Handle => "piece-handle",
            Self::Knobs => "piece-knobs",
            Self::Knob(_) => "piece-knob",
            Self::Rivets => "piece-rivets",
            Self::Rivet(_) => "piece-rivet",
            Self::Washers => "piece-washers",
            Self::Washer(_) => "piece-washer",
        }
    }
}
