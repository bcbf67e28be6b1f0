//! Does each course run on this count of staves, and how loose are its floats?

use super::case::Case;
use super::finding::{Finding, Grade, Place};
use super::weave::key;
use crate::message::Value;
use crate::pattern::drawn::Drawn;
use crate::pattern::keys;
use crate::pattern::{CoursePattern, WeaveKind};
use crate::piece::Piece;
use crate::term::Term;
use crate::weave::{Course, Diagonal, FLOAT_ROWS, FLOAT_STAVES, Running};

/// How far from the count others are looked for.
const NEAR: u32 = 60;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let woven = case.pattern.woven_courses();
    let (all, written) = (&case.basket.body.weave.courses, &case.pattern.weave.courses);
    let courses: Vec<Runs<'_>> = all
        .iter()
        .zip(written)
        .zip(1..)
        .map(|((course, pattern), number)| Runs { case, course, pattern, woven: &woven, number })
        .collect();
    let mut found = Vec::new();
    if courses.is_empty() {
        found.extend(default_does_not_lock(case));
    }
    let mut said: Vec<WeaveKind> = Vec::new();
    for runs in &courses {
        let new = !said.contains(&runs.course.weave);
        let faults: Vec<Finding> =
            [runs.does_not_meet(), runs.leans(), runs.plain_after_all(), runs.chart_missing()]
                .into_iter()
                .chain([runs.does_not_lock().filter(|_| new || runs.pattern.chart.is_some())])
                .flatten()
                .collect();
        // Courses of one weave are mended alike.
        if new && !faults.is_empty() {
            said.push(runs.course.weave);
            found.extend(runs.mends());
        }
        found.extend(faults);
        found.extend(runs.floats());
        found.extend(runs.start_past_count());
    }
    found
}

/// The chosen courses are plain weave.
fn default_does_not_lock(case: &Case<'_>) -> Option<Finding> {
    let course = case.basket.body.weave.courses.iter().find(|course| !course.verdict.holds)?;
    let finding = does_not_lock(case, course, 1);
    Some(
        course
            .verdict
            .counts
            .iter()
            .take(2)
            .fold(finding, |finding, count| finding.remedy(keys::staves::COUNT.path, count.to_string())),
    )
}

/// Over `a`, under `b` in one spiral holds if and only if `gcd(n, a + b) ≤ min(a, b)` (own
/// derivation, checked against weaving stave by stave); other weaves are read off their cells.
fn does_not_lock(case: &Case<'_>, course: &Course, number: u32) -> Finding {
    let limit = if course.weave == WeaveKind::Plain { "weave-count-odd" } else { "weave-count-other" };
    Finding::new(Grade::Stop, "weave-does-not-lock", Place::from(Piece::Course(number)))
        .measured(case.basket.body.uprights().count, Value::Term(limit))
        .arg("weave", course.weave.name())
}

struct Runs<'a> {
    case: &'a Case<'a>,
    course: &'a Course,
    /// The course as it is written.
    pattern: &'a CoursePattern,
    /// All courses as they are woven: what is told by its look is turned over where the weaver runs to the left.
    woven: &'a [CoursePattern],
    number: u32,
}

