//! The cut list, in making order.

use serde::Serialize;

use crate::assemble::Basket;
use crate::colour::Colour;
use crate::fittings::Handle;
use crate::measure::Length;
use crate::message::Term;
use crate::message::{Message, Value};
use crate::pattern::{Pattern, Way};
use crate::rim::Hoop;
use crate::weave::{Course, WeaverAmount};

/// The pieces of a cut list, in making order: identifiers of their names in the message files.
pub const PIECES: &[&str] = &[
    "cut-base",
    "cut-plug",
    "cut-stave",
    "cut-weaver",
    "cut-outer-hoop",
    "cut-inner-hoop",
    "cut-filler",
    "cut-lashing",
    "cut-pin",
    "cut-ear",
    "cut-bail",
    "cut-rivet",
    "cut-washer",
];

/// Strands of weaver to have ready beyond those counted (common practice: one in ten).
const SPARE_STRANDS: u32 = 10;

/// One line of the cut list.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cut {
    /// Which piece: identifier of its name in the message files, such as `cut-stave`.
    pub piece: &'static str,
    /// The material: its name, or a word of the message files where no stock is meant.
    pub material: Value,
    /// How many for the basket.
    pub count: u32,
    /// How many more to have ready.
    pub spares: u32,
    /// Length of one piece.
    #[serde(rename = "length_mm")]
    pub length: Option<Length>,
    /// Width of one piece (diameter of a disc or rod).
    #[serde(rename = "width_mm")]
    pub width: Option<Length>,
    /// How to shape it, such as a taper.
    pub shape: Option<Message>,
    /// Length of all pieces with spares.
    #[serde(rename = "total_mm")]
    pub total: Option<Length>,
    /// What it is for.
    pub purpose: Message,
}

impl Cut {
    fn new(piece: &'static str, material: impl Into<Value>, count: u32, purpose: Message) -> Self {
        Self {
            piece,
            material: material.into(),
            count,
            spares: 0,
            length: None,
            width: None,
            shape: None,
            total: None,
            purpose,
        }
    }
    fn spares(mut self, spares: u32) -> Self {
        self.spares = spares;
        self
    }
    /// Length of one piece; the total follows from counts, so spares come first.
    fn length(mut self, length: Length) -> Self {
        self.length = Some(length);
        self.total = Some(length * f64::from(self.count.saturating_add(self.spares)));
        self
    }
    fn total(mut self, total: Length) -> Self {
        self.total = Some(total);
        self
    }
    fn width(mut self, width: Length) -> Self {
        self.width = Some(width);
        self
    }
    fn shape(mut self, shape: Message) -> Self {
        self.shape = Some(shape);
        self
    }
}

/// What to cut, in making order.
pub fn list(pattern: &Pattern, basket: &Basket) -> Vec<Cut> {
    let mut cuts = vec![base(basket), plug(basket), staves(pattern, basket)];
    cuts.extend(basket.weave.courses.iter().zip(1..).flat_map(|(course, number)| weavers(course, number)));
    cuts.push(hoop("cut-outer-hoop", "cut-outer-hoop-purpose", &basket.rim.outer));
    cuts.push(hoop("cut-inner-hoop", "cut-inner-hoop-purpose", &basket.rim.inner));
    cuts.extend(filler(basket));
    cuts.push(lashing(basket));
    cuts.push(pins(basket));
    cuts.extend(ears(basket));
    cuts.extend(handle(basket));
    cuts
}

fn base(basket: &Basket) -> Cut {
    let base = &basket.base;
    let shape = Message::new("cut-base-shape")
        .with("thickness", base.thickness)
        .with("depth", base.groove_depth)
        .with("width", base.groove_width)
        .with("hole", base.screw_hole);
    Cut::new("cut-base", &base.wood, 1, Message::new("cut-base-purpose")).width(base.diameter).shape(shape)
}

fn plug(basket: &Basket) -> Cut {
    let base = &basket.base;
    let purpose = Message::new("cut-plug-purpose").with("hole", base.screw_hole);
    let mut cut = Cut::new("cut-plug", &base.wood, 1, purpose).width(base.plug_diameter);
    cut.length = Some(base.thickness);
    cut
}

