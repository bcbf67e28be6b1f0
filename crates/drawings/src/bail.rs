//! The handle seen from the front: bow or knobs, ears on edge, rivets.

use basket::fittings::{Bow, Ears, Fold, Handle, Knobs, Rivets, SwingHandle};
use basket::pattern::HandleJoint;
use basket::{Basket, Length};
use kurbo::{BezPath, Point, Rect, Vec2};

use crate::drawing::{Drawing, Line, Tone, closed, open};

/// Steps along half a bow.
const STEPS: u32 = 40;
/// Washer between an ear and what it holds, in mm.
const WASHER: f64 = 0.8;
/// How far above an ear two halves have come together, in mm.
const CLOSES: f64 = 18.0;

/// Ears and handle from the front; heights above the mould's base, in mm of the basket.
pub(crate) struct Front<'a> {
    basket: &'a Basket,
    /// What stands in the rim: ears, or the ends of a fixed handle.
    standing: &'a Ears,
    scale: f64,
    rim_top: f64,
}

impl<'a> Front<'a> {
    /// The front of the fittings; none without any.
    pub(crate) fn of(basket: &'a Basket, scale: f64) -> Option<Self> {
        let standing = basket.in_rim()?;
        let rim_top =
            basket.body.form.profile.at(basket.body.rim().along + basket.body.rim().height).height.to_mm();
        Some(Self { basket, standing, scale, rim_top })
    }

    fn place(&self, x: f64, height: f64) -> Point {
        Point::new(x * self.scale, -height * self.scale)
    }

    fn rect(&self, x: (f64, f64), height: (f64, f64)) -> Rect {
        Rect::from_points(self.place(x.0, height.0), self.place(x.1, height.1))
    }

    /// Height of the pivots.
    fn pivots(&self) -> f64 {
        self.rim_top + self.standing.hole_height.to_mm()
    }

    /// How far the middles of ears stand from the middle.
    fn middle(&self) -> f64 {
        let body = &self.basket.body;
        let level = body.rim_level(body.rim().radius() + body.uprights().thickness / 2.0);
        level.reach(self.standing.axis).to_mm()
    }

    /// Height of the topmost point.
    pub(crate) fn top(&self) -> f64 {
        let ears =
            self.basket.ears.as_ref().map_or(self.rim_top, |ears| self.pivots() + ears.width.to_mm() / 2.0);
        let handle = self.basket.handle.as_ref().map(|handle| self.rim_top + handle.top().to_mm());
        handle.map_or(ears, |handle| handle.max(ears))
    }

    /// Ears on edge, above the rim.
    pub(crate) fn ears(&self, drawing: &mut Drawing) {
        let Some(ears) = &self.basket.ears else { return };
        let (middle, half) = (self.middle(), ears.thickness.to_mm() / 2.0);
        let height = (self.rim_top, self.pivots() + ears.width.to_mm() / 2.0);
        for side in [-1.0, 1.0] {
            let ear = self.rect((side * (middle - half), side * (middle + half)), height);
            drawing.shape(ear, Tone::Mid, Line::Fine);
        }
    }

    /// The handle standing up, with its rivets.
    pub(crate) fn bail(&self, drawing: &mut Drawing) {
        match &self.basket.handle {
            Some(Handle::Swing(swing)) => self.swing(drawing, swing),
            Some(Handle::Fixed(fixed)) => {
                let half = fixed.bow.thickness.to_mm() / 2.0;
                drawing.shape(self.band(&fixed.bow, 0.0, &|_| [-half, half]), Tone::Pale, Line::Edge);
            }
            Some(Handle::Knobs(knobs)) => self.knobs(drawing, knobs),
            None => {}
        }
    }

    fn swing(&self, drawing: &mut Drawing, swing: &SwingHandle) {
        let (bow, ear) = (&swing.bow, self.standing.thickness.to_mm());
        let half = bow.thickness.to_mm() / 2.0;
        let end = bow.beyond().max(Length::ZERO).to_mm();
        let top = self.standing.width.to_mm() / 2.0;
        match swing.joint {
            HandleJoint::Outside => {
                drawing.shape(self.band(bow, end, &|_| [-half, half]), Tone::Pale, Line::Edge);
            }
            HandleJoint::Slot => {
                drawing.shape(self.band(bow, end, &|_| [-half, half]), Tone::Pale, Line::Edge);
                // The slot with the ear in it.
                let slot = swing.slot.unwrap_or_default().to_mm() / 2.0;
                let (middle, height) = (self.middle(), (self.pivots() - end, self.pivots() + top));
                for side in [-1.0, 1.0] {
                    let rect = |half: f64, height| {
                        self.rect((side * (middle - half), side * (middle + half)), height)
                    };
                    drawing.shape(rect(slot, height), Tone::White, Line::Edge);
                    drawing.shape(rect(ear / 2.0, height), Tone::Mid, Line::Fine);
                }
            }
            HandleJoint::Between => {
                let parted = |up: f64| ear / 2.0 * (1.0 - ((up - top) / CLOSES).clamp(0.0, 1.0));
                let inner = |up: f64| [-half - parted(up), -parted(up)];
                let outer = |up: f64| [parted(up), half + parted(up)];
                drawing.shape(self.band(bow, end, &inner), Tone::Pale, Line::Edge);
                drawing.shape(self.band(bow, end, &outer), Tone::Pale, Line::Edge);
            }
        }
        let outside = match swing.joint {
            HandleJoint::Outside => (bow.half_span + bow.thickness / 2.0).to_mm(),
            _ => self.middle() + swing.at_ears(self.standing.thickness).to_mm() / 2.0,
        };
        let inside = match swing.joint {
            HandleJoint::Outside => self.middle() - ear / 2.0 - WASHER,
            _ => 2.0 * self.middle() - outside,
        };
        self.rivets(drawing, &swing.rivets, (inside, outside));
    }

