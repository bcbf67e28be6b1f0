//! Ears, pins and handle: check values, an antique and properties.

mod rim_bench;

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use basket::choice::Choice;
use basket::fittings::{
    Bail, Ears, Fold, Handle, Ledge, PinMeeting, Pins, fold_on_wall, length_needed, off_middle, rest_on_rim,
    tilt,
};
use basket::form;
use basket::measure::{Angle, Length};
use basket::pattern::{
    BailCurve, EarMaterial, EarPlacing, EarsPattern, Every, Form, HandlePattern, MouldPattern, Outline,
    PinsPattern, Side,
};
use basket::rim::Rim;
use basket::stock::{Catalogue, Kind, Material};
use proptest::prelude::*;
use rim_bench::{close, material, staves};

fn ears(placing: Option<EarPlacing>, count: u32, radius: f64) -> Ears {
    let pattern = EarsPattern { placing, ..EarsPattern::default() };
    Ears::of(&pattern, Length::mm(radius), Length::mm(10.0), &staves(count, 1.5), &mut Vec::new())
}

/// Plane trigonometry, computed: with 25 staves on r 125 the nearest stave is π/25 off opposite.
#[test]
fn an_odd_count_puts_ears_on_staves_off_opposite() {
    let ears = ears(Some(EarPlacing::OnStaves), 25, 125.0);
    close(ears.off_opposite.to_radians(), PI / 25.0, 1e-15);
    close(ears.off_opposite_rim.to_mm(), 15.708, 5e-5);
    close(ears.off_middle.to_mm(), 7.8488, 5e-5);
    close(tilt(ears.off_middle, Length::mm(80.0)).to_degrees(), 5.60, 5e-3);
    assert_eq!([ears.each[0].stave, ears.each[1].stave], [1, 14]);
}

/// Computed for round baskets of 8 in: `180/N` degrees, `πD/2N` along the rim.
#[test]
fn off_opposite_on_an_eight_inch_rim() {
    for (count, degrees, mm) in [(43, 4.19, 7.4), (51, 3.53, 6.3), (67, 2.69, 4.8)] {
        let ears = ears(Some(EarPlacing::OnStaves), count, 101.6);
        close(ears.off_opposite.to_degrees(), degrees, 5e-3);
        close(ears.off_opposite_rim.to_mm(), mm, 0.051);
    }
}

#[test]
fn ways_of_placing_on_an_odd_count() {
    let pitch = TAU * 125.0 / 25.0;
    let stave_and_gap = ears(Some(EarPlacing::StaveAndGap), 25, 125.0);
    close(stave_and_gap.off_opposite.to_radians(), 0.0, 0.0);
    close(stave_and_gap.each[0].off_stave.to_mm(), 0.0, 0.0);
    close(stave_and_gap.each[1].off_stave.to_mm(), pitch / 2.0, 1e-12);
    let shared = ears(Some(EarPlacing::Shared), 25, 125.0);
    close(shared.off_opposite.to_radians(), 0.0, 0.0);
    close(shared.each[0].off_stave.to_mm(), pitch / 4.0, 1e-12);
    close(shared.each[1].off_stave.to_mm(), -pitch / 4.0, 1e-12);
    assert_eq!([shared.each[0].stave, shared.each[1].stave], [1, 14]);
}

#[test]
fn the_default_has_the_least_error() {
    assert_eq!(ears(None, 25, 125.0).placing, EarPlacing::Shared);
    let even = ears(None, 24, 125.0);
    assert_eq!(even.placing, EarPlacing::OnStaves);
    assert_eq!([even.each[0].stave, even.each[1].stave], [1, 13]);
    close(even.off_middle.to_mm(), 0.0, 0.0);
}

/// Tail 2 in (a basket supplier's page on ears), rim 10 mm, hole 5/8 in, round top of half the width.
#[test]
fn an_ear_is_as_long_as_its_parts() {
    let mut choices = Vec::new();
    let pattern = EarsPattern { material: Some(EarMaterial::Oak), ..EarsPattern::default() };
    let ears = Ears::of(&pattern, Length::mm(125.0), Length::mm(10.0), &staves(25, 1.5), &mut choices);
    close(ears.length.to_mm(), 50.8 + 10.0 + 15.875 + 6.35, 1e-9);
    close(ears.thickness.to_inches(), 0.375, 1e-12);
    let keys: Vec<_> = choices.iter().map(|choice| choice.key).collect();
    let open = ["ears.placing", "ears.width", "ears.thickness", "ears.hole", "ears.tail"];
    assert_eq!(keys, open, "the material was given");
}

