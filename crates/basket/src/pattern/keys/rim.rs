//! Keys of `[rim]`.

use super::declared::Usual;
use super::key::{Key, keys};
use super::kinds;
use super::limits::PART;
use crate::pattern::HoopWay;
use crate::{Length, Material};

keys! {
    /// How the hoops come to be.
    pub const HOOPS: Key<HoopWay> =
        Key::new("rim.hoops", (), Usual::Constant(HoopWay::Rings), r#""bent""#);
    /// Stock of the outer hoop.
    pub const STOCK: Key<Material> =
        Key::new("rim.stock", kinds::HOOPS, Usual::Computed("usual-chosen"), r#""half round reed 3/8 in""#);
    /// Stock of the inner hoop.
    pub const INNER: Key<Material> =
        Key::new("rim.inner", kinds::HOOPS, Usual::Computed("usual-rim-inner"), r#""flat oval reed 3/8 in""#);
    /// How far the ends of a hoop lie on each other.
    pub const LAP: Key<Length> =
        Key::new("rim.lap", PART.usually(0.5, 8.0), Usual::Computed("usual-chosen"), r#""4""#);
}
