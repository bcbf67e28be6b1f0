//! The colours that a pattern may name.

use crate::colour::{BUILT_IN, Colour};

/// The maker's own colours; after them come the built-in ones.
#[derive(Default)]
pub(super) struct Palette(Vec<Colour>);

impl Palette {
    pub(super) fn of(own: Vec<Colour>) -> Self {
        Self(own)
    }

    pub(super) fn find(&self, name: &str) -> Option<Colour> {
        let own = self.0.iter().find(|colour| colour.name.eq_ignore_ascii_case(name.trim()));
        own.cloned().or_else(|| Colour::built_in(name))
    }

    /// All names.
    pub(super) fn names(&self) -> Vec<&str> {
        self.0.iter().map(|own| own.name.as_str()).chain(BUILT_IN.iter().map(|one| one.0)).collect()
    }
}