fn rim(count: u32, radius: f64, ears: Option<&Ears>) -> Rim {
    rim_bench::rim(count, radius, Some(50.0), ears)
}

fn pin(length: f64, diameter: f64) -> Material {
    let mut pin = material(&format!("pin {length} × {diameter}"), Kind::Pin, diameter, diameter);
    pin.length = Some(Length::mm(length));
    pin
}

fn pin_rim(count: u32, every: Every, pins: &[Material]) -> Pins {
    let pattern = PinsPattern { stock: None, every: Some(every) };
    let catalogue = Catalogue { materials: pins.to_vec(), woods: Vec::new() };
    let rim = rim(count, 125.0, None);
    Pins::of(&pattern, &catalogue, &rim, &staves(count, 1.5), &mut Vec::new())
}

/// Rivet stock rule of a how-to article: grip and 1.5 diameters. The stack is 5 + 1.5 + 5.
#[test]
fn a_pin_goes_through_the_stack_and_clinches() {
    close(length_needed(Length::mm(11.5), Length::mm(1.2)).to_mm(), 13.3, 1e-12);
    let sizes = [pin(9.5, 1.2), pin(19.0, 1.2), pin(15.9, 1.2), pin(15.9, 0.9), pin(12.7, 0.9)];
    let pins = pin_rim(25, Every::OtherStave, &sizes);
    assert_eq!(pins.stock.name, "pin 15.9 × 0.9", "12.7 is too short for 12.85");
    close(pins.drill.to_mm(), 0.9, 1e-12);
    let short = pin_rim(25, Every::OtherStave, &sizes[..1]);
    assert!(short.length < short.length_needed, "the longest there is");
    assert_eq!(pin_rim(25, Every::OtherStave, &[]).stock.kind, Kind::Pin);
}

/// Every other stave of an odd count N takes (N + 1)/2 pins, and two neighbours are pinned: at the
/// outer scarf, whose middle lies 25/4 = 6.25 staves after the first.
#[test]
fn pins_at_every_other_stave() {
    let odd = pin_rim(25, Every::OtherStave, &[]);
    assert_eq!(odd.staves, [1, 3, 5, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24]);
    assert_eq!(odd.meeting, PinMeeting::Neighbours(7, 8));
    assert_eq!((odd.count, odd.spares), (13, 2));
    let even = pin_rim(26, Every::OtherStave, &[]);
    assert_eq!((even.count, even.meeting), (13, PinMeeting::Even));
    let all = pin_rim(75, Every::Stave, &[]);
    assert_eq!((all.count, all.spares, all.meeting), (75, 8, PinMeeting::Even));
}

fn bail(curve: BailCurve, half_span: f64, rise: f64, corner: f64) -> Option<Bail> {
    Bail::new(curve, Length::mm(half_span), Length::mm(rise), Length::mm(corner))
}

/// Lengths of bails, computed: three arcs from their centres, and half an ellipse by quadrature.
#[test]
fn lengths_of_bails() {
    let three = bail(BailCurve::ThreeCentred, 130.0, 100.0, 70.0).expect("70 < 100 ≤ 130");
    close(three.length().to_mm(), 359.00577, 5e-6);
    close(three.tightest().to_mm(), 70.0, 1e-12);
    let ellipse = bail(BailCurve::HalfEllipse, 130.0, 160.0, 0.0).expect("any ellipse");
    close(ellipse.length().to_mm(), 456.75047, 5e-6);
    close(ellipse.tightest().to_mm(), 130.0 * 130.0 / 160.0, 1e-9);
}

