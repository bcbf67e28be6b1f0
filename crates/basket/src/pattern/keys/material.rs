//! Keys of one material in `[materials]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::kinds;
use super::limits::{PART, RUN, Shares, Texts};
use super::values::Minutes;
use crate::stock::Kind;
use crate::{Length, Material};

/// Two weeks: nothing soaks longer.
const LONGEST_SOAK: u32 = 14 * 24 * 60;

keys! {
    /// A known material that gives all other figures.
    pub const LIKE: Key<Material> = Key::new(
        "materials.like",
        kinds::ALL,
        Usual::Nothing("usual-material-itself"),
        r#""flat oval reed 1/4 in""#,
    );
    /// What it is.
    pub const KIND: Key<Kind> =
        Key::new("materials.kind", (), Usual::Computed("usual-material-or-given"), r#""splint""#);
    /// Width.
    pub const WIDTH: Key<Length> =
        Key::new("materials.width", PART, Usual::Computed("usual-material-or-given"), r#""6.1 mm""#);
    /// Thickness.
    pub const THICKNESS: Key<Length> =
        Key::new("materials.thickness", PART, Usual::Computed("usual-material-or-given"), r#""2.0 mm""#);
    /// Width and thickness of round stock.
    pub const DIAMETER: Key<Length> =
        Key::new("materials.diameter", PART, Usual::Nothing("usual-material-size"), r#""2 mm""#);
    /// Length of a piece that is used whole.
    pub const LENGTH: Key<Length> =
        Key::new("materials.length", PART, Usual::Computed("usual-material"), r#""1/2 in""#);
    /// What is bought.
    pub const PUT_UP: Key<String> = Key::new(
        "materials.put-up",
        Texts::Line,
        Usual::Computed("usual-material-put-up"),
        r#""coil of 1 lb""#,
    );
    /// Length in one put-up.
    pub const HOLDS: Key<Length> =
        Key::new("materials.holds", RUN, Usual::Computed("usual-material"), r#""275 ft""#);
    /// Length of one piece to count on.
    pub const STRAND: Key<Length> =
        Key::new("materials.strand", RUN, Usual::Computed("usual-material"), r#""9 ft""#);
    /// How long it soaks.
    pub const SOAK: Key<Minutes> =
        Key::new("materials.soak", LONGEST_SOAK, Usual::Computed("usual-material"), "[10, 15]");
    /// The largest strain at which it bends without breaking.
    pub const BEND: Key<f64> =
        Key::new("materials.bend", Shares::of(0.001, 0.5), Usual::Computed("usual-material"), r#""12 %""#);
    /// Share of its width that it loses in drying.
    pub const SHRINK: Key<f64> = Key::new(
        "materials.shrink",
        Shares::of(0.0, 0.3),
        Usual::Computed("usual-material-shrink"),
        r#""5 %""#,
    );
}
