//! Samples for a lesson or a filmed show, counted back from it.

use basket::steps::{Stage, Step};

use super::backward::{Past, whole};
use super::prepared::{Block, Prepared, Sample, prepare};
use super::span::{DAY, Span};
use crate::class::schedule::{Minute, Window};

/// What is to be shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Show {
    /// The stages, one sample each.
    pub stages: Vec<Stage>,
    /// Minutes of work a day, between an hour and a whole day.
    pub work_a_day: f64,
    /// How many moulds there are; none for as many as the latest beginning asks for. At least one,
    /// and never fewer than samples stand on at the show.
    pub moulds: Option<u32>,
}

impl Default for Show {
    /// The stages at which a lesson goes on from a sample, and six hours of work a day (common
    /// practice).
    fn default() -> Self {
        use Stage::{Finished, HalfWoven, Lashed, RimClamped, StavesSet, Woven};
        Self {
            stages: vec![StavesSet, HalfWoven, Woven, RimClamped, Lashed, Finished],
            work_a_day: 360.0,
            moulds: None,
        }
    }
}

/// What a day before the show asks for.
#[derive(Clone, Debug, PartialEq)]
pub struct Day {
    /// How many days before the show, from 1.
    pub before: u32,
    /// The work, in order.
    pub tasks: Vec<Task>,
}

/// Work on one sample on one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Task {
    /// Which sample, counted from 0; none for all of them together.
    pub sample: Option<usize>,
    /// Number of the step.
    pub step: u32,
    /// Minutes of work on this day.
    pub minutes: f64,
    /// Whether the step was begun on a day before.
    pub goes_on: bool,
}

/// The samples of a show and their plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Demonstration {
    /// One for each stage shown, in making order.
    pub samples: Vec<Sample>,
    /// Cutting and shaping the staves of all samples, which are alike and one job; none for a single sample.
    pub together: Option<Block>,
    /// Stages that were asked for and that this basket never reaches, or not in all the days that are looked at.
    pub missing: Vec<Stage>,
    /// Most moulds that are taken at once.
    pub moulds: u32,
    /// Moulds on which samples stand when the show begins.
    pub moulds_at_show: u32,
    /// Minutes of work a day.
    pub work_a_day: f64,
}

/// So many days before a show are looked at at the most.
const MOST_DAYS: i64 = 100_000;

impl Demonstration {
    /// Plans backward from the show, so that the first sample is begun as late as one pair of hands allows.
    pub fn of(steps: &[Step], show: &Show) -> Self {
        let work_a_day = if show.work_a_day.is_finite() { show.work_a_day.clamp(60.0, DAY) } else { DAY };
        let wanted: Vec<(Stage, Minute)> = show.stages.iter().map(|stage| (*stage, 0)).collect();
        let past = Past { hours: hours(steps, show.stages.len(), whole(work_a_day)), moulds: show.moulds };
        let prepared = prepare(steps, &wanted, past);
        let Prepared { samples, together, missing } =
            prepared.unwrap_or_else(|| Prepared { missing: show.stages.clone(), ..Prepared::default() });
        let moulds: Vec<Span> = samples.iter().filter_map(|sample| Some(sample.mould?.1)).collect();
        Self {
            missing,
            moulds: at_once(&moulds),
            moulds_at_show: count(moulds.iter().filter(|span| span.to <= 0.0)),
            work_a_day,
            together,
            samples,
        }
    }

    /// Latest moment at which any work begins.
    pub fn begin(&self) -> f64 {
        let together = self.together.iter().filter_map(Block::begin).fold(0.0, f64::max);
        self.samples.iter().map(|sample| sample.begin).fold(together, f64::max)
    }

    /// Minutes of work in all.
    pub fn work_minutes(&self) -> f64 {
        let own = self.samples.iter().flat_map(|sample| &sample.blocks);
        own.chain(&self.together).map(Block::minutes).sum()
    }

