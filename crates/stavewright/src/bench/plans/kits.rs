//! What a kits file comes to: kits, what to buy, how to cut, what it costs.

use std::ops::ControlFlow;
use std::time::{Duration, Instant};

use axum::http::StatusCode;
use basket::Draft;
use basket::message::{Message, Value};
use basket::pattern::{AllReady, Units};
use planning::buying::Purchase;
use planning::cutting::Progress;
use sheets::workshop::{
    LabelSize, Leaf, Shopping, check_card, cutting_plan, kits, labels, shopping_csv, shopping_list,
};
use sheets::{SheetError, Templates};
use words::Words;

use super::reading::{Made, Planning, Say, pattern, shown, unset, words};
use super::shown::{booking, leaf};
use super::written::problems;
use crate::bench::api::{LabelWord, PlanOrder, PlanShown, Problem};
use crate::bench::compute::{Shop, paper};
use crate::bench::refusal::Refusal;
use crate::kits_file::{self, KitsFile, PriceTable};
use crate::planned::{Planned, PlannedClass, Reading, Worked, bought, cut, of_order};

pub(super) fn work(planning: &Planning, shop: Shop<'_>, say: &mut Say<'_>) -> Result<Vec<Made>, Refusal> {
    let Planning { order, items, .. } = planning;
    let class = kits_file::read(&order.source)
        .map_err(|faults| Refusal::misread(problems(&order.source, faults, order.language.as_deref())))?;
    let class = drafted(class, order, shop)?;
    let units = class.drafts.first().map(|draft| draft.basket.units).unwrap_or_default();
    let classes = together(vec![class], planning, shop)?;
    let planned = Planned::of(classes, items, words(order, units)?);
    let Some(class) = planned.classes.first() else { return Ok(Vec::new()) };
    let mut watch = watching(order, &planned.words, say);
    let taken = planned.purchases(&mut watch);
    let anew = planned.anew(class, &mut watch);
    drop(watch);
    if order.sheets {
        return sheets((class, &planned), (&taken, &anew), order, say).map_err(|error| unset(&error));
    }
    let all = PlanShown {
        leaves: leaves(class, &planned, (&taken, &anew)).map(|(id, own)| leaf(id, own)).to_vec(),
        bought: booking(bought(items, &taken)),
        cut: cut(items, &taken).and_then(booking),
        pictures: Vec::new(),
    };
    Ok(vec![shown(&all)?])
}

