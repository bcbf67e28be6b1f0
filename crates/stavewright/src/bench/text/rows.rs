//! Lists of a pattern as rows: entries put in, taken out and moved, each with its own comments.
//!
//! In a file a comment behind an entry's comma stands before the next entry. So each row is first
//! taken with the comments above it and the one behind it, and put back the same way.

use toml_edit::{Array, Value};

/// An entry with its surroundings.
struct Row {
    /// White space and comments above it, up to itself.
    above: String,
    value: Value,
    /// A comment behind it on its line.
    behind: String,
}

/// A list as rows.
pub(super) struct Rows {
    rows: Vec<Row>,
    /// What stands between the last row and the closing bracket.
    end: String,
}

impl Rows {
    /// The rows of a list.
    pub(super) fn of(list: &Array) -> Self {
        let mut rows: Vec<Row> = Vec::new();
        for value in list {
            let prefix = decor(value.decor().prefix());
            let (behind, above) = if rows.is_empty() { (String::new(), prefix) } else { split(&prefix) };
            if let Some(before) = rows.last_mut() {
                before.behind.push_str(&behind);
            }
            let (behind, _) = split(&decor(value.decor().suffix()));
            let mut value = value.clone();
            value.decor_mut().clear();
            rows.push(Row { above, value, behind });
        }
        // Without a comma at the end the rest stands as the last entry's suffix.
        let last = list.iter().last().map(|last| split(&decor(last.decor().suffix())).1).unwrap_or_default();
        let trailing = list.trailing().as_str().unwrap_or_default();
        let (behind, end) =
            if rows.is_empty() { (String::new(), trailing.to_owned()) } else { split(trailing) };
        if let Some(before) = rows.last_mut() {
            before.behind.push_str(&behind);
        }
        Self { rows, end: last + &end }
    }

    pub(super) fn len(&self) -> usize {
        self.rows.len()
    }

    /// Puts an entry in, laid out as its neighbours are.
    pub(super) fn insert(&mut self, at: usize, value: Value) {
        let neighbour = self.rows.get(at.saturating_sub(1)).or(self.rows.first());
        let above = neighbour.map(|row| own_line(&row.above)).unwrap_or_default();
        self.rows.insert(at, Row { above, value, behind: String::new() });
        self.keep_apart();
    }

    /// Takes an entry out. The comments above it stay.
    pub(super) fn remove(&mut self, at: usize) {
        let row = self.rows.remove(at);
        if row.above.contains('#') {
            let comments =
                row.above.rsplit_once('\n').map_or(String::new(), |(comments, _)| comments.to_owned());
            match self.rows.get_mut(at) {
                Some(next) => next.above = comments + &next.above,
                None => self.end = comments + &self.end,
            }
        }
        self.keep_apart();
    }

    /// Moves an entry with its comments.
    pub(super) fn shift(&mut self, from: usize, to: usize) {
        let row = self.rows.remove(from);
        self.rows.insert(to, row);
        self.keep_apart();
    }

    /// In a list on one line there is no space before the first entry and one before the others,
    /// unless the list had them.
    fn keep_apart(&mut self) {
        let spaced = self.rows.iter().filter(|row| row.above == " ").count() * 2 > self.rows.len();
        for (index, row) in self.rows.iter_mut().enumerate() {
            if row.above.is_empty() && index > 0 {
                row.above.push(' ');
            } else if row.above == " " && index == 0 && !spaced && self.end.is_empty() {
                row.above.clear();
            }
        }
    }

    /// Writes the rows back.
    pub(super) fn into(mut self, list: &mut Array) {
        let broken = self.end.contains('\n');
        let comment_behind_last = self.rows.last().is_some_and(|row| !row.behind.is_empty());
        let comma = broken && (list.trailing_comma() || comment_behind_last || self.rows.len() > 1);
        list.clear();
        let mut behind = String::new();
        for row in &mut self.rows {
            let mut value = row.value.clone();
            value.decor_mut().set_prefix(std::mem::take(&mut behind) + &row.above);
            value.decor_mut().set_suffix("");
            list.push_formatted(value);
            behind = std::mem::take(&mut row.behind);
        }
        list.set_trailing_comma(comma);
        list.set_trailing(behind + &self.end);
    }
}

fn decor(text: Option<&toml_edit::RawString>) -> String {
    text.and_then(toml_edit::RawString::as_str).unwrap_or_default().to_owned()
}

/// The comment on the line that has begun, and the rest from the end of that line on.
fn split(text: &str) -> (String, String) {
    let line = text.find('\n').unwrap_or(text.len());
    let (first, rest) = text.split_at(line);
    if first.contains('#') { (first.to_owned(), rest.to_owned()) } else { (String::new(), text.to_owned()) }
}

/// The white space before an entry without the comments above it.
fn own_line(above: &str) -> String {
    above.rfind('\n').map_or_else(|| above.to_owned(), |line| above[line..].to_owned())
}