/// Perimeters of whole ellipses by the complete elliptic integral, computed.
#[test]
fn half_ellipses_against_the_elliptic_integral() {
    for (a, b, perimeter) in [
        (150.0, 100.0, 793.271_979_464_5),
        (200.0, 100.0, 968.844_822_054_8),
        (250.0, 60.0, 1_067.740_145_365_5),
    ] {
        let half = bail(BailCurve::HalfEllipse, a, b, 0.0).expect("any ellipse").length();
        close(2.0 * half.to_mm(), perimeter, 1e-9);
    }
    let flat = bail(BailCurve::HalfEllipse, 100.0, 0.0, 0.0).expect("any ellipse").length();
    close(flat.to_mm(), 200.0, 1e-9);
}

/// The middle of a three-centred bail turns through R 145 over 90° − 36.8699° each way; computed.
#[test]
fn a_three_centred_bail_is_continuous() {
    let three = bail(BailCurve::ThreeCentred, 130.0, 100.0, 70.0).expect("70 < 100 ≤ 130");
    let joint = 36.8699 / 90.0;
    let (before, after) = (three.point(joint - 1e-6), three.point(joint + 1e-6));
    close(before.0.to_mm(), after.0.to_mm(), 1e-3);
    close(before.1.to_mm(), after.1.to_mm(), 1e-3);
    close(three.point(0.0).0.to_mm(), 130.0, 1e-12);
    close(three.point(1.0).1.to_mm(), 100.0, 1e-12);
    assert_eq!(bail(BailCurve::ThreeCentred, 130.0, 140.0, 70.0), None);
    assert_eq!(bail(BailCurve::ThreeCentred, 130.0, 60.0, 70.0), None);
}

/// An antique dealer's catalogue, flared mould basket of about 1870: 8 in across, 5 in high, 9 in with
/// the handle up. Half the width is the rise, so the bail is a semicircle of 12.57 in.
#[test]
fn the_handle_of_an_antique_is_a_semicircle() {
    let bail = Bail::Semicircle { half_span: Length::inches(8.0 / 2.0) };
    close(bail.rise().to_inches(), 9.0 - 5.0, 1e-12);
    close(bail.length().to_inches(), 12.57, 5e-3);
}

/// Plane trigonometry, computed: `acos(130/135)`.
#[test]
fn a_bail_folds_onto_an_upright_wall() {
    let rise = Length::mm(135.0);
    let (angle, drop) = fold_on_wall(rise, rise, |_| Length::mm(130.0));
    close(angle.to_degrees(), 15.6425, 5e-5);
    close(drop.to_mm(), 36.4005, 5e-5);
}

/// The same on a wall that leans in by 12° below a rim 10 mm below the pivots; computed by root finding.
#[test]
fn a_bail_folds_onto_a_leaning_wall() {
    let rise = Length::mm(135.0);
    let wall = |below: Length| match below - Length::mm(10.0) {
        above if above < Length::ZERO => Length::ZERO,
        depth => Length::mm(130.0) - depth * 12.0_f64.to_radians().tan(),
    };
    let (angle, drop) = fold_on_wall(rise, rise, wall);
    close(angle.to_degrees(), 28.7997, 5e-5);
    close(drop.to_mm(), 65.0362, 5e-5);
}

#[test]
fn a_bail_that_touches_nothing_hangs_straight_down() {
    let (angle, drop) = fold_on_wall(Length::mm(135.0), Length::mm(135.0), |_| Length::ZERO);
    close(angle.to_degrees(), 90.0, 1e-9);
    close(drop.to_mm(), 135.0, 1e-9);
}

/// A semicircle of 105 over a rim from 95 to 110 meets it with its middle: `105 sin φ + 6 cos φ = 16`
/// gives φ = asin(16/√(105² + 6²)) − atan(6/105) = 5.480°.
#[test]
fn a_bail_rests_on_the_rim() {
    let bail = Bail::Semicircle { half_span: Length::mm(105.0) };
    let ledge = Ledge {
        inner: Length::mm(95.0),
        outer: Length::mm(110.0),
        below_pivots: Length::mm(16.0),
        height: Length::mm(10.0),
    };
    let by_hand = (16.0 / 105.0_f64.hypot(6.0)).asin() - (6.0 / 105.0_f64).atan();
    close(by_hand.to_degrees(), 5.480, 5e-4);
    close(rest_on_rim(&bail, Length::mm(12.0), ledge).to_radians(), by_hand, 1e-9);
    let low = Ledge { below_pivots: Length::ZERO, ..ledge };
    assert!(rest_on_rim(&bail, Length::mm(12.0), low).to_radians() < 0.0, "it stays above level");
}

