//! The handle: check values, an antique and properties.

mod rim_bench;

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use basket::fittings::{Bail, Fold, Lashed, SwingHandle};
use basket::form;
use basket::lashing::Lashing;
use basket::measure::Length;
use basket::pattern::{BailCurve, EarMaterial, EarsPattern, HandlePattern, LashingPattern};
use basket::stock::{Catalogue, Kind};
use basket::uprights::Uprights;
use basket::weave::Weave;
use basket::weave::layout::lay_out;
use basket::{Hand, Making};
use proptest::prelude::*;
use rim_bench::{close, material, uprights};

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

/// A basket with an upright wall of this radius up to a rim 100 mm up, half round hoops of 10 by 5 and
/// no filler, lashed with strand 1 mm thick.
fn handle_on(
    pattern: &HandlePattern,
    ears: &EarsPattern,
    (count, radius): (u32, f64),
    making: &mut Making<'_>,
) -> SwingHandle {
    let uprights = uprights(count, 1.5);
    let ears = rim_bench::ears(ears, count, radius);
    let rim = rim_bench::rim(count, radius, Some(50.0), Some(&ears));
    let form = rim_bench::round(radius);
    let weave = unwoven(&form, &uprights);
    let cane = material("cane", Kind::ChairCane, 2.5, 1.0);
    let lashing = LashingPattern { weaver: Some(cane.clone()), ..LashingPattern::default() };
    let around = (&rim, &uprights, None);
    let lashing =
        rim_bench::made(&Catalogue::default(), |making| Lashing::of(&lashing, around, &cane, making)).0;
    let lashed = Lashed {
        form: &form,
        uprights: &uprights,
        weave: &weave,
        rim: &rim,
        filler: None,
        lashing: Some(&lashing),
        ears: &ears,
    };
    SwingHandle::of(pattern, &lashed, making)
}

/// No rows at all.
fn unwoven(form: &form::Form, uprights: &Uprights) -> Weave {
    let text =
        "title = \"Bare\"\nunits = \"mm\"\nmould = { base = \"200\", rim = \"200\", height = \"120\" }";
    let pattern = basket::pattern::read(text, Catalogue::built_in()).expect("the pattern reads");
    Weave::of(
        &lay_out(&[], form, &Hand::USUAL),
        &pattern,
        (form, uprights),
        &mut Making::new(Catalogue::built_in(), &Hand::USUAL),
    )
}

fn handle(pattern: &HandlePattern, ears: &EarsPattern) -> (SwingHandle, Vec<basket::choice::Choice>) {
    let catalogue = Catalogue::default();
    let mut making = Making::new(&catalogue, &Hand::USUAL);
    let ears = EarsPattern { placing: Some(basket::pattern::EarPlacing::Shared), ..ears.clone() };
    let handle = handle_on(pattern, &ears, (25, 100.0), &mut making);
    (handle, making.take_choices())
}

/// Worked by hand: r 100, staves 1.5, brass ears 1.5875, washer 0.8, bail 4.7625 (3/16 in):
/// half span 100 + 0.75 + 0.79375 + 0.8 + 2.38125. The lashed rim stands 100 + 1.5 + 5 + 1 out.
/// The bail's inner face is at 102.34375 and its outer one at 107.10625; its lower edge rests with its
/// middle on the highest place of the lashed hoops under it. That is the flat between the hoops' tops,
/// 1.5 wide from 100 on and 1 above them, to the outer side a circle of 6 about (101.5, 5 below the top).
#[test]
fn a_handle_left_open_is_a_semicircle_outside_the_ears() {
    let (handle, choices) = handle(&HandlePattern::default(), &EarsPattern::default());
    close(handle.bow.thickness.to_inches(), 3.0 / 16.0, 1e-12);
    close(handle.bow.half_span.to_mm(), 104.725, 1e-9);
    close(handle.bow.rise.to_mm(), 104.725, 1e-9);
    close(handle.bow.arc.to_mm(), PI * 104.725, 1e-9);
    close(handle.bow.cut.to_mm(), PI * 104.725 + 25.4, 1e-9);
    close(handle.bow.bend_strain, 4.7625 / (2.0 * 104.725), 1e-12);
    close(handle.side_clearance.to_mm(), 102.34375 - 107.5, 0.06);
    close(handle.rivets.grip.to_mm(), 4.7625 + 1.5875 + 1.6, 1e-9);
    close(handle.rivets.length.to_mm(), 7.95 + 1.5 * 3.175, 1e-9);
    close(handle.rivets.drill.to_mm(), 3.375, 1e-9);
    assert_eq!((handle.rivets.count, handle.rivets.washers), (2, 4));
    close(handle.tilt.to_degrees(), 0.0, 0.0);
    let Fold::OnRim { above_level } = handle.fold else { panic!("it is narrower than the rim") };
    // The lower inner edge of its middle against the circle of 6.
    let meets = |angle: f64| {
        let (sin, cos) = angle.sin_cos();
        let out = 102.34375 * cos - 7.9375 * sin - 101.5;
        let below = 102.34375 * sin + 7.9375 * cos;
        out.hypot(15.875 + 5.0 - below) <= 6.0
    };
    let by_hand = (0..90_000).map(|step| f64::from(step) * 1e-5).find(|angle| meets(*angle));
    close(above_level.to_radians(), -by_hand.expect("it meets it"), 1e-3);
    close(handle.rests.to_mm(), FRAC_PI_2 * 106.5, 1.0);
    let keys: Vec<_> = choices.iter().map(|choice| choice.key).collect();
    let open = ["handle.width", "handle.thickness", "handle.curve", "handle.rise", "handle.rivet"];
    assert_eq!(keys, open);
}

