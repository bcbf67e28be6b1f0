//! What the maker notes while making: the plan beside an empty place.

use basket::message::Value;

use super::table::{Cell, Column, Table, Width};
use super::{Block, Source};

impl<'a> Source<'a> {
    pub(super) fn record(&self) -> Vec<Block<'a>> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("what"), Width::Share(1.3)),
            Column::left(scribe.label("planned"), Width::Share(1.0)),
            Column::left(scribe.label("made"), Width::Share(1.0)),
        ];
        let row =
            |(id, planned): (&str, String)| vec![scribe.label(id).into(), planned.into(), Cell::blank()];
        let table = Table::new(columns, self.planned().into_iter().map(row));
        vec![self.note("record-note"), Block::Table { table }, Block::Room { title: scribe.label("notes") }]
    }

    fn planned(&self) -> [(&'static str, String); 12] {
        let (scribe, body) = (self.scribe, &self.draft.basket.body);
        let work: f64 = self.draft.steps.iter().map(|step| step.work_minutes).sum();
        [
            ("record-who", String::new()),
            ("record-days", String::new()),
            ("record-staves", body.uprights().count.to_string()),
            ("record-gap", scribe.fine(body.staves().gap_rim_wall)),
            ("record-rows", body.weave.rows.to_string()),
            ("record-weaver", scribe.words.run(body.weave.length)),
            ("record-height", scribe.words.both(body.weave.top_height)),
            ("record-rows-added", body.weave.rows_to_add.to_string()),
            ("record-outer", scribe.line(body.rim().outer.cut)),
            ("record-inner", scribe.line(body.rim().inner.cut)),
            (
                "record-lashing",
                body.lashing().map_or_else(String::new, |lashing| scribe.line(lashing.length)),
            ),
            ("record-time", scribe.words.value(&Value::Minutes(work))),
        ]
    }
}
