//! Ears and pins: check values and properties.

mod rim_bench;

use std::f64::consts::{PI, TAU};

use basket::fittings::{Ears, PinMeeting, Pins, length_needed, off_middle, tilt};
use basket::measure::Length;
use basket::pattern::{EarMaterial, EarPlacing, EarsPattern, Every, PinsPattern};
use basket::stock::{Catalogue, Kind, Material};
use proptest::prelude::*;
use rim_bench::{close, material, rim, staves};

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
}
