//! The one written form of a basket: what `basket.json` holds (documented in `docs/basket-json.md`, its
//! schema in `docs/basket.schema.json`), and what the templates read figures from.
//!
//! Each part is taken apart whole, so that a figure that is forgotten here does not compile.

#![allow(clippy::struct_field_names, reason = "the keys of the file carry their unit")]

mod base;
mod choices;
mod cuts;
mod findings;
mod fittings;
mod form;
mod hand;
mod handle;
mod lashing;
mod lid;
mod measure;
mod rim;
#[cfg(test)]
mod schema;
mod staves;
mod steps;
mod stock;
mod strands;
mod value;
mod verdict;
mod vessel;
mod vocabulary;
mod weave;

use basket::{Basket, Draft};
use serde::Serialize;
use words::Words;

use self::choices::Choice;
pub(crate) use self::cuts::Cut;
pub use self::findings::Finding;
use self::fittings::Ears;
use self::hand::Hand;
use self::handle::Handle;
use self::lid::LidFit;
pub(crate) use self::staves::Candidate;
use self::steps::Note;
pub(crate) use self::steps::Step;
use self::stock::OwnMeasure;
pub(crate) use self::strands::Join;
use self::vessel::Vessel;
use self::vocabulary::{Finish, FinishPart, Ready, Units};

/// Version of the format. It rises when a key goes away or changes its meaning.
const VERSION: u32 = 3;

/// The computed basket as it stands in `basket.json`.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[cfg_attr(test, schemars(title = "basket.json"))]
pub struct BasketFile {
    /// Always `stavewright-basket`.
    #[cfg_attr(test, schemars(extend("const" = "stavewright-basket")))]
    format: &'static str,
    /// Version of the format.
    #[cfg_attr(test, schemars(extend("const" = VERSION)))]
    version: u32,
    /// Name of the basket.
    title: String,
    /// Units of the pattern.
    units: Units,
    /// Language of the sentences, such as `en`.
    language: &'static str,
    /// What protects it.
    finish: Finish,
    /// What that goes on; empty where it is the whole basket.
    finish_on: Vec<FinishPart>,
    /// What is written on it beside the date, or `null`.
    signature: Option<String>,
    /// What lies ready before the making begins.
    ready: Vec<Ready>,
    /// The body.
    #[serde(flatten)]
    pub(crate) body: Vessel,
    /// The lid, with the same keys as the body, or `null`.
    lid: Option<Vessel>,
    /// How the lid sits on the basket, or `null`.
    lid_fit: Option<LidFit>,
    /// The ears, or `null`.
    ears: Option<Ears>,
    /// The handle, or `null`.
    handle: Option<Handle>,
    /// The hand that it was computed for.
    hand: Hand,
    /// Materials of which the maker's own measures hold in the place of the catalogue's.
    own_measures: Vec<OwnMeasure>,
    /// What was chosen because the pattern left it open.
    choices: Vec<Choice>,
    /// The cut list in making order.
    pub(crate) cuts: Vec<Cut>,
    /// The steps in making order.
    pub(crate) steps: Vec<Step>,
    /// The maker's own notes, in the order of the pattern.
    notes: Vec<Note>,
    /// The findings, heaviest first.
    pub findings: Vec<Finding>,
}

/// The computed basket, ready to be written as JSON, with all sentences in the reader's language.
pub fn basket_json(draft: &Draft, words: &Words) -> BasketFile {
    let Draft { pattern: _, basket, steps, cuts, findings } = draft;
    let Basket {
        title,
        units,
        language: _,
        body,
        lid,
        ears,
        handle,
        finish,
        finish_on,
        signature,
        ready,
        notes,
        hand,
        choices,
    } = basket;
    BasketFile {
        format: "stavewright-basket",
        version: VERSION,
        title: title.clone(),
        units: units.into(),
        language: words.language().tag(),
        finish: finish.into(),
        finish_on: finish_on.iter().map(FinishPart::from).collect(),
        signature: signature.clone(),
        ready: ready.each().iter().map(Ready::from).collect(),
        body: Vessel::of(basket::Of::Body, body, words),
        lid: lid.as_ref().map(|lid| Vessel::of(basket::Of::Lid, &lid.vessel, words)),
        lid_fit: lid.as_ref().map(LidFit::from),
        ears: ears.as_ref().map(Ears::from),
        handle: handle.as_ref().map(Handle::from),
        hand: hand.into(),
        own_measures: basket::cuts::measured(cuts).into_iter().map(OwnMeasure::from).collect(),
        choices: choices.iter().map(|choice| Choice::of(choice, words)).collect(),
        cuts: self::cuts(cuts, words),
        steps: steps.iter().map(|step| Step::of(step, words)).collect(),
        notes: notes.iter().map(|note| Note::of(note, steps)).collect(),
        findings: findings.iter().map(|finding| Finding::of(finding, words)).collect(),
    }
}

/// The cut list alone.
pub(crate) fn cuts(cuts: &[basket::cuts::Cut], words: &Words) -> Vec<Cut> {
    cuts.iter().map(|cut| Cut::of(cut, words)).collect()
}
