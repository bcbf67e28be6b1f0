//! The parts of the finished basket drawn apart, with their names.

use basket::piece::{FloorPart, Of, Piece};
use basket::steps::Stage;
use glam::Vec3;
use kurbo::Point;
use std::borrow::Cow;
use words::Words;

use crate::dimension::pointer;
use crate::drawing::{Drawing, Label, Line};
use crate::lines::{Placed, Style, View};
use crate::solid::{LidPose, Part};
use crate::stages::look;
use crate::stages::parts::{self, Parts, rows};
use crate::stages::studio::Studio;
use crate::text::spread;

/// Width and height of the parts, in mm: as large as the sheets print them beside another drawing, so that the
/// names are printed as large as they are drawn.
const SIZE: [f64; 2] = [60.0, 80.0];
/// Pixels of the raster in a mm of paper.
const DENSITY: f64 = 15.0;
/// Room between parts and their names, in mm.
const ASIDE: f64 = 6.0;
/// Least distance between names, in mm.
const ROOM: f64 = 5.0;
/// Places within this much of each other lie equally far to the right, in mm.
const AS_FAR: f64 = 0.5;
/// How far pins are drawn out of the hoop, in mm of the basket.
const DRAWN_OUT: f32 = 14.0;
/// How far above all else a lid is drawn, as a share of the width of the basket.
const LID: f32 = 0.12;

/// The layers from the top down: their parts, how far each is raised as a share of the width of the
/// basket, and their names.
const LAYERS: [(&[Piece], f32, &str); 10] = [
    (&[Piece::Handle, Piece::Knobs], 1.06, "plate-part-handle"),
    (&[Piece::Rivets, Piece::Washers], 1.06, "plate-part-rivet"),
    (&[Piece::Lashing], 0.88, "plate-part-lashing"),
    (&[Piece::Fillers], 0.72, "plate-part-filler"),
    (&[Piece::OuterHoop], 0.54, "plate-part-outer-hoop"),
    (&[Piece::Pins], 0.54, "plate-part-pin"),
    (&[Piece::InnerHoop], 0.34, "plate-part-inner-hoop"),
    (&[Piece::Ears], 0.16, "plate-part-ear"),
    (&[Piece::Weaving, Piece::Uprights], 0.0, "plate-part-wall"),
    (&[Piece::Floor(FloorPart::Disc), Piece::Floor(FloorPart::Plug)], -0.26, "plate-part-base"),
];

/// The drawing, and how many rows it shows.
pub(super) fn exploded(studio: &Studio<'_>) -> Option<(Drawing, u32)> {
    let basket = studio.basket;
    let mut parts = parts::shared(studio.far.at(Stage::Finished));
    let width = 2.0 * basket.body.rim().outer_radius(basket.body.uprights()).to_mm() as f32;
    for part in &mut parts {
        let share =
            LAYERS.iter().find(|(kinds, ..)| kinds.contains(&part.piece.sort())).map_or(0.0, |layer| layer.1);
        let by = if part.piece.sort() == Piece::Floor(FloorPart::Plug) { share - 0.14 } else { share };
        let aside = if part.piece.sort() == Piece::Pins { drawn_out(part) } else { Vec3::ZERO };
        let by = Vec3::Z * width * by + aside;
        if by != Vec3::ZERO {
            parts::moved(part.to_mut(), by);
        }
    }
    let [_, top] = parts::heights(&parts);
    let mut lid = parts::shared(studio.far.lid(LidPose::Closed));
    let [low, _] = parts::heights(&lid);
    for part in &mut lid {
        parts::moved(part.to_mut(), Vec3::Z * (top - low + width * LID));
    }
    parts.extend(lid);
    let style =
        Style { look: &look::whole, density: DENSITY, outline: Line::Edge, ..Style::print(SIZE[0], SIZE[1]) };
    let (mut drawing, placed) = parts::picture(&parts, &View::from(24.0, 26.0), &style).ok()?;
    name(&mut drawing, &parts, &placed, studio.words);
    Some((drawing.fitted(1.0), rows(&parts)))
}

fn drawn_out(pin: &Part) -> Vec3 {
    let middle = parts::middle(pin, |_| true).unwrap_or(Vec3::X);
    middle.with_z(0.0).normalize_or_zero() * DRAWN_OUT
}

/// Names beside the parts, on the right, from the top down.
fn name(drawing: &mut Drawing, parts: &Parts<'_>, placed: &Placed, words: &Words) {
    let right = drawing.frame().x1 + ASIDE;
    let mut names: Vec<(Point, &str)> =
        LAYERS.iter().filter_map(|(kinds, _, id)| Some((rightmost(parts, placed, kinds)?, *id))).collect();
    let lid = parts.iter().filter(|part| part.of == Of::Lid);
    names.extend(furthest(lid, placed).map(|at| (at, "plate-part-lid")));
    names.sort_by(|a, b| a.0.y.total_cmp(&b.0.y));
    let heights = spread(&names.iter().map(|(at, _)| at.y).collect::<Vec<_>>(), ROOM);
    for ((at, id), height) in names.into_iter().zip(heights) {
        pointer(drawing, at, (right - 1.0, height));
        drawing.label(Label::new(words.term(id), (right, height)));
    }
}

/// The place furthest to the right at which parts are seen; the highest of those that lie as far out.
fn rightmost(parts: &Parts<'_>, placed: &Placed, kinds: &[Piece]) -> Option<Point> {
    let is_own = |part: &&Cow<'_, Part>| part.of == Of::Body && kinds.contains(&part.piece.sort());
    furthest(parts.iter().filter(is_own), placed)
}

fn furthest<'p>(own: impl Iterator<Item = &'p Cow<'p, Part>>, placed: &Placed) -> Option<Point> {
    let corners = own.flat_map(|part| &part.mesh.positions);
    let seen = corners.filter_map(|at| placed.find(at.map(f64::from))).filter(|(_, seen)| *seen);
    let places: Vec<Point> = seen.map(|(at, _)| at).collect();
    let most = places.iter().map(|at| at.x).reduce(f64::max)?;
    places.into_iter().filter(|at| at.x > most - AS_FAR).min_by(|a, b| a.y.total_cmp(&b.y))
}
