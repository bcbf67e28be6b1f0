//! Everything that the page shows of a pattern but pictures.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Edit, EditValue, Field, Group, Mould, Problem, UnitsWord, Word};

/// What is to be looked at.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct LookRequest {
    /// The pattern.
    pub(crate) source: String,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first in the answer; the pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// What a pattern gives: problems, or a basket.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Looked {
    /// What keeps the pattern from being read, in the order of the file.
    pub(crate) problems: Vec<Problem>,
    /// The basket; none if there are problems.
    pub(crate) basket: Option<Shown>,
}

/// The changed pattern. It may have problems: what a maker types is written as it is typed.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Edited {
    /// The changed text.
    pub(crate) source: String,
    /// What it gives.
    pub(crate) look: Looked,
}

/// A basket.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Shown {
    /// Its name.
    pub(crate) title: String,
    /// Units of the file.
    pub(crate) units: UnitsWord,
    /// The form in making order.
    pub(crate) groups: Vec<Group>,
    /// The mould's measurements and profile.
    pub(crate) mould: Mould,
    /// Whether it has a lid.
    pub(crate) lid: bool,
    /// The courses of the weaving.
    pub(crate) courses: Courses,
    /// What was found, heaviest first.
    pub(crate) findings: Vec<Finding>,
    /// The cut list in making order.
    pub(crate) cuts: Vec<Cut>,
    /// Its main figures.
    pub(crate) figures: Vec<Figure>,
    /// The stages of its making for `POST /api/picture`, in making order.
    pub(crate) stages: Vec<Word>,
    /// The drawings for `POST /api/drawing`.
    pub(crate) drawings: Vec<DrawingName>,
    /// Materials that the pattern adds to the catalogue, and those that the maker measured.
    pub(crate) materials: Vec<MaterialName>,
    /// Whether there is a shelf that cannot be read, so that the catalogue's figures hold.
    pub(crate) shelf_unread: bool,
    /// Colours that the pattern may name: the built-in ones and its own.
    pub(crate) colours: Vec<ColourName>,
    /// How long the pieces are, for those who point at one in the picture.
    pub(crate) lengths: Vec<PieceLength>,
}

/// How long a piece is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PieceLength {
    /// What it is; without numbers all of its like.
    pub(crate) piece: PieceWord,
    /// Its length, in both units.
    pub(crate) length: String,
}

/// A piece of the basket, as the nodes of the GLB carry it in their extras.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PieceWord {
    /// What sort of piece: `stave`, `row`, `outer-hoop`, …
    pub(crate) kind: String,
    /// Of which vessel: `body` or `lid`.
    pub(crate) of: String,
    /// What tells it from its like: of a row its number, its weaver and its strand. Numbers left out at the
    /// end stand for any.
    pub(crate) numbers: Vec<u32>,
}

/// The courses.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Courses {
    /// Each from the base upward, written or chosen.
    pub(crate) each: Vec<Course>,
    /// Why Stavewright chose them; none if the maker wrote them.
    pub(crate) why: Option<String>,
    /// What to do to take chosen courses over; empty if they are written.
    pub(crate) take: Vec<Edit>,
    /// What to do to give them back to Stavewright.
    pub(crate) give: Vec<Edit>,
    /// A course to begin with, for an edit `insert` at `weave.courses`.
    pub(crate) fresh: EditValue,
}

/// One course.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Course {
    /// Its place in the pattern, such as `weave.courses[1]`; none while the courses are chosen.
    pub(crate) path: Option<String>,
    /// Its values; only those that its weave knows.
    pub(crate) fields: Vec<Field>,
    /// Number of its first row.
    pub(crate) first_row: u32,
    /// How many rows.
    pub(crate) rows: u32,
    /// Weave, rows and material in one line.
    pub(crate) summary: String,
    /// What it takes of the weaver, in both units.
    pub(crate) length: String,
    /// Whether it runs on this count of staves.
    pub(crate) runs: bool,
    /// Colours of its weavers as `#rrggbb`.
    pub(crate) colours: Vec<String>,
    /// What is seen of it from outside, in words.
    pub(crate) seen: String,
    /// Why it leans as it does where the pattern leaves that open, and what would turn it; none where nothing would.
    pub(crate) lean: Option<String>,
}

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum Grade {
    /// Cannot be woven as written.
    Stop,
    /// Will show or give trouble.
    Care,
    /// Good to know.
    Note,
}

