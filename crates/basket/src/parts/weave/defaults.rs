//! What a pattern leaves open of its weaving: the courses, and the face of the first weaver.

use crate::form::Form;
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::pattern::keys;
use crate::pattern::{CaneFace, CoursePattern, HoopWay, Pattern, Until, WeaveKind, Word};
use crate::stock::{Catalogue, Kind, Material};
use crate::weave::layout::Laid;

/// Rows in the finer weaver at the base, where staves stand close (common practice).
const FINE_ROWS: u32 = 4;
/// Width of the usual weaver (common practice: 1.5 to 2.25 mm; makers weave 6 in baskets with 2.25 mm throughout).
const USUAL_WIDTH: Length = Length::mm(2.25);

/// Plain weave: a few rows one grade finer, the rest in the usual cane. Where the hoops go on as rings the
/// weaving ends at the top of the mould, less what packing takes; hoops that are bent in their place need
/// the mould behind them.
pub fn courses(form: &Form, pattern: &Pattern, making: &mut Making<'_>) -> Vec<CoursePattern> {
    let Some(weaver) = usual(making.catalogue) else { return Vec::new() };
    let finer = one_finer(making.catalogue, &weaver).unwrap_or_else(|| weaver.clone());
    let bent = pattern.rim.hoops == Some(HoopWay::Bent);
    let (room, id) = if bent {
        (Length::inches(1.0).min(form.height() / 4.0), "choice-weave-courses-bent")
    } else {
        let shrink = pattern.weave.shrink.or(making.hand.shrink).unwrap_or(weaver.shrink);
        (form.height() * shrink, "choice-weave-courses")
    };
    let reason = Message::new(id)
        .with("rows", FINE_ROWS)
        .with("finer", &finer)
        .with("weaver", &weaver)
        .with("room", room);
    making.chose(keys::weave::COURSES.path, weaver.name.as_str(), reason);
    let course = |weaver, until| CoursePattern::new(WeaveKind::Plain, weaver, until);
    vec![course(finer, Until::Rows(FINE_ROWS)), course(weaver, Until::BelowTop(room))]
}

/// The face of the first weaver that looks out in the first rows, where it is a cane and has two.
pub(super) fn first_face(
    pattern: &Pattern,
    courses: &[Laid<'_>],
    making: &mut Making<'_>,
) -> Option<CaneFace> {
    let first = courses.iter().find(|course| course.rows > 0)?;
    let is_cane = matches!(first.pattern.weaver.kind, Kind::ChairCane | Kind::BinderCane);
    is_cane.then(|| {
        pattern.weave.first_face.unwrap_or_else(|| {
            let reason = Message::new("choice-weave-first-face");
            making.chose(keys::weave::FIRST_FACE.path, CaneFace::Dull.word(), reason);
            CaneFace::Dull
        })
    })
}

/// The cane whose width is nearest to the usual one.
fn usual(catalogue: &Catalogue) -> Option<Material> {
    let off = |cane: &Material| (cane.width - USUAL_WIDTH).abs().to_mm();
    catalogue.of_kind(Kind::ChairCane).min_by(|a, b| off(a).total_cmp(&off(b))).cloned()
}

/// The widest cane that is narrower than another.
fn one_finer(catalogue: &Catalogue, than: &Material) -> Option<Material> {
    let narrower = catalogue.of_kind(Kind::ChairCane).filter(|cane| cane.width < than.width);
    narrower.max_by(|a, b| a.width.to_mm().total_cmp(&b.width.to_mm())).cloned()
}
