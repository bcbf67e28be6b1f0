//! Keys of `groove = { … }` in `[base]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::limits::PART;
use crate::Length;

keys! {
    /// How deep it goes in from the edge; the usual depth is common practice.
    pub const DEPTH: Key<Length> = Key::new(
        "base.groove.depth",
        PART.usually(0.0625, 0.75),
        Usual::Constant(Length::inches(0.25)),
        r#""1/4""#,
    );
    /// How wide it is.
    pub const WIDTH: Key<Length> = Key::new(
        "base.groove.width",
        PART.usually(0.03125, 0.375),
        Usual::Computed("usual-base-groove-width"),
        r#""3/32""#,
    );
}
