//! Where a finding points: the part, the node of the picture and the heights of a piece.

use basket::findings::Place;
use basket::piece::{FloorPart, Piece};
use basket::vessel::Vessel;
use basket::{Basket, Length};

/// The part of a basket to which a piece belongs, as the page knows it.
pub(super) const fn part(piece: Piece) -> &'static str {
    match piece {
        Piece::Whole => "whole",
        Piece::Mould | Piece::Band => "mould",
        Piece::Floor(FloorPart::Disc | FloorPart::Screw | FloorPart::Plug) => "base",
        Piece::Floor(FloorPart::Groove) => "groove",
        Piece::Uprights | Piece::Upright(_) => "staves",
        Piece::Weaving | Piece::Course(_) | Piece::Row { .. } => "weave",
        Piece::Rim | Piece::Clamp(_) => "rim",
        Piece::OuterHoop => "outer-hoop",
        Piece::InnerHoop => "inner-hoop",
        Piece::Pins | Piece::Pin { .. } => "pins",
        Piece::Fillers | Piece::Filler(_) => "filler",
        Piece::Lashing | Piece::Wrap(_) | Piece::Tail(_) => "lashing",
        Piece::Ears | Piece::Ear(_) => "ears",
        Piece::Handle | Piece::Rivet(_) | Piece::Washer(_) => "handle",
    }
}

/// The node of the GLB that shows a piece; none where several do, or none by itself.
pub(super) fn node(piece: Piece) -> Option<String> {
    Some(match piece {
        Piece::Mould => "mould".to_owned(),
        Piece::Band => "band".to_owned(),
        Piece::Floor(FloorPart::Disc | FloorPart::Groove) => "base".to_owned(),
        Piece::Floor(FloorPart::Screw) => "screw".to_owned(),
        Piece::Floor(FloorPart::Plug) => "plug".to_owned(),
        Piece::Upright(number) => format!("stave {number}"),
        Piece::Row { row, .. } => format!("row {row}"),
        Piece::OuterHoop => "outer hoop".to_owned(),
        Piece::InnerHoop => "inner hoop".to_owned(),
        Piece::Clamp(number) => format!("clamp {number}"),
        Piece::Pin { upright } => format!("pin in stave {upright}"),
        Piece::Filler(number) => format!("filler {number}"),
        Piece::Wrap(number) => format!("wrap {number}"),
        Piece::Ear(number) => format!("ear {number}"),
        Piece::Handle => "bail".to_owned(),
        Piece::Rivet(number) => format!("rivet {number}"),
        Piece::Washer(number) => format!("washer {number}"),
        Piece::Whole
        | Piece::Uprights
        | Piece::Weaving
        | Piece::Course(_)
        | Piece::Rim
        | Piece::Pins
        | Piece::Fillers
        | Piece::Lashing
        | Piece::Tail(_)
        | Piece::Ears => return None,
    })
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
    let [low, high] = match place.piece {
        Piece::Course(number) => course(body, number).unwrap_or(woven),
        Piece::Row { row, .. } => self::row(body, row).unwrap_or(woven),
        piece => match part(piece) {
            "mould" => [Length::ZERO, body.form.height()],
            "base" | "groove" => [foot, Length::ZERO],
            "staves" => [Length::ZERO, rim_top],
            "weave" => woven,
            "ears" => [under_rim, pivots],
            "handle" => [pivots, basket.handle.as_ref().map_or(pivots, |handle| pivots + handle.rise)],
            "whole" => [foot, rim_top],
            _ => [under_rim, rim_top],
        },
    };
    [low.to_mm(), high.to_mm()]
}

/// Height of a place along the wall.
fn at(body: &Vessel, along: Length) -> Length {
    body.profile().at(along).height
}

fn course(body: &Vessel, number: u32) -> Option<[Length; 2]> {
    let course = body.weave.courses.get(number.checked_sub(1)? as usize)?;
    Some([at(body, course.from), at(body, course.to)])
}

fn row(body: &Vessel, number: u32) -> Option<[Length; 2]> {
    let row = body.weave.each_row.get(number.checked_sub(1)? as usize)?;
    Some([row.along - row.pitch / 2.0, row.along + row.pitch / 2.0].map(|along| at(body, along)))
}

#[cfg(test)]
mod tests {
    use basket::steps::Stage;
    use basket::{Catalogue, Hand, Of, assemble};
    use drawings::solid::{Detail, solid};

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
    fn every_node_that_is_named_is_drawn() {
        let basket = basket(HARBOUR);
        let drawn: Vec<String> = Stage::ALL
            .into_iter()
            .flat_map(|stage| solid(&basket, stage, Detail::Thumbnail).parts)
            .map(|part| part.name)
            .collect();
        let upright = basket.body.pins().staves[1];
        let pieces = [
            Piece::Mould,
            Piece::Band,
            Piece::Floor(FloorPart::Disc),
            Piece::Floor(FloorPart::Groove),
            Piece::Floor(FloorPart::Screw),
            Piece::Floor(FloorPart::Plug),
            Piece::Upright(12),
            Piece::OuterHoop,
            Piece::InnerHoop,
            Piece::Clamp(2),
            Piece::Pin { upright },
            Piece::Filler(1),
            Piece::Wrap(3),
            Piece::Ear(2),
            Piece::Handle,
            Piece::Rivet(2),
            Piece::Washer(3),
        ];
        for piece in pieces {
            let name = node(piece).unwrap();
            assert!(drawn.contains(&name), "nothing is called {name}");
        }
    }
}
