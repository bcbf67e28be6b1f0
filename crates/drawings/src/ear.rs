//! An ear at true size, flat, from the front and on edge.

use basket::fittings::Ears;
use basket::message::Value;
use basket::{Basket, Length};
use kurbo::{Arc, Circle, Point, Rect, Shape};
use std::f64::consts::PI;
use words::Words;

use crate::dimension::{Dimension, pointer};
use crate::drawing::{Drawing, Label, Line, TOLERANCE, Tone};
use crate::plain::kept;

/// One ear with its rivet hole and where the rim crosses it; none for a basket without ears.
pub fn ear_template(basket: &Basket, words: &Words) -> Option<Drawing> {
    let ears = basket.ears.as_ref()?;
    let args = [
        ("length", Value::Name(words.both(ears.length))),
        ("width", Value::Name(words.both(ears.width))),
        ("thickness", Value::Name(words.fine_both(ears.thickness))),
    ];
    let title = words.with("drawing-ear", &[("material", Value::Name(words.name(ears.material)))]);
    let mut drawing = Drawing::new("ear", title, words.with("drawing-ear-description", &args));
    front(&mut drawing, basket, ears);
    dimensions(&mut drawing, basket, ears, words);
    Some(kept(drawing.fitted(1.5), words))
}

/// The front: x from the middle, y down from the rivet hole.
fn front(drawing: &mut Drawing, basket: &Basket, ears: &Ears) {
    let half = ears.width.to_mm() / 2.0;
    let low = (ears.length.to_mm() - half).max(0.0);
    let top = Arc::new(Point::ZERO, (half, half), PI, PI, 0.0).to_path(TOLERANCE);
    let mut outline = top;
    outline.line_to((half, low));
    outline.line_to((-half, low));
    outline.close_path();
    drawing.shape(outline, Tone::Pale, Line::Outline);
    let rim_top = ears.hole_height.to_mm();
    for y in [rim_top, rim_top + basket.body.rim().height.to_mm()] {
        drawing.line((-half - 2.0, y), (half + 2.0, y), Line::Hidden);
    }
    drawing.line((0.0, -half - 2.0), (0.0, low + 2.0), Line::Centre);
    if let Some(rivets) = basket.rivets() {
        drawing.shape(Circle::new(Point::ZERO, rivets.drill.to_mm() / 2.0), Tone::White, Line::Edge);
    }
    drawing.line((-half - 2.0, 0.0), (half + 2.0, 0.0), Line::Centre);
    let (side, thickness) = (half + 14.0, ears.thickness.to_mm());
    drawing.shape(Rect::new(side, -half, side + thickness, low), Tone::Light, Line::Outline);
}

fn dimensions(drawing: &mut Drawing, basket: &Basket, ears: &Ears, words: &Words) {
    let half = ears.width.to_mm() / 2.0;
    let low = (ears.length.to_mm() - half).max(0.0);
    let (rim_top, height) = (ears.hole_height.to_mm(), basket.body.rim().height.to_mm());
    let at = |y: f64| Point::new(-half, y);
    let part = |from: f64, to: f64, x: f64| {
        Dimension::upright([at(from), at(to)], x, words.both(Length::mm(to - from)))
    };
    let side = half + 14.0 + ears.thickness.to_mm();
    for dimension in [
        part(0.0, rim_top, -half - 27.0),
        part(rim_top + height, low, -half - 6.0),
        part(-half, low, -half - 34.0),
        Dimension::level([at(low), Point::new(half, low)], low + 7.0, words.both(ears.width)),
    ] {
        dimension.draw(drawing);
    }
    let mut notes = vec![
        (Point::new(side, rim_top + height / 2.0), words.term("drawing-ear-rim")),
        (Point::new(side - ears.thickness.to_mm() / 2.0, low - 2.0), words.fine_both(ears.thickness)),
    ];
    if let Some(rivets) = basket.rivets() {
        let drill = [("length", Value::Name(words.fine_both(rivets.drill)))];
        notes.push((Point::new(side, 0.0), words.with("drawing-ear-hole", &drill)));
    }
    for (place, text) in notes {
        pointer(drawing, place, (side + 5.0, place.y));
        drawing.label(Label::new(text, (side + 6.0, place.y)));
    }
}
