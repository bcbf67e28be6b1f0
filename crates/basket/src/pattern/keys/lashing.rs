//! Keys of `[lashing]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::kinds;
use super::limits::PART;
use crate::pattern::{Every, LashingStyle};
use crate::{Length, Material};

/// What stands in the place of the section where pins alone hold the rim.
pub const NONE: &str = "none";

keys! {
    /// The strand.
    pub const WEAVER: Key<Material> =
        Key::new("lashing.weaver", kinds::LASHINGS, Usual::Computed("usual-chosen"), r#""cane fine-fine""#);
    /// At which staves it goes round the rim.
    pub const EVERY: Key<Every> =
        Key::new("lashing.every", (), Usual::Computed("usual-chosen"), r#""stave""#);
    /// How it goes round.
    pub const STYLE: Key<LashingStyle> =
        Key::new("lashing.style", (), Usual::Constant(LashingStyle::Single), r#""crossed""#);
    /// Length left at each end of a strand; the usual one is common practice.
    pub const TAIL: Key<Length> =
        Key::new("lashing.tail", PART.usually(0.5, 8.0), Usual::Constant(Length::inches(2.0)), r#""2""#);
}
