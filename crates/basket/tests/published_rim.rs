//! Rim: check values and properties.
//!
//! Values marked "computed" were worked out apart from this program, from the formula named beside
//! them.

mod rim_bench;

use basket::measure::Length;
use basket::message::Value;
use basket::pattern::{EarPlacing, EarsPattern, HoopWay, RimPattern};
use basket::rim::{HoopStocks, Rim, Taken, inner_neutral, inner_strain, outer_neutral, outer_strain};
use basket::stock::{Catalogue, Kind};
use basket::{Hand, Making};
use proptest::prelude::*;
use rim_bench::{close, material, seat, uprights};

/// The centroid of a half disc lies 4R/3π from its flat (Pappus); computed for R 5 on r 125 over staves
/// of 1.5 mm.
#[test]
fn neutral_lengths_of_half_round_hoops() {
    let stock = material("half round", Kind::HalfRoundReed, 10.0, 5.0);
    let inner = inner_neutral(Length::mm(125.0 * std::f64::consts::TAU), stock.centroid());
    let outer = outer_neutral(Length::mm(125.0 * std::f64::consts::TAU), Length::mm(1.5), stock.centroid());
    close(inner.to_mm(), 772.0648, 5e-5);
    close(outer.to_mm(), 808.1563, 5e-5);
    close((outer - inner).to_mm(), 36.0914, 5e-5);
}

/// Plane sections stay plane: distance from the neutral axis over its radius; computed for R 4 on 120.
#[test]
fn strain_of_half_round_stock_depends_on_the_side_it_shows() {
    let stock = material("half round", Kind::HalfRoundReed, 8.0, 4.0);
    close(outer_strain(&stock, Length::mm(120.0)), 0.018_919, 5e-7);
    close(inner_strain(&stock, Length::mm(120.0)), 0.014_350, 5e-7);
}

/// Flat stock bends alike both ways, as `t/(2R)` to its middle.
#[test]
fn strain_of_flat_stock() {
    let stock = material("splint", Kind::Splint, 12.0, 3.0);
    close(outer_strain(&stock, Length::mm(98.5)), 0.015, 1e-12);
    close(inner_strain(&stock, Length::mm(101.5)), 0.015, 1e-12);
}

fn rim(radius: f64, lap: Option<f64>, with_ears: bool, count: u32) -> Rim {
    let opposite = EarsPattern { placing: Some(EarPlacing::Shared), ..EarsPattern::default() };
    let ears = rim_bench::ears(&opposite, count, radius);
    rim_bench::rim(count, radius, lap, with_ears.then_some(&ears))
}

#[test]
fn rim_stands_on_the_last_row_and_cuts_with_the_lap() {
    let rim = rim(125.0, Some(60.0), true, 25);
    close(rim.along.to_mm(), 100.0, 1e-12);
    close(rim.height.to_mm(), 10.0, 1e-12);
    close(rim.stack.to_mm(), 11.5, 1e-12);
    close(rim.inner.cut.to_mm(), 772.0648 + 60.0, 5e-5);
    close(rim.outer.cut.to_mm(), 808.1563 + 60.0, 5e-5);
}

/// Exactly opposite ears: each scarf's middle is a quarter round from both, the scarfs half a round
/// apart. A quarter of 785.398 mm less half the lap and half the ear of 1/4 in: 196.350 − 30 − 3.175.
#[test]
fn scarfs_keep_clear_of_the_ears_and_of_each_other() {
    let rim = rim(125.0, Some(60.0), true, 25);
    for hoop in [&rim.outer, &rim.inner] {
        close(hoop.scarf.clear_of_ear.expect("there are ears").to_mm(), 163.175, 5e-4);
        close(hoop.scarf.clear_of_other.to_mm(), 785.3982 / 2.0 - 60.0, 5e-4);
    }
    close(rim.outer.scarf.turn, 0.26, 1e-12);
    close(rim.inner.scarf.turn, 0.76, 1e-12);
    let from_and_to = (rim.outer.scarf.from_stave, rim.outer.scarf.to_stave);
    assert_eq!(from_and_to, (7, 8), "25 × (0.26 ∓ 0.0382) = 5.5 and 7.5 staves after the first");
}

#[test]
fn without_ears_scarfs_lie_at_the_quarters() {
    let rim = rim(125.0, Some(60.0), false, 25);
    close(rim.outer.scarf.turn, 0.25, 1e-12);
    close(rim.inner.scarf.turn, 0.75, 1e-12);
    assert_eq!(rim.outer.scarf.clear_of_ear, None);
}

