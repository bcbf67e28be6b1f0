//! Classes of the school, from files that a teacher would write.

mod checker;

use basket::pattern::{Ready, StepKind};
use basket::{Catalogue, Hand, Pattern};
use planning::class::schedule::Window;
use planning::class::written::{Class, read};
use planning::class::{Answer, Doing, Lack, Outcome, Refusal, Source};

const HARBOUR: &str = include_str!("../../../patterns/harbour-bread-basket.toml");
const FERRY: &str = include_str!("../../../patterns/ferry-egg-basket.toml");
const WEEKEND: &str = include_str!("../../../classes/harbour-weekend.toml");
const TWO_WEEKENDS: &str = include_str!("../../../classes/ferry-two-weekends.toml");
/// How many beginnings of plans are looked at: far fewer than the bench and the command do in a second.
const LOOKED_AT: u64 = 20_000;
/// A day of seven hours, so many times.
const DAYS: &str = "[[days]]\ndate = \"2027-04-12\"\nevery = 1\nhours = [\"09:00-12:00\", \"13:00-17:00\"]\n";

fn class(text: &str) -> Class {
    read(text).unwrap_or_else(|problems| panic!("{problems:?}"))
}

/// The answer by so many looks at beginnings of plans and no clock, so that it is the same on every machine.
fn answer(pattern: &str, class: &Class) -> Answer {
    let catalogue = Catalogue::built_in();
    let pattern: Pattern = basket::pattern::read(pattern, catalogue).expect("a pattern");
    let source = Source { pattern: &pattern, catalogue, hand: &Hand::USUAL };
    let answer = Answer::of(class, source, &mut |doing| match doing {
        Doing::Planning(progress) => progress.looked_at < LOOKED_AT,
        Doing::Trying(_) => true,
    });
    if let Some(found) = answer.found() {
        checker::check(&answer.problem, &found.plan);
        assert!(found.bound <= found.plan.end);
    }
    answer
}

fn refused(answer: &Answer) -> &Refusal {
    match &answer.outcome {
        Outcome::DoesNotFit(refusal) => refusal,
        other => panic!("{other:?}"),
    }
}

/// Every change that is said to mend a class does.
fn mends_hold(pattern: &str, class: &Class, refusal: &Refusal) {
    assert!(!refusal.mends.is_empty());
    for mend in refusal.mends.iter().filter(|mend| mend.days.is_some()) {
        let changed = mend.change.of(class);
        assert!(answer(pattern, &changed).found().is_some(), "{mend:?}");
    }
}

/// One practised maker on two days: the rim dries overnight, and what is left of the second day is too short for
/// lashing and finish; an evening at home is enough.
#[test]
fn an_evening_at_home_mends_a_class_that_is_a_little_too_short() {
    let text = "title = \"Short\"\npattern = \"harbour.toml\"\nzone = \"UTC\"\nmoulds = 1\n\
                [[students]]\ncount = 1\nhand = \"practised\"\n\
                [[days]]\ndate = \"2027-04-12\"\nevery = 1\ntimes = 3\nhours = [\"09:00-13:00\"]\n";
    let class = class(text);
    let answer = answer(HARBOUR, &class);
    let refusal = refused(&answer);
    mends_hold(HARBOUR, &class, refusal);
    let home = refusal.mends.iter().find(|mend| mend.change.home && mend.change.ready.is_empty());
    assert!(home.is_some_and(|mend| mend.days.is_some()), "{refusal:?}");
}

#[test]
fn where_the_morning_of_a_day_more_is_enough_half_a_day_mends_it() {
    let class = class(&WEEKEND.replace("count = 12", "count = 2"));
    let answer = answer(HARBOUR, &class);
    let refusal = refused(&answer);
    mends_hold(HARBOUR, &class, refusal);
    let halves: Vec<_> = refusal.mends.iter().filter(|mend| mend.change.half).collect();
    assert!(!halves.is_empty(), "{:?}", refusal.mends);
    for mend in halves {
        let longer = mend.change.of(&class);
        assert_eq!(longer.days.len(), 2 + mend.change.days as usize);
        assert_eq!(longer.days.last().map(|day| day.hours.len()), Some(1));
    }
}

