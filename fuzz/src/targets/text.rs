//! Texts of patterns and shelves, mangled.

use std::io;

use basket::pattern::read;
use basket::{Catalogue, Draft, Hand};
use fastrand::Rng;

use super::patterns;
use crate::extreme;
use crate::mangle::mangled;
use crate::runner::Target;

pub(super) struct Text {
    corpus: Vec<Vec<u8>>,
}

impl Text {
    pub(super) fn new() -> io::Result<Self> {
        let mut corpus = patterns()?;
        corpus.extend((0..20).map(|seed| extreme::pattern(seed).into_bytes()));
        Ok(Self { corpus })
    }
}

impl Target for Text {
    fn name(&self) -> &'static str {
        "text"
    }

    fn case(&mut self, rng: &mut Rng) -> Vec<u8> {
        let seed = &self.corpus[rng.usize(..self.corpus.len())];
        mangled(seed, rng)
    }

    fn run(&mut self, case: &[u8]) -> Result<(), String> {
        let text = String::from_utf8_lossy(case);
        let catalogue = Catalogue::built_in();
        if let Err(problems) = catalogue.with_shelf(&text) {
            told(&problems.iter().map(|problem| problem.line_column(&text)).collect::<Vec<_>>(), &text)?;
        }
        match read(&text, catalogue) {
            Ok(pattern) => drop(Draft::of(pattern, catalogue, &Hand::USUAL)),
            Err(problems) => {
                told(&problems.iter().map(|problem| problem.line_column(&text)).collect::<Vec<_>>(), &text)?;
            }
        }
        Ok(())
    }
}

/// Refusals have at least one reason, each at a line that there is.
fn told(places: &[(usize, usize)], text: &str) -> Result<(), String> {
    let lines = text.matches('\n').count() + 1;
    match places.iter().find(|(line, column)| *line > lines || *column == 0) {
        _ if places.is_empty() => Err("refused without a reason".to_owned()),
        Some(place) => Err(format!("a problem at {place:?} of {lines} lines")),
        None => Ok(()),
    }
}
