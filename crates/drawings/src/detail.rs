//! Enlarged details of the section: the groove, and the rim.

use basket::message::Value;
use basket::{Basket, Length};
use kurbo::{Point, Vec2};
use words::Words;

use crate::around::Around;
use crate::cut::Cut;
use crate::dimension::{Dimension, pointer};
use crate::drawing::{Drawing, Label};
use crate::rim_shape::RimShape;
use crate::scale::scale_name;
use crate::text::spread;

/// How much larger than true a detail is, unless it grows too large.
const SCALES: [f64; 7] = [4.0, 3.0, 2.0, 1.5, 1.0, 0.5, 0.2];
/// Most width or height of the groove on paper, in mm.
const GROOVE: f64 = 36.0;
/// Most width or height of the rim on paper, in mm.
const RIM: f64 = 32.0;
/// How much of the disc is shown inside the groove, in mm of the basket.
const INSIDE: f64 = 2.5;

/// The edge of the base with its groove, the stave's foot and the first rows.
pub(crate) fn groove(basket: &Basket, words: &Words) -> Drawing {
    let (base, staves) = (basket.body.base(), basket.body.staves());
    let around = Around::of_front(basket);
    let (over, half) = (around.over(0.0), around.across(base.across()).to_mm() / 2.0);
    let from = (base.groove_radius().to_mm() - INSIDE).max(0.0) + over;
    let size = (half - from + 4.0).max(base.thickness.to_mm() + 4.0);
    let scale = SCALES.into_iter().find(|scale| scale * size <= GROOVE).unwrap_or(0.1);
    let cut = Cut::of(basket, scale, Vec2::ZERO);
    let mut drawing = Drawing::new("detail-groove", "", "");
    let first = basket.body.weave.courses.first().map_or(Length::ZERO, |course| course.pitch);
    let rows = first * 2.0;
    cut.stave(&mut drawing, cut.wall.foot(), rows);
    cut.weavers(&mut drawing, Length::ZERO, rows);
    cut.disc(&mut drawing, from);

    let (edge, low) = (half, -base.thickness.to_mm());
    let (root, cheek) = (base.groove_radius().to_mm() + over, low / 2.0 - base.groove_width.to_mm() / 2.0);
    let at = |x: f64, height: f64| cut.place(Point::new(x, height));
    let depth = [at(root, cheek), at(edge, low)];
    Dimension::level(depth, at(edge, low).y + 6.0, words.fine_both(base.groove_depth)).draw(&mut drawing);
    let column = at(edge, 0.0).x + 5.0;
    let groove = note(words, "drawing-part-groove", base.groove_width);
    let disc = note(words, "drawing-part-base", base.thickness);
    notes(
        &mut drawing,
        column,
        &[(at(edge - base.groove_depth.to_mm() * 0.35, cheek), groove), (at(edge - 1.0, low * 0.86), disc)],
    );
    let stave = note(words, "drawing-part-stave", staves.uprights.thickness);
    let above = drawing.bounds().y0 - Label::SMALL;
    let stave = Label::new(stave, (at(from, 0.0).x, above)).sized(Label::SMALL);
    pointer(
        &mut drawing,
        cut.on_wall(Length::ZERO, staves.uprights.thickness.to_mm() / 2.0),
        (stave.bounds().x1 + 1.0, stave.at.y),
    );
    drawing.label(stave);
    headed(drawing, words, "drawing-detail-groove", scale)
}

/// The rim cut through a pin, with stave, hoops, filler and lashing.
pub(crate) fn rim(basket: &Basket, words: &Words) -> Drawing {
    let (rim, staves) = (basket.body.rim(), basket.body.staves());
    let size = rim.stack.to_mm().max(rim.height.to_mm() + 6.0);
    let scale = SCALES.into_iter().find(|scale| scale * size <= RIM).unwrap_or(0.1);
    let cut = Cut::of(basket, scale, Vec2::ZERO);
    let mut drawing = Drawing::new("detail-rim", "", "");
    let last = basket.body.weave.courses.last().map_or(Length::ZERO, |course| course.pitch);
    let from = (rim.along - last * 2.6).max(Length::ZERO);
    cut.stave(&mut drawing, from, rim.along + rim.height);
    cut.weavers(&mut drawing, from, rim.along);
    cut.rim(&mut drawing);

    let at = |along: f64, out: f64| cut.on_wall(rim.along + Length::mm(along), out);
    let (height, thickness) = (rim.height.to_mm(), staves.uprights.thickness.to_mm());
    let outer = thickness + rim.outer.stock.thickness.to_mm();
    let inner = -rim.inner.stock.thickness.to_mm();
    let shape = RimShape::of(basket);
    let top = shape.lashing.iter().map(|at| at.y).fold(height, f64::max);
    let mut named = vec![
        (
            at(height * 0.75, thickness + rim.outer.stock.thickness.to_mm() * 0.4),
            words.term("drawing-part-outer-hoop"),
        ),
        (at(height * 0.5, outer + 0.6), note(words, "drawing-part-pin", basket.body.pins().others.length)),
        (at(height * 0.2, inner * 0.5), words.term("drawing-part-inner-hoop")),
        (at(-last.to_mm() * 0.9, thickness * 0.5), words.term("drawing-part-stave-name")),
    ];
    if basket.body.filler().is_some() {
        named.insert(0, (at(height + 0.5, thickness / 2.0), words.term("drawing-part-filler")));
    }
    let right = shape.lashing.iter().map(|at| at.x).fold(0.0, f64::max);
    let edge = at(height / 2.0, right).x;
    if basket.body.lashing().is_some() {
        named.insert(0, (at(top, thickness / 2.0 + 0.2), words.term("drawing-part-lashing")));
    }
    notes(&mut drawing, edge + 6.0, &named);
    let stack = [at(height / 2.0, inner), at(height / 2.0, outer)];
    let low = drawing.bounds().y1 + 4.0;
    Dimension::level(stack, low, words.fine_both(rim.stack)).draw(&mut drawing);
    headed(drawing, words, "drawing-detail-rim", scale)
}

fn note(words: &Words, id: &str, length: Length) -> String {
    words.with(id, &[("length", Value::Name(words.fine_both(length)))])
}

/// Labels in a column at `x`, each with a pointer to what it names, from above downward.
fn notes(drawing: &mut Drawing, x: f64, notes: &[(Point, String)]) {
    let wanted: Vec<f64> = notes.iter().map(|(at, _)| at.y).collect();
    for ((at, text), y) in notes.iter().zip(spread(&wanted, Label::SMALL * 1.5)) {
        pointer(drawing, *at, (x - 1.0, y));
        drawing.label(Label::new(text.as_str(), (x, y)).sized(Label::SMALL));
    }
}

/// The detail under its heading.
fn headed(mut drawing: Drawing, words: &Words, id: &str, scale: f64) -> Drawing {
    let bounds = drawing.bounds();
    let text = format!("{}, {}", words.term(id), scale_name(scale, words));
    drawing.label(Label::new(text, (bounds.x0, bounds.y0 - 4.0)));
    drawing.fitted(0.0)
}
