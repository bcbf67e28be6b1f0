//! Checked facts about a basket: will it work, and what to change if not.

mod base;
mod build;
mod case;
mod crossing;
mod fittings;
mod foot;
mod groove;
mod handle;
mod lashing;
mod mends;
mod mould;
mod notes;
mod pins;
mod rim;
mod staves;
mod stock;
mod weave;
mod weave_runs;
mod write;

use serde::Serialize;

use crate::basket::Basket;
use crate::measure::Length;
use crate::message::Term;
use crate::message::Value;
use crate::pattern::Pattern;
use crate::piece::{Of, Piece};
use crate::steps::Step;
use crate::stock::Catalogue;
use case::Case;

/// The codes of all checks, in making order.
pub const CODES: &[&str] = &[
    "mould-undercut",
    "base-wider-than-mould",
    "base-smaller-than-mould",
    "base-wood-moves",
    "groove-too-narrow",
    "groove-too-wide",
    "groove-too-shallow",
    "groove-too-deep",
    "groove-cheek-thin",
    "staves-overlap-in-groove",
    "foot-too-thin",
    "gap-too-small",
    "gap-too-wide",
    "stave-too-stiff",
    "stave-too-short",
    "stave-wasteful",
    "stave-count-surprising",
    "weave-does-not-lock",
    "weave-chart-does-not-lock",
    "weave-mend",
    "weave-seam",
    "weave-chase-uneven",
    "weave-leans-other-way",
    "weave-no-diagonal",
    "weave-skips-none",
    "weave-chart-missing",
    "weave-start-past-count",
    "weave-float-staves",
    "weave-float-rows",
    "course-empty",
    "rows-do-not-fill",
    "rows-past-the-top",
    "strand-too-short",
    "strand-count-surprising",
    "weaver-bends-hard",
    "hoop-bent-too-hard",
    "lap-too-short",
    "scarf-under-ear",
    "scarfs-together",
    "stock-cannot-yield",
    "filler-short",
    "filler-too-narrow",
    "lashing-short",
    "lashing-tail-short",
    "pin-too-short",
    "ear-pin-too-short",
    "pin-splits-stave",
    "pin-misses-stave",
    "ears-off-opposite",
    "ear-too-wide",
    "handle-fouls-rim",
    "handle-cannot-fold",
    "bail-bent-too-hard",
    "handle-uneven",
    "rivet-too-short",
    "note-without-step",
];

/// All findings about a basket: first what stops it, then what wants care, then what is good to
/// know, each in making order; but weaves and what mends them come first of what is good to know.
///
/// The catalogue serves to name a better stock in a remedy, and to try it.
pub fn check(pattern: &Pattern, catalogue: &Catalogue, basket: &Basket, steps: &[Step]) -> Vec<Finding> {
    let case = Case { pattern, catalogue, basket, steps };
    let mut findings = found(&case);
    mends::keep(&case, &mut findings);
    findings.sort_by_key(|finding| (finding.grade, turn(finding)));
    findings
}

/// What all families of checks find, in making order; remedies are as they are thought of.
fn found(case: &Case<'_>) -> Vec<Finding> {
    let families: [fn(&Case<'_>) -> Vec<Finding>; 14] = [
        mould::check,
        base::check,
        groove::check,
        staves::check,
        weave_runs::check,
        weave::check,
        crossing::check,
        rim::check,
        stock::check,
        lashing::check,
        pins::check,
        fittings::check,
        handle::check,
        notes::check,
    ];
    families.iter().flat_map(|family| family(case)).collect()
}

/// Notes on weaves go before others, next to what mends them.
fn turn(finding: &Finding) -> u32 {
    match finding.code {
        _ if finding.grade != Grade::Note => 0,
        "weave-mend" => 1,
        code if code.starts_with("weave-") => 0,
        _ => 2,
    }
}

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Grade {
    /// Cannot be woven as written.
    Stop,
    /// Will show or give trouble.
    Care,
    /// Good to know.
    Note,
}

/// A checked fact. Its sentences stand in the message files under `finding-` and its code:
/// the message says what was found, its attribute `.why` why that matters, `.remedy` what mends it.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// How much it weighs.
    pub grade: Grade,
    /// Which check, such as `weave-does-not-lock`.
    pub code: &'static str,
    /// Where on the basket.
    pub place: Place,
    /// What was measured.
    pub measured: Value,
    /// What it was measured against.
    pub limit: Value,
    /// Changes to the pattern that mend it, best first: each was tried. Empty where none is known.
    pub remedies: Vec<Remedy>,
    /// Further values that the sentences mention.
    pub args: Vec<(&'static str, Value)>,
}

/// A change to the pattern.
#[derive(Clone, Debug, PartialEq)]
pub struct Remedy {
    /// The pattern key, such as `staves.uprights.count`.
    pub key: String,
    /// The value to write, as TOML, such as `73` or `"3/32 in"`.
    pub value: String,
    /// Codes of the cares that come with it.
    pub brings: Vec<&'static str>,
}

/// A place on the basket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// The piece, or all of a sort.
    pub piece: Piece,
    /// Of which vessel.
    pub of: Of,
    /// Height above the mould's base.
    pub height: Option<Length>,
}

impl Term for Grade {
    fn term(self) -> &'static str {
        match self {
            Self::Stop => "grade-stop",
            Self::Care => "grade-care",
            Self::Note => "grade-note",
        }
    }
}
