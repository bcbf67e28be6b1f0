//! A sheet in sections.

use serde::Serialize;
use words::Words;

use crate::error::SheetError;
use crate::front::{self, About};
use crate::paper::Paper;
use crate::press;
use crate::scribe::Scribe;
use crate::templates::Templates;

/// A sheet in sections, in its reader's words.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Leaf {
    /// What it is about, such as the name of a class.
    pub title: String,
    /// What sheet it is.
    pub name: String,
    /// Its sections.
    pub sections: Vec<Section>,
}

/// One section.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Section {
    /// Its heading.
    pub heading: String,
    /// What is said before its table, a paragraph each.
    pub notes: Vec<String>,
    /// Its table.
    pub table: Option<Table>,
    /// Strands, drawn to one scale.
    pub strips: Vec<Strip>,
    /// What is said after it.
    pub after: Vec<String>,
    /// Whether it is handed out by itself, and so begins a page on paper.
    pub apart: bool,
}

/// A table.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Table {
    /// The heads of its columns.
    pub head: Vec<String>,
    /// Which columns hold figures, which stand at the right.
    pub figures: Vec<bool>,
    /// Whether a box to tick stands before each row.
    pub ticks: bool,
    /// Its rows.
    pub rows: Vec<Vec<String>>,
}

/// A strand with the pieces that are cut from it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Strip {
    /// How many are cut so, and from what.
    pub name: String,
    /// Length of the strand in millimetres.
    pub length_mm: f64,
    /// The pieces in their order: length in millimetres, and what stands on it.
    pub pieces: Vec<(f64, String)>,
}

impl Table {
    pub(super) fn new(head: impl IntoIterator<Item = (String, bool)>) -> Self {
        let (head, figures) = head.into_iter().unzip();
        Self { head, figures, ticks: false, rows: Vec::new() }
    }
}

impl Leaf {
    /// The same sheet of several classes as one; the headings say whose each section is, and each class begins a
    /// page.
    #[must_use]
    pub fn joined(title: String, leaves: Vec<Self>) -> Self {
        let name = leaves.first().map(|leaf| leaf.name.clone()).unwrap_or_default();
        let several = leaves.len() > 1;
        let named = leaves.into_iter().flat_map(|Self { title, sections, .. }| {
            let whose = move |(place, section): (usize, Section)| {
                let heading = if several { format!("{title}: {}", section.heading) } else { section.heading };
                Section { heading, apart: section.apart || place == 0, ..section }
            };
            sections.into_iter().enumerate().map(whose)
        });
        Self { title, name, sections: named.collect() }
    }

    /// The sheet as PDF.
    ///
    /// # Errors
    /// [`SheetError::Template`] when the template is wrong.
    pub fn pdf(&self, words: &Words, paper: Paper, templates: &Templates) -> Result<Vec<u8>, SheetError> {
        print("workshop", (&self.title, self), (words, paper), templates)
    }
}

/// Sets a template of the workshop with its own data.
pub(super) fn print(
    template: &str,
    (title, own): (&str, impl Serialize),
    (words, paper): (&Words, Paper),
    templates: &Templates,
) -> Result<Vec<u8>, SheetError> {
    let about = About { title, stop: false };
    let files = front::files(about, &Scribe::new(words), (paper, &[]), own)?;
    press::print(template, templates, &files)
}
