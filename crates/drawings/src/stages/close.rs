//! Drawings of a part of the basket from close by.

use basket::Basket;
use basket::steps::Stage;
use glam::Vec3;
use kurbo::{Point, Rect};
use words::Words;

use crate::dimension::pointer;
use crate::drawing::{Drawing, Label, Line, Tone};
use crate::lines::{Look, Region, Style, View, draw, picture};
use crate::solid::{Detail, Part, PartKind, Solid, solid};
use crate::stages::{Plate, look, parts, rows};

/// Width and height of a drawing, in mm.
const SIZE: [f64; 2] = [70.0, 50.0];
/// Width of one of two drawings side by side, in mm.
const HALF: [f64; 2] = [34.0, 42.0];
/// Wraps shown at the start of the lashing, and left out at its end.
const WRAPS: u32 = 4;

/// What a close-up looks at.
struct Spot {
    middle: Vec3,
    /// Turn of the view from straight outside, in degrees.
    aside: f64,
    elevation: f64,
    /// Width on the picture, in mm of the basket.
    width: f64,
}

impl Spot {
    fn view(&self, size: [f64; 2]) -> View {
        let half = self.width / 2.0;
        View::from(parts::azimuth(self.middle) + self.aside, self.elevation).close_up(Region {
            middle: self.middle.as_dvec3().to_array(),
            half_width: half,
            half_height: half * size[1] / size[0],
        })
    }
}

fn framed(mut drawing: Drawing) -> Drawing {
    let frame = drawing.frame().inflate(-0.15, -0.15);
    drawing.stroke(frame, Line::Edge);
    drawing
}

/// The drawing, and how many rows it shows.
pub(super) fn close(basket: &Basket, plate: Plate) -> Option<(Drawing, u32)> {
    let rim = basket.rim.height.to_mm();
    let (solid, spot, look) = match plate {
        Plate::Scarf => scarf(basket)?,
        Plate::TipsTrimmed => {
            let solid = parts::only(stage(basket, Stage::Pinned), |part| part.kind != PartKind::Pin);
            let middle = at_rim(&solid, basket, away_from_ears(basket))?;
            (solid, Spot { middle, aside: 12.0, elevation: 32.0, width: rim * 6.0 }, look::close_staves as _)
        }
        Plate::EarWithRivet => {
            let solid = stage(basket, Stage::Handled);
            let rivet = parts::middle(parts::find(&solid, PartKind::Rivet, Some(1))?, |_| true)?;
            let middle = rivet - Vec3::Z * (rim * 0.5) as f32;
            (solid, Spot { middle, aside: -32.0, elevation: 14.0, width: rim * 7.0 }, look::close_rivet as _)
        }
        _ => lashing(basket, plate)?,
    };
    let style = Style { look, ..Style::print(SIZE[0], SIZE[1]) };
    Some((framed(draw(&solid, &spot.view(SIZE), &style).ok()?), rows(&solid)))
}

type Close = (Solid, Spot, fn(&Part) -> Option<Look>);

fn scarf(basket: &Basket) -> Option<Close> {
    let solid = stage(basket, Stage::RimClamped);
    let scarf = &basket.rim.outer.scarf;
    let [from, to] = [scarf.from_stave, scarf.to_stave].map(|stave| at_rim(&solid, basket, stave));
    let middle = (from? + to?) / 2.0;
    let width = scarf.lap.to_mm() * 1.45;
    Some((solid, Spot { middle, aside: 0.0, elevation: 38.0, width }, look::close_hoops))
}

/// The first wraps alone, or all with the seam between last and first in the middle.
fn lashing(basket: &Basket, plate: Plate) -> Option<Close> {
    let all = basket.lashing.wraps;
    let start = plate == Plate::LashingStart;
    let laid = |part: &Part| {
        let number = part.number.unwrap_or(0);
        part.kind != PartKind::Lashing || !start || number <= WRAPS
    };
    let solid = parts::only(stage(basket, Stage::Lashed), laid);
    let wrap = |number| {
        parts::find(&solid, PartKind::Lashing, Some(number)).and_then(|part| parts::middle(part, |_| true))
    };
    let middle = if start { wrap(2.min(all))? } else { (wrap(1)? + wrap(all)?) / 2.0 };
    let width = basket.rim.height.to_mm() * 6.0;
    Some((solid, Spot { middle, aside: 14.0, elevation: 24.0, width }, look::close_lashing))
}

