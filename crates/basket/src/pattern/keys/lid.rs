//! Keys of `[lid]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::kinds;
use super::limits::{Counts, PART};
use crate::limits;
use crate::pattern::{LidFit, LidHinge, LidLift, LidWay};
use crate::{Length, Material};

keys! {
    /// How it sits on the basket.
    pub const FIT: Key<LidFit> = Key::new("lid.fit", (), Usual::Constant(LidFit::DropIn), r#""drop-in""#);
    /// What it is woven over.
    pub const WAY: Key<LidWay> = Key::new("lid.way", (), Usual::Constant(LidWay::Mould), r#""flat""#);
    /// Diameter, or length, of its mould at the rim.
    pub const ACROSS: Key<Length> =
        Key::new("lid.across", PART.usually(3.0, 14.0), Usual::Computed("usual-lid-across"), r#""9 1/4""#);
    /// Height of its mould.
    pub const HEIGHT: Key<Length> =
        Key::new("lid.height", PART.usually(0.5, 2.0), Usual::Computed("usual-lid-height"), r#""3/4""#);
    /// Diameter, or length, of its mould at the foot.
    pub const PLAQUE: Key<Length> =
        Key::new("lid.plaque", PART.usually(2.0, 10.0), Usual::Computed("usual-lid-plaque"), r#""6""#);
    /// Room between its rim and the basket's, all round; the usual one is common practice.
    pub const CLEARANCE: Key<Length> =
        Key::new("lid.clearance", PART.usually(0.03125, 0.25), Usual::Constant(Length::inches(0.0625)), r#""1/16 in""#);
    /// What its staves are cut from.
    pub const STAVES: Key<Material> =
        Key::new("lid.staves", kinds::STAVES, Usual::Computed("usual-lid-as-body"), r#""flat oval reed 3/16 in""#);
    /// How many staves it has.
    pub const COUNT: Key<u32> =
        Key::new("lid.count", Counts::of(3, limits::STAVES).usually(25, 95), Usual::Computed("usual-chosen"), "61");
    /// Its weaver.
    pub const WEAVER: Key<Material> =
        Key::new("lid.weaver", kinds::WEAVERS, Usual::Computed("usual-lid-weaver"), r#""cane superfine""#);
    /// What the ledge is bent from, or the collar.
    pub const LEDGE: Key<Material> =
        Key::new("lid.ledge", kinds::HOOPS, Usual::Computed("usual-lid-ledge"), r#""half round reed 3/8 in""#);
    /// What one lifts it by.
    pub const LIFT: Key<LidLift> = Key::new("lid.lift", (), Usual::Constant(LidLift::Knob), r#""loop""#);
    /// Where it is hinged, if it lies on the rim.
    pub const HINGE: Key<LidHinge> = Key::new("lid.hinge", (), Usual::Computed("usual-lid-hinge"), r#""none""#);
}
