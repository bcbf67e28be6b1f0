//! Classes with proven optima, which an independent solver found (OR-Tools CP-SAT 9.15; the file says the
//! rules). `STAVEWRIGHT_INSTANCES` names another file of the same form.

use planning::class::schedule::{Group, Problem, Task, Window};
use serde::Deserialize;

#[derive(Deserialize)]
struct File {
    classes: Vec<Instance>,
}

/// A class of one group.
#[derive(Deserialize)]
pub struct Instance {
    /// What it is called.
    pub name: String,
    students: u32,
    moulds: u32,
    drills: u32,
    windows: Vec<(i64, i64)>,
    steps: Vec<Step>,
    /// What an independent solver found.
    pub optimum_finish_min: Optimum,
}

#[derive(Deserialize)]
struct Step {
    work_min: i64,
    wait_min: i64,
    mould: bool,
    drill: bool,
}

/// A proven answer.
#[derive(Deserialize)]
#[serde(untagged)]
pub enum Optimum {
    /// When its last work ends.
    End(i64),
    /// There is no plan.
    NoPlan(String),
}

impl Instance {
    /// The instance as a problem.
    pub fn problem(&self) -> Problem {
        let task = |step: &Step| Task {
            work: step.work_min,
            wait: step.wait_min,
            pieces: 1,
            mould: step.mould,
            drill: step.drill,
            table: false,
            hands: false,
            home: false,
        };
        let tasks = self.steps.iter().map(task).collect();
        Problem {
            groups: vec![Group { students: self.students, from: 0, on_mould: false, tasks }],
            sessions: self.windows.iter().map(|(from, to)| Window { from: *from, to: *to }).collect(),
            home: Vec::new(),
            moulds: self.moulds,
            drills: self.drills,
            tables: u32::MAX,
            hands: u32::MAX,
        }
    }
}

/// All of them.
pub fn instances() -> Vec<Instance> {
    let text = match std::env::var_os("STAVEWRIGHT_INSTANCES") {
        Some(path) => {
            std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
        }
        None => include_str!("../data/instances.json").to_owned(),
    };
    serde_json::from_str::<File>(&text).expect("a file of instances").classes
}
