//! Pins: check values, worked places, and what holds wherever ears stand.

mod rim_bench;

use std::f64::consts::TAU;

use basket::fittings::{Ears, Pins, length_needed};
use basket::measure::Length;
use basket::pattern::{EarMaterial, EarPlacing, EarsPattern, Every, PinsPattern};
use basket::stock::{Catalogue, Kind, Material};
use basket::{Hand, Making};
use proptest::prelude::*;
use proptest::sample::select;
use rim_bench::{close, material, rim, uprights};

const RADIUS: f64 = 125.0;

fn pin(length: f64, diameter: f64) -> Material {
    let mut pin = material(&format!("pin {length} × {diameter}"), Kind::Pin, diameter, diameter);
    pin.length = Some(Length::mm(length));
    pin
}

fn pins(count: u32, every: Every, stocks: &[Material], ears: Option<&Ears>) -> Pins {
    let pattern = PinsPattern { stock: None, every: Some(every) };
    let catalogue = Catalogue { materials: stocks.to_vec(), woods: Vec::new() };
    let (rim, uprights) = (rim(count, RADIUS, Some(50.0), ears), uprights(count, 1.5));
    Pins::of(&pattern, (&rim, &uprights, ears, true), &mut Making::new(&catalogue, &Hand::USUAL))
}

fn ears(count: u32, placing: EarPlacing, width: f64, material: EarMaterial) -> Ears {
    let pattern = EarsPattern {
        placing: Some(placing),
        material: Some(material),
        width: Some(Length::mm(width)),
        ..EarsPattern::default()
    };
    rim_bench::ears(&pattern, count, RADIUS)
}

fn pinned(count: u32, every: Every, placing: EarPlacing, width: f64) -> Vec<u32> {
    let ears = ears(count, placing, width, EarMaterial::Brass);
    pins(count, every, &[], Some(&ears)).each().into_iter().map(|(stave, _)| stave).collect()
}

/// Rivet stock rule of a how-to article: grip and 1.5 diameters. The stack is 5 + 1.5 + 5.
#[test]
fn a_pin_goes_through_the_stack_and_clinches() {
    close(length_needed(Length::mm(11.5), Length::mm(1.2)).to_mm(), 13.3, 1e-12);
    let sizes = [pin(9.5, 1.2), pin(19.0, 1.2), pin(15.9, 1.2), pin(15.9, 0.9), pin(12.7, 0.9)];
    let found = pins(25, Every::OtherStave, &sizes, None);
    assert_eq!(found.others.stock.name, "pin 15.9 × 0.9", "12.7 is too short for 12.85");
    close(found.others.drill.to_mm(), 0.9, 1e-12);
    assert_eq!(found.ears, None);
    let short = pins(25, Every::OtherStave, &sizes[..1], None);
    assert!(short.others.length < short.others.length_needed, "the longest there is");
    assert_eq!(pins(25, Every::OtherStave, &[], None).others.stock.kind, Kind::Pin);
}

/// Sheet brass of 1/16 in goes between hoop and stave as it is: 11.5 + 1.5875 and 1.5 diameters of 0.9 or
/// 1.2 make 14.44 or 14.89. Oak is shaved as thin as the stave: 11.5 + 1.5, and 14.35 or 14.8.
#[test]
fn a_pin_at_an_ear_goes_through_the_ear_too() {
    let sizes = [pin(13.0, 0.9), pin(15.9, 1.2), pin(14.4, 0.9), pin(19.0, 1.2)];
    let at_ears = |material| {
        let ears = ears(25, EarPlacing::OnStaves, 6.0, material);
        let pins = pins(25, Every::OtherStave, &sizes, Some(&ears));
        assert_eq!(pins.others.stock.name, "pin 13 × 0.9");
        pins.ears.expect("it has ears")
    };
    let brass = at_ears(EarMaterial::Brass);
    close(brass.stack.to_mm(), 11.5 + 1.5875, 1e-12);
    assert_eq!((brass.stock.name.as_str(), brass.staves.as_slice()), ("pin 15.9 × 1.2", &[1, 14][..]));
    close(brass.length_needed.to_mm(), 14.8875, 1e-12);
    let oak = at_ears(EarMaterial::Oak);
    close(oak.stack.to_mm(), 13.0, 1e-12);
    assert_eq!((oak.stock.name.as_str(), oak.count(), oak.spares), ("pin 14.4 × 0.9", 2, 1));
}

