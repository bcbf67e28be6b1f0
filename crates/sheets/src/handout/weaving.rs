//! Courses, joins, and how high the weaving should stand after so many rows.

use basket::Length;
use basket::limits::TABLE_ROWS;
use basket::message::Value;
use basket::weave::{Band, Course};

use super::table::{Cell, Column, Table, Width};
use super::{Block, Content, Source, Subsection};
use crate::scribe::{Scribe, name};
use crate::written::Join;

/// Every so many rows there is a checkpoint.
const CHECK_EVERY: u32 = 5;

impl<'a> Source<'a> {
    pub(super) fn weaving(&self) -> Content<'a> {
        let mut blocks = vec![Block::Table { table: self.courses() }];
        let notes = self.take_up().into_iter().chain(self.packing()).chain(self.joins_expected());
        blocks.extend(notes.map(|text| Block::Text { text }));
        blocks.extend(self.charts());
        let joins = self.joins().map(|table| self.listed(["joins", "joins-note"], table));
        let checkpoints = self.listed(["checkpoints", "checkpoints-note"], self.checkpoints());
        (blocks, joins.into_iter().chain([checkpoints]).collect())
    }

    /// A part with a note and a table below it, and how much of that is left out.
    fn listed(&self, [kind, note]: [&'static str; 2], mut table: Table) -> Subsection<'a> {
        let more = table.cut(TABLE_ROWS);
        let mut blocks = vec![self.note(note), Block::Table { table }];
        if more > 0 {
            let args = [("count", Value::Count(more as i64))];
            blocks.push(Block::Text { text: self.scribe.text("table-left-out", &args) });
        }
        self.part(kind, blocks)
    }

    /// What is woven band by band, in what, and from where.
    pub(super) fn bands(&self) -> Block<'a> {
        let scribe = self.scribe;
        let columns = vec![
            Column::left(scribe.label("rows"), Width::Mm(26.0)),
            Column::left(scribe.label("weave"), Width::Share(1.0)),
            Column::left(scribe.label("weaver"), Width::Share(1.4)),
            Column::left(scribe.label("begin"), Width::Mm(34.0)),
        ];
        let weave = &self.draft.basket.body.weave;
        let row = |band: &Band| {
            let course = weave.course_of(band.first);
            vec![
                Cell::strong(rows_of(band)),
                course.map_or_else(Cell::blank, |course| scribe.words.say(&course.weave.name()).into()),
                weavers(band, scribe).into(),
                begins(band).into(),
            ]
        };
        Block::Table { table: Table::new(columns, weave.bands().iter().take(TABLE_ROWS).map(row)) }
    }

    /// What is woven band by band, for each course with what it takes.
    fn courses(&self) -> Table {
        let scribe = self.scribe;
        let columns = vec![
            Column::right(scribe.label("rows"), Width::Mm(18.0)),
            Column::left(scribe.label("weave"), Width::Share(1.0)),
            Column::left(scribe.label("weaver"), Width::Share(1.4)),
            Column::right(scribe.label("begin"), Width::Mm(17.0)),
            Column::right(scribe.label("height-each"), Width::Mm(27.0)),
            Column::right(scribe.label("lay-out"), Width::Share(1.2)),
            Column::right(scribe.label("strands"), Width::Mm(19.0)),
        ];
        let weave = &self.draft.basket.body.weave;
        let row = |band: &Band| {
            // What a course takes stands beside its first rows.
            let course = weave.course_of(band.first);
            let begun = course.filter(|course| course.first_row == band.first);
            vec![
                rows_of(band).into(),
                course.map_or_else(Cell::blank, |course| scribe.words.say(&course.weave.name()).into()),
                weavers(band, scribe).into(),
                begins(band).into(),
                course.map_or_else(Cell::blank, |course| scribe.fine(course.pitch).into()),
                begun.map_or_else(Cell::blank, |course| scribe.line(course.cut).into()),
                begun.map_or_else(Cell::blank, |course| course.strands.into()),
            ]
        };
        Table::new(columns, weave.bands().iter().map(row)).wide()
    }

    /// By how much going over and under lengthens the weavers of each course that has rows.
    fn take_up(&self) -> Option<String> {
        let scribe = self.scribe;
        let one = |course: &Course| {
            let takes = scribe.words.shares(course.take_up.least, course.take_up.most);
            let last = course.first_row + course.rows - 1;
            let args = [("takes", name(takes)), ("first", course.first_row.into()), ("last", last.into())];
            scribe.text("take-up-course", &args)
        };
        let woven = self.draft.basket.body.weave.courses.iter();
        let courses: Vec<String> = woven.filter(|course| course.rows > 0).map(one).collect();
        (!courses.is_empty()).then(|| scribe.text("take-up-note", &[("courses", name(courses.join(", ")))]))
    }

    /// What to do when the weaving has dried, where rows have to be added then.
    fn packing(&self) -> Option<String> {
        let weave = &self.draft.basket.body.weave;
        let args = [("gap", weave.packing_gap.into()), ("rows", weave.rows_to_add.into())];
        (weave.rows_to_add > 0).then(|| self.scribe.text("packing-note", &args))
    }

    /// How many joins there will be where strands have one colour, and how they are made.
    fn joins_expected(&self) -> Option<String> {
        let joins = self.draft.basket.body.weave.courses.iter().flat_map(|course| &course.joins);
        let joins = joins.filter(|join| !join.recolour).count();
        (joins > 0).then(|| self.scribe.text("joins-expected", &[("count", Value::Count(joins as i64))]))
    }

    /// The joins at which a colour changes, in weaving order; where others fall does not matter.
    fn joins(&self) -> Option<Table> {
        let scribe = self.scribe;
        let columns = vec![
            Column::right(scribe.label("row"), Width::Share(1.0)),
            Column::right(scribe.label("cut-over"), Width::Share(1.5)),
            Column::right(scribe.label("start-behind"), Width::Share(1.6)),
        ];
        let joins: Vec<Join> = self
            .written
            .body
            .weave
            .courses
            .iter()
            .flat_map(|course| &course.joins)
            .copied()
            .filter(|join| join.recolour)
            .collect();
        let row = |join: &Join| vec![join.row.into(), join.cut_over.into(), join.start_behind.into()];
        (!joins.is_empty()).then(|| Table::new(columns, joins.iter().map(row)).narrow())
    }

    /// Height and length used at every fifth row and at the end of each course.
    fn checkpoints(&self) -> Table {
        let scribe = self.scribe;
        let columns = vec![
            Column::right(scribe.label("row"), Width::Mm(13.0)),
            Column::right(scribe.label("height-at-top"), Width::Share(1.0)),
            Column::right(scribe.label("used-so-far"), Width::Share(1.0)),
        ];
        let body = &self.draft.basket.body;
        let is_end = |number| {
            let mut ends = body.weave.courses.iter().map(|course| course.first_row + course.rows);
            ends.any(|past| past == number + 1)
        };
        let mut used = Length::ZERO;
        let mut points: Vec<Vec<Cell>> = Vec::new();
        for row in &body.weave.each_row {
            used += row.length;
            if row.number % CHECK_EVERY == 0 || is_end(row.number) {
                let top = body.profile().at(row.along + row.pitch / 2.0).height;
                points.push(vec![row.number.into(), scribe.words.both(top).into(), scribe.line(used).into()]);
            }
        }
        Table::new(columns, points).narrow()
    }
}

/// The rows of a band, such as `1–4`, or `1, 3 … 9`.
pub(crate) fn rows_of(band: &Band) -> String {
    match (band.last - band.first, band.every) {
        (0, _) => band.first.to_string(),
        (_, 1) => format!("{}–{}", band.first, band.last),
        (rows, every) if rows == every => format!("{}, {}", band.first, band.last),
        (_, every) => format!("{}, {} … {}", band.first, band.first + every, band.last),
    }
}

/// The weavers of a band in the order in which they begin, each with its colour.
pub(crate) fn weavers(band: &Band, scribe: &Scribe<'_>) -> String {
    let mut names: Vec<String> = Vec::new();
    for name in band.threads.iter().map(|thread| scribe.words.say(&thread.name())) {
        if !names.contains(&name) {
            names.push(name);
        }
    }
    names.join(" · ")
}

/// The stave at which each weaver of a band begins.
pub(crate) fn begins(band: &Band) -> String {
    let staves: Vec<String> = band.threads.iter().map(|thread| thread.stave.to_string()).collect();
    staves.join(" · ")
}
