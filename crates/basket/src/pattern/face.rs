//! Which face of a cane looks out.

use super::word::words;

/// A face of a cane.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum CaneFace {
    /// The dull one, which gives where the cane turns hardest.
    #[default]
    Dull,
    /// The shiny one: the bark.
    Shiny,
}

words! { CaneFace:
    Dull = "dull", "cane-face-dull";
    Shiny = "shiny", "cane-face-shiny";
}
