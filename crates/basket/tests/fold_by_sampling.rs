//! Where a handle comes to rest, against a sampling of the same solids that shares nothing with the
//! program: the bail as a cloud of points all over its faces, turned in small steps, and rim, filler,
//! lashing and wall each as a condition that a point in them meets.

mod sampled;

use std::f64::consts::FRAC_PI_2;

use basket::fittings::{Ears, Fold, SwingHandle};
use basket::pattern::BailCurve;
use sampled::{CONE, Case, Solid, USUAL, basket};

/// Agreement that is asked for, in degrees.
const AGREE: f64 = 0.2;
/// Coarse and fine steps of turning, in degrees.
const STEPS: [f64; 2] = [1.0, 0.04];

/// Whether a place in the plane of the bail lies inside its middle line.
fn within(handle: &SwingHandle, x: f64, y: f64) -> bool {
    let (a, b) = (handle.bow.half_span.to_mm(), handle.bow.rise.to_mm());
    match handle.bow.curve {
        BailCurve::Semicircle => x.hypot(y) < a,
        BailCurve::HalfEllipse => (x / a).hypot(y / b) < 1.0,
        BailCurve::ThreeCentred => {
            let r = handle.bow.corner.expect("it has corners").to_mm();
            // The crown's centre lies where it is as far from the top as from the corner's circle.
            let k = ((a - r).powi(2) - (b - r).powi(2)) / (2.0 * (b - r));
            let joint = (a - r) * (1.0 + r / (a - r).hypot(k));
            if x > joint { (x - a + r).hypot(y) < r } else { x.hypot(y + k) < k + b }
        }
    }
}

/// The cloud of a bail: along the line through the pivots, above it, and before the bail's plane.
fn cloud(handle: &SwingHandle) -> Vec<[f64; 3]> {
    const RAYS: u32 = 240;
    let (thick, wide) = (handle.bow.thickness.to_mm(), handle.bow.width.to_mm());
    let place = |ray: f64| {
        let (sin, cos) = (FRAC_PI_2 * ray / f64::from(RAYS)).sin_cos();
        let (mut inside, mut outside) = (0.0, 2000.0);
        for _ in 0..60 {
            let middle = f64::midpoint(inside, outside);
            if within(handle, middle * cos, middle * sin) { inside = middle } else { outside = middle }
        }
        [inside * cos, inside * sin]
    };
    let share = |number: u32, of: u32| f64::from(number) / f64::from(of) - 0.5;
    let mut cloud = Vec::new();
    for ray in 0..=RAYS {
        let [x, y] = place(f64::from(ray));
        let (before, after) = (place((f64::from(ray) - 0.05).max(0.0)), place(f64::from(ray) + 0.05));
        let (way_x, way_y) = (after[0] - before[0], after[1] - before[1]);
        let length = way_x.hypot(way_y);
        for out in 0..=6 {
            for before in 0..=32 {
                // What lies within its wood touches nothing first.
                if [0, 6].contains(&out) || [0, 32].contains(&before) {
                    let [out, before] = [thick * share(out, 6), wide * share(before, 32)];
                    cloud.push([x + way_y / length * out, y - way_x / length * out, before]);
                }
            }
        }
    }
    cloud
}

/// Degrees below level at which the first point of a cloud meets the solid.
fn rests(cloud: &[[f64; 3]], solid: &Solid, off: f64) -> f64 {
    let meets = |degrees: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        cloud.iter().any(|[along, above, before]| {
            let (aside, below) = (above * cos - before * sin, above * sin + before * cos);
            solid.holds(along.hypot(aside + off), below, aside)
        })
    };
    let [coarse, fine] = STEPS;
    let mut degrees = -90.0;
    while degrees < 90.0 && !meets(degrees) {
        degrees += coarse;
    }
    degrees = (degrees - coarse).max(-90.0);
    while degrees < 90.0 && !meets(degrees) {
        degrees += fine;
    }
    degrees
}

fn found(handle: &SwingHandle) -> f64 {
    match handle.fold {
        Fold::OnWall { below_level, .. } => below_level.to_degrees(),
        Fold::OnRim { above_level } => -above_level.to_degrees(),
    }
}

fn cases() -> Vec<Case> {
    let curves = [
        "",
        "curve = \"three-centred\"",
        "curve = \"half-ellipse\"",
        "curve = \"half-ellipse\"\nrise = \"80 mm\"",
        "curve = \"three-centred\"\nrise = \"95 mm\"\ncorner = \"40 mm\"\nthickness = \"3 mm\"",
        "width = \"25 mm\"\nthickness = \"6 mm\"",
    ];
    let ears = [
        ["on-staves", "12 mm", "1.6 mm", "16 mm"],
        ["shared", "8 mm", "9.5 mm", "18 mm"],
        ["on-staves", "15 mm", "14 mm", "14 mm"],
    ];
    let mut cases = Vec::new();
    for handle in curves {
        for ears in ears {
            cases.push(Case { ears, handle, ..USUAL });
        }
    }
    for mould in [
        ["160 mm", "160 mm", "100 mm", "straight"],
        ["120 mm", "200 mm", "96 mm", "cone"],
        ["300 mm", "320 mm", "140 mm", "cone"],
        ["100 mm", "130 mm", "80 mm", "cone"],
        ["150 mm", "210 mm", "90 mm", "bowl"],
        ["60 mm", "90 mm", "60 mm", "bowl"],
    ] {
        for (ears, handle) in ears.into_iter().zip(["", curves[2], curves[1]]) {
            cases.push(Case { mould, ears, handle, ..USUAL });
        }
    }
    let [thin, _, thick] = ears;
    // Ears as thick as these carry a tall bail past the rim onto the wall.
    let far = ["on-staves", "20 mm", "20 mm", "15 mm"];
    for mould in [
        CONE,
        ["120 mm", "200 mm", "96 mm", "cone"],
        ["160 mm", "160 mm", "100 mm", "straight"],
        ["150 mm", "210 mm", "90 mm", "bowl"],
        ["190 mm", "150 mm", "110 mm", "cone"],
    ] {
        for handle in [curves[2], ""] {
            cases.push(Case { mould, ears: far, handle, ..USUAL });
        }
    }
    cases.extend([
        Case { filler: "none", ears: thin, ..USUAL },
        Case { filler: "round reed 3", ears: thick, ..USUAL },
        Case { hoop: "half round reed 1/2 in", crossed: true, ears: thick, ..USUAL },
        Case { hoop: "flat reed 1/2 in", filler: "round reed 4", ears: thin, handle: curves[1], ..USUAL },
        Case { hoop: "flat oval reed 3/8 in", ears: thick, handle: curves[2], ..USUAL },
    ]);
    cases
}

