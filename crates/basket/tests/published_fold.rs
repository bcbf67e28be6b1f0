//! Where a bail comes to rest: closed forms, and properties. A sampling of whole baskets stands in
//! `fold_by_sampling.rs`.

mod rim_bench;

use basket::fittings::{Bail, Fold, Plan, Rest, Rested, Ring, Stretch, Swing};
use basket::measure::Length;
use proptest::prelude::*;
use rim_bench::close;

fn half_ellipse(half_span: f64, rise: f64) -> Bail {
    Bail::HalfEllipse { half_span: Length::mm(half_span), rise: Length::mm(rise) }
}

const ROUND: Plan = Plan::Round { off_middle: Length::ZERO };

/// A line without width or thickness where the bail's middle line runs.
fn thin(bail: &Bail) -> Swing<'_> {
    let none = Length::ZERO;
    Swing { bail, width: none, thickness: none, end: none, plan: &ROUND }
}

/// A ring of this section, as (radius, depth below the pivots).
fn ring(part: Rest, section: &[(f64, f64)]) -> Ring {
    let places = section.iter().map(|(radius, below)| (Length::mm(*radius), Length::mm(*below)));
    Ring::of(part, Stretch::All, places)
}

fn wall_below(bail: &Bail, rested: Rested) -> (f64, f64) {
    let Fold::OnWall { below_level, drop } = Fold::of(bail.rise(), rested) else {
        panic!("it rests on the wall: {rested:?}")
    };
    (below_level.to_degrees(), drop.to_mm())
}

/// Plane trigonometry, computed: a bail of radius a folds onto an upright cylinder of radius R at
/// `acos(R/a)`, where its middle touches.
#[test]
fn a_thin_bail_folds_onto_an_upright_wall() {
    let bail = Bail::Semicircle { half_span: Length::mm(135.0) };
    let wall = ring(Rest::Wall, &[(0.0, 0.0), (130.0, 0.0), (130.0, 200.0), (0.0, 200.0)]);
    let rested = thin(&bail).down(&[wall]);
    let (degrees, drop) = wall_below(&bail, rested);
    close(degrees, 15.6425, 5e-5);
    close(drop, 36.4005, 5e-5);
    close(rested.share, 1.0, 1e-9);
    close(rested.from_ear.to_degrees(), 90.0, 1e-6);
}

/// The same on a wall that leans in by 12° below a rim 10 mm below the pivots; computed by root finding.
#[test]
fn a_thin_bail_folds_onto_a_leaning_wall() {
    let bail = Bail::Semicircle { half_span: Length::mm(135.0) };
    let foot = 130.0 - 200.0 * 12.0_f64.to_radians().tan();
    let wall = ring(Rest::Wall, &[(0.0, 10.0), (130.0, 10.0), (foot, 210.0), (0.0, 210.0)]);
    let (degrees, drop) = wall_below(&bail, thin(&bail).down(&[wall]));
    close(degrees, 28.7997, 5e-5);
    close(drop, 65.0362, 5e-5);
}

/// Half an ellipse (a 109, b 137.5) lies at the depth d on a radius of `ρ² = a² + d²(b²cos²φ −
/// a²)/(b²sin²φ)` (derived here). It passes a hoop that stands 107.5 out until ρ at the hoop's lower
/// edge, 26 below the pivots, is 107.5: `sin²φ = d²(a² − b²)/(b²(a² − R² − d²))`, 57.74°, beside the ear.
#[test]
fn a_thin_half_ellipse_is_stopped_beside_the_ear() {
    let (a, b, radius, depth) = (109.0_f64, 137.5_f64, 107.5_f64, 26.0_f64);
    let bail = half_ellipse(a, b);
    let hoop = ring(Rest::Rim, &[(95.0, 16.0), (radius, 16.0), (radius, depth), (95.0, depth)]);
    let rested = thin(&bail).down(&[hoop]);
    let square = depth * depth * (a * a - b * b) / (b * b * (a * a - radius * radius - depth * depth));
    let by_hand = square.sqrt().asin();
    close(by_hand.to_degrees(), 57.74, 5e-3);
    close(rested.below_level.to_radians(), by_hand, 5e-4);
    assert_eq!(rested.on, Some(Rest::Rim));
    assert!(rested.share < 0.2 && rested.from_ear.to_degrees() < 20.0, "{rested:?}");
}

#[test]
fn a_bail_that_touches_nothing_hangs_straight_down() {
    let bail = Bail::Semicircle { half_span: Length::mm(135.0) };
    let (degrees, drop) = wall_below(&bail, thin(&bail).down(&[]));
    close(degrees, 90.0, 1e-9);
    close(drop, 135.0, 1e-9);
}

