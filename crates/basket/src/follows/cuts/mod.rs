//! The cut list, in making order.

mod base;
mod cut;
mod handle;
mod lid;

pub use cut::{Cut, CutStock};

use crate::basket::Basket;
use crate::colour::Colour;
use crate::fittings::{Ears, PinSet, Pins};
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::parts::construction::Construction;
use crate::parts::edge::Edge;
use crate::parts::lashing::{Filler, Lashing};
use crate::parts::rim::Hoop;
use crate::parts::staves::{Group, Staves};
use crate::parts::vessel::Vessel;
use crate::parts::weave::{Course, WeaverAmount};
use crate::pattern::{HoopWay, Way};
use crate::piece::Piece;
use crate::stock::Material;

/// Strands of weaver to have ready beyond those counted (common practice: one in ten).
const SPARE_STRANDS: u32 = 10;

/// What to cut, in making order: the basket, ears and handle, then the lid.
pub fn list(basket: &Basket) -> Vec<Cut> {
    let mut cuts = vessel_cuts(&basket.body, &basket.staves_left_out());
    cuts.extend(basket.ears.as_ref().map(|set| ears(set, basket.body.uprights().thickness)));
    cuts.extend(basket.handle.iter().flat_map(handle::cuts));
    cuts.extend(basket.lid.iter().flat_map(|lid| lid::cuts(lid, vessel_cuts(&lid.vessel, &[]))));
    cuts
}

/// The materials of a cut list whose measures are the maker's own, each once.
pub fn measured(cuts: &[Cut]) -> Vec<&Material> {
    let mut measured: Vec<&Material> = Vec::new();
    for material in cuts.iter().filter_map(|cut| cut.stock.material()).filter(|own| own.is_measured()) {
        if measured.iter().all(|known| known.name != material.name) {
            measured.push(material);
        }
    }
    measured
}

fn vessel_cuts(vessel: &Vessel, left_out: &[u32]) -> Vec<Cut> {
    let mut cuts = vessel.construction.cuts(left_out);
    cuts.extend(vessel.weave.courses.iter().zip(1..).flat_map(|(course, number)| weavers(course, number)));
    cuts.extend(vessel.edge.cuts());
    cuts
}

impl Construction {
    /// Without the uprights of these numbers.
    fn cuts(&self, left_out: &[u32]) -> Vec<Cut> {
        match self {
            Self::Moulded { base, staves } => {
                let mut cuts = vec![base::disc(base), base::plug(base)];
                cuts.extend(staves.groups.iter().map(|group| stave(staves, group, left_out)));
                cuts
            }
        }
    }
}

impl Edge {
    fn cuts(&self) -> Vec<Cut> {
        let Self::Rim { rim, filler: over_tips, lashing: binding, pins: through } = self;
        let mut cuts = vec![
            hoop(Piece::OuterHoop, rim.hoops, &rim.outer),
            hoop(Piece::InnerHoop, rim.hoops, &rim.inner),
        ];
        cuts.extend(over_tips.iter().flat_map(filler));
        cuts.extend(binding.iter().map(lashing));
        cuts.extend(pins(through));
        cuts
    }
}

/// The line of staves that are cut alike.
fn stave(staves: &Staves, group: &Group, left_out: &[u32]) -> Cut {
    let numbers: Vec<u32> =
        group.numbers.iter().copied().filter(|number| !left_out.contains(number)).collect();
    let purpose = if staves.groups.len() == 1 {
        Message::new("cut-stave-purpose")
    } else {
        Message::new("cut-stave-purpose-group")
            .with("group", group.name.as_str())
            .with("staves", Value::runs(&numbers))
    };
    let narrower = group.width < staves.stock.width;
    let shape = match (narrower, staves.taper.is_of(group.width)) {
        (true, true) => "cut-stave-shape-narrower",
        (true, false) => "cut-stave-shape-narrower-full",
        (false, true) => "cut-stave-shape",
        (false, false) => "cut-stave-shape-full",
    };
    let above_foot = staves.length_parts.groove + staves.length_parts.turn + staves.taper.from;
    let shape = Message::new(shape)
        .with("width", group.width)
        .with("foot", staves.taper.foot)
        .with("above_foot", above_foot);
    Cut::new(Piece::Uprights, CutStock::Material(staves.stock.clone()), numbers.len() as u32, purpose)
        .spares(group.spares)
        .length(group.length)
        .width(group.width)
        .shape(shape)
}

/// A line for each material and colour of a course.
fn weavers(course: &Course, number: u32) -> Vec<Cut> {
    let mut lines: Vec<(&WeaverAmount, &Colour, u32, Length)> = Vec::new();
    for weaver in &course.weavers {
        for strand in &weaver.strands {
            let Some(colour) = weaver.colours.get(strand.colour as usize) else { continue };
            let whole = match course.way {
                Way::Continuous => weaver.strand.min(weaver.cut).max(strand.cut),
                Way::RowByRow => strand.cut,
            };
            let same = |line: &&mut (&WeaverAmount, &Colour, u32, Length)| {
                line.0.material.name == weaver.material.name && line.1.name == colour.name
            };
            match lines.iter_mut().find(same) {
                Some(line) => (line.2, line.3) = (line.2 + 1, line.3.max(whole)),
                None => lines.push((weaver, colour, 1, whole)),
            }
        }
    }
    if lines.is_empty() {
        let undyed = course.weavers.first().and_then(|weaver| Some((weaver, weaver.colours.first()?)));
        lines.extend(undyed.map(|(weaver, colour)| (weaver, colour, 0, Length::ZERO)));
    }
    lines.into_iter().map(|line| strands(course, number, line)).collect()
}