fn handle(pattern: &HandlePattern, ears_pattern: &EarsPattern, choices: &mut Vec<Choice>) -> Handle {
    handle_on(pattern, ears_pattern, 25, 100.0, choices)
}

fn handle_on(
    pattern: &HandlePattern,
    ears_pattern: &EarsPattern,
    count: u32,
    radius: f64,
    choices: &mut Vec<Choice>,
) -> Handle {
    let staves = staves(count, 1.5);
    let ears = Ears::of(ears_pattern, Length::mm(radius), Length::mm(10.0), &staves, &mut Vec::new());
    let rim = rim(count, radius, Some(&ears));
    let wall = |_| Length::mm(radius + 1.5);
    Handle::over_wall(pattern, &Catalogue::default(), &ears, &rim, &wall, &staves, choices)
}

/// Worked by hand: r 100, staves 1.5, brass ears 1.5875, washer 0.8, bail 4.7625 (3/16 in):
/// half span 100 + 0.75 + 0.79375 + 0.8 + 2.38125.
#[test]
fn a_handle_left_open_is_a_semicircle_outside_the_ears() {
    let mut choices = Vec::new();
    let handle = handle(&HandlePattern::default(), &EarsPattern::default(), &mut choices);
    close(handle.thickness.to_inches(), 3.0 / 16.0, 1e-12);
    close(handle.half_span.to_mm(), 104.725, 1e-9);
    close(handle.rise.to_mm(), 104.725, 1e-9);
    close(handle.arc.to_mm(), PI * 104.725, 1e-9);
    close(handle.cut.to_mm(), PI * 104.725 + 25.4, 1e-9);
    close(handle.bend_strain, 4.7625 / (2.0 * 104.725), 1e-12);
    close(handle.swing_clearance.to_mm(), 15.875 - 12.7, 1e-9);
    close(handle.side_clearance.to_mm(), 104.725 - 2.38125 - 107.5, 1e-9);
    close(handle.grip.to_mm(), 4.7625 + 1.5875 + 1.6, 1e-9);
    close(handle.rivet_length.to_mm(), 7.95 + 1.5 * 3.175, 1e-9);
    close(handle.drill.to_mm(), 3.375, 1e-9);
    assert_eq!((handle.rivets, handle.washers), (2, 4));
    close(handle.tilt.to_degrees(), 0.0, 0.0);
    let Fold::OnRim { above_level } = handle.fold else { panic!("it is narrower than the rim") };
    let by_hand = (15.875 / 104.725_f64.hypot(7.9375)).asin() - (7.9375 / 104.725_f64).atan();
    close(above_level.to_radians(), -by_hand, 1e-9);
    let keys: Vec<_> = choices.iter().map(|choice| choice.key).collect();
    let open = ["handle.width", "handle.thickness", "handle.curve", "handle.rise", "handle.rivet"];
    assert_eq!(keys, open);
}

/// Ears 20 mm thick carry the bail past the rim, whose lashed outer face lies 107.5 mm out: it folds
/// down outside.
#[test]
fn thick_ears_let_the_handle_fold_outside_the_rim() {
    let thick = EarsPattern { thickness: Some(Length::mm(20.0)), ..EarsPattern::default() };
    let handle = handle(&HandlePattern::default(), &thick, &mut Vec::new());
    let reach = handle.rise.to_mm() - handle.thickness.to_mm() / 2.0;
    close(handle.side_clearance.to_mm(), reach - 107.5, 1e-9);
    let Fold::OnWall { below_level, drop } = handle.fold else { panic!("it is wider than the rim") };
    close(drop.to_mm(), handle.rise.to_mm() * below_level.to_radians().sin(), 1e-9);
    assert!(reach * below_level.to_radians().cos() <= 107.5 + 1e-6);
    assert!(drop >= Length::mm(15.875), "it has passed the top of the rim");
}

