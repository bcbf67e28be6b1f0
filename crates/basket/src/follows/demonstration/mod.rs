//! Samples for a lesson or a filmed show: one basket for each stage that is shown, each stopped
//! there, and when each has to be begun so that all stand ready together.
//!
//! Times are minutes before the show, which begins when a working day would. One pair of hands
//! works a fixed time each day before it; material soaks and work dries at any hour.

mod plan;
mod span;

pub use span::{DAY, Span};

use crate::pattern::StepKind;
use crate::steps::{Stage, Step};
use plan::{Chore, place, plan};

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

/// The work of one step on one sample.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Block {
    /// Number of the step.
    pub step: u32,
    /// When hands are at work; nights between are not taken out.
    pub work: Span,
}

/// A basket that stands ready at a stage.
#[derive(Clone, Debug, PartialEq)]
pub struct Sample {
    /// The stage at which it is stopped.
    pub stage: Stage,
    /// Number of the last step done on it.
    pub last_step: u32,
    /// Latest moment to begin, with the first soaking if there is one.
    pub begin: f64,
    /// Minutes of work on it.
    pub work_minutes: f64,
    /// Its own work, in making order; what is done for all samples together is not among it.
    pub blocks: Vec<Block>,
    /// When it holds a mould; none when it never stands on one.
    pub mould: Option<Span>,
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
    /// Stages that were asked for and that this basket never reaches.
    pub missing: Vec<Stage>,
    /// Most moulds that are taken at once.
    pub moulds: u32,
    /// Moulds on which samples stand when the show begins.
    pub moulds_at_show: u32,
    /// Minutes of work a day.
    pub work_a_day: f64,
}

impl Demonstration {
    /// Plans backward from the show: of the work that may come last, what is ready latest comes
    /// last, so that no sample is begun earlier than one pair of hands asks for.
    pub fn of(steps: &[Step], show: &Show) -> Self {
        let work_a_day = if show.work_a_day.is_finite() { show.work_a_day.clamp(60.0, DAY) } else { DAY };
        let reached = |stage: &Stage| steps.iter().position(|step| step.stage == *stage);
        let mut stages = show.stages.clone();
        stages.sort_by_key(|stage| (reached(stage), *stage as usize));
        stages.dedup();
        let (stages, missing): (Vec<Stage>, Vec<Stage>) =
            stages.into_iter().partition(|stage| reached(stage).is_some());
        let chains: Vec<&[Step]> = stages.iter().filter_map(|stage| steps.get(..=reached(stage)?)).collect();
        // Staves are cut for all samples at once: the same gauge, the same bench, one soaking.
        let shared = shared(&chains);
        let own = usize::from(shared.is_some());
        let chores: Vec<Vec<Chore>> = chains
            .iter()
            .map(|chain| chain.get(own..).unwrap_or_default().iter().map(Chore::of).collect())
            .collect();
        let moulds = show.moulds.map_or(usize::MAX, |moulds| moulds.max(1) as usize);
        let plans = plan(&chores, work_a_day, moulds);
        let samples: Vec<Sample> = stages
            .iter()
            .zip(chains)
            .zip(plans)
            .map(|((stage, chain), spans)| sample(*stage, (chain, own), &spans))
            .collect();
        let together = shared.map(|step| cut_together(step, &samples, work_a_day));
        let moulds: Vec<Span> = samples.iter().filter_map(|sample| sample.mould).collect();
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
        let together = self.together.map_or(0.0, |block| block.work.from);
        self.samples.iter().map(|sample| sample.begin).fold(together, f64::max)
    }

    /// Minutes of work in all.
    pub fn work_minutes(&self) -> f64 {
        self.samples.iter().map(|sample| sample.work_minutes).sum()
    }

    /// The work day by day, the earliest first.
    pub fn days(&self) -> Vec<Day> {
        let mut days: Vec<Day> = Vec::new();
        let own = self.samples.iter().enumerate();
        let own = own.flat_map(|(index, sample)| sample.blocks.iter().map(move |block| (Some(index), block)));
        let mut blocks: Vec<(Option<usize>, &Block)> =
            self.together.iter().map(|block| (None, block)).chain(own).collect();
        blocks.sort_by(|(_, a), (_, b)| b.work.from.total_cmp(&a.work.from));
        for (sample, block) in blocks {
            let first = day_before(block.work.from);
            let last = day_before(block.work.to).min(first);
            for before in (last..=first).rev() {
                let minutes = self.share(block.work, before);
                let task = Task { sample, step: block.step, minutes, goes_on: before < first };
                match days.iter_mut().find(|day| day.before == before) {
                    Some(day) => day.tasks.push(task),
                    None => days.push(Day { before, tasks: vec![task] }),
                }
            }
        }
        days.sort_by_key(|day| std::cmp::Reverse(day.before));
        days
    }

    /// How much of a span falls into the working hours of a day.
    fn share(&self, span: Span, before: u32) -> f64 {
        let morning = f64::from(before) * DAY;
        (span.from.min(morning) - span.to.max(morning - self.work_a_day)).max(0.0)
    }
}

