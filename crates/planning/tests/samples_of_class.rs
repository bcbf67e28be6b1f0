//! The samples of a class, re-checked by rules that know nothing of how they were planned.

use basket::steps::{Stage, Step};
use basket::{Catalogue, Draft, Hand};
use planning::class::schedule::{Minute, Window};
use planning::class::written::{Class, read};
use planning::class::{Answer, Source};
use planning::samples::{ClassSample, ClassSamples};

const FERRY: &str = include_str!("../../../patterns/ferry-egg-basket.toml");
const TWO_WEEKENDS: &str = include_str!("../../../classes/ferry-two-weekends.toml");
const OWN_HOURS: &str = "hours = \"09:00-15:00\"";

/// The answer to a class, its samples, and the steps that they are stopped after.
fn planned(text: &str) -> (Answer, ClassSamples, Vec<Step>) {
    planned_of(FERRY, text)
}

fn planned_of(pattern: &str, text: &str) -> (Answer, ClassSamples, Vec<Step>) {
    let class = read(text).unwrap_or_else(|faults| panic!("{faults:?}"));
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(pattern, catalogue).expect("a pattern");
    let source = Source { pattern: &pattern, catalogue, hand: &Hand::USUAL };
    // So that the test does not hang by the clock, it looks at so many beginnings of plans at the most.
    let mut asked = 0;
    let answer = Answer::of(&class, source, &mut |_| {
        asked += 1;
        asked < 400
    });
    let steps = Draft::of(pattern, catalogue, &Hand::USUAL).steps;
    let samples = answer.samples(&steps).expect("the class asks for samples");
    (answer, samples, steps)
}

fn with_stages(stages: &str) -> String {
    TWO_WEEKENDS.replace("[\"staves-set\", \"half-woven\", \"rim-clamped\"]", stages)
}

/// Fails where the samples break a rule.
fn check(answer: &Answer, samples: &ClassSamples, steps: &[Step], clock: (i8, i8)) {
    let asked = answer.class.samples.as_ref().expect("samples");
    assert_eq!(samples.each.len() + samples.missing.len(), asked.stages.len());
    let mut at_hand: Vec<Window> = samples.together.iter().flat_map(|(_, work)| work).copied().collect();
    let mut on_mould: Vec<(u32, Window)> = Vec::new();
    for sample in &samples.each {
        in_making_order(sample, samples, steps);
        is_ready_for_its_session(answer, sample, steps);
        at_hand.extend(sample.work.iter().flat_map(|(_, work)| work));
        on_mould.extend(sample.mould);
    }
    // There is one pair of hands, in the teacher's own hours and never while class is on.
    for (index, one) in at_hand.iter().enumerate() {
        assert!(one.from < one.to);
        assert!(at_hand[..index].iter().all(|other| !overlap(one, other)), "{one:?} overlaps");
        assert!(answer.problem.sessions.iter().all(|session| !overlap(one, session)), "{one:?} in class");
        let [(first, from), (last, to)] = [one.from, one.to].map(|moment| answer.class.local(moment));
        assert_eq!(first, last);
        assert!(clock.0 <= from.hour() && (to.hour(), to.minute()) <= (clock.1, 0), "{from} to {to}");
    }
    for (index, (number, held)) in on_mould.iter().enumerate() {
        assert!(asked.moulds.is_none_or(|moulds| *number < moulds), "there is no mould {number}");
        let others = on_mould[..index].iter().filter(|(other, _)| other == number);
        assert!(others.clone().all(|(_, other)| !overlap(held, other)), "mould {number} is held twice");
    }
}

fn overlap(a: &Window, b: &Window) -> bool {
    a.from < b.to && b.from < a.to
}

fn minutes(minutes: f64) -> Minute {
    minutes.round() as Minute
}

