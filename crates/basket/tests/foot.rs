//! The bend of a stave at its foot, against figures and methods of other kinds than those that compute it.

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use basket::Length;
use basket::base::Base;
use basket::form::{Across, Profile, Spot};
use basket::pattern::Rings;
use basket::staves::{Bend, BendPoint};
use basket::stock::{Kind, Material, Wood};
use proptest::prelude::*;

fn mm(figure: f64) -> Length {
    Length::mm(figure)
}

#[track_caller]
fn close(found: f64, wanted: f64, allowance: f64) {
    assert!((found - wanted).abs() <= allowance, "found {found}, wanted {wanted} within {allowance}");
}

/// A splint that stands this strain; of splint nothing is known that an edge would allow beyond it.
fn stock(thickness: f64, limit: Option<f64>) -> Material {
    let splint = Material::bare("splint", Kind::Splint, mm(6.0), mm(thickness));
    Material { bend_limit: limit, ..splint }
}

fn base(diameter: f64, thickness: f64) -> Base {
    let source = "invented".to_owned();
    Base {
        diameter: mm(diameter),
        over: Across::round(Length::ZERO),
        ends: None,
        thickness: mm(thickness),
        groove_depth: mm(6.35),
        groove_width: mm(2.4),
        wood: Wood { name: "wood".to_owned(), tangential: 0.0, radial: 0.0, source },
        screw_hole: mm(4.8),
        plug_diameter: mm(9.5),
        movement: Length::ZERO,
        strips: Vec::new(),
        rings: Rings::None,
        sealed: false,
    }
}

/// A mould that runs straight up from a foot of this radius at an angle from level.
fn slope(foot: f64, degrees: f64) -> Profile {
    let (sin, cos) = degrees.to_radians().sin_cos();
    Profile::cone(mm(foot), mm(foot + 150.0 * cos), mm(150.0 * sin))
}

/// The mould of the Harbour bread basket: girths in inches by height.
fn harbour() -> Profile {
    let girths = [(0.0, 15.5), (1.0, 19.75), (2.0, 22.25), (3.0, 24.0), (4.25, 25.125)];
    Profile::through(&girths.map(|(height, girth)| (Length::inches(height), Length::inches(girth / TAU))))
}

fn place(point: BendPoint) -> (f64, f64) {
    (point.radius.to_mm(), point.height.to_mm())
}

fn between(one: (f64, f64), other: (f64, f64)) -> f64 {
    (one.0 - other.0).hypot(one.1 - other.1)
}

/// Places evenly along a bend, and the step between them.
fn walked(bend: &Bend, steps: u32) -> (Vec<BendPoint>, f64) {
    let step = bend.way / f64::from(steps);
    ((0..=steps).map(|number| bend.at(step * f64::from(number))).collect(), step.to_mm())
}

/// A place of a stave's middle that lies on the mould, and how far up from level the mould runs there.
fn lying(profile: &Profile, along: Length, half: f64) -> ((f64, f64), f64) {
    let spot = profile.at(along);
    let (sin, cos) = spot.lean.to_radians().sin_cos();
    ((spot.radius.to_mm() + half * cos, spot.height.to_mm() - half * sin), FRAC_PI_2 - spot.lean.to_radians())
}

/// The basket that `docs/worked-example.md` works by hand: a cone of 60 mm radius at the foot and 100 mm at
/// a height of 96 mm, staves 1.5 mm thick in the middle of a base 10 mm thick and 56 mm in radius. Its bend
/// is 4.094 mm in radius and the strain 0.183 (computed independently). It begins at the edge of the base;
/// its tangents are 4.09375 · tan(φ/2) long, and tan(φ/2) = 2/3.
#[test]
fn one_bend_on_a_cone() {
    let profile = Profile::cone(mm(60.0), mm(100.0), mm(96.0));
    let bend = Bend::of(&profile, &base(112.0, 10.0), &stock(1.5, Some(0.25)));
    assert!(bend.is_single);
    close(bend.radius.to_mm(), 4.094, 5e-4);
    close(bend.strain, 0.183, 5e-4);
    assert_eq!((bend.touch, bend.stand_off), (Length::ZERO, Length::ZERO));
    let angle = (96.0_f64 / 40.0).atan();
    let corner = (5.0 - 0.75 * angle.cos()) / angle.sin();
    close(bend.way.to_mm(), 4.09375 * angle + corner - 4.09375 * 2.0 / 3.0, 1e-9);
    close(bend.added().to_mm(), bend.way.to_mm(), 0.0);
}