/// A checked fact.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Finding {
    /// Which check, such as `weave-does-not-lock`.
    pub(crate) code: String,
    /// How much it weighs.
    pub(crate) grade: Grade,
    /// The same in words.
    pub(crate) grade_label: String,
    /// What was found.
    pub(crate) what: String,
    /// Why it matters.
    pub(crate) why: String,
    /// What mends it, in words; empty for what needs no mending.
    pub(crate) remedy: String,
    /// What was measured.
    pub(crate) measured: String,
    /// What it was measured against.
    pub(crate) limit: String,
    /// Where on the basket.
    pub(crate) place: Place,
    /// Single steps that mend it, best first.
    pub(crate) steps: Vec<Step>,
}

/// A place on the basket.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Place {
    /// In words.
    pub(crate) label: String,
    /// Between which heights above the mould's base it lies, in mm; the same twice for one height.
    pub(crate) span_mm: [f64; 2],
    /// The pieces that show it; none for the whole basket.
    pub(crate) shown: Vec<PieceWord>,
    /// The value in the form that has most to do with it.
    pub(crate) path: Option<String>,
    /// The name of that value: findings that share it have one cause.
    pub(crate) cause: Option<String>,
}

/// One step that can be taken with a click.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Step {
    /// What it does: `Staves, count: 73`.
    pub(crate) label: String,
    /// What comes with it, a sentence for each care.
    pub(crate) brings: Vec<String>,
    /// What the maker wrote and it changes, a sentence each.
    pub(crate) undoes: Vec<String>,
    /// The changes.
    pub(crate) edits: Vec<Edit>,
}

/// One line of the cut list.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Cut {
    /// What sort of piece, such as `staves`.
    pub(crate) id: String,
    /// The same in words.
    pub(crate) piece: String,
    /// The material.
    pub(crate) material: String,
    /// How many.
    pub(crate) count: u32,
    /// How many more to have ready.
    pub(crate) spares: u32,
    /// Length of one, in both units.
    pub(crate) length: Option<String>,
    /// Width of one, in both units.
    pub(crate) width: Option<String>,
    /// All together with spares, in both units.
    pub(crate) total: Option<String>,
    /// How to shape it.
    pub(crate) shape: Option<String>,
    /// What it is for.
    pub(crate) purpose: String,
}

/// A main figure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Figure {
    /// Which, such as `staves`.
    pub(crate) id: String,
    /// Its name.
    pub(crate) label: String,
    /// Its value, lengths in both units.
    pub(crate) value: String,
}

/// For which view a drawing is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum DrawingView {
    /// Side, section and plan.
    Side,
    /// The weaving unrolled.
    Chart,
    /// A stage of the making.
    Stage,
    /// A template to print at true size.
    Template,
}

/// A drawing that there is of this basket.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct DrawingName {
    /// Name for `POST /api/drawing`.
    pub(crate) name: String,
    /// Its heading.
    pub(crate) label: String,
    /// For which view.
    pub(crate) view: DrawingView,
}

/// A material.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct MaterialName {
    /// Name under which a pattern asks for it.
    pub(crate) name: String,
    /// The same in the reader's language.
    pub(crate) label: String,
    /// What it is, such as `flat oval reed`.
    pub(crate) kind: String,
    /// The same in the reader's language.
    pub(crate) kind_label: String,
    /// Width and thickness, in both units.
    pub(crate) size: String,
    /// Width in mm.
    pub(crate) width_mm: f64,
    /// Thickness in mm.
    pub(crate) thickness_mm: f64,
    /// Whether its cut is round.
    pub(crate) round: bool,
    /// Its natural colour as `#rrggbb`.
    pub(crate) hex: String,
}

/// A colour.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct ColourName {
    /// Name under which a pattern asks for it.
    pub(crate) name: String,
    /// The same in the reader's language.
    pub(crate) label: String,
    /// As `#rrggbb`.
    pub(crate) hex: String,
}
