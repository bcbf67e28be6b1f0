//! How parts look in the drawings of the making.
//!
//! Each part has its own colour, dyed or not; what a step adds is deeper than what was there before, so that it
//! stands out in black and white too.

use crate::drawing::{Line, Tone};
use crate::lines::{PartStyle, hue};
use crate::solid::Part;
use basket::piece::Piece;

fn look(edge: Line, [lit, shaded]: [Tone; 2]) -> PartStyle {
    PartStyle { edge: Some(edge), lit: Some(lit), shaded: Some(shaded) }
}

/// A picture of the whole, fine enough for the width of a column.
pub(crate) fn whole(part: &Part) -> PartStyle {
    let fine = matches!(
        part.piece.sort(),
        Piece::Weaving | Piece::Lashing | Piece::Uprights | Piece::Pins | Piece::Washers
    );
    look(if fine { Line::Fine } else { Line::Edge }, hue::own(part))
}

/// A picture from close by.
pub(super) fn close(part: &Part) -> PartStyle {
    look(Line::Edge, hue::own(part))
}

fn marked(part: &Part, kinds: &[Piece], edge: fn(&Part) -> PartStyle) -> PartStyle {
    let own = edge(part);
    if !kinds.contains(&part.piece.sort()) {
        return own;
    }
    let small = matches!(part.piece.sort(), Piece::Lashing | Piece::Pins | Piece::Rivets | Piece::Washers);
    let [lit, shaded] = hue::deep(part);
    // Light and shade on large bent pieces would part them in patches.
    look(own.edge.unwrap_or(Line::Edge), [lit, if small { shaded } else { lit }])
}

pub(super) fn ears(part: &Part) -> PartStyle {
    marked(part, &[Piece::Ears], whole)
}

pub(super) fn hoops(part: &Part) -> PartStyle {
    marked(part, &[Piece::OuterHoop, Piece::InnerHoop], whole)
}

pub(super) fn clamps(part: &Part) -> PartStyle {
    marked(part, &[Piece::OuterHoop, Piece::InnerHoop, Piece::Clamps], whole)
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
        let [_, deep] = hue::deep(part);
        return look(Line::Edge, [deep, deep]);
    }
    marked(part, &[Piece::Lashing], close)
}

pub(super) fn close_rivet(part: &Part) -> PartStyle {
    marked(part, &[Piece::Ears, Piece::Rivets, Piece::Washers], close)
}

/// The spent strand deep, the new one between it and the rows.
pub(super) fn join(part: &Part, spent: Piece, new: Piece) -> PartStyle {
    let [lit, deep] = hue::deep(part);
    match part.piece {
        piece if piece == spent => look(Line::Edge, [deep, deep]),
        piece if piece == new => look(Line::Edge, [lit, lit]),
        Piece::Row { .. } => whole(part),
        _ => close(part),
    }
}
