//! The finished basket from above, with dimensions.

use basket::Basket;
use basket::form::Across;
use basket::message::Value;
use basket::pattern::{Direction, EarAxis};
use basket::steps::Stage;
use kurbo::{Circle, Point, Vec2};
use words::Words;

use crate::around::Around;
use crate::dimension::Dimension;
use crate::drawing::{Drawing, Label, Line, closed};
use crate::lines::{Region, Style, View, margin, picture_of};
use crate::plain::{Why, kept, left_out};
use crate::scale::{round_scale, scale_name};
use crate::sense::sense;
use crate::solid::{Detail, Part, PartCache};
use crate::stages::look;

/// Most width of the basket on paper, in mm: beside another drawing its figures are printed as large as drawn.
const WIDTH: f64 = 66.0;
/// Pixels of the raster in a mm of paper.
const DENSITY: f64 = 14.0;
/// Steps round a base that is not round.
const ROUND: u32 = 360;
/// From the rim to the numbers of staves, in mm.
const NUMBERS: f64 = 4.0;
/// From the rim to the first dimension, and from one to the next, in mm.
const DIMENSIONS: [f64; 2] = [12.0, 7.0];

/// The finished basket from above, its ears at the right and left and its handle up, to scale.
pub fn plan(basket: &Basket, words: &Words) -> Drawing {
    drawn(basket, words).map_or_else(
        || {
            let nothing = Drawing::new("plan", words.term("drawing-plan-left-out"), "");
            left_out(&nothing, words, &Why::Nothing)
        },
        |drawing| kept(drawing, words),
    )
}

/// None where nothing of it can be drawn.
fn drawn(basket: &Basket, words: &Words) -> Option<Drawing> {
    if basket.body.neck().closes() {
        return None;
    }
    let cache = PartCache::of(basket, Detail::Page);
    let parts = cache.at(Stage::Finished);
    let reach = parts.iter().map(|part| radius(part)).fold(0.0, f64::max);
    let scale = round_scale(WIDTH / (2.0 * reach));
    let side = 2.0 * (reach * scale + margin(DENSITY));
    let style = Style { look: &look::whole, density: DENSITY, ..Style::print(side, side) };
    let region = Region { middle: [0.0; 3], half_width: reach, half_height: reach };
    let (picture, placed) = picture_of(parts, &view(basket).close_up(region), &style).ok()?;
    let (middle, _) = placed.find([0.0; 3])?;
    let around = Around::of(basket);
    let rim = basket.body.rim().outer_radius(basket.body.uprights()).to_mm();
    let name = |across: Across| Value::Name(words.across(across));
    let args = [
        ("scale", Value::Name(scale_name(scale, words))),
        ("rim", name(basket.across())),
        ("base", name(basket.body.base().across())),
        ("count", basket.body.uprights().count.into()),
    ];
    let on_sides = basket.in_rim().is_some_and(|ears| ears.axis == Some(EarAxis::Short));
    let mut drawing = Drawing {
        name: "plan".to_owned(),
        title: words.with("drawing-plan", &args),
        description: words.with(
            match (basket.body.weave.direction, on_sides) {
                (Direction::Right, false) => "drawing-plan-description",
                (Direction::Left, false) => "drawing-plan-description-left",
                (Direction::Right, true) => "drawing-plan-description-sides",
                (Direction::Left, true) => "drawing-plan-description-sides-left",
            },
            &args,
        ),
        ..picture
    };
    let base = basket.body.base().diameter.to_mm() / 2.0;
    if around.is_round() {
        drawing.stroke(Circle::new(middle, base * scale), Line::Hidden);
    } else {
        let place = |[x, y]: [f64; 2]| middle + Vec2::new(x, sense(basket) * y) * scale;
        drawing.stroke(closed(around.at_foot(base).ring(ROUND).into_iter().map(place)), Line::Hidden);
    }
    let across = basket.across();
    let halves = [across.length, across.width].map(|across| across.to_mm() / 2.0);
    for (along, half) in [Vec2::new(1.0, 0.0), Vec2::new(0.0, 1.0)].into_iter().zip(halves) {
        let half = along * (half * scale + 2.0);
        drawing.line(middle - half, middle + half, Line::Centre);
    }
    numbers(&mut drawing, basket, middle, [rim * scale + NUMBERS, scale]);
    let below = middle.y + halves[1] * scale;
    for (across, step) in [(basket.body.base().across(), 0.0), (across, 1.0)] {
        let half = across.length.to_mm() / 2.0 * scale;
        let places = [-half, half].map(|side| Point::new(middle.x + side, middle.y));
        let y = below + DIMENSIONS[0] + DIMENSIONS[1] * step;
        Dimension::level(places, y, words.both(across.length)).draw(&mut drawing);
    }
    Some(drawing.fitted(1.5))
}

/// What lies at the right, as a share of the way round: the first ear, or stave 1; of what is not round, an end.
fn at_right(basket: &Basket) -> f64 {
    let ears = basket.in_rim().filter(|_| Around::of(basket).is_round());
    ears.map_or(0.0, |ears| ears.each[0].turn)
}

/// From above.
fn view(basket: &Basket) -> View {
    let first = at_right(basket);
    View::from(-first * 360.0, 90.0)
}

/// How far a part reaches from the axis, in mm.
fn radius(part: &Part) -> f64 {
    let corners = part.mesh.positions.iter().filter(|at| at.iter().all(|figure| figure.is_finite()));
    corners.map(|at| f64::from(at[0].hypot(at[1]))).fold(0.0, f64::max)
}

/// The numbers of the staves that stand at the quarters, on the level of this radius on paper.
fn numbers(drawing: &mut Drawing, basket: &Basket, middle: Point, [radius, scale]: [f64; 2]) {
    let around = Around::of(basket);
    let staves = basket.body.staves();
    let first = at_right(basket);
    for stave in staves.uprights.quarters() {
        // Numbers rise clockwise seen from above where the weaver runs to the right.
        let turn = sense(basket) * (staves.uprights.turn(stave) - first);
        let at = if around.is_round() {
            let (sin, cos) = (turn * std::f64::consts::TAU).sin_cos();
            Vec2::new(cos, sin) * radius
        } else {
            let rim = basket.body.rim();
            let at = staves.uprights.turn_at(stave, rim.along + rim.height / 2.0);
            let level = around.level(basket.body.rim_height().to_mm(), radius / scale);
            let [x, y] = level.place(at - first);
            Vec2::new(x, sense(basket) * y) * scale
        };
        let label = Label::new(stave.to_string(), middle + at).middle();
        drawing.label(label.sized(Label::SMALL).bold());
    }
}
