//! Photographs rendered from moulds whose side is known, traced again.
//!
//! The pictures are made without anything of the tracing: a mould is cut into slices at many depths, each slice is
//! projected by itself, and a pixel is mould where any of them covers it.

use std::f64::consts::TAU;

use silhouette::{Camera, Failed, Known, Picture, Traced, trace};

/// Width and height of a picture of two megapixels.
const SIZE: [usize; 2] = [1414, 1414];
/// Rows of the table of half widths.
const ROWS: usize = 4000;

/// How a picture was taken.
struct Shot {
    size: [usize; 2],
    /// Millimetres a pixel in the plane of the axis.
    scale: f64,
    distance: f64,
    /// Lean of the picture, in degrees.
    tilt: f64,
    noise: f64,
    blur: usize,
    shadow: f64,
    mould: [f64; 3],
    background: [f64; 3],
}

const PLAIN: Shot = Shot {
    size: SIZE,
    scale: 0.22,
    distance: 1500.0,
    tilt: 0.0,
    noise: 0.0,
    blur: 0,
    shadow: 0.0,
    mould: [168.0, 120.0, 72.0],
    background: [226.0, 226.0, 222.0],
};

/// Half width of the outline at even heights of the picture, from the lowest to the highest, in mm; the eye stands at
/// half the mould's height.
fn outline(radius: &dyn Fn(f64) -> f64, height: f64, distance: f64) -> ([f64; 2], Vec<f64>) {
    let eye = height / 2.0;
    let ends = [-height * 0.2, height * 1.2];
    let row = |number: usize| {
        let up = ends[0] + (ends[1] - ends[0]) * number as f64 / (ROWS - 1) as f64;
        (-700..=700).map(|step| f64::from(step) * 0.25).fold(0.0_f64, |widest, depth| {
            // A line of sight at this height meets this level at this depth beyond the axis.
            let at = eye + (up - eye) * (distance + depth) / distance;
            let round = if (0.0..=height).contains(&at) { radius(at) } else { 0.0 };
            let half = (round * round - depth * depth).max(0.0).sqrt() * distance / (distance + depth);
            widest.max(half)
        })
    };
    (ends, (0..ROWS).map(row).collect())
}

fn rendered(radius: &dyn Fn(f64) -> f64, height: f64, shot: &Shot) -> Vec<u8> {
    let [width, tall] = shot.size;
    let (ends, halves) = outline(radius, height, shot.distance);
    let (sin, cos) = shot.tilt.to_radians().sin_cos();
    let inside = |x: f64, y: f64| {
        let (right, down) = ((x - width as f64 / 2.0) * shot.scale, (y - tall as f64 / 2.0) * shot.scale);
        let (aside, up) = (right * cos + down * sin, height / 2.0 + right * sin - down * cos);
        let row = (up - ends[0]) / (ends[1] - ends[0]) * (ROWS - 1) as f64;
        let half = |row: f64| halves.get(row.max(0.0) as usize).copied().unwrap_or(0.0);
        row >= 0.0 && aside.abs() < half(row) + (half(row + 1.0) - half(row)) * row.fract()
    };
    let mut random = fastrand::Rng::with_seed(7);
    let mut linear = vec![[0.0_f64; 3]; width * tall];
    for y in 0..tall {
        for x in 0..width {
            let part = |across: f64, down: f64| inside(x as f64 + across, y as f64 + down);
            let corners = [part(0.0, 0.0), part(1.0, 0.0), part(0.0, 1.0), part(1.0, 1.0)];
            let thirds = || (0..9).map(|third| (f64::from(third % 3), f64::from(third / 3)));
            let covered = match corners {
                [true, true, true, true] => 1.0,
                [false, false, false, false] => 0.0,
                _ => thirds().filter(|(x, y)| part((x + 0.5) / 3.0, (y + 0.5) / 3.0)).count() as f64 / 9.0,
            };
            let (u, v) = (x as f64 / width as f64 - 0.5, y as f64 / tall as f64 - 0.5);
            // Light that falls off to one side, a soft shadow beside the foot, and a mould lit from the left.
            let light = 1.0 - 0.12 * u + 0.06 * v;
            let shadow = 1.0 - shot.shadow * (-((u - 0.25).powi(2) + (v - 0.22).powi(2)) / 0.012).exp();
            let round = 1.0 - 0.35 * u;
            linear[y * width + x] = [0, 1, 2].map(|at| {
                covered * shot.mould[at] * round + (1.0 - covered) * shot.background[at] * light * shadow
            });
        }
    }
    let reach = shot.blur as isize;
    let blurred = |x: usize, y: usize, at: usize, along: [isize; 2], from: &[[f64; 3]]| {
        let place = |off: isize| {
            let x = (x as isize + along[0] * off).clamp(0, width as isize - 1) as usize;
            let y = (y as isize + along[1] * off).clamp(0, tall as isize - 1) as usize;
            from[y * width + x][at]
        };
        (-reach..=reach).map(place).sum::<f64>() / (2 * reach + 1) as f64
    };
    for along in [[1, 0], [0, 1]] {
        if reach > 0 {
            let from = linear.clone();
            linear = (0..width * tall)
                .map(|at| [0, 1, 2].map(|colour| blurred(at % width, at / width, colour, along, &from)))
                .collect();
        }
    }
    let mut noise = || (0..4).map(|_| random.f64() - 0.5).sum::<f64>() * shot.noise * 1.73;
    linear.iter().flatten().map(|value| (value + noise()).round().clamp(0.0, 255.0) as u8).collect()
}

