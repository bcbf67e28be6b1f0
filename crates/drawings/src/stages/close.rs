//! Drawings of a part of the basket from close by.

use std::borrow::Cow;

use basket::steps::Stage;
use basket::{Basket, Piece};
use glam::Vec3;
use kurbo::{Circle, Point, Rect};

use crate::drawing::{Drawing, Label, Line, Tone};
use crate::lines::{PartStyle, Region, Style, View};
use crate::solid::Part;
use crate::stages::look;
use crate::stages::parts::{self, Parts, rows};
use crate::stages::plate::Plate;
use crate::stages::studio::Studio;

/// Width and height of a drawing, in mm.
const SIZE: [f64; 2] = [70.0, 50.0];
/// The same for a long piece of the rim.
const LONG: [f64; 2] = [70.0, 34.0];
/// Width of one of two drawings side by side, in mm.
const HALF: [f64; 2] = [34.0, 42.0];
/// Pixels of the raster in a mm of paper.
const DENSITY: f64 = 9.0;
/// How far beyond what it looks at a close-up shows things, as a share of its width.
const REACH: f64 = 1.3;
/// Room for half a label, in mm.
const LABEL: f64 = 12.0;
/// Wraps shown at the start of the lashing, and left out at its end.
const WRAPS: u32 = 4;

/// What a close-up looks at.
struct CloseUp {
    middle: Vec3,
    /// Turn of the view from straight outside, in degrees.
    aside: f64,
    elevation: f64,
    /// Width on the picture, in mm of the basket.
    width: f64,
}

impl CloseUp {
    fn view(&self, size: [f64; 2]) -> View {
        let half = self.width / 2.0;
        View::from(parts::azimuth(self.middle) + self.aside, self.elevation).close_up(Region {
            middle: self.middle.as_dvec3().to_array(),
            half_width: half,
            half_height: half * size[1] / size[0],
        })
    }

    /// What is near enough to be seen.
    fn near<'a>(&self, parts: Parts<'a>) -> Parts<'a> {
        parts::around(parts, self.middle, (self.width * REACH) as f32)
    }
}

/// Lines and light tones for a drawing of a size.
fn style(look: &dyn Fn(&Part) -> PartStyle, size: [f64; 2]) -> Style<'_> {
    Style { look, density: DENSITY, ..Style::print(size[0], size[1]) }
}

fn framed(mut drawing: Drawing) -> Drawing {
    let frame = drawing.frame().inflate(-0.15, -0.15);
    drawing.stroke(frame, Line::Edge);
    drawing
}

/// The drawing, and how many rows the basket has at that stage.
pub(super) fn close(studio: &Studio<'_>, plate: Plate) -> Option<(Drawing, u32)> {
    let basket = studio.basket;
    let rim = basket.body.rim().height.to_mm();
    let (parts, spot, look) = match plate {
        Plate::Scarf => scarf(studio)?,
        Plate::TipsTrimmed => {
            let mut parts = at(studio, Stage::Pinned);
            parts.retain(|part| part.piece.sort() != Piece::Pins);
            let middle = at_rim(&parts, basket, clear_of_all(basket, 1..=basket.body.uprights().count)?)?;
            (
                parts,
                CloseUp { middle, aside: 12.0, elevation: 32.0, width: rim * 6.0 },
                look::close_staves as _,
            )
        }
        Plate::EarWithRivet => {
            let parts = at(studio, Stage::Handled);
            let rivet = parts::middle(parts::find(&parts, Piece::Rivet(1))?, |_| true)?;
            let middle = rivet - Vec3::Z * (rim * 0.5) as f32;
            (
                parts,
                CloseUp { middle, aside: -34.0, elevation: 16.0, width: rim * 7.0 },
                look::close_rivet as _,
            )
        }
        _ => lashing_end(studio)?,
    };
    let size = if plate == Plate::Scarf { LONG } else { SIZE };
    let rows = rows(&parts);
    let (drawing, _) = parts::picture(&spot.near(parts), &spot.view(size), &style(&look, size)).ok()?;
    Some((framed(drawing), rows))
}