/// An upright wall: the bend is a quarter circle of the rise or of the room beside the base, whichever
/// is smaller; what is left is straight.
#[test]
fn one_bend_on_an_upright_wall() {
    let profile = slope(80.0, 90.0);
    let wide = Bend::of(&profile, &base(140.0, 10.0), &stock(2.0, None));
    close(wide.radius.to_mm(), 5.0, 1e-9);
    close(wide.way.to_mm(), (81.0 - 70.0 - 5.0) + 5.0 * FRAC_PI_2, 1e-9);
    let narrow = Bend::of(&profile, &base(154.0, 12.0), &stock(2.0, None));
    close(narrow.radius.to_mm(), 4.0, 1e-9);
    close(narrow.way.to_mm(), 4.0 * FRAC_PI_2 + (6.0 - 4.0), 1e-9);
}

/// A stock of which nothing is known bends to a radius of two thicknesses (from memory), others to
/// `t/(2ε)` (elementary beam theory), reed by what it stands over an edge.
#[test]
fn what_a_stock_stands() {
    let profile = slope(80.0, 90.0);
    let bend = |limit| Bend::of(&profile, &base(160.0, 10.0), &stock(2.0, limit));
    close(bend(None).least_radius.to_mm(), 4.0, 1e-12);
    close(bend(Some(0.1)).least_radius.to_mm(), 10.0, 1e-12);
    close(bend(Some(0.1)).strain, 0.1, 1e-12);
    let reed = Material { kind: Kind::FlatOvalReed, ..stock(2.0, Some(0.1)) };
    let limit = reed.over_an_edge().expect("reed bends over an edge");
    let bent = Bend::of(&profile, &base(160.0, 10.0), &reed);
    assert!(limit > 0.1);
    close(bent.least_radius.to_mm(), 1.0 / limit, 1e-12);
}

/// Where a stave that leaves level and bends to `turn` and back to the wall's angle ends: walked in small
/// steps, and nothing else.
fn walk_out_and_back(start: (f64, f64), radius: f64, turn: f64, wall: f64) -> (f64, f64) {
    let steps = 20_000;
    let mut at = start;
    for (from, to) in [(0.0, turn), (turn, wall)] {
        let change: f64 = (to - from) / f64::from(steps);
        for step in 0..steps {
            let heading = from + change * (f64::from(step) + 0.5);
            at.0 += radius * change.abs() * heading.cos();
            at.1 += radius * change.abs() * heading.sin();
        }
    }
    at
}

/// On a straight wall the turn is found by trying: the least at which the end of the walk lies on the
/// line of the stave's middle. Where that line is reached says the touch.
#[test]
fn a_swing_is_the_one_that_walking_finds() {
    for (degrees, foot, edge, thick, stave, limit) in [
        (90.0, 80.0, 78.0, 9.525, 1.9, 0.12),
        (90.0, 80.0, 78.0, 9.525, 1.9, 0.25),
        (67.38, 62.0, 61.5, 9.525, 1.9, 0.2),
        (50.0, 62.0, 61.5, 12.0, 1.2, 0.12),
        (100.0, 90.0, 88.0, 9.0, 2.0, 0.2),
        (90.0, 80.0, 82.0, 9.525, 1.9, 0.2),
    ] {
        let profile = slope(foot, degrees);
        let bend = Bend::of(&profile, &base(edge * 2.0, thick), &stock(stave, Some(limit)));
        let wall = f64::to_radians(degrees);
        let (normal, up) = ((wall.sin(), -wall.cos()), (wall.cos(), wall.sin()));
        let line = (foot + normal.0 * stave / 2.0, normal.1 * stave / 2.0);
        let end = |turn: f64| {
            let (x, z) = walk_out_and_back((edge, -thick / 2.0), bend.least_radius.to_mm(), turn, wall);
            (x - line.0, z - line.1)
        };
        let off = |turn: f64| end(turn).0 * normal.0 + end(turn).1 * normal.1;
        let tried: Vec<f64> = (0..=300).map(|step| wall + (PI - wall) * f64::from(step) / 300.0).collect();
        let beyond = tried.windows(2).find(|pair| off(pair[0]) > 0.0 && off(pair[1]) <= 0.0).expect("a turn");
        let (mut low, mut high) = (beyond[0], beyond[1]);
        for _ in 0..40 {
            let middle = f64::midpoint(low, high);
            if off(middle) > 0.0 { low = middle } else { high = middle }
        }
        let touch = end(high).0 * up.0 + end(high).1 * up.1;
        assert!(!bend.is_single && touch > 0.0, "{degrees} {touch}");
        close(bend.radius.to_mm(), stave / (2.0 * limit), 1e-9);
        close(bend.touch.to_mm(), touch, 1e-5);
        close(bend.way.to_mm(), bend.least_radius.to_mm() * (high + high - wall), 1e-5);
    }
}

