//! Drawings of a part of the basket from close by.

use basket::Basket;
use basket::steps::Stage;
use glam::Vec3;
use kurbo::{Circle, Point, Rect};
use words::Words;

use crate::drawing::{Drawing, Label, Line, Tone};
use crate::lines::{Look, Region, Style, View, draw, picture};
use crate::solid::{Detail, Part, PartKind, Solid, solid};
use crate::stages::{Plate, look, parts, rows};

/// Width and height of a drawing, in mm.
const SIZE: [f64; 2] = [70.0, 50.0];
/// The same for a long piece of the rim.
const LONG: [f64; 2] = [70.0, 34.0];
/// Width of one of two drawings side by side, in mm.
const HALF: [f64; 2] = [34.0, 42.0];
/// Room for half a label, in mm.
const LABEL: f64 = 12.0;
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

    /// The same as it stands on the mould: what is seen is turned over about the y axis.
    fn view_base_up(&self, size: [f64; 2]) -> View {
        let over = Vec3::new(-self.middle.x, self.middle.y, -self.middle.z);
        let azimuth = parts::azimuth(over) + self.aside;
        View { azimuth, ..self.view(size).base_up() }
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
            let middle = at_rim(&solid, basket, clear_of_all(basket, 1..=basket.staves.count)?)?;
            (
                near_side(solid, middle),
                Spot { middle, aside: 12.0, elevation: 32.0, width: rim * 6.0 },
                look::close_staves as _,
            )
        }
        Plate::EarWithRivet => {
            let solid = stage(basket, Stage::Handled);
            let rivet = parts::middle(parts::find(&solid, PartKind::Rivet, Some(1))?, |_| true)?;
            let middle = rivet - Vec3::Z * (rim * 0.5) as f32;
            (solid, Spot { middle, aside: -34.0, elevation: 16.0, width: rim * 7.0 }, look::close_rivet as _)
        }
        _ => lashing(basket, plate)?,
    };
    let size = if plate == Plate::Scarf { LONG } else { SIZE };
    let style = Style { look, ..Style::print(size[0], size[1]) };
    let rows = rows(&solid);
    Some((framed(draw(&solid, &spot.view(size), &style).ok()?), rows))
}

type Close = (Solid, Spot, fn(&Part) -> Look);

fn scarf(basket: &Basket) -> Option<Close> {
    let solid = stage(basket, Stage::RimClamped);
    let scarf = &basket.rim.outer.scarf;
    let [from, to] = [scarf.from_stave, scarf.to_stave].map(|stave| at_rim(&solid, basket, stave));
    let middle = (from? + to?) / 2.0;
    let width = scarf.lap.to_mm() * 1.45;
    let spot = Spot { middle, aside: 0.0, elevation: 30.0, width };
    Some((near_side(solid, middle), spot, look::scarf))
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
    let spot = Spot { middle, aside: 14.0, elevation: 24.0, width };
    Some((near_side(solid, middle), spot, look::close_lashing))
}

/// A pin's head from outside, and beside it its clinched point from inside.
pub(super) fn pin(basket: &Basket, words: &Words) -> Option<(Drawing, u32)> {
    let solid = stage(basket, Stage::Pinned);
    let stave = clear_of_all(basket, basket.pins.staves.iter().copied())?;
    let middle = at_rim(&solid, basket, stave)?;
    let width = basket.rim.height.to_mm() * 2.8;
    let style = Style { look: look::close_pins, ..Style::print(HALF[0], HALF[1]) };
    let outside = Spot { middle, aside: 16.0, elevation: 16.0, width }.view(HALF);
    let inside = Spot { middle, aside: 196.0, elevation: 20.0, width }.view(HALF);
    let rows = rows(&solid);
    let near = near_side(solid, middle);
    let head = framed(draw(&near, &outside, &style).ok()?);
    let clinch = framed(draw(&near, &inside, &style).ok()?);
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
    let view = Spot { middle, aside: 0.0, elevation: -12.0, width }.view_base_up(SIZE);
    let style = Style { look: look::join, ..Style::print(SIZE[0], SIZE[1]) };
    let (drawing, placed) = picture(&opened.solid, &view, &style).ok()?;
    let mut drawing = framed(drawing);
    let frame = drawing.frame();
    for stave in join.start_behind..=join.cut_over {
        let at = parts::find(&opened.solid, PartKind::Stave, Some(stave))
            .and_then(|part| parts::middle_at(part, middle.z + width as f32 * 0.16))
            .and_then(|at| placed.find(at.as_dvec3().to_array()));
        if let Some((at, _)) = at {
            drawing.label(Label::new(stave.to_string(), at).middle().bold());
        }
    }
    for (place, id) in [(opened.start, "plate-new-strand"), (opened.cut, "plate-spent-strand")] {
        let (at, _) = placed.find(place.as_dvec3().to_array())?;
        let x = at.x.clamp(frame.x0 + LABEL, frame.x1 - LABEL);
        let label = Label::new(words.term(id), (x, frame.y0 + 4.0)).middle();
        let box_of = label.bounds().inflate(1.2, 0.8);
        drawing.line((label.at.x, box_of.y1), at, Line::Edge);
        drawing.fill(Circle::new(at, 0.5), Tone::Black);
        drawing.shape(box_of, Tone::White, Line::Fine);
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
    parts::middle_at(parts::find(solid, PartKind::Stave, Some(stave))?, rim)
}

/// Without the far side of the basket, which would only confuse.
fn near_side(solid: Solid, middle: Vec3) -> Solid {
    parts::beyond(solid, middle.with_z(0.0))
}

/// The stave furthest from ears, scarfs and the first wrap.
fn clear_of_all(basket: &Basket, staves: impl Iterator<Item = u32>) -> Option<u32> {
    let rim = &basket.rim;
    let ears = basket.ears.iter().flat_map(|ears| ears.each.iter().map(|ear| ear.turn));
    let busy: Vec<f64> = ears.chain([rim.outer.scarf.turn, rim.inner.scarf.turn, 0.0]).collect();
    let clear = |stave: &u32| {
        let turn = basket.staves.turn(*stave);
        let apart = |other: &f64| (turn - other + 0.5).rem_euclid(1.0) - 0.5;
        busy.iter().map(|other| apart(other).abs()).fold(1.0, f64::min)
    };
    staves.max_by(|a, b| clear(a).total_cmp(&clear(b)))
}