#[test]
fn twelve_students_on_four_moulds_do_not_fit_into_two_days() {
    let class = class(WEEKEND);
    let answer = answer(HARBOUR, &class);
    let refusal = refused(&answer);
    // Even one student alone needs more than two days: the wall dries for one, the rings overnight.
    let [alone, with_moulds, for_all] =
        [refusal.days.alone, refusal.days.with_moulds, refusal.days.for_all].map(|days| days.expect("found"));
    assert!(2 < alone.enough && alone.enough <= with_moulds.enough && with_moulds.enough < for_all.enough);
    assert_eq!(alone.enough, alone.at_least);
    let least = &refusal.mends[0];
    assert!(least.days.is_some(), "{refusal:?}");
    // Preparing, and more moulds, each save days.
    let days = |change: &dyn Fn(&planning::class::Change) -> bool| {
        refusal.mends.iter().filter(|mend| change(&mend.change)).filter_map(|mend| mend.days).min()
    };
    let only_days = days(&|change| change.ready.is_empty() && change.moulds == 0).expect("days alone");
    assert!(days(&|change| !change.ready.is_empty()).expect("prepared") < only_days);
    assert!(days(&|change| change.moulds > 0).expect("moulds") < only_days);
    mends_hold(HARBOUR, &class, refusal);
}

#[test]
fn twelve_students_on_twelve_moulds_fit_into_six_days() {
    let head = WEEKEND.split("[[days]]").next().expect("head").replace("moulds = 4", "moulds = 12");
    let class = class(&(head.replace("drills = 2", "drills = 6") + DAYS + "times = 6\n"));
    let answer = answer(HARBOUR, &class);
    let found = answer.found().expect("it fits");
    assert_eq!(class.days_until(found.plan.end), 6);
    assert!(found.plan.end - found.bound <= 120, "{} to {}", found.bound, found.plan.end);
}

#[test]
fn a_small_basket_with_all_prepared_still_has_to_dry() {
    let parts = "ready = [\"staves tapered\", \"rings\", \"handle\", \"ears\", \"base\"]";
    let text = WEEKEND.replace("count = 12", &format!("count = 4\n{parts}"));
    let answer = answer(FERRY, &class(&text));
    let refusal = refused(&answer);
    // With all parts ready nothing is left to prepare; a day of drying lies between weaving and rim.
    assert!(refusal.mends.iter().all(|mend| mend.change.ready.is_empty()), "{refusal:?}");
    assert!(refusal.days.alone.expect("days").enough > 2);
    let dry = answer.lessons[0].iter().find(|lesson| lesson.kind == StepKind::Dry).expect("it dries");
    assert_eq!(dry.task.wait, 1440);
}

#[test]
fn thirty_students_on_six_moulds_are_answered_in_time() {
    let head = WEEKEND.split("[[days]]").next().expect("head").replace("count = 12", "count = 30");
    let head = head.replace("moulds = 4", "moulds = 6").replace("drills = 2", "drills = 6");
    let evenings = DAYS.replace("\"09:00-12:00\", \"13:00-17:00\"", "\"18:00-21:00\"") + "times = 10\n";
    let class = class(&(head + &evenings));
    let answer = answer(HARBOUR, &class);
    let days = refused(&answer).days.for_all.expect("with more evenings it fits");
    println!("{days:?}");
    assert!(days.enough > 10 && days.at_least <= days.enough);
    // The plan with so many evenings says how good it is.
    let longer = class.longer(days.enough);
    let found = self::answer(HARBOUR, &longer);
    let found = found.found().expect("a plan");
    println!("{:?} to {:?}", longer.local(found.bound), longer.local(found.plan.end));
    assert!(found.bound <= found.plan.end);
}

