//! What the maker notes while making: the plan beside an empty place.

use basket::Basket;
use basket::message::Value;

use super::facts::Fact;
use crate::scribe::Scribe;

pub(crate) fn record(basket: &Basket, scribe: &Scribe<'_>) -> Vec<Fact> {
    let line = |id, value| Fact { name: scribe.label(id), value };
    let work: f64 = basket.steps.iter().map(|step| step.work_minutes).sum();
    vec![
        line("record-who", String::new()),
        line("record-days", String::new()),
        line("record-staves", basket.body.uprights().count.to_string()),
        line("record-gap", scribe.fine(basket.body.staves().gap_rim)),
        line("record-rows", basket.body.weave.rows.to_string()),
        line("record-weaver", scribe.words.run(basket.body.weave.length)),
        line("record-height", scribe.words.both(basket.body.weave.top_height)),
        line("record-rows-added", basket.body.weave.rows_to_add.to_string()),
        line("record-outer", scribe.line(basket.body.rim().outer.cut)),
        line("record-inner", scribe.line(basket.body.rim().inner.cut)),
        line("record-lashing", scribe.line(basket.body.lashing().length)),
        line("record-time", scribe.words.value(&Value::Minutes(work))),
    ]
}
