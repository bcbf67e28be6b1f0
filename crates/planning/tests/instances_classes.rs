//! Classes with proven optima, which an independent solver found (OR-Tools CP-SAT 9.15; the file says the
//! rules). `STAVEWRIGHT_INSTANCES` names another file of the same form.

mod checker;

use planning::class::schedule::{Answer, Group, Problem, Task, Window, solve};
use serde::Deserialize;

#[derive(Deserialize)]
struct File {
    classes: Vec<Instance>,
}

#[derive(Deserialize)]
struct Instance {
    name: String,
    students: u32,
    moulds: u32,
    drills: u32,
    windows: Vec<(i64, i64)>,
    steps: Vec<Step>,
    optimum_finish_min: Optimum,
}

#[derive(Deserialize)]
struct Step {
    work_min: i64,
    wait_min: i64,
    mould: bool,
    drill: bool,
}

#[derive(Deserialize)]
#[serde(untagged)]
enum Optimum {
    End(i64),
    NoPlan(String),
}

impl Instance {
    fn problem(&self) -> Problem {
        let task = |step: &Step| Task {
            work: step.work_min,
            wait: step.wait_min,
            pieces: 1,
            mould: step.mould,
            drill: step.drill,
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
            hands: u32::MAX,
        }
    }
}

fn instances() -> Vec<Instance> {
    let text = match std::env::var_os("STAVEWRIGHT_INSTANCES") {
        Some(path) => {
            std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
        }
        None => include_str!("data/instances.json").to_owned(),
    };
    serde_json::from_str::<File>(&text).expect("a file of instances").classes
}

#[test]
fn instances_of_classes_come_to_their_optimum() {
    let instances = instances();
    assert!(!instances.is_empty());
    for instance in instances {
        let problem = instance.problem();
        let begun = std::time::Instant::now();
        let mut looked_at = 0;
        let answer = solve(&problem, &mut |progress| {
            looked_at = progress.looked_at;
            true
        });
        println!("{}: {looked_at} looked at, {:?}", instance.name, begun.elapsed());
        match (&answer, &instance.optimum_finish_min) {
            (Answer::Plan { plan, bound }, Optimum::End(end)) => {
                checker::check(&problem, plan);
                assert_eq!((plan.end, *bound), (*end, *end), "{}", instance.name);
            }
            (Answer::NoPlan, Optimum::NoPlan(said)) => assert_eq!(said, "no plan"),
            _ => panic!("{}: {answer:?}", instance.name),
        }
    }
}
