//! How parts look in the drawings of the making.
//!
//! Black and white: what a step adds is darker than what was there before; weaving stays white
//! between staves of a light tone, unless it is dyed.

use crate::drawing::{Line, Tone};
use crate::lines::PartStyle;
use crate::solid::{Part, PartKind};

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
        part.kind,
        PartKind::Row | PartKind::Lashing | PartKind::Stave | PartKind::Pin | PartKind::Washer
    );
    toned(part, if fine { Line::Fine } else { Line::Edge })
}

/// A picture from close by.
pub(super) fn close(part: &Part) -> PartStyle {
    toned(part, Line::Edge)
}

fn toned(part: &Part, edge: Line) -> PartStyle {
    match part.kind {
        PartKind::Row | PartKind::Lashing => match dyed(part) {
            Some(tone) => look(edge, tone, tone),
            None => look(edge, None, Tone::Pale),
        },
        PartKind::Stave => look(edge, Tone::Pale, Tone::Pale),
        PartKind::Mould => look(edge, Tone::Light, Tone::Light),
        PartKind::Band => look(edge, Tone::Mid, Tone::Mid),
        PartKind::Pin | PartKind::Rivet | PartKind::Washer | PartKind::Screw | PartKind::Clamp => {
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

fn marked(part: &Part, kinds: &[PartKind], edge: fn(&Part) -> PartStyle) -> PartStyle {
    let own = edge(part);
    let small = matches!(part.kind, PartKind::Lashing | PartKind::Pin | PartKind::Rivet | PartKind::Washer);
    if kinds.contains(&part.kind) {
        // Light and shade on large bent pieces would part them in patches.
        look(own.edge.unwrap_or(Line::Edge), Tone::Light, if small { Tone::Mid } else { Tone::Light })
    } else if small {
        PartStyle { lit: None, shaded: Some(Tone::Pale), ..own }
    } else {
        own
    }
}

pub(super) fn base(part: &Part) -> PartStyle {
    match part.kind {
        PartKind::Base => look(Line::Edge, None, None),
        _ => whole(part),
    }
}

pub(super) fn ears(part: &Part) -> PartStyle {
    marked(part, &[PartKind::Ear], whole)
}

pub(super) fn hoops(part: &Part) -> PartStyle {
    marked(part, &[PartKind::OuterHoop, PartKind::InnerHoop], whole)
}

pub(super) fn clamps(part: &Part) -> PartStyle {
    match part.kind {
        PartKind::Clamp => look(Line::Edge, None, Tone::Mid),
        _ => hoops(part),
    }
}

pub(super) fn pins(part: &Part) -> PartStyle {
    marked(part, &[PartKind::Pin], whole)
}

pub(super) fn lashing(part: &Part) -> PartStyle {
    marked(part, &[PartKind::Lashing], whole)
}

pub(super) fn handle(part: &Part) -> PartStyle {
    marked(part, &[PartKind::Bail, PartKind::Rivet, PartKind::Washer], whole)
}

pub(super) fn scarf(part: &Part) -> PartStyle {
    let edge = |part: &Part| match part.kind {
        PartKind::Row | PartKind::Stave => whole(part),
        _ => close(part),
    };
    marked(part, &[PartKind::OuterHoop], edge)
}

pub(super) fn close_staves(part: &Part) -> PartStyle {
    marked(part, &[PartKind::Stave], close)
}

pub(super) fn close_pins(part: &Part) -> PartStyle {
    marked(part, &[PartKind::Pin], close)
}

/// Wraps light, tails dark.
pub(super) fn close_lashing(part: &Part) -> PartStyle {
    if part.kind == PartKind::Lashing && part.number.is_none() {
        return look(Line::Edge, Tone::Mid, Tone::Mid);
    }
    marked(part, &[PartKind::Lashing], close)
}

pub(super) fn close_rivet(part: &Part) -> PartStyle {
    marked(part, &[PartKind::Ear, PartKind::Rivet, PartKind::Washer], close)
}

/// The new strand light, the spent one dark.
pub(super) fn join(part: &Part) -> PartStyle {
    match (part.name.as_str(), part.kind) {
        ("spent strand", _) => look(Line::Edge, Tone::Mid, Tone::Mid),
        ("new strand", _) => look(Line::Edge, Tone::Light, Tone::Light),
        (_, PartKind::Row) => whole(part),
        _ => close(part),
    }
}
