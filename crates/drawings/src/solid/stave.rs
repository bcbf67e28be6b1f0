//! Staves: tapered strips from the bottom of the groove round the turn and up the mould.

use basket::pattern::OvalSide;
use basket::steps::Stage;
use basket::{Length, Piece};

use super::detail::Detail;
use super::maker::Maker;
use super::mesh::{direction, toward};
use super::part::{Part, Turned};
use super::section::{CrossSection, section};
use super::shape::Shape;
use super::{colour, stage};

/// Way over which a stave is thinned to its rest, in mm.
pub(super) const SLOPE: f32 = 0.3;

/// Where a stave is thinned to make room for an ear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Shave {
    /// Index of the stave, from 0.
    pub(super) stave: u32,
    /// Where the thinning begins, along the mould.
    pub(super) from: f32,
    /// Thickness that is left, from the inner face.
    pub(super) left: f32,
}

impl Maker<'_> {
    /// Section of a stave of this width with the side out that the pattern wants.
    pub(super) fn stave_section(&self, width: f32) -> CrossSection {
        let staves = &self.basket.body.staves();
        let mut section = section(&staves.stock, width.max(0.05), self.detail);
        if staves.oval_side == OvalSide::In {
            let thick = staves.uprights.thickness.to_mm() as f32;
            section = section.iter().rev().map(|[across, out]| [*across, thick - out]).collect();
        }
        section
    }

    /// All staves, as long as they are at a stage and thinned so for ears; without those that ears stand for.
    pub(super) fn staves(&self, stage: Stage, shaves: &[Shave]) -> Vec<Part> {
        let basket = self.basket;
        let to = stage::tips(basket, stage);
        let uprights = basket.body.uprights();
        let plain = self.strip(uprights.width, to, None);
        let wide = uprights.wider.as_ref().map(|wider| self.strip(wider.width, to, None));
        let rim_top = (basket.body.rim().along + basket.body.rim().height).to_mm() as f32;
        let ears = basket.ears.as_ref().filter(|ears| ears.replace_staves());
        let is_ear = |number: u32| ears.is_some_and(|ears| ears.each.iter().any(|ear| ear.stave == number));
        let mut parts: Vec<Part> = Vec::new();
        let mut first: Option<(usize, f64)> = None;
        for index in (0..basket.body.uprights().count).filter(|index| !is_ear(index + 1)) {
            let turn = basket.body.uprights().turn(index + 1);
            let at = |turn: f64| toward(turn as f32);
            let angle = at(turn);
            let shave = shaves.iter().find(|shave| shave.stave == index);
            // Where an ear stands the tip is cut at once: the ear's head has its place.
            let width = uprights.full_width(index + 1);
            let own = shave.map(|shave| self.strip(width, to.min(rim_top), Some(*shave)));
            let is_plain = own.is_none() && width == uprights.width;
            let alike = if is_plain { &plain } else { wide.as_ref().unwrap_or(&plain) };
            let shape = own.as_ref().unwrap_or(alike).turned(angle);
            let turned = is_plain.then(|| {
                let (of, from) = *first.get_or_insert((parts.len(), turn));
                Turned { of, angle: at(turn - from) }
            });
            let colour = Some(basket.body.weave.stave_colour(index + 1));
            let substance = colour::dyed(&basket.body.staves().stock, colour);
            parts.push(Part { turned, ..Part::new(Piece::Upright(index + 1), substance, shape) });
        }
        parts
    }

    /// A stave of a full width on the x axis, with its long edges.
    pub(super) fn strip(&self, full: Length, to: f32, shave: Option<Shave>) -> Shape {
        let (basket, surface) = (self.basket, &self.surface);
        let thick = basket.body.uprights().thickness.to_mm() as f32;
        let mut places: Vec<(f32, f32)> = self.stations(to).into_iter().map(|along| (along, thick)).collect();
        if let Some(shave) = shave.filter(|shave| shave.from < to) {
            let full = shave.from + SLOPE;
            let above = places.iter().map(|place| place.0).filter(|along| *along > full);
            let thin: Vec<(f32, f32)> = std::iter::once((shave.from, thick))
                .chain(std::iter::once(full).chain(above).map(|along| (along, shave.left)))
                .collect();
            places.retain(|place| place.0 < shave.from);
            places.extend(thin);
        }
        let mut positions = Vec::new();
        let mut per = 3;
        for (along, most) in places {
            let width = basket.body.uprights().tapered(full, Length::mm(f64::from(along))).to_mm() as f32;
            let node = surface.at(along);
            let round = (node.radius + node.out_radius * thick / 2.0).max(1e-3);
            let section = self.stave_section(width);
            per = section.len();
            // A stave runs upward, so its section is gone round the other way.
            let corners = section.iter().rev();
            positions
                .extend(corners.map(|[across, out]| node.point(out.min(most), direction(across / round))));
        }
        Shape::long(positions, per)
    }

    /// Places along a stave up to this far: close together in the bend, where its distance off the mould changes, at the
    /// end of the taper, and evenly up the wall.
    pub(super) fn stations(&self, to: f32) -> Vec<f32> {
        let basket = self.basket;
        let staves = basket.body.staves();
        let (parts, touch) = (&staves.length_parts, staves.bend.touch.to_mm() as f32);
        let (groove, turn) = (parts.groove.to_mm() as f32, parts.turn.to_mm() as f32);
        let (bends, steps) = match self.detail {
            Detail::Full => (16, 24),
            Detail::Page | Detail::Column => (8, 12),
            Detail::Thumbnail => (4, 6),
        };
        let mut stations = vec![-groove - turn];
        let bent = turn + touch.clamp(0.0, to.max(0.0));
        stations.extend((0..=bends).map(|step| bent * step as f32 / bends as f32 - turn));
        let standing = basket.body.uprights().standing.places().map(|along| along.to_mm() as f32);
        stations.extend(standing.filter(|along| (0.0..=to).contains(along)));
        stations.extend((0..=steps).map(|step| to.max(0.0) * step as f32 / steps as f32));
        let taper = staves.taper.from.to_mm() as f32;
        if taper > 0.0 && taper < to {
            stations.push(taper);
        }
        stations.sort_by(f32::total_cmp);
        stations.dedup_by(|a, b| (*a - *b).abs() < 1e-3);
        stations
    }
}