/// Where the pins are long enough for the ears, there is one sort; where none is, the longest is taken.
#[test]
fn ears_take_what_there_is() {
    let ears = ears(25, EarPlacing::OnStaves, 6.0, EarMaterial::Brass);
    let of = |sizes: &[Material]| pins(25, Every::OtherStave, sizes, Some(&ears)).ears.expect("ears");
    assert_eq!(of(&[pin(19.0, 1.2)]).stock.name, "pin 19 × 1.2");
    let short = of(&[pin(13.0, 0.9), pin(14.0, 0.9)]);
    assert_eq!(short.stock.name, "pin 14 × 0.9");
    assert!(short.length < short.length_needed);
}

/// Every other stave of an odd count N takes (N + 1)/2 pins, and two neighbours are pinned: at the
/// outer scarf, whose middle lies 25/4 = 6.25 staves after the first.
#[test]
fn pins_at_every_other_stave() {
    let odd = pins(25, Every::OtherStave, &[], None);
    assert_eq!(odd.others.staves, [1, 3, 5, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24]);
    assert_eq!((odd.count(), odd.others.spares), (13, 2));
    let even = pins(26, Every::OtherStave, &[], None);
    assert_eq!(even.others.staves, (1..=25).step_by(2).collect::<Vec<_>>());
    let all = pins(75, Every::Stave, &[], None);
    assert_eq!((all.count(), all.others.spares), (75, 8));
}

/// Ears on staves 1 and 14 of 25 leave ways of 13 and 12: the odd one has its neighbours half way, where
/// the outer hoop's scarf is. On 26 staves both ways are 13 and both have them; on 28 they are 14.
#[test]
fn neighbours_stand_half_way_between_the_ears() {
    let on = |count| pinned(count, Every::OtherStave, EarPlacing::OnStaves, 6.0);
    assert_eq!(on(25), [1, 3, 5, 7, 8, 10, 12, 14, 16, 18, 20, 22, 24]);
    assert_eq!(on(26), [1, 3, 5, 7, 8, 10, 12, 14, 16, 18, 20, 21, 23, 25]);
    assert_eq!(on(28), (1..=27).step_by(2).collect::<Vec<_>>());
}

/// 25 staves stand 31.4 mm apart. An ear 60 mm wide with 2 mm of room and half a pin (0.6) keeps pins
/// 32.6 away from its middle: both neighbours are left out. One 58 mm wide leaves them in.
#[test]
fn an_ear_that_covers_its_neighbours_keeps_their_pins_away() {
    let all = |width| pinned(25, Every::Stave, EarPlacing::OnStaves, width);
    assert_eq!(all(57.0).len(), 25);
    let left_out: Vec<u32> = (1..=25).filter(|stave| !all(60.0).contains(stave)).collect();
    assert_eq!(left_out, [2, 13, 15, 25]);
    let wide = pinned(25, Every::OtherStave, EarPlacing::OnStaves, 124.0);
    assert_eq!(wide, [1, 4, 6, 8, 9, 11, 14, 17, 19, 21, 23], "two on each side are covered");
}

fn apart(a: f64, b: f64) -> f64 {
    let turn = (a - b).rem_euclid(1.0);
    turn.min(1.0 - turn)
}

