//! Classes with proven optima come to them.

mod checker;
mod instances;

use instances::{Optimum, instances};
use planning::class::schedule::{Answer, solve};

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
