//! Where a handle comes to rest, against a sampling of the same solids that shares nothing with the
//! program: the bail as a cloud of points all over its faces, turned in small steps, and rim, filler,
//! lashing and wall each as a condition that a point in them meets.

use std::f64::consts::FRAC_PI_2;

use basket::fittings::{Ears, Fold, Handle};
use basket::pattern::BailCurve;
use basket::stock::{Kind, Material};
use basket::{Basket, Catalogue, Hand, assemble};

/// Agreement that is asked for, in degrees.
const AGREE: f64 = 0.2;
/// Coarse and fine steps of turning, in degrees.
const STEPS: [f64; 2] = [0.5, 0.02];

struct Case {
    mould: [&'static str; 4],
    stave: &'static str,
    hoop: &'static str,
    filler: &'static str,
    crossed: bool,
    ears: [&'static str; 4],
    handle: &'static str,
}

const CONE: [&str; 4] = ["180 mm", "200 mm", "120 mm", "cone"];
const USUAL: Case = Case {
    mould: CONE,
    stave: "flat oval reed 1/4 in",
    hoop: "half round reed 3/8 in",
    filler: "cane common",
    crossed: false,
    ears: ["on-staves", "12 mm", "1.6 mm", "16 mm"],
    handle: "",
};

fn basket(case: &Case) -> Basket {
    let [base, rim, height, side] = case.mould;
    let [placing, width, thickness, hole] = case.ears;
    let (stave, hoop, filler, handle) = (case.stave, case.hoop, case.filler, case.handle);
    let filler = if filler == "none" {
        "filler = \"none\"".into()
    } else {
        format!("filler = {{ stock = \"{filler}\" }}")
    };
    let style = if case.crossed { "crossed" } else { "single" };
    let text = format!(
        r#"title = "Sampled"
units = "mm"
{filler}
[mould]
base = "{base}"
rim = "{rim}"
height = "{height}"
side = "{side}"
[staves]
stock = "{stave}"
[weave]
courses = [{{ weave = "plain", weaver = "cane medium", until = "14 mm below mould top" }}]
[rim]
stock = "{hoop}"
[lashing]
weaver = "cane fine"
style = "{style}"
[ears]
material = "brass"
placing = "{placing}"
width = "{width}"
thickness = "{thickness}"
hole = "{hole}"
[handle]
kind = "swing"
{handle}
"#
    );
    let catalogue = Catalogue::built_in();
    let pattern =
        basket::pattern::read(&text, catalogue).unwrap_or_else(|wrong| panic!("{wrong:#?}\n{text}"));
    assemble(&pattern, catalogue, &Hand::USUAL)
}

/// The wall as an axis of the section and its inverse: how far out from the staves' inner face and how
/// far along the wall a place lies.
enum Wall {
    /// From this radius at the foot, leaning out by the angle with this sine and cosine.
    Cone { base: f64, sin: f64, cos: f64 },
    /// An arc about this radius and height, of this radius; along is measured from this angle below level.
    Bowl { centre: [f64; 2], radius: f64, from: f64 },
}

impl Wall {
    fn of(case: &Case) -> Self {
        let mm = |text: &str| text.trim_end_matches(" mm").parse::<f64>().expect("a length in mm");
        let [base, rim, height, side] = case.mould;
        let (base, height) = (mm(base) / 2.0, mm(height));
        let wider = if side == "straight" { 0.0 } else { mm(rim) / 2.0 - base };
        if side == "bowl" {
            let radius = (wider * wider + height * height) / (2.0 * wider);
            let centre = [base + wider - radius, height];
            return Self::Bowl { centre, radius, from: (height / radius).asin() };
        }
        let slope = wider.hypot(height);
        Self::Cone { base, sin: wider / slope, cos: height / slope }
    }

    /// How far out from the wall's inner face, and how far along it.
    fn out_and_along(&self, radius: f64, height: f64) -> [f64; 2] {
        match self {
            Self::Cone { base, sin, cos } => {
                let off = radius - base;
                [off * cos - height * sin, off * sin + height * cos]
            }
            Self::Bowl { centre: [across, up], radius: arc, from } => {
                let (across, up) = (radius - across, height - up);
                [across.hypot(up) - arc, (up.atan2(across) + from) * arc]
            }
        }
    }

    /// Height of the wall's inner face so far along.
    fn height(&self, along: f64) -> f64 {
        match self {
            Self::Cone { cos, .. } => along * cos,
            Self::Bowl { centre, radius, from } => centre[1] + radius * (along / radius - from).sin(),
        }
    }
}

/// How far the section of a stock reaches in a direction: its flat lies at 0, its middle at 0.
fn reach(stock: &Material, [across, high]: [f64; 2]) -> f64 {
    let (half, thick) = (stock.width.to_mm() / 2.0, stock.thickness.to_mm());
    let flat = half * across.abs();
    match stock.kind {
        Kind::HalfRoundReed if high > 0.0 => (half * across).hypot(thick * high),
        Kind::RoundReed => thick / 2.0 * high + (half * across).hypot(thick / 2.0 * high),
        Kind::ChairCane | Kind::FlatOvalReed if high > 0.0 => {
            let at = (half * across / (thick * high)).clamp(-1.0, 1.0);
            (half * at * across + thick * (1.0 - at * at / 2.0) * high).max(flat)
        }
        Kind::FlatReed => flat + thick * high.max(0.0),
        Kind::HalfRoundReed | Kind::ChairCane | Kind::FlatOvalReed => flat,
        other => panic!("no section of {other:?}"),
    }
}

/// Everything that a bail can meet.
struct Solid<'a> {
    basket: &'a Basket,
    wall: Wall,
    /// Directions in the section, and how far the bare and the lashed rim reach in them.
    reach: Vec<([f64; 2], f64, f64)>,
    pivots: f64,
}

impl<'a> Solid<'a> {
    fn of(case: &Case, basket: &'a Basket) -> Self {
        let (rim, wall) = (basket.body.rim(), Wall::of(case));
        let stave = basket.body.uprights().thickness.to_mm();
        let strand = basket.body.lashing().weaver.thickness.to_mm() * if case.crossed { 2.0 } else { 1.0 };
        let height = rim.height.to_mm();
        let reach = (0..360).map(|degree| {
            let (up, out) = f64::from(degree).to_radians().sin_cos();
            let outer = out * stave + up * height / 2.0 + reach(&rim.outer.stock, [up, out]);
            let inner = up * height / 2.0 + reach(&rim.inner.stock, [up, -out]);
            let bare = outer.max(inner);
            let filler = basket.body.filler().map_or(f64::NEG_INFINITY, |filler| {
                out * stave / 2.0 + up * height + self::reach(&filler.stock, [out, up])
            });
            ([out, up], bare, bare.max(filler) + strand)
        });
        let top = wall.height((rim.along + rim.height).to_mm());
        let hole = basket.ears.as_ref().expect("it has ears").hole_height.to_mm();
        Self { basket, reach: reach.collect(), pivots: top + hole, wall }
    }

