//! One basket in several sizes: the set beside each other, how each stands in the next, what to cut for all, and
//! what another size changed in the pattern.

use basket::form::litres_to_us_quarts;
use basket::message::Value;
use basket::sizes::{Change, Nest};
use basket::{Draft, Finding, Length};
use planning::kits::{Batch, Kits};
use words::{FindingText, Words};

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Table};
use crate::scribe::name;

/// One of the sizes.
pub struct Size {
    /// What it is called, such as `5 in`.
    pub name: String,
    /// The basket in this size.
    pub draft: Draft,
    /// What was changed in the pattern for it.
    pub changes: Vec<Change>,
}

/// How one size stands in the next.
pub struct Standing {
    /// Names of the inner and the outer size.
    pub names: [String; 2],
    /// How it stands there.
    pub nest: Nest,
    /// What is found where there is less room than is wanted.
    pub finding: Option<Finding>,
}

/// A basket in several sizes, the smallest first.
pub struct Sizes {
    /// The sizes.
    pub each: Vec<Size>,
    /// How each stands in the next.
    pub nests: Vec<Standing>,
    /// Room that is wanted all round.
    pub wanted: Length,
    /// What is cut for all together, each size in a bag of its own.
    pub kits: Kits,
}

/// The sizes as a sheet.
pub fn sizes(title: &str, sizes: &Sizes, words: &Words) -> Leaf {
    let clerk = Clerk::new(words);
    let mut sections = vec![set(sizes, &clerk)];
    if !sizes.nests.is_empty() {
        sections.push(nests(sizes, &clerk));
    }
    sections.push(cuts(&sizes.kits, &clerk));
    sections.push(changed(sizes, &clerk));
    Leaf { title: title.to_owned(), name: clerk.label("sizes"), sections }
}

fn set(sizes: &Sizes, clerk: &Clerk) -> Section {
    let columns = [
        "size",
        "size-mould",
        "size-high",
        "#size-staves",
        "size-stave",
        "size-cane",
        "#size-rows",
        "size-holds",
    ];
    let mut table = Table::new(clerk.head(&columns));
    table.rows.extend(sizes.each.iter().map(|size| row(size, clerk)));
    Section { heading: clerk.label("sizes-set"), table: Some(table), ..Section::default() }
}

fn row(size: &Size, clerk: &Clerk) -> Vec<String> {
    let body = &size.draft.basket.body;
    let form = &body.form;
    let mut canes: Vec<String> = Vec::new();
    for weaver in body.weave.courses.iter().flat_map(|course| &course.weavers) {
        let cane = clerk.words.value(&(&weaver.material).into());
        if !canes.contains(&cane) {
            canes.push(cane);
        }
    }
    let litres = form.litres();
    let holds =
        [("litres", Value::Number(litres, 1)), ("quarts", Value::Number(litres_to_us_quarts(litres), 1))];
    vec![
        size.name.clone(),
        clerk.words.value(&form.across(form.arc(), Length::ZERO).into()),
        clerk.words.length(form.height()),
        body.uprights().count.to_string(),
        clerk.words.value(&(&body.staves().stock).into()),
        canes.join(", "),
        body.weave.rows.to_string(),
        clerk.text("size-holds-text", &holds),
    ]
}

fn nests(sizes: &Sizes, clerk: &Clerk) -> Section {
    let mut table = Table::new(clerk.head(&["nest", "nest-room", "nest-at", "nest-below", "nest-verdict"]));
    table.rows.extend(sizes.nests.iter().map(|one| {
        let [inner, outer] = one.names.each_ref().map(|size| name(size.as_str()));
        let Nest { room, at, below } = one.nest;
        vec![
            clerk.text("nest-in", &[("inner", inner), ("outer", outer)]),
            clerk.words.fine(room),
            clerk.words.length(at),
            clerk.words.length(below),
            clerk.label(if one.finding.is_none() { "nest-fits" } else { "nest-tight" }),
        ]
    }));
    let found = sizes.nests.iter().filter_map(|one| one.finding.as_ref()).map(|finding| {
        let FindingText { what, why, remedy, .. } = clerk.words.finding(finding);
        format!("{what} {why} {remedy}")
    });
    Section {
        heading: clerk.label("nests"),
        notes: vec![clerk.text("nests-note", &[("wanted", sizes.wanted.into())])],
        table: Some(table),
        after: found.collect(),
        ..Section::default()
    }
}

fn cuts(kits: &Kits, clerk: &Clerk) -> Section {
    let mut table =
        Table::new(clerk.head(&["piece", "material", "length", "for-sizes", "#spares", "#in-all"]));
    table.rows.extend(kits.batches.iter().enumerate().map(|(line, Batch { cut, .. })| {
        let holds = kits.bags.iter().flat_map(|bag| {
            bag.holds
                .iter()
                .filter(|(held, _)| *held == line)
                .map(|(_, count)| format!("{}: {count}", bag.student))
        });
        vec![
            clerk.words.cut(cut.of, cut.piece),
            clerk.stock(cut),
            clerk.length(cut.length),
            holds.collect::<Vec<_>>().join("; "),
            if cut.spares == 0 { String::new() } else { cut.spares.to_string() },
            (cut.count + cut.spares).to_string(),
        ]
    }));
    Section { heading: clerk.label("batch"), table: Some(table), ..Section::default() }
}

fn changed(sizes: &Sizes, clerk: &Clerk) -> Section {
    let mut table = Table::new(clerk.head(&["size", "size-key", "size-value", "size-why"]));
    for size in &sizes.each {
        table.rows.extend(size.changes.iter().map(|Change { key, value, why }| {
            let now = value.clone().unwrap_or_else(|| clerk.label("size-out"));
            vec![size.name.clone(), key.clone(), now, clerk.words.term(why)]
        }));
    }
    Section {
        heading: clerk.label("sizes-changed"),
        notes: vec![clerk.label("sizes-kept")],
        table: (!table.rows.is_empty()).then_some(table),
        ..Section::default()
    }
}