/// On which day before the show a moment lies, from 1; the show's own day is 0.
pub fn day_before(minutes: f64) -> u32 {
    (minutes / DAY).ceil().max(0.0) as u32
}

/// The step that is done for all samples together: the first, if each of several has it and it is the cutting.
fn shared<'s>(chains: &[&'s [Step]]) -> Option<&'s Step> {
    let first = chains.first()?.first()?;
    let alike = |chain: &&[Step]| chain.first().is_some_and(|step| step.kind == StepKind::Cut);
    (chains.len() > 1 && chains.iter().all(alike)).then_some(first)
}

/// The cutting for so many samples, done before any of them begins.
fn cut_together(step: &Step, samples: &[Sample], work_a_day: f64) -> Block {
    let due = samples.iter().map(|sample| sample.begin).fold(0.0, f64::max) + step.wait_minutes;
    let work = step.work_minutes * f64::from(count(samples.iter()));
    Block { step: step.number, work: place(due, work, work_a_day) }
}

/// A sample of a chain of steps, of which so many first ones are done for all samples together.
fn sample(stage: Stage, (chain, shared): (&[Step], usize), spans: &[Span]) -> Sample {
    let own = chain.get(shared..).unwrap_or_default();
    let blocks: Vec<Block> =
        own.iter().zip(spans).map(|(step, work)| Block { step: step.number, work: *work }).collect();
    let soak = own.first().and_then(|step| step.soak_minutes).unwrap_or(0.0);
    Sample {
        stage,
        last_step: chain.last().map_or(0, |step| step.number),
        begin: spans.first().map_or(0.0, |span| span.from + soak),
        work_minutes: chain.iter().map(|step| step.work_minutes).sum(),
        mould: mould(own, spans),
        blocks,
    }
}

/// From the base that is screwed on until the basket is taken off, dry through; a sample that is not so far
/// stands on its mould at the show (common practice: what dries off the mould warps).
fn mould(chain: &[Step], spans: &[Span]) -> Option<Span> {
    let mut steps = chain.iter().zip(spans);
    let (_, on) = steps.find(|(step, _)| step.stage == Stage::BaseOnMould)?;
    let off = chain.iter().zip(spans).find(|(step, _)| step.stage == Stage::OffMould);
    let to = off
        .filter(|(_, span)| span.to > 0.0)
        .map_or(0.0, |(step, span)| (span.to - step.wait_minutes).max(0.0));
    Some(Span { from: on.from, to })
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
    use crate::pattern::StepKind;

    /// A step with work and waiting in hours.
    fn step(number: u32, stage: Stage, work: f64, wait: f64) -> Step {
        Step {
            of: crate::piece::Of::Body,
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
        let hours: Vec<(f64, f64)> =
            sample.blocks.iter().map(|block| (block.work.from / 60.0, block.work.to / 60.0)).collect();
        assert_eq!(hours, [(68.0, 66.0), (48.0, 47.0), (47.0, 43.0), (19.0, 18.0)]);
        assert_eq!((sample.begin / 60.0, day_before(sample.begin)), (68.0, 3));
        // On the mould from the base until the weaving is dry.
        assert_eq!(sample.mould, Some(Span { from: 48.0 * 60.0, to: 19.0 * 60.0 }));
        assert_eq!((show.moulds, show.moulds_at_show), (1, 0));
    }

    #[test]
    fn samples_share_one_pair_of_hands() {
        let show = show(&[Stage::Finished, Stage::BaseOnMould, Stage::OffMould]);
        let mut work: Vec<Span> =
            show.samples.iter().flat_map(|sample| sample.blocks.iter().map(|block| block.work)).collect();
        work.sort_by(|a, b| a.to.total_cmp(&b.to));
        assert!(work.windows(2).all(|pair| pair[0].from <= pair[1].to), "{work:?}");
        // The staves of all three are cut in one go, three times two hours, before any of them begins.
        let cut = show.together.expect("one job");
        assert_eq!((cut.step, cut.work.from - cut.work.to), (1, 360.0));
        assert!(show.samples.iter().all(|sample| sample.begin <= cut.work.to), "{show:#?}");
        // Each sample's own work follows itself, with its drying between.
        for sample in &show.samples {
            for pair in sample.blocks.windows(2) {
                let wait = steps()[pair[0].step as usize - 1].wait_minutes;
                assert!(pair[0].work.to - wait >= pair[1].work.from, "{sample:?}");
            }
        }
    }

    #[test]
    fn a_sample_not_yet_dry_keeps_its_mould_until_the_show() {
        let show = show(&[Stage::Prepared, Stage::BaseOnMould, Stage::Finished]);
        let stages: Vec<Stage> = show.samples.iter().map(|sample| sample.stage).collect();
        assert_eq!(stages, [Stage::Prepared, Stage::BaseOnMould, Stage::Finished]);
        assert_eq!(show.samples[0].mould, None);
        assert_eq!(show.samples[1].mould.map(|span| span.to), Some(0.0));
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