proptest! {
    #[test]
    fn pins_hold_the_ears_and_keep_off_their_edges(
        count in 3_u32..=200, width in 3.0..30.0_f64, each: bool,
        placing in select(vec![
            EarPlacing::OnStaves, EarPlacing::StaveAndGap, EarPlacing::Shared, EarPlacing::ByAngle,
        ]),
    ) {
        let every = if each { Every::Stave } else { Every::OtherStave };
        let ears = ears(count, placing, width, EarMaterial::Brass);
        let pins = pins(count, every, &[pin(15.9, 1.2)], Some(&ears));
        let staves: Vec<u32> = pins.each().into_iter().map(|(stave, _)| stave).collect();
        prop_assert!(staves.is_sorted_by(|a, b| a < b), "each once, in order");
        prop_assert_eq!(pins.count() as usize, staves.len());
        let own = &pins.ears.as_ref().expect("it has ears").staves;
        // A pin stands in the middle of its stave, for a stave is all that is said of it.
        let turn = |stave: u32| f64::from(stave - 1) / f64::from(count);
        let off = |stave: u32| ears.each.map(|ear| apart(turn(stave), ear.turn) * TAU * RADIUS);
        let near = |stave: u32| off(stave).iter().any(|off| *off < width / 2.0 + 2.0 + 0.6);
        for ear in &ears.each {
            prop_assert!(own.contains(&ear.stave) && staves.contains(&ear.stave));
        }
        for stave in &staves {
            prop_assert!((1..=count).contains(stave));
            prop_assert!(own.contains(stave) || !near(*stave), "pin {stave} stands at an ear's edge");
        }
        for (from, to, step) in pins.steps(count) {
            let between = (1..step).map(|way| (from - 1 + way) % count + 1);
            let free = between.filter(|stave| !near(*stave)).count();
            prop_assert!(free <= if each { 0 } else { 2 }, "{step} staves from {from} to {to}");
            // Where no ear covers a neighbour, three staves are the longest step.
            prop_assert!(step <= 3 || (1..step).any(|way| near((from - 1 + way) % count + 1)));
            let at_ear = own.contains(&from) || own.contains(&to);
            let forced = step == 1 && own.contains(&from) && own.contains(&to);
            prop_assert!(each || step != 1 || !at_ear || forced, "neighbours {from} and {to} at an ear");
        }
    }

    /// No way round is more even: the squares of what each step is off two are least, by trying every
    /// set of staves.
    #[test]
    fn no_other_places_are_more_even(
        count in 6_u32..=14, width in 3.0..140.0_f64,
        placing in select(vec![EarPlacing::OnStaves, EarPlacing::Shared]),
    ) {
        let ears = ears(count, placing, width, EarMaterial::Brass);
        let pins = pins(count, Every::OtherStave, &[pin(15.9, 1.2)], Some(&ears));
        let own: Vec<u32> = ears.each.iter().map(|ear| ear.stave).collect();
        let free = |stave: u32| {
            let turn = f64::from(stave - 1) / f64::from(count);
            ears.each.iter().all(|ear| apart(turn, ear.turn) * TAU * RADIUS >= width / 2.0 + 2.6)
        };
        let cost = |staves: &[u32]| -> (usize, u32) {
            let steps = staves.iter().zip(staves.iter().cycle().skip(1));
            let steps = steps.map(|(a, b)| (*a, *b, (b + count - a) % count));
            let at_ear = steps.clone().filter(|(a, b, step)| *step == 1 && (own.contains(a) || own.contains(b)));
            (at_ear.count(), steps.map(|(_, _, step)| step.abs_diff(2).pow(2)).sum())
        };
        let sets = (0_u32..1 << count)
            .map(|set| (1..=count).filter(move |stave| set >> (stave - 1) & 1 == 1).collect::<Vec<u32>>());
        let allowed = sets.filter(|set| {
            own.iter().all(|stave| set.contains(stave))
                && set.iter().all(|stave| own.contains(stave) || free(*stave))
        });
        let least = allowed.map(|set| cost(&set)).min().expect("the ears alone are a set");
        let staves: Vec<u32> = pins.each().into_iter().map(|(stave, _)| stave).collect();
        prop_assert_eq!(cost(&staves), least, "{:?}", staves);
    }
}
