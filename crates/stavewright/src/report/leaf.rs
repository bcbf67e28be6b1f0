//! A sheet of the workshop on the screen.

use std::fmt::Write;

use sheets::workshop::{Leaf, Section, Table};

use super::table::{Set, table};
use crate::screen;

/// The sheet as text.
pub(crate) fn render(leaf: &Leaf) -> String {
    let mut said = String::new();
    for section in &leaf.sections {
        if !said.is_empty() {
            said.push('\n');
        }
        said.push_str(&one(section));
    }
    said
}

fn one(section: &Section) -> String {
    let mut said = String::new();
    let bold = anstyle::Style::new().bold();
    for line in screen::wrap(&section.heading, "", "").lines() {
        let _ = writeln!(said, "{bold}{line}{bold:#}");
    }
    for note in &section.notes {
        let _ = writeln!(said, "{}", screen::wrap(note, "", "").trim_end());
    }
    if let Some(shown) = &section.table {
        said.push_str(&drawn(shown));
    }
    for note in &section.after {
        let _ = writeln!(said, "{}", screen::wrap(note, "", "").trim_end());
    }
    said
}

fn drawn(shown: &Table) -> String {
    let set = |figures: &bool| if *figures { Set::Figures } else { Set::Words };
    let columns: Vec<(&str, Set)> =
        shown.head.iter().zip(&shown.figures).map(|(head, figures)| (head.as_str(), set(figures))).collect();
    table(&columns, shown.rows.iter().cloned())
}
