//! Scarfs of the hoops at true size, from the edge: how each end thins over the lap.

use basket::message::Value;
use basket::rim::Hoop;
use basket::{Basket, Length};
use kurbo::{Point, Vec2};
use words::Words;

use crate::dimension::Dimension;
use crate::drawing::{Drawing, Label, Line, Tone, closed};
use crate::plain::kept;

/// How much of the full hoop is shown beyond the lap, in mm.
const FULL: f64 = 18.0;

/// For each hoop both ends, apart and joined.
pub fn scarf_template(basket: &Basket, words: &Words) -> Drawing {
    let rim = basket.body.rim();
    let args = [("lap", Value::Name(words.both(rim.outer.scarf.lap)))];
    let title = words.term("drawing-scarf");
    let mut drawing = Drawing::new("scarf", title, words.with("drawing-scarf-description", &args));
    let mut y = 0.0;
    for (hoop, name) in [(&rim.outer, "drawing-outer-scarf"), (&rim.inner, "drawing-inner-scarf")] {
        let one = scarf(hoop, words, name);
        let by = Vec2::new(0.0, y - one.frame().y0);
        y += one.height() + 6.0;
        drawing.add(one, by);
    }
    kept(drawing.fitted(1.5), words)
}

fn scarf(hoop: &Hoop, words: &Words, name: &str) -> Drawing {
    let (lap, thickness) = (hoop.scarf.lap.to_mm(), hoop.stock.thickness.to_mm());
    let mut drawing = Drawing::new("", "", "");
    let left = |y: f64| {
        [(-FULL, 0.0), (0.0, 0.0), (lap, thickness), (-FULL, thickness)].map(|(x, dy)| Point::new(x, y + dy))
    };
    let right = |y: f64| {
        [(0.0, 0.0), (lap + FULL, 0.0), (lap + FULL, thickness), (lap, thickness)]
            .map(|(x, dy)| Point::new(x, y + dy))
    };
    let joined = 3.0 * thickness + 6.0;
    for (corners, tone) in [
        (left(0.0), Tone::Light),
        (right(1.5 * thickness + 2.0), Tone::Pale),
        (left(joined), Tone::Light),
        (right(joined), Tone::Pale),
    ] {
        drawing.shape(closed(corners), tone, Line::Edge);
    }
    let heading = format!("{}, {}", words.term(name), words.material(&hoop.stock.name));
    drawing.label(Label::new(heading, (-FULL, -4.0)));
    let ends = [Point::new(0.0, joined + thickness), Point::new(lap, joined + thickness)];
    Dimension::level(ends, joined + thickness + 6.0, words.both(hoop.scarf.lap)).draw(&mut drawing);
    let side = lap + FULL;
    let thick = [Point::new(side, joined), Point::new(side, joined + thickness)];
    Dimension::upright(thick, side + 4.0, words.fine_both(Length::mm(thickness))).draw(&mut drawing);
    drawing.fitted(0.0)
}