/// The sheets of a class, in the order in which they are worked with: its kits and its price, and what is bought
/// and cut for it and for what is planned for together with it.
fn leaves(
    class: &PlannedClass,
    planned: &Planned,
    (purchases, anew): (&[Purchase], &[Purchase]),
) -> [(&'static str, Leaf); 4] {
    let (title, together, words) = (&class.file.title, planned.title(), &planned.words);
    let list = Shopping { purchases, due: &planned.due(), currency: &planned.currency() };
    [
        ("kits", kits(title, &class.kits, words)),
        ("shopping", shopping_list(&together, &list, words)),
        ("cutting", cutting_plan(&together, purchases, words)),
        ("price", Worked::of(class, anew).leaf(class, words)),
    ]
}

fn sheets(
    (class, planned): (&PlannedClass, &Planned),
    (purchases, anew): (&[Purchase], &[Purchase]),
    order: &PlanOrder,
    say: &mut Say<'_>,
) -> Result<Vec<Made>, SheetError> {
    let (words, templates) = (&planned.words, Templates::default());
    let paper = paper(order.paper, words);
    let files = ["kits.pdf", "shopping.pdf", "cutting.pdf", "price.pdf"];
    let mut made = Vec::new();
    for (file, (_, leaf)) in files.into_iter().zip(leaves(class, planned, (purchases, anew))) {
        say(file.to_owned());
        made.push((file, leaf.pdf(words, paper, &templates)?));
    }
    say("checks.pdf".to_owned());
    let checks = check_card(&class.file.title, &class.drafts, words);
    made.push(("checks.pdf", checks.pdf(words, paper, &templates)?));
    say("labels.pdf".to_owned());
    let size = order.labels.map_or(LabelSize::usual(paper), LabelSize::from);
    made.push((
        "labels.pdf",
        labels(&[(class.file.title.as_str(), &class.kits)], size, words).pdf(words, &templates)?,
    ));
    made.push(("shopping.csv", shopping_csv(purchases)?));
    Ok(made)
}

/// The class of a kits file, drafted as its packets are: with the shelf's measures, by the hand taken up.
fn drafted(file: KitsFile, order: &PlanOrder, shop: Shop<'_>) -> Result<PlannedClass, Refusal> {
    let names = words(order, Units::default())?;
    let draft = |named: &str, ready: Option<AllReady>| draft(named, ready, (order, shop));
    Reading { words: &names, draft: &draft }.class(file)
}

fn draft(
    named: &str,
    ready: Option<AllReady>,
    (order, shop): (&PlanOrder, Shop<'_>),
) -> Result<Draft, Refusal> {
    let mut pattern = pattern(named, (order, shop))?;
    pattern.ready = ready.unwrap_or(pattern.ready);
    Ok(Draft::of(pattern, shop.catalogue, shop.hand))
}

/// With the other plans of the folder, and the orders, that are bought and cut for together with it.
fn together(
    mut classes: Vec<PlannedClass>,
    planning: &Planning,
    shop: Shop<'_>,
) -> Result<Vec<PlannedClass>, Refusal> {
    for name in &planning.order.plans {
        let text = shop.folder.offered(name, shop.any_file, shop.catalogue)?.source;
        let tag = planning.order.language.as_deref();
        let file = kits_file::read(&text).map_err(|faults| other(name, &problems(&text, faults, tag)))?;
        classes.push(drafted(file, &planning.order, shop)?);
    }
    for order in &planning.orders {
        let draft = draft(&order.pattern, None, (&planning.order, shop))?;
        classes.push(of_order(order, draft, PriceTable::default()));
    }
    Ok(classes)
}

/// What is wrong first in another plan than the one that is open.
fn other(name: &str, found: &[Problem]) -> Refusal {
    let first = found.first();
    let message = Message::new("kits-fault-in")
        .with("file", name)
        .with("line", first.map_or(1, |first| first.line))
        .with("said", Value::Name(first.map(|first| first.message.clone()).unwrap_or_default()));
    Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, "the plan")
}

/// Lets a search go on for the order's time, and says how far it is.
fn watching<'w, 's>(
    order: &PlanOrder,
    words: &'w Words,
    say: &'w mut Say<'s>,
) -> impl FnMut(Progress) -> ControlFlow<()> + use<'w, 's> {
    let (began, limit) = (Instant::now(), Duration::from_secs(u64::from(order.seconds)));
    let mut last = None;
    move |so_far: Progress| {
        if last != Some((so_far.cost, so_far.bound)) {
            last = Some((so_far.cost, so_far.bound));
            let count = |count: u64| Value::Count(i64::try_from(count).unwrap_or(i64::MAX));
            let values = [("found", count(so_far.cost)), ("least", count(so_far.bound))];
            say(words.with("workshop-searching", &values));
        }
        if began.elapsed() < limit { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
    }
}

impl From<LabelWord> for LabelSize {
    fn from(word: LabelWord) -> Self {
        match word {
            LabelWord::Letter10 => Self::FourByTwo,
            LabelWord::Letter6 => Self::LetterSix,
            LabelWord::A4FourByTwo => Self::A4FourByTwo,
            LabelWord::A4Ten => Self::A4Ten,
            LabelWord::A4Eight => Self::A4Eight,
            LabelWord::A4Twelve => Self::A4Twelve,
        }
    }
}
