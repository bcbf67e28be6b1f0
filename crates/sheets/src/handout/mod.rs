//! The handout as data: its sections in their order, with all that stands in each. The PDF and the page
//! of HTML are two renderings of it, so that neither says what the other leaves out.

mod lines;
mod materials;
mod notes;
mod reasons;
mod record;
mod steps;
mod table;
mod weaving;

use basket::Draft;
use serde::Serialize;

use self::lines::StepLine;
pub(crate) use self::steps::tools;
use self::table::Table;
pub(crate) use self::weaving::{begins, rows_of, weavers};
use crate::figures::Figure;
use crate::photos::Photos;
use crate::scribe::Scribe;
use crate::written::{BasketFile, Finding};

/// What the handout is made from.
pub(crate) struct Source<'a> {
    pub(crate) draft: &'a Draft,
    pub(crate) written: &'a BasketFile,
    pub(crate) scribe: &'a Scribe<'a>,
    pub(crate) figures: &'a [Figure],
    pub(crate) photos: &'a Photos,
}

/// Which section.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Kind {
    Findings,
    Materials,
    Tools,
    Preparation,
    Steps,
    Drawings,
    Weaving,
    Choices,
    Record,
}

/// The sections in their order; one with nothing in it is left out.
const ORDER: [Kind; 9] = [
    Kind::Findings,
    Kind::Materials,
    Kind::Tools,
    Kind::Preparation,
    Kind::Steps,
    Kind::Drawings,
    Kind::Weaving,
    Kind::Choices,
    Kind::Record,
];
/// The drawings of the section of that name, as far as the basket has what they show.
const DRAWINGS: [&str; 5] = ["stage-exploded", "section", "plan", "taper-chart", "base-plan"];
/// The drawings of the weaving.
const CHARTS: [&str; 2] = ["chart-outside", "chart-inside"];

/// A section: what stands under its heading, then its parts.
#[derive(Serialize)]
pub(crate) struct Section<'a> {
    kind: Kind,
    title: String,
    blocks: Vec<Block<'a>>,
    parts: Vec<Subsection<'a>>,
}

/// A part of a section, under a heading of its own. They may stand beside each other where there is room.
#[derive(Serialize)]
pub(crate) struct Subsection<'a> {
    kind: &'static str,
    title: String,
    blocks: Vec<Block<'a>>,
}

/// What stands in a section or part, one below the other.
#[derive(Serialize)]
#[serde(tag = "block", rename_all = "lowercase")]
pub(crate) enum Block<'a> {
    /// A paragraph.
    Text { text: String },
    /// What to know before beginning.
    Findings { findings: &'a [Finding] },
    /// A table.
    Table { table: Table },
    /// Things in a row.
    List { items: Vec<String> },
    /// The making, step by step.
    Steps { steps: Vec<StepLine<'a>> },
    /// A drawing with its caption.
    Figure { name: &'static str },
    /// Room to write in, under its name.
    Room { title: String },
}

/// What stands in a section: blocks, then parts.
type Content<'a> = (Vec<Block<'a>>, Vec<Subsection<'a>>);

impl<'a> Source<'a> {
    /// The whole handout below its title block.
    pub(crate) fn handout(&self) -> Vec<Section<'a>> {
        ORDER.into_iter().filter_map(|kind| self.section(kind)).collect()
    }

    fn section(&self, kind: Kind) -> Option<Section<'a>> {
        let (id, (blocks, parts)) = match kind {
            Kind::Findings => ("findings", (self.findings(), Vec::new())),
            Kind::Materials => ("materials", self.materials()),
            Kind::Tools => ("tools", (self.tools(), Vec::new())),
            Kind::Preparation => ("preparation", (self.preparation(), Vec::new())),
            Kind::Steps => ("steps", (self.steps(), Vec::new())),
            Kind::Drawings => ("drawings", (self.drawn(&DRAWINGS), Vec::new())),
            Kind::Weaving => ("weaving", self.weaving()),
            Kind::Choices => ("choices", self.choices()),
            Kind::Record => ("record", (self.record(), Vec::new())),
        };
        let title = self.scribe.label(id);
        let is_empty = blocks.is_empty() && parts.is_empty();
        (!is_empty).then_some(Section { kind, title, blocks, parts })
    }

    fn findings(&self) -> Vec<Block<'a>> {
        match self.written.findings.as_slice() {
            [] => Vec::new(),
            findings => vec![Block::Findings { findings }],
        }
    }

    /// The drawings of these names that there are.
    fn drawn(&self, names: &[&'static str]) -> Vec<Block<'a>> {
        let there = |name: &str| self.figures.iter().any(|figure| figure.name == name);
        names.iter().filter(|name| there(name)).map(|name| Block::Figure { name }).collect()
    }

    /// A paragraph that is the same for every basket.
    fn note(&self, id: &str) -> Block<'a> {
        Block::Text { text: self.scribe.label(id) }
    }

    fn part(&self, kind: &'static str, blocks: Vec<Block<'a>>) -> Subsection<'a> {
        Subsection { kind, title: self.scribe.label(kind), blocks }
    }
}