/// Ears 20 mm thick carry the bail past the lashed rim, 107.5 out. Its inner face is at 111.55, so that
/// half a circle lies at the hoop's lower edge, 25.875 below the pivots, on √(111.55² − 25.875²) = 108.5,
/// whichever way it is turned, and its middle comes to the wall at 101.5 with its lower inner edge:
/// `111.55 cos φ − 7.9375 sin φ = 101.5`. With ears of 15 it is at
/// 109.05, and would be at 107.03 beside the hoop's crown, 20.875 below the pivots and 107.5 out.
#[test]
fn thick_ears_let_the_handle_pass_outside_the_rim() {
    let thick = |mm: f64| EarsPattern { thickness: Some(Length::mm(mm)), ..EarsPattern::default() };
    let (passes, _) = handle(&HandlePattern::default(), &thick(20.0));
    close(passes.side_clearance.to_mm(), 111.55 - 107.5, 0.06);
    let Fold::OnWall { below_level, drop } = passes.fold else { panic!("{:?}", passes.fold) };
    let by_hand = (101.5 / 111.55_f64.hypot(7.9375)).acos() - (7.9375 / 111.55_f64).atan();
    close(below_level.to_radians(), by_hand, 1e-4);
    close(drop.to_mm(), passes.bow.rise.to_mm() * by_hand.sin(), 0.01);
    close(passes.rests.to_mm(), FRAC_PI_2 * 106.5, 1.0);
    let (stopped, _) = handle(&HandlePattern::default(), &thick(15.0));
    let Fold::OnRim { above_level } = stopped.fold else { panic!("{:?}", stopped.fold) };
    assert!(above_level.to_degrees() < -2.0 && above_level.to_degrees() > -12.0, "{above_level:?}");
}

/// Ears off opposite by half a pitch stand a little nearer than a diameter: `r cos(π/50)` from the
/// middle of the line between them, and the handle with them.
#[test]
fn ears_off_opposite_stand_nearer() {
    let catalogue = Catalogue::default();
    let on_staves =
        EarsPattern { placing: Some(basket::pattern::EarPlacing::OnStaves), ..EarsPattern::default() };
    let making = &mut Making::new(&catalogue, &Hand::USUAL);
    let handle = handle_on(&HandlePattern::default(), &on_staves, (25, 100.0), making);
    let beside = 1.5875 / 2.0 + 0.8 + 4.7625 / 2.0;
    close(handle.bow.half_span.to_mm(), 100.75 * (PI / 50.0).cos() + beside, 1e-9);
}

/// A bail is chosen as thick as takes its bend (2.5 %, from memory): 3/16 in on a half circle of 104,
/// 1/8 in where corners of 0.7 · 0.75 · 104 turn harder; on corners of 20 the thinnest does not either.
#[test]
fn a_bail_is_as_thick_as_its_bend_allows() {
    let thickness = |pattern: HandlePattern| {
        let (handle, choices) = handle(&pattern, &EarsPattern::default());
        let told = choices.iter().find(|choice| choice.key == "handle.thickness").expect("it is left open");
        ((handle.bow.thickness.to_inches() * 16.0).round(), told.reason.id, handle.bow.bend_strain <= 0.025)
    };
    let curve = |curve| HandlePattern { curve: Some(curve), ..HandlePattern::default() };
    assert_eq!(thickness(HandlePattern::default()), (3.0, "choice-handle-thickness", true));
    let even = HandlePattern { corner: Some(Length::mm(70.0)), ..curve(BailCurve::ThreeCentred) };
    assert_eq!(thickness(even), (2.0, "choice-handle-thickness", true));
    let tight = HandlePattern { corner: Some(Length::mm(20.0)), ..curve(BailCurve::ThreeCentred) };
    assert_eq!(thickness(tight), (2.0, "choice-handle-thickness-thinnest", false));
}

#[test]
fn what_cannot_be_bent_as_written_gives_way_and_is_told() {
    let with = |curve, rise: Option<f64>, corner: Option<f64>| {
        let pattern = HandlePattern {
            curve,
            rise: rise.map(Length::mm),
            corner: corner.map(Length::mm),
            ..HandlePattern::default()
        };
        let (handle, choices) = handle(&pattern, &EarsPattern::default());
        (handle.bow.curve, choices.iter().map(|choice| choice.reason.id).collect::<Vec<_>>())
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

proptest! {
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
            material: Some(EarMaterial::Oak),
            ..EarsPattern::default()
        };
        let catalogue = Catalogue::default();
        let making = &mut Making::new(&catalogue, &Hand::USUAL);
        let handle = handle_on(&pattern, &ears, (count, radius), making);
        let (angle, drop) = match handle.fold {
            Fold::OnWall { below_level, drop } => (below_level, drop),
            Fold::OnRim { above_level } => (above_level, Length::ZERO),
        };
        for figure in [handle.bow.arc.to_mm(), handle.bow.cut.to_mm(), handle.bow.bend_strain, handle.tilt.to_radians(),
            handle.side_clearance.to_mm(), handle.swing_clearance.to_mm(), handle.rivets.length.to_mm(),
            handle.rests.to_mm(), angle.to_radians(), drop.to_mm()] {
            prop_assert!(figure.is_finite());
        }
        prop_assert!(angle.to_radians().abs() <= FRAC_PI_2);
        let straight = Length::mm(handle.bow.half_span.to_mm().hypot(handle.bow.rise.to_mm()));
        prop_assert!(handle.bow.arc >= 2.0 * straight - Length::mm(1e-6), "longer than two chords");
        prop_assert!(handle.bow.arc <= 2.0 * (handle.bow.half_span + handle.bow.rise) + Length::mm(1e-6));
        prop_assert!(handle.rests.to_mm() <= TAU * (radius + 10.0));
    }
}
