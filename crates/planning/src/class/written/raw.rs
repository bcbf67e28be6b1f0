//! The file, before anybody asks whether what it says makes sense.

use serde::Deserialize;
use toml::Spanned;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct File {
    pub(super) title: Spanned<String>,
    pub(super) pattern: Spanned<String>,
    pub(super) zone: Spanned<String>,
    pub(super) moulds: Spanned<i64>,
    pub(super) drills: Option<Spanned<i64>>,
    #[serde(default)]
    pub(super) students: Vec<Students>,
    #[serde(default)]
    pub(super) days: Vec<Days>,
    pub(super) teacher: Option<AtOnce>,
    pub(super) tables: Option<AtOnce>,
    pub(super) home: Option<Home>,
    pub(super) samples: Option<Samples>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Students {
    pub(super) count: Spanned<i64>,
    pub(super) hand: Spanned<String>,
    pub(super) from: Option<Spanned<String>>,
    #[serde(default)]
    pub(super) ready: Vec<Spanned<String>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Days {
    pub(super) date: Spanned<String>,
    pub(super) hours: Vec<Spanned<String>>,
    pub(super) times: Option<Spanned<i64>>,
    pub(super) every: Option<Spanned<i64>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct AtOnce {
    pub(super) at_once: Spanned<i64>,
    pub(super) steps: Vec<Spanned<String>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Home {
    pub(super) steps: Vec<Spanned<String>>,
    pub(super) hours: Spanned<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Samples {
    pub(super) stages: Option<Vec<Spanned<String>>>,
    pub(super) hours: Spanned<String>,
    pub(super) moulds: Option<Spanned<i64>>,
}
