//! Keys of `taper = { … }` in `[staves]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::limits::{PART, PLACE};
use crate::Length;

keys! {
    /// The way up from the mould's base at which full width begins.
    pub const FROM: Key<Length> =
        Key::new("staves.taper.from", PLACE.usually(0.0, 6.0), Usual::Needed, r#""1 1/2 in""#);
    /// Width at the foot.
    pub const FOOT: Key<Length> =
        Key::new("staves.taper.foot", PART.usually(0.03125, 0.5), Usual::Needed, r#""1/8 in""#);
}
