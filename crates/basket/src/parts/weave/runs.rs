//! What can run on a count of staves: every usual weave and what it does there.

use serde::Serialize;

use crate::pattern::{CoursePattern, Direction, Lean, Rule, Until, Way, WeaveKind};
use crate::stock::Material;
use crate::weave::diagonal::Diagonal;
use crate::weave::look::{Eye, ROWS_READ, Sighting, USUAL_PROPORTION};
use crate::weave::sights::Sights;
use crate::weave::verdict::Verdict;

/// Rows over which floats are counted.
const ROWS: u32 = 60;
/// Usual twills as over and under, the shorter floats first.
const TWILLS: [(u32, u32); 12] =
    [(2, 1), (1, 2), (2, 2), (3, 1), (1, 3), (3, 2), (2, 3), (3, 3), (4, 2), (4, 3), (4, 4), (5, 5)];
/// Twills that are chased.
const CHASED: [(u32, u32); 5] = [(1, 1), (2, 1), (1, 2), (2, 2), (3, 3)];

/// A weave on a count of staves.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Run {
    /// The weave, as a pattern names it.
    pub weave: WeaveKind,
    /// How many weavers are at work at a time.
    pub weavers: u32,
    /// Whether its rows run on or each begins anew.
    pub way: Way,
    /// Whether it runs as wanted: it holds, its rows meet and a twill has a diagonal.
    pub runs: bool,
    /// What it does there and what would mend it.
    pub verdict: Verdict,
    /// What weaver and stave make to the eye, seen from outside.
    pub sighting: Sighting,
    /// To which side its lines climb, or its skips where one stave is skipped a round, seen from outside on a
    /// basket that stands on its base.
    pub lean: Option<Lean>,
}

/// Every usual weave on a count of staves, woven to one side; `weaver` is any material, for none of this
/// depends on it.
pub fn runs_on(count: u32, weaver: &Material, direction: Direction) -> Vec<Run> {
    let course = |weave| CoursePattern::new(weave, weaver.clone(), Until::Rows(ROWS));
    let twill = |(over, under)| Rule::new(over, under);
    let mut courses = vec![course(WeaveKind::Plain)];
    courses.extend(TWILLS.map(|rule| course(WeaveKind::Twill(twill(rule)))));
    courses.extend(CHASED.map(|rule| course(WeaveKind::Chase(twill(rule)))));
    courses.push(CoursePattern { others: vec![weaver.clone(); 2], ..course(WeaveKind::Chase(Rule::PLAIN)) });
    courses.push(course(WeaveKind::Slew(Rule::PLAIN)));
    courses.push(course(WeaveKind::SkipOne));
    courses.push(course(WeaveKind::Pairing));
    courses.extend([3, 4, 5].map(|rods| course(WeaveKind::Wale(rods))));
    let level = |weave| CoursePattern { way: Some(Way::RowByRow), ..course(weave) };
    courses.push(level(WeaveKind::Plain));
    courses.extend([(2, 1), (2, 2), (3, 3)].map(|rule| level(WeaveKind::Twill(twill(rule)))));
    courses.push(course(WeaveKind::ReversedTwill(Rule::new(2, 2))));
    courses.into_iter().map(|course| run(&course, count, direction)).collect()
}

fn run(course: &CoursePattern, count: u32, direction: Direction) -> Run {
    let fabric = course.fabric(count);
    // Twined weavers hide the staves: told apart, the first weaver is followed.
    let seen = |row, stave| {
        fabric.cell(row, stave).outside.map_or(u8::MAX, |weaver| u8::from(weaver > 0 && fabric.twined() > 1))
    };
    let verdict = course.verdict(&fabric, Eye { rows: ROWS, ..Eye::USUAL });
    let sighting = Sights::of(ROWS_READ, count, seen).read(USUAL_PROPORTION);
    let skips = verdict.diagonal == Diagonal::Skips;
    let lean = if skips { verdict.diagonal.lean() } else { sighting.lean() };
    Run {
        weave: course.weave,
        weavers: course.weavers(),
        way: course.rows_follow(),
        runs: course.runs_on(count),
        verdict,
        sighting,
        lean: lean.map(|lean| direction.seen(lean)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::stock::Catalogue;
    use crate::weave::look::Look;

    fn on(count: u32) -> Vec<Run> {
        let cane = Catalogue::built_in().material("cane fine").expect("in the catalogue");
        runs_on(count, cane, Direction::Right)
    }

    fn of(runs: &[Run], weave: &str) -> Run {
        runs.iter().find(|run| run.weave.to_string() == weave).expect("a usual weave").clone()
    }

    /// Counts of continuous twills as published: Anna A. Gill, *Practical Basketry* (1916), models 49, 57
    /// and 60, pages 124, 135 and 136; Ellen Eddy Shaw, *The Library of Work and Play: Gardening and
    /// Farming*, "A gathering basket for flowers": 31 stakes in plain weave, then 2/1.
    #[test]
    fn published_counts_run() {
        for (count, weave) in
            [(31, "twill 3/2"), (26, "twill 2/1"), (16, "twill 2/1"), (31, "twill 2/1"), (31, "plain")]
        {
            assert!(of(&on(count), weave).runs, "{weave} on {count}");
        }
    }

    #[test]
    fn plain_weave_on_an_even_count_is_mended() {
        let runs = on(72);
        let plain = of(&runs, "plain");
        assert!(!plain.runs && !plain.verdict.holds && !plain.verdict.mends.is_empty());
        assert_eq!(plain.sighting.look, Look::Columns);
        assert!(of(&runs, "chase").runs && of(&runs, "skip one").runs);
    }

    #[test]
    fn nothing_is_skipped_on_an_odd_count() {
        let skip = of(&on(73), "skip one");
        assert!(!skip.runs && skip.verdict.holds);
        assert_eq!(skip.verdict.counts, [72, 74, 70, 76]);
    }

    #[test]
    fn the_clean_twill_climbs_one_stave_a_row() {
        let twill = of(&on(73), "twill 2/2");
        assert_eq!((twill.runs, twill.sighting.slope), (true, -1.0));
        assert_eq!(twill.lean, Some(Lean::Right));
        assert_eq!(of(&on(75), "twill 2/2").lean, Some(Lean::Left));
        assert_eq!(of(&on(74), "twill 2/2").sighting.look, Look::Checks);
    }

    #[test]
    fn the_counts_named_turn_the_twill_to_the_other_side() {
        let cane = Catalogue::built_in().material("cane fine").expect("in the catalogue").clone();
        let twill = CoursePattern::new(WeaveKind::Twill(Rule::new(2, 2)), cane, Until::Rows(ROWS));
        let turned = twill.turned_near(73);
        assert_eq!(turned, [71, 75, 67, 79]);
        assert!(turned.iter().all(|count| of(&on(*count), "twill 2/2").lean == Some(Lean::Left)));
        let level = CoursePattern { way: Some(Way::RowByRow), ..twill };
        assert!(level.turned_near(72).is_empty());
    }

    #[test]
    fn three_rods_make_columns_or_lean_by_the_remainder() {
        let wale = |count| of(&on(count), "wale 3").sighting;
        assert_eq!(wale(72).look, Look::Columns);
        assert_eq!((wale(73).lean(), wale(74).lean()), (Some(Lean::Right), Some(Lean::Left)));
    }
}
