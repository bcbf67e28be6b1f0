//! What is told in sections, as data: the student's handout, the teacher's and the maker's sheet. PDF and page of
//! HTML are two renderings of it, so that neither says what the other leaves out.

mod beforehand;
mod cautions;
mod faults;
mod glance;
mod lines;
mod materials;
mod minded;
mod notes;
mod readers;
mod reasons;
mod record;
mod sessions;
mod steps;
mod table;
mod weaving;
mod woven;

use basket::Draft;
use serde::Serialize;

use self::lines::StepLine;
pub(crate) use self::notes::paragraphs;
use self::readers::Kind;
pub(crate) use self::readers::Reader;
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

/// How the basket should look, drawing beside drawing, as far as it has what they show.
const DRAWINGS: [&[&str]; 3] = [&["stage-exploded", "plan"], &["section"], &["lid-section"]];
/// What the designer measures by.
const PLANS: [&[&str]; 3] = [&["taper-chart"], &["base-plan"], &["lid-base-plan"]];
/// The drawings of the weaving.
const CHARTS: [&[&str]; 2] = [&["chart-outside"], &["chart-inside"]];

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
    /// Things of a few words, in columns.
    List { items: Vec<String> },
    /// Sentences, one below the other.
    Points { items: Vec<String> },
    /// The making, step by step.
    Steps { steps: Vec<StepLine<'a>> },
    /// Drawings beside each other, each with its caption.
    Figures { names: Vec<String> },
    /// Room to write in, under its name.
    Room { title: String },
}

/// What stands in a section: blocks, then parts.
type Content<'a> = (Vec<Block<'a>>, Vec<Subsection<'a>>);

impl<'a> Source<'a> {
    /// What a reader gets, below the title block.
    pub(crate) fn told(&self, reader: Reader) -> Vec<Section<'a>> {
        reader.sections().iter().filter_map(|kind| self.section(*kind)).collect()
    }

    fn section(&self, kind: Kind) -> Option<Section<'a>> {
        let alone = |blocks| (blocks, Vec::new());
        let (id, (blocks, parts)) = match kind {
            Kind::Mind => ("findings", alone(self.minded())),
            Kind::Findings => ("findings", alone(self.findings())),
            Kind::Ready => ("ready", alone(self.ready())),
            Kind::Materials => ("materials", alone(self.materials())),
            Kind::Supplies => ("supplies", alone(vec![self.supplies()])),
            Kind::Tools => ("tools", alone(self.tools())),
            Kind::Preparation => ("preparation", alone(self.preparation())),
            Kind::Steps => ("steps", alone(self.steps())),
            Kind::Rows => ("weaving", alone(self.woven())),
            Kind::Weaving => ("weaving", self.weaving()),
            Kind::Drawings => ("drawings", alone(self.drawn(&DRAWINGS))),
            Kind::Plans => ("plans", alone(self.drawn(&PLANS))),
            Kind::Choices => ("choices", self.choices()),
            Kind::Record => ("record", alone(self.record())),
            Kind::Glance => ("glance", alone(self.glance())),
            Kind::Sessions => ("sessions", alone(self.sessions())),
            Kind::Beforehand => ("beforehand", alone(self.beforehand())),
            Kind::Bring => ("bring", alone(self.tools())),
            Kind::Faults => ("faults", (Vec::new(), self.faults())),
            Kind::Safety => ("safety", alone(self.safety())),
            Kind::Questions => ("questions", alone(self.questions())),
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

    /// The drawings of these names that there are, line by line.
    fn drawn(&self, lines: &[&[&'static str]]) -> Vec<Block<'a>> {
        let is_there = |name: &&&'static str| self.figures.iter().any(|figure| figure.name == **name);
        let there =
            |names: &&[&'static str]| names.iter().filter(is_there).map(|name| (*name).to_owned()).collect();
        let lines = lines.iter().map(there);
        lines.filter(|names: &Vec<String>| !names.is_empty()).map(|names| Block::Figures { names }).collect()
    }

    /// A paragraph that is the same for every basket.
    fn note(&self, id: &str) -> Block<'a> {
        Block::Text { text: self.scribe.label(id) }
    }

    fn part(&self, kind: &'static str, blocks: Vec<Block<'a>>) -> Subsection<'a> {
        Subsection { kind, title: self.scribe.label(kind), blocks }
    }
}
