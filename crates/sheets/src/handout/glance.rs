//! The making at a glance, for one who plans a class: times, what soaks before and what dries after.

use basket::steps::Step;

use super::table::{Cell, Column, Table, Width};
use super::{Block, Source};

impl<'a> Source<'a> {
    pub(super) fn glance(&self) -> Vec<Block<'a>> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("step"), Width::Share(1.6)),
            Column::right(scribe.label("soak-before"), Width::Share(0.7)),
            Column::right(scribe.label("practised"), Width::Share(0.7)),
            Column::right(scribe.label("learner"), Width::Share(0.7)),
            Column::right(scribe.label("then-dry"), Width::Share(0.7)),
        ];
        let time = |minutes: f64| if minutes > 0.0 { scribe.minutes(minutes) } else { String::new() };
        let row = |step: &Step| {
            vec![
                Cell::from(format!("{}. {}", step.number, scribe.words.step(step.of, step.kind))),
                time(step.soak_minutes.unwrap_or(0.0)).into(),
                time(step.work_minutes).into(),
                time(step.learner_minutes).into(),
                time(step.wait_minutes).into(),
            ]
        };
        let steps = &self.draft.steps;
        let work: f64 = steps.iter().map(|step| step.work_minutes).sum();
        let learner: f64 = steps.iter().map(|step| step.learner_minutes).sum();
        let wait: f64 = steps.iter().map(|step| step.wait_minutes).sum();
        let sum = vec![
            Cell::strong(scribe.label("in-all")),
            String::new().into(),
            Cell::strong(time(work)),
            Cell::strong(time(learner)),
            Cell::strong(time(wait)),
        ];
        let table = Table::new(columns, steps.iter().map(row).chain([sum])).wide();
        vec![self.note("glance-note"), Block::Table { table }]
    }
}
