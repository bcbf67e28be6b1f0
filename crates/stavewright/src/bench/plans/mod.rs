//! Plans of classes on the bench: which files of the folder are plans, what stands in them, and what they come to.

mod class;
mod kits;
mod reading;
mod shown;
mod written;

pub(crate) use shown::leaf;
pub(crate) use written::written;

use super::api::PlanKind;
use super::compute::{self, Shop};
use super::refusal::Refusal;

pub(crate) use reading::{Made, Planning, Say};

/// What is shown of a plan, or its sheets.
pub(crate) fn work(planning: &Planning, shop: Shop<'_>, say: &mut Say<'_>) -> Result<Vec<Made>, Refusal> {
    let made = match planning.order.kind {
        PlanKind::Kits => kits::work(planning, shop, say),
        PlanKind::Class => class::work(planning, shop, say),
    };
    // A worker's answer is told before it leaves.
    let language = compute::language(planning.order.language.as_deref())?;
    made.map_err(|refusal| refusal.told(language))
}
