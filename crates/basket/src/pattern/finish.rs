//! What protects the finished basket.

use super::word::words;

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

words! { Finish:
    None = "none", "finish-none";
    Shellac = "shellac", "finish-shellac";
    StainAndShellac = "stain-and-shellac", "finish-stain-and-shellac";
    Oil = "oil", "finish-oil";
}
