//! Keys of `[ears]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::limits::{PART, PLACE};
use crate::Length;
use crate::pattern::{EarAxis, EarMaterial, EarPlacing, EarWay};
use crate::stock::Wood;

keys! {
    /// What they are made of.
    pub const MATERIAL: Key<EarMaterial> =
        Key::new("ears.material", (), Usual::Constant(EarMaterial::Brass), r#""oak""#);
    /// The wood of wooden ears.
    pub const WOOD: Key<Wood> =
        Key::new("ears.wood", (), Usual::Computed("usual-ears-wood"), r#""cherry""#);
    /// How they get into the basket.
    pub const WAY: Key<EarWay> =
        Key::new("ears.way", (), Usual::Constant(EarWay::WovenIn), r#""pushed-down""#);
    /// At the ends of which axis they stand, where the mould is not round.
    pub const AXIS: Key<EarAxis> = Key::new("ears.axis", (), Usual::Constant(EarAxis::Long), r#""short""#);
    /// How two of them lie on the count of staves.
    pub const PLACING: Key<EarPlacing> =
        Key::new("ears.placing", (), Usual::Constant(EarPlacing::OnStaves), r#""stave-and-gap""#);
    /// Width along the rim.
    pub const WIDTH: Key<Length> =
        Key::new("ears.width", PART.usually(0.1875, 2.0), Usual::Computed("usual-ears-width"), r#""3/8""#);
    /// Thickness.
    pub const THICKNESS: Key<Length> = Key::new(
        "ears.thickness",
        PART.usually(0.015_625, 0.5),
        Usual::Computed("usual-ears-size"),
        r#""1/16""#,
    );
    /// Height of the rivet hole above the rim; the usual one is common practice.
    pub const HOLE: Key<Length> =
        Key::new("ears.hole", PLACE.usually(0.0625, 2.0), Usual::Constant(Length::inches(0.625)), r#""3/8""#);
    /// Length that goes down below the rim.
    pub const TAIL: Key<Length> =
        Key::new("ears.tail", PART.usually(0.5, 12.0), Usual::Computed("usual-ears-tail"), r#""2 1/2""#);
}
