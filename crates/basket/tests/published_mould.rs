//! Moulds against outside formulas and against values computed independently by adaptive quadrature.

use std::f64::consts::TAU;

use basket::form::{self, Profile, litres_to_us_quarts};
use basket::pattern::{Girth, Levels, MouldForm, MouldPattern, MouldPieces, Outline, Side};
use basket::{Angle, Length};

fn mm(figure: f64) -> Length {
    Length::mm(figure)
}

#[track_caller]
fn close(measured: f64, published: f64, allowance: f64) {
    assert!((measured - published).abs() <= allowance, "{measured} is not {published} within {allowance}");
}

fn drawn(base: f64, rim: f64, height: f64, side: Side) -> form::Form {
    form::Form::on_mould(&MouldPattern {
        outline: Outline::Round,
        levels: Levels::Even,
        pieces: MouldPieces::One,
        form: MouldForm::Drawn { base: mm(base), rim: mm(rim), height: mm(height), side },
    })
}

fn taped(girths: &[(f64, f64)]) -> form::Form {
    let girths =
        girths.iter().map(|(height, girth)| Girth { height: mm(*height), girth: mm(*girth) }).collect();
    form::Form::on_mould(&MouldPattern {
        outline: Outline::Round,
        form: MouldForm::Girths(girths),
        levels: Levels::Even,
        pieces: MouldPieces::One,
    })
}

/// A mould that swells and narrows again, as a tape would measure it.
fn swelling() -> form::Form {
    taped(&[
        (0.0, 560.0),
        (30.0, 690.0),
        (60.0, 760.0),
        (90.0, 785.0),
        (120.0, 785.0),
        (150.0, 770.0),
        (180.0, 700.0),
    ])
}

/// Source: the formulas for a frustum of a cone, as in any handbook of mensuration: slant
/// `√(d² + H²)`, area `π(r₁ + r₂)·slant`, volume `πH(r₁² + r₁r₂ + r₂²)/3`.
#[test]
fn a_frustum_is_measured_exactly() {
    let mould = drawn(200.0, 300.0, 120.0, Side::Cone);
    close(mould.arc().to_mm(), 130.0, 1e-9);
    close(mould.litres(), 5.969_026_042, 1e-9);
    close(litres_to_us_quarts(mould.litres()), 6.307_399, 1e-6);
    close(mould.mould().draft.to_degrees(), 22.619_9, 1e-4);
    assert_eq!(mould.mould().undercut.depth, Length::ZERO);
}

/// Source: NIST Handbook 44 (2023), appendix C: 1 US quart = 946.352 946 ml; Weights and Measures
/// Act 1985, schedule 1: 1 gallon (four quarts) = 4.546 09 l.
#[test]
fn quarts_are_the_legal_ones() {
    close(litres_to_us_quarts(0.946_352_946), 1.0, 1e-12);
}

/// Source: Pappus's theorems; values computed independently by adaptive quadrature.
#[test]
fn arcs_are_measured_exactly() {
    let arc = Profile::arc(mm(60.0), mm(90.0), Angle::degrees(-50.0), Angle::degrees(20.0));
    close(arc.length().to_mm(), 109.955_742_9, 1e-7);
    close(arc.volume_mm3() / 1e6, 6.399_738_290, 1e-9);

    let torus = Profile::arc(mm(100.0), mm(8.0), Angle::degrees(-180.0), Angle::degrees(180.0));
    close(torus.volume_mm3(), 126_330.936_3, 1e-4);
}

/// Source: F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980), pp. 238–246, with the
/// slopes of Fritsch and Butland (1984); values computed independently by adaptive quadrature.
#[test]
fn a_taped_mould_follows_the_monotone_cubic() {
    let mould = swelling();
    close(mould.arc().to_mm(), 191.222_126, 1e-6);
    close(mould.litres(), 7.894_973_807, 1e-9);
    let slopes = [0.848_826_4, 0.482_770_0, 0.195_453_4, 0.0, 0.0, -0.131_068_8, -0.517_253_6];
    for (knot, slope) in slopes.iter().enumerate() {
        let along = mould.profile.along_at_height(mm(30.0 * knot as f64));
        close(mould.profile.at(along).lean.to_radians().tan(), *slope, 1e-7);
    }
}

/// Source: as above. A natural spline through these radii would bulge to 125.623.
#[test]
fn no_bulge_between_equal_girths() {
    let places = [(0.0, 80.0), (40.0, 120.0), (80.0, 125.0), (120.0, 125.0), (160.0, 125.0)];
    let profile = Profile::through(&places.map(|(height, radius)| (mm(height), mm(radius))));
    let widest = profile.spots(5001).map(|spot| spot.radius.to_mm()).fold(0.0, f64::max);
    close(widest, 125.0, 1e-9);
}

