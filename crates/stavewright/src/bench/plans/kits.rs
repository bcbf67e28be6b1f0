//! What a kits file comes to: kits, what to buy, how to cut, what it costs.

use std::ops::ControlFlow;
use std::time::{Duration, Instant};

use basket::message::Value;
use basket::pattern::Units;
use planning::buying::Purchase;
use planning::cutting::Progress;
use sheets::workshop::{LabelSize, Leaf, cutting_plan, kits, labels, shopping_csv, shopping_list};
use sheets::{Paper, SheetError, Templates};

use super::reading::{Made, Planning, Say, pattern, shown, told, unset, words};
use super::shown::{booking, leaf};
use crate::bench::api::{PlanLeaf, PlanOrder, PlanShown};
use crate::bench::compute::{Shop, paper};
use crate::bench::refusal::Refusal;
use crate::planned::{Planned, PlannedClass, Reading, Worked, bought, cut};
use crate::source::{Origin, Text};

pub(super) fn work(planning: &Planning, shop: Shop<'_>, say: &mut Say<'_>) -> Result<Vec<Made>, Refusal> {
    let Planning { order, items } = planning;
    let class = read(order, shop)?;
    let units = class.drafts.first().map(|draft| draft.basket.units).unwrap_or_default();
    let planned = Planned::of(vec![class], items, words(order, units)?);
    let asked = (Instant::now(), order);
    let taken = purchases(&planned, true, asked, say)?;
    let anew = purchases(&planned, false, asked, say)?;
    let Some(class) = planned.classes.first() else { return Ok(Vec::new()) };
    if order.sheets {
        let paper = paper(order.paper, &planned.words);
        return sheets((class, &planned), (&taken, &anew), paper, say).map_err(|error| unset(&error));
    }
    let all = PlanShown {
        leaves: leaves(class, &planned, (&taken, &anew)),
        bought: booking(bought(items, &taken)),
        cut: cut(items, &taken).and_then(booking),
        pictures: Vec::new(),
    };
    Ok(vec![shown(&all)?])
}

/// The leaves of a class, in the order in which they are worked with.
fn leaves(
    class: &PlannedClass,
    planned: &Planned,
    (purchases, anew): (&[Purchase], &[Purchase]),
) -> Vec<PlanLeaf> {
    let (title, words) = (&class.file.title, &planned.words);
    vec![
        leaf("kits", kits(title, &class.kits, words)),
        leaf("shopping", shopping_list(title, purchases, &planned.currency(), words)),
        leaf("cutting", cutting_plan(title, purchases, words)),
        leaf("price", Worked::of(class, planned, anew).leaf(class, words)),
    ]
}

fn sheets(
    (class, planned): (&PlannedClass, &Planned),
    (purchases, anew): (&[Purchase], &[Purchase]),
    paper: Paper,
    say: &mut Say<'_>,
) -> Result<Vec<Made>, SheetError> {
    let (title, words, templates) = (&class.file.title, &planned.words, Templates::default());
    let leaves: [(&'static str, Leaf); 4] = [
        ("kits.pdf", kits(title, &class.kits, words)),
        ("shopping.pdf", shopping_list(title, purchases, &planned.currency(), words)),
        ("cutting.pdf", cutting_plan(title, purchases, words)),
        ("price.pdf", Worked::of(class, planned, anew).leaf(class, words)),
    ];
    let mut made = Vec::new();
    for (file, leaf) in leaves {
        say(file.to_owned());
        made.push((file, leaf.pdf(words, paper, &templates)?));
    }
    say("labels.pdf".to_owned());
    let size = if paper == Paper::A4 { LabelSize::A4Ten } else { LabelSize::FourByTwo };
    made.push(("labels.pdf", labels(title, &class.kits, size, words).pdf(words, &templates)?));
    made.push(("shopping.csv", shopping_csv(purchases)?));
    Ok(made)
}

fn read(order: &PlanOrder, shop: Shop<'_>) -> Result<PlannedClass, Refusal> {
    let text = Text { origin: Origin::File("kits.toml".into()), content: order.source.clone() };
    let names = words(order, Units::default())?;
    let pattern = |named: &str| pattern(named, shop);
    let reading = Reading { catalogue: shop.catalogue, words: &names, pattern: &pattern };
    reading.class(&text).map_err(|failure| told(&failure))
}

/// What the class takes; the search ends after the order's time with the best that was found.
fn purchases(
    planned: &Planned,
    from_shelf: bool,
    (began, order): (Instant, &PlanOrder),
    say: &mut Say<'_>,
) -> Result<Vec<Purchase>, Refusal> {
    let limit = Duration::from_secs(u64::from(order.seconds));
    let mut last = None;
    let mut watch = |so_far: Progress| {
        if last != Some((so_far.cost, so_far.bound)) {
            last = Some((so_far.cost, so_far.bound));
            let count = |count: u64| Value::Count(i64::try_from(count).unwrap_or(i64::MAX));
            let values = [("found", count(so_far.cost)), ("least", count(so_far.bound))];
            say(planned.words.with("workshop-searching", &values));
        }
        if began.elapsed() < limit { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
    };
    planned.purchases(from_shelf, &mut watch).map_err(|failure| told(&failure))
}
