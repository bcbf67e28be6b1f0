//! Rings that hold a lid: the ledge in the basket, and the collar in the lid's own rim.

use std::f32::consts::TAU;

use basket::lid::{Collar, LidSeat};
use basket::piece::Piece;

use super::super::colour;
use super::super::maker::Maker;
use super::super::mesh::{Ends, round};
use super::super::part::Part;
use super::super::section::section;
use super::super::shape::Shape;
use super::Cover;
use crate::rim_shape::RimShape;

impl Cover<'_> {
    /// The ledge within the basket's wall, laid round as its staves are.
    pub(super) fn ledge(&self) -> Option<Part> {
        let LidSeat::Ledge(ledge) = &self.lid.seat else { return None };
        let maker = self.body;
        let [width, thick] = [ledge.stock.width, ledge.stock.thickness].map(|size| size.to_mm() as f32);
        let section = section(&ledge.stock, width, maker.detail);
        let along = ledge.along.to_mm() as f32;
        let wall = maker.basket.body.uprights().standing.at(ledge.along).to_mm() as f32;
        let ring = |number: usize| {
            // Flat sides outward and inward by turns; a section's flat side lies at 0.
            let outside = -wall - thick * number as f32;
            let is_outward = number.is_multiple_of(2);
            let corner = |[across, high]: &[f32; 2]| {
                [across + width / 2.0, if is_outward { outside - high } else { outside - thick + high }]
            };
            let mut corners: Vec<[f32; 2]> = section.iter().map(corner).collect();
            if is_outward {
                corners.reverse();
            }
            swept(maker, &corners, |[up, out]| {
                let node = maker.surface.at(along + up);
                [node.radius + out * node.out_radius, node.height + out * node.out_height]
            })
        };
        let shape = (0..ledge.rings.len()).map(ring).reduce(Shape::and)?;
        Some(Part::new(Piece::Ledge, colour::stock(&ledge.stock), shape))
    }

    /// The collar, in the rim of the lid that lies plaque down.
    pub(super) fn collar(&self) -> Option<Part> {
        let LidSeat::Collar(collar) = &self.lid.seat else { return None };
        let Collar { stock, length, lap, down, .. } = collar;
        let maker = self.own;
        let width = stock.width.to_mm() as f32;
        let section = section(stock, width, maker.detail);
        let outside = (*length - *lap).to_mm() as f32 / TAU + stock.centroid().to_mm() as f32;
        let top = RimShape::of(maker.basket).lashing.iter().map(|at| at.y).fold(0.0, f64::max);
        let rim = maker.surface.at((maker.basket.body.rim().along.to_mm() + top) as f32).height;
        let middle = rim + down.to_mm() as f32 - width / 2.0;
        let corner = |[across, high]: &[f32; 2]| [*across, -high];
        let corners: Vec<[f32; 2]> = section.iter().rev().map(corner).collect();
        let shape = swept(maker, &corners, |[up, out]| [outside + out, middle + up]);
        let part = Part::new(Piece::Collar, colour::stock(stock), shape);
        maker.outlined(vec![part]).pop()
    }
}

/// A ring whose corners (up, out) lie at radii and heights.
fn swept(maker: &Maker<'_>, corners: &[[f32; 2]], at: impl Fn([f32; 2]) -> [f32; 2]) -> Shape {
    let radius = corners.first().map_or(1.0, |corner| at(*corner)[0]);
    let sides = maker.detail.segments(radius).max(maker.basket.body.uprights().count.min(256));
    let places = |[cos, sin]: [f32; 2]| {
        let at = &at;
        corners.iter().map(move |corner| {
            let [radius, height] = at(*corner);
            [radius * cos, radius * sin, height]
        })
    };
    let positions: Vec<[f32; 3]> = round(sides).into_iter().flat_map(places).collect();
    let per = corners.len();
    Shape::swept(positions, per, Ends::Joined, [0, per / 2])
}
