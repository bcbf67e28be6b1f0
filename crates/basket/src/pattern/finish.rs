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
    /// Varnish.
    Varnish,
}

words! { Finish:
    None = "none", "finish-none";
    Shellac = "shellac", "finish-shellac";
    StainAndShellac = "stain-and-shellac", "finish-stain-and-shellac";
    Oil = "oil", "finish-oil";
    Varnish = "varnish", "finish-varnish";
}

/// What a finish goes on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FinishPart {
    /// The whole basket.
    All,
    /// The handle.
    Handle,
    /// The base.
    Base,
    /// The rim.
    Rim,
}

words! { FinishPart:
    All = "all", "finish-part-all";
    Handle = "handle", "finish-part-handle";
    Base = "base", "finish-part-base";
    Rim = "rim", "finish-part-rim";
}