type Close<'a> = (Parts<'a>, CloseUp, fn(&Part) -> PartStyle);

fn scarf<'a>(studio: &'a Studio<'_>) -> Option<Close<'a>> {
    let basket = studio.basket;
    let mut parts = at(studio, Stage::RimClamped);
    parts.retain(|part| part.piece.sort() != Piece::Clamps);
    let scarf = &basket.body.rim().outer.scarf;
    let [from, to] = [scarf.from_stave, scarf.to_stave].map(|stave| at_rim(&parts, basket, stave));
    let middle = (from? + to?) / 2.0;
    let width = scarf.lap.to_mm() * 1.45;
    Some((parts, CloseUp { middle, aside: 0.0, elevation: 30.0, width }, look::scarf))
}

/// The last wrap beside the first, with the tail that is still to be cut.
fn lashing_end<'a>(studio: &'a Studio<'_>) -> Option<Close<'a>> {
    let basket = studio.basket;
    let mut parts = at(studio, Stage::Lashed);
    let middle = (wrap(&parts, 1)? + wrap(&parts, basket.body.lashing()?.wraps)?) / 2.0;
    parts.extend(tail(studio, Piece::Tail(2)));
    let width = basket.body.rim().height.to_mm() * 6.0;
    Some((parts, CloseUp { middle, aside: 14.0, elevation: 24.0, width }, look::close_lashing))
}

fn wrap(parts: &Parts<'_>, number: u32) -> Option<Vec3> {
    parts::middle(parts::find(parts, Piece::Wrap(number))?, |_| true)
}

fn tail<'a>(studio: &Studio<'_>, tail: Piece) -> Option<Cow<'a, Part>> {
    studio.near.tails().into_iter().find(|part| part.piece == tail).map(Cow::Owned)
}

/// The first wraps alone from outside, and beside them the tail from inside.
pub(super) fn lashing_start(studio: &Studio<'_>) -> Option<(Drawing, u32)> {
    let mut parts = at(studio, Stage::Lashed);
    parts.retain(|part| !matches!(part.piece, Piece::Wrap(number) if number > WRAPS));
    let middle = wrap(&parts, 2.min(studio.basket.body.lashing()?.wraps))?;
    parts.extend(tail(studio, Piece::Tail(1)));
    let width = studio.basket.body.rim().height.to_mm() * 3.8;
    let spot = CloseUp { middle, aside: 14.0, elevation: 20.0, width };
    both_sides(studio, parts, &spot, look::close_lashing)
}

/// A pin's head from outside, and beside it its clinched point from inside.
pub(super) fn pin(studio: &Studio<'_>) -> Option<(Drawing, u32)> {
    let basket = studio.basket;
    let parts = at(studio, Stage::Pinned);
    let stave = clear_of_all(basket, basket.body.pins().others.staves.iter().copied())?;
    let middle = at_rim(&parts, basket, stave)?;
    let width = basket.body.rim().height.to_mm() * 2.8;
    both_sides(studio, parts, &CloseUp { middle, aside: 16.0, elevation: 16.0, width }, look::close_pins)
}

/// A place from outside and from inside, side by side.
fn both_sides(
    studio: &Studio<'_>,
    parts: Parts<'_>,
    spot: &CloseUp,
    look: fn(&Part) -> PartStyle,
) -> Option<(Drawing, u32)> {
    let rows = rows(&parts);
    let near = spot.near(parts);
    let style = style(&look, HALF);
    let drawn = |view: &View| parts::picture(&near, view, &style).ok().map(|(drawing, _)| framed(drawing));
    let outside = drawn(&spot.view(HALF))?;
    let inside = drawn(&CloseUp { aside: spot.aside + 180.0, ..*spot }.view(HALF))?;
    let mut both = Drawing::new("both-sides", "", "");
    for (drawing, id) in [(outside, "plate-outside"), (inside, "plate-inside")] {
        let left = if both.items().is_empty() { 0.0 } else { SIZE[0] - HALF[0] };
        let frame = drawing.frame();
        both.add(drawing, Point::new(left, 0.0) - frame.origin());
        let place = Point::new(left + frame.width() / 2.0, frame.height() + 2.6);
        if studio.lettered {
            both.label(Label::new(studio.words.term(id), place).middle());
        }
    }
    both.frame = Rect::new(0.0, 0.0, SIZE[0], HALF[1] + 5.0);
    Some((both, rows))
}

