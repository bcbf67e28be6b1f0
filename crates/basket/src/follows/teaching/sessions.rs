//! Where the sessions of a class end.

use crate::pattern::StepKind;
use crate::piece::Of;
use crate::steps::Step;

/// A share of a step that would leave less of it than this is worked to its end.
const SCRAP: f64 = 15.0;

/// What a class does in one session.
#[derive(Clone, Debug, PartialEq)]
pub struct Session {
    /// Its steps, or parts of them, in order.
    pub parts: Vec<Part>,
    /// Minutes that must pass before the next session, for things to dry.
    pub wait_minutes: f64,
    /// Whether it ends while the staves stand free and would wander as they dry, so that they have to be wetted and
    /// banded.
    pub needs_band: bool,
}

/// A step, or what is done of it in one session.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Number of the step.
    pub step: u32,
    /// Which step.
    pub kind: StepKind,
    /// On which vessel.
    pub of: Of,
    /// A learner's minutes.
    pub minutes: f64,
    /// Whether it was begun in an earlier session.
    pub goes_on: bool,
    /// Whether it is done by the end of the session.
    pub ends: bool,
}

impl Session {
    /// A learner's minutes in all.
    pub fn minutes(&self) -> f64 {
        self.parts.iter().map(|part| part.minutes).sum()
    }
}

/// The making, parted into sessions of at most so many minutes each at a learner's pace. A session ends early where
/// something has to dry longer than is left of it.
pub fn sessions(steps: &[Step], minutes: f64) -> Vec<Session> {
    let mut class =
        Class { minutes: minutes.max(1.0), done: Vec::new(), parts: Vec::new(), used: 0.0, stand: false };
    for step in steps {
        class.work(step);
    }
    class.close(0.0);
    class.done
}

/// A class at work.
struct Class {
    minutes: f64,
    done: Vec<Session>,
    parts: Vec<Part>,
    used: f64,
    /// Whether the staves stand in the groove and nothing holds them at the top.
    stand: bool,
}

impl Class {
    fn work(&mut self, step: &Step) {
        match step.kind {
            StepKind::Staves => self.stand = true,
            StepKind::Dry => self.stand = false,
            _ => {}
        }
        let mut left = step.learner_minutes;
        let mut goes_on = false;
        loop {
            let room = self.minutes - self.used;
            let take = if left <= room + SCRAP { left } else { room };
            if take < left && room < SCRAP && !self.parts.is_empty() {
                self.close(0.0);
                continue;
            }
            left -= take;
            self.used += take;
            let ends = left <= 0.0;
            self.parts.push(Part {
                step: step.number,
                kind: step.kind,
                of: step.of,
                minutes: take,
                goes_on,
                ends,
            });
            if ends {
                break;
            }
            goes_on = true;
            self.close(0.0);
        }
        if step.wait_minutes > (self.minutes - self.used).max(0.0) {
            self.close(step.wait_minutes);
        } else {
            self.used += step.wait_minutes;
        }
    }

    fn close(&mut self, wait_minutes: f64) {
        if !self.parts.is_empty() {
            let parts = std::mem::take(&mut self.parts);
            self.done.push(Session { parts, wait_minutes, needs_band: self.stand });
        }
        self.used = 0.0;
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::steps::Stage;

    fn step(number: u32, learner_minutes: f64, wait_minutes: f64) -> Step {
        Step { number, learner_minutes, wait_minutes, ..Step::new(StepKind::Half, Stage::HalfWoven) }
    }

    #[test]
    fn a_long_step_is_parted_and_a_long_wait_ends_a_session() {
        let steps = [step(1, 40.0, 0.0), step(2, 400.0, 1440.0), step(3, 20.0, 0.0)];
        let told: Vec<Vec<(u32, f64, bool, bool)>> = sessions(&steps, 300.0)
            .iter()
            .map(|session| {
                let part = |part: &Part| (part.step, part.minutes, part.goes_on, part.ends);
                session.parts.iter().map(part).collect()
            })
            .collect();
        let whole = vec![
            vec![(1, 40.0, false, true), (2, 260.0, false, false)],
            vec![(2, 140.0, true, true)],
            vec![(3, 20.0, false, true)],
        ];
        assert_eq!(told, whole);
        let waits: Vec<f64> = sessions(&steps, 300.0).iter().map(|session| session.wait_minutes).collect();
        assert_eq!(waits, [0.0, 1440.0, 0.0]);
    }

    #[test]
    fn all_of_the_work_is_in_the_sessions_whatever_their_length() {
        let steps = [step(1, 95.0, 0.0), step(2, 0.0, 30.0), step(3, 700.0, 5.0), step(4, 5.0, 0.0)];
        for minutes in [f64::NAN, 0.0, 20.0, 120.0, 300.0, 1e9] {
            let work: f64 = sessions(&steps, minutes).iter().map(Session::minutes).sum();
            assert!((work - 800.0).abs() < 1e-6, "{minutes}: {work}");
        }
    }
}
