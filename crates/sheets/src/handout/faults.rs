//! The usual faults of each step with their cure, and what to ask the group.

use basket::Of;
use basket::message::{Message, Term};
use basket::pattern::StepKind;
use basket::steps::Step;
use basket::teaching;

use super::table::{Cell, Column, Table, Width};
use super::{Block, Source, Subsection};

impl<'a> Source<'a> {
    /// A part for each step that has usual faults.
    pub(super) fn faults(&self) -> Vec<Subsection<'a>> {
        let part = |step: &Step| {
            let faults = teaching::faults(step.kind, &self.draft.basket);
            let words = self.scribe.words;
            (!faults.is_empty()).then(|| Subsection {
                kind: step.kind.term(),
                title: format!("{}. {}", step.number, words.step(step.of, step.kind)),
                blocks: vec![self.pairs(["fault", "cure"], &faults)],
            })
        };
        self.draft
            .steps
            .iter()
            .filter(|step| step.of == Of::Body || step.kind == StepKind::Lid)
            .filter_map(part)
            .collect()
    }

    pub(super) fn questions(&self) -> Vec<Block<'a>> {
        vec![self.pairs(["question", "answer"], &teaching::questions(&self.draft.basket))]
    }

    /// Messages with one of their attributes beside each. The second name is the attribute's too.
    fn pairs(&self, [one, other]: [&'static str; 2], messages: &[Message]) -> Block<'a> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label(one), Width::Share(1.0)),
            Column::left(scribe.label(other), Width::Share(1.6)),
        ];
        let row = |message: &Message| {
            let said = scribe.words.with(&format!("{}.{other}", message.id), &message.args);
            vec![Cell::strong(scribe.words.say(message)), said.into()]
        };
        Block::Table { table: Table::new(columns, messages.iter().map(row)) }
    }
}
