//! The parts of the right half cut through the axis and an ear: base, stave, weavers, rim.

use basket::{Basket, Length, Material};
use kurbo::{Point, Rect, Vec2};

use crate::around::Around;
use crate::drawing::{Drawing, Line, Tone, closed, open};
use crate::elevation::Elevation;
use crate::rim_shape::RimShape;
use crate::wall::Wall;

/// Steps round the section of a weaver.
const STEPS: u32 = 20;
/// Places on the mould's side that are drawn.
const MOULD_STEPS: u32 = 97;
/// More rows than this are not drawn one by one.
const MOST: usize = 1500;

/// The cut half at a scale; its axis and the mould's base lie at `origin`.
pub(crate) struct Cut<'a> {
    pub(crate) basket: &'a Basket,
    pub(crate) wall: Wall<'a>,
    pub(crate) scale: f64,
    pub(crate) origin: Vec2,
}

impl<'a> Cut<'a> {
    pub(crate) fn of(basket: &'a Basket, scale: f64, origin: Vec2) -> Self {
        Self { basket, wall: Wall::in_front(basket), scale, origin }
    }

    /// Where a radius and a height above the mould's base lie in the drawing.
    pub(crate) fn place(&self, at: Point) -> Point {
        Point::new(at.x * self.scale, -at.y * self.scale) + self.origin
    }

    /// A place on the wall, so far out from the stave's inner face.
    pub(crate) fn on_wall(&self, along: Length, out: f64) -> Point {
        self.place(self.wall.at(along, out))
    }

    fn polygon(&self, points: impl IntoIterator<Item = Point>) -> kurbo::BezPath {
        closed(points.into_iter().map(|at| self.place(at)))
    }

    /// The disc from a radius outward, with its groove.
    pub(crate) fn disc(&self, drawing: &mut Drawing, from: f64) {
        let base = &self.basket.body.base();
        let across = Around::of_front(self.basket).across(base.across());
        let (edge, low) = (across.to_mm() / 2.0, -base.thickness.to_mm());
        let (middle, half) = (low / 2.0, base.groove_width.to_mm() / 2.0);
        let root = base.groove_radius().to_mm().max(0.0) + self.wall.over(0.0);
        let outline = [
            (from, 0.0),
            (edge, 0.0),
            (edge, middle + half),
            (root, middle + half),
            (root, middle - half),
            (edge, middle - half),
            (edge, low),
            (from, low),
        ];
        drawing.shape(self.polygon(outline.map(Point::from)), Tone::Light, Line::Edge);
    }

    /// The screw hole and, dashed, the plug that closes it from below.
    pub(crate) fn hole(&self, drawing: &mut Drawing) {
        let base = &self.basket.body.base();
        let low = -base.thickness.to_mm();
        let rect = |radius: f64, height: f64| {
            Rect::from_points(self.place(Point::new(0.0, height)), self.place(Point::new(radius, low)))
        };
        drawing.shape(rect(base.screw_hole.to_mm() / 2.0, 0.0), Tone::White, Line::Edge);
        drawing.stroke(rect(base.plug_diameter.to_mm() / 2.0, low * 0.6), Line::Hidden);
    }

    /// The mould: its base and its side up to the rim.
    pub(crate) fn mould(&self, drawing: &mut Drawing) {
        let spots = self.basket.body.profile().spots(MOULD_STEPS);
        let side = spots.map(|spot| (spot.radius.to_mm(), spot.height.to_mm()));
        let side = side.map(|(radius, height)| Point::new(radius + self.wall.over(height), height));
        let line = std::iter::once(Point::ZERO).chain(side).map(|at| self.place(at));
        drawing.stroke(open(line), Line::Hidden);
    }

    /// The stave between two places.
    pub(crate) fn stave(&self, drawing: &mut Drawing, from: Length, to: Length) {
        let strip = self.wall.strip(from, to, 0.0, self.basket.body.uprights().thickness.to_mm());
        let strip = strip.elements().iter().map(|element| match *element {
            kurbo::PathEl::MoveTo(at) => kurbo::PathEl::MoveTo(self.place(at)),
            kurbo::PathEl::LineTo(at) => kurbo::PathEl::LineTo(self.place(at)),
            other => other,
        });
        drawing.shape(strip.collect::<kurbo::BezPath>(), Tone::Mid, Line::Fine);
    }

