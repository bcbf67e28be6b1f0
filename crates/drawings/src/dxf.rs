//! Outlines for a saw or router that is driven by a program, in millimetres: DXF and SVG.
//!
//! DXF has closed polylines on named layers, as every reader since release 12 takes them (Autodesk, *DXF Reference*,
//! group codes of POLYLINE, VERTEX and SEQEND). SVG has a path for each, by the same names.

use std::fmt::Write as _;

use basket::Basket;
use basket::form::Layer;

use crate::outlines::{Outline, outlines};

/// Line of an outline in SVG, in mm.
const LINE: f64 = 0.2;
/// What is left free round all of them in SVG, in mm.
const MARGIN: f64 = 2.0;

/// The wooden parts and the forms round which others are bent, as DXF.
pub fn outlines_dxf(basket: &Basket, layers: &[Layer]) -> String {
    let mut file = File::begin();
    for Outline { name, corners } in outlines(basket, layers) {
        file.ring(&name, &corners);
    }
    file.end()
}

/// The same as SVG at true size.
pub fn outlines_svg(basket: &Basket, layers: &[Layer]) -> String {
    let all = outlines(basket, layers);
    let places = || all.iter().flat_map(|outline| &outline.corners);
    let least = [0, 1].map(|side| places().map(|at| at[side]).fold(f64::INFINITY, f64::min) - MARGIN);
    let most = [0, 1].map(|side| places().map(|at| at[side]).fold(f64::NEG_INFINITY, f64::max) + MARGIN);
    let [wide, high] = [0, 1].map(|side| (most[side] - least[side]).max(0.0));
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{wide:.3}mm\" height=\"{high:.3}mm\" \
         viewBox=\"{:.3} {:.3} {wide:.3} {high:.3}\" fill=\"none\" stroke=\"#000\" stroke-width=\"{LINE}\">\n",
        least[0], -most[1],
    );
    for Outline { name, corners } in all {
        let places = corners.iter().map(|[x, y]| format!("{x:.4},{:.4}", -y));
        let _ = writeln!(svg, "<path id=\"{name}\" d=\"M{}Z\"/>", places.collect::<Vec<_>>().join(" "));
    }
    svg.push_str("</svg>\n");
    svg
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
