//! The side of the basket: left half from outside, right half cut through the middle, with
//! dimensions and two details.

use basket::message::Value;
use basket::{Basket, Length};
use kurbo::{Point, Rect, Vec2};
use words::Words;

use crate::around::Around;
use crate::bail::Front;
use crate::cut::Cut;
use crate::detail;
use crate::dimension::Dimension;
use crate::drawing::{Drawing, Label, Line, Tone};
use crate::elevation::Elevation;
use crate::plain::{Why, kept, left_out};
use crate::scale::{round_scale, scale_name};

/// Most width of the whole on paper, in mm: a column of the sheets.
const COLUMN: f64 = 170.0;
/// Most widths of the basket on paper, in mm; the first that leaves room for the details is taken.
const WIDTHS: [f64; 4] = [76.0, 66.0, 50.0, 30.0];
/// Most height of the basket on paper, in mm.
const HEIGHT: f64 = 84.0;

/// The true side of the basket, no larger than its place on the sheets, so that its lettering is printed as large
/// as it is drawn.
pub fn section(basket: &Basket, words: &Words) -> Drawing {
    let sizes = Sizes::of(basket);
    let [widest, narrower @ ..] = WIDTHS.map(|width| sizes.scale(width));
    let mut section = to_scale(basket, words, widest, &sizes);
    for scale in narrower {
        if section.width() > COLUMN {
            section = to_scale(basket, words, scale, &sizes);
        }
    }
    section
}

/// The section to a scale.
fn to_scale(basket: &Basket, words: &Words, scale: f64, sizes: &Sizes) -> Drawing {
    let args = [
        ("base", Value::Name(words.across(basket.body.base().across()))),
        ("rim", Value::Name(words.across(basket.across()))),
        ("height", Value::Name(words.both(Length::mm(sizes.rim_top - sizes.bottom)))),
        ("overall", Value::Name(words.both(Length::mm(sizes.top - sizes.bottom)))),
    ];
    let title = words.with("drawing-section", &[("scale", Value::Name(scale_name(scale, words)))]);
    let mut drawing = Drawing::new("section", title, words.with("drawing-section-description", &args));
    if basket.body.neck().closes() {
        return left_out(&drawing, words, &Why::Nothing);
    }
    halves(&mut drawing, basket, scale, sizes);
    dimensions(&mut drawing, basket, words, scale, sizes);

    let right = sizes.rim_radius * scale + 17.5;
    let rim = detail::rim(basket, words);
    let groove = detail::groove(basket, words);
    let low = -sizes.bottom * scale + 18.0;
    let high = low - groove.height() - rim.height() - 5.0;
    let upper = Vec2::new(right, high) - rim.frame().origin().to_vec2();
    let lower = Vec2::new(right, low - groove.height()) - groove.frame().origin().to_vec2();
    drawing.add(rim, upper);
    drawing.add(groove, lower);
    kept(drawing.upright(scale).fitted(1.5), words)
}

/// Heights above the mould's base and the radius of the rim, in mm of the basket.
struct Sizes {
    bottom: f64,
    rim_top: f64,
    top: f64,
    rim_radius: f64,
}

impl Sizes {
    fn of(basket: &Basket) -> Self {
        let rim_top =
            basket.body.form.profile.at(basket.body.rim().along + basket.body.rim().height).height.to_mm();
        Self {
            bottom: -basket.body.base().thickness.to_mm(),
            rim_top,
            top: Front::of(basket, 1.0).map_or(rim_top, |front| front.top()),
            rim_radius: basket.body.rim().outer_radius(basket.body.uprights()).to_mm()
                + Around::of_front(basket).over(rim_top),
        }
    }
    fn scale(&self, width: f64) -> f64 {
        let largest = (width / (2.0 * self.rim_radius)).min(HEIGHT / (self.top - self.bottom));
        round_scale(largest)
    }
}

fn halves(drawing: &mut Drawing, basket: &Basket, scale: f64, sizes: &Sizes) {
    let elevation = Elevation::of(basket, scale);
    let front = Front::of(basket, scale);
    let cut = Cut::of(basket, scale, Vec2::ZERO);
    elevation.body(drawing);
    if let Some(front) = &front {
        front.ears(drawing);
    }
    elevation.rim(drawing);
    let far = sizes.rim_radius * 2.0 * scale;
    let cover = Rect::new(0.0, -sizes.rim_top * scale - 20.0, far, -sizes.bottom * scale + 20.0);
    drawing.fill(cover, Tone::White);
    cut.behind(drawing);
    cut.mould(drawing);
    if let Some(front) = &front {
        front.ears(drawing);
    }
    cut.stave(drawing, cut.wall.foot(), basket.body.rim().along + basket.body.rim().height);
    cut.weavers(drawing, Length::ZERO, basket.body.rim().along);
    cut.disc(drawing, 0.0);
    cut.hole(drawing);
    cut.ear_tail(drawing);
    cut.rim(drawing);
    if let Some(front) = &front {
        front.folded(drawing);
        front.bail(drawing);
    }
    let axis = [sizes.top * scale + 4.0, sizes.bottom * scale - 4.0];
    drawing.line((0.0, -axis[0]), (0.0, -axis[1]), Line::Centre);
}

fn dimensions(drawing: &mut Drawing, basket: &Basket, words: &Words, scale: f64, sizes: &Sizes) {
    let place = |x: f64, height: f64| Point::new(x * scale, -height * scale);
    let both = |mm: f64| words.both(Length::mm(mm));
    let base = Around::of_front(basket).across(basket.body.base().across()).to_mm() / 2.0;
    let bottom = -sizes.bottom * scale;
    let across = |radius: f64, height: f64| [place(-radius, height), place(radius, height)];
    let levels = [
        Dimension::level(across(base, sizes.bottom), bottom + 8.0, both(2.0 * base)),
        Dimension::level(
            across(sizes.rim_radius, sizes.rim_top - basket.body.rim().height.to_mm() / 2.0),
            bottom + 15.0,
            both(2.0 * sizes.rim_radius),
        ),
    ];
    let left = -sizes.rim_radius * scale;
    let right = -left;
    let weaving = basket.body.weave.top_height.to_mm();
    let wall = basket.body.form.profile.at(basket.body.weave.top_along).radius.to_mm()
        + Around::of_front(basket).over(weaving);
    let uprights = [
        Dimension::upright([place(-base, 0.0), place(-wall, weaving)], left - 4.5, both(weaving)),
        Dimension::upright(
            [place(base, sizes.bottom), place(sizes.rim_radius, sizes.rim_top)],
            right + 6.5,
            both(sizes.rim_top - sizes.bottom),
        ),
        Dimension::upright(
            [place(base, sizes.bottom), place(0.0, sizes.top)],
            right + 13.0,
            both(sizes.top - sizes.bottom),
        ),
    ];
    let overall = basket.in_rim().is_some();
    for dimension in levels.iter().chain(uprights.iter().take(if overall { 3 } else { 2 })) {
        dimension.draw(drawing);
    }
    let mut notes = words.with("drawing-section-scale", &[("scale", Value::Name(scale_name(scale, words)))]);
    if basket.swing().is_some() {
        notes = format!("{notes}; {}", words.term("drawing-handle-down"));
    }
    drawing.label(Label::new(notes, (left, bottom + 20.0)).sized(Label::SMALL));
}