    /// The weavers of the rows whose middles lie between two places, outside or inside the stave as the
    /// fabric has it.
    pub(crate) fn weavers(&self, drawing: &mut Drawing, from: Length, to: Length) {
        let stave = self.basket.in_rim().map_or(1, |ears| ears.each[0].stave);
        let thickness = self.basket.body.uprights().thickness.to_mm();
        let rows = self.basket.body.weave.each_row.iter().take(MOST);
        for row in rows.filter(|row| row.along >= from && row.along <= to) {
            let Some(course) = self.basket.body.weave.courses.get(row.course.saturating_sub(1) as usize)
            else {
                continue;
            };
            let stride = Elevation::stride(course.pitch.to_mm(), self.scale);
            if (row.number - course.first_row.min(row.number)) % stride != stride / 2 {
                continue;
            }
            let index = row.number.saturating_sub(course.first_row);
            let lying = (0..).zip(&course.weavers).filter(|(_, weaver)| weaver.lies_in(index));
            let (outside, inside): (Vec<_>, Vec<_>) = lying
                .partition(|(weaver, _)| course.fabric.is_outside(index, stave.saturating_sub(1), *weaver));
            for (weavers, face, side) in [(outside, thickness, 1.0), (inside, 0.0, -1.0)] {
                let all: Length = weavers.iter().map(|(_, weaver)| weaver.material.width).sum();
                let mut low = row.along - all / 2.0;
                for (_, weaver) in weavers {
                    let stock = &weaver.material;
                    let out = face + side * stock.thickness.to_mm() / 2.0;
                    self.weaver(drawing, stock, low + stock.width / 2.0, out);
                    low += stock.width;
                }
            }
        }
    }

    /// A weaver cut across, its middle at a place on the wall.
    fn weaver(&self, drawing: &mut Drawing, stock: &Material, along: Length, out: f64) {
        let half = Vec2::new(stock.thickness.to_mm() / 2.0, stock.width.to_mm() / 2.0);
        let section = (0..STEPS).map(|step| {
            let angle = f64::from(step) / f64::from(STEPS) * std::f64::consts::TAU;
            // Rounded corners: between a rectangle and an ellipse.
            let soft = |share: f64| share.signum() * share.abs().sqrt();
            let up = Length::mm(half.y * soft(angle.sin()));
            self.on_wall(along + up, out + half.x * soft(angle.cos()))
        });
        drawing.shape(closed(section), Tone::White, Line::Fine);
    }

    /// Hoops, filler, pin and lashing.
    pub(crate) fn rim(&self, drawing: &mut Drawing) {
        let shape = RimShape::of(self.basket);
        let place = |at: &Point| self.on_wall(self.basket.body.rim().along + Length::mm(at.y), at.x);
        for hoop in [&shape.outer, &shape.inner] {
            drawing.shape(closed(hoop.iter().map(place)), Tone::Light, Line::Edge);
        }
        if let Some(filler) = &shape.filler {
            drawing.shape(closed(filler.iter().map(place)), Tone::White, Line::Edge);
        }
        if self.basket.body.lashing().is_some() {
            drawing.stroke(closed(shape.lashing.iter().map(place)), Line::Edge);
        }
        self.pin(drawing);
    }

    fn pin(&self, drawing: &mut Drawing) {
        let (rim, pins) = (self.basket.body.rim(), &self.basket.body.pins().others);
        let middle = rim.height.to_mm() / 2.0;
        let half = pins.stock.width.to_mm() / 2.0;
        let outside = (self.basket.body.uprights().thickness + rim.outer.stock.thickness).to_mm();
        let inside = (outside - pins.length.to_mm()).max(-rim.inner.stock.thickness.to_mm() - 1.2);
        let place = |out: f64, up: f64| self.on_wall(rim.along + Length::mm(middle + up), out);
        let shank = [(inside, -half), (outside, -half), (outside, half), (inside, half)];
        drawing.fill(closed(shank.map(|(out, up)| place(out, up))), Tone::Black);
        let head = (0..=8).map(|step| {
            let angle = (f64::from(step) / 8.0 - 0.5) * std::f64::consts::PI;
            place(outside + 1.4 * half * angle.cos(), 2.4 * half * angle.sin())
        });
        drawing.fill(closed(head), Tone::Black);
    }

    /// The ear's tail beside the stave, below and behind the hoops.
    pub(crate) fn ear_tail(&self, drawing: &mut Drawing) {
        let Some(ears) = self.basket.in_rim() else { return };
        let rim = &self.basket.body.rim();
        let middle = self.basket.body.uprights().thickness.to_mm() / 2.0;
        let half = ears.thickness.to_mm() / 2.0;
        let tail = self.wall.strip(
            (rim.along - ears.tail).max(Length::ZERO),
            rim.along + rim.height,
            middle - half,
            middle + half,
        );
        let line = tail.elements().iter().filter_map(kurbo::PathEl::end_point).map(|at| self.place(at));
        drawing.stroke(closed(line), Line::Hidden);
    }

    /// Edges of the base and the inner hoop seen behind the cut.
    pub(crate) fn behind(&self, drawing: &mut Drawing) {
        let rim = &self.basket.body.rim();
        for up in [Length::ZERO, rim.height] {
            let at = self.wall.at(rim.along + up, 0.0);
            drawing.line(self.place(Point::new(0.0, at.y)), self.place(at), Line::Fine);
        }
    }
}