fn traced(bytes: &[u8], shot: &Shot, known: Known) -> Result<Traced, Failed> {
    let [width, height] = shot.size.map(|side| side as u32);
    let picture = Picture::new(width, height, bytes).expect("as many bytes as pixels");
    trace(&picture, Camera { distance_mm: shot.distance, is_measured: true, foot_up: false }, known)
}

/// The largest error of the radius over all heights, as a share of the largest diameter.
fn error(traced: &Traced, radius: &dyn Fn(f64) -> f64, height: f64) -> f64 {
    let side = &traced.side;
    let steps = side.radii.len() - 1;
    let widest = (0..=100).map(|step| radius(height * f64::from(step) / 100.0)).fold(0.0, f64::max);
    let off = |(number, found): (usize, &f64)| {
        (found - radius((side.height * number as f64 / steps as f64).min(height))).abs() * 2.0
    };
    side.radii.iter().enumerate().map(off).fold((side.height - height).abs() / 2.0, f64::max) / (2.0 * widest)
}

fn cone(up: f64) -> f64 {
    75.0 + 45.0 * up / 120.0
}

/// An arc that ends upright at the rim, 52 mm wider there than at the foot.
fn bowl(up: f64) -> f64 {
    let arc: f64 = (52.0 * 52.0 + 110.0 * 110.0) / 104.0;
    114.0 - arc + (arc * arc - (110.0 - up).powi(2)).sqrt()
}

/// Widest at two thirds of its height, 6 mm narrower in radius at the top.
fn bellied(up: f64) -> f64 {
    let share = up / 140.0;
    80.0 + 34.0 * (share * std::f64::consts::PI * 0.75).sin()
}

/// A name, the radius at a height, and the height.
type Turned = (&'static str, fn(f64) -> f64, f64);

const MOULDS: [Turned; 3] = [("cone", cone, 120.0), ("bowl", bowl, 110.0), ("bellied", bellied, 140.0)];

fn widest_girth(radius: fn(f64) -> f64, height: f64) -> f64 {
    TAU * (0..=1000).map(|step| radius(height * f64::from(step) / 1000.0)).fold(0.0, f64::max)
}

#[test]
fn a_clear_picture_gives_the_side_to_a_third_of_a_percent() {
    for (name, radius, height) in MOULDS {
        let bytes = rendered(&radius, height, &PLAIN);
        let girth = traced(&bytes, &PLAIN, Known::Girth(widest_girth(radius, height))).expect(name);
        let off = error(&girth, &radius, height);
        assert!(off <= 0.003, "{name}: {off}");
    }
}

#[test]
fn noise_blur_shadow_and_tilt_are_borne() {
    for (name, radius, height) in MOULDS {
        let shot = Shot { noise: 6.0, blur: 1, shadow: 0.35, tilt: -4.0, ..PLAIN };
        let bytes = rendered(&radius, height, &shot);
        let by_girth = traced(&bytes, &shot, Known::Girth(widest_girth(radius, height))).expect(name);
        let off = error(&by_girth, &radius, height);
        assert!(off <= 0.003, "{name}: {off}");
        assert!((by_girth.axis.tilt.to_degrees() + 4.0).abs() < 0.2, "{}", by_girth.axis.tilt.to_degrees());
        let by_height = traced(&bytes, &shot, Known::Height(height)).expect(name);
        let off = error(&by_height, &radius, height);
        assert!(off <= 0.01, "{name}: {off}");
    }
}
