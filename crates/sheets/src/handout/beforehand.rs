//! What can be done before a class, and what is needed for each who comes.

use basket::pattern::StepKind;

use super::table::{Column, Table, Width};
use super::{Block, Source};

/// Steps that may be done for a class beforehand.
const BEFOREHAND: [StepKind; 5] =
    [StepKind::Cut, StepKind::Bend, StepKind::Seal, StepKind::Base, StepKind::Rings];

impl<'a> Source<'a> {
    pub(super) fn beforehand(&self) -> Vec<Block<'a>> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("done-beforehand"), Width::Share(1.6)),
            Column::right(scribe.label("saves"), Width::Share(1.0)),
        ];
        let steps = self.draft.steps.iter().filter(|step| BEFOREHAND.contains(&step.kind));
        let rows = steps.map(|step| {
            let title = format!("{}. {}", step.number, scribe.words.step(step.of, step.kind));
            vec![title.into(), scribe.minutes(step.learner_minutes).into()]
        });
        vec![
            self.note("beforehand-note"),
            Block::Table { table: Table::new(columns, rows) },
            self.note("supplies-note"),
            self.supplies(),
            self.note("soaking-note"),
            self.soaking(),
        ]
    }
}
