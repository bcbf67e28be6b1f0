//! The rim: both hoops with their scarfs, and the filler.

use basket::Basket;
use basket::rim::Hoop;

use super::mesh::{Ends, direction};
use super::section::{Section, section};
use super::surface::Surface;
use super::{Detail, Mesh, Part, PartKind, colour, edges, segments};

/// Share of the lap at which the thin end of a scarf is cut off.
const BLUNT: f32 = 0.02;
/// Room at each end of a piece of filler, in mm, for an ear is flat and the filler curved.
const ROOM: f32 = 0.12;

/// The hoop outside the staves.
pub(super) fn outer(basket: &Basket, surface: &Surface, detail: Detail) -> Part {
    let flat = basket.body.uprights().thickness.to_mm() as f32;
    hoop(basket, surface, &basket.body.rim().outer, (flat, 1.0), detail, ("outer hoop", PartKind::OuterHoop))
}

/// The hoop inside the staves.
pub(super) fn inner(basket: &Basket, surface: &Surface, detail: Detail) -> Part {
    hoop(basket, surface, &basket.body.rim().inner, (0.0, -1.0), detail, ("inner hoop", PartKind::InnerHoop))
}

/// A hoop's section as (up from its lower edge, out from its flat side), counter-clockwise.
pub(super) fn hoop_section(hoop: &Hoop, height: f32, detail: Detail) -> Section {
    let width = hoop.stock.width.to_mm() as f32;
    section(&hoop.stock, width, detail).iter().map(|[across, out]| [across + height / 2.0, *out]).collect()
}

/// A hoop whose flat lies `flat` out from the staves' inner face and whose round side looks out or in.
///
/// It begins under the lap as a thin wedge on the staves, runs once round, and ends as a thin wedge
/// over its own beginning, so that the pair keeps one thickness.
fn hoop(
    basket: &Basket,
    surface: &Surface,
    hoop: &Hoop,
    (flat, side): (f32, f32),
    detail: Detail,
    (name, kind): (&str, PartKind),
) -> Part {
    let rim = basket.body.rim();
    let section = hoop_section(hoop, rim.height.to_mm() as f32, detail);
    let thick = section.iter().fold(0.0_f32, |thick, at| thick.max(at[1]));
    let low = rim.along.to_mm() as f32;
    let girth = std::f32::consts::TAU * (rim.radius().to_mm() as f32).max(1.0);
    let lap = (hoop.scarf.lap.to_mm() as f32 / girth).clamp(0.001, 0.45);
    let start = hoop.scarf.turn as f32 - lap / 2.0;
    let per = section.len();
    let mut positions = Vec::new();
    for turn in stations(start, lap, steps(basket, detail)) {
        let angle = direction(turn * std::f32::consts::TAU);
        let under = (turn - start) / lap;
        let over = (turn - start - 1.0) / lap;
        let wedge = |at: &[f32; 2]| {
            if under < 1.0 {
                below(&section, *at, thick * under)
            } else if over > 0.0 {
                above(&section, *at, thick * over)
            } else {
                *at
            }
        };
        let ring: Vec<[f32; 3]> = section
            .iter()
            .map(wedge)
            .map(|[up, out]| surface.at(low + up).point(flat + side * out, angle))
            .collect();
        if side > 0.0 { positions.extend(ring) } else { positions.extend(ring.into_iter().rev()) }
    }
    let edges = edges::long(&positions, per);
    let mesh = Mesh::swept(positions, per, Ends::Capped);
    Part { edges, ..Part::new(name, kind, &hoop.stock.name, colour::of(&hoop.stock), mesh) }
}

/// Steps round the rim: at least two for each stave, so that a hoop lies on all of them.
fn steps(basket: &Basket, detail: Detail) -> u32 {
    let by_curve = segments(basket.body.rim().radius().to_mm() as f32, detail);
    if detail == Detail::Full { by_curve.max(4 * basket.body.uprights().count) } else { by_curve }
}

/// Places round a hoop in turns, from the thin end under the lap to the thin end over it.
fn stations(start: f32, lap: f32, steps: u32) -> Vec<f32> {
    let (from, to) = (start + lap * BLUNT, start + 1.0 + lap * (1.0 - BLUNT));
    let mut stations = vec![from, start + lap, start + 1.0, to];
    let first = (from * steps as f32).ceil() as i32;
    let last = (to * steps as f32).floor() as i32;
    stations.extend((first..=last).map(|step| step as f32 / steps as f32));
    stations.sort_by(f32::total_cmp);
    stations.dedup_by(|a, b| (*a - *b).abs() < 1e-5);
    stations
}