impl Runs<'_> {
    fn place(&self) -> Place {
        Place::from(Piece::Course(self.number))
    }

    fn key(&self, what: &str) -> String {
        key(self.number, what)
    }

    /// The course as it is woven.
    fn as_woven(&self) -> &CoursePattern {
        self.woven.get(self.number as usize - 1).unwrap_or(self.pattern)
    }

    fn count(&self) -> u32 {
        self.case.basket.body.uprights().count
    }

    fn note(&self, grade: Grade, code: &'static str) -> Finding {
        Finding::new(grade, code, self.place())
            .measured(self.count(), self.count())
            .arg("weave", self.course.weave.name())
    }

    /// Adds the nearest count on either side on which this course runs and as many others as can be, none of
    /// them a stop if it can be helped; the one nearer to the wanted gap first.
    fn with_counts(&self, finding: Finding) -> Finding {
        let course = self.as_woven();
        let together = |count: u32| {
            let running = Running::of(self.woven, count);
            course.runs_on(count).then_some((!running.stops(), running.run))
        };
        let best = self.near().filter_map(together).max();
        let counts = self.either_side(&|count| best.is_some() && together(count) == best);
        let finding = counts
            .iter()
            .fold(finding, |finding, count| finding.remedy(keys::staves::COUNT.path, count.to_string()));
        // Where no count suits all, this course may be woven another way.
        let ways = self.course.verdict.mends.iter().filter_map(|mend| self.pattern.change(*mend));
        ways.fold(finding, |finding, (key, value)| finding.remedy(self.key(key), value))
    }

    /// The counts that are looked at beside this one.
    fn near(&self) -> impl DoubleEndedIterator<Item = u32> {
        let count = self.count();
        let least = count.saturating_sub(NEAR).max(3);
        (least..=count.saturating_add(NEAR).min(999)).filter(move |near| *near != count)
    }

    fn either_side(&self, runs: &dyn Fn(u32) -> bool) -> Vec<u32> {
        let (count, staves) = (self.count(), &self.case.basket.body.staves());
        let fewer = self.near().rev().find(|&near| near < count && runs(near));
        let more = self.near().find(|&near| near > count && runs(near));
        let girth = (staves.gap_rim + staves.uprights.width) * f64::from(count);
        let off =
            |count: u32| (girth / f64::from(count) - staves.uprights.width - staves.gap_wanted).abs().to_mm();
        let mut counts: Vec<u32> = fewer.into_iter().chain(more).collect();
        counts.sort_by(|a, b| off(*a).total_cmp(&off(*b)));
        counts
    }

    fn does_not_lock(&self) -> Option<Finding> {
        if self.course.verdict.holds {
            return None;
        }
        if let Some(chart) = &self.pattern.chart {
            return Some(self.chart_does_not_lock(chart));
        }
        Some(self.with_step(self.with_counts(does_not_lock(self.case, self.course, self.number))))
    }

    /// Adds the least step, where the pattern says one.
    fn with_step(&self, finding: Finding) -> Finding {
        if self.pattern.step.is_some() { finding.remedy(self.key("step"), "1") } else { finding }
    }

    /// A drawing locks or not by itself, whatever the count; what is wrong with it is named by its columns.
    fn chart_does_not_lock(&self, chart: &Drawn) -> Finding {
        let columns = chart.columns_on_one_side();
        let Some(&first) = columns.first() else {
            // Fewer staves than the drawing is wide, and of those some are loose.
            return self.with_counts(does_not_lock(self.case, self.course, self.number));
        };
        let mut finding = self.note(Grade::Stop, "weave-chart-does-not-lock").arg("column", first);
        (finding.measured, finding.limit) = (Value::from(columns.len() as u32), Value::from(0_u32));
        finding.remedy(self.key("chart"), chart.with_opposite_row())
    }

    fn mends(&self) -> impl Iterator<Item = Finding> + '_ {
        self.course.verdict.mends.iter().map(|mend| {
            let finding = self
                .note(Grade::Note, "weave-mend")
                .arg("mend", Value::Term(mend.term()))
                .arg("look", Value::Term(self.as_woven().mended_look(*mend, self.count())));
            match self.pattern.change(*mend) {
                Some((key, value)) => finding.remedy(self.key(key), value),
                None => finding.remedy(keys::staves::COUNT.path, (self.count() + 1).to_string()),
            }
        })
    }

    /// Rows that begin anew, weavers that chase and drawings do not suit every count.
    fn does_not_meet(&self) -> Option<Finding> {
        let verdict = &self.course.verdict;
        (verdict.holds && !verdict.closes).then(|| {
            let code = if verdict.diagonal == Diagonal::Uneven { "weave-chase-uneven" } else { "weave-seam" };
            let mut finding = self.note(Grade::Care, code);
            finding.limit = Value::from(self.course.fabric.repeat());
            self.with_counts(finding)
        })
    }

    /// A twill leans as its count or its step decides, not as the pattern asks; on some counts it does not at
    /// all.
    fn leans(&self) -> Option<Finding> {
        let verdict = &self.course.verdict;
        if !self.course.weave.has_diagonal() || !verdict.holds {
            return None;
        }
        let finding = match (
            verdict.diagonal.lean().map(|lean| self.case.pattern.direction().seen(lean)),
            self.pattern.lean,
        ) {
            (None, _) => self.note(Grade::Note, "weave-no-diagonal"),
            (Some(lean), Some(wanted)) if lean != wanted => self
                .note(Grade::Care, "weave-leans-other-way")
                .arg("lean", Value::Term(lean.term()))
                .arg("wanted", Value::Term(wanted.term())),
            _ => return None,
        };
        Some(self.with_step(self.with_counts(finding)))
    }

    fn plain_after_all(&self) -> Option<Finding> {
        (!self.course.fabric.suits()).then(|| {
            let finding = self.note(Grade::Note, "weave-skips-none");
            finding
                .remedy(keys::staves::COUNT.path, (self.count() + 1).to_string())
                .remedy(keys::staves::COUNT.path, (self.count() - 1).max(4).to_string())
                .remedy(self.key("weave"), format!("\"{}\"", WeaveKind::Plain))
        })
    }

    fn chart_missing(&self) -> Option<Finding> {
        (self.course.weave.is_drawn() && self.pattern.chart.is_none()).then(|| {
            let file = self.pattern.chart_file.as_deref().unwrap_or_default();
            self.note(Grade::Stop, "weave-chart-missing")
                .arg("file", file)
                .remedy(self.key("chart"), "[\"X.\", \".X\"]")
        })
    }

    fn start_past_count(&self) -> Option<Finding> {
        let start = self.pattern.start?;
        (start > self.count()).then(|| {
            let mut finding = self.note(Grade::Care, "weave-start-past-count");
            finding.measured = start.into();
            finding.remedy(self.key("start"), "1")
        })
    }

    /// Floats longer than the pattern's limit, else than the usual one.
    fn floats(&self) -> impl Iterator<Item = Finding> {
        let (weave, verdict) = (&self.case.pattern.weave, &self.course.verdict);
        let staves = ("weave-float-staves", verdict.float_staves, weave.float_staves.unwrap_or(FLOAT_STAVES));
        let rows = ("weave-float-rows", verdict.float_rows, weave.float_rows.unwrap_or(FLOAT_ROWS));
        // A weave that does not hold floats without end; that is said already.
        let both = if verdict.holds { vec![staves, rows] } else { Vec::new() };
        let long = both.into_iter().filter(|(_, float, limit)| float > limit);
        let finding = |(code, float, limit): (&'static str, u32, u32)| {
            let finding = Finding::new(Grade::Care, code, self.place())
                .measured(float, limit)
                .arg("weave", self.course.weave.name());
            // Another limit is for the maker to set, and what fits a hand-drawn weave only they know.
            let shorter = self.course.weave.shortened(limit).filter(|shorter| *shorter != self.course.weave);
            finding.maybe(&self.key("weave"), shorter.map(|weave| format!("\"{weave}\"")))
        };
        long.map(finding).collect::<Vec<_>>().into_iter()
    }
}