    fn knobs(&self, drawing: &mut Drawing, knobs: &Knobs) {
        let radius = knobs.diameter.to_mm() / 2.0;
        let from = self.middle() + self.standing.thickness.to_mm() / 2.0 + WASHER;
        let to = from + knobs.length.to_mm();
        let bulge = from + (to - from) * 0.7;
        for side in [-1.0, 1.0] {
            let at = |x: f64, up: f64| self.place(side * x, self.pivots() + up);
            let outline = [(from, 0.6), (bulge, 1.0), (to, 0.66)];
            let upper = outline.iter().map(|(x, share)| at(*x, share * radius));
            let lower = outline.iter().rev().map(|(x, share)| at(*x, -share * radius));
            drawing.shape(closed(upper.chain(lower)), Tone::Pale, Line::Edge);
        }
        let inside = self.middle() - self.standing.thickness.to_mm() / 2.0;
        self.rivets(drawing, &knobs.rivets, (inside, to));
    }

    /// Both rivets from a face inside to one outside.
    fn rivets(&self, drawing: &mut Drawing, rivets: &Rivets, (inside, outside): (f64, f64)) {
        let (height, shank) = (self.pivots(), rivets.stock.width.to_mm() / 2.0);
        for side in [-1.0, 1.0] {
            let pin = self.rect((side * inside, side * outside), (height - shank, height + shank));
            drawing.fill(pin, Tone::Dark);
            for (from, to) in [(inside - shank, inside), (outside, outside + shank)] {
                let head = self.rect((side * from, side * to), (height - 2.0 * shank, height + 2.0 * shank));
                drawing.fill(head, Tone::Black);
            }
        }
    }

    /// The bail let down, as its middle line; nothing of a handle that does not swing.
    pub(crate) fn folded(&self, drawing: &mut Drawing) {
        let Some(swing) = self.basket.swing() else { return };
        let lift = match swing.fold {
            Fold::OnWall { below_level, .. } => -below_level.to_radians().sin(),
            Fold::OnRim { above_level } => above_level.to_radians().sin(),
        };
        let line =
            middle_line(&swing.bow).into_iter().map(|at| self.place(at.x, self.pivots() + at.y * lift));
        drawing.stroke(open(line), Line::Hidden);
    }

    /// Both faces of a bow, or of a half of it, with ends so far below its feet; the faces lie so far
    /// outside its middle line at a height above them.
    fn band(&self, bow: &Bow, end: f64, faces: &dyn Fn(f64) -> [f64; 2]) -> BezPath {
        let span = bow.half_span.to_mm();
        let mut line = middle_line(bow);
        if end > 0.0 {
            line.insert(0, Point::new(span, -end));
            line.push(Point::new(-span, -end));
        }
        let face = |which: usize| {
            let line = &line;
            (0..line.len()).map(move |index| {
                let (before, after) = (line[index.saturating_sub(1)], line[(index + 1).min(line.len() - 1)]);
                let along = (after - before) / (after - before).hypot().max(1e-9);
                let at = line[index] + Vec2::new(along.y, -along.x) * faces(line[index].y)[which];
                self.place(at.x, self.pivots() + at.y)
            })
        };
        closed(face(1).chain(face(0).rev()))
    }
}

/// A bow's middle line from the right foot over the top to the left one, above its feet.
fn middle_line(bow: &Bow) -> Vec<Point> {
    let Some(bail) = bow.bail() else { return Vec::new() };
    let half = |step: u32| {
        let (x, y) = bail.point(f64::from(step) / f64::from(STEPS));
        Point::new(x.to_mm(), y.to_mm())
    };
    let right = (0..=STEPS).map(half);
    let left = (0..STEPS).rev().map(half).map(|at| Point::new(-at.x, at.y));
    right.chain(left).collect()
}
