//! Where a finding points: the section of the pattern, the pieces of the picture and the heights.

use basket::findings::Place;
use basket::piece::{FloorPart, Of, Piece};
use basket::vessel::Vessel;
use basket::{Basket, Length};

use crate::bench::api::PieceWord;

/// A piece as the nodes of a GLB carry it.
pub(super) fn word(of: Of, piece: Piece) -> PieceWord {
    PieceWord { kind: piece.kind().to_owned(), of: of.name().to_owned(), numbers: piece.numbers() }
}

/// All things like a piece, as the nodes of a GLB carry them.
pub(super) fn every(of: Of, piece: Piece) -> PieceWord {
    PieceWord { numbers: Vec::new(), ..word(of, piece) }
}

/// All strands of a row.
pub(super) fn row(of: Of, row: u32) -> PieceWord {
    PieceWord { numbers: vec![row], ..every(of, Piece::Row { row, weaver: 1, strand: 1 }) }
}

/// The section of the pattern that says most of a piece.
pub(super) const fn section(piece: Piece) -> &'static str {
    match piece.sort() {
        Piece::Mould | Piece::MouldPart(_) | Piece::Band => "mould",
        Piece::Floor(_) => "base",
        Piece::Uprights => "staves",
        Piece::Weaving => "weave",
        Piece::Pins => "pins",
        Piece::Fillers => "filler",
        Piece::Lashing => "lashing",
        Piece::Ears => "ears",
        Piece::Handle | Piece::Rivets | Piece::Washers => "handle",
        _ => "rim",
    }
}

/// The pieces of the picture that show a place; none for the whole basket.
pub(super) fn shown(basket: &Basket, place: Place) -> Vec<PieceWord> {
    let of = place.of;
    let every = |piece| every(of, piece);
    match place.piece {
        Piece::Whole => Vec::new(),
        Piece::Floor(FloorPart::Groove) => vec![every(Piece::Floor(FloorPart::Disc))],
        Piece::Uprights => vec![every(Piece::Upright(1))],
        Piece::Weaving => vec![every(Piece::Row { row: 1, weaver: 1, strand: 1 })],
        Piece::Course(number) => course(&basket.body, number).map(|number| row(of, number)).collect(),
        Piece::Row { row: number, .. } => vec![row(of, number)],
        Piece::Rim => vec![every(Piece::OuterHoop), every(Piece::InnerHoop)],
        Piece::Clamps => vec![every(Piece::Clamp(1))],
        Piece::Pins => vec![every(Piece::Pin { upright: 1 })],
        Piece::Fillers => vec![every(Piece::Filler(1))],
        Piece::Lashing => vec![every(Piece::Wrap(1))],
        Piece::Ears => vec![every(Piece::Ear(1))],
        Piece::Rivets => vec![every(Piece::Rivet(1))],
        Piece::Washers => vec![every(Piece::Washer(1))],
        piece => vec![word(of, piece)],
    }
}

/// Lowest and highest point of a place above the mould's base, in mm. A place at one height has no
/// extent.
pub(super) fn span(basket: &Basket, place: Place) -> [f64; 2] {
    if let Some(height) = place.height {
        return [height.to_mm(); 2];
    }
    let body = &basket.body;
    let foot = -body.base().thickness;
    let (under_rim, rim_top) = (at(body, body.rim().along), at(body, body.rim().along + body.rim().height));
    let pivots = rim_top + basket.ears.as_ref().map_or(Length::ZERO, |ears| ears.hole_height);
    let woven = [Length::ZERO, body.weave.top_height];
    let rows = |rows: std::ops::Range<u32>| {
        let row = |number: u32| body.weave.each_row.get(number.checked_sub(1)? as usize);
        let (first, last) = (row(rows.start)?, row(rows.end.checked_sub(1)?)?);
        Some([first.along - first.pitch / 2.0, last.along + last.pitch / 2.0].map(|along| at(body, along)))
    };
    let [low, high] = match place.piece {
        Piece::Course(number) => rows(course(body, number)).unwrap_or(woven),
        Piece::Row { row, .. } => rows(row..row + 1).unwrap_or(woven),
        piece => match piece.sort() {
            Piece::Mould | Piece::MouldPart(_) | Piece::Band => [Length::ZERO, body.form.height()],
            Piece::Floor(_) => [foot, Length::ZERO],
            Piece::Uprights => [Length::ZERO, rim_top],
            Piece::Weaving => woven,
            Piece::Ears => [under_rim, pivots],
            Piece::Handle | Piece::Knobs | Piece::Rivets | Piece::Washers => {
                [pivots, basket.handle.as_ref().map_or(pivots, |handle| rim_top + handle.top())]
            }
            Piece::Whole => [foot, rim_top],
            _ => [under_rim, rim_top],
        },
    };
    [low.to_mm(), high.to_mm()]
}

