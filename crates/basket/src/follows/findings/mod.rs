//! Checked facts about a basket: will it work, and what to change if not.

mod base;
mod case;
mod crossing;
mod families;
mod finding;
mod fittings;
mod foot;
mod groove;
mod handle;
mod lashing;
mod levels;
mod lid;
mod mends;
mod mould;
mod neck;
mod nest;
mod notes;
mod outline;
mod paths;
mod pins;
mod rim;
mod rivets;
mod staves;
mod stock;
mod weave;
mod weave_runs;
pub(in crate::follows) mod write;

pub use finding::{Finding, Grade, Place, Remedy};
pub use nest::in_a_nest;

use self::case::Case;
use crate::basket::Basket;
use crate::pattern::Pattern;
use crate::steps::Step;
use crate::stock::Catalogue;

/// The codes of all checks, in making order.
pub const CODES: &[&str] = &[
    "mould-undercut",
    "mould-level-pointed",
    "mould-does-not-come-apart",
    "oval-part-not-computed",
    "oval-girth-contradicts",
    "oval-ends-gape",
    "staves-lean",
    "staves-strained",
    "wall-closes",
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
    "pins-far-apart",
    "pin-misses-stave",
    "ears-off-opposite",
    "ear-too-wide",
    "ear-tail-short",
    "ear-tail-too-long",
    "ear-tail-too-thick",
    "ear-hole-near-edge",
    "handle-fouls-rim",
    "handle-cannot-fold",
    "ear-shows",
    "handle-end-short",
    "handle-cheek-thin",
    "handle-ends-long",
    "knob-fouls-rim",
    "bail-bent-too-hard",
    "handle-uneven",
    "rivet-too-short",
    "lid-clearance",
    "lid-clearance-cap",
    "lid-ledge-narrow",
    "lid-cap-shallow",
    "lid-not-flush",
    "lid-on-ears",
    "lid-too-flat",
    "lid-under-handle",
    "nest-clearance",
    "note-without-step",
];

/// All findings about a basket: first what stops it, then what wants care, then what is good to
/// know, each in making order; but weaves and what mends them come first of what is good to know.
///
/// The catalogue serves to name a better stock in a remedy, and to try it.
pub fn check(pattern: &Pattern, catalogue: &Catalogue, basket: &Basket, steps: &[Step]) -> Vec<Finding> {
    let case = Case { pattern, catalogue, basket, steps };
    let mut findings = families::found(&case);
    mends::keep(&case, &mut findings);
    in_order(findings)
}

/// The same, and no remedy is tried: each that comes to mind is there, be it that it does not mend.
pub fn check_alone(
    pattern: &Pattern,
    catalogue: &Catalogue,
    basket: &Basket,
    steps: &[Step],
) -> Vec<Finding> {
    in_order(families::found(&Case { pattern, catalogue, basket, steps }))
}

fn in_order(mut findings: Vec<Finding>) -> Vec<Finding> {
    findings.sort_by_key(|finding| (finding.grade, order(finding)));
    findings
}

/// Notes on weaves go before others, next to what mends them.
fn order(finding: &Finding) -> u32 {
    match finding.code {
        _ if finding.grade != Grade::Note => 0,
        "weave-mend" => 1,
        code if code.starts_with("weave-") => 0,
        _ => 2,
    }
}
