//! An ear at true size, flat, from the front and on edge.

use basket::fittings::Ears;
use basket::message::Value;
use basket::{Basket, Length};
use kurbo::{Arc, BezPath, Circle, Point, Shape};
use std::f64::consts::PI;
use words::Words;

use crate::dimension::{Dimension, pointer};
use crate::drawing::{Drawing, Label, Line, TOLERANCE, Tone, closed};
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

/// The outline of an ear: x from the middle, y down from the rivet hole.
pub(crate) fn blank(basket: &Basket, ears: &Ears) -> BezPath {
    let half = ears.width.to_mm() / 2.0;
    let low = (ears.length.to_mm() - half).max(0.0);
    let top = Arc::new(Point::ZERO, (half, half), PI, PI, 0.0).to_path(TOLERANCE);
    let rim_top = ears.hole_height.to_mm();
    let (rim_end, tail) =
        ((rim_top + basket.body.rim().height.to_mm()).min(low), ears.tail_width.to_mm() / 2.0);
    let mut outline = top;
    for corner in
        [(half, rim_end), (tail, rim_end), (tail, low), (-tail, low), (-tail, rim_end), (-half, rim_end)]
    {
        outline.line_to(corner);
    }
    outline.close_path();
    outline
}

/// The front.
fn front(drawing: &mut Drawing, basket: &Basket, ears: &Ears) {
    let half = ears.width.to_mm() / 2.0;
    let low = (ears.length.to_mm() - half).max(0.0);
    let rim_top = ears.hole_height.to_mm();
    drawing.shape(blank(basket, ears), Tone::Pale, Line::Outline);
    for y in [rim_top, rim_top + basket.body.rim().height.to_mm()] {
        drawing.line((-half - 2.0, y), (half + 2.0, y), Line::Hidden);
    }
    drawing.line((0.0, -half - 2.0), (0.0, low + 2.0), Line::Centre);
    if let Some(rivets) = basket.rivets() {
        drawing.shape(Circle::new(Point::ZERO, rivets.drill.to_mm() / 2.0), Tone::White, Line::Edge);
    }
    drawing.line((-half - 2.0, 0.0), (half + 2.0, 0.0), Line::Centre);
    drawing.shape(edge(basket, ears), Tone::Light, Line::Outline);
}

/// The ear on edge: of one thickness, or with a shoulder above the hoops on both faces, a blade between them and a
/// tail that runs out thin.
fn edge(basket: &Basket, ears: &Ears) -> BezPath {
    let half = ears.width.to_mm() / 2.0;
    let low = (ears.length.to_mm() - half).max(0.0);
    let stave = basket.body.uprights().thickness;
    let shoulder = ears.hole_height.to_mm().min(low);
    let rim_end = (shoulder + basket.body.rim().height.to_mm()).min(low);
    let middle = side(ears) + ears.thickness.to_mm() / 2.0;
    let [full, blade, tip] = [ears.thickness, ears.blade(stave), ears.tip(stave)].map(|it| it.to_mm() / 2.0);
    let down = [(full, -half), (full, shoulder), (blade, shoulder), (blade, rim_end), (tip, low)];
    let right = down.iter().map(|(off, y)| Point::new(middle + off, *y));
    let left = down.iter().rev().map(|(off, y)| Point::new(middle - off, *y));
    closed(right.chain(left))
}

/// How far right of the middle of its front an ear on edge stands.
fn side(ears: &Ears) -> f64 {
    ears.width.to_mm() / 2.0 + 14.0
}

fn dimensions(drawing: &mut Drawing, basket: &Basket, ears: &Ears, words: &Words) {
    let half = ears.width.to_mm() / 2.0;
    let low = (ears.length.to_mm() - half).max(0.0);
    let (rim_top, height) = (ears.hole_height.to_mm(), basket.body.rim().height.to_mm());
    let at = |y: f64| Point::new(-half, y);
    let part = |from: f64, to: f64, x: f64| {
        Dimension::upright([at(from), at(to)], x, words.both(Length::mm(to - from)))
    };
    let side = side(ears) + ears.thickness.to_mm();
    for dimension in [
        part(0.0, rim_top, -half - 27.0),
        part(rim_top + height, low, -half - 6.0),
        part(-half, low, -half - 34.0),
        Dimension::level([at(low), Point::new(half, low)], low + 7.0, words.both(ears.width)),
    ] {
        dimension.draw(drawing);
    }
    let mut notes = vec![(Point::new(side, rim_top + height / 2.0), words.term("drawing-ear-rim"))];
    notes.extend(
        thicknesses(basket, ears, words)
            .into_iter()
            .map(|(y, text)| (Point::new(side - ears.thickness.to_mm() / 2.0, y), text)),
    );
    if let Some(rivets) = basket.rivets() {
        let drill = [("length", Value::Name(words.fine_both(rivets.drill)))];
        notes.push((Point::new(side, 0.0), words.with("drawing-ear-hole", &drill)));
    }
    notes.sort_by(|(a, _), (b, _)| a.y.total_cmp(&b.y));
    for (place, text) in notes {
        pointer(drawing, place, (side + 5.0, place.y));
        drawing.label(Label::new(text, (side + 6.0, place.y)));
    }
}

/// How thick it is at which heights: one thickness, or with its shoulder that above it, between the hoops and at
/// the end of the tail.
fn thicknesses(basket: &Basket, ears: &Ears, words: &Words) -> Vec<(f64, String)> {
    let low = (ears.length - ears.width / 2.0).to_mm().max(0.0);
    let stave = basket.body.uprights().thickness;
    let shoulder = ears.shoulder(stave);
    if shoulder <= Length::ZERO {
        return vec![(low - 2.0, words.fine_both(ears.thickness))];
    }
    let rim_top = ears.hole_height.to_mm();
    let below = rim_top + basket.body.rim().height.to_mm();
    let deep = [("length", Value::Name(words.fine_both(shoulder)))];
    vec![
        (rim_top * 0.45, words.fine_both(ears.thickness)),
        (rim_top, words.with("drawing-ear-shoulder", &deep)),
        (below + (low - below) * 0.15, words.fine_both(ears.blade(stave))),
        (low - 1.0, words.fine_both(ears.tip(stave))),
    ]
}
