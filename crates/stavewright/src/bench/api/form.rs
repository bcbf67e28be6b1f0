//! The form: each value of a pattern with what stands in the file, what is used and why.

use serde::Serialize;
use utoipa::ToSchema;

use super::{Edit, EditValue};

/// Fields that are filled in together, in making order.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Group {
    /// `basket`, `mould`, `base`, `staves`, `weave`, `rim`, `lashing`, `handle` or `finish`.
    pub(crate) id: String,
    /// Its heading.
    pub(crate) label: String,
    /// Its fields. Courses and girths stand in [`super::Courses`] and [`super::Mould`].
    pub(crate) fields: Vec<Field>,
}

/// What a field takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub(crate) enum FieldKind {
    /// A text, such as the title or where a course ends.
    Text,
    /// A length as a maker types it: `5 5/8`, `143 mm`.
    Length,
    /// A whole number.
    Count,
    /// A share, typed in percent.
    Share,
    /// One of the options.
    Word,
    /// Any of the options, as a list; one alone may stand without one.
    Words,
    /// One of the options, or another word of the same make (`twill 3/1`).
    OpenWord,
    /// The name of a material of one of the field's kinds.
    Material,
    /// A list of such names.
    Materials,
    /// Names of woods: one, or a list.
    Wood,
    /// Names of colours: one, or a list.
    Colours,
    /// A list of lengths.
    Lengths,
    /// Rows of signs, the uppermost first.
    Chart,
    /// Yes or no.
    Flag,
    /// A whole section that may be there or not. Its [`Field::written`] says whether it is there;
    /// [`Field::give`] and [`Field::take`] put it in and out.
    Part,
}

/// One value of the pattern.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Field {
    /// Which value, such as `base.groove.depth`.
    pub(crate) path: String,
    /// Its name.
    pub(crate) label: String,
    /// What it is, in a sentence.
    pub(crate) about: String,
    /// What may be written, in words.
    pub(crate) takes: String,
    /// Whether it is usually changed, so that it is shown before what is rarely touched.
    pub(crate) usual: bool,
    /// What it takes.
    pub(crate) kind: FieldKind,
    /// As it stands in the file; none if it was left out.
    pub(crate) written: Option<EditValue>,
    /// What is used, written or chosen; none where nothing is (no inner hoop of its own).
    pub(crate) used: Option<Used>,
    /// Why Stavewright chose it; none for what the maker wrote.
    pub(crate) why: Option<String>,
    /// What to do to take it over: writes the value in use, or a usual one.
    pub(crate) take: Vec<Edit>,
    /// What to do to give it back to Stavewright.
    pub(crate) give: Vec<Edit>,
    /// What may be chosen from, for words.
    pub(crate) options: Vec<Word>,
    /// Kinds of materials that fit, as in [`super::MaterialName::kind`].
    pub(crate) kinds: Vec<String>,
    /// Where a slider runs, for lengths (in mm) and counts.
    pub(crate) range: Option<Range>,
}

/// A value in use.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Used {
    /// To read: `4 7/8 in (124 mm)`, `67`, `sheet brass`.
    pub(crate) text: String,
    /// As the pattern would say it: `4 7/8 in`, `67`, `brass`.
    pub(crate) word: String,
    /// In millimetres, or the count itself: where a slider stands.
    pub(crate) number: Option<f64>,
}

/// One option of a word.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Word {
    /// As a pattern says it.
    pub(crate) word: String,
    /// As a reader wants it.
    pub(crate) label: String,
}

/// Where a slider runs. It is wide enough for the value in use.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Range {
    /// Its lower end.
    pub(crate) least: f64,
    /// Its upper end.
    pub(crate) most: f64,
    /// One step.
    pub(crate) step: f64,
}
