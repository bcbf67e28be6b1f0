//! Keys of `[mould]`.

use super::declared::{Contents, Either, Usual};
use super::key::{Key, keys};
use super::limits::PART;
use crate::Length;
use crate::pattern::{Girth, MouldPieces, Outline, Side};

keys! {
    /// Its shape, seen from above.
    pub const SHAPE: Key<Outline> =
        Key::new("mould.shape", (), Usual::Constant(Outline::Round), r#""round""#);
    /// What a tape measured round it.
    pub const GIRTHS: Key<Vec<Girth>> = Key::new(
        "mould.girths",
        500,
        Usual::Nothing("usual-mould-girths"),
        r#"[["0", "15 1/2"], ["4", "24"]]"#,
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

/// A mould is measured or drawn.
pub const MEASURED_OR_DRAWN: Either = Either {
    ways: [&[&GIRTHS], &[&BASE, &RIM, &HEIGHT, &SIDE]],
    is_needed: true,
    help: Some("keep the girths, or base, rim, height and side"),
};

/// What stands in `[mould]`.
pub const CONTENTS: Contents = Contents { keys: ALL, either: &[MEASURED_OR_DRAWN] };
