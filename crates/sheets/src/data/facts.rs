//! The size of the basket at a glance.

use basket::fittings::Handle;
use basket::form::litres_to_us_quarts;
use basket::message::Value;
use basket::pattern::Units;
use basket::{Basket, Draft, Length, Lid, cuts};
use serde::Serialize;

use crate::scribe::{Scribe, name};

/// A name and its value.
#[derive(Serialize)]
pub(crate) struct Fact {
    name: String,
    value: String,
}

impl Fact {
    /// Its name, then its value.
    pub(crate) fn pair(self) -> [String; 2] {
        [self.name, self.value]
    }
}

pub(crate) fn summary(basket: &Basket, scribe: &Scribe<'_>) -> String {
    let id = match (&basket.ears, &basket.handle) {
        (_, Some(Handle::Swing(_))) => "summary-handle",
        (_, Some(Handle::Fixed(_))) => "summary-fixed",
        (_, Some(Handle::Knobs(_))) => "summary-knobs",
        (Some(_), None) => "summary-ears",
        (None, None) => "summary",
    };
    scribe
        .text(id, &[("staves", basket.body.uprights().count.into()), ("rows", basket.body.weave.rows.into())])
}

pub(crate) fn facts(draft: &Draft, scribe: &Scribe<'_>) -> Vec<Fact> {
    let basket = &draft.basket;
    let fact = |id, value| Fact { name: scribe.label(id), value };
    let mut facts = vec![
        fact("fact-across", scribe.words.across(basket.across())),
        fact("fact-height", scribe.words.both(height(basket))),
        fact("fact-base", base(basket, scribe)),
        fact("fact-holds", holds(basket, scribe)),
        fact("fact-staves", staves(basket, scribe)),
        fact("fact-weaving", scribe.words.run(basket.body.weave.length)),
        fact("fact-time", time(draft, scribe)),
    ];
    facts.extend(basket.lid.as_ref().map(|lid| fact("fact-lid", self::lid(lid, scribe))));
    facts.extend(basket.hand.whose.iter().map(|whose| {
        let whose = [("whose", name(whose.as_str()))];
        fact("fact-hand", scribe.words.with("hand-of", &whose))
    }));
    let measured = cuts::measured(&draft.cuts);
    facts.extend((!measured.is_empty()).then(|| fact("fact-measured", scribe.words.measures(&measured))));
    facts
}

/// How large the finished basket is.
pub(crate) fn size(basket: &Basket, scribe: &Scribe<'_>) -> Vec<Fact> {
    let fact = |id, value| Fact { name: scribe.label(id), value };
    vec![
        fact("fact-across", scribe.words.across(basket.across())),
        fact("fact-height", scribe.words.both(height(basket))),
        fact("fact-holds", holds(basket, scribe)),
    ]
}

/// From the table to the top of the rim.
fn height(basket: &Basket) -> Length {
    let rim = basket.body.rim();
    basket.body.form.profile.at(rim.along + rim.height).height + basket.body.base().thickness
}

fn base(basket: &Basket, scribe: &Scribe<'_>) -> String {
    let base = basket.body.base();
    let args = [
        ("diameter", name(scribe.words.across(base.across()))),
        ("thickness", name(scribe.words.both(base.thickness))),
        ("wood", base.woods()),
    ];
    scribe.text("base-size", &args)
}

fn holds(basket: &Basket, scribe: &Scribe<'_>) -> String {
    let litres = basket.body.form.litres();
    let quarts = litres_to_us_quarts(litres);
    let id = match scribe.words.units() {
        Units::Inches => "capacity-quarts",
        Units::Millimetres => "capacity-litres",
    };
    scribe.text(id, &[("litres", Value::Number(litres, 1)), ("quarts", Value::Number(quarts, 1))])
}

fn staves(basket: &Basket, scribe: &Scribe<'_>) -> String {
    let staves = basket.body.staves();
    scribe.text("staves-of", &[("count", staves.uprights.count.into()), ("stock", (&staves.stock).into())])
}

fn lid(lid: &Lid, scribe: &Scribe<'_>) -> String {
    let args = [
        ("across", name(scribe.words.across(lid.across))),
        ("fit", name(scribe.words.name(lid.seat.fit()))),
        ("count", lid.vessel.uprights().count.into()),
        ("rows", lid.vessel.weave.rows.into()),
    ];
    scribe.text("lid-of", &args)
}

fn time(draft: &Draft, scribe: &Scribe<'_>) -> String {
    let work: f64 = draft.steps.iter().map(|step| step.work_minutes).sum();
    let learner: f64 = draft.steps.iter().map(|step| step.learner_minutes).sum();
    let wait: f64 = draft.steps.iter().map(|step| step.wait_minutes).sum();
    let args = [("work", work), ("learner", learner), ("wait", wait)];
    scribe.text("time-in-all", &args.map(|(name, minutes)| (name, Value::Minutes(minutes))))
}