/// A pin's head from outside, and beside it its clinched point from inside.
pub(super) fn pin(basket: &Basket, words: &Words) -> Option<(Drawing, u32)> {
    let solid = stage(basket, Stage::Pinned);
    let stave = *basket.pins.staves.get(basket.pins.staves.len() / 4)?;
    let middle = at_rim(&solid, basket, stave)?;
    let width = basket.rim.height.to_mm() * 2.8;
    let style = Style { look: look::close_pins, ..Style::print(HALF[0], HALF[1]) };
    let out = middle.with_z(0.0).normalize_or_zero();
    let outside = Spot { middle, aside: 16.0, elevation: 16.0, width }.view(HALF);
    let inside = Spot { middle, aside: 196.0, elevation: 20.0, width }.view(HALF);
    let rows = rows(&solid);
    let head = framed(draw(&solid, &outside, &style).ok()?);
    let clinch = framed(draw(&parts::beyond(solid, out), &inside, &style).ok()?);
    let mut both = Drawing::new("pin", "", "");
    for (drawing, id) in [(head, "plate-outside"), (clinch, "plate-inside")] {
        let left = if both.items().is_empty() { 0.0 } else { SIZE[0] - HALF[0] };
        let frame = drawing.frame();
        both.add(drawing, Point::new(left, 0.0) - frame.origin());
        let place = Point::new(left + frame.width() / 2.0, frame.height() + 2.6);
        both.label(Label::new(words.term(id), place).middle());
    }
    both.frame = Rect::new(0.0, 0.0, SIZE[0], HALF[1] + 5.0);
    Some((both, rows))
}

/// Spent and new strand with their names.
pub(super) fn join(basket: &Basket, words: &Words) -> Option<(Drawing, u32)> {
    let join = super::join::first(basket)?;
    let opened = super::join::opened(basket, &join)?;
    let middle = (opened.cut + opened.start) / 2.0;
    let width = f64::from(opened.cut.distance(opened.start)) * 1.7;
    let view = Spot { middle, aside: 0.0, elevation: 12.0, width }.view(SIZE);
    let style = Style { look: look::join, ..Style::print(SIZE[0], SIZE[1]) };
    let (drawing, placed) = picture(&opened.solid, &view, &style).ok()?;
    let mut drawing = framed(drawing);
    let frame = drawing.frame();
    for (place, id, share) in
        [(opened.start, "plate-new-strand", 0.25), (opened.cut, "plate-spent-strand", 0.75)]
    {
        let (at, _) = placed.find(place.as_dvec3().to_array())?;
        let label = Label::new(words.term(id), (frame.x0 + frame.width() * share, frame.y0 + 4.0)).middle();
        drawing.fill(label.bounds().inflate(1.0, 0.6), Tone::White);
        pointer(&mut drawing, at, (label.at.x, label.at.y + 2.0));
        drawing.label(label);
    }
    Some((drawing, join.row))
}

fn stage(basket: &Basket, stage: Stage) -> Solid {
    solid(basket, stage, Detail::Full)
}

/// The middle of a stave at the rim.
fn at_rim(solid: &Solid, basket: &Basket, stave: u32) -> Option<Vec3> {
    let rim = basket.mould.profile.at(basket.rim.along + basket.rim.height / 2.0).height.to_mm() as f32;
    let part = parts::find(solid, PartKind::Stave, Some(stave))?;
    let nearest = part.mesh.positions.iter().map(|at| (at[2] - rim).abs()).fold(f32::MAX, f32::min);
    let place = parts::middle(part, |at| (at.z - rim).abs() <= nearest + 0.5)?;
    Some(place.with_z(rim))
}

/// A stave midway between the ears.
fn away_from_ears(basket: &Basket) -> u32 {
    let first = basket.ears.as_ref().map_or(0.0, |ears| ears.each[0].turn);
    basket.staves.nearest(first + 0.25)
}
