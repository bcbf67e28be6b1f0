//! Times before a show.

/// Minutes in a day.
pub const DAY: f64 = 24.0 * 60.0;

/// A time between two moments, in minutes before the show; `from` is the earlier and larger one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Its beginning.
    pub from: f64,
    /// Its end.
    pub to: f64,
}