/// A cone of 100 to 150 mm radius in 120 of height; the rim's foot lies 100 of the slope's 130 up, so
/// its top is 110/130 of the height, and the wall narrows by 50/120 of what one goes down.
#[test]
fn the_handle_folds_onto_the_mould_below_the_rim() {
    let form = Form::Drawn {
        base: Length::mm(200.0),
        rim: Length::mm(300.0),
        height: Length::mm(120.0),
        side: Side::Cone,
    };
    let mould = form::Form::on_mould(&MouldPattern { outline: Outline::Round, form });
    let staves = staves(25, 1.5);
    let thick = EarsPattern { thickness: Some(Length::mm(25.0)), ..EarsPattern::default() };
    let radius = 100.0 + 50.0 * 105.0 / 130.0;
    let ears = Ears::of(&thick, Length::mm(radius), Length::mm(10.0), &staves, &mut Vec::new());
    let choices = &mut Vec::new();
    let rim = rim_bench::rim(25, radius, None, Some(&ears));
    let pattern = HandlePattern::default();
    let catalogue = Catalogue::built_in();
    let handle = Handle::of(&pattern, catalogue, &ears, &rim, &mould, &staves, choices);
    let cone = |below: Length| Length::mm(101.5 + 50.0 * 110.0 / 130.0) - below * (50.0 / 120.0);
    let over = Handle::over_wall(&pattern, catalogue, &ears, &rim, &cone, &staves, choices);
    let (Fold::OnWall { drop, .. }, Fold::OnWall { drop: wanted, .. }) = (handle.fold, over.fold) else {
        panic!("it is wider than the rim")
    };
    close(drop.to_mm(), wanted.to_mm(), 1e-6);
    assert_eq!(handle.rivet.kind, Kind::Rivet);
    close(handle.grip.to_mm(), handle.thickness.to_mm() + 25.0 + 0.8 + 1.6, 1e-9);
}

#[test]
fn what_cannot_be_bent_as_written_gives_way_and_is_told() {
    let with = |curve, rise: Option<f64>, corner: Option<f64>| {
        let mut choices = Vec::new();
        let pattern = HandlePattern {
            curve,
            rise: rise.map(Length::mm),
            corner: corner.map(Length::mm),
            ..HandlePattern::default()
        };
        let curve = handle(&pattern, &EarsPattern::default(), &mut choices).curve;
        (curve, choices.iter().map(|choice| choice.reason.id).collect::<Vec<_>>())
    };
    let (curve, told) = with(Some(BailCurve::Semicircle), Some(140.0), None);
    assert_eq!(curve, BailCurve::Semicircle);
    assert!(told.contains(&"choice-handle-rise-not-semicircle"));
    let (curve, told) = with(Some(BailCurve::ThreeCentred), Some(140.0), None);
    assert_eq!(curve, BailCurve::HalfEllipse);
    assert!(told.contains(&"choice-handle-not-three-centred"));
    let (curve, told) = with(None, Some(140.0), None);
    assert_eq!(curve, BailCurve::HalfEllipse);
    assert!(told.contains(&"choice-handle-curve-rise"));
    let (curve, told) = with(None, None, Some(50.0));
    assert_eq!(curve, BailCurve::ThreeCentred);
    assert!(told.contains(&"choice-handle-curve-corner"));
    assert!(!told.contains(&"choice-handle-corner"), "the corner was given");
}

/// Off opposite and off stave in turns, by trying every stave.
fn by_brute_force(ears: &Ears, count: u32) -> (f64, [f64; 2]) {
    let [first, second] = ears.each.map(|ear| ear.turn);
    let apart = |a: f64, b: f64| {
        let turn = (a - b).rem_euclid(1.0);
        turn.min(1.0 - turn)
    };
    let off_stave = |turn: f64| {
        (0..count).map(|stave| apart(turn, f64::from(stave) / f64::from(count))).fold(1.0, f64::min)
    };
    (apart(second, first + 0.5), [off_stave(first), off_stave(second)])
}

