//! The main figures of a basket.

use basket::Draft;
use basket::form::litres_to_us_quarts;
use basket::message::Value;
use words::Words;

use super::lengths;
use crate::bench::api::Figure;

/// The figures that are always in sight.
pub(super) fn figures(draft: &Draft, words: &Words) -> Vec<Figure> {
    let basket = &draft.basket;
    let figure = |id: &str, value: String| Figure {
        id: id.to_owned(),
        label: words.term(&format!("form-figure-{id}")),
        value,
    };
    let staves = basket.body.staves();
    let litres = basket.body.form.litres();
    let quarts = litres_to_us_quarts(litres);
    let capacity = words
        .with("form-capacity", &[("litres", Value::Number(litres, 1)), ("quarts", Value::Number(quarts, 1))]);
    let hand = basket.hand.whose.as_ref().map(|whose| {
        let whose = [("whose", Value::Name(whose.clone()))];
        figure("hand", words.with("hand-of", &whose))
    });
    let all = [
        figure("staves", staves.uprights.count.to_string()),
        figure("rows", basket.body.weave.rows.to_string()),
        figure("gap", lengths::both(words, staves.gap_rim)),
        figure("stave-length", words.both(staves.length)),
        figure("weaver", words.run(basket.body.weave.length)),
        figure("height", words.both(basket.body.weave.top_height)),
        figure("across", words.across(basket.across())),
        figure("capacity", capacity),
        figure("work", words.minutes(draft.steps.iter().map(|step| step.work_minutes).sum())),
    ];
    all.into_iter().chain(hand).collect()
}
