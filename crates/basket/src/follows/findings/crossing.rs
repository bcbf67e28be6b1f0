//! Does a weaver stand the bend from one stave to the next?

use super::case::Case;
use super::finding::{Finding, Grade, Place};
use super::weave::key;
use super::write;
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::keys;
use crate::piece::Piece;
use crate::stock::Material;
use crate::weave::{Course, Crossing, Row};

/// Gaps that are offered, as shares of what the weaver needs.
const TRIED: [f64; 3] = [1.0, 1.15, 1.3];

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let courses = case.basket.body.weave.courses.iter().zip(1..);
    courses.filter_map(|(course, number)| Hardest::of(case, course)?.finding(case, number)).collect()
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
            let rows = weaver
                .rows
                .each()
                .filter_map(move |row| basket.body.weave.each_row.get((first + row) as usize));
            rows.filter_map(|row| {
                let thickness = weaver.material.thickness;
                let crossing = Crossing::at(row.along, &basket.body.form, basket.body.uprights(), thickness);
                Some(Self { weaver: &weaver.material, row, crossing, limit: weaver.material.over_an_edge()? })
            })
        });
        of_weaver.max_by(|one, other| one.load().total_cmp(&other.load()))
    }

    /// Its strain as a share of what the weaver stands.
    fn load(&self) -> f64 {
        self.crossing.strain() / self.limit
    }

    fn finding(&self, case: &Case<'_>, number: u32) -> Option<Finding> {
        let Self { weaver, row, crossing, limit } = self;
        (self.load() > 1.0).then(|| {
            let place = Place::from(Piece::Course(number)).at(row.height);
            let percent = Value::Percent;
            let ways = Ways { case, weaver, crossing: *crossing, limit: *limit };
            let finding = Finding::new(Grade::Note, "weaver-bends-hard", place)
                .measured(percent(crossing.strain()), percent(*limit))
                .arg("row", row.number)
                .arg("weaver", *weaver)
                .arg("thickness", weaver.thickness)
                .arg("gap", crossing.gap.max(Length::ZERO))
                .arg("stave", crossing.thickness)
                .arg("radius", crossing.tightest())
                .maybe(&key(number, "weaver"), ways.thinner());
            let finding =
                ways.wider_gaps().fold(finding, |finding, gap| finding.remedy(keys::staves::GAP.path, gap));
            finding.maybe(keys::staves::COUNT.path, ways.fewer_staves())
        })
    }
}

/// What might mend it.
struct Ways<'a> {
    case: &'a Case<'a>,
    weaver: &'a Material,
    crossing: Crossing,
    limit: f64,
}

impl Ways<'_> {
    /// A thinner weaver of the same kind.
    fn thinner(&self) -> Option<String> {
        self.case.stock_like(self.weaver, |other| {
            other.thickness < self.weaver.thickness
                && other.over_an_edge().is_some_and(|limit| {
                    Crossing { weaver: other.thickness, ..self.crossing }.strain() <= limit
                })
        })
    }

    /// Wider gaps to aim at; a taper does not keep the wanted gap everywhere.
    fn wider_gaps(&self) -> impl Iterator<Item = String> {
        TRIED.iter().map(|share| write::at_least(self.needed() * *share, self.case.units()))
    }

    /// Fewer staves, where the pattern says how many.
    fn fewer_staves(&self) -> Option<String> {
        let count = self.case.pattern.staves.count?;
        let Crossing { width, gap, .. } = self.crossing;
        let girth = (width + gap) * f64::from(count);
        let most = (girth / (width + self.needed())).floor().clamp(3.0, f64::from(count)) as u32;
        let courses = self.case.pattern.woven_courses();
        (3..=most.min(count.saturating_sub(1)))
            .rev()
            .find(|&count| courses.iter().all(|course| course.runs_on(count)))
            .map(|count| count.to_string())
    }

    /// The gap that the weaver stands: `R = (P² + D²)/(4D)` the other way round.
    fn needed(&self) -> Length {
        let Crossing { width, thickness, weaver, .. } = self.crossing;
        let radius = weaver / (2.0 * self.limit);
        let deep = thickness + weaver;
        let squared = 4.0 * deep.to_mm() * radius.to_mm() - deep.to_mm() * deep.to_mm();
        (Length::mm(squared.max(0.0).sqrt()) - thickness.min(width)).max(Length::ZERO)
    }
}
