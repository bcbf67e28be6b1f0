//! The other shapes that a mould may take, seen from above: what has to be written for each.

use std::f64::consts::{PI, TAU};

use basket::form::{Outline as _, Shape};
use basket::measure::Printing;
use basket::pattern::keys::Declared;
use basket::pattern::keys::mould::{BASE, CORNER, FULLNESS, LENGTH, LEVELS, RAYS, RIM, SHAPE, WIDTH, WIDTHS};
use basket::pattern::{FootSize, MouldForm, Outline, OutlineKind, Pattern, Side, Units, Word};
use basket::{Basket, Length};

use super::field::in_file;
use crate::bench::api::{Edit, EditValue, MouldShape};

/// So long is a round mould that becomes another shape, as a share of its width (own choice).
const LONGER: f64 = 1.5;
/// Radius of a rectangle's corners, as a share of its width (own choice).
const ROUNDED: f64 = 0.25;
/// Rays by which an outline is drawn by hand (own choice): near enough, and far enough apart to be taken hold of.
const RAYS_DRAWN: usize = 16;
/// Places of an outline between which its rays are found.
const FINE: u32 = 2880;
/// Times that hollows which rounding left are filled.
const FILLINGS: u32 = 8;

/// Which shapes a value is written for; none for a value that is not of the outline.
pub(super) fn shapes_with(path: &str) -> Option<&'static [OutlineKind]> {
    use OutlineKind::{Oval, Rectangle, Round, Stadium, Traced};
    let known: [(&dyn Declared, &[OutlineKind]); 8] = [
        (&LEVELS, &[Oval, Stadium, Rectangle, Traced]),
        (&WIDTHS, &[Oval, Stadium, Rectangle, Traced]),
        (&BASE, &[Round]),
        (&LENGTH, &[Oval, Stadium, Rectangle]),
        (&WIDTH, &[Oval, Stadium, Rectangle]),
        (&CORNER, &[Rectangle]),
        (&FULLNESS, &[Oval]),
        (&RAYS, &[Traced]),
    ];
    known.into_iter().find(|(key, _)| key.path() == path).map(|(_, shapes)| shapes)
}

/// Each shape but the present one; a traced outline of many rays may become one of few.
pub(super) fn shapes(pattern: &Pattern, basket: &Basket) -> Vec<MouldShape> {
    let outline = &pattern.mould.outline;
    let is_fine = matches!(outline, Outline::Traced(rays) if rays.len() > RAYS_DRAWN);
    let others = OutlineKind::ALL
        .iter()
        .filter(|kind| **kind != outline.kind() || is_fine && **kind == OutlineKind::Traced);
    others
        .map(|kind| MouldShape { word: kind.word().to_owned(), edits: becoming(*kind, pattern, basket) })
        .collect()
}

/// What has to be written so that a mould takes this shape.
fn becoming(kind: OutlineKind, pattern: &Pattern, basket: &Basket) -> Vec<Edit> {
    let text = |length: Length| in_file(length, pattern.units);
    let set = |key: &dyn Declared, value: EditValue| Edit::Set { path: key.path().to_owned(), value };
    let every: [&dyn Declared; 6] = [&BASE, &LENGTH, &WIDTH, &CORNER, &FULLNESS, &RAYS];
    let mut edits: Vec<Edit> = every.iter().map(|key| Edit::Remove { path: key.path().to_owned() }).collect();
    if kind == OutlineKind::Round {
        edits.extend(
            [&LEVELS as &dyn Declared, &WIDTHS].map(|key| Edit::Remove { path: key.path().to_owned() }),
        );
    }
    edits.push(set(&SHAPE, kind.word().into()));
    let size = size(basket, kind);
    let girth = Length::mm(basket.body.form.outline.girth());
    let length = match kind {
        OutlineKind::Round => girth / PI,
        OutlineKind::Traced => {
            let rays = rays(&basket.body.form.outline, pattern.units);
            edits.push(set(
                &RAYS,
                EditValue::List(rays.iter().map(|ray| mark(*ray, pattern.units).as_str().into()).collect()),
            ));
            let [right, left] =
                [rays.first(), rays.get(RAYS_DRAWN / 2)].map(|ray| ray.copied().unwrap_or(Length::ZERO));
            right + left
        }
        _ => {
            edits.push(set(&LENGTH, text(size.length).as_str().into()));
            edits.push(set(&WIDTH, text(size.width).as_str().into()));
            size.length
        }
    };
    if kind == OutlineKind::Rectangle {
        edits.push(set(&CORNER, text(size.width * ROUNDED).as_str().into()));
    }
    if let MouldForm::Drawn { base, rim, side, .. } = &pattern.mould.form {
        if kind == OutlineKind::Round {
            edits.push(set(&BASE, text(length).as_str().into()));
        }
        let rim = if *side == Side::Straight { length } else { *rim + (length - *base) };
        edits.push(set(&RIM, text(rim).as_str().into()));
    }
    edits
}

