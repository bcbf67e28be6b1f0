//! Staves are flat strips: the lines on which they stand have to be geodesics of the wall. Checked by an integration
//! that knows nothing of the program, which is checked itself against recorded values first.

#[path = "shooting/mod.rs"]
mod shooting;

use std::f64::consts::{FRAC_PI_2, PI};

use basket::Length;
use basket::form::Form;
use basket::pattern::{FootSize, Levels, MouldForm, MouldPattern, MouldPieces, Outline, Side};
use shooting::geodesic;

/// Steps of a differential quotient, round and up.
const NEAR: [f64; 2] = [1e-3, 1e-2];

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
