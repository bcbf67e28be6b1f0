//! The weaving unrolled: every crossing of a row and a stave, from outside or inside, at true proportion
//! or as a grid.
//!
//! A chart stands as the basket does, base down. On the mould, base up, staves are numbered to the right
//! round the outside; so on a chart of the outside numbers rise to the left, on one of the inside to the
//! right.

mod cells;
mod key;
mod marks;
mod palette;
mod plane;

use basket::Basket;
use basket::message::Value;
use basket::weave::Face;
use words::Words;

use crate::drawing::Drawing;
use crate::plain::{kept, left_out, too_many_crossings};
use palette::Palette;
use plane::Plane;
pub use plane::{ChartKind, numbers_rise_left};

/// The weaving of a basket as a chart, no wider than a column of the sheets, so that its lettering is printed as
/// large as it is drawn.
pub fn chart(basket: &Basket, words: &Words, face: Face, kind: ChartKind) -> Drawing {
    let plane = Plane::of(basket, face, kind);
    let palette = Palette::of(&basket.body.weave);
    let mut drawing = begin(basket, words, face, &plane);
    if let Some(why) = too_many_crossings(basket) {
        return left_out(&drawing, words, &why);
    }
    cells::staves(&mut drawing, &plane, &palette);
    cells::weaving(&mut drawing, &plane, &palette);
    marks::rows(&mut drawing, &plane);
    marks::staves(&mut drawing, &plane);
    marks::courses(&mut drawing, &plane, &palette, words);
    marks::beginnings(&mut drawing, &plane);
    marks::joins(&mut drawing, &plane);
    marks::ears(&mut drawing, &plane, words);
    key::write(&mut drawing, &plane, &palette, words);
    kept(drawing.fitted(1.5), words)
}

fn begin(basket: &Basket, words: &Words, face: Face, plane: &Plane<'_>) -> Drawing {
    let (name, side) = match face {
        Face::Outside => ("chart-outside", "drawing-chart-outside"),
        Face::Inside => ("chart-inside", "drawing-chart-inside"),
    };
    let scale = match plane.kind {
        ChartKind::True => {
            words.with("drawing-chart-true", &[("scale", Value::Number(1.0 / plane.scale, 1))])
        }
        ChartKind::Grid => words.term("drawing-chart-grid"),
    };
    let args = [
        ("title", Value::Name(basket.title.clone())),
        ("side", Value::Name(words.term(side))),
        ("scale", Value::Name(scale)),
        ("count", basket.body.uprights().count.into()),
        ("rows", basket.body.weave.rows.into()),
    ];
    let name = if plane.kind == ChartKind::Grid { format!("{name}-grid") } else { name.to_owned() };
    Drawing::new(name, words.with("drawing-chart", &args), words.with("drawing-chart-description", &args))
}