#[test]
fn a_handle_rests_where_a_cloud_of_its_points_does() {
    let mut rested = [0, 0];
    let mut worst = 0.0_f64;
    for case in cases() {
        let basket = basket(&case);
        let handle = basket.swing().expect("it has a handle");
        let ears: &Ears = basket.ears.as_ref().expect("it has ears");
        let solid = Solid::of(&case, &basket);
        let (cloud, off) = (cloud(handle), ears.off_middle.to_mm());
        let sides = if off == 0.0 { &[off][..] } else { &[off, -off] };
        let sampled = sides.iter().map(|off| rests(&cloud, &solid, *off)).fold(90.0, f64::min);
        let found = found(handle);
        println!(
            "{:?} {:?} {} | {:?} sampled {sampled:.3} rests {:?} room {:?}",
            case.mould,
            case.ears,
            case.handle.replace('\n', ", "),
            handle.fold,
            handle.rests,
            handle.swing_clearance
        );
        worst = worst.max((found - sampled).abs());
        rested[usize::from(matches!(handle.fold, Fold::OnWall { .. }))] += 1;
    }
    println!("on rim and on wall: {rested:?}; worst {worst:.3} degrees");
    assert!(worst <= AGREE, "{worst} degrees");
    assert!(rested.iter().all(|count| *count >= 5), "both ways of resting are tried: {rested:?}");
}

/// The faces of an end: half as wide as the bail, rounded at its tip, as (along, above, before).
fn end_cloud(handle: &SwingHandle) -> Vec<[f64; 3]> {
    let (half, thick, span) =
        (handle.bow.width.to_mm() / 2.0, handle.bow.thickness.to_mm(), handle.bow.half_span.to_mm());
    let end = (handle.bow.cut - handle.bow.arc).to_mm() / 2.0;
    let tip = half.min(end);
    let mut cloud = Vec::new();
    for down in 0..=24 {
        let above = -end * f64::from(down) / 24.0;
        let beyond = (-above - (end - tip)).max(0.0) / tip;
        let reach = half * (1.0 - beyond * beyond).max(0.0).sqrt();
        for across in 0..=12 {
            for out in 0..=4 {
                let [out, across] = [(out, 4.0), (across, 12.0)].map(|(at, of)| f64::from(at) / of - 0.5);
                cloud.push([span + thick * out, above, 2.0 * reach * across]);
            }
        }
    }
    cloud
}

/// The room of the ends is how much they can be grown all round before they touch anything on their way
/// over.
#[test]
fn the_ends_have_the_room_that_they_can_be_grown_by() {
    let mut tried = 0;
    for case in cases().into_iter().step_by(4) {
        let basket = basket(&case);
        let handle = basket.swing().expect("it has a handle");
        let solid = Solid::of(&case, &basket);
        let ears: &Ears = basket.ears.as_ref().expect("it has ears");
        let (cloud, off, room) = (end_cloud(handle), ears.off_middle.to_mm(), handle.swing_clearance.to_mm());
        let touches = |grown: f64| {
            let degrees =
                (0..).map(|step| f64::from(step) * 2.0 - 90.0).take_while(|at| *at <= found(handle));
            degrees.into_iter().any(|degrees| {
                let (sin, cos) = degrees.to_radians().sin_cos();
                cloud.iter().any(|[along, above, before]| {
                    let (aside, below) = (above * cos - before * sin, above * sin + before * cos);
                    (0..26).any(|way| {
                        let way = [way / 9, way / 3 % 3, way % 3].map(|way| f64::from(way) - 1.0);
                        let grown = grown / way.iter().map(|way| way * way).sum::<f64>().sqrt().max(1.0);
                        let [x, y, z] = way.map(|way| way * grown);
                        [off, -off]
                            .iter()
                            .any(|off| solid.holds((along + x).hypot(aside + y + off), below + z, aside + y))
                    })
                })
            })
        };
        println!("{:?} {} room {room:.3}", case.ears, case.handle.replace('\n', ", "));
        assert!(!touches(room * 0.97 - 0.02), "less than {room}");
        assert!(touches(room * 1.2 + 0.05), "more than {room}");
        tried += 1;
    }
    assert!(tried >= 12);
}
