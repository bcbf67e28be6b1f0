//! Does a weaver stand the bend from one stave to the next?

use super::case::Case;
use super::weave::key;
use super::{Finding, Grade, Part, Place, write};
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::StavesPattern;
use crate::staves::{Needs, Staves};
use crate::stock::{Kind, Material};
use crate::weave::{Course, Crossing, Row};

/// How much more stock stands over the edge of a stave, damp and held down by its neighbours, than in a long
/// bend (from memory, low confidence: cane more than 0.3 against 0.15, reed 0.2 to 0.25 against 0.12; the
/// maker's own test replaces the long bend's figure).
const OVER_AN_EDGE: f64 = 2.2;
/// Gaps that are tried against what the weaver needs: a taper does not keep the wanted gap everywhere.
const TRIED: [f64; 3] = [1.0, 1.15, 1.3];
/// How many smaller counts are tried.
const COUNTS: usize = 3;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let courses = case.basket.weave.courses.iter().zip(1..);
    courses.filter_map(|(course, number)| Hardest::of(case, course)?.finding(case, course, number)).collect()
}

/// Strain that a weaver of this material stands where it crosses; none where none is known.
fn stands(weaver: &Material) -> Option<f64> {
    let known = matches!(
        weaver.kind,
        Kind::RoundReed
            | Kind::FlatReed
            | Kind::FlatOvalReed
            | Kind::HalfRoundReed
            | Kind::ChairCane
            | Kind::BinderCane
    );
    weaver.bend_limit.filter(|_| known).map(|limit| limit * OVER_AN_EDGE)
}

/// The crossing of a course that is hardest on its weaver.
struct Hardest<'a> {
    weaver: &'a Material,
    row: &'a Row,
    crossing: Crossing,
    limit: f64,
}

impl<'a> Hardest<'a> {
    fn of(case: &Case<'a>, course: &'a Course) -> Option<Self> {
        let basket = case.basket;
        let of_weaver = course.weavers.iter().flat_map(|weaver| {
            let first = course.first_row.saturating_sub(1);
            let rows =
                weaver.rows.each().filter_map(move |row| basket.weave.each_row.get((first + row) as usize));
            rows.filter_map(|row| {
                let thickness = weaver.material.thickness;
                let crossing = Crossing::at(row.along, &basket.mould, &basket.staves, thickness);
                Some(Self { weaver: &weaver.material, row, crossing, limit: stands(&weaver.material)? })
            })
        });
        of_weaver.max_by(|one, other| one.load().total_cmp(&other.load()))
    }

    /// Its strain as a share of what the weaver stands.
    fn load(&self) -> f64 {
        self.crossing.strain() / self.limit
    }

    fn finding(&self, case: &Case<'_>, course: &Course, number: u32) -> Option<Finding> {
        let Self { weaver, row, crossing, limit } = self;
        (self.load() > 1.0).then(|| {
            let place = Place::from(Part::Weave).number(number).at(row.height);
            let percent = Value::Percent;
            let trial = Trial { case, course, weaver: self.weaver, limit: self.limit };
            Finding::new(Grade::Note, "weaver-bends-hard", place, percent(crossing.strain()), percent(*limit))
                .arg("row", row.number)
                .arg("weaver", *weaver)
                .arg("thickness", weaver.thickness)
                .arg("gap", crossing.gap.max(Length::ZERO))
                .arg("stave", crossing.thickness)
                .arg("radius", crossing.tightest())
                .maybe(&key(number, "weaver"), trial.thinner(number))
                .maybe("staves.gap", trial.wider_gap(crossing))
                .maybe("staves.count", trial.fewer_staves(crossing))
        })
    }
}

/// What might mend it, put to the proof: the staves are solved for again and the course's crossings measured.
struct Trial<'a> {
    case: &'a Case<'a>,
    course: &'a Course,
    weaver: &'a Material,
    limit: f64,
}

