//! From a pattern to a basket, in making order.

use serde::Serialize;

use crate::base::Base;
use crate::choice::Choice;
use crate::cuts::{self, Cut};
use crate::findings::{self, Finding};
use crate::fittings::{Ears, Handle, Pins};
use crate::lashing::{Filler, Lashing};
use crate::measure::Length;
use crate::mould::Mould;
use crate::pattern::{CoursePattern, Finish, Language, Note, Pattern, Units};
use crate::rim::{self, Rim};
use crate::staves::{Needs, Staves};
use crate::steps::{self, Step};
use crate::stock::{Catalogue, Kind, Material};
use crate::weave::layout::{Laid, lay_out};
use crate::weave::{self, Weave};

/// Everything computed for one basket. A plain value: nothing in it changes once it is made.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Basket {
    /// Name of the basket.
    pub title: String,
    /// Units in which the maker thinks.
    pub units: Units,
    /// Language of the sheets; none when the pattern does not say.
    pub language: Option<Language>,
    /// The mould.
    pub mould: Mould,
    /// The base.
    pub base: Base,
    /// The staves.
    pub staves: Staves,
    /// The weaving.
    pub weave: Weave,
    /// The rim.
    pub rim: Rim,
    /// The filler, if there is one.
    pub filler: Option<Filler>,
    /// The lashing.
    pub lashing: Lashing,
    /// The pins.
    pub pins: Pins,
    /// The ears, if there are any.
    pub ears: Option<Ears>,
    /// The handle, if there is one.
    pub handle: Option<Handle>,
    /// What protects it.
    pub finish: Finish,
    /// The maker's own words and photographs for the steps.
    pub notes: Vec<Note>,
    /// What Stavewright chose, and why.
    pub choices: Vec<Choice>,
    /// The cut list, in making order.
    pub cuts: Vec<Cut>,
    /// The steps, in making order.
    pub steps: Vec<Step>,
    /// The findings, heaviest first.
    pub findings: Vec<Finding>,
}

/// Computes the whole basket: form, base, staves, weaving, rim, fittings, then what follows from them.
///
/// Total: every pattern gives a basket. What cannot be woven is said in its findings.
pub fn assemble(pattern: &Pattern, catalogue: &Catalogue) -> Basket {
    let own_catalogue;
    let catalogue = if pattern.materials.is_empty() {
        catalogue
    } else {
        own_catalogue = catalogue.with(&pattern.materials);
        &own_catalogue
    };
    let mut choices = Vec::new();
    let mould = Mould::of(&pattern.mould);
    let stave_thickness = pattern.staves.stock.as_ref().map(|stock| stock.thickness);
    let base = Base::of(&pattern.base, stave_thickness, &mould, catalogue, &mut choices);

    let chosen_courses;
    let courses = if pattern.weave.courses.is_empty() {
        chosen_courses = weave::defaults::courses(catalogue, &mould, &mut choices);
        &chosen_courses
    } else {
        &pattern.weave.courses
    };
    let laid = lay_out(courses, &mould);
    let top = laid.last().map_or(Length::ZERO, Laid::to);
    let rim_stocks = rim::stocks(&pattern.rim, catalogue, &mut choices);
    let staves = Staves::solve(
        &pattern.staves,
        &stave_stocks(catalogue),
        &mould,
        &base,
        &Needs {
            wall: top,
            rim: rim_stocks.0.width,
            weaver: thickest(courses),
            ears: pattern.ears.is_some(),
            holds: &|count| courses.iter().all(|course| course.runs_on(count)),
        },
        &mut choices,
    );
    let weave = Weave::of(&laid, pattern.weave.shrink, &pattern.staves.colours, &mould, &staves);

    let rim_radius = rim::middle_radius(&mould, top, &rim_stocks.0);
    let ears = pattern
        .ears
        .as_ref()
        .map(|ears| Ears::of(ears, rim_radius, rim_stocks.0.width, &staves, &mut choices));
    let rim = Rim::of(&pattern.rim, rim_stocks, &mould, &staves, top, ears.as_ref(), &mut choices);
    let filler = Filler::of(&pattern.filler, catalogue, &rim, &staves, ears.as_ref(), &mut choices);
    let lashing = Lashing::of(
        &pattern.lashing,
        catalogue,
        &rim,
        &staves,
        filler.as_ref(),
        finest(courses).unwrap_or(&rim.outer.stock),
        &mut choices,
    );
    let pins = Pins::of(&pattern.pins, catalogue, &rim, &staves, &mut choices);
    let handle = pattern
        .handle
        .as_ref()
        .zip(ears.as_ref())
        .map(|(handle, ears)| Handle::of(handle, catalogue, ears, &rim, &mould, &staves, &mut choices));

    let mut basket = Basket {
        title: pattern.title.clone(),
        units: pattern.units,
        language: pattern.language,
        mould,
        base,
        staves,
        weave,
        rim,
        filler,
        lashing,
        pins,
        ears,
        handle,
        finish: pattern.finish,
        notes: pattern.notes.clone(),
        choices,
        cuts: Vec::new(),
        steps: Vec::new(),
        findings: Vec::new(),
    };
    basket.cuts = cuts::list(pattern, &basket);
    basket.steps = steps::list(&basket);
    basket.findings = findings::check(pattern, catalogue, &basket);
    basket
}

/// The stock that staves may be cut from when the pattern leaves it open.
fn stave_stocks(catalogue: &Catalogue) -> Vec<Material> {
    let fit = |material: &&Material| {
        matches!(material.kind, Kind::FlatOvalReed | Kind::FlatReed | Kind::BinderCane | Kind::Splint)
            && STAVE_WIDTHS.contains(&material.width.to_mm())
    };
    catalogue.materials.iter().filter(fit).cloned().collect()
}

/// Widths of staves in millimetres that are looked at (common practice for mould baskets).
const STAVE_WIDTHS: std::ops::RangeInclusive<f64> = 3.5..=16.0;

/// Thickness of the thickest weaver: the least gap through which the weaving can turn.
fn thickest(courses: &[CoursePattern]) -> Length {
    weavers(courses).map(|weaver| weaver.thickness).fold(Length::ZERO, Length::max)
}

/// The narrowest weaver; it also lashes the rim unless the pattern says otherwise.
fn finest(courses: &[CoursePattern]) -> Option<&Material> {
    weavers(courses).min_by(|a, b| a.width.to_mm().total_cmp(&b.width.to_mm()))
}

fn weavers(courses: &[CoursePattern]) -> impl Iterator<Item = &Material> {
    courses.iter().flat_map(CoursePattern::materials)
}