#[test]
fn a_mixed_class_over_a_change_of_the_clocks_fits() {
    let class = class(TWO_WEEKENDS);
    let answer = answer(FERRY, &class);
    let found = answer.found().expect("it fits");
    let plan = &found.plan;
    // Who comes later begins later, and whoever waits is told for what.
    let practised = plan.students.iter().filter(|turn| turn.group == 1);
    for turn in practised {
        assert!(turn.steps[0].span.from >= class.students[1].from.expect("a day later"));
    }
    for waiting in answer.waiting(plan) {
        assert!(waiting.time.minutes() > 0 && waiting.in_class <= waiting.time.minutes());
        // Others take all of what is waited for while the step could be done.
        let begins = waiting.time.from;
        let then = |time: Window| time.from < begins + waiting.lesson.task.work && begins < time.to;
        let taken = plan.students.iter().filter(|turn| match waiting.lack {
            Lack::Mould => turn.mould.is_some_and(|(_, held)| then(held)),
            lack => answer.steps(turn).any(|(lesson, placed)| {
                let needs = match lack {
                    Lack::Drill => lesson.task.drill,
                    Lack::Table => lesson.task.table,
                    _ => lesson.task.hands,
                };
                needs && then(placed.span)
            }),
        });
        let there = match waiting.lack {
            Lack::Mould => answer.problem.moulds,
            Lack::Drill => answer.problem.drills,
            Lack::Table => answer.problem.tables,
            Lack::Teacher => answer.problem.hands,
        };
        assert!(taken.count() >= there as usize, "{waiting:?}");
    }
    // The rows that are due grow to all of them, and none is due after the last is woven.
    for turn in &plan.students {
        let due = answer.rows_due(turn);
        let rows =
            answer.lessons[turn.group].iter().filter_map(|lesson| lesson.rows).map(|rows| rows.1).max();
        assert_eq!(due.last().map(|due| due.row), rows);
        assert!(due.windows(2).all(|pair| pair[0].row < pair[1].row && pair[0].at < pair[1].at));
    }
    let chance = answer.chance(plan, 1).expect("a chance");
    println!("{chance:?}");
    assert_eq!(answer.chance(plan, 1), Some(chance.clone()));
    assert!((0.0..=1.0).contains(&chance.in_time) && (0.0..=1.0).contains(&chance.by_formula));
    assert!(!chance.decides.is_empty());
}

#[test]
fn what_lies_ready_is_no_step() {
    let class = class(TWO_WEEKENDS);
    let answer = answer(FERRY, &class);
    let kinds = |group: usize| answer.lessons[group].iter().map(|lesson| lesson.kind).collect::<Vec<_>>();
    assert!(class.students[0].ready.contains(&Ready::Rings) && !kinds(0).contains(&StepKind::Rings));
    assert!(!kinds(0).contains(&StepKind::Cut));
}

/// The only fault of a text: its identifier and the values it mentions, and its line and column.
fn fault(text: &str) -> (&'static str, String, (usize, usize)) {
    let faults = read(text).expect_err("something is wrong");
    assert_eq!(faults.len(), 1, "{faults:?}");
    let says = faults[0].says.clone();
    let place = faults[0].clone().told(|id, _| id.to_owned()).line_column(text);
    (says.id, format!("{:?}", says.args), place)
}