/// Common practice: 4 in, 3 in on a rim less than 5 in across. Between two ears of 1/4 in on a rim 3 in across
/// lie 4.46 in; with 1/2 in kept clear of each ear that leaves 3.46 in. On one 2 in across 1.89 in are left, and a
/// scarf of stock 5 mm thick wants ten thicknesses, 1.97 in (*Wood Handbook*, FPL-GTR-190, 2010).
#[test]
fn lap_chosen_is_the_trades_where_it_fits() {
    for (across, ears, inches) in
        [(8.0, true, 4.0), (4.9, true, 3.0), (3.0, true, 3.0), (2.0, true, 50.0 / 25.4)]
    {
        let radius = Length::inches(across / 2.0).to_mm();
        let ears = ears.then(|| rim_bench::ears(&EarsPattern::default(), 25, radius));
        let stock = material("hoop", Kind::Splint, 10.0, 5.0);
        let catalogue = Catalogue::default();
        let mut making = Making::new(&catalogue, &Hand::USUAL);
        let rim = Rim::of(
            &RimPattern::default(),
            HoopStocks { outer: stock.clone(), inner: stock },
            (seat(radius), &uprights(25, 1.5), ears.as_ref().map_or(Taken::Free, Taken::Ears)),
            &mut making,
        );
        let choices = making.take_choices();
        close(rim.outer.scarf.lap.to_inches(), inches, 1e-9);
        let keys: Vec<_> = choices.iter().map(|choice| choice.key).collect();
        assert_eq!(keys, ["rim.hoops", "rim.lap"]);
        assert_eq!(choices[1].value, Value::Length(rim.outer.scarf.lap));
    }
}

/// A ring is asked for by its flat face: the outer one goes round staves of 1.5 mm on a circle of 125 mm.
#[test]
fn rings_are_as_wide_as_the_staves_they_hold() {
    let rim = rim(125.0, None, true, 25);
    assert_eq!(rim.hoops, HoopWay::Rings);
    close(rim.outer.across.length.to_mm(), 253.0, 1e-9);
    close(rim.inner.across.length.to_mm(), 250.0, 1e-9);
}

#[test]
fn stock_chosen_is_half_round_or_stands_in() {
    let wide = material("half round reed 3/4 in", Kind::HalfRoundReed, 19.0, 9.5);
    let near = material("half round reed 1/2 in", Kind::HalfRoundReed, 12.7, 6.4);
    let flat = material("flat reed 3/8 in", Kind::FlatReed, 9.5, 1.0);
    let usual = material("half round reed 3/8 in", Kind::HalfRoundReed, 9.5, 4.8);
    let of = |materials: &[_], pattern: &RimPattern| {
        let catalogue = Catalogue { materials: materials.to_vec(), woods: Vec::new() };
        let mut making = Making::new(&catalogue, &Hand::USUAL);
        let HoopStocks { outer, inner } = HoopStocks::of(pattern, &mut making);
        (outer.name, inner.name, making.take_choices().len())
    };
    let open = RimPattern::default();
    let names = |outer: &str, inner: &str, choices| (outer.to_owned(), inner.to_owned(), choices);
    assert_eq!(of(&[wide.clone(), usual.clone()], &open), names(&usual.name, &usual.name, 1));
    assert_eq!(of(&[flat.clone(), wide, near.clone()], &open), names(&near.name, &near.name, 1));
    assert_eq!(of(&[], &open), names("half round reed 3/8 in", "half round reed 3/8 in", 1));
    let given = RimPattern { stock: Some(usual.clone()), inner: Some(flat.clone()), ..RimPattern::default() };
    assert_eq!(of(&[], &given), names(&usual.name, &flat.name, 0));
}

proptest! {
    #[test]
    fn rim_is_finite_and_orderly(
        radius in 10.0..2000.0_f64, lap in 0.0..500.0_f64, more in 0.1..100.0_f64,
        ears: bool, count in 0_u32..500,
    ) {
        let short = rim(radius, Some(lap), ears, count);
        let long = rim(radius, Some(lap + more), ears, count);
        for (short, long) in [(&short.outer, &long.outer), (&short.inner, &long.inner)] {
            prop_assert!(long.cut > short.cut);
            for figure in [long.neutral.to_mm(), long.cut.to_mm(), long.bend_strain, long.scarf.turn,
                long.scarf.clear_of_other.to_mm()] {
                prop_assert!(figure.is_finite());
            }
            prop_assert!(long.scarf.clear_of_other < short.scarf.clear_of_other);
            prop_assert!((0.0..1.0).contains(&long.scarf.turn));
        }
        prop_assert!(short.outer.neutral > short.inner.neutral);
    }
}