fn staves(pattern: &Pattern, basket: &Basket) -> Cut {
    let staves = &basket.staves;
    let narrower = pattern.staves.width.is_some_and(|width| width < staves.stock.width);
    let shape = if narrower { "cut-stave-shape-narrower" } else { "cut-stave-shape" };
    let above_foot = staves.length_parts.groove + staves.length_parts.turn + staves.taper.from;
    let shape = Message::new(shape)
        .with("width", staves.width)
        .with("foot", staves.taper.foot)
        .with("above_foot", above_foot);
    Cut::new("cut-stave", &staves.stock, staves.count, Message::new("cut-stave-purpose"))
        .spares(staves.spares)
        .length(staves.length)
        .width(staves.width)
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
    let cut = Cut::new("cut-weaver", &weaver.material, count, purpose)
        .spares(count.div_ceil(SPARE_STRANDS))
        .length(length)
        .width(weaver.material.width);
    let dyed = *colour != Colour::natural();
    if dyed { cut.shape(Message::new("cut-weaver-colour").with("colour", colour)) } else { cut }
}

fn hoop(piece: &'static str, purpose: &'static str, hoop: &Hoop) -> Cut {
    Cut::new(piece, &hoop.stock, 1, Message::new(purpose))
        .length(hoop.cut)
        .width(hoop.stock.width)
        .shape(Message::new("cut-hoop-shape").with("lap", hoop.scarf.lap))
}

/// Pieces of one length share a line.
fn filler(basket: &Basket) -> Vec<Cut> {
    let Some(filler) = &basket.filler else { return Vec::new() };
    let mut lengths: Vec<(Length, u32)> = Vec::new();
    for piece in &filler.pieces {
        match lengths.iter_mut().find(|(length, _)| (*length - piece.length).abs() < Length::mm(0.5)) {
            Some((_, count)) => *count += 1,
            None => lengths.push((piece.length, 1)),
        }
    }
    let line = |(length, count)| {
        Cut::new("cut-filler", &filler.stock, count, Message::new("cut-filler-purpose"))
            .length(length)
            .width(filler.stock.width)
    };
    lengths.into_iter().map(line).collect()
}

/// The length to lay out already holds tails and a spare; it is shared by the strands.
fn lashing(basket: &Basket) -> Cut {
    let lashing = &basket.lashing;
    let each = (lashing.length / f64::from(lashing.strands.max(1))).min(lashing.strand);
    let purpose = Message::new("cut-lashing-purpose").with("wraps", lashing.wraps);
    Cut::new("cut-lashing", &lashing.weaver, lashing.strands, purpose)
        .length(each)
        .total(lashing.length)
        .width(lashing.weaver.width)
}

fn pins(basket: &Basket) -> Cut {
    let pins = &basket.pins;
    let mut cut = Cut::new("cut-pin", &pins.stock, pins.count, Message::new("cut-pin-purpose"))
        .spares(pins.spares)
        .width(pins.stock.width)
        .shape(Message::new("cut-pin-shape").with("drill", pins.drill).with("needed", pins.length_needed));
    cut.length = Some(pins.length);
    cut
}

fn ears(basket: &Basket) -> Option<Cut> {
    let ears = basket.ears.as_ref()?;
    let shape = Message::new("cut-ear-shape").with("thickness", ears.thickness).with("tail", ears.tail);
    Some(
        Cut::new("cut-ear", Value::Term(ears.material.term()), 2, Message::new("cut-ear-purpose"))
            .length(ears.length)
            .width(ears.width)
            .shape(shape),
    )
}

fn handle(basket: &Basket) -> Vec<Cut> {
    let Some(handle) = &basket.handle else { return Vec::new() };
    let bail = Cut::new("cut-bail", Value::Term("cut-bail-material"), 1, Message::new("cut-bail-purpose"))
        .length(handle.cut)
        .width(handle.width)
        .shape(
            Message::new("cut-bail-shape").with("thickness", handle.thickness).with("drill", handle.drill),
        );
    let mut rivet = Cut::new("cut-rivet", &handle.rivet, handle.rivets, Message::new("cut-rivet-purpose"))
        .spares(1)
        .width(handle.rivet.width)
        .shape(Message::new("cut-rivet-shape").with("needed", handle.rivet_length).with("grip", handle.grip));
    rivet.length = Some(handle.rivet.length.unwrap_or(handle.rivet_length));
    vec![bail, rivet, washers(handle)]
}

fn washers(handle: &Handle) -> Cut {
    let purpose = Message::new("cut-washer-purpose");
    let washer = |material: Value| Cut::new("cut-washer", material, handle.washers, purpose).spares(2);
    match &handle.burr {
        Some(burr) => washer(burr.into()).width(burr.width),
        None => washer(Message::new("cut-washer-for").with("rivet", &handle.rivet).into()),
    }
}