impl Trial<'_> {
    /// A thinner weaver of the same kind, for a course of one material.
    fn thinner(&self, number: u32) -> Option<String> {
        let pattern = self.case.pattern.weave.courses.get((number as usize).checked_sub(1)?)?;
        if !pattern.others.is_empty() {
            return None;
        }
        self.case.stock_like(self.weaver, |other| {
            other.thickness < self.weaver.thickness
                && stands(other)
                    .is_some_and(|limit| self.suits(&self.case.pattern.staves, other.thickness, limit))
        })
    }

    /// A wider gap to aim at.
    fn wider_gap(&self, crossing: &Crossing) -> Option<String> {
        let needed = self.needed(crossing);
        TRIED.iter().find_map(|share| {
            let gap = write::at_least(needed * *share, self.case.units());
            let wanted = Length::parse(gap.trim_matches('"'), None).ok()?;
            self.mends(&StavesPattern { gap: Some(wanted), ..self.case.pattern.staves.clone() })
                .then_some(gap)
        })
    }

    /// Fewer staves, where the pattern says how many.
    fn fewer_staves(&self, crossing: &Crossing) -> Option<String> {
        let count = self.case.pattern.staves.count?;
        let girth = (crossing.width + crossing.gap) * f64::from(count);
        let most =
            (girth / (crossing.width + self.needed(crossing))).floor().clamp(3.0, f64::from(count)) as u32;
        let courses = &self.case.pattern.weave.courses;
        (3..=most.min(count.saturating_sub(1)))
            .rev()
            .filter(|&count| courses.iter().all(|course| course.runs_on(count)))
            .take(COUNTS)
            .find(|&count| {
                self.mends(&StavesPattern { count: Some(count), ..self.case.pattern.staves.clone() })
            })
            .map(|count| count.to_string())
    }

    /// The gap that the weaver stands: `R = (P² + D²)/(4D)` the other way round.
    fn needed(&self, crossing: &Crossing) -> Length {
        let radius = crossing.weaver / (2.0 * self.limit);
        let deep = crossing.thickness + crossing.weaver;
        let squared = 4.0 * deep.to_mm() * radius.to_mm() - deep.to_mm() * deep.to_mm();
        (Length::mm(squared.max(0.0).sqrt()) - crossing.thickness.min(crossing.width)).max(Length::ZERO)
    }

    fn mends(&self, staves: &StavesPattern) -> bool {
        self.suits(staves, self.weaver.thickness, self.limit)
    }

    /// Whether a weaver so thick stands the course on other staves, and no gap is wider than a stave.
    fn suits(&self, staves: &StavesPattern, weaver: Length, limit: f64) -> bool {
        self.staves(staves, weaver)
            .is_some_and(|staves| staves.widest.gap <= staves.width && self.strain(&staves, weaver) <= limit)
    }

    /// The largest strain of a weaver so thick in the course, wherever its rows come to lie.
    fn strain(&self, staves: &Staves, weaver: Length) -> f64 {
        let rows = &self.case.basket.weave.each_row;
        let rows = rows
            .iter()
            .map(|row| row.along)
            .filter(|along| (self.course.from..self.course.to).contains(along));
        let strain = |along| Crossing::at(along, &self.case.basket.mould, staves, weaver).strain();
        rows.chain([self.course.from, self.course.to]).map(strain).fold(0.0, f64::max)
    }

    /// The staves of another pattern on the same mould and base, with a weaver so thick in the course. Where the
    /// pattern leaves the stock or the courses open others might be chosen, and none are given.
    fn staves(&self, pattern: &StavesPattern, weaver: Length) -> Option<Staves> {
        let stock = pattern.stock.clone()?;
        let (basket, courses) = (self.case.basket, &self.case.pattern.weave.courses);
        if courses.is_empty() {
            return None;
        }
        let others = basket.weave.courses.iter().filter(|course| course.first_row != self.course.first_row);
        let others = others.flat_map(|course| &course.weavers).map(|other| other.material.thickness);
        let needs = Needs {
            wall: basket.weave.top_along,
            rim: basket.rim.outer.stock.width,
            weaver: others.fold(weaver, Length::max),
            ears: basket.ears.is_some(),
            holds: &|count| courses.iter().all(|course| course.runs_on(count)),
        };
        Some(Staves::solve(pattern, &[stock], &basket.mould, &basket.base, &needs, &mut Vec::new()))
    }
}
