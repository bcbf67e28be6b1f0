//! The cutting plan: which pieces come from which strand, drawn at scale, with the marks for a tape.

use basket::Length;
use planning::buying::Purchase;
use planning::cutting::{Plan, Strand};
use words::Words;

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Strip, Table};
use super::shopping::grouped;
use crate::scribe::name;

/// The cutting plans of all that is cut, as a sheet.
pub fn cutting_plan(title: &str, purchases: &[Purchase], words: &Words) -> Leaf {
    let clerk = Clerk::new(words);
    let planned =
        purchases.iter().filter_map(|purchase| Some(section(purchase, purchase.plan.as_ref()?, &clerk)));
    Leaf { title: title.to_owned(), name: clerk.label("cutting"), sections: planned.collect() }
}

fn section(purchase: &Purchase, plan: &Plan, clerk: &Clerk) -> Section {
    let mut notes = vec![said_of(purchase, plan, clerk)];
    if purchase.job.kerf > Length::ZERO {
        notes.push(clerk.text("kerf", &[("kerf", name(clerk.scribe.fine(purchase.job.kerf)))]));
    }
    let mut table = Table::new(clerk.head(&["#times", "strand", "pieces", "marks", "#end"]));
    let mut strips = Vec::new();
    for (times, strand) in plan.alike() {
        let from = from(purchase, strand, clerk);
        table.rows.push(vec![
            times.to_string(),
            from.clone(),
            grouped(&lengths(purchase, strand), clerk),
            marks(purchase, strand, clerk),
            clerk.whole(strand.left),
        ]);
        strips.push(strip(purchase, strand, format!("{times} × {from}"), clerk));
    }
    Section {
        heading: clerk.material(&purchase.need.material.name, &purchase.need.colour),
        notes,
        table: Some(table),
        strips,
        after: Vec::new(),
        ..Section::default()
    }
}

/// What is opened, and whether it is the least. Bought strands alone cost anything.
fn said_of(purchase: &Purchase, plan: &Plan, clerk: &Clerk) -> String {
    let opened = plan.strands.len() as u32;
    if plan.is_proven() {
        return clerk.text("proven", &[("count", opened.into())]);
    }
    let from_shelf: u32 = purchase.taken().iter().map(|(_, taken)| *taken).sum();
    let bound = from_shelf.saturating_add(u32::try_from(plan.bound).unwrap_or(u32::MAX)).min(opened);
    clerk.text("unproven", &[("count", opened.into()), ("bound", bound.into())])
}

fn lengths(purchase: &Purchase, strand: &Strand) -> Vec<Length> {
    let length = |piece: &usize| purchase.job.pieces.get(*piece).map(|piece| piece.length);
    strand.pieces.iter().filter_map(length).collect()
}

fn from(purchase: &Purchase, strand: &Strand, clerk: &Clerk) -> String {
    if let Some(lot) = purchase.lots.get(strand.stock) {
        return lot.name.clone();
    }
    let length = purchase.job.stocks.get(strand.stock).map(|stock| stock.length);
    clerk.text("bought-strand", &[("length", name(clerk.length(length)))])
}

/// Where the tape is marked: the end of each piece, the saw's path after it counted in.
fn marks(purchase: &Purchase, strand: &Strand, clerk: &Clerk) -> String {
    const MOST: usize = 60;
    let mut at = Length::ZERO;
    let mut marks: Vec<String> = Vec::new();
    for length in lengths(purchase, strand) {
        marks.push(clerk.whole(at + length));
        at += length + purchase.job.kerf;
    }
    let more = marks.len() > MOST;
    marks.truncate(MOST);
    marks.join(", ") + if more { ", …" } else { "" }
}

fn strip(purchase: &Purchase, strand: &Strand, name: String, clerk: &Clerk) -> Strip {
    let length = purchase.job.stocks.get(strand.stock).map_or(Length::ZERO, |stock| stock.length);
    let piece = |length: Length| (length.to_mm(), clerk.words.length(length));
    Strip {
        name,
        length_mm: length.to_mm(),
        pieces: lengths(purchase, strand).into_iter().map(piece).collect(),
    }
}
