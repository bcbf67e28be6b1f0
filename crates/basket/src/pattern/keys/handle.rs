//! Keys of `[handle]`.

use super::declared::{Declared, Usual};
use super::key::{Key, keys};
use super::kinds;
use super::limits::{PART, PLACE};
use crate::pattern::{BailCurve, EarAxis, HandleJoint, HandleKind, HandleMade};
use crate::{Length, Material};

keys! {
    /// Which it is, or that there is none.
    pub const KIND: Key<HandleKind> =
        Key::new("handle.kind", (), Usual::Constant(HandleKind::Swing), r#""swing""#);
    /// Who bends it.
    pub const MADE: Key<HandleMade> =
        Key::new("handle.made", (), Usual::Constant(HandleMade::Bought), r#""bent""#);
    /// At the ends of which axis a fixed one stands, where the mould is not round.
    pub const AXIS: Key<EarAxis> =
        Key::new("handle.axis", (), Usual::Constant(EarAxis::Short), r#""long""#);
    /// How it meets its ears.
    pub const JOINT: Key<HandleJoint> =
        Key::new("handle.joint", (), Usual::Constant(HandleJoint::Outside), r#""slot""#);
    /// The curve of the bow.
    pub const CURVE: Key<BailCurve> =
        Key::new("handle.curve", (), Usual::Computed("usual-chosen"), r#""half-ellipse""#);
    /// Rise of the bow's middle above the pivots, or above the rim.
    pub const RISE: Key<Length> =
        Key::new("handle.rise", PART.usually(1.0, 14.0), Usual::Computed("usual-computed"), r#""4""#);
    /// Radius of the corners of a three-centred bow.
    pub const CORNER: Key<Length> =
        Key::new("handle.corner", PART.usually(0.5, 8.0), Usual::Computed("usual-computed"), r#""2""#);
    /// Width, seen from the side; diameter of a knob.
    pub const WIDTH: Key<Length> =
        Key::new("handle.width", PART.usually(0.125, 1.5), Usual::Computed("usual-chosen"), r#""1/2""#);
    /// Thickness, seen from the front; how far a knob stands out.
    pub const THICKNESS: Key<Length> =
        Key::new("handle.thickness", PART.usually(0.0625, 0.75), Usual::Computed("usual-chosen"), r#""1/4""#);
    /// How much of an ear shows between the rim and the end of the handle.
    pub const SHOWS: Key<Length> =
        Key::new("handle.shows", PLACE.usually(0.125, 0.25), Usual::Computed("usual-handle-shows"), r#""1/8""#);
    /// How far each end of a fixed handle goes down below the rim.
    pub const ENDS: Key<Length> =
        Key::new("handle.ends", PART.usually(1.0, 6.0), Usual::Computed("usual-chosen"), r#""2 1/2""#);
    /// The rivet.
    pub const RIVET: Key<Material> =
        Key::new("handle.rivet", kinds::RIVETS, Usual::Computed("usual-chosen"), r#""copper rivet 10""#);
}

/// Keys that do not belong to every handle, each with those that it belongs to.
pub const BELONGS: [(&dyn Declared, &[HandleKind]); 9] = [
    (&MADE, BENT),
    (&CURVE, BENT),
    (&RISE, BENT),
    (&CORNER, BENT),
    (&JOINT, &[HandleKind::Swing]),
    (&SHOWS, &[HandleKind::Swing]),
    (&RIVET, &[HandleKind::Swing, HandleKind::Knob]),
    (&AXIS, &[HandleKind::Fixed]),
    (&ENDS, &[HandleKind::Fixed]),
];

const BENT: &[HandleKind] = &[HandleKind::Swing, HandleKind::Fixed];

/// Whether a key belongs to a handle of this kind.
pub fn belongs(path: &str, kind: HandleKind) -> bool {
    BELONGS.iter().all(|(key, kinds)| key.path() != path || kinds.contains(&kind))
}
