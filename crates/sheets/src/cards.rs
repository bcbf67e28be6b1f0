//! Small cards that go with a basket: where it comes from, and how its owner cares for it.

use basket::Draft;
use basket::fittings::Handle;
use basket::pattern::Finish;
use serde::Serialize;
use words::Words;

use crate::data::facts;
use crate::error::SheetError;
use crate::figures::Figure;
use crate::paper::Paper;
use crate::scribe::Scribe;
use crate::templates::Templates;
use crate::{front, press};

/// How cards are printed.
#[derive(Clone, Debug, Default)]
pub struct Card {
    /// The paper in the printer.
    pub paper: Paper,
    /// The templates of the sheets.
    pub templates: Templates,
}

/// Where a basket comes from, each as the maker typed it; what is empty is left out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Provenance {
    /// Its number in the log.
    pub number: String,
    /// The day on which it was finished.
    pub made: String,
    /// The wood.
    pub wood: String,
    /// Who made it.
    pub maker: String,
}

#[derive(Serialize)]
struct Told {
    name: String,
    lines: Vec<[String; 2]>,
    rules: Vec<String>,
}

impl Card {
    /// The card that says where a basket comes from, as PDF.
    ///
    /// # Errors
    /// [`SheetError::Template`] when the template is wrong.
    pub fn provenance(&self, draft: &Draft, of: &Provenance, words: &Words) -> Result<Vec<u8>, SheetError> {
        let label = |id: &str| words.term(&format!("card-{id}"));
        let lines = [("number", &of.number), ("made", &of.made), ("wood", &of.wood), ("maker", &of.maker)];
        let lines = lines.into_iter().filter(|(_, text)| !text.trim().is_empty());
        let lines = lines.map(|(id, text)| [label(id), text.clone()]);
        let size = facts::size(&draft.basket, &Scribe::new(words)).into_iter().map(facts::Fact::pair);
        let told = Told { name: label("provenance"), lines: lines.chain(size).collect(), rules: Vec::new() };
        self.pdf(draft, told, words)
    }

    /// The card that tells the owner how to care for the basket, as PDF (common practice).
    ///
    /// # Errors
    /// [`SheetError::Template`] when the template is wrong.
    pub fn care(&self, draft: &Draft, words: &Words) -> Result<Vec<u8>, SheetError> {
        let rules = rules(draft).into_iter().map(|id| words.term(id)).collect();
        let told = Told { name: words.term("card-care"), lines: Vec::new(), rules };
        self.pdf(draft, told, words)
    }

    fn pdf(&self, draft: &Draft, told: Told, words: &Words) -> Result<Vec<u8>, SheetError> {
        let plate = drawings::stages::Plate::Cover;
        let cover = drawings::stages::unlettered(&draft.basket, words, plate).map(|cover| Figure::of(&cover));
        let figures: Vec<Figure> = cover.into_iter().collect();
        let files = front::files(draft, &Scribe::new(words), (self.paper, &figures), told)?;
        press::print("card", &self.templates, &files)
    }
}

/// What the owner is told of this basket.
fn rules(draft: &Draft) -> Vec<&'static str> {
    let basket = &draft.basket;
    let mut rules = vec!["care-dust", "care-wet", "care-sun"];
    rules.push(match basket.finish {
        Finish::None => "care-bare",
        Finish::Oil => "care-oil",
        Finish::Shellac | Finish::StainAndShellac | Finish::Varnish => "care-coat",
    });
    rules.extend(match &basket.handle {
        Some(Handle::Swing(_)) => Some("care-swing"),
        Some(Handle::Fixed(_)) => Some("care-fixed"),
        Some(Handle::Knobs(_)) | None => None,
    });
    rules.push("care-mend");
    rules
}
