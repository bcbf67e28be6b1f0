//! The handle seen from the front: bail, ears on edge, rivets.

use basket::fittings::{Bail, Ears, Fold, Handle};
use basket::{Basket, Length};
use kurbo::{BezPath, Point, Rect, Vec2};

use crate::drawing::{Drawing, Line, Tone, closed, open};

/// Steps along half a bail.
const STEPS: u32 = 40;

/// Ears and handle from the front; heights above the mould's base, in mm of the basket.
pub(crate) struct Front<'a> {
    basket: &'a Basket,
    ears: &'a Ears,
    scale: f64,
    rim_top: f64,
}

impl<'a> Front<'a> {
    /// The front of the fittings; none without ears.
    pub(crate) fn of(basket: &'a Basket, scale: f64) -> Option<Self> {
        let ears = basket.ears.as_ref()?;
        let rim_top =
            basket.body.form.profile.at(basket.body.rim().along + basket.body.rim().height).height.to_mm();
        Some(Self { basket, ears, scale, rim_top })
    }

    fn place(&self, x: f64, height: f64) -> Point {
        Point::new(x * self.scale, -height * self.scale)
    }

    fn rect(&self, x: (f64, f64), height: (f64, f64)) -> Rect {
        Rect::from_points(self.place(x.0, height.0), self.place(x.1, height.1))
    }

    /// Height of the pivots.
    fn pivots(&self) -> f64 {
        self.rim_top + self.ears.hole_height.to_mm()
    }

    /// Height of the topmost point.
    pub(crate) fn top(&self) -> f64 {
        let ears = self.pivots() + self.ears.width.to_mm() / 2.0;
        let bail = |handle: &Handle| self.pivots() + (handle.rise + handle.thickness / 2.0).to_mm();
        self.basket.handle.as_ref().map_or(ears, bail).max(ears)
    }

    /// Ears on edge, above the rim.
    pub(crate) fn ears(&self, drawing: &mut Drawing) {
        let middle = (self.basket.body.rim().radius() + self.basket.body.uprights().thickness / 2.0).to_mm();
        let half = self.ears.thickness.to_mm() / 2.0;
        let height = (self.rim_top, self.pivots() + self.ears.width.to_mm() / 2.0);
        for side in [-1.0, 1.0] {
            let ear = self.rect((side * (middle - half), side * (middle + half)), height);
            drawing.shape(ear, Tone::Mid, Line::Fine);
        }
    }

    /// The bail standing up, with its rivets.
    pub(crate) fn bail(&self, drawing: &mut Drawing) {
        let Some(handle) = &self.basket.handle else { return };
        drawing.shape(self.band(handle), Tone::Pale, Line::Edge);
        let middle = (self.basket.body.rim().radius() + self.basket.body.uprights().thickness / 2.0).to_mm();
        let (height, shank) = (self.pivots(), handle.rivet.width.to_mm() / 2.0);
        let inside = middle - self.ears.thickness.to_mm() / 2.0 - 0.8;
        let outside = (handle.half_span + handle.thickness / 2.0).to_mm();
        for side in [-1.0, 1.0] {
            let pin = self.rect((side * inside, side * outside), (height - shank, height + shank));
            drawing.fill(pin, Tone::Dark);
            for (from, to) in [(inside - shank, inside), (outside, outside + shank)] {
                let head = self.rect((side * from, side * to), (height - 2.0 * shank, height + 2.0 * shank));
                drawing.fill(head, Tone::Black);
            }
        }
    }

    /// The bail let down, as its middle line.
    pub(crate) fn folded(&self, drawing: &mut Drawing) {
        let Some(handle) = &self.basket.handle else { return };
        let lift = match handle.fold {
            Fold::OnWall { below_level, .. } => -below_level.to_radians().sin(),
            Fold::OnRim { above_level } => above_level.to_radians().sin(),
        };
        let line = middle_line(handle).into_iter().map(|at| self.place(at.x, self.pivots() + at.y * lift));
        drawing.stroke(open(line), Line::Hidden);
    }

    /// Both faces of the bail with its ends below the pivots.
    fn band(&self, handle: &Handle) -> BezPath {
        let half = handle.thickness.to_mm() / 2.0;
        let end = ((handle.cut - handle.arc) / 2.0).max(Length::ZERO).to_mm();
        let span = handle.half_span.to_mm();
        let mut line = middle_line(handle);
        line.insert(0, Point::new(span, -end));
        line.push(Point::new(-span, -end));
        let face = |side: f64| {
            let line = &line;
            (0..line.len()).map(move |index| {
                let (before, after) = (line[index.saturating_sub(1)], line[(index + 1).min(line.len() - 1)]);
                let along = (after - before) / (after - before).hypot().max(1e-9);
                let at = line[index] + Vec2::new(along.y, -along.x) * side * half;
                self.place(at.x, self.pivots() + at.y)
            })
        };
        closed(face(1.0).chain(face(-1.0).rev()))
    }
}

/// The bail's middle line from the right pivot over the top to the left one, above the pivots.
fn middle_line(handle: &Handle) -> Vec<Point> {
    let corner = handle.corner.unwrap_or_default();
    let Some(bail) = Bail::new(handle.curve, handle.half_span, handle.rise, corner) else {
        return Vec::new();
    };
    let half = |step: u32| {
        let (x, y) = bail.point(f64::from(step) / f64::from(STEPS));
        Point::new(x.to_mm(), y.to_mm())
    };
    let right = (0..=STEPS).map(half);
    let left = (0..STEPS).rev().map(half).map(|at| Point::new(-at.x, at.y));
    right.chain(left).collect()
}
