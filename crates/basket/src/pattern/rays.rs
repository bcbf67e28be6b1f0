//! Outlines by rays: from a middle to the edge at even steps of angle, counter-clockwise.

use std::f64::consts::TAU;

use crate::measure::Length;

/// The ends of such rays, along and across from the middle.
pub fn ray_ends(rays: &[Length]) -> impl Iterator<Item = [Length; 2]> {
    let step = TAU / rays.len().max(1) as f64;
    rays.iter().enumerate().map(move |(number, ray)| {
        let (sin, cos) = libm::sincos(step * number as f64);
        [*ray * cos, *ray * sin]
    })
}

/// What a band round these places spans: the corners of their convex hull, counter-clockwise (A. M. Andrew, "Another
/// efficient algorithm for convex hulls in two dimensions", Information Processing Letters 9 (1979), pp. 216–219).
pub fn spanned(places: &[[f64; 2]]) -> Vec<[f64; 2]> {
    let mut sorted: Vec<[f64; 2]> =
        places.iter().copied().filter(|at| at.iter().all(|part| part.is_finite())).collect();
    sorted.sort_by(|a, b| a[0].total_cmp(&b[0]).then(a[1].total_cmp(&b[1])));
    sorted.dedup();
    let half = |places: &mut dyn Iterator<Item = [f64; 2]>| {
        let mut corners: Vec<[f64; 2]> = Vec::new();
        for at in places {
            while let [.., before, last] = corners.as_slice() {
                if cross(less(*last, *before), less(at, *last)) > 0.0 {
                    break;
                }
                corners.pop();
            }
            corners.push(at);
        }
        corners.pop();
        corners
    };
    let mut corners = half(&mut sorted.iter().copied());
    corners.extend(half(&mut sorted.iter().rev().copied()));
    corners
}

/// So many rays from the origin to the edge of a convex polygon round it, in the polygon's own unit.
pub fn rays_to(corners: &[[f64; 2]], count: usize) -> Vec<f64> {
    let edges: Vec<_> = corners.iter().copied().zip(corners.iter().copied().cycle().skip(1)).collect();
    let ray = |number: usize| {
        let (sin, cos) = libm::sincos(TAU * number as f64 / count.max(1) as f64);
        let reach = |(from, to): &([f64; 2], [f64; 2])| {
            let chord = less(*to, *from);
            let facing = cross([cos, sin], chord);
            // Edges that the ray leaves through; the nearest of their lines is the polygon's own.
            (facing > 0.0).then(|| cross(*from, chord) / facing)
        };
        edges.iter().filter_map(reach).fold(f64::INFINITY, f64::min)
    };
    (0..count).map(ray).collect()
}

fn less(a: [f64; 2], b: [f64; 2]) -> [f64; 2] {
    [a[0] - b[0], a[1] - b[1]]
}

fn cross(a: [f64; 2], b: [f64; 2]) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

#[cfg(test)]
mod tests {
    use super::{rays_to, spanned};

    #[test]
    fn a_band_spans_hollows_and_a_ray_ends_on_it() {
        let dented = [[2.0, -1.0], [2.0, 1.0], [0.0, 0.5], [-2.0, 1.0], [-2.0, -1.0], [0.0, -1.0]];
        let corners = spanned(&dented);
        assert_eq!(corners, [[-2.0, -1.0], [2.0, -1.0], [2.0, 1.0], [-2.0, 1.0]]);
        let rays = rays_to(&corners, 4);
        for (ray, wanted) in rays.into_iter().zip([2.0, 1.0, 2.0, 1.0]) {
            assert!((ray - wanted).abs() < 1e-12, "{ray} is not {wanted}");
        }
    }
}