/// The rows of a course; none of a course that is not there.
fn course(body: &Vessel, number: u32) -> std::ops::Range<u32> {
    let course = number.checked_sub(1).and_then(|index| body.weave.courses.get(index as usize));
    course.map_or(0..0, |course| course.first_row..course.first_row.saturating_add(course.rows))
}

/// Height of a place along the wall.
fn at(body: &Vessel, along: Length) -> Length {
    body.profile().at(along).height
}

#[cfg(test)]
mod tests {
    use basket::steps::Stage;
    use basket::{Catalogue, Hand, Of, assemble};
    use drawings::solid::{Detail, solid};
    use words::Language;

    use super::*;

    const HARBOUR: &str = include_str!("../../../../../patterns/harbour-bread-basket.toml");

    fn basket(pattern: &str) -> Basket {
        let catalogue = Catalogue::built_in();
        assemble(&basket::pattern::read(pattern, catalogue).unwrap(), catalogue, &Hand::USUAL)
    }

    fn place(piece: Piece, height: Option<Length>) -> Place {
        Place { piece, of: Of::Body, height }
    }

    #[test]
    fn parts_lie_one_above_the_other() {
        let basket = basket(HARBOUR);
        let of = |piece| span(&basket, place(piece, None));
        let order = [Piece::Floor(FloorPart::Disc), Piece::Weaving, Piece::Rim, Piece::Handle];
        for pair in order.windows(2) {
            let ([low, high], [next, _]) = (of(pair[0]), of(pair[1]));
            assert!(low < high && high <= next + 0.5, "{pair:?}: {high} {next}");
        }
        let [low, high] = of(Piece::Whole);
        assert!(low < of(Piece::Mould)[0] && (high - of(Piece::Lashing)[1]).abs() < 1e-9);
    }

    #[test]
    fn a_course_lies_within_the_weaving_and_a_height_is_itself() {
        let basket = basket(include_str!("../../../../../patterns/channel-marker.toml"));
        let second = span(&basket, place(Piece::Course(2), None));
        let all = span(&basket, place(Piece::Weaving, None));
        assert!(all[0] < second[0] && second[0] < second[1] && second[1] <= all[1] + 1e-9, "{second:?}");
        let [low, high] = span(&basket, place(Piece::Course(2), Some(Length::mm(40.0))));
        assert!((low - 40.0).abs() < 1e-9 && (high - 40.0).abs() < 1e-9, "{low} {high}");
        let first = basket.body.weave.courses[1].first_row;
        let row = span(&basket, place(Piece::Row { row: first, weaver: 1, strand: 1 }, None));
        assert!(second[0] - 1e-9 <= row[0] && row[0] < row[1] && row[1] < second[1], "{row:?}");
    }

    /// A link that leads nowhere is worse than none.
    #[test]
    fn every_piece_that_is_meant_is_drawn() {
        let basket = basket(HARBOUR);
        let drawn: Vec<PieceWord> = Stage::ALL
            .into_iter()
            .flat_map(|stage| solid(&basket, stage, Detail::Thumbnail).parts)
            .map(|part| word(part.of, part.piece))
            .collect();
        let pieces = [
            Piece::Mould,
            Piece::Band,
            Piece::Floor(FloorPart::Disc),
            Piece::Floor(FloorPart::Groove),
            Piece::Floor(FloorPart::Screw),
            Piece::Floor(FloorPart::Plug),
            Piece::Uprights,
            Piece::Upright(12),
            Piece::Weaving,
            Piece::Course(1),
            Piece::Row { row: 3, weaver: 1, strand: 1 },
            Piece::Rim,
            Piece::OuterHoop,
            Piece::InnerHoop,
            Piece::Clamps,
            Piece::Clamp(2),
            Piece::Pins,
            Piece::Pin { upright: basket.body.pins().others.staves[1] },
            Piece::Fillers,
            Piece::Filler(1),
            Piece::Lashing,
            Piece::Wrap(3),
            Piece::Ears,
            Piece::Ear(2),
            Piece::Handle,
            Piece::Rivets,
            Piece::Rivet(2),
            Piece::Washers,
            Piece::Washer(3),
        ];
        for piece in pieces {
            let meant = shown(&basket, place(piece, None));
            assert!(!meant.is_empty(), "{piece:?}");
            for word in meant {
                let is_it = |drawn: &&PieceWord| {
                    drawn.kind == word.kind && drawn.of == word.of && drawn.numbers.starts_with(&word.numbers)
                };
                assert!(drawn.iter().any(|drawn| is_it(&drawn)), "nothing is {word:?}");
            }
        }
        assert!(shown(&basket, place(Piece::Whole, None)).is_empty());
        for language in Language::ALL {
            let texts = words::page_texts(*language);
            let unnamed = drawn.iter().find(|word| !texts.contains(&format!("\nbench-node-{} =", word.kind)));
            assert_eq!(unnamed, None, "{language:?}");
        }
    }
}