/// A semicircle of 105, 12 wide, over a hoop from 95 to 110 meets it with its middle: `105 sin φ +
/// 6 cos φ = 16` gives φ = asin(16/√(105² + 6²)) − atan(6/105) = 5.480°.
#[test]
fn a_bail_rests_on_the_rim() {
    let bail = Bail::Semicircle { half_span: Length::mm(105.0) };
    let swing = Swing { width: Length::mm(12.0), ..thin(&bail) };
    let hoop = |top: f64| ring(Rest::Rim, &[(95.0, top), (110.0, top), (110.0, 26.0), (95.0, 26.0)]);
    let by_hand = (16.0 / 105.0_f64.hypot(6.0)).asin() - (6.0 / 105.0_f64).atan();
    close(by_hand.to_degrees(), 5.480, 5e-4);
    let rested = swing.down(&[hoop(16.0)]);
    close(rested.below_level.to_radians(), by_hand, 1e-6);
    let Fold::OnRim { above_level } = Fold::of(bail.rise(), rested) else { panic!("{rested:?}") };
    close(above_level.to_radians(), -by_hand, 1e-6);
    assert!(swing.down(&[hoop(3.0)]).below_level.to_radians() < 0.0, "it stays above level");
}

/// An end that reaches 12.7 below the pivots has 3.3 above a rim 16 below them. Filler and lashing that
/// stand 3 higher from 6 on beside the ear are met on the way over: there the end, 16 wide and rounded
/// by 8 about a middle 4.7 from the pivot, is 8 + √(4.7² − (6 − …)²) deep; by turning it in small steps.
#[test]
fn the_ends_are_followed_all_the_way_over() {
    let bail = Bail::Semicircle { half_span: Length::mm(105.0) };
    let mm = Length::mm;
    let swing = Swing { width: mm(16.0), end: mm(12.7), ..thin(&bail) };
    let flat = |top: f64| [(95.0, top), (115.0, top), (115.0, 30.0), (95.0, 30.0)];
    let bare = ring(Rest::Rim, &flat(16.0));
    let rested = swing.down(std::slice::from_ref(&bare));
    close(swing.end_room(rested, std::slice::from_ref(&bare)).to_mm(), 3.3, 1e-6);
    let places = flat(13.0).map(|(radius, below)| (mm(radius), mm(below)));
    let rings = [Ring::of(Rest::Rim, Stretch::BetweenEars(mm(6.0)), places), bare];
    let room = swing.end_room(swing.down(&rings), &rings).to_mm();
    let turned = (0..9000).map(|step| f64::from(step) / 100.0).map(|degrees| {
        let (sin, cos) = f64::to_radians(degrees).sin_cos();
        let middle = [4.7 * sin, 4.7 * cos];
        // The lowest place of the rounding that lies 6 or more aside, and the corner of what stands there.
        let aside = (6.0 - middle[0]).max(0.0);
        if aside < 8.0 { 13.0 - middle[1] - (64.0 - aside * aside).sqrt() } else { 13.0 - middle[1] }
    });
    let down = turned.fold(f64::INFINITY, f64::min);
    assert!(room < 3.3 && room > 0.0 && room <= down + 0.05, "{room}, straight down {down}");
}

proptest! {
    /// On an upright wall the middle of a thin half circle touches first, wherever the wall begins.
    #[test]
    fn a_thin_half_circle_meets_a_wall_with_its_middle(
        reach in 50.0..300.0_f64, share in 0.3..0.99_f64, top in 0.0..0.2_f64,
    ) {
        let bail = Bail::Semicircle { half_span: Length::mm(reach) };
        let (radius, top) = (reach * share, reach * top);
        let wall = ring(Rest::Wall, &[(0.0, top), (radius, top), (radius, 400.0), (0.0, 400.0)]);
        let rested = thin(&bail).down(&[wall]);
        // A deep wall is met by its edge: √(a² − d²) = R; else `a cos φ = R`.
        let by_hand = share.acos().max((top / reach).asin());
        prop_assert!((rested.below_level.to_radians() - by_hand).abs() < 1e-4, "{rested:?} {by_hand}");
    }

    #[test]
    fn a_bail_comes_no_lower_for_being_wider_or_thicker(
        reach in 80.0..200.0_f64, rise in 60.0..260.0_f64, share in 0.8..1.05_f64,
        width in 2.0..30.0_f64, thick in 1.0..8.0_f64, pivots in 5.0..25.0_f64,
    ) {
        let bail = half_ellipse(reach, rise);
        let outer = reach * share;
        let hoop = [(outer - 12.0, pivots), (outer, pivots), (outer, pivots + 10.0), (outer - 12.0, pivots + 10.0)];
        let rings = [ring(Rest::Rim, &hoop)];
        let wide = Swing { width: Length::mm(width), thickness: Length::mm(thick), ..thin(&bail) };
        let (thin, wide) = (thin(&bail).down(&rings), wide.down(&rings));
        prop_assert!(wide.below_level.to_radians() <= thin.below_level.to_radians() + 1e-3);
    }
}
