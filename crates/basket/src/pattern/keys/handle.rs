//! Keys of `[handle]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::kinds;
use super::limits::PART;
use crate::pattern::{BailCurve, HandleKind};
use crate::{Length, Material};

keys! {
    /// Whether there is one.
    pub const KIND: Key<HandleKind> =
        Key::new("handle.kind", (), Usual::Constant(HandleKind::Swing), r#""swing""#).outside_form();
    /// The curve of the bail.
    pub const CURVE: Key<BailCurve> =
        Key::new("handle.curve", (), Usual::Computed("usual-chosen"), r#""half-ellipse""#);
    /// Rise of the bail's middle above the pivots.
    pub const RISE: Key<Length> =
        Key::new("handle.rise", PART.usually(1.0, 14.0), Usual::Computed("usual-computed"), r#""4""#);
    /// Radius of the corners of a three-centred bail.
    pub const CORNER: Key<Length> =
        Key::new("handle.corner", PART.usually(0.5, 8.0), Usual::Computed("usual-computed"), r#""2""#);
    /// Width of the bail, seen from the side.
    pub const WIDTH: Key<Length> =
        Key::new("handle.width", PART.usually(0.125, 1.5), Usual::Computed("usual-chosen"), r#""1/2""#);
    /// Thickness of the bail, seen from the front.
    pub const THICKNESS: Key<Length> =
        Key::new("handle.thickness", PART.usually(0.0625, 0.75), Usual::Computed("usual-chosen"), r#""1/4""#);
    /// The rivet.
    pub const RIVET: Key<Material> =
        Key::new("handle.rivet", kinds::RIVETS, Usual::Computed("usual-chosen"), r#""copper rivet 10""#);
}
