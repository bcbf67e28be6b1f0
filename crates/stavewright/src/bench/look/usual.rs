//! Which values are usually changed. They stand first in the form; the rest is folded.

use basket::pattern::keys::{
    self, Declared, base, course, ears, filler, handle, lashing, mould, pins, rim, staves, weave,
};

/// What makers reach for first (common practice; own choice).
const USUAL: &[&dyn Declared] = &[
    &keys::TITLE,
    &keys::UNITS,
    &mould::SHAPE,
    &mould::LENGTH,
    &mould::WIDTH,
    &mould::CORNER,
    &mould::BASE,
    &mould::RIM,
    &mould::HEIGHT,
    &mould::SIDE,
    &base::DIAMETER,
    &base::WOOD,
    &staves::COUNT,
    &staves::STOCK,
    &staves::WIDTH,
    &staves::GAP,
    &staves::COLOURS,
    &course::WEAVE,
    &course::WEAVER,
    &course::ROWS,
    &course::UNTIL,
    &course::COLOURS,
    &course::CHART,
    &course::LEAN,
    &weave::DIRECTION,
    &rim::STOCK,
    &keys::FILLER,
    &filler::STOCK,
    &pins::EVERY,
    &lashing::STYLE,
    &lashing::WEAVER,
    &keys::EARS,
    &ears::MATERIAL,
    &keys::HANDLE,
    &keys::LID,
    &handle::KIND,
    &handle::RISE,
    &keys::FINISH,
];

/// Whether a value is usually changed.
pub(super) fn is_usual(key: &dyn Declared) -> bool {
    USUAL.iter().any(|usual| usual.path() == key.path())
}
