//! The cut table.

use basket::cuts::Cut;
use words::Words;

use super::table::{Set, table};

const COLUMNS: [(&str, Set); 6] = [
    ("screen-piece", Set::Words),
    ("screen-material", Set::Words),
    ("screen-pieces", Set::Figures),
    ("screen-length", Set::Figures),
    ("screen-width", Set::Figures),
    ("screen-total", Set::Figures),
];

/// The cut list as a table.
pub(crate) fn render(cuts: &[Cut], words: &Words) -> String {
    let heads = COLUMNS.map(|(id, _)| words.term(id));
    let columns: Vec<(&str, Set)> =
        heads.iter().zip(COLUMNS).map(|(head, (_, set))| (head.as_str(), set)).collect();
    let table = table(&columns, cuts.iter().map(|cut| row(cut, words)));
    super::heading(&words.term("screen-cuts")) + &table
}

/// Also the colour: otherwise lines of weavers look alike.
fn material(cut: &Cut, words: &Words) -> String {
    let material = words.value(&cut.stock.name());
    match &cut.colour {
        Some(colour) => format!("{material}, {}", words.colour(&colour.name)),
        None => material,
    }
}

fn row(cut: &Cut, words: &Words) -> Vec<String> {
    let pieces =
        if cut.spares == 0 { cut.count.to_string() } else { format!("{} + {}", cut.count, cut.spares) };
    vec![
        words.cut(cut.of, cut.piece),
        material(cut, words),
        pieces,
        cut.length.map(|length| words.length(length)).unwrap_or_default(),
        cut.width.map(|width| words.fine(width)).unwrap_or_default(),
        cut.total.map(|total| words.run(total)).unwrap_or_default(),
    ]
}