/// On the mould of the Harbour bread basket, with its base 4 7/8 in across and 3/8 in thick and staves
/// 1.9 mm thick: computed independently, in another language, by root finding on a monotone cubic of its own
/// and marching along the curve for the stand-off.
#[test]
fn a_swing_onto_a_curved_mould() {
    let base = base(4.875 * 25.4, 0.375 * 25.4);
    let stiff = Bend::of(&harbour(), &base, &stock(1.9, Some(0.12)));
    close(stiff.touch.to_mm(), 12.759_828, 2e-6);
    close(stiff.way.to_mm(), 19.156_666, 2e-6);
    close(stiff.stand_off.to_mm(), 4.401_8, 1e-2);
    let soft = Bend::of(&harbour(), &base, &stock(1.9, Some(0.25)));
    close(soft.touch.to_mm(), 4.681_701, 2e-6);
    close(soft.way.to_mm(), 10.197_279, 2e-6);
    close(soft.stand_off.to_mm(), 2.679_1, 1e-2);
    assert!(!stiff.is_single && !soft.is_single);
}

/// A thin base under a wide foot: the bend cannot be round before it must pass the foot, so it passes it
/// at just half a thickness and swings back.
#[test]
fn a_thin_base_lets_the_stave_pass_the_foot() {
    let profile = slope(80.0, 80.0);
    let bend = Bend::of(&profile, &base(120.0, 6.0), &stock(1.5, Some(0.1)));
    assert!(!bend.is_single && bend.touch > Length::ZERO);
    close(bend.radius.to_mm(), 7.5, 1e-9);
    let (points, _) = walked(&bend, 40_000);
    let nearest =
        points.iter().map(|point| between(place(*point), (80.0, 0.0))).fold(f64::INFINITY, f64::min);
    close(nearest, 0.75, 1e-6);
}

/// As a base grows thinner a stave runs out of room little by little, and so does its bend: the radius never
/// falls below what the stock stands, and the length never jumps.
#[test]
fn room_is_lost_little_by_little() {
    let bowl = Profile::bowl(mm(80.0), mm(120.0), mm(90.0));
    let bend = |hundredths: u32| {
        Bend::of(&bowl, &base(118.0, f64::from(hundredths) / 100.0), &stock(1.8, Some(0.2)))
    };
    let bends: Vec<Bend> = (300..900).map(bend).collect();
    assert!(bends.iter().all(|bend| bend.radius >= bend.least_radius - mm(1e-9)));
    assert!(bends[0].touch > mm(1.0) && bends[599].is_single);
    for pair in bends.windows(2) {
        let jump = (pair[1].added() - pair[0].added()).to_mm().abs();
        assert!(jump < 0.1, "{jump} at {:?}", pair[1]);
    }
}

/// A nearly level foot far outside the base: no stave has to bend hard to get there, and it lies on the
/// mould from the foot on.
#[test]
fn a_wide_run_is_bridged_gently() {
    let bowl = Profile::quarter_ellipse(mm(60.0), mm(140.0), mm(70.0));
    let bend = Bend::of(&bowl, &base(80.0, 9.525), &stock(1.9, Some(0.12)));
    assert_eq!((bend.touch, bend.stand_off, bend.is_single), (Length::ZERO, Length::ZERO, false));
    // Two equal arcs rise by `h` over `w` on the radius (w² + h²)/(4h): here from the groove, 4.7625 mm
    // below, to half a thickness below, over 20 mm.
    let (rise, over) = (4.7625 - 0.95, 20.0);
    close(bend.radius.to_mm(), (over * over + rise * rise) / (4.0 * rise), 1e-6);
}

