//! Keys of `[pins]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::kinds;
use crate::Material;
use crate::pattern::Every;

keys! {
    /// The pin.
    pub const STOCK: Key<Material> =
        Key::new("pins.stock", kinds::PINS, Usual::Computed("usual-chosen"), r#""brass pin 18 x 1/2 in""#);
    /// At which staves there is one.
    pub const EVERY: Key<Every> =
        Key::new("pins.every", (), Usual::Computed("usual-chosen"), r#""other-stave""#);
}