#[test]
fn what_is_wrong_is_said_with_its_place_and_its_remedy() {
    let (id, values, _) = fault(&WEEKEND.replace("New_York", "New_Yrok"));
    assert_eq!(id, "class-fault-zone-near");
    assert!(values.contains("America/New_Yrok") && values.contains("America/New_York"), "{values}");
    let (id, values, place) = fault(&WEEKEND.replace("moulds = 4", "moulds = 0"));
    assert_eq!((id, place), ("class-fault-number", (8, 10)));
    assert!(values.contains("moulds"), "{values}");
    let (id, values, place) = fault(&WEEKEND.replace("2027-04-11", "2027-04-10"));
    assert_eq!((id, place), ("class-fault-overlap", (20, 8)));
    assert!(values.contains("2027-04-10"), "{values}");
    assert_eq!(fault(&WEEKEND.replacen("\"13:00", "\"31:00", 1)).0, "class-fault-hours");
    let (id, values, _) =
        fault(&WEEKEND.replace("hand = \"learner\"", "hand = \"learner\"\nready = [\"ring\"]"));
    assert_eq!(id, "class-fault-ready-near");
    assert!(values.contains("\"ring\"") && values.contains("\"rings\""), "{values}");
    let (id, values, _) = fault(&WEEKEND.replace("moulds = 4", "mulds = 4"));
    assert!(id == "class-fault-toml" && values.contains("mulds"), "{values}");
    assert_eq!(fault(WEEKEND.split("[[days]]").next().expect("head")).0, "class-fault-no-days");
    assert!(fault(&WEEKEND.replace("moulds = 4\n", "")).1.contains("moulds"));
    // On 14 March 2027 the clocks there go from 2 to 3.
    let night = WEEKEND.replace("2027-04-10\"\nhours = [\"09:00", "2027-03-14\"\nhours = [\"02:30");
    assert_eq!(fault(&night).0, "class-fault-clock");
    let late = WEEKEND.replace("hand = \"learner\"", "hand = \"learner\"\nfrom = \"2028-01-01 09:00\"");
    assert_eq!(fault(&late).0, "class-fault-late");
    let samples = |more: &str| format!("{WEEKEND}\n[samples]\nhours = \"09:00-15:00\"\n{more}");
    assert_eq!(fault(&samples("stages = [\"half-wovn\"]")).0, "class-fault-stage-near");
    assert_eq!(fault(&samples("moulds = 0")).0, "class-fault-number");
    assert_eq!(fault(&samples("").replace("15:00\"", "8:00\"")).0, "class-fault-hours");
}

#[test]
fn a_step_that_no_session_holds_is_named() {
    let text = WEEKEND.replace("\"09:00-12:00\", \"13:00-17:00\"", "\"09:00-10:00\"");
    let answer = answer(HARBOUR, &class(&text));
    let refusal = refused(&answer);
    let kinds: Vec<StepKind> = refusal.too_long.iter().map(|step| step.lesson.kind).collect();
    assert!(kinds.contains(&StepKind::Pins), "{kinds:?}");
    assert!(refusal.too_long.iter().all(|step| step.minutes > 60 && step.longest == 60));
    assert_eq!(refusal.days.for_all, None);
}

#[test]
fn whoever_finds_no_room_at_a_table_waits_for_it_and_one_more_place_is_tried() {
    let days = DAYS.to_owned() + "times = 8\n";
    let head = WEEKEND.split("[[days]]").next().expect("head");
    let head = head.replace("count = 12", "count = 4");
    let with = |at_once: u32, days: &str| {
        class(&format!("{head}{days}[tables]\nat_once = {at_once}\nsteps = [\"cut\", \"rings\"]\n"))
    };
    let [one, two, four] = [1, 2, 4].map(|at_once| answer(HARBOUR, &with(at_once, &days)));
    let end = |answer: &Answer| answer.found().expect("it fits").plan.end;
    assert!(end(&one) > end(&two) && end(&two) >= end(&four), "{} {}", end(&one), end(&two));
    let plan = &one.found().expect("it fits").plan;
    assert!(one.waiting(plan).iter().any(|waiting| waiting.lack == Lack::Table));
    assert!(four.waiting(&four.found().expect("it fits").plan).iter().all(|one| one.lack != Lack::Table));
    // In fewer days it fits with one place more, if it does with the drills and moulds that there are.
    let short = with(1, &DAYS.replace("every = 1\n", "every = 1\ntimes = 6\n"));
    let answer = answer(HARBOUR, &short);
    let refusal = refused(&answer);
    mends_hold(HARBOUR, &short, refusal);
    assert!(refusal.mends.iter().any(|mend| mend.change.tables > 0), "{:?}", refusal.mends);
    assert_eq!(
        fault(&format!("{WEEKEND}[tables]\nat_once = 0\nsteps = [\"cut\"]\n")).0,
        "class-fault-number"
    );
}
