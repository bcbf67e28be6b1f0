//! A class that was planned, as other programs and the template read it.

use basket::Draft;
use basket::message::Value;
use basket::pattern::StepKind;
use planning::class::schedule::{Minute, Placed, Turn, Window};
use planning::class::{Answer, Lack, Lesson, Outcome};
use serde::Serialize;
use words::Words;

use super::samples::{SamplePlan, samples};
use super::teller::{Moment, StudentStep, Teller, count, letter};
use crate::scribe::name;

/// The seed by which chance is tried.
const SEED: u64 = 1;

/// A class that was planned.
#[derive(Serialize)]
pub struct ClassPlan {
    /// What the class is called.
    pub title: String,
    /// The zone of its hours.
    pub zone: String,
    /// `fits`, `does-not-fit` or `unknown`.
    pub answer: &'static str,
    /// The answer in sentences: whether it fits, how good the plan is, or why it does not.
    pub says: Vec<String>,
    /// Changes that were tried where it does not fit, the smallest that help first.
    pub mends: Vec<String>,
    /// When the last work ends.
    pub end: Option<Moment>,
    /// A time that no plan undercuts; the same as `end` where the plan is proven to be the best.
    pub no_plan_before: Option<Moment>,
    /// How likely it ends in time, and which steps decide it.
    pub chance: Vec<String>,
    /// Who waits while class is on.
    pub waits: Vec<String>,
    /// Each session.
    pub sessions: Vec<SessionPlan>,
    /// Each student.
    pub students: Vec<StudentPlan>,
    /// What is to be said of the samples as a whole.
    pub samples_say: Vec<String>,
    /// Each sample that the teacher makes beforehand.
    pub samples: Vec<SamplePlan>,
}

/// A session.
#[derive(Serialize)]
pub struct SessionPlan {
    /// When it begins.
    pub from: Moment,
    /// When it ends.
    pub to: Moment,
    /// Its heading.
    pub says: String,
    /// Who does what in it.
    pub work: Vec<SessionWork>,
    /// Cautions for what is done in it.
    pub cautions: Vec<String>,
}

/// What one student does in a session.
#[derive(Serialize)]
pub struct SessionWork {
    /// The student.
    pub student: String,
    /// The work.
    pub does: Vec<String>,
}

/// A student.
#[derive(Serialize)]
pub struct StudentPlan {
    /// What the student is called in the plan.
    pub name: String,
    /// Whether a learner or practised.
    pub hand: String,
    /// Which mould is held, and when.
    pub mould: Option<String>,
    /// The steps.
    pub steps: Vec<StudentStep>,
    /// Which row is due when.
    pub due: Vec<String>,
}

/// A class that was planned, in words.
pub fn class_plan(draft: &Draft, answer: &Answer, words: &Words) -> ClassPlan {
    let teller = Teller { class: &answer.class, words };
    let found = answer.found();
    let (samples_say, samples) = samples(&teller, answer, draft);
    let (kind, says, mends) = match &answer.outcome {
        Outcome::Fits(found) => {
            let good = if found.bound >= found.plan.end {
                words.term("class-proven")
            } else {
                teller.at("class-gap", found.bound)
            };
            ("fits", vec![teller.at("class-fits", found.plan.end), good], Vec::new())
        }
        Outcome::DoesNotFit(refusal) | Outcome::Unknown(refusal) => {
            let known = matches!(answer.outcome, Outcome::DoesNotFit(_));
            let id = if known { "class-does-not-fit" } else { "class-unknown" };
            let mut says = vec![words.term(id)];
            says.extend(teller.why(refusal));
            let mends = refusal.mends.iter().map(|mend| teller.mend(mend)).collect();
            (if known { "does-not-fit" } else { "unknown" }, says, mends)
        }
    };
    ClassPlan {
        title: answer.class.title.clone(),
        zone: answer.class.zone.iana_name().unwrap_or("UTC").to_owned(),
        answer: kind,
        says,
        mends,
        end: found.map(|found| teller.moment(found.plan.end)),
        no_plan_before: found.map(|found| teller.moment(found.bound)),
        chance: teller.chance(answer),
        waits: teller.waits(answer),
        sessions: teller.sessions(answer, draft),
        students: teller.students(answer),
        samples_say,
        samples,
    }
}

