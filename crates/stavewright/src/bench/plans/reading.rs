//! What both kinds of plans have in common: patterns of the folder, the reader's words, paper, and what is made.

use basket::pattern::{Pattern, Units};
use serde::{Deserialize, Serialize};
use words::Words;
use workshop::{Item, Order};

use crate::bench::api::PlanOrder;
use crate::bench::compute::{self, Shop};
use crate::bench::refusal::Refusal;
use crate::failure::Failure;

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

/// A pattern that a plan names: a file of the folder, and of nothing else.
pub(super) fn pattern(named: &str, shop: Shop<'_>) -> Result<Pattern, Failure> {
    let refused = |refusal: Refusal| {
        let fault = refusal.fault();
        Failure::plain(format!("{named}: {}", fault.what), fault.how_to_mend.clone())
    };
    let name = named.strip_suffix(".toml").unwrap_or(named);
    let text = shop.folder.offered(name, shop.any_file, shop.catalogue).map_err(refused)?;
    compute::read(&text.source, shop).map_err(|problems| refused(Refusal::misread(problems)))
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

/// A failure of reading or planning as an answer.
pub(super) fn told(failure: &Failure) -> Refusal {
    let (what, help) = failure.parts();
    Refusal::senseless(what, "the plan", help)
}

/// A sheet that could not be set.
pub(super) fn unset(error: &dyn std::error::Error) -> Refusal {
    Refusal::senseless(
        error.to_string(),
        "the sheets",
        "Undo the last change, and report the plan that did it.",
    )
}
