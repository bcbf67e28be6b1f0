//! The maker's own words and photographs.

use super::step::StepKind;

/// The maker's own words or photograph for a step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Note {
    /// The step.
    pub step: StepKind,
    /// What to say; paragraphs are parted by an empty line.
    pub text: Option<String>,
    /// What to show.
    pub photo: Option<Photo>,
}

/// A photograph that a pattern names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photo {
    /// Its file, as written: a path that leads downward from the pattern's own folder.
    pub path: String,
    /// Where it stands in the pattern's text, in bytes.
    pub span: std::ops::Range<usize>,
    /// What it shows; stands under it, and instead of it for those who cannot see it.
    pub caption: String,
}