/// A corner of the part of a section that lies no further out than `cut`.
fn below(section: &Section, [up, out]: [f32; 2], cut: f32) -> [f32; 2] {
    if out <= cut {
        return [up, out];
    }
    let [low, high] = extent(section, cut);
    [up.clamp(low, high), cut]
}

/// A corner of the part of a section that lies no nearer than `cut`.
fn above(section: &Section, [up, out]: [f32; 2], cut: f32) -> [f32; 2] {
    if out >= cut {
        return [up, out];
    }
    let [low, high] = extent(section, cut);
    let middle = f32::midpoint(low, high);
    // What is cut off is spread over the cut, so that no two corners fall together.
    let share = (out + cut / 2.0) / (cut * 1.5);
    [middle + (if up < middle { low } else { high } - middle) * share, cut]
}

/// From where to where a section reaches at this distance out.
pub(super) fn extent(section: &Section, cut: f32) -> [f32; 2] {
    let next = section.iter().cycle().skip(1);
    let crossings = section.iter().zip(next).filter_map(|(a, b)| {
        let (near, far) = (a[1].min(b[1]), a[1].max(b[1]));
        (cut >= near && cut <= far && far > near).then(|| a[0] + (b[0] - a[0]) * (cut - a[1]) / (b[1] - a[1]))
    });
    let [low, high] =
        crossings.fold([f32::INFINITY, f32::NEG_INFINITY], |[low, high], up| [low.min(up), high.max(up)]);
    if low <= high { [low, high] } else { [0.0, 0.0] }
}

/// Middle of the filler: out from the staves' inner face, and up from the hoops' lower edge.
pub(super) fn filler_middle(basket: &Basket) -> Option<[f32; 2]> {
    let filler = basket.body.filler()?;
    let up = basket.body.rim().height + filler.stock.thickness / 2.0;
    Some([(basket.body.uprights().thickness / 2.0).to_mm() as f32, up.to_mm() as f32])
}

/// Corners of the filler's section as (up from the hoops' lower edge, out).
pub(super) fn filler_section(basket: &Basket, detail: Detail) -> Option<Section> {
    let [out, up] = filler_middle(basket)?;
    let stock = &basket.body.filler()?.stock;
    let half = stock.thickness.to_mm() as f32 / 2.0;
    let section = section(stock, stock.width.to_mm() as f32, detail);
    // The stock's flat side lies on the tips: its width runs out, its thickness up.
    Some(section.iter().rev().map(|[across, high]| [up - half + high, out + across]).collect())
}

/// The filler's pieces.
pub(super) fn filler(basket: &Basket, surface: &Surface, detail: Detail) -> Vec<Part> {
    let (Some(filler), Some(section)) = (basket.body.filler(), filler_section(basket, detail)) else {
        return Vec::new();
    };
    let low = basket.body.rim().along.to_mm() as f32;
    let per = section.len();
    let room = ROOM / (std::f32::consts::TAU * basket.body.rim().radius().to_mm() as f32).max(1.0);
    let piece = |(index, piece): (usize, &basket::lashing::FillerPiece)| {
        let from = piece.from_turn as f32 + room;
        let whole = (piece.to_turn - piece.from_turn).abs() > 0.999;
        let span = if whole { 0.9995 } else { (piece.to_turn as f32 - room - from).rem_euclid(1.0) };
        let steps = (steps(basket, detail) as f32 * span).ceil().max(1.0) as u32;
        let positions: Vec<[f32; 3]> = (0..=steps)
            .flat_map(|step| {
                let angle = direction((from + span * step as f32 / steps as f32) * std::f32::consts::TAU);
                section.iter().map(move |[up, out]| surface.at(low + up).point(*out, angle))
            })
            .collect();
        let edges = vec![edges::line(&positions, per, per / 4), edges::line(&positions, per, per * 3 / 4)];
        let mesh = Mesh::swept(positions, per, Ends::Capped);
        let number = index as u32 + 1;
        Part {
            edges,
            number: Some(number),
            ..Part::new(
                &format!("filler {number}"),
                PartKind::Filler,
                &filler.stock.name,
                colour::of(&filler.stock),
                mesh,
            )
        }
    };
    filler.pieces.iter().filter(|piece| piece.length.to_mm() > 1.0).enumerate().map(piece).collect()
}
