//! A fixed handle: its ends lie on staves behind the weaving and between the hoops, as the ears of another
//! basket do, and its bow rises from the rim.

use basket::Piece;
use basket::fittings::{Bail, Ear, FixedHandle};

use super::colour;
use super::detail::Detail;
use super::ear::{ACROSS, flat_ring};
use super::maker::Maker;
use super::mesh::{Ends, direction};
use super::part::Part;
use super::shape::Shape;
use super::stand::Stand;
use crate::around::Around;

/// Height above the rim at which an end has its full thickness, in mm, where the bow is high enough.
const SHOULDER: f32 = 3.0;

impl Maker<'_> {
    pub(super) fn fixed(&self, handle: &FixedHandle) -> Part {
        let per = 2 * ACROSS;
        let [first, second] = &handle.ends.each;
        let mut positions = self.leg(handle, first);
        positions.extend(self.arch(handle));
        // The other leg is swept from its top down: gone through backwards, and each section the other
        // way about.
        let other = self.leg(handle, second);
        for section in other.chunks(per).rev() {
            positions.extend(about(section));
        }
        let corners = [0, ACROSS - 1, ACROSS, per - 1];
        Part::new(Piece::Handle, colour::BAIL, Shape::swept(positions, per, Ends::Capped, corners))
    }

    /// Sections of a leg, from its tip up to the top of the rim.
    fn leg(&self, handle: &FixedHandle, end: &Ear) -> Vec<[f32; 3]> {
        let (basket, ends) = (self.basket, &handle.ends);
        let stave = basket.body.uprights().thickness.to_mm() as f32;
        let half = ends.width.to_mm() as f32 / 2.0;
        let left = stave - self.blade(ends);
        let low = basket.body.rim().along.to_mm() as f32;
        let high = low + basket.body.rim().height.to_mm() as f32;
        let radius = self.ear_radius().max(1.0);
        let turn = end.turn as f32 * std::f32::consts::TAU;
        let mut positions = Vec::new();
        let mut wall = |along: f32, ring: &[[f32; 2]]| {
            let node = self.surface.at(along);
            positions
                .extend(ring.iter().map(|[aside, out]| node.point(*out, direction(turn + aside / radius))));
        };
        let tip = low - self.tail(ends);
        let steps = if self.detail == Detail::Full { 8 } else { 3 };
        let off = -(end.off_stave.to_mm() as f32);
        for step in 0..=steps {
            let along = tip + (low - tip) * step as f32 / steps as f32;
            wall(along, &self.tail_ring(along, left, off));
        }
        let shoulder = (self.lashing_height() + 0.6).min(Self::spring(handle));
        for step in 0..=3 {
            let from = low + (high - low) * 0.1;
            let along = from + (high + shoulder - from) * step as f32 / 3.0;
            wall(along, &flat_ring(half, left, stave));
        }
        if !Around::of(basket).is_round() {
            let laid = self.laid();
            for at in &mut positions {
                *at = laid.place(*at, 0.0);
            }
        }
        positions
    }

    /// How far above the rim the bow is straight and comes to its full thickness.
    fn spring(handle: &FixedHandle) -> f32 {
        (handle.bow.rise.to_mm() as f32 / 6.0).clamp(0.1, SHOULDER)
    }

    /// Sections of the bow above the rim, from the first leg over the top to the other.
    fn arch(&self, handle: &FixedHandle) -> Vec<[f32; 3]> {
        let (bow, ends) = (&handle.bow, &handle.ends);
        let stand = Stand::at(self, ends.each.map(|end| end.turn), self.pivot_height(ends));
        let (half, thick) = (bow.width.to_mm() as f32 / 2.0, bow.thickness.to_mm() as f32 / 2.0);
        let steps = match self.detail {
            Detail::Full => 40,
            Detail::Page | Detail::Column => 20,
            Detail::Thumbnail => 10,
        };
        let from = self.lashing_height() + 0.6 + Self::spring(handle);
        let span = bow.half_span.to_mm() as f32;
        let place = |bail: &Bail, step: u32| {
            let (x, y) = bail.point(f64::from(step) / f64::from(steps));
            let (out_x, out_y) = bail.outward(f64::from(step) / f64::from(steps));
            (x.to_mm() as f32, y.to_mm() as f32, out_x as f32, out_y as f32)
        };
        let Some(bail) = bow.bail() else { return Vec::new() };
        let right: Vec<_> = std::iter::once((span, from, 1.0, 0.0))
            .chain((0..=steps).map(|step| place(&bail, step)).filter(|at| at.1 > from))
            .collect();
        let left: Vec<_> = right.iter().rev().skip(1).map(|(x, y, ox, oy)| (-x, *y, -ox, *oy)).collect();
        // Feet that do not quite face each other stand nearer than a diameter.
        let shift = stand.half - span;
        let ring = flat_ring(half, -thick, thick);
        right
            .into_iter()
            .chain(left)
            .flat_map(|(x, y, out_x, out_y)| {
                let pull = shift * (x / span.max(1e-3)).clamp(-1.0, 1.0);
                let stand = &stand;
                ring.iter()
                    .map(move |[aside, out]| stand.point(x + pull + out_x * out, *aside, y + out_y * out))
            })
            .collect()
    }
}

/// A section seen from its other side: the same corners where they meet the bow's own, which goes over the
/// top without turning about.
fn about(section: &[[f32; 3]]) -> Vec<[f32; 3]> {
    let (outer, inner) = section.split_at(ACROSS);
    outer.iter().rev().chain(inner.iter().rev()).copied().collect()
}