    /// The work day by day, the earliest first.
    pub fn days(&self) -> Vec<Day> {
        let own = self.samples.iter().enumerate();
        let own = own.flat_map(|(index, sample)| sample.blocks.iter().map(move |block| (Some(index), block)));
        let blocks = self.together.iter().map(|block| (None, block)).chain(own);
        let mut tasks: Vec<(f64, Task)> = blocks
            .flat_map(|(sample, block)| {
                block.work.iter().enumerate().map(move |(index, span)| {
                    let minutes = span.from - span.to;
                    (span.from, Task { sample, step: block.step, minutes, goes_on: index > 0 })
                })
            })
            .collect();
        tasks.sort_by(|(a, _), (b, _)| b.total_cmp(a));
        let mut days: Vec<Day> = Vec::new();
        for (from, task) in tasks {
            let before = day_before(from);
            match days.last_mut().filter(|day| day.before == before) {
                Some(day) => day.tasks.push(task),
                None => days.push(Day { before, tasks: vec![task] }),
            }
        }
        days
    }
}

/// The first hours of each day before the show, as many as the work of all samples, done one after the other,
/// could ask for.
fn hours(steps: &[Step], samples: usize, work_a_day: Minute) -> Vec<Window> {
    let day = whole(DAY);
    let days = steps.iter().map(|step| {
        let rest = whole(step.wait_minutes) + whole(step.soak_minutes.unwrap_or(0.0));
        whole(step.work_minutes) / work_a_day.max(1) + rest / day + 3
    });
    let days = days.sum::<i64>().saturating_mul(i64::try_from(samples).unwrap_or(i64::MAX).max(1));
    let window = |before: i64| Window { from: (before + 1) * day - work_a_day, to: (before + 1) * day };
    (0..days.min(MOST_DAYS)).map(window).collect()
}

/// On which day before the show a moment lies, from 1; the show's own day is 0.
pub fn day_before(minutes: f64) -> u32 {
    (minutes / DAY).ceil().max(0.0) as u32
}

/// Most spans that share a moment.
fn at_once(spans: &[Span]) -> u32 {
    let sharing =
        |one: &Span| count(spans.iter().filter(|other| other.from >= one.from && other.to < one.from));
    spans.iter().map(sharing).max().unwrap_or(0)
}

