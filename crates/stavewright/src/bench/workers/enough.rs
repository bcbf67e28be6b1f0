//! Whether a search has gone on for long enough.

use std::sync::atomic::{AtomicBool, Ordering};

/// A worker does one thing at a time.
static ENOUGH: AtomicBool = AtomicBool::new(false);

/// Takes note of it, or of the next work that begins.
pub(super) fn note(enough: bool) {
    ENOUGH.store(enough, Ordering::Relaxed);
}

/// Whether it is enough.
pub(crate) fn is_enough() -> bool {
    ENOUGH.load(Ordering::Relaxed)
}
