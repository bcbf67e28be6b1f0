//! Staves are flat strips: the lines on which they stand have to be geodesics of the wall. Checked by an integration
//! that knows nothing of the program, which is checked itself against recorded values first.

use std::f64::consts::{FRAC_PI_2, PI};

use basket::Length;
use basket::form::Form;
use basket::pattern::{FootSize, Levels, MouldForm, MouldPattern, MouldPieces, Outline, Side};

type Place = [f64; 3];

/// A surface, by one coordinate round it and one up it.
type Surface<'a> = &'a dyn Fn(f64, f64) -> Place;

/// Steps of a differential quotient, round and up, and steps of the integration.
const NEAR: [f64; 2] = [1e-3, 1e-2];
const STEPS: u32 = 400;

fn plus(a: Place, b: Place, times: f64) -> Place {
    [a[0] + b[0] * times, a[1] + b[1] * times, a[2] + b[2] * times]
}

fn dot(a: Place, b: Place) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn size(a: Place) -> f64 {
    dot(a, a).sqrt()
}

/// First derivatives round and up, then the second ones: round twice, mixed, up twice.
fn derivatives(surface: Surface<'_>, [u, v]: [f64; 2], [du, dv]: [f64; 2]) -> [Place; 5] {
    let at = |i: f64, j: f64| surface(u + i * du, v + j * dv);
    let here = at(0.0, 0.0);
    let first =
        |ahead: Place, back: Place, step: f64| plus(ahead, back, -1.0).map(|part| part / (2.0 * step));
    let second = |ahead: Place, back: Place, step: f64| {
        plus(plus(ahead, back, 1.0), here, -2.0).map(|part| part / (step * step))
    };
    let mixed = plus(plus(at(1.0, 1.0), at(-1.0, -1.0), 1.0), plus(at(1.0, -1.0), at(-1.0, 1.0), 1.0), -1.0);
    [
        first(at(1.0, 0.0), at(-1.0, 0.0), du),
        first(at(0.0, 1.0), at(0.0, -1.0), dv),
        second(at(1.0, 0.0), at(-1.0, 0.0), du),
        mixed.map(|part| part / (4.0 * du * dv)),
        second(at(0.0, 1.0), at(0.0, -1.0), dv),
    ]
}

/// Change of place and direction on a geodesic: its second derivative is square to the surface.
fn slope(surface: Surface<'_>, [u, v, to_u, to_v]: [f64; 4], near: [f64; 2]) -> [f64; 4] {
    let [xu, xv, xuu, xuv, xvv] = derivatives(surface, [u, v], near);
    let bend = plus(plus(xuu.map(|part| part * to_u * to_u), xuv, 2.0 * to_u * to_v), xvv, to_v * to_v);
    let (e, f, g) = (dot(xu, xu), dot(xu, xv), dot(xv, xv));
    let (p, q) = (dot(bend, xu), dot(bend, xv));
    let whole = e * g - f * f;
    [to_u, to_v, -(p * g - q * f) / whole, -(q * e - p * f) / whole]
}

/// Where the geodesic that begins at `u` and the foot, leaning so far from square to the foot, comes to `top`: its
/// place round, and its lean from the line up the surface there. Runge and Kutta's fourth order, by way up.
fn geodesic(surface: Surface<'_>, u: f64, lean: f64, (top, near): (f64, [f64; 2])) -> [f64; 2] {
    let [xu, xv, ..] = derivatives(surface, [u, 0.0], near);
    // Square to the way round, in the surface.
    let across = plus(xv, xu, -dot(xu, xv) / dot(xu, xu));
    let (sin, cos) = lean.sin_cos();
    let to_v = cos / size(across);
    let to_u = sin / size(xu) - to_v * dot(xu, xv) / dot(xu, xu);
    let mut state = [u, 0.0, to_u, to_v];
    let step = top / f64::from(STEPS);
    let by_v = |state: [f64; 4]| {
        let slope = slope(surface, state, near);
        slope.map(|part| part / slope[1])
    };
    let moved = |state: [f64; 4], by: [f64; 4], times: f64| {
        [0, 1, 2, 3].map(|part: usize| state[part] + by[part] * times)
    };
    for _ in 0..STEPS {
        let a = by_v(state);
        let b = by_v(moved(state, a, step / 2.0));
        let c = by_v(moved(state, b, step / 2.0));
        let d = by_v(moved(state, c, step));
        state = [0, 1, 2, 3].map(|part: usize| {
            state[part] + step / 6.0 * (a[part] + 2.0 * b[part] + 2.0 * c[part] + d[part])
        });
    }
    let [u, v, to_u, to_v] = state;
    let [xu, xv, ..] = derivatives(surface, [u, v], near);
    let way = plus(xu.map(|part| part * to_u), xv, to_v);
    [u, (dot(way, xv) / size(way) / size(xv)).clamp(-1.0, 1.0).acos()]
}