proptest! {
    #[test]
    fn ears_agree_with_brute_force(count in 1_u32..200, radius in 20.0..500.0_f64, way in 0_usize..4) {
        use EarPlacing::{ByAngle, OnStaves, Shared, StaveAndGap};
        let ears = ears(Some([OnStaves, StaveAndGap, Shared, ByAngle][way]), count, radius);
        let girth = TAU * radius;
        let (off_opposite, off_stave) = by_brute_force(&ears, count);
        prop_assert!((ears.off_opposite_rim.to_mm() - off_opposite * girth).abs() < 1e-9 * girth);
        prop_assert!((ears.off_opposite.to_radians() - off_opposite * TAU).abs() < 1e-9);
        for (ear, off) in ears.each.iter().zip(off_stave) {
            prop_assert!((ear.off_stave.to_mm().abs() - off * girth).abs() < 1e-9 * girth);
            let stave = f64::from(ear.stave - 1) / f64::from(count) + ear.off_stave.to_mm() / girth;
            prop_assert!((stave - ear.turn - (stave - ear.turn).round()).abs() < 1e-9);
        }
        let option = ears.options.iter().find(|option| option.placing == ears.placing);
        let option = option.expect("every way is listed");
        let worst = off_stave[0].max(off_stave[1]);
        prop_assert!((option.off_stave.to_mm() - worst * girth).abs() < 1e-9 * girth);
        prop_assert!(ears.options.windows(2).all(|pair| pair[0].off_opposite <= pair[1].off_opposite));
        let chord = off_middle(Length::mm(radius), ears.off_opposite);
        prop_assert_eq!(chord, ears.off_middle);
    }

    #[test]
    fn a_fold_satisfies_its_equation(reach in 50.0..300.0_f64, share in 0.2..0.999_f64, lean in 0.0..0.4_f64) {
        let (reach, foot) = (Length::mm(reach), Length::mm(reach * share));
        let wall = |below: Length| foot - below * lean.tan();
        let (angle, drop) = fold_on_wall(reach, reach, wall);
        if angle.to_radians() < FRAC_PI_2 - 1e-9 {
            let off = reach * angle.to_radians().cos() - wall(drop);
            prop_assert!(off.to_mm().abs() < 1e-6, "misses by {off:?}");
        } else {
            prop_assert!(wall(reach) < Length::mm(1e-6));
        }
    }

    #[test]
    fn a_handle_is_finite(
        radius in 5.0..600.0_f64, count in 0_u32..200, curve in 0_usize..4,
        rise in proptest::option::of(0.0..500.0_f64), corner in proptest::option::of(0.0..300.0_f64),
        thickness in proptest::option::of(0.0..40.0_f64), hole in 0.0..60.0_f64, ear in 0.0..60.0_f64,
    ) {
        let curves = [None, Some(BailCurve::Semicircle), Some(BailCurve::ThreeCentred), Some(BailCurve::HalfEllipse)];
        let pattern = HandlePattern {
            curve: curves[curve],
            rise: rise.map(Length::mm),
            corner: corner.map(Length::mm),
            thickness: thickness.map(Length::mm),
            ..HandlePattern::default()
        };
        let ears = EarsPattern {
            hole_height: Some(Length::mm(hole)),
            thickness: Some(Length::mm(ear)),
            ..EarsPattern::default()
        };
        let handle = handle_on(&pattern, &ears, count, radius, &mut Vec::new());
        let (angle, drop) = match handle.fold {
            Fold::OnWall { below_level, drop } => (below_level, drop),
            Fold::OnRim { above_level } => (above_level, Length::ZERO),
        };
        for figure in [handle.arc.to_mm(), handle.cut.to_mm(), handle.bend_strain, handle.tilt.to_radians(),
            handle.side_clearance.to_mm(), handle.rivet_length.to_mm(), angle.to_radians(), drop.to_mm()] {
            prop_assert!(figure.is_finite());
        }
        prop_assert!(angle <= Angle::radians(FRAC_PI_2));
        let straight = Length::mm(handle.half_span.to_mm().hypot(handle.rise.to_mm()));
        prop_assert!(handle.arc >= 2.0 * straight - Length::mm(1e-6), "longer than two chords");
        prop_assert!(handle.arc <= 2.0 * (handle.half_span + handle.rise) + Length::mm(1e-6));
    }
}
