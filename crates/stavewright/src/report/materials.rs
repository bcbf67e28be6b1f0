//! The catalogue.

use std::fmt::Write;

use basket::Length;
use basket::stock::{Catalogue, Material, PutUp, Wood};
use words::Words;

use super::table::{Set, table};
use crate::screen;

const MATERIALS: [(&str, Set); 5] = [
    ("Name", Set::Words),
    ("Size in mm", Set::Figures),
    ("Sold as", Set::Words),
    ("Soak", Set::Figures),
    ("Bends to", Set::Figures),
];
const WOODS: [(&str, Set); 3] =
    [("Wood", Set::Words), ("Tangential", Set::Figures), ("Radial", Set::Figures)];

/// The materials as a table, with the sources of their figures if wanted.
pub(crate) fn render(catalogue: &Catalogue, words: &Words, sources: bool) -> String {
    let mut said = String::new();
    if !catalogue.materials.is_empty() {
        said.push_str(&table(&MATERIALS, catalogue.materials.iter().map(|material| row(material, words))));
        said.push_str("\nSize: width × thickness, or diameter × length. Soak: minutes in water.\nBends to: the least radius when soaked.\n");
    }
    if !catalogue.woods.is_empty() {
        let gap = if said.is_empty() { "" } else { "\n" };
        said.push_str(gap);
        said.push_str(&table(&WOODS, catalogue.woods.iter().map(wood)));
        said.push_str("\nShrinkage from green to oven dry, across the grain.\n");
    }
    if sources {
        said.push_str(&sources_of(catalogue));
    }
    said
}

fn row(material: &Material, words: &Words) -> Vec<String> {
    let size = match material.length {
        Some(length) => format!("{} × {} long", mm(material.width), mm(length)),
        None => format!("{} × {}", mm(material.width), mm(material.thickness)),
    };
    vec![
        material.name.clone(),
        size,
        put_up(&material.put_up, words),
        material.soak_minutes.map(soak).unwrap_or_default(),
        material.bend_limit.map(|limit| words.length(material.thickness / (2.0 * limit))).unwrap_or_default(),
    ]
}

/// Sizes are always in mm: names carry the inches, and slip.
fn mm(length: Length) -> String {
    format!("{:.1}", (length.to_mm() * 10.0).round() / 10.0)
}

fn put_up(put_up: &PutUp, words: &Words) -> String {
    let mut text = put_up.unit.clone();
    if let Some(length) = put_up.length {
        let _ = write!(text, " of {}", words.run(length));
    }
    if let Some(strand) = put_up.strand {
        let _ = write!(text, ", strands {}", words.run(strand));
    }
    text
}

fn soak((least, most): (f64, f64)) -> String {
    if (most - least).abs() < 0.5 { format!("{least:.0}") } else { format!("{least:.0}–{most:.0}") }
}

fn wood(wood: &Wood) -> Vec<String> {
    vec![
        wood.name.clone(),
        format!("{:.1} %", wood.tangential * 100.0),
        format!("{:.1} %", wood.radial * 100.0),
    ]
}

fn sources_of(catalogue: &Catalogue) -> String {
    let mut said = super::heading("Sources");
    let style = screen::HEADING;
    for material in &catalogue.materials {
        let _ = writeln!(said, "{style}{}{style:#}", material.name);
        for (figure, source) in material.sources.iter() {
            said.push_str(&source_line(figure, source));
        }
    }
    for wood in &catalogue.woods {
        let _ = writeln!(said, "{style}{}{style:#}", wood.name);
        said.push_str(&source_line("shrinkage", &wood.source));
    }
    said
}

fn source_line(figure: &str, source: &str) -> String {
    screen::wrap(&format!("{figure}: {source}"), "  ", "    ") + "\n"
}
