//! How long the large classes take to be answered, with the limit that a teacher waits for, and what is known of
//! the answer by then; and all instances with proven optima together.
//!
//! Targets: an answer within five seconds (ten for thirty students), all instances within two minutes.

#[path = "../tests/instances/mod.rs"]
mod instances;

use std::time::{Duration, Instant};

use basket::{Catalogue, Hand};
use instances::Optimum;
use planning::class::schedule::{self, solve};
use planning::class::written::{Class, read};
use planning::class::{Answer, Doing, Outcome, Source};

const HARBOUR: &str = include_str!("../../../patterns/harbour-bread-basket.toml");
const FERRY: &str = include_str!("../../../patterns/ferry-egg-basket.toml");
const WEEKEND: &str = include_str!("../../../classes/harbour-weekend.toml");

fn main() {
    let (head, _) = WEEKEND.split_once("[[days]]").expect("the class");
    let days = |hours: &str, times: u32| {
        format!("[[days]]\ndate = \"2027-04-12\"\nevery = 1\nhours = [{hours}]\ntimes = {times}\n")
    };
    let all_day = "\"09:00-12:00\", \"13:00-17:00\"";
    let twelve = head.replace("moulds = 4", "moulds = 12").replace("drills = 2", "drills = 6");
    let ready = "count = 12\nready = [\"staves tapered\", \"rings\", \"handle\", \"ears\", \"base\"]";
    let thirty = head.replace("count = 12", "count = 30").replace("moulds = 4", "moulds = 6");
    for (name, pattern, class, seconds) in [
        ("12 students, 4 moulds, 2 days", HARBOUR, WEEKEND.to_owned(), 5),
        ("12 students, 12 moulds, 6 days", HARBOUR, twelve + &days(all_day, 6), 5),
        ("the Ferry egg basket in a weekend, parts ready", FERRY, WEEKEND.replace("count = 12", ready), 5),
        ("30 students, 6 moulds, 10 evenings", HARBOUR, thirty + &days("\"18:00-21:00\"", 10), 10),
    ] {
        let class = read(&class).expect("a class");
        let begun = Instant::now();
        let answer = answer(pattern, &class, Duration::from_secs(seconds));
        println!("{name}: {:.2} s of {seconds}; {}", begun.elapsed().as_secs_f64(), told(&class, &answer));
    }
    let begun = Instant::now();
    let all = instances::instances();
    for instance in &all {
        let proven = match (solve(&instance.problem(), &mut |_| true), &instance.optimum_finish_min) {
            (schedule::Answer::Plan { bound, .. }, Optimum::End(end)) => bound == *end,
            (schedule::Answer::NoPlan, Optimum::NoPlan(said)) => said == "no plan",
            _ => false,
        };
        assert!(proven, "{}", instance.name);
    }
    println!("all {} instances: {:.3} s", all.len(), begun.elapsed().as_secs_f64());
}

/// As the command asks: half of the time is for the plan, and what would mend it has the rest.
fn answer(pattern: &str, class: &Class, limit: Duration) -> Answer {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(pattern, catalogue).expect("a pattern");
    let source = Source { pattern: &pattern, catalogue, hand: &Hand::USUAL };
    let begun = Instant::now();
    Answer::of(class, source, &mut |doing| {
        let until = if matches!(doing, Doing::Planning(_)) { limit / 2 } else { limit };
        begun.elapsed() < until
    })
}

fn told(class: &Class, answer: &Answer) -> String {
    match &answer.outcome {
        Outcome::Fits(found) => {
            let gap = found.plan.end - found.bound;
            format!("it ends {:?}, at the most {gap} min later than the best", class.local(found.plan.end))
        }
        Outcome::DoesNotFit(refusal) | Outcome::Unknown(refusal) => {
            let proven = matches!(answer.outcome, Outcome::DoesNotFit(_));
            let (days, mends) = (refusal.days.for_all, refusal.mends.len());
            format!("no plan (proven: {proven}); for all {days:?} days; {mends} changes tried and told")
        }
    }
}