/// Length and width of the foot; a round one's so that its girth stays.
fn size(basket: &Basket, kind: OutlineKind) -> FootSize {
    let form = &basket.body.form;
    let across = form.across(Length::ZERO, Length::ZERO);
    if !form.outline.is_round() {
        let (length, width) = (across.length.max(across.width), across.length.min(across.width));
        return FootSize { length, width };
    }
    let tried = FootSize { length: across.length * LONGER, width: across.length };
    let shape = match kind {
        OutlineKind::Stadium => Outline::Stadium(tried),
        OutlineKind::Rectangle => Outline::Rectangle { size: tried, corner: tried.width * ROUNDED },
        _ => Outline::Oval { size: tried, fullness: 0.0 },
    };
    let girth = Shape::of(&shape).map_or(form.outline.girth(), |shape| shape.girth());
    let factor = form.outline.girth() / girth.max(1e-9);
    FootSize { length: tried.length * factor, width: tried.width * factor }
}

/// A ray as it is written: finer than other lengths, since rounding must not make an outline hollow.
fn mark(ray: Length, units: Units) -> String {
    ray.print(match units {
        Units::Inches => Printing::Inches { denominator: 64 },
        Units::Millimetres => Printing::Millimetres { step: 0.1 },
    })
}

/// The outline by rays at even steps of angle, to the mark by which they are written, and nowhere hollow.
fn rays(outline: &Shape, units: Units) -> Vec<Length> {
    let step = match units {
        Units::Inches => Length::inches(1.0 / 64.0).to_mm(),
        Units::Millimetres => 0.1,
    };
    let places: Vec<[f64; 2]> = (0..=FINE)
        .map(|place| outline.at(f64::from(place) / f64::from(FINE)).point)
        .map(|[x, y]| [libm::atan2(y, x).rem_euclid(TAU), libm::hypot(x, y)])
        .collect();
    let toward = |angle: f64| {
        let apart = |place: &[f64; 2]| {
            let apart = (place[0] - angle).abs();
            apart.min(TAU - apart)
        };
        places.iter().min_by(|a, b| apart(a).total_cmp(&apart(b))).map_or(0.0, |place| place[1])
    };
    let angle = TAU / RAYS_DRAWN as f64;
    let mut rays: Vec<f64> =
        (0..RAYS_DRAWN).map(|ray| (toward(angle * ray as f64) / step).round() * step).collect();
    for _ in 0..FILLINGS {
        let chords: Vec<f64> = (0..RAYS_DRAWN)
            .map(|ray| {
                let [before, after] =
                    [RAYS_DRAWN - 1, 1].map(|by| rays.get((ray + by) % RAYS_DRAWN).copied().unwrap_or(0.0));
                // Both neighbours stand at one angle to this ray; so far from the middle their chord crosses it.
                2.0 * before * after * libm::cos(angle) / (before + after).max(1e-9)
            })
            .collect();
        for (ray, chord) in rays.iter_mut().zip(chords) {
            if chord > *ray + 1e-9 {
                *ray = (chord / step - 1e-6).ceil() * step;
            }
        }
    }
    rays.into_iter().map(Length::mm).collect()
}
