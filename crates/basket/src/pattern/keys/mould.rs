//! Keys of `[mould]`.

use super::declared::{Contents, Either, Usual};
use super::key::{Key, keys};
use super::limits::{Lengths, ListOf, PART, Shares};
use crate::Length;
use crate::pattern::{Girth, LevelsKind, MouldPieces, OutlineKind, Side, WidthAt};

keys! {
    /// Its shape, seen from above.
    pub const SHAPE: Key<OutlineKind> =
        Key::new("mould.shape", (), Usual::Constant(OutlineKind::Round), r#""round""#);
    /// The length of a foot that is not round.
    pub const LENGTH: Key<Length> =
        Key::new("mould.length", PART.usually(3.0, 24.0), Usual::Nothing("usual-mould-not-round"), r#""9 in""#);
    /// Its width.
    pub const WIDTH: Key<Length> =
        Key::new("mould.width", PART.usually(2.0, 16.0), Usual::Nothing("usual-mould-not-round"), r#""6 in""#);
    /// Radius of a rectangle's corners.
    pub const CORNER: Key<Length> =
        Key::new("mould.corner", PART.usually(0.5, 4.0), Usual::Nothing("usual-mould-corner"), r#""2 in""#);
    /// How much fuller than an ellipse an oval is.
    pub const FULLNESS: Key<f64> =
        Key::new("mould.fullness", Shares::of(0.0, 0.75), Usual::Nothing("usual-mould-fullness"), r#""20%""#);
    /// From the middle of a traced foot to its edge.
    pub const RAYS: Key<Vec<Length>> = Key::new(
        "mould.rays",
        ListOf { each: RAY, most: MOST_RAYS },
        Usual::Nothing("usual-mould-rays"),
        r#"["5 in", "4 1/2", "4", "4 1/2", "5", "4 1/2", "4", "4 1/2"]"#,
    );
    /// What a tape measured round it.
    pub const GIRTHS: Key<Vec<Girth>> = Key::new(
        "mould.girths",
        500,
        Usual::Nothing("usual-mould-girths"),
        r#"[["0", "15 1/2"], ["4", "24"]]"#,
    );
    /// How its levels follow from a foot that is not round.
    pub const LEVELS: Key<LevelsKind> =
        Key::new("mould.levels", (), Usual::Constant(LevelsKind::Even), r#""scaled""#);
    /// How wide it is along its shorter axis.
    pub const WIDTHS: Key<Vec<WidthAt>> = Key::new(
        "mould.widths",
        500,
        Usual::Nothing("usual-mould-widths"),
        r#"[["2", "7 1/2"], ["4", "8"]]"#,
    );
    /// Its diameter at the base.
    pub const BASE: Key<Length> =
        Key::new("mould.base", PART.usually(2.0, 16.0), Usual::Nothing("usual-mould-drawn"), r#""5 in""#);
    /// Its diameter at the rim.
    pub const RIM: Key<Length> =
        Key::new("mould.rim", PART.usually(2.0, 20.0), Usual::Nothing("usual-mould-drawn"), r#""8 in""#);
    /// Its height.
    pub const HEIGHT: Key<Length> =
        Key::new("mould.height", PART.usually(1.0, 16.0), Usual::Nothing("usual-mould-drawn"), r#""4 in""#);
    /// How its side runs.
    pub const SIDE: Key<Side> = Key::new("mould.side", (), Usual::Constant(Side::Cone), r#""bowl""#);
    /// Whether it comes apart.
    pub const PIECES: Key<MouldPieces> =
        Key::new("mould.pieces", (), Usual::Constant(MouldPieces::One), r#""several""#);
}

/// A ray of a traced foot.
const RAY: Lengths = PART.usually(1.0, 12.0);
/// Fewest rays of which an outline is made.
pub const LEAST_RAYS: usize = 8;
/// Most rays that are read.
const MOST_RAYS: usize = 360;

/// A mould is measured or drawn.
pub const MEASURED_OR_DRAWN: Either = Either {
    ways: [&[&GIRTHS], &[&BASE, &RIM, &HEIGHT, &SIDE]],
    is_needed: true,
    help: Some("keep the girths, or base, rim, height and side"),
    may_lack: &[BASE.path],
};

/// What stands in `[mould]`.
pub const CONTENTS: Contents = Contents { keys: ALL, either: &[MEASURED_OR_DRAWN] };
