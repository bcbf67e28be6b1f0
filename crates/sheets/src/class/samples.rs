//! The samples of a class: which stands ready when, its work, and the tray beside it.

use basket::Draft;
use basket::message::Value;
use planning::class::Answer;
use planning::class::schedule::Window;
use planning::samples::ClassSample;
use serde::Serialize;

use super::teller::{Moment, StudentStep, Teller, count, letter};
use crate::data::demonstration::{step, tell, tray};
use crate::scribe::{Scribe, name};

/// A sample that stands ready at a stage.
#[derive(Serialize)]
pub struct SamplePlan {
    /// Which, and at which stage.
    pub name: String,
    /// The beginning of the session for which it has to stand ready; none for work on all of them together.
    pub shown: Option<Moment>,
    /// The latest moment to begin.
    pub begin: Moment,
    /// Both in sentences, and on which mould.
    pub says: Vec<String>,
    /// The work on it.
    pub steps: Vec<StudentStep>,
    /// What lies ready beside it for the step that is shown.
    pub tray: Vec<String>,
    /// What to say.
    pub tell: Vec<String>,
}

/// What is to be said of the samples as a whole, and each of them; nothing where none is asked for.
pub(super) fn samples(teller: &Teller, answer: &Answer, draft: &Draft) -> (Vec<String>, Vec<SamplePlan>) {
    let Some(samples) = answer.samples(&draft.steps) else { return (Vec::new(), Vec::new()) };
    let scribe = Scribe::new(teller.words);
    let mut says = Vec::new();
    if !samples.missing.is_empty() {
        let stages: Vec<String> = samples.missing.iter().map(|stage| teller.words.name(*stage)).collect();
        says.push(scribe.text("demo-missing", &[("stages", name(stages.join(", ")))]));
    } else if samples.each.is_empty() {
        says.push(teller.words.term("class-samples-none"));
    }
    let mut moulds: Vec<u32> = samples.each.iter().filter_map(|sample| Some(sample.mould?.0)).collect();
    moulds.sort_unstable();
    moulds.dedup();
    if !moulds.is_empty() {
        let letters: Vec<String> = moulds.iter().map(|mould| letter(teller.class.moulds + mould)).collect();
        let args = [("count", count(moulds.len())), ("letters", name(letters.join(", ")))];
        says.push(teller.words.with("class-samples-moulds", &args));
    }
    let of = Of { teller, scribe: &scribe, draft };
    let mut all: Vec<SamplePlan> = Vec::new();
    if let Some((number, work)) = &samples.together
        && let Some(first) = work.first()
    {
        all.push(SamplePlan {
            name: teller.words.term("class-samples-together"),
            shown: None,
            begin: teller.moment(first.from),
            says: Vec::new(),
            steps: of.stretches(*number, work),
            tray: Vec::new(),
            tell: Vec::new(),
        });
    }
    all.extend(samples.each.iter().enumerate().map(|(index, sample)| of.sample(index, sample)));
    (says, all)
}

struct Of<'o> {
    teller: &'o Teller<'o>,
    scribe: &'o Scribe<'o>,
    draft: &'o Draft,
}

impl Of<'_> {
    fn sample(&self, index: usize, sample: &ClassSample) -> SamplePlan {
        let Self { teller, scribe, draft } = self;
        let [shown, begin] = [sample.shown, sample.begin].map(|moment| teller.moment(moment));
        let stage = name(teller.words.name(sample.stage));
        let mut args = vec![
            ("day", name(shown.day.clone())),
            ("time", name(shown.time.clone())),
            ("beginday", name(begin.day.clone())),
            ("begintime", name(begin.time.clone())),
        ];
        args.extend(self.titled(sample.last_step));
        let mut says = vec![teller.words.with("class-sample-ready", &args)];
        says.extend(sample.mould.map(|(mould, held)| {
            let [from, to] = [held.from, held.to].map(|moment| {
                let moment = teller.moment(moment);
                name(format!("{}, {}", moment.day, moment.time))
            });
            let letter = name(letter(teller.class.moulds + mould));
            teller.words.with("class-sample-mould", &[("letter", letter), ("from", from), ("to", to)])
        }));
        SamplePlan {
            name: teller
                .words
                .with("class-sample", &[("number", count(index + 1)), ("stage", stage.clone())]),
            shown: Some(shown),
            begin,
            says,
            steps: sample.work.iter().flat_map(|(step, work)| self.stretches(*step, work)).collect(),
            tray: self
                .soak(sample.last_step)
                .into_iter()
                .chain(tray(draft, sample.last_step, scribe))
                .collect(),
            tell: tell(draft, sample.last_step, scribe),
        }
    }

    /// What the next step needs soaked, and for how long.
    fn soak(&self, last_step: u32) -> Option<String> {
        let next = step(self.draft, last_step.saturating_add(1))?;
        let soak = next.soak_minutes?;
        Some(self.scribe.text("time-soak", &[("time", Value::Minutes(soak))]))
    }

    fn titled(&self, number: u32) -> [(&'static str, Value); 2] {
        let title = step(self.draft, number).map(|step| self.teller.step(step.kind)).unwrap_or_default();
        [("step", number.into()), ("title", name(title))]
    }

    fn stretches(&self, number: u32, work: &[Window]) -> Vec<StudentStep> {
        let says = self.teller.words.with("class-sample-work", &self.titled(number));
        let stretch = |stretch: &Window| {
            let [from, to] = [stretch.from, stretch.to].map(|moment| self.teller.moment(moment));
            let says = format!("{}–{} {says}", from.time, to.time);
            StudentStep { from, to, says, then: String::new() }
        };
        work.iter().map(stretch).collect()
    }
}