fn count<T>(things: impl Iterator<Item = T>) -> u32 {
    u32::try_from(things.count()).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;
    use basket::pattern::StepKind;

    /// A step with work and waiting in hours.
    fn step(number: u32, stage: Stage, work: f64, wait: f64) -> Step {
        Step {
            of: basket::Of::Body,
            number,
            kind: StepKind::Cut,
            text: Vec::new(),
            soak_minutes: None,
            work_minutes: 60.0 * work,
            learner_minutes: 120.0 * work,
            wait_minutes: 60.0 * wait,
            tools: Vec::new(),
            cautions: Vec::new(),
            stage,
        }
    }

    /// A basket of four steps: two hours, one hour, four hours and a day of drying, one hour.
    fn steps() -> Vec<Step> {
        vec![
            step(1, Stage::Prepared, 2.0, 0.0),
            step(2, Stage::BaseOnMould, 1.0, 0.0),
            step(3, Stage::OffMould, 4.0, 24.0),
            step(4, Stage::Finished, 1.0, 0.0),
        ]
    }

    fn show(stages: &[Stage]) -> Demonstration {
        Demonstration::of(&steps(), &Show { stages: stages.to_vec(), work_a_day: 360.0, moulds: None })
    }

    #[test]
    fn one_sample_is_begun_as_late_as_its_drying_allows() {
        // By hand: days of six hours, the show at the hour at which work begins. The finish takes the
        // last hour of the day before (t = 18 h to 19 h). Drying ends at 19 h, so weaving ends at 43 h
        // before, in the working hours (42 h to 48 h) of the second day: four hours bring it to 47 h,
        // the base to 48 h. Shaping the staves then takes the last two hours of the third day, 66 h to 68 h.
        let show = show(&[Stage::Finished]);
        let [sample] = show.samples.as_slice() else { panic!("{show:?}") };
        let hours: Vec<(f64, f64)> = sample
            .blocks
            .iter()
            .flat_map(|block| &block.work)
            .map(|span| (span.from / 60.0, span.to / 60.0))
            .collect();
        assert_eq!(hours, [(68.0, 66.0), (48.0, 47.0), (47.0, 43.0), (19.0, 18.0)]);
        assert_eq!((sample.begin / 60.0, day_before(sample.begin)), (68.0, 3));
        // On the mould from the base until the weaving is dry.
        assert_eq!(sample.mould, Some((0, Span { from: 48.0 * 60.0, to: 19.0 * 60.0 })));
        assert_eq!((show.moulds, show.moulds_at_show), (1, 0));
    }

    #[test]
    fn samples_share_one_pair_of_hands() {
        let show = show(&[Stage::Finished, Stage::BaseOnMould, Stage::OffMould]);
        let mut work: Vec<Span> = show
            .samples
            .iter()
            .flat_map(|sample| &sample.blocks)
            .flat_map(|block| block.work.clone())
            .collect();
        work.sort_by(|a, b| a.to.total_cmp(&b.to));
        assert!(work.windows(2).all(|pair| pair[0].from <= pair[1].to), "{work:?}");
        // The staves of all three are cut in one go, three times two hours, before any of them begins.
        let cut = show.together.as_ref().expect("one job");
        assert_eq!((cut.step, cut.minutes()), (1, 360.0));
        let ends = cut.work.last().expect("work").to;
        assert!(show.samples.iter().all(|sample| sample.begin <= ends), "{show:#?}");
        // Each sample's own work follows itself, with its drying between.
        for sample in &show.samples {
            for pair in sample.blocks.windows(2) {
                let wait = steps()[pair[0].step as usize - 1].wait_minutes;
                assert!(pair[0].work[0].to - wait >= pair[1].work[0].from, "{sample:?}");
            }
        }
    }

    #[test]
    fn a_sample_not_yet_dry_keeps_its_mould_until_the_show() {
        let show = show(&[Stage::Prepared, Stage::BaseOnMould, Stage::Finished]);
        let stages: Vec<Stage> = show.samples.iter().map(|sample| sample.stage).collect();
        assert_eq!(stages, [Stage::Prepared, Stage::BaseOnMould, Stage::Finished]);
        assert_eq!(show.samples[0].mould, None);
        assert_eq!(show.samples[1].mould.map(|(_, span)| span.to), Some(0.0));
        assert_eq!(show.moulds_at_show, 1);
        // The finished one is dry 19 h before, the other's base goes on 20 h before.
        assert_eq!(show.moulds, 2);
    }

    #[test]
    fn moulds_are_counted_where_they_are_needed_together() {
        let span = |from, to| Span { from, to };
        assert_eq!(at_once(&[]), 0);
        assert_eq!(at_once(&[span(10.0, 5.0), span(5.0, 0.0)]), 1);
        assert_eq!(at_once(&[span(10.0, 5.0), span(6.0, 0.0), span(8.0, 7.0)]), 2);
    }

    #[test]
    fn fewer_moulds_mean_an_earlier_beginning() {
        let with = |moulds| {
            let stages = vec![Stage::BaseOnMould, Stage::OffMould, Stage::Finished];
            Demonstration::of(&steps(), &Show { stages, work_a_day: 360.0, moulds })
        };
        let shows = [None, Some(2), Some(1), Some(0)].map(with);
        assert_eq!((shows[1].moulds, shows[2].moulds, shows[3].moulds), (2, 1, 1));
        assert!(shows[0].begin() <= shows[1].begin() && shows[1].begin() < shows[2].begin(), "{shows:#?}");
        for show in &shows {
            let blocks: Vec<usize> = show.samples.iter().map(|sample| sample.blocks.len()).collect();
            assert_eq!(blocks, [1, 2, 3], "all work is planned but the cutting");
        }
    }

    #[test]
    fn days_hold_all_work_and_no_more_than_their_hours() {
        let show = show(&[Stage::Finished, Stage::BaseOnMould, Stage::OffMould]);
        let days = show.days();
        let all: f64 = days.iter().flat_map(|day| &day.tasks).map(|task| task.minutes).sum();
        assert!((all - show.work_minutes()).abs() < 1e-6, "{all} of {}", show.work_minutes());
        for day in &days {
            let minutes: f64 = day.tasks.iter().map(|task| task.minutes).sum();
            assert!(minutes <= show.work_a_day + 1e-6, "{day:?}");
        }
        assert!(days.windows(2).all(|pair| pair[0].before > pair[1].before));
    }

    #[test]
    fn stages_that_a_basket_never_reaches_are_named() {
        let show = show(&[Stage::Handled, Stage::Finished, Stage::Finished]);
        assert_eq!((show.missing.as_slice(), show.samples.len()), (&[Stage::Handled][..], 1));
    }
}
