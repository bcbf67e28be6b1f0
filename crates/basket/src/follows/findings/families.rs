//! All families of checks.

use super::case::Case;
use super::finding::Finding;
use super::{
    base, crossing, fittings, groove, handle, lashing, levels, lid, mould, neck, notes, outline, paths, pins,
    rim, rivets, staves, stock, weave, weave_runs,
};

/// What all families of checks find, in making order; remedies are as they are thought of.
pub(super) fn found(case: &Case<'_>) -> Vec<Finding> {
    let families: [fn(&Case<'_>) -> Vec<Finding>; 20] = [
        levels::check,
        mould::check,
        outline::check,
        paths::check,
        neck::check,
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
        rivets::check,
        lid::check,
        notes::check,
    ];
    let own = families.iter().flat_map(|family| family(case));
    own.chain(lid::of_vessel(case, found)).collect()
}
