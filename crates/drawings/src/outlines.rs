//! The outlines of the wooden parts, for a saw or router that is driven by a program: what DXF and SVG are written
//! from. Millimetres, seen from above or from the front, y upward.

use std::f64::consts::TAU;

use basket::form::Layer;
use basket::{Basket, Length};
use kurbo::{PathEl, Point};

use crate::drawing::TOLERANCE;
use crate::ear;

/// Corners of an outline: on a radius of 300 mm they lie within 0.01 mm of it.
const CORNERS: u32 = 720;
/// Corners of a round hole.
const HOLE: u32 = 90;
/// Steps along half a bow.
const BOW: u32 = 90;
/// Wood below the feet of a bow on the form round which it is bent, in mm.
const FOOT: f64 = 30.0;

/// A closed outline with its name.
pub(crate) struct Outline {
    pub(crate) name: String,
    pub(crate) corners: Vec<[f64; 2]>,
}

/// For each board of the mould the larger of its faces, its blank and its hole; the base with the bottom of its groove
/// and its hole; the forms round which hoops and handle are bent; the blank of an ear.
pub(crate) fn outlines(basket: &Basket, layers: &[Layer]) -> Vec<Outline> {
    let form = &basket.body.form;
    let ring = |name: String, (height, radius): (Length, Length)| {
        let level = form.level(height, radius);
        let corners = (0..CORNERS).map(|corner| level.place(f64::from(corner) / f64::from(CORNERS)));
        Outline { name, corners: corners.collect() }
    };
    let mut all = Vec::new();
    for layer in layers {
        let name = format!("BOARD_{}", layer.number);
        all.push(ring(name.clone(), layer.larger()));
        all.push(ring(format!("{name}_BLANK"), layer.blank_level()));
        all.extend(layer.hole_level().map(|hole| ring(format!("{name}_HOLE"), hole)));
    }
    let (base, rim) = (basket.body.base(), basket.body.rim());
    all.push(ring("BASE".to_owned(), (Length::ZERO, base.edge_radius())));
    all.push(ring("BASE_GROOVE".to_owned(), (Length::ZERO, base.groove_radius())));
    all.push(Outline { name: "BASE_HOLE".to_owned(), corners: circle(base.screw_hole.to_mm() / 2.0) });
    // Hoops are bent round what they have inside: the outer one the staves, the inner one its own form.
    let height = form.profile.at(rim.along + rim.height / 2.0).height;
    let outer = rim.outer_radius(basket.body.uprights()) - rim.outer.stock.thickness;
    all.push(ring("HOOP_OUTER_FORM".to_owned(), (height, outer)));
    all.push(ring("HOOP_INNER_FORM".to_owned(), (height, rim.inner_radius())));
    all.extend(handle_form(basket));
    all.extend(
        basket
            .ears
            .as_ref()
            .map(|ears| Outline { name: "EAR".to_owned(), corners: flat(&ear::blank(basket, ears)) }),
    );
    all
}

/// The form round which the handle is bent: the inside of its bow, with some wood below its feet.
fn handle_form(basket: &Basket) -> Option<Outline> {
    let bow = basket.bow()?;
    let bail = bow.bail()?;
    let half = bow.thickness.to_mm() / 2.0;
    let inside = |step: u32| {
        let share = f64::from(step) / f64::from(BOW);
        let ((x, y), (out_x, out_y)) = (bail.point(share), bail.outward(share));
        [x.to_mm() - half * out_x, y.to_mm() - half * out_y]
    };
    let right = (0..BOW).map(inside);
    let left = (0..=BOW).rev().map(inside).map(|[x, y]| [-x, y]);
    let mut corners: Vec<[f64; 2]> = right.chain(left).collect();
    let ends = [corners.last().copied()?, corners.first().copied()?];
    corners.extend(ends.map(|[x, _]| [x, -FOOT]));
    Some(Outline { name: "HANDLE_FORM".to_owned(), corners })
}

fn circle(radius: f64) -> Vec<[f64; 2]> {
    let corner = |number: u32| {
        let (sin, cos) = (f64::from(number) / f64::from(HOLE) * TAU).sin_cos();
        [radius * cos, radius * sin]
    };
    (0..HOLE).map(corner).collect()
}

/// A closed path as corners, y upward.
fn flat(path: &kurbo::BezPath) -> Vec<[f64; 2]> {
    let mut corners: Vec<[f64; 2]> = Vec::new();
    kurbo::flatten(path, TOLERANCE, |element| {
        if let PathEl::MoveTo(Point { x, y }) | PathEl::LineTo(Point { x, y }) = element {
            corners.push([x, -y]);
        }
    });
    corners
}