/// The stand-off leads square from the mould onto the curve, and not past another part of it.
#[test]
fn the_stand_off_leads_onto_the_curve() {
    let (profile, base) = (harbour(), base(4.875 * 25.4, 0.375 * 25.4));
    let bend = Bend::of(&profile, &base, &stock(1.9, Some(0.12)));
    let (points, step) = walked(&bend, 20_000);
    let points: Vec<(f64, f64)> = points.into_iter().map(place).collect();
    let mut furthest = 0.0_f64;
    for number in 0..20 {
        let spot: Spot = profile.at(bend.touch * (f64::from(number) / 20.0));
        let off = bend.stand_off_at(spot).to_mm();
        furthest = furthest.max(off - 0.95);
        let (sin, cos) = spot.lean.to_radians().sin_cos();
        let out = |way: f64| (spot.radius.to_mm() + way * cos, spot.height.to_mm() - way * sin);
        let from_curve = |at| points.iter().map(|point| between(*point, at)).fold(f64::INFINITY, f64::min);
        assert!(from_curve(out(off)) <= step, "{number}: {off}");
        assert!((0..40).all(|part| from_curve(out(off * f64::from(part) / 41.0)) > 1e-3), "{number}");
    }
    close(bend.stand_off.to_mm(), furthest, 0.02);
    close(bend.stand_off_at(profile.at(bend.touch)).to_mm(), 0.95, 0.0);
}

/// Chords stay within the tolerance, the first point is at the edge of the base and the last on the wall.
#[test]
fn points_keep_to_the_curve() {
    let profile = harbour();
    let bend = Bend::of(&profile, &base(4.875 * 25.4, 0.375 * 25.4), &stock(1.9, Some(0.12)));
    for tolerance in [1.0, 0.1, 0.01] {
        let points: Vec<BendPoint> = bend.points(mm(tolerance)).collect();
        close(points[0].radius.to_mm(), 4.875 * 12.7, 1e-12);
        close(points[0].height.to_mm(), -0.1875 * 25.4, 1e-12);
        close(points.last().map_or(0.0, |last| last.way.to_mm()), bend.way.to_mm(), 1e-9);
        let mut most = 0.0_f64;
        for pair in points.windows(2) {
            let middle = place(bend.at((pair[0].way + pair[1].way) / 2.0));
            let (one, other) = (place(pair[0]), place(pair[1]));
            most = most.max(between(middle, (f64::midpoint(one.0, other.0), f64::midpoint(one.1, other.1))));
        }
        assert!(most <= tolerance && most > tolerance / 4.0, "{most} for {tolerance}");
    }
    let inside = bend.at(mm(-3.0));
    assert_eq!((inside.height, inside.lean.to_degrees()), (bend.at(Length::ZERO).height, 90.0));
    let beyond = place(bend.at(bend.way + mm(1.0)));
    close(between(beyond, place(bend.at(bend.way))), 1.0, 1e-9);
}

fn any_profile() -> impl Strategy<Value = Profile> {
    let cone = (20.0..300.0_f64, 30.0..130.0_f64).prop_map(|(foot, degrees)| slope(foot, degrees));
    let bowl = (20.0..200.0_f64, 0.0..200.0_f64, 30.0..250.0_f64)
        .prop_map(|(foot, wider, height)| Profile::bowl(mm(foot), mm(foot + wider), mm(height)));
    let girths = (20.0..200.0_f64, prop::collection::vec((8.0..60.0_f64, -0.4..1.6_f64), 1..6)).prop_map(
        |(foot, steps)| {
            let mut places = vec![(0.0, foot)];
            for (rise, slope) in steps {
                let (height, radius) = places[places.len() - 1];
                places.push((height + rise, (radius + rise * slope).max(5.0)));
            }
            Profile::through(
                &places.iter().map(|(height, radius)| (mm(*height), mm(*radius))).collect::<Vec<_>>(),
            )
        },
    );
    prop_oneof![cone, bowl, girths]
}

/// Distance of a place from the side of a mould, and from its foot.
fn from_mould(profile: &Profile, at: (f64, f64)) -> f64 {
    let distance = |along: f64| {
        let spot = profile.at(mm(along));
        between(at, (spot.radius.to_mm(), spot.height.to_mm()))
    };
    let step = profile.length().to_mm() / 200.0;
    let nearest = (0..=200)
        .map(|number| step * f64::from(number))
        .min_by(|one, other| distance(*one).total_cmp(&distance(*other)))
        .unwrap_or(0.0);
    let (mut low, mut high) = ((nearest - step).max(0.0), (nearest + step).min(profile.length().to_mm()));
    for _ in 0..40 {
        let (one, other) = (low + (high - low) / 3.0, high - (high - low) / 3.0);
        if distance(one) < distance(other) { high = other } else { low = one }
    }
    distance(f64::midpoint(low, high)).min(distance(nearest))
}

