//! The pieces of a mould from above.

use basket::Basket;
use basket::Length;
use basket::mould::{Axis, Part, Split};
use kurbo::Point;
use words::Words;

use crate::drawing::{Drawing, Label, Line, Tone, closed};
use crate::plain::kept;

/// Steps round the foot.
const ROUND: u32 = 360;
/// From one number to the next that stands under it.
const LINE: f64 = 3.6;

/// The parts of a mould from above at true size, each where it is largest, with its number, its pegs, and the foot
/// dashed. Parts that stand on each other lie one over the other.
pub fn mould_plan(basket: &Basket, split: &Split, words: &Words) -> Drawing {
    let count = u32::try_from(split.parts.len()).unwrap_or(u32::MAX);
    let description = words.with("drawing-mould-plan-description", &[("count", count.into())]);
    let mut drawing = Drawing::new("mould-plan", words.term("drawing-mould-plan"), description);
    let at = |[x, y]: [Length; 2]| Point::new(x.to_mm(), -y.to_mm());
    for part in &split.parts {
        drawing.shape(closed(part.plan.iter().copied().map(at)), Tone::White, Line::Outline);
    }
    let foot = (0..ROUND).map(|step| {
        let place = basket.body.form.at(Length::ZERO, f64::from(step) / f64::from(ROUND), Length::ZERO);
        let [x, y, _] = place.point;
        at([x, y])
    });
    drawing.stroke(closed(foot), Line::Hidden);
    let radius = basket.body.base().screw_hole.to_mm() / 2.0;
    drawing.stroke(kurbo::Circle::new(Point::ZERO, radius), Line::Outline);
    for peg in &split.pegs {
        let [x, y, _] = peg.at;
        let (middle, half) = (at([x, y]), split.peg.dowel.to_mm() / 2.0);
        let long = split.peg.length.to_mm() / 2.0;
        let lying = |x: f64, y: f64| kurbo::Rect::from_center_size(middle, (2.0 * x, 2.0 * y));
        match peg.axis {
            Axis::Length => drawing.stroke(lying(long, half), Line::Edge),
            Axis::Width => drawing.stroke(lying(half, long), Line::Edge),
            Axis::Height => drawing.stroke(kurbo::Circle::new(middle, half), Line::Edge),
        }
    }
    for (index, part) in split.parts.iter().enumerate() {
        let below = split.parts.iter().take(index).filter(|other| stands_on(part, other)).count();
        let middle = middle(part) + kurbo::Vec2::new(0.0, LINE * below as f64);
        drawing.label(Label::new((index + 1).to_string(), middle).middle());
    }
    kept(drawing.fitted(1.5), words)
}

/// Whether two parts lie one over the other.
fn stands_on(part: &Part, other: &Part) -> bool {
    [Axis::Length, Axis::Width].into_iter().all(|axis| part.block.side(axis) == other.block.side(axis))
}

/// Somewhat aside from the middle of a part, clear of the screw hole.
fn middle(part: &Part) -> Point {
    let reach = |axis: Axis| {
        let [from, to] = part.block.side(axis);
        (from + to).to_mm() / 2.0
    };
    let aside = if reach(Axis::Length).abs() < 10.0 && reach(Axis::Width).abs() < 10.0 { 10.0 } else { 0.0 };
    Point::new(reach(Axis::Length) + aside, aside - reach(Axis::Width))
}