/// Source: derived by hand: u = (785 − 700) / 2π, and the neck's radius is 700 / 2π.
#[test]
fn undercut_and_core_of_a_swelling_mould() {
    let mould = swelling();
    close(mould.mould().undercut.depth.to_mm(), 13.528_170, 1e-6);
    assert!((90.0 - 1e-6..=120.0 + 1e-6).contains(&mould.mould().undercut.wide_at.to_mm()));
    close(mould.mould().undercut.narrow_at.to_mm(), 180.0, 1e-9);
    close(mould.mould().draft.to_radians().tan(), -0.517_253_6, 1e-6);
}

/// Source: the equation of the circle: an arc through both ends that is upright at the rim has
/// `R = (d² + H²) / (2d)`; its length is `R·asin(H/R)`. Here d = 40, H = 100: R = 145.
#[test]
fn a_bowl_is_an_arc_upright_at_the_rim() {
    let mould = drawn(160.0, 240.0, 100.0, Side::Bowl);
    close(mould.arc().to_mm(), 145.0 * (100.0_f64 / 145.0).asin(), 1e-9);
    close(mould.girth_base().to_mm(), 160.0 * std::f64::consts::PI, 1e-9);
    close(mould.girth_top().to_mm(), 240.0 * std::f64::consts::PI, 1e-9);
    close(mould.profile.at(mould.arc()).lean.to_degrees(), 0.0, 1e-9);
    assert_eq!(mould.mould().undercut.depth, Length::ZERO);
    for spot in mould.profile.spots(101) {
        let from_centre = (spot.radius.to_mm() + 25.0).hypot(spot.height.to_mm() - 100.0);
        close(from_centre, 145.0, 1e-6);
    }
}

/// Source: M. Abramowitz and I. A. Stegun, *Handbook of Mathematical Functions* (1964), table 17.1:
/// E(m = 0.75) = 1.211 056 03; a quarter of an ellipse 100 × 50 is 100·E(1 − 1/4) long.
#[test]
fn a_shallow_bowl_is_a_quarter_ellipse() {
    let mould = drawn(100.0, 300.0, 50.0, Side::Bowl);
    close(mould.arc().to_mm(), 121.105_603, 2e-6);
    close(mould.mould().draft.to_degrees(), 0.0, 1e-9);
}

/// Source: geometry: a tape over a layer of thickness t is longer by 2πt.
/// A board of 200 mm with a foot of 100 mm, level out to an edge of 3/8 in: by Pappus of Alexandria, *Collection*,
/// book VII, its volume is its section's area times the way of the section's centroid, part by part.
#[test]
fn a_board_is_level_out_to_its_rounded_edge() {
    use std::f64::consts::{FRAC_PI_2, PI};
    let board = drawn(100.0, 200.0, 12.7, Side::Board);
    let (edge, upright) = (9.525, 3.175);
    let level = 100.0 - edge - 50.0;
    assert!((board.arc().to_mm() - (level + FRAC_PI_2 * edge + upright)).abs() < 1e-6);
    for along in [0.0, level / 2.0, level - 1e-6] {
        let spot = board.profile.at(mm(along));
        assert!(spot.height.abs() < mm(1e-6), "{spot:?}");
        assert!((spot.lean.to_degrees() - 90.0).abs() < 1e-3, "{spot:?}");
        assert!((spot.radius.to_mm() - 50.0 - along).abs() < 1e-6);
    }
    assert!((board.profile.at(board.arc()).radius.to_mm() - 100.0).abs() < 1e-9);
    let inner = 100.0 - edge;
    let quarter = PI * edge * edge / 4.0;
    let volume = PI * inner * inner * edge
        + 2.0 * PI * quarter * (inner + 4.0 * edge / (3.0 * PI))
        + PI * 100.0 * 100.0 * upright;
    assert!(
        (board.profile.volume_mm3() / volume - 1.0).abs() < 1e-5,
        "{}",
        board.profile.volume_mm3() / volume
    );
    // What is higher is domed, and still as wide and as high.
    let domed = drawn(100.0, 200.0, 20.0, Side::Board);
    assert!((domed.height().to_mm() - 20.0).abs() < 1e-9 && domed.profile.widest() <= mm(100.0 + 1e-9));
    let spot = domed.profile.at(mm(10.0));
    assert!(spot.lean.to_degrees() < 89.0 && spot.lean.to_degrees() > 70.0, "{spot:?}");
}

#[test]
fn a_tape_over_staves_reads_more() {
    let form = drawn(600.0 / std::f64::consts::PI, 1.0, 100.0, Side::Straight);
    close(form.girth(mm(50.0), mm(2.0)).to_mm(), 600.0 + 4.0 * std::f64::consts::PI, 1e-9);
}

