//! Templates of the mould itself, at true size.

use basket::form::{Layer, Levels};
use basket::message::Value;
use basket::pattern::{EarAxis, Units};
use basket::{Basket, Length};
use kurbo::Point;
use words::Words;

use crate::around::Around;
use crate::drawing::{Drawing, Label, Line, Tone, closed};
use crate::plain::kept;

/// Places of the side that are drawn.
const SIDE: u32 = 193;
/// Steps round an outline.
const ROUND: u32 = 360;
/// From one diameter to the next: half an inch, or a centimetre.
const STEPS: [Length; 2] = [Length::inches(0.5), Length::mm(10.0)];
/// More diameters than this are not written one by one.
const MOST: u32 = 400;

/// Half the mould from the side, foot below, cut along its length: a card for the lathe, with the diameter at every
/// half inch (or centimetre) of its height. Where the side along its width is another, that stands on a card of its
/// own.
pub fn turning_templates(basket: &Basket, words: &Words) -> Vec<Drawing> {
    let along_width = (basket.body.form.levels != Levels::Even).then_some(EarAxis::Short);
    let sides = std::iter::once(EarAxis::Long).chain(along_width);
    sides.map(|axis| turning_template(basket, words, axis)).collect()
}

fn turning_template(basket: &Basket, words: &Words, axis: EarAxis) -> Drawing {
    let (name, title) = match axis {
        EarAxis::Long => ("turning", "drawing-turning"),
        EarAxis::Short => ("turning-width", "drawing-turning-width"),
    };
    let (form, profile) = (&basket.body.form, basket.body.profile());
    let args = [("height", Value::Name(words.both(form.height())))];
    let description = words.with(&format!("{title}-description"), &args);
    let mut drawing = Drawing::new(name, words.term(title), description);
    let place = |along: Length| {
        let reach = form.level_at(along).reach(Some(axis));
        Point::new(reach.to_mm(), -profile.at(along).height.to_mm())
    };
    let height = form.height();
    let side = profile.spots(SIDE).map(|spot| place(spot.along));
    let half = std::iter::once(Point::ZERO).chain(side).chain([Point::new(0.0, -height.to_mm())]);
    drawing.shape(closed(half), Tone::White, Line::Outline);
    drawing.line((0.0, 4.0), (0.0, -height.to_mm() - 4.0), Line::Centre);
    let step = match words.units() {
        Units::Inches => STEPS[0],
        Units::Millimetres => STEPS[1],
    };
    let last = ((height / step) as u32).min(MOST);
    for number in 0..=last {
        let up = step * f64::from(number);
        let along = profile.along_at_height(up);
        let at = place(along);
        drawing.line((0.0, at.y), at, Line::Dimension);
        let across = basket.body.form.across(along, Length::ZERO);
        drawing.label(Label::new(words.across(across), (at.x + 2.0, at.y)).sized(Label::SMALL));
        drawing.label(Label::new(words.length(up), (2.0, at.y - 1.4)).sized(Label::SMALL));
    }
    kept(drawing.fitted(1.5), words)
}

/// The outlines of all boards from above, one within the other: each finished at its lower face, and dashed the
/// larger of its faces where that is the upper one. The numbers stand at the end of the length.
pub fn board_outlines(basket: &Basket, layers: &[Layer], words: &Words) -> Drawing {
    let args = [("count", u32::try_from(layers.len()).unwrap_or(u32::MAX).into())];
    let description = words.with("drawing-boards-description", &args);
    let mut drawing = Drawing::new("boards", words.term("drawing-boards"), description);
    let around = Around::of(basket);
    let ring = |(height, radius): (Length, Length)| {
        let level = around.level(height.to_mm(), radius.to_mm());
        closed(level.ring(ROUND).into_iter().map(|[x, y]| Point::new(x, -y)))
    };
    for layer in layers {
        let (height, larger) = layer.larger();
        drawing.stroke(ring((height, larger)), Line::Outline);
        let at = Point::new(
            larger.to_mm() + around.over(height.to_mm()) - 1.0,
            -2.0 - 3.2 * f64::from(layer.number % 4),
        );
        drawing.label(Label::new(layer.number.to_string(), at).middle().sized(Label::SMALL));
    }
    for hole in layers.iter().filter_map(Layer::hole_level).take(1) {
        drawing.stroke(ring(hole), Line::Hidden);
    }
    drawing.line((-4.0, 0.0), (4.0, 0.0), Line::Edge);
    drawing.line((0.0, -4.0), (0.0, 4.0), Line::Edge);
    kept(drawing.fitted(1.5), words)
}