fn strands(
    course: &Course,
    number: u32,
    (weaver, colour, count, length): (&WeaverAmount, &Colour, u32, Length),
) -> Cut {
    let purpose = Message::new("cut-weaver-purpose").with("course", number).with("rows", course.rows);
    let cut = Cut::new(Piece::Course(number), CutStock::Material(weaver.material.clone()), count, purpose)
        .spares(count.div_ceil(SPARE_STRANDS))
        .length(length)
        .width(weaver.material.width);
    let dyed = *colour != Colour::natural();
    Cut { colour: dyed.then(|| colour.clone()), ..cut }
}

/// A strip to cut, or a ring to buy.
fn hoop(piece: Piece, way: HoopWay, hoop: &Hoop) -> Cut {
    let is_outer = piece == Piece::OuterHoop;
    let purpose = Message::new(if is_outer { "cut-outer-hoop-purpose" } else { "cut-inner-hoop-purpose" });
    let shape = match (way, is_outer) {
        (HoopWay::Bent, _) => "cut-hoop-shape",
        (HoopWay::Rings, true) => "cut-hoop-shape-ring-outer",
        (HoopWay::Rings, false) => "cut-hoop-shape-ring-inner",
        (HoopWay::Bought, true) => "cut-hoop-shape-bought-outer",
        (HoopWay::Bought, false) => "cut-hoop-shape-bought-inner",
    };
    let shape = Message::new(shape).with("lap", hoop.scarf.lap).with("across", hoop.across);
    if way == HoopWay::Bought {
        return Cut::new(piece, CutStock::Ring(hoop.stock.clone()), 1, purpose)
            .width(hoop.stock.width)
            .shape(shape);
    }
    Cut::new(piece, CutStock::Material(hoop.stock.clone()), 1, purpose)
        .length(hoop.cut)
        .width(hoop.stock.width)
        .shape(shape)
}

/// Pieces of one length share a line.
fn filler(filler: &Filler) -> Vec<Cut> {
    let mut lengths: Vec<(Length, u32)> = Vec::new();
    for piece in &filler.pieces {
        match lengths.iter_mut().find(|(length, _)| (*length - piece.length).abs() < Length::mm(0.5)) {
            Some((_, count)) => *count += 1,
            None => lengths.push((piece.length, 1)),
        }
    }
    let line = |(length, count)| {
        Cut::new(
            Piece::Fillers,
            CutStock::Material(filler.stock.clone()),
            count,
            Message::new("cut-filler-purpose"),
        )
        .length(length)
        .width(filler.stock.width)
    };
    lengths.into_iter().map(line).collect()
}

/// The length to lay out already holds tails and a spare; it is shared by the strands.
fn lashing(lashing: &Lashing) -> Cut {
    let each = (lashing.length / f64::from(lashing.strands.max(1))).min(lashing.strand);
    let purpose = Message::new("cut-lashing-purpose").with("wraps", lashing.wraps);
    Cut::new(Piece::Lashing, CutStock::Material(lashing.weaver.clone()), lashing.strands, purpose)
        .length(each)
        .total(lashing.length)
        .width(lashing.weaver.width)
}

/// The pins of the ears, which are longer, stand apart.
fn pins(pins: &Pins) -> Vec<Cut> {
    let others = pin(&pins.others, "cut-pin-purpose");
    let purpose = if pins.of_handle { "cut-pin-end-purpose" } else { "cut-pin-ear-purpose" };
    std::iter::once(others).chain(pins.ears.as_ref().map(|set| pin(set, purpose))).collect()
}

fn pin(set: &PinSet, purpose: &'static str) -> Cut {
    let (stock, purpose) = (CutStock::Material(set.stock.clone()), Message::new(purpose));
    let cut = Cut::new(Piece::Pins, stock, set.count(), purpose)
        .spares(set.spares)
        .width(set.stock.width)
        .shape(Message::new("cut-pin-shape").with("drill", set.drill).with("needed", set.length_needed));
    Cut { length: Some(set.length), ..cut }
}

/// Ears over staves of this thickness.
fn ears(ears: &Ears, stave: Length) -> Cut {
    let shoulder = ears.shoulder(stave);
    let shape = match (shoulder > Length::ZERO, ears.replace_staves()) {
        (_, true) => "cut-ear-shape-stave",
        (true, false) => "cut-ear-shape-shaved",
        (false, false) => "cut-ear-shape",
    };
    let shape = Message::new(shape)
        .with("thickness", ears.thickness)
        .with("tail", ears.tail)
        .with("blade", ears.blade(stave))
        .with("tip", ears.tip(stave))
        .with("shoulder", shoulder)
        .with("tail_width", ears.tail_width);
    let stock = match &ears.wood {
        Some(wood) => CutStock::Wood(wood.clone()),
        None => CutStock::Ear(ears.material),
    };
    Cut::new(Piece::Ears, stock, 2, Message::new("cut-ear-purpose"))
        .length(ears.length)
        .width(ears.width)
        .shape(shape)
}