fn close(found: f64, wanted: f64, allowance: f64) {
    assert!((found - wanted).abs() <= allowance, "{found} is not {wanted} within {allowance}");
}

/// Source: on a surface of revolution `r sin α` is constant (A. C. Clairaut, 1733); the values by adaptive quadrature,
/// computed independently: on `r = 100 + 40 sin(πz/300)`, from 8° at `z = 0`, the lean at `z = 150` is 5.705° and the
/// way round 8.276°.
#[test]
fn the_integration_keeps_clairauts_constant() {
    let surface = |u: f64, z: f64| {
        let r = 100.0 + 40.0 * (PI * z / 300.0).sin();
        [r * u.cos(), r * u.sin(), z]
    };
    let [round, lean] = geodesic(&surface, 0.0, 8.0_f64.to_radians(), (150.0, NEAR));
    close(lean.to_degrees(), 5.705, 5e-4);
    close(round.to_degrees(), 8.276, 5e-4);
}

/// Source: recorded from an independent integration of the geodesic equations and adaptive quadrature: on a mould
/// scaled from the ellipse 120 × 70 by `1 + 0.35 sin(πz/300)`, 150 high, the geodesic that starts square to the base
/// lands up to 16.076 mm from the line of equal angle along the rim.
#[test]
fn on_a_scaled_mould_the_lines_of_equal_angle_are_no_geodesics() {
    let surface = |u: f64, z: f64| {
        let scale = 1.0 + 0.35 * (PI * z / 300.0).sin();
        [120.0 * scale * u.cos(), 70.0 * scale * u.sin(), z]
    };
    let along_rim = |from: f64, to: f64| {
        let steps = 200;
        let speed = |u: f64| 1.35 * ((120.0 * u.sin()).powi(2) + (70.0 * u.cos()).powi(2)).sqrt();
        let step = (to - from) / f64::from(steps);
        (0..steps).map(|number| speed(from + (f64::from(number) + 0.5) * step) * step).sum::<f64>().abs()
    };
    let off = |u: f64| along_rim(u, geodesic(&surface, u, 0.0, (150.0, NEAR))[0]);
    let worst = (0..=45).map(|number| FRAC_PI_2 * f64::from(number) / 45.0).fold([0.0, 0.0], |worst, u| {
        let off = off(u);
        if off > worst[1] { [u, off] } else { worst }
    });
    let refined = (-20..=20).map(|number| off(worst[0] + f64::from(number) * 0.002)).fold(worst[1], f64::max);
    close(refined, 16.076, 1e-3);
}

/// The program's own moulds: levels at an even distance from the foot, on which the lines square to the foot are
/// geodesics (differential geometry: they are curves of planes that are square to the surface).
#[test]
fn staves_stand_on_geodesics_of_every_mould() {
    let size = FootSize { length: Length::mm(240.0), width: Length::mm(140.0) };
    let outlines = [
        Outline::Oval { size, fullness: 0.0 },
        Outline::Oval { size, fullness: 0.3 },
        Outline::Stadium(size),
        Outline::Rectangle { size, corner: Length::mm(40.0) },
    ];
    for outline in outlines {
        for side in [Side::Bowl, Side::Cone] {
            let drawn = MouldForm::Drawn {
                base: size.length,
                rim: Length::mm(300.0),
                height: Length::mm(120.0),
                side,
            };
            let form = Form::on_mould(&MouldPattern {
                outline: outline.clone(),
                form: drawn,
                levels: Levels::Even,
                pieces: MouldPieces::One,
            });
            // The foot of a bowl lies level: the way up begins a little above it, where it can be told.
            let from = form.arc().to_mm() * 0.05;
            let surface =
                |u: f64, v: f64| form.at(Length::mm(from + v), u, Length::ZERO).point.map(Length::to_mm);
            let top = form.arc().to_mm() * 0.9;
            for turn in [0.011, 0.06, 0.13, 0.19, 0.26, 0.4] {
                let [end, _] = geodesic(&surface, turn, 0.0, (top, [1e-4, 1e-1]));
                let off = (end - turn) * form.girth_top().to_mm();
                assert!(off.abs() < 0.05, "{outline:?} {side:?} at {turn}: {off} mm");
            }
        }
    }
}
