//! The cut list.

use basket::Basket;
use basket::message::Term;
use words::Words;

use super::lengths;
use crate::bench::api::{Cut, PieceLength};

/// Every line of the cut list.
pub(super) fn cuts(cuts: &[basket::cuts::Cut], words: &Words) -> Vec<Cut> {
    cuts.iter().map(|cut| line(cut, words)).collect()
}

fn line(cut: &basket::cuts::Cut, words: &Words) -> Cut {
    Cut {
        id: cut.piece.term().to_owned(),
        piece: words.name(cut.piece),
        material: words.value(&cut.stock.name()),
        count: cut.count,
        spares: cut.spares,
        length: cut.length.map(|length| lengths::both(words, length)),
        width: cut.width.map(|width| lengths::both(words, width)),
        total: cut.total.map(|total| words.run(total)),
        shape: shape(cut, words),
        purpose: words.say(&cut.purpose),
    }
}

/// How to shape a piece; of a weaver, how it is dyed.
fn shape(cut: &basket::cuts::Cut, words: &Words) -> Option<String> {
    let shape = cut.shape.as_ref().map(|shape| words.say(shape));
    shape.or_else(|| cut.colour.as_ref().map(|colour| words.colour(&colour.name)))
}

/// How long pieces are, by the nodes of the picture.
pub(super) fn lengths(basket: &Basket, words: &Words) -> Vec<PieceLength> {
    let piece = |node: String, length| PieceLength { node, length: lengths::both(words, length) };
    let rows = basket.body.weave.each_row.iter().map(|row| piece(format!("row {}", row.number), row.length));
    let filler = basket.body.filler().into_iter().flat_map(|filler| &filler.pieces).zip(1..);
    let filler = filler.map(|(part, number)| piece(format!("filler {number}"), part.length));
    let mut pieces = vec![
        piece("stave".to_owned(), basket.body.staves().length),
        piece("outer hoop".to_owned(), basket.body.rim().outer.cut),
        piece("inner hoop".to_owned(), basket.body.rim().inner.cut),
        piece("pin".to_owned(), basket.body.pins().length),
    ];
    pieces.extend(basket.handle.iter().map(|handle| piece("bail".to_owned(), handle.cut)));
    pieces.extend(filler);
    pieces.extend(rows);
    pieces
}
