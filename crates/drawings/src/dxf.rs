//! Outlines for a saw or router that is driven by a program: DXF, in millimetres.
//!
//! Written are closed polylines on named layers, as every reader since release 12 takes them (Autodesk, *DXF
//! Reference*, group codes of POLYLINE, VERTEX and SEQEND).

use std::fmt::Write as _;

use basket::form::Layer;
use basket::{Basket, Length};

use crate::around::Around;

/// Corners of an outline: on a radius of 300 mm they lie within 0.01 mm of it.
const CORNERS: u32 = 720;

/// The wooden parts: for each board of the mould the larger of its faces, its blank and its hole; the base with the
/// bottom of its groove and its hole.
pub fn outlines_dxf(basket: &Basket, layers: &[Layer]) -> String {
    let around = Around::of(basket);
    let base = basket.body.base();
    let mut file = File::begin();
    for layer in layers {
        let name = format!("BOARD_{}", layer.number);
        let ring =
            |(height, radius): (Length, Length)| around.level(height.to_mm(), radius.to_mm()).ring(CORNERS);
        file.ring(&name, &ring(layer.larger()));
        file.ring(&format!("{name}_BLANK"), &ring(layer.blank_level()));
        if let Some(hole) = layer.hole_level() {
            file.ring(&format!("{name}_HOLE"), &ring(hole));
        }
    }
    let foot = |radius: Length| around.at_foot(radius.to_mm()).ring(CORNERS);
    file.ring("BASE", &foot(base.edge_radius()));
    file.ring("BASE_GROOVE", &foot(base.groove_radius()));
    file.ring("BASE_HOLE", &circle(base.screw_hole.to_mm() / 2.0));
    file.end()
}

fn circle(radius: f64) -> Vec<[f64; 2]> {
    let corner = |number: u32| {
        let (sin, cos) = (f64::from(number) / 90.0 * std::f64::consts::TAU).sin_cos();
        [radius * cos, radius * sin]
    };
    (0..90).map(corner).collect()
}

/// A file that is being written.
struct File(String);

impl File {
    fn begin() -> Self {
        let mut file = Self(String::new());
        file.pairs(&[(0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"), (0, "ENDSEC")]);
        file.pairs(&[(0, "SECTION"), (2, "ENTITIES")]);
        file
    }

    fn pairs(&mut self, pairs: &[(u16, &str)]) {
        for (code, value) in pairs {
            let _ = write!(self.0, "{code}\r\n{value}\r\n");
        }
    }

    fn ring(&mut self, layer: &str, corners: &[[f64; 2]]) {
        self.pairs(&[
            (0, "POLYLINE"),
            (8, layer),
            (66, "1"),
            (70, "1"),
            (10, "0.0"),
            (20, "0.0"),
            (30, "0.0"),
        ]);
        for [x, y] in corners {
            let (x, y) = (format!("{x:.4}"), format!("{y:.4}"));
            self.pairs(&[(0, "VERTEX"), (8, layer), (10, &x), (20, &y), (30, "0.0")]);
        }
        self.pairs(&[(0, "SEQEND"), (8, layer)]);
    }

    fn end(mut self) -> String {
        self.pairs(&[(0, "ENDSEC"), (0, "EOF")]);
        self.0
    }
}
