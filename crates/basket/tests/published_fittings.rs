//! Ears: check values and properties.

mod rim_bench;

use std::f64::consts::{PI, TAU};

use basket::fittings::{Ears, tilt};
use basket::measure::Length;
use basket::pattern::{EarMaterial, EarPlacing, EarWay, EarsPattern};
use proptest::prelude::*;
use rim_bench::close;

fn ears(placing: Option<EarPlacing>, count: u32, radius: f64) -> Ears {
    let pattern = EarsPattern { placing, ..EarsPattern::default() };
    rim_bench::ears(&pattern, count, radius)
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

/// Common practice: on two staves whatever the count, since a pin through the middle of a stave holds an ear.
#[test]
fn the_default_is_on_two_staves() {
    let odd = ears(None, 25, 125.0);
    assert_eq!((odd.placing, odd.off_toward(25)), (EarPlacing::OnStaves, 15));
    let even = ears(None, 24, 125.0);
    assert_eq!(even.placing, EarPlacing::OnStaves);
    assert_eq!([even.each[0].stave, even.each[1].stave], [1, 13]);
    close(even.off_middle.to_mm(), 0.0, 0.0);
}

/// Directions name staves: by hand on 25 staves. The place that faces stave 1 lies between staves 13 and 14, so
/// that a quarter pitch after stave 1 it lies a quarter pitch before stave 14.
#[test]
fn ears_are_off_toward_a_stave() {
    let toward = |placing| ears(Some(placing), 25, 125.0).each.map(|ear| (ear.stave, ear.toward(25)));
    assert_eq!(toward(EarPlacing::Shared), [(1, 2), (14, 13)]);
    let [_, gap] = toward(EarPlacing::StaveAndGap);
    assert_eq!(gap, (13, 14));
}

/// Tail 1 in woven in (common practice), 2 in pushed down (a basket supplier's page on ears); rim 10 mm, hole
/// 5/8 in, round top of half the width. A stave of 6 mm is narrower than the least ear, 1/4 in.
#[test]
fn an_ear_is_as_long_as_its_parts() {
    let of = |way| {
        let pattern = EarsPattern { material: Some(EarMaterial::Oak), way, ..EarsPattern::default() };
        rim_bench::ears_and_choices(&pattern, 25, 125.0)
    };
    let (woven_in, choices) = of(None);
    close(woven_in.length.to_mm(), 25.4 + 10.0 + 15.875 + 3.175, 1e-9);
    close(woven_in.thickness.to_inches(), 0.25, 1e-12);
    close(woven_in.tail_width.to_mm(), 6.0, 1e-12);
    let keys: Vec<_> = choices.iter().map(|choice| choice.key).collect();
    let open = ["ears.way", "ears.placing", "ears.width", "ears.thickness", "ears.hole", "ears.tail"];
    assert_eq!(keys, open, "the material was given");
    let (pushed_down, _) = of(Some(EarWay::PushedDown));
    close((pushed_down.length - woven_in.length).to_mm(), 25.4, 1e-9);
    assert_eq!(pushed_down.woven_in, None);
    // The wall is 100 mm high, and a stave has 9 mm more below it.
    let (as_stave, _) = of(Some(EarWay::AsStave));
    close(as_stave.tail.to_mm(), 109.0, 1e-9);
    assert!(as_stave.replace_staves());
}

/// By hand: 40 rows of 2.5 mm; 25.4 mm below the top, at 74.6, the next whole row begins at 75 above row 30.
#[test]
fn woven_in_ears_stand_on_the_last_row_below_their_tails() {
    let ears = ears(None, 25, 125.0);
    let woven_in = ears.woven_in.expect("woven in is usual");
    assert_eq!((woven_in.on_row, woven_in.rows), (30, 10));
    close(woven_in.mould_left.to_mm(), 25.0, 1e-9);
}

/// Wood 1/4 in thick over staves of 1.5 mm: each shoulder is half of what is taken off. Brass has none.
#[test]
fn wood_is_shouldered_for_the_hoops_and_shaved_to_a_stave() {
    let of = |material, way| {
        let pattern = EarsPattern { material: Some(material), way: Some(way), ..EarsPattern::default() };
        rim_bench::ears(&pattern, 25, 125.0)
    };
    let stave = Length::mm(1.5);
    let wood = of(EarMaterial::Wood, EarWay::WovenIn);
    close(wood.blade(stave).to_mm(), 1.5, 1e-12);
    close(wood.shoulder(stave).to_mm(), (6.35 - 1.5) / 2.0, 1e-12);
    close(wood.tip(stave).to_inches(), 1.0 / 32.0, 1e-12);
    assert_eq!(wood.wood.map(|wood| wood.name).as_deref(), Some("cherry"), "as the base");
    let brass = of(EarMaterial::Brass, EarWay::AsStave);
    close(brass.shoulder(stave).to_mm(), 0.0, 0.0);
    assert!(!brass.replace_staves());
    close(brass.tail.to_mm(), 100.0, 1e-12);
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
        let chord = Length::mm(radius) * (ears.off_opposite.to_radians() / 2.0).sin();
        prop_assert!((chord - ears.off_middle).to_mm().abs() < 1e-9 * radius);
    }
}
