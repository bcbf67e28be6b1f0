//! What is printed for the maker: summary, cut table, findings, problems. No line is longer than
//! [`screen::WIDTH`].

pub(crate) mod changed;
pub(crate) mod choices;
pub(crate) mod class;
pub(crate) mod cuts;
pub(crate) mod findings;
pub(crate) mod hand;
pub(crate) mod leaf;
pub(crate) mod materials;
pub(crate) mod problems;
pub(crate) mod proposals;
pub(crate) mod records;
pub(crate) mod rows;
pub(crate) mod shelf;
pub(crate) mod summary;
mod table;
pub(crate) mod weaves;

use std::fmt::Write;

use anstyle::Style;

use crate::screen;

/// A word at the left and a text beside it, wrapped.
fn entry(label: &str, style: Style, indent: usize, text: &str) -> String {
    let margin = " ".repeat(indent);
    let wrapped = screen::wrap(text, &margin, &margin);
    let gap = " ".repeat(indent.saturating_sub(label.chars().count()));
    format!("{style}{label}{style:#}{gap}{}\n", wrapped.get(indent..).unwrap_or_default())
}

/// A heading over a part of the answer.
fn heading(text: &str) -> String {
    let mut line = String::new();
    let style = screen::HEADING;
    let _ = writeln!(line, "\n{style}{text}{style:#}");
    line
}