/// Spent and new strand with their names.
pub(super) fn join(studio: &Studio<'_>) -> Option<(Drawing, u32)> {
    let join = super::join::first(studio.basket)?;
    let opened = super::join::opened(studio, &join)?;
    let middle = (opened.cut + opened.start) / 2.0;
    let width = f64::from(opened.cut.distance(opened.start)) * 1.7;
    let spot = CloseUp { middle, aside: 0.0, elevation: 12.0, width };
    let parts = spot.near(opened.parts);
    let (drawing, placed) = parts::picture(
        &parts,
        &spot.view(SIZE),
        &style(&|part| look::join(part, opened.spent, opened.new), SIZE),
    )
    .ok()?;
    let mut drawing = framed(drawing);
    if !studio.lettered {
        return Some((drawing, join.row));
    }
    let frame = drawing.frame();
    for stave in join.start_behind..=join.cut_over {
        let at = parts::find(&parts, Piece::Upright(stave))
            .and_then(|part| parts::middle_at(part, middle.z + width as f32 * 0.16))
            .and_then(|at| placed.find(at.as_dvec3().to_array()));
        if let Some((at, _)) = at {
            drawing.label(Label::new(stave.to_string(), at).middle().bold());
        }
    }
    for (place, id) in [(opened.start, "plate-new-strand"), (opened.cut, "plate-spent-strand")] {
        let (at, _) = placed.find(place.as_dvec3().to_array())?;
        let x = at.x.clamp(frame.x0 + LABEL, frame.x1 - LABEL);
        let label = Label::new(studio.words.term(id), (x, frame.y1 - 4.0)).middle();
        let box_of = label.bounds().inflate(1.2, 0.8);
        drawing.line((label.at.x, box_of.y0), at, Line::Edge);
        drawing.fill(Circle::new(at, 0.5), Tone::Black);
        drawing.shape(box_of, Tone::White, Line::Fine);
        drawing.label(label);
    }
    Some((drawing, join.row))
}

fn at<'a>(studio: &'a Studio<'_>, stage: Stage) -> Parts<'a> {
    parts::shared(studio.near.at(stage))
}

/// The middle of a stave at the rim.
fn at_rim(parts: &Parts<'_>, basket: &Basket, stave: u32) -> Option<Vec3> {
    let rim =
        basket.body.form.profile.at(basket.body.rim().along + basket.body.rim().height / 2.0).height.to_mm()
            as f32;
    parts::middle_at(parts::find(parts, Piece::Upright(stave))?, rim)
}

/// The stave furthest from ears, scarfs and the first wrap.
fn clear_of_all(basket: &Basket, staves: impl Iterator<Item = u32>) -> Option<u32> {
    let rim = basket.body.rim();
    let ears = basket.ears.iter().flat_map(|ears| ears.each.iter().map(|ear| ear.turn));
    let busy: Vec<f64> = ears.chain([rim.outer.scarf.turn, rim.inner.scarf.turn, 0.0]).collect();
    let clear = |stave: &u32| {
        let turn = basket.body.uprights().turn(*stave);
        let apart = |other: &f64| (turn - other + 0.5).rem_euclid(1.0) - 0.5;
        busy.iter().map(|other| apart(other).abs()).fold(1.0, f64::min)
    };
    staves.max_by(|a, b| clear(a).total_cmp(&clear(b)))
}
