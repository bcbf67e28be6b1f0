//! What was chosen because the pattern left it open, and the next best staves.

use basket::choice::Choice;
use basket::staves;

use super::table::{Cell, Column, Table, Width};
use super::{Block, Content, Source, Subsection};
use crate::written;

/// The staves used and the next best two.
const CANDIDATES: usize = 3;

impl<'a> Source<'a> {
    /// Nothing where the pattern leaves nothing open and there is no next best.
    pub(super) fn choices(&self) -> Content<'a> {
        let parts: Vec<Subsection<'a>> = self.candidates().into_iter().collect();
        let choices = &self.draft.basket.choices;
        if choices.is_empty() {
            return (Vec::new(), parts);
        }
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("key"), Width::Mm(34.0)),
            Column::left(scribe.label("chosen"), Width::Mm(42.0)),
            Column::left(scribe.label("reason"), Width::Share(1.0)),
        ];
        let row = |choice: &Choice| {
            let (value, reason) = (scribe.words.value(&choice.value), scribe.words.say(&choice.reason));
            vec![Cell::code(choice.key), value.into(), reason.into()]
        };
        let table = Table::new(columns, choices.iter().map(row)).wide();
        (vec![self.note("choices-note"), Block::Table { table }], parts)
    }

    fn candidates(&self) -> Option<Subsection<'a>> {
        let scribe = self.scribe;
        let columns = vec![
            Column::right(scribe.label("staves"), Width::Mm(14.0)),
            Column::left(scribe.label("material"), Width::Mm(31.0)),
            Column::right(scribe.label("gap-rim"), Width::Mm(19.0)),
            Column::right(scribe.label("gap-range"), Width::Mm(30.0)),
            Column::left(scribe.label("reason"), Width::Share(1.0)),
        ];
        let row = |(told, way): (&written::Candidate, &staves::Candidate)| {
            let gaps = [("from", way.gap_narrowest.into()), ("to", way.gap_widest.into())];
            vec![
                told.count.into(),
                scribe.words.material(&way.stock.name).into(),
                scribe.words.fine(way.gap_rim).into(),
                scribe.text("range", &gaps).into(),
                told.reasons.join("; ").into(),
            ]
        };
        let told = &self.written.body.staves.candidates;
        let ways = told.iter().zip(&self.draft.basket.body.staves().candidates);
        let table = Table::new(columns, ways.take(CANDIDATES).map(row)).wide();
        (told.len() > 1).then(|| self.part("candidates", vec![Block::Table { table }]))
    }
}
