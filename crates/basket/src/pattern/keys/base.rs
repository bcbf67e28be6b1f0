//! Keys of `[base]`.

use super::declared::{Contents, Usual};
use super::groove;
use super::key::{Key, keys};
use super::limits::{MOST_STRIPS, PART};
use super::values::Section;
use crate::Length;
use crate::pattern::Rings;
use crate::stock::Wood;

keys! {
    /// Diameter of the disc.
    pub const DIAMETER: Key<Length> = Key::new(
        "base.diameter",
        PART.usually(2.0, 14.0),
        Usual::Computed("usual-base-diameter"),
        r#""4 7/8""#,
    );
    /// Thickness of the disc; the usual one is common practice.
    pub const THICKNESS: Key<Length> = Key::new(
        "base.thickness",
        PART.usually(0.125, 1.0),
        Usual::Constant(Length::inches(0.375)),
        r#""3/8""#,
    );
    /// The groove in its edge.
    pub const GROOVE: Key<Section> = Key::new(
        "base.groove",
        Contents::of(groove::ALL),
        Usual::Computed("usual-each"),
        r#"{ depth = "1/4", width = "3/32" }"#,
    );
    /// The wood, or the woods of the strips it is glued up from.
    pub const WOOD: Key<Vec<Wood>> =
        Key::new("base.wood", MOST_STRIPS, Usual::Computed("usual-chosen"), r#""cherry""#);
    /// Hole for the screw that holds the base on the mould; the usual one is common practice.
    pub const SCREW: Key<Length> = Key::new(
        "base.screw",
        PART.usually(0.0625, 0.5),
        Usual::Constant(Length::inches(0.1875)),
        r#""3/16 in""#,
    );
    /// Where rings are turned in it for show.
    pub const RINGS: Key<Rings> = Key::new("base.rings", (), Usual::Constant(Rings::None), r#""out""#);
    /// Whether it is sealed before the weaving; that it usually is, is common practice.
    pub const SEALED: Key<bool> = Key::new("base.sealed", (), Usual::Constant(true), "false");
}