    /// Whether a place on this radius, so far below the pivots and aside of their line, is in wood or cane.
    fn holds(&self, radius: f64, below: f64, aside: f64) -> bool {
        let body = &self.basket.body;
        let (rim, stave) = (body.rim(), body.uprights().thickness.to_mm());
        let [out, along] = self.wall.out_and_along(radius, self.pivots - below);
        let (low, height) = (rim.along.to_mm(), rim.height.to_mm());
        let up = along - low;
        if up < 0.0 && along > 0.0 {
            let course = &body.weave.courses[0];
            let woven = (course.from.to_mm()..course.to.to_mm()).contains(&along);
            let weaver = if woven { course.weaver.thickness.to_mm() } else { 0.0 };
            if out > -weaver && out < stave + weaver {
                return true;
            }
        }
        if !(-8.0..height + 8.0).contains(&up) || out.abs() > 20.0 {
            return false;
        }
        let ear = self.basket.ears.as_ref().expect("it has ears");
        let beside = aside.abs() > ear.width.to_mm() / 2.0;
        self.reach
            .iter()
            .all(|([x, y], bare, lashed)| out * x + up * y <= if beside { *lashed } else { *bare })
    }
}

/// Whether a place in the plane of the bail lies inside its middle line.
fn within(handle: &Handle, x: f64, y: f64) -> bool {
    let (a, b) = (handle.half_span.to_mm(), handle.rise.to_mm());
    match handle.curve {
        BailCurve::Semicircle => x.hypot(y) < a,
        BailCurve::HalfEllipse => (x / a).hypot(y / b) < 1.0,
        BailCurve::ThreeCentred => {
            let r = handle.corner.expect("it has corners").to_mm();
            // The crown's centre lies where it is as far from the top as from the corner's circle.
            let k = ((a - r).powi(2) - (b - r).powi(2)) / (2.0 * (b - r));
            let joint = (a - r) * (1.0 + r / (a - r).hypot(k));
            if x > joint { (x - a + r).hypot(y) < r } else { x.hypot(y + k) < k + b }
        }
    }
}

/// The cloud of a bail: along the line through the pivots, above it, and before the bail's plane.
fn cloud(handle: &Handle) -> Vec<[f64; 3]> {
    const RAYS: u32 = 360;
    let (thick, wide) = (handle.thickness.to_mm(), handle.width.to_mm());
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

fn found(handle: &Handle) -> f64 {
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
        let handle = basket.handle.as_ref().expect("it has a handle");
        let ears: &Ears = basket.ears.as_ref().expect("it has ears");
        let solid = Solid::of(&case, &basket);
        let (cloud, off) = (cloud(handle), ears.off_middle.to_mm());
        let sampled = [off, -off].map(|off| rests(&cloud, &solid, off)).into_iter().fold(90.0, f64::min);
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
