//! Tables of the handout.

use serde::Serialize;

/// A table. Each row has as many cells as there are columns; the first names the row.
#[derive(Serialize)]
pub(crate) struct Table {
    fit: Fit,
    columns: Vec<Column>,
    rows: Vec<Vec<Cell>>,
}

/// How much of a page's width a table wants.
#[derive(Clone, Copy, Serialize)]
#[serde(rename_all = "lowercase")]
enum Fit {
    /// All of it.
    Wide,
    /// All or less.
    Usual,
    /// Half of it is enough.
    Narrow,
}

/// A column.
#[derive(Serialize)]
pub(crate) struct Column {
    head: String,
    right: bool,
    width: Width,
}

/// The width of a column on paper.
#[derive(Clone, Copy, Serialize)]
#[serde(rename_all = "lowercase")]
pub(crate) enum Width {
    /// Its share of what the others leave.
    Share(f64),
    /// So many millimetres.
    Mm(f64),
}

/// A cell.
#[derive(Serialize)]
pub(crate) struct Cell {
    style: Style,
    lines: Vec<String>,
    small: String,
}

/// How a cell is set.
#[derive(Clone, Copy, Serialize)]
#[serde(rename_all = "lowercase")]
enum Style {
    Plain,
    Strong,
    /// As one types it.
    Code,
    /// Empty, to write in.
    Blank,
}

impl Table {
    pub(super) fn new(columns: Vec<Column>, rows: impl IntoIterator<Item = Vec<Cell>>) -> Self {
        Self { fit: Fit::Usual, columns, rows: rows.into_iter().collect() }
    }
    /// Leaves out the rows after so many, and says how many those are.
    pub(super) fn cut(&mut self, most: usize) -> usize {
        let more = self.rows.len().saturating_sub(most);
        self.rows.truncate(most);
        more
    }
    pub(super) fn wide(self) -> Self {
        Self { fit: Fit::Wide, ..self }
    }
    pub(super) fn narrow(self) -> Self {
        Self { fit: Fit::Narrow, ..self }
    }
}

impl Column {
    pub(super) fn left(head: String, width: Width) -> Self {
        Self { head, right: false, width }
    }
    pub(super) fn right(head: String, width: Width) -> Self {
        Self { head, right: true, width }
    }
}

impl Cell {
    pub(super) fn lines(lines: Vec<String>) -> Self {
        Self { style: Style::Plain, lines, small: String::new() }
    }
    pub(super) fn strong(text: String) -> Self {
        Self { style: Style::Strong, ..Self::from(text) }
    }
    pub(super) fn code(text: &str) -> Self {
        Self { style: Style::Code, ..Self::from(text.to_owned()) }
    }
    pub(super) fn blank() -> Self {
        Self { style: Style::Blank, ..Self::lines(Vec::new()) }
    }
    /// With a smaller line below.
    pub(super) fn with(self, small: String) -> Self {
        Self { small, ..self }
    }
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self::lines(vec![text])
    }
}
impl From<u32> for Cell {
    fn from(number: u32) -> Self {
        Self::from(number.to_string())
    }
}
