//! The cut list.

use basket::{Basket, Of, Piece};
use words::Words;

use super::{lengths, place};
use crate::bench::api::{Cut, PieceLength};

/// Every line of the cut list.
pub(super) fn cuts(cuts: &[basket::cuts::Cut], words: &Words) -> Vec<Cut> {
    cuts.iter().map(|cut| line(cut, words)).collect()
}

fn line(cut: &basket::cuts::Cut, words: &Words) -> Cut {
    Cut {
        id: cut.piece.kind().to_owned(),
        piece: words.cut(cut.of, cut.piece),
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

/// How long pieces are.
pub(super) fn lengths(basket: &Basket, words: &Words) -> Vec<PieceLength> {
    let length = |piece, length| PieceLength { piece, length: lengths::both(words, length) };
    let every = |piece| place::every(Of::Body, piece);
    let rows = basket.body.weave.each_row.iter().map(|of| length(place::row(Of::Body, of.number), of.length));
    let filler = basket.body.filler().into_iter().flat_map(|filler| &filler.pieces).zip(1..);
    let filler = filler.map(|(of, number)| length(place::word(Of::Body, Piece::Filler(number)), of.length));
    let mut pieces = vec![
        length(every(Piece::Upright(1)), basket.body.staves().length),
        length(every(Piece::OuterHoop), basket.body.rim().outer.cut),
        length(every(Piece::InnerHoop), basket.body.rim().inner.cut),
    ];
    pieces.extend(
        basket
            .body
            .pins()
            .each()
            .into_iter()
            .map(|(upright, pin)| length(place::word(Of::Body, Piece::Pin { upright }), pin.length)),
    );
    pieces.extend(basket.bow().iter().map(|bow| length(every(Piece::Handle), bow.cut)));
    pieces.extend(filler);
    pieces.extend(rows);
    pieces
}