/// Figures that make no basket.
const HOSTILE: [f64; 12] =
    [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, -1.0, 0.0, 1e-300, 1e-3, 1.0, 50.0, 400.0, 1e7];

proptest! {
    #![proptest_config(ProptestConfig { cases: 120, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever the figures, the bend is one of finite length onto the wall.
    #[test]
    fn any_figures_give_a_finite_bend(
        profile in any_profile(), figures in prop::collection::vec(prop::sample::select(HOSTILE.to_vec()), 7),
    ) {
        let [diameter, thickness, stave, limit, foot, rim, height] = figures[..] else { unreachable!() };
        let drawn = Profile::bowl(mm(foot), mm(rim), mm(height));
        for profile in [profile, drawn, Profile::cone(mm(foot), mm(rim), mm(height))] {
            let bend = Bend::of(&profile, &base(diameter, thickness), &stock(stave, Some(limit)));
            for figure in [bend.radius, bend.least_radius, bend.touch, bend.way, bend.stand_off, bend.added()] {
                prop_assert!(figure.to_mm().is_finite(), "{bend:?}");
            }
            prop_assert!(bend.strain.is_finite() && bend.way >= Length::ZERO);
            prop_assert!(bend.touch >= Length::ZERO && bend.touch <= profile.length());
            for way in [mm(-10.0), Length::ZERO, bend.way / 2.0, bend.way, bend.way + mm(10.0)] {
                let point = bend.at(way);
                prop_assert!(place(point).0.is_finite() && place(point).1.is_finite());
            }
            prop_assert!(bend.points(mm(diameter)).count() < 1000);
        }
    }

    /// Moulds and bases that can be: the groove lies at least half a stave's thickness below the mould's
    /// foot, and the base stands out beyond it by no more than 2 mm.
    #[test]
    fn a_bend_runs_smoothly_onto_the_wall_and_clears_the_mould(
        profile in any_profile(), run in -2.0..25.0_f64, thick in 5.0..26.0_f64, stave in 0.8..2.4_f64,
        limit in prop::option::of(0.06..0.4_f64),
    ) {
        let edge = profile.at(Length::ZERO).radius.to_mm() - run;
        prop_assume!(edge > 2.0);
        let stock = stock(stave, limit);
        let bend = Bend::of(&profile, &base(edge * 2.0, thick), &stock);
        let half = stave / 2.0;
        prop_assert!(bend.way.to_mm() > 0.0 && bend.way.to_mm().is_finite());
        prop_assert!(bend.touch >= Length::ZERO && bend.touch <= profile.length());
        prop_assert!(bend.stand_off >= Length::ZERO && bend.stand_off.to_mm().is_finite());
        prop_assert!((bend.strain - stave / (2.0 * bend.radius.to_mm())).abs() < 1e-9);
        // Only a side too low for the swing makes the bend tighter than the stock stands.
        let low = profile.length() < bend.least_radius * 4.0;
        prop_assert!(low || bend.radius >= bend.least_radius - mm(1e-9), "{bend:?}");

        let (points, step) = walked(&bend, 160);
        let tightest = step / bend.radius.to_mm();
        for pair in points.windows(2) {
            let moved = between(place(pair[0]), place(pair[1]));
            prop_assert!(moved <= step + 1e-9 && moved > step * (1.0 - tightest * tightest / 8.0) - 1e-9);
            prop_assert!((pair[1].lean.to_radians() - pair[0].lean.to_radians()).abs() <= tightest + 1e-6);
        }
        let (first, last) = (points[0], points[160]);
        prop_assert!(between(place(first), (edge, -thick / 2.0)) < 1e-6);
        prop_assert!((first.lean.to_degrees() - 90.0).abs() < 1e-6);
        let (touch, heading) = lying(&profile, bend.touch, half);
        prop_assert!(between(place(last), touch) < 1e-6, "{last:?} {touch:?}");
        prop_assert!((FRAC_PI_2 - last.lean.to_radians() - heading).abs() < 1e-6);

        for point in &points {
            let off = from_mould(&profile, place(*point));
            prop_assert!(off >= half - 1e-6, "{off} at {point:?} of {bend:?}");
        }
    }
}
