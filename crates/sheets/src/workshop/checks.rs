//! The card by which students check their own work, step by step, before they go on.

use basket::pattern::StepKind;
use basket::steps::Step;
use basket::{Draft, Of, teaching};
use words::Words;

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Table};

/// What to look for at each step of each basket of a class, once for students who make the same.
pub fn check_card(title: &str, drafts: &[Draft], words: &Words) -> Leaf {
    let clerk = Clerk::new(words);
    let mut sections: Vec<Section> = Vec::new();
    for draft in drafts {
        let section = of_basket(draft, &clerk);
        if !sections.contains(&section) {
            sections.push(section);
        }
    }
    Leaf { title: title.to_owned(), name: clerk.label("checks"), sections }
}

/// The usual faults of its steps, each with what mends it.
fn of_basket(draft: &Draft, clerk: &Clerk) -> Section {
    let words = clerk.words;
    let mut table = Table::new(clerk.head(&["checks-step", "checks-none", "checks-mend"]));
    table.ticks = true;
    let looked_at = |step: &&Step| step.of == Of::Body || step.kind == StepKind::Lid;
    for step in draft.steps.iter().filter(looked_at) {
        let heading = format!("{}. {}", step.number, words.step(step.of, step.kind));
        for (at, fault) in teaching::faults(step.kind, &draft.basket).iter().enumerate() {
            let cure = words.with(&format!("{}.cure", fault.id), &fault.args);
            let step = if at == 0 { heading.clone() } else { String::new() };
            table.rows.push(vec![step, words.say(fault), cure]);
        }
    }
    Section {
        heading: draft.basket.title.clone(),
        notes: vec![clerk.label("checks-note")],
        table: Some(table),
        apart: true,
        ..Section::default()
    }
}
