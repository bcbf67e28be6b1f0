//! The kits of a class: what to cut for all, what lies in each bag, what the room shares.

use planning::kits::{Bag, Batch, Kits};
use words::Words;

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Table};
use crate::scribe::name;

/// The kits as a sheet.
pub fn kits(title: &str, kits: &Kits, words: &Words) -> Leaf {
    let clerk = Clerk::new(words);
    let mut sections = vec![batches(kits, &clerk)];
    sections.extend(bags(kits, &clerk));
    sections.push(room(kits, &clerk));
    Leaf { title: title.to_owned(), name: clerk.label("kits"), sections }
}

fn batches(kits: &Kits, clerk: &Clerk) -> Section {
    let columns = ["piece", "material", "length", "bags-hold", "#spares", "#in-all"];
    let mut table = Table::new(clerk.head(&columns));
    table.rows.extend(kits.batches.iter().map(|batch| {
        let cut = &batch.cut;
        vec![
            clerk.words.cut(cut.of, cut.piece),
            clerk.stock(cut),
            clerk.length(cut.length),
            shares(batch, clerk),
            if cut.spares == 0 { String::new() } else { cut.spares.to_string() },
            (cut.count + cut.spares).to_string(),
        ]
    }));
    Section {
        heading: clerk.label("batch"),
        notes: vec![clerk.label("batch-note")],
        table: Some(table),
        ..Section::default()
    }
}

/// `8 × 61, 4 × 43`.
fn shares(batch: &Batch, clerk: &Clerk) -> String {
    let share = |(bags, each): &(u32, u32)| {
        clerk.text("share", &[("bags", (*bags).into()), ("each", (*each).into())])
    };
    batch.shares.iter().map(share).collect::<Vec<_>>().join(", ")
}

/// A section for all bags that hold the same.
fn bags(kits: &Kits, clerk: &Clerk) -> Vec<Section> {
    let mut alike: Vec<(&Bag, Vec<&str>)> = Vec::new();
    for bag in &kits.bags {
        match alike.iter_mut().find(|(own, _)| own.holds == bag.holds && own.title == bag.title) {
            Some((_, who)) => who.push(&bag.student),
            None => alike.push((bag, vec![&bag.student])),
        }
    }
    alike.into_iter().map(|(bag, who)| one_bag(kits, bag, &who, clerk)).collect()
}

fn one_bag(kits: &Kits, bag: &Bag, who: &[&str], clerk: &Clerk) -> Section {
    let mut table = Table::new(clerk.head(&["#count", "piece", "material", "length"]));
    table.ticks = true;
    table.rows.extend(bag.holds.iter().filter_map(|(line, count)| {
        let cut = &kits.batches.get(*line)?.cut;
        Some(vec![
            count.to_string(),
            clerk.words.cut(cut.of, cut.piece),
            clerk.stock(cut),
            clerk.length(cut.length),
        ])
    }));
    let soak = |minutes| clerk.text("soak", &[("time", name(clerk.scribe.minutes(minutes)))]);
    let heading = [("who", name(who.join(", "))), ("title", name(bag.title.as_str()))];
    Section {
        heading: clerk.text("bag", &heading),
        notes: bag.soak_minutes.map(soak).into_iter().collect(),
        table: Some(table),
        ..Section::default()
    }
}

fn room(kits: &Kits, clerk: &Clerk) -> Section {
    let tools = kits.tools.iter().map(|tool| clerk.words.term(tool)).collect::<Vec<_>>().join(", ");
    Section {
        heading: clerk.label("room"),
        notes: vec![clerk.label("room-note"), tools],
        ..Section::default()
    }
}
