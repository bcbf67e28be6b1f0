//! The staves: count, width, taper, length and the gaps between them at every height.

mod chain;
mod explain;
mod foot;
mod formulas;
mod groups;
mod length;
mod needs;
mod paths;
mod rank;
mod round;
mod rung;
mod solve;
mod taper;
mod usual;
mod wall;
mod wider;

use crate::measure::Length;
use crate::message::Message;
use crate::pattern::{OvalSide, Spacing};
use crate::stock::{Kind, Material, PutUp};
use crate::uprights::Uprights;
pub use foot::{Bend, BendPoint, UNSEEN, USUAL_BEND_LIMIT};
pub use formulas::{bend_strain, count_on, touch_width};
pub use groups::Group;
pub use length::{LengthParts, USUAL_TRIM};
pub use needs::Needs;
pub use taper::{LEAST_USUAL_GAP, Taper, USUAL_START, least_foot};
pub use usual::{SPARE_SHARE, SPARES_CONFIDENCE, USUAL_GAP};

/// The staves as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Staves {
    /// How they stand round the wall.
    pub uprights: Uprights,
    /// How many more to shape.
    pub spares: u32,
    /// The stock they are cut from.
    pub stock: Material,
    /// Where they are spaced evenly.
    pub spacing: Spacing,
    /// The groups of those that are cut alike; one where all are.
    pub groups: Vec<Group>,
    /// Which face looks out.
    pub oval_side: OvalSide,
    /// The straight taper toward the foot.
    pub taper: Taper,
    /// Length to cut of the longest.
    pub length: Length,
    /// What the length is made of.
    pub length_parts: LengthParts,
    /// Width and gap at even steps from the base to the rim.
    pub gaps: Vec<GapAt>,
    /// Gap at the rim, on the mould's own girth, as a maker tapes it.
    pub gap_rim: Length,
    /// Gap at the rim on the wall itself, which stands off the mould.
    pub gap_rim_wall: Length,
    /// The narrowest gap on the way up.
    pub narrowest: GapAt,
    /// The widest gap on the way up.
    pub widest: GapAt,
    /// The gap that was aimed at.
    pub gap_wanted: Length,
    /// Width at which the feet of neighbours touch at the bottom of the groove: `2 r tan(π/n)`.
    pub foot_touch: Length,
    /// How each bends from the groove up onto the wall.
    pub bend: Bend,
    /// The best counts and stocks; the first is used. They stand best first, except that a count
    /// which the pattern fixes stands before those that would be better.
    pub candidates: Vec<Candidate>,
}

/// Width and gap of the staves at one height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GapAt {
    /// Distance above the mould's base, along the mould.
    pub along: Length,
    /// Height above the mould's base.
    pub height: Length,
    /// Width of a stave with the practical taper.
    pub width: Length,
    /// Width that would give the wanted gap here.
    pub ideal_width: Length,
    /// Gap to the neighbour.
    pub gap: Length,
}

/// One way to stave the basket.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// How many staves.
    pub count: u32,
    /// From which stock.
    pub stock: Material,
    /// Gap at the rim.
    pub gap_rim: Length,
    /// Narrowest gap on the way up.
    pub gap_narrowest: Length,
    /// Widest gap on the way up.
    pub gap_widest: Length,
    /// Width at the foot.
    pub foot: Length,
    /// Penalty by which candidates are ranked; 0 would be perfect.
    pub penalty: f64,
    /// What speaks for or against it, most weighty first.
    pub reasons: Vec<Message>,
}

/// What is taken where there is no stock at all: 1/4 in flat oval reed (sizes from memory).
fn assumed_stock() -> Material {
    let put_up = PutUp { unit: "coil".to_owned(), length: None, strand: None };
    let reed =
        Material::bare("flat oval reed 1/4 in", Kind::FlatOvalReed, Length::inches(0.25), Length::mm(2.0));
    Material { put_up, ..reed }
}