impl Teller<'_> {
    fn chance(&self, answer: &Answer) -> Vec<String> {
        let chance = answer.found().and_then(|found| answer.chance(&found.plan, SEED));
        let Some(chance) = chance else { return Vec::new() };
        let args =
            [("share", Value::Percent(chance.in_time)), ("formula", Value::Percent(chance.by_formula))];
        let mut says = vec![self.words.with("class-chance", &args)];
        if chance.decides.is_empty() {
            says.push(self.words.term("class-decides-nothing"));
        }
        says.extend(chance.decides.iter().map(|(kind, later)| {
            let step = ("step", name(self.step(*kind)));
            match later {
                Some(later) => {
                    self.words.with("class-decides", &[step, ("minutes", Value::Minutes(*later as f64))])
                }
                None => self.words.with("class-decides-all", &[step]),
            }
        }));
        says
    }

    fn waits(&self, answer: &Answer) -> Vec<String> {
        let Some(found) = answer.found() else { return Vec::new() };
        let waiting = answer.waiting(&found.plan);
        let mut says: Vec<String> = waiting
            .iter()
            .filter(|waiting| waiting.in_class > 0)
            .map(|waiting| {
                let id = match waiting.lack {
                    Lack::Mould => "class-waits-mould",
                    Lack::Drill => "class-waits-drill",
                    Lack::Table => "class-waits-table",
                    Lack::Teacher => "class-waits-teacher",
                };
                let args = [
                    ("student", name(self.student(waiting.student))),
                    ("step", name(self.step(waiting.lesson.kind))),
                    ("minutes", Value::Minutes(waiting.in_class as f64)),
                ];
                self.words.with(id, &args)
            })
            .collect();
        if says.is_empty() {
            says.push(self.words.term("class-nobody-waits"));
        }
        says
    }

    fn sessions(&self, answer: &Answer, draft: &Draft) -> Vec<SessionPlan> {
        let Some(found) = answer.found() else { return Vec::new() };
        let session = |session: &Window| {
            let mut kinds: Vec<StepKind> = Vec::new();
            let mut work = Vec::new();
            for (student, turn) in found.plan.students.iter().enumerate() {
                let mut does = Vec::new();
                for (lesson, placed) in answer.steps(turn) {
                    for (index, stretch) in placed.work.iter().enumerate() {
                        if session.from <= stretch.from && stretch.to <= session.to {
                            kinds.push(lesson.kind);
                            does.push(self.does((answer, turn), lesson, (*stretch, index)));
                        }
                    }
                }
                if !does.is_empty() {
                    work.push(SessionWork { student: self.student(student), does });
                }
            }
            let (from, to) = (self.moment(session.from), self.moment(session.to));
            let args = [
                ("day", name(from.day.clone())),
                ("from", name(from.time.clone())),
                ("to", name(to.time.clone())),
            ];
            let says = self.words.with("class-session", &args);
            SessionPlan { from, to, says, work, cautions: self.cautions(draft, &kinds) }
        };
        answer.problem.sessions.iter().map(session).collect()
    }

    /// The cautions of these steps, each once.
    fn cautions(&self, draft: &Draft, kinds: &[StepKind]) -> Vec<String> {
        let mut ids: Vec<&str> = Vec::new();
        for step in draft.steps.iter().filter(|step| kinds.contains(&step.kind)) {
            for caution in &step.cautions {
                if !ids.contains(caution) {
                    ids.push(caution);
                }
            }
        }
        ids.into_iter().map(|id| self.words.term(id)).collect()
    }

    /// One stretch of a step: `09:00–10:30 Weave to the rim, rows 27 to 31`.
    fn does(
        &self,
        (answer, turn): (&Answer, &Turn),
        lesson: &Lesson,
        (stretch, index): (Window, usize),
    ) -> String {
        let [from, to] = [stretch.from, stretch.to].map(|moment| name(self.moment(moment).time));
        let mut args = vec![("from", from), ("to", to), ("step", name(self.step(lesson.kind)))];
        if let Some((first, _)) = lesson.rows {
            let woven = |at: Minute| answer.row_at(turn, at).max(first.saturating_sub(1));
            args.push(("first", Value::Count(i64::from(woven(stretch.from)) + 1)));
            args.push(("last", Value::Count(i64::from(woven(stretch.to)))));
            return self.words.with("class-does-rows", &args);
        }
        self.words.with(if index > 0 { "class-does-on" } else { "class-does" }, &args)
    }

    fn students(&self, answer: &Answer) -> Vec<StudentPlan> {
        let Some(found) = answer.found() else { return Vec::new() };
        found.plan.students.iter().enumerate().map(|(number, turn)| self.plan(answer, turn, number)).collect()
    }

    fn plan(&self, answer: &Answer, turn: &Turn, number: usize) -> StudentPlan {
        let learner = self.class.students.get(turn.group).is_some_and(|students| students.learners);
        let hand = self.words.term(if learner { "class-hand-learner" } else { "class-hand-practised" });
        let mould = turn.mould.map(|(mould, held)| {
            let [from, to] = [held.from, held.to].map(|moment| self.moment(moment));
            let args = [
                ("letter", name(letter(mould))),
                ("from", name(format!("{}, {}", from.day, from.time))),
                ("to", name(format!("{}, {}", to.day, to.time))),
            ];
            self.words.with("class-mould-held", &args)
        });
        let due = answer.rows_due(turn).into_iter().map(|due| {
            let at = self.moment(due.at);
            let args = [("day", name(at.day)), ("time", name(at.time)), ("row", count(due.row as usize))];
            self.words.with("class-due", &args)
        });
        let steps =
            answer.steps(turn).flat_map(|(lesson, placed)| self.stretches((answer, turn), lesson, placed));
        StudentPlan { name: self.student(number), hand, mould, steps: steps.collect(), due: due.collect() }
    }

    fn stretches(&self, of: (&Answer, &Turn), lesson: &Lesson, placed: &Placed) -> Vec<StudentStep> {
        let last = placed.work.len().saturating_sub(1);
        let in_class = |stretch: &Window| {
            of.0.problem
                .sessions
                .iter()
                .any(|session| session.from <= stretch.from && stretch.to <= session.to)
        };
        let stretch = |(index, stretch): (usize, &Window)| {
            let (from, to) = (self.moment(stretch.from), self.moment(stretch.to));
            let mut says = self.does(of, lesson, (*stretch, index));
            if !in_class(stretch) {
                says = self
                    .words
                    .with("class-at-home", &[("day", name(from.day.clone())), ("does", name(says))]);
            }
            let waits = index == last && placed.until > placed.span.to;
            let then = if waits { self.at("class-then-wait", placed.until) } else { String::new() };
            StudentStep { from, to, says, then }
        };
        placed.work.iter().enumerate().map(stretch).collect()
    }
}
