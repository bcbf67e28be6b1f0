//! Keys of `[staves]`.

use super::declared::{Contents, Usual};
use super::key::{Key, keys};
use super::limits::{Counts, MOST_COLOURS, PART};
use super::values::Section;
use super::{kinds, taper};
use crate::colour::Colour;
use crate::pattern::{OvalSide, Spacing};
use crate::{Length, Material, limits};

keys! {
    /// How many.
    pub const COUNT: Key<u32> = Key::new(
        "staves.count",
        Counts::of(3, limits::STAVES).usually(21, 151),
        Usual::Computed("usual-staves-count"),
        "67",
    );
    /// From which stock.
    pub const STOCK: Key<Material> = Key::new(
        "staves.stock",
        kinds::STAVES,
        Usual::Computed("usual-staves-stock"),
        r#""flat oval reed 1/4 in""#,
    );
    /// Full width, where the stock is cut narrower.
    pub const WIDTH: Key<Length> = Key::new(
        "staves.width",
        PART.usually(0.0625, 1.0),
        Usual::Computed("usual-staves-width"),
        r#""6 mm""#,
    );
    /// Wanted gap at the rim.
    pub const GAP: Key<Length> =
        Key::new("staves.gap", PART.usually(0.015_625, 0.375), Usual::Computed("usual-chosen"), r#""1/16""#);
    /// The taper toward the foot.
    pub const TAPER: Key<Section> = Key::new(
        "staves.taper",
        Contents::of(taper::ALL),
        Usual::Computed("usual-computed"),
        r#"{ from = "1 1/2", foot = "1/8" }"#,
    );
    /// Length to cut.
    pub const LENGTH: Key<Length> =
        Key::new("staves.length", PART.usually(2.0, 20.0), Usual::Computed("usual-computed"), r#""8""#);
    /// How many more to shape.
    pub const SPARES: Key<u32> =
        Key::new("staves.spares", Counts::of(0, 999).usually(0, 30), Usual::Computed("usual-computed"), "7");
    /// Where they are spaced evenly.
    pub const SPACING: Key<Spacing> =
        Key::new("staves.spacing", (), Usual::Constant(Spacing::Foot), r#""foot""#);
    /// Full width of those at the two tight ends.
    pub const ENDS: Key<Length> =
        Key::new("staves.ends", PART.usually(0.0625, 1.0), Usual::Nothing("usual-staves-ends"), r#""5/16 in""#);
    /// Which way the rounded face looks.
    pub const OVAL: Key<OvalSide> = Key::new("staves.oval", (), Usual::Constant(OvalSide::Out), r#""out""#);
    /// Colours, stave by stave.
    pub const COLOURS: Key<Vec<Colour>> =
        Key::new("staves.colours", MOST_COLOURS, Usual::Nothing("usual-natural"), r#"["natural", "blue"]"#);
}
