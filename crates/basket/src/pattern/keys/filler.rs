//! Keys of `[filler]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::kinds;
use crate::Material;

/// What stands in the place of the section where there is no filler.
pub const NONE: &str = "none";

keys! {
    /// Its stock.
    pub const STOCK: Key<Material> =
        Key::new("filler.stock", kinds::FILLERS, Usual::Computed("usual-chosen"), r#""round reed 3""#);
}