/// Source: the definition of arc length, summed over 400 000 chords between close heights.
#[test]
fn places_by_the_way_along_agree_with_fine_chords() {
    let mould = swelling();
    let profile = &mould.profile;
    let mut way = 0.0;
    let mut before = profile.at(Length::ZERO);
    let steps = 400_000;
    for step in 1..=steps {
        let spot = profile.at(profile.length() * (f64::from(step) / f64::from(steps)));
        way += (spot.radius - before.radius).to_mm().hypot((spot.height - before.height).to_mm());
        before = spot;
        if step % 4000 == 0 {
            close(way, spot.along.to_mm(), 1e-5);
            close(profile.along_at_height(spot.height).to_mm(), spot.along.to_mm(), 1e-6);
        }
    }
}

/// The monotone cubic itself, evaluated here from the slopes of the published check, gives the
/// radius at any height.
#[test]
fn radii_between_knots_are_those_of_the_cubic() {
    let mould = swelling();
    let (start, end) = (0.848_826_36 * 30.0, 0.482_770_0 * 30.0);
    let (low, high) = (560.0 / TAU, 690.0 / TAU);
    for step in 0..=60 {
        let share = f64::from(step) / 60.0;
        let (square, cube) = (share * share, share * share * share);
        let radius = low * (2.0 * cube - 3.0 * square + 1.0)
            + high * (3.0 * square - 2.0 * cube)
            + start * (cube - 2.0 * square + share)
            + end * (cube - square);
        let along = mould.profile.along_at_height(mm(30.0 * share));
        close(mould.profile.at(along).radius.to_mm(), radius, 2e-6);
    }
}

/// Beyond its ends the wall runs on straight.
#[test]
fn beyond_the_ends_the_wall_is_straight() {
    let profile = drawn(200.0, 300.0, 120.0, Side::Cone).profile;
    let above = profile.at(mm(143.0));
    close(above.radius.to_mm(), 155.0, 1e-9);
    close(above.height.to_mm(), 132.0, 1e-9);
    close(profile.along_at_height(mm(132.0)).to_mm(), 143.0, 1e-9);
    close(profile.at(mm(-13.0)).radius.to_mm(), 95.0, 1e-9);
    close(profile.along_at_height(mm(-12.0)).to_mm(), -13.0, 1e-9);
}

mod any_pattern {
    use super::{Girth, Length, Levels, MouldForm, MouldPattern, MouldPieces, Outline, Side, form, taped};
    use proptest::prelude::*;

    fn any_length() -> impl Strategy<Value = Length> {
        prop_oneof![
            8 => 0.0..2000.0_f64,
            1 => Just(0.0),
            1 => Just(f64::NAN),
            1 => Just(f64::INFINITY),
            1 => Just(-1e300),
        ]
        .prop_map(Length::mm)
    }

    fn any_form() -> impl Strategy<Value = MouldForm> {
        let side = prop_oneof![Just(Side::Straight), Just(Side::Cone), Just(Side::Bowl), Just(Side::Board)];
        let drawn = (any_length(), any_length(), any_length(), side)
            .prop_map(|(base, rim, height, side)| MouldForm::Drawn { base, rim, height, side });
        let girth = (any_length(), any_length()).prop_map(|(height, girth)| Girth { height, girth });
        prop_oneof![drawn, prop::collection::vec(girth, 0..12).prop_map(MouldForm::Girths)]
    }

    proptest! {
        #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn gives_a_finite_mould(form in any_form(), along in any_length()) {
            let mould = form::Form::on_mould(&MouldPattern { outline: Outline::Round, form, levels: Levels::Even, pieces: MouldPieces::One });
            let spot = mould.profile.at(along);
            for figure in [
                mould.height(), mould.arc(), mould.girth_base(), mould.girth_top(), mould.girth_widest(),
                mould.mould().undercut.depth, spot.radius, spot.height, mould.profile.along_at_height(along),
            ] {
                prop_assert!(figure.to_mm().is_finite());
            }
            prop_assert!(mould.litres().is_finite() && mould.mould().draft.to_radians().is_finite());
            prop_assert!(spot.radius >= Length::ZERO);
        }

        #[test]
        fn rising_girths_are_met_and_never_passed(
            steps in prop::collection::vec((5.0..60.0_f64, 0.0..150.0_f64), 2..10),
        ) {
            let (mut height, mut girth) = (0.0, 300.0);
            let mut knots = vec![(height, girth)];
            for (up, out) in steps {
                (height, girth) = (height + up, girth + out);
                knots.push((height, girth));
            }
            let mould = taped(&knots);
            prop_assert_eq!(mould.mould().undercut.depth, Length::ZERO);
            for (height, girth) in knots {
                let spot = mould.profile.at(mould.profile.along_at_height(Length::mm(height)));
                prop_assert!((spot.girth().to_mm() - girth).abs() < 1e-5);
            }
        }
    }
}
