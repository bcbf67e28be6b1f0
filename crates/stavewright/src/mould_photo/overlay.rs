//! What was traced, drawn over the photograph.

use image::{Rgb, RgbImage};
use silhouette::Traced;

/// Colours of the edges and of the axis: seen on light and on dark wood.
const EDGE: Rgb<u8> = Rgb([230, 0, 120]);
const AXIS: Rgb<u8> = Rgb([0, 120, 230]);
/// Steps between places of an edge and of the axis, in pixels.
const STEP: f64 = 0.5;
/// Pixels of a dash of the axis.
const DASH: f64 = 12.0;

/// The photograph with both edges and the axis as they were found.
pub(crate) fn marked(mut photo: RgbImage, traced: &Traced) -> RgbImage {
    let thick = (photo.width().max(photo.height()) / 900).max(1);
    for pair in traced.edges.windows(2) {
        let [from, to] = [pair[0], pair[1]];
        let steps =
            ((to.sides[0] - from.sides[0]).abs().max((to.sides[1] - from.sides[1]).abs()) / STEP).ceil();
        for step in 0..=(steps as u32).min(2000) {
            let share = f64::from(step) / steps.max(1.0);
            let mix = |from: f64, to: f64| from + (to - from) * share;
            let up = mix(from.up, to.up);
            let [left, right] = [0, 1].map(|side| mix(from.sides[side], to.sides[side]));
            for aside in [-left, right] {
                dot(&mut photo, traced.axis.place(up, aside), thick, EDGE);
            }
        }
    }
    let ends = [traced.edges.first(), traced.edges.last()].map(|edge| edge.map_or(0.0, |edge| edge.up));
    let mut up = ends[0];
    while up < ends[1] {
        if (up / DASH).rem_euclid(2.0) < 1.0 {
            dot(&mut photo, traced.axis.place(up, 0.0), thick, AXIS);
        }
        up += STEP;
    }
    photo
}

fn dot(photo: &mut RgbImage, [x, y]: [f64; 2], thick: u32, colour: Rgb<u8>) {
    let corner = |at: f64| at.round() as i64 - i64::from(thick / 2);
    for down in 0..i64::from(thick) {
        for right in 0..i64::from(thick) {
            let place = [corner(x) + right, corner(y) + down].map(u32::try_from);
            if let [Ok(x), Ok(y)] = place
                && let Some(pixel) = photo.get_pixel_mut_checked(x, y)
            {
                *pixel = colour;
            }
        }
    }
}
