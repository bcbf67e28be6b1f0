//! Ears: the tail lies on a stave behind the weaving, the blade between the hoops, and the head stands
//! upright above the rim.
//!
//! Hoops and staves leave an ear no room of its own, so stave and ear are thinned to share the stave's
//! thickness where they meet, as a half lap.

use basket::fittings::{Ear, Ears};
use basket::{Length, Piece};

use super::colour;
use super::detail::Detail;
use super::maker::Maker;
use super::mesh::{Ends, direction};
use super::part::Part;
use super::section::{CrossSection, extent};
use super::shape::Shape;
use super::stave::{SLOPE, Shave};

/// Most of a stave's thickness that is given to an ear.
const MOST: f32 = 2.0 / 3.0;
/// Corners across an ear.
pub(super) const ACROSS: usize = 5;
/// Height of an ear's shoulder above the lashing, in mm.
const SHOULDER: f32 = 0.6;
/// Way over which an ear widens from tail to blade and from blade to head, in mm.
const WIDENS: f32 = 0.3;

impl Maker<'_> {
    /// Thickness of the ear's blade and tail, from the staves' outer face inward.
    pub(super) fn blade(&self, ears: &Ears) -> f32 {
        let stave = self.basket.body.uprights().thickness.to_mm() as f32;
        (ears.thickness.to_mm() as f32).min(stave * MOST)
    }

    /// Where staves are thinned: under the tail, and between the hoops as wide as the ear is.
    pub(super) fn shaves(&self) -> Vec<Shave> {
        let basket = self.basket;
        let Some(ears) = basket.in_rim().filter(|ears| !ears.replace_staves()) else {
            return Vec::new();
        };
        let (staves, rim) = (basket.body.staves(), basket.body.rim());
        let left = staves.uprights.thickness.to_mm() as f32 - self.blade(ears);
        let girth = rim.girth.to_mm();
        let reach = (ears.width + staves.uprights.width).to_mm() / 2.0 / girth.max(1.0);
        let shave = |index: u32| {
            let off = |ear: &Ear| {
                let off = staves.uprights.turn(index + 1) - ear.turn;
                (off - off.round()).abs()
            };
            let under = ears.each.iter().any(|ear| ear.stave == index + 1);
            let beside = ears.each.iter().any(|ear| off(ear) < reach);
            let from = rim.along.to_mm() as f32 - if under { self.tail(ears) } else { 0.0 } - SLOPE;
            (under || beside).then_some(Shave { stave: index, from, left })
        };
        (0..staves.uprights.count).filter_map(shave).collect()
    }

    /// Length of the tail on a stave, no longer than there is wall.
    pub(super) fn tail(&self, ears: &Ears) -> f32 {
        ears.tail.min(self.basket.body.rim().along * 0.9).max(Length::ZERO).to_mm() as f32
    }

    /// Both ears.
    pub(super) fn ears(&self) -> Vec<Part> {
        let Some(ears) = &self.basket.ears else { return Vec::new() };
        let per = 2 * ACROSS;
        let substance =
            ears.wood.as_ref().map_or_else(|| colour::ear(ears.material), |wood| colour::wood(&wood.name));
        let part = |(ear, number): (&Ear, u32)| {
            let corners = [0, ACROSS - 1, ACROSS, per - 1];
            let shape = Shape::swept(self.ear(ears, ear), per, Ends::Capped, corners);
            Part::new(Piece::Ear(number), substance, shape)
        };
        ears.each.iter().zip(1..).map(part).collect()
    }

    /// Radius of the ear's middle where it holds the bail.
    pub(super) fn ear_radius(&self) -> f32 {
        let basket = self.basket;
        (basket.body.rim().radius() + basket.body.uprights().thickness / 2.0).to_mm() as f32
    }

    /// Height of the pivots.
    pub(super) fn pivot_height(&self, ears: &Ears) -> f32 {
        let basket = self.basket;
        self.surface.at((basket.body.rim().along + basket.body.rim().height).to_mm() as f32).height
            + ears.hole_height.to_mm() as f32
    }

    /// An ear's sections from the tail's end to the top, each gone round over its outer face and back over
    /// its inner one.
    fn ear(&self, ears: &Ears, ear: &Ear) -> Vec<[f32; 3]> {
        let (basket, surface) = (self.basket, &self.surface);
        let stave = basket.body.uprights().thickness.to_mm() as f32;
        let (half, thick) = (ears.width.to_mm() as f32 / 2.0, ears.thickness.to_mm() as f32);
        // An ear that is a stave itself needs no other to share its thickness with.
        let left = if ears.replace_staves() { 0.0 } else { stave - self.blade(ears) };
        let low = basket.body.rim().along.to_mm() as f32;
        let high = low + basket.body.rim().height.to_mm() as f32;
        let radius = self.ear_radius().max(1.0);
        let turn = ear.turn as f32 * std::f32::consts::TAU;
        let mut positions = Vec::new();
        let mut wall = |along: f32, ring: &[[f32; 2]]| {
            let node = surface.at(along);
            positions
                .extend(ring.iter().map(|[aside, out]| node.point(*out, direction(turn + aside / radius))));
        };

        let off = -(ear.off_stave.to_mm() as f32);
        for along in self.tail_stations(ears, low) {
            wall(along, &self.tail_ring(along, left, off));
        }
        let hole = ears.hole_height.to_mm() as f32;
        let shoulder = (self.lashing_height() + SHOULDER).min(hole / 3.0);
        let from = low + WIDENS.min((high - low) / 4.0);
        for step in 0..=3 {
            let along = from + (high + shoulder - from) * step as f32 / 3.0;
            wall(along, &flat_ring(half, left, stave));
        }

        let rim_top = surface.at(high).height;
        let [cos, sin] = direction(turn);
        let mut head = |up: f32, half: f32| {
            positions.extend(flat_ring(half, -thick / 2.0, thick / 2.0).iter().map(|[aside, out]| {
                let out = radius + out;
                [out * cos - aside * sin, out * sin + aside * cos, rim_top + up]
            }));
        };
        head(shoulder + WIDENS.min(hole / 6.0), half);
        let rounding = if self.detail == Detail::Thumbnail { 3 } else { 8 };
        for step in 0..=rounding {
            let (sin, cos) = (std::f32::consts::FRAC_PI_2 * 0.96 * step as f32 / rounding as f32).sin_cos();
            head(hole + half * sin, half * cos);
        }
        positions
    }

    /// Places along a tail, from its end to the rim.
    fn tail_stations(&self, ears: &Ears, low: f32) -> Vec<f32> {
        if ears.replace_staves() {
            return self.stations(low);
        }
        let (end, steps) = (low - self.tail(ears), if self.detail == Detail::Full { 8 } else { 3 });
        (0..=steps).map(|step| end + (low - end) * step as f32 / steps as f32).collect()
    }

    /// The section of the tail: what was taken off the stave, `off` aside from the ear's middle.
    pub(super) fn tail_ring(&self, along: f32, left: f32, off: f32) -> Vec<[f32; 2]> {
        let width = self.basket.body.uprights().width_at(Length::mm(f64::from(along))).to_mm() as f32;
        let stave = self.stave_section(width);
        let [_, half] = extent(&stave, left);
        let upright: CrossSection = stave.iter().map(|[across, out]| [*out, *across]).collect();
        flat_ring(half, left, left)
            .into_iter()
            .enumerate()
            .map(|(index, [across, out])| {
                let face =
                    if index < ACROSS { extent(&upright, across * 0.999)[1].max(left + 0.02) } else { out };
                [off + across, face]
            })
            .collect()
    }
}

/// A flat section: round by aside, between two faces.
pub(super) fn flat_ring(half: f32, inner: f32, outer: f32) -> Vec<[f32; 2]> {
    let across = |step: usize| half * (2.0 * step as f32 / (ACROSS - 1) as f32 - 1.0);
    let face = (0..ACROSS).map(|step| [across(step), outer]);
    face.chain((0..ACROSS).rev().map(|step| [across(step), inner])).collect()
}
