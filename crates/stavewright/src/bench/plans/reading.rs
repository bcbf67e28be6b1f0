//! What both kinds of plans have in common: patterns of the folder, the reader's words, paper, and what is made.

use axum::http::StatusCode;
use basket::message::{Message, Value};
use basket::pattern::{Pattern, Units};
use serde::{Deserialize, Serialize};
use words::Words;
use workshop::{Item, Order};

use crate::bench::api::PlanOrder;
use crate::bench::compute::{self, Shop};
use crate::bench::look::problems;
use crate::bench::refusal::Refusal;

/// What a worker is told: the order as the page sent it, and the shelf, which workers do not read themselves.
#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Planning {
    pub(crate) order: PlanOrder,
    pub(crate) items: Vec<Item>,
    /// The orders that are bought for together with the plan.
    pub(crate) orders: Vec<Order>,
}

/// A file that was made.
pub(crate) type Made = (&'static str, Vec<u8>);
/// Told what is done meanwhile.
pub(crate) type Say<'a> = dyn FnMut(String) + 'a;

/// What is shown of a plan; the page asks for it under this name.
pub(super) const SHOWN: &str = "shown.json";

/// A pattern that a plan names: a file of the folder, and of nothing else. What is wrong with it is said in the
/// reader's language.
pub(super) fn pattern(named: &str, (order, shop): (&PlanOrder, Shop<'_>)) -> Result<Pattern, Refusal> {
    let name = named.strip_suffix(".toml").unwrap_or(named);
    let language = compute::language(order.language.as_deref())?;
    let of = |status: StatusCode, said: String| {
        let file = Value::Name(named.chars().take(80).collect());
        let message = Message::new("plan-pattern").with("file", file).with("said", Value::Name(said));
        Refusal::said(status, message, "the plan")
    };
    let text = shop.folder.offered(name, shop.any_file, shop.catalogue);
    let text = text.map_err(|refusal| of(refusal.status(), refusal.told(language).fault().what.clone()))?;
    compute::read(&text.source, shop).map_err(|found| {
        let told = problems::told(found, order.language.as_deref());
        let said = told.into_iter().next().map(|first| first.told).unwrap_or_default();
        of(StatusCode::UNPROCESSABLE_ENTITY, said)
    })
}

/// The reader of a plan; of the units that nobody named these.
pub(super) fn words(order: &PlanOrder, own: Units) -> Result<Words, Refusal> {
    compute::words(order.language.as_deref(), order.units, own)
}

/// What is shown, as a file.
pub(super) fn shown(what: &impl Serialize) -> Result<Made, Refusal> {
    let bytes = serde_json::to_vec(what).map_err(|error| unset(&error))?;
    Ok((SHOWN, bytes))
}

/// A sheet that could not be set.
pub(super) fn unset(error: &dyn std::error::Error) -> Refusal {
    Refusal::senseless(
        error.to_string(),
        "the sheets",
        "Undo the last change, and report the plan that did it.",
    )
}