/// Every step up to the last has its whole work, after what comes before it has dried and its own material has
/// been soaked; the mould is held from the base on it until the sample is off it, or shown.
fn in_making_order(sample: &ClassSample, samples: &ClassSamples, steps: &[Step]) {
    assert_eq!(steps[sample.last_step as usize - 1].stage, sample.stage);
    let (mut ready, mut mounted, mut off) = (Minute::MIN, None, None);
    let mut first = None;
    for step in &steps[..sample.last_step as usize] {
        let shared = samples.together.as_ref().filter(|(number, _)| *number == step.number);
        let own = sample.work.iter().find(|(number, _)| *number == step.number);
        let Some((_, work)) = shared.or(own) else {
            assert_eq!(minutes(step.work_minutes), 0, "{:?} is left out", step.kind);
            continue;
        };
        let took: Minute = work.iter().map(|window| window.to - window.from).sum();
        let many = if shared.is_some() { samples.each.len() as i64 } else { 1 };
        assert_eq!(took, minutes(step.work_minutes) * many, "{:?}", step.kind);
        assert!(work.windows(2).all(|pair| pair[0].to <= pair[1].from));
        let begun = work[0].from - minutes(step.soak_minutes.unwrap_or(0.0));
        assert!(begun >= ready, "{:?} is begun at {begun}, and could from {ready} on", step.kind);
        if shared.is_none() {
            first = first.or(Some(begun));
        }
        ready = work[work.len() - 1].to + minutes(step.wait_minutes);
        mounted = mounted.or((step.stage == Stage::BaseOnMould).then_some(work[0].from));
        off = off.or((step.stage == Stage::OffMould).then_some(work[work.len() - 1].to));
    }
    assert_eq!(first, Some(sample.begin));
    assert!(ready <= sample.shown, "{:?} is ready at {ready}, shown at {}", sample.stage, sample.shown);
    assert_eq!(sample.mould.is_some(), mounted.is_some());
    if let (Some((_, held)), Some(mounted)) = (sample.mould, mounted) {
        assert!(held.from <= mounted, "{held:?}");
        match off {
            Some(_) => assert!(held.to <= sample.shown),
            None => assert!(held.to >= sample.shown, "what stands on its mould when it is shown keeps it"),
        }
    }
}

/// It is shown at the beginning of the first session in which a student goes on from there.
fn is_ready_for_its_session(answer: &Answer, sample: &ClassSample, steps: &[Step]) {
    let session = answer.problem.sessions.iter().find(|session| session.from == sample.shown);
    let session = session.expect("it is shown when a session begins");
    let later: Vec<_> = steps[sample.last_step as usize..].iter().map(|step| step.kind).collect();
    let plan = &answer.found().expect("a plan").plan;
    let begins: Vec<Minute> = plan
        .students
        .iter()
        .flat_map(|turn| answer.steps(turn))
        .filter(|(lesson, _)| later.contains(&lesson.kind))
        .map(|(_, placed)| placed.span.from)
        .collect();
    let first = begins.into_iter().min().expect("somebody goes on");
    assert!(session.from <= first && first < session.to, "{first} is not in {session:?}");
}

#[test]
fn samples_of_a_class_stand_ready_when_somebody_goes_on_from_there() {
    let all = "[\"base-on-mould\", \"staves-set\", \"half-woven\", \"ears-set\", \"woven\", \"rim-clamped\", \"lashed\"]";
    for (stages, own) in [
        ("[\"staves-set\", \"half-woven\", \"rim-clamped\"]", ("09:00-15:00", (9, 15))),
        ("[\"rim-clamped\", \"staves-set\"]", ("19:00-22:00", (19, 22))),
        (all, ("07:00-20:00", (7, 20))),
    ] {
        let text = with_stages(stages).replace(OWN_HOURS, &format!("hours = \"{}\"", own.0));
        let text = if stages == all { text.replace("moulds = 2  ", "moulds = 5  ") } else { text };
        let (answer, samples, steps) = planned(&text);
        assert!(samples.missing.is_empty() && !samples.each.is_empty(), "{samples:?}");
        check(&answer, &samples, &steps, own.1);
        // The same class has the same samples.
        assert_eq!(answer.samples(&steps), Some(samples));
    }
}

#[test]
fn a_stage_that_the_basket_never_passes_is_named_and_the_others_are_planned() {
    let (head, rest) = FERRY.split_once("[lashing]").expect("the section");
    let after = rest.split_once("\n[").map_or("", |(_, after)| after);
    let pinned = format!("lashing = \"none\"\n{head}[{after}");
    let (answer, samples, steps) = planned_of(
        &pinned,
        &with_stages("[\"staves-set\", \"pinned\", \"lashed\"]").replace("times = 2", "times = 4"),
    );
    check(&answer, &samples, &steps, (9, 15));
    assert_eq!((samples.each.len(), samples.missing), (2, vec![Stage::Lashed]));
}

#[test]
fn without_a_plan_of_the_class_samples_are_ready_before_it_begins() {
    let class = with_stages("[\"staves-set\"]").replace("moulds = 6", "moulds = 1");
    let (answer, samples, _) = planned(&class);
    assert!(answer.found().is_none());
    let first = answer.problem.sessions[0].from;
    assert!(samples.each.iter().all(|sample| sample.shown == first), "{samples:?}");
}

#[test]
fn hours_too_short_for_the_work_leave_no_samples() {
    let (_, samples, _) = planned(&TWO_WEEKENDS.replace(OWN_HOURS, "hours = \"09:00-09:02\""));
    assert_eq!((samples.each.len(), samples.together), (0, None));
}

#[test]
fn a_class_that_asks_for_no_samples_has_none() {
    let text = TWO_WEEKENDS.split("[samples]").next().expect("the class");
    let class: Class = read(text).expect("a class");
    assert_eq!(class.samples, None);
}
