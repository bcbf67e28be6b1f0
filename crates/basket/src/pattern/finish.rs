//! What protects the finished basket.

use crate::message::Term;

/// What protects the finished basket.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Finish {
    /// Left bare.
    None,
    /// Thin coats of shellac.
    #[default]
    Shellac,
    /// Stain, then shellac.
    StainAndShellac,
    /// Drying oil.
    Oil,
}

impl Term for Finish {
    fn term(self) -> &'static str {
        match self {
            Self::None => "finish-none",
            Self::Shellac => "finish-shellac",
            Self::StainAndShellac => "finish-stain-and-shellac",
            Self::Oil => "finish-oil",
        }
    }
}
