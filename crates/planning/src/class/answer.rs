//! Whether a class fits into its hours, and why not.

use super::asked::{DaysNeeded, Doing, problem};
use super::lesson::{Lesson, Source};
use super::mends::{Mend, Tries};
use super::schedule::{self, Minute, Plan, Problem, Window, solve};
use super::written::Class;

/// A class and what was found out about it.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The class, as it was asked about.
    pub class: Class,
    /// The steps of each group of students.
    pub lessons: Vec<Vec<Lesson>>,
    /// What was planned.
    pub problem: Problem,
    /// Whether it fits.
    pub outcome: Outcome,
}

/// Whether a class fits.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// It fits.
    Fits(Found),
    /// It does not: proven.
    DoesNotFit(Refusal),
    /// The search was stopped before a plan was found or ruled out.
    Unknown(Refusal),
}

/// A plan, and how good it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// The plan.
    pub plan: Plan,
    /// No plan ends earlier than this; the plan's own end if it is the best.
    pub bound: Minute,
}

/// Why a class does not fit, and what would help.
#[derive(Clone, Debug, PartialEq)]
pub struct Refusal {
    /// Steps that no session is long enough for.
    pub too_long: Vec<TooLong>,
    /// How many days like its last the class would have to have; none where even many do not help, or that
    /// was not found in time.
    pub days: DaysNeeded,
    /// Changes that were tried, the smallest that help first.
    pub mends: Vec<Mend>,
}

/// A step that no session is long enough for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooLong {
    /// The step.
    pub lesson: Lesson,
    /// Minutes that cannot be broken off.
    pub minutes: Minute,
    /// Minutes of the longest session.
    pub longest: Minute,
}

impl Answer {
    /// Plans a class. `go_on` is asked now and then, and ends what is being done when it says no; what comes
    /// next is asked for anew. The best so far is the answer.
    pub fn of(class: &Class, source: Source, go_on: &mut dyn FnMut(Doing) -> bool) -> Self {
        let (problem, lessons) = problem(class, &source);
        let found = solve(&problem, &mut |progress| go_on(Doing::Planning(progress)));
        let outcome = match found {
            schedule::Answer::Plan { plan, bound } => Outcome::Fits(Found { plan, bound }),
            found => {
                let longest = problem.sessions.iter().map(Window::minutes).max().unwrap_or(0);
                let mut tries = Tries::of(class, source, go_on);
                let refusal = Refusal {
                    too_long: too_long(&lessons, longest),
                    days: tries.days_needed(),
                    mends: tries.mends(),
                };
                if found == schedule::Answer::NoPlan {
                    Outcome::DoesNotFit(refusal)
                } else {
                    Outcome::Unknown(refusal)
                }
            }
        };
        Self { class: class.clone(), lessons, problem, outcome }
    }

    /// The plan, if there is one.
    pub fn found(&self) -> Option<&Found> {
        match &self.outcome {
            Outcome::Fits(found) => Some(found),
            Outcome::DoesNotFit(_) | Outcome::Unknown(_) => None,
        }
    }
}

fn too_long(lessons: &[Vec<Lesson>], longest: Minute) -> Vec<TooLong> {
    let mut found: Vec<TooLong> = Vec::new();
    for lesson in lessons.iter().flatten().filter(|lesson| !lesson.task.home) {
        let minutes = lesson.task.longest_piece();
        let known = found.iter().any(|one| one.lesson.kind == lesson.kind && one.minutes >= minutes);
        if minutes > longest && !known {
            found.retain(|one| one.lesson.kind != lesson.kind);
            found.push(TooLong { lesson: *lesson, minutes, longest });
        }
    }
    found
}
