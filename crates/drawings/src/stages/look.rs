//! How parts look in the drawings of the making.
//!
//! Black and white: what a step adds is darker than what was there before; weaving stays white
//! between staves of a light tone, unless it is dyed.

use crate::drawing::{Line, Tone};
use crate::lines::PartStyle;
use crate::solid::Part;
use basket::piece::{FloorPart, Piece};

/// Cane darker than this (as the eye weighs it, of 255) is dyed and gets a tone.
const DYED: f64 = 140.0;
/// Dyed cane darker than this gets a deep tone.
const DEEP: f64 = 80.0;

fn look(edge: Line, lit: impl Into<Option<Tone>>, shaded: impl Into<Option<Tone>>) -> PartStyle {
    PartStyle { edge: Some(edge), lit: lit.into(), shaded: shaded.into() }
}

/// A picture of the whole, fine enough for the width of a column.
pub(crate) fn whole(part: &Part) -> PartStyle {
    let fine = matches!(
        part.piece.sort(),
        Piece::Weaving | Piece::Lashing | Piece::Uprights | Piece::Pins | Piece::Washers
    );
    toned(part, if fine { Line::Fine } else { Line::Edge })
}

/// A picture from close by.
pub(super) fn close(part: &Part) -> PartStyle {
    toned(part, Line::Edge)
}

fn toned(part: &Part, edge: Line) -> PartStyle {
    match part.piece.sort() {
        Piece::Weaving | Piece::Lashing => match dyed(part) {
            Some(tone) => look(edge, tone, tone),
            None => look(edge, None, Tone::Pale),
        },
        Piece::Uprights => look(edge, Tone::Pale, Tone::Pale),
        Piece::Mould => look(edge, Tone::Light, Tone::Light),
        Piece::Band => look(edge, Tone::Mid, Tone::Mid),
        Piece::Pins | Piece::Rivets | Piece::Washers | Piece::Floor(FloorPart::Screw) | Piece::Clamps => {
            look(edge, Tone::Light, Tone::Mid)
        }
        _ => look(edge, None, None),
    }
}

/// The tone of dyed cane; none for cane of its own colour.
fn dyed(part: &Part) -> Option<Tone> {
    let [red, green, blue] = part.colour.map(f64::from);
    // Lightness as the eye weighs it (ITU-R BT.601).
    let light = 0.299 * red + 0.587 * green + 0.114 * blue;
    if light < DEEP { Some(Tone::Dark) } else { (light < DYED).then_some(Tone::Mid) }
}

fn marked(part: &Part, kinds: &[Piece], edge: fn(&Part) -> PartStyle) -> PartStyle {
    let own = edge(part);
    let small = matches!(part.piece.sort(), Piece::Lashing | Piece::Pins | Piece::Rivets | Piece::Washers);
    if kinds.contains(&part.piece.sort()) {
        // Light and shade on large bent pieces would part them in patches.
        look(own.edge.unwrap_or(Line::Edge), Tone::Light, if small { Tone::Mid } else { Tone::Light })
    } else if small {
        PartStyle { lit: None, shaded: Some(Tone::Pale), ..own }
    } else {
        own
    }
}

pub(super) fn base(part: &Part) -> PartStyle {
    match part.piece.sort() {
        Piece::Floor(FloorPart::Disc) => look(Line::Edge, None, None),
        _ => whole(part),
    }
}

pub(super) fn ears(part: &Part) -> PartStyle {
    marked(part, &[Piece::Ears], whole)
}

pub(super) fn hoops(part: &Part) -> PartStyle {
    marked(part, &[Piece::OuterHoop, Piece::InnerHoop], whole)
}

pub(super) fn clamps(part: &Part) -> PartStyle {
    match part.piece.sort() {
        Piece::Clamps => look(Line::Edge, None, Tone::Mid),
        _ => hoops(part),
    }
}

pub(super) fn pins(part: &Part) -> PartStyle {
    marked(part, &[Piece::Pins], whole)
}

pub(super) fn lashing(part: &Part) -> PartStyle {
    marked(part, &[Piece::Lashing], whole)
}

pub(super) fn handle(part: &Part) -> PartStyle {
    marked(part, &[Piece::Handle, Piece::Rivets, Piece::Washers], whole)
}

pub(super) fn scarf(part: &Part) -> PartStyle {
    let edge = |part: &Part| match part.piece.sort() {
        Piece::Weaving | Piece::Uprights => whole(part),
        _ => close(part),
    };
    marked(part, &[Piece::OuterHoop], edge)
}

pub(super) fn close_staves(part: &Part) -> PartStyle {
    marked(part, &[Piece::Uprights], close)
}

pub(super) fn close_pins(part: &Part) -> PartStyle {
    marked(part, &[Piece::Pins], close)
}

/// Wraps light, tails dark.
pub(super) fn close_lashing(part: &Part) -> PartStyle {
    if matches!(part.piece, Piece::Tail(_)) {
        return look(Line::Edge, Tone::Mid, Tone::Mid);
    }
    marked(part, &[Piece::Lashing], close)
}

pub(super) fn close_rivet(part: &Part) -> PartStyle {
    marked(part, &[Piece::Ears, Piece::Rivets, Piece::Washers], close)
}

/// The new strand light, the spent one dark.
pub(super) fn join(part: &Part, spent: Piece, new: Piece) -> PartStyle {
    match part.piece {
        piece if piece == spent => look(Line::Edge, Tone::Mid, Tone::Mid),
        piece if piece == new => look(Line::Edge, Tone::Light, Tone::Light),
        Piece::Row { .. } => whole(part),
        _ => close(part),
    }
}
