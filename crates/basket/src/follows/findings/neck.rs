//! Does the wall stay open to its rim?

use super::case::Case;
use super::finding::{Finding, Grade, Place};
use super::weave::{ends_lower, last};
use super::write;
use crate::pattern::MouldForm;
use crate::pattern::keys;
use crate::piece::Piece;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    closes(case).into_iter().collect()
}

/// Where the radius comes to nothing, or to less than the staves need, there is no basket.
fn closes(case: &Case<'_>) -> Option<Finding> {
    let neck = case.basket.body.neck();
    if !neck.closes() {
        return None;
    }
    let place = Place::from(Piece::Mould).at(neck.spot.height);
    let mut finding = Finding::new(Grade::Stop, "wall-closes", place)
        .measured(neck.radius, neck.needed)
        .arg("count", case.basket.body.uprights().count);
    if neck.spot.along > case.basket.body.form.arc()
        && let Some((course, number)) = last(case)
    {
        let (key, value) = ends_lower(case, course, number);
        finding = finding.remedy(key, value);
    }
    if let MouldForm::Drawn { base, .. } = &case.pattern.mould.form {
        finding = finding.remedy(keys::mould::RIM.path, write::at_least(*base, case.units()));
    }
    Some(finding)
}
