//! Lashing and filler: check values, measured baskets and properties.

mod rim_bench;

use basket::fittings::Ears;
use basket::lashing::{Filler, Lashing, Section, filler_round, laid_length, tight_length};
use basket::measure::Length;
use basket::pattern::{EarsPattern, Every, FillerPattern, LashingPattern, LashingStyle};
use basket::rim::Rim;
use basket::staves::Staves;
use basket::stock::{Catalogue, Kind, Material};
use proptest::prelude::*;
use rim_bench::{close, material, staves};

const SECTION: Section =
    Section { across: Length::mm(14.0), height: Length::mm(16.0), corner: Length::mm(3.0) };

/// Perimeter of a rounded rectangle, `2(a + b) − 8r + 2πr (+ πt)`; computed.
#[test]
fn way_round_the_rim() {
    close(SECTION.round(Length::ZERO).to_mm(), 54.8496, 5e-5);
    close(SECTION.round(Length::mm(1.0)).to_mm(), 57.9911, 5e-5);
}

/// A helix on the ring, `N√(c² + q²)`; computed, and within 0.02 % of the integral over the torus
/// (1586.798).
#[test]
fn tight_helix_round_a_ring() {
    let step = Length::mm(std::f64::consts::TAU * 127.0 / 25.0);
    let bare = tight_length(25, SECTION.round(Length::ZERO), step);
    close(bare.to_mm(), 1586.5193, 5e-5);
    close(bare.to_mm() / 1586.798, 1.0, 2e-4);
    close(tight_length(25, SECTION.round(Length::mm(1.0)), step).to_mm(), 1654.8733, 5e-5);
}

/// Half round hoops back to back make a round split by the staves: `2t + 2πR + πt_w`.
#[test]
fn section_of_half_round_hoops() {
    let (rim, _) = rim(25, 125.0);
    close(Section::of(&rim, None).round(Length::mm(1.0)).to_mm(), 3.0 + 11.0 * std::f64::consts::PI, 1e-9);
}

fn inches(wraps: u32, girth: f64, height: f64, across: f64, tails: f64) -> (f64, f64) {
    let section =
        Section { across: Length::inches(across), height: Length::inches(height), corner: Length::ZERO };
    let round = section.round(Length::ZERO);
    let step = Length::inches(girth / f64::from(wraps));
    let laid = laid_length(wraps, round, step).to_inches() + tails;
    (laid, tight_length(wraps, round, step).to_inches() + tails)
}

/// A maker's article on the length of lashers (2018): a basket 28 in round with 28 wraps took 82 in.
/// The section of its rim, 0.5 × 0.4 in, and tails of 4 in are fitted, not published.
#[test]
fn measured_basket_of_28_wraps() {
    let (laid, tight) = inches(28, 28.0, 0.5, 0.4, 4.0);
    close(laid, 82.0, 8.2);
    assert!(tight < 82.0 * 0.9, "a tight helix falls short of what was measured: {tight}");
}

/// A basket supplier's list for an 8-in square basket, about 38.5 in round (36 wraps, 0.625 × 0.4 in
/// rim, as computed from its stakes): 108 in of lasher.
#[test]
fn listed_basket_of_36_wraps() {
    let (laid, tight) = inches(36, 38.5, 0.625, 0.4, 4.0);
    close(laid, 108.0, 10.8);
    assert!(tight < 108.0 * 0.9, "a tight helix falls short of the list: {tight}");
}

fn rim(count: u32, radius: f64) -> (Rim, Staves) {
    (rim_bench::rim(count, radius, Some(50.0), None), staves(count, 1.5))
}

fn cane(strand: f64) -> Material {
    let mut cane = material("cane fine", Kind::ChairCane, 2.5, 1.0);
    cane.put_up.strand = Some(Length::mm(strand));
    cane
}

fn lash(pattern: &LashingPattern, count: u32, strand: f64) -> Lashing {
    let (rim, staves) = rim(count, 125.0);
    Lashing::of(pattern, &Catalogue::default(), &rim, &staves, None, &cane(strand), &mut Vec::new())
}

fn pattern(every: Every, style: LashingStyle) -> LashingPattern {
    let tail = Some(Length::mm(50.0));
    LashingPattern { weaver: None, every: Some(every), style: Some(style), tail }
}

#[test]
fn wraps_by_every_and_style() {
    use {Every::*, LashingStyle::*};
    for (every, style, count, wraps) in [
        (Stave, Single, 25, 25),
        (OtherStave, Single, 25, 13),
        (OtherStave, Single, 26, 13),
        (Stave, Crossed, 25, 50),
        (OtherStave, Crossed, 25, 26),
    ] {
        assert_eq!(lash(&pattern(every, style), count, 5000.0).wraps, wraps);
    }
    let single = lash(&pattern(Stave, Single), 25, 5000.0);
    let crossed = lash(&pattern(Stave, Crossed), 25, 5000.0);
    close(crossed.net / single.net, 2.0, 1e-12);
    close(crossed.step.to_mm(), single.step.to_mm(), 1e-12);
}

/// r 125, staves 1.5: ring radius 125.75, step 31.6044, round 3 + 11π = 37.5575; 25 wraps lay
/// 1729.05 mm, with 8 % spare 1867.37. Strands of 1000 less two tails of 50 bind 900 each: three
/// strands, two joins, 1867.37 + 300 to lay out.
#[test]
fn strands_and_joins() {
    let lashing = lash(&pattern(Every::Stave, LashingStyle::Single), 25, 1000.0);
    close(lashing.step.to_mm(), 31.6044, 5e-5);
    close(lashing.net.to_mm(), 1729.05, 0.01);
    close(lashing.length.to_mm(), 1867.37 + 300.0, 0.01);
    assert_eq!(lashing.strands, 3);
    assert_eq!(lashing.joins, [9, 17], "a third and two thirds of 25 wraps");
    let other = lash(&pattern(Every::OtherStave, LashingStyle::Crossed), 25, 1100.0);
    assert_eq!((other.wraps, other.strands), (26, 3));
    assert_eq!(other.joins, [17, 9], "the ninth wrap, and the fifth of the second round");
}

#[test]
fn weaver_is_the_baskets_own_or_cane() {
    let (rim, staves) = rim(25, 125.0);
    let reed = material("round reed 2", Kind::RoundReed, 1.75, 1.75);
    let catalogue = Catalogue {
        materials: vec![cane(4000.0), material("cane medium", Kind::ChairCane, 3.0, 1.0)],
        woods: Vec::new(),
    };
    let with = |default: &Material| {
        let mut choices = Vec::new();
        let lashing =
            Lashing::of(&LashingPattern::default(), &catalogue, &rim, &staves, None, default, &mut choices);
        let keys: Vec<_> = choices.iter().map(|choice| choice.key).collect();
        assert_eq!(keys, ["lashing.weaver", "lashing.every", "lashing.style", "lashing.tail"]);
        lashing.weaver.name
    };
    assert_eq!(with(&reed), "cane fine");
    assert_eq!(with(&material("splint", Kind::Splint, 4.0, 0.8)), "splint");
}

#[test]
fn close_staves_are_lashed_at_every_other() {
    let every = |count| {
        let open = LashingPattern { every: None, ..pattern(Every::Stave, LashingStyle::Single) };
        lash(&open, count, 5000.0).every
    };
    // 790.1 mm round: 158 staves stand 5.001 mm apart, 159 stand 4.969; twice the strand is 5.
    assert_eq!(every(157), Every::Stave);
    assert_eq!(every(159), Every::OtherStave);
}

fn fill(placing: Option<basket::pattern::EarPlacing>, count: u32, radius: f64) -> (Filler, Length) {
    let (rim, staves) = rim(count, radius);
    let ears = placing.map(|placing| {
        let pattern = EarsPattern { placing: Some(placing), ..EarsPattern::default() };
        Ears::of(&pattern, rim.radius(), rim.height, &staves, &mut Vec::new())
    });
    let stock = FillerPattern::Stock(material("round reed 3", Kind::RoundReed, 2.25, 2.25));
    let filler = Filler::of(&stock, &Catalogue::default(), &rim, &staves, ears.as_ref(), &mut Vec::new());
    (filler.expect("stock is given"), filler_round(rim.radius(), staves.uprights.thickness))
}

#[test]
fn filler_goes_round_once_or_between_the_ears() {
    let (whole, round) = fill(None, 25, 125.0);
    assert_eq!(whole.pieces.len(), 1);
    close(whole.length.to_mm(), std::f64::consts::TAU * 125.75, 1e-9);
    assert_eq!(whole.length, round);
    let (uneven, _) = fill(Some(basket::pattern::EarPlacing::OnStaves), 25, 125.0);
    let [first, second] = uneven.pieces[..] else { panic!("two pieces") };
    close(first.length.to_mm(), round.to_mm() * 13.0 / 25.0 - 12.7, 1e-9);
    close(second.length.to_mm(), round.to_mm() * 12.0 / 25.0 - 12.7, 1e-9);
}

#[test]
fn filler_covers_the_stave_tips() {
    let (rim, staves) = rim(25, 125.0);
    let reed = |mm: f64| material(&format!("round reed {mm} mm"), Kind::RoundReed, mm, mm);
    let chosen = |materials: Vec<Material>| {
        let catalogue = Catalogue { materials, woods: Vec::new() };
        let mut choices = Vec::new();
        let filler = Filler::of(&FillerPattern::Choose, &catalogue, &rim, &staves, None, &mut choices);
        assert_eq!(choices.len(), 1);
        filler.map(|filler| filler.stock.name)
    };
    let all = vec![reed(1.75), reed(3.25), reed(2.25)];
    assert_eq!(chosen(all).as_deref(), Some("round reed 2.25 mm"));
    assert_eq!(chosen(vec![reed(1.0), reed(1.5)]).as_deref(), Some("round reed 1.5 mm"));
    assert_eq!(chosen(vec![cane(100.0)]), None);
}

proptest! {
    #[test]
    fn lashing_is_finite_and_orderly(
        count in 0_u32..400, strand in 0.0..6000.0_f64, crossed: bool, other: bool, tail in 0.0..200.0_f64,
    ) {
        let style = if crossed { LashingStyle::Crossed } else { LashingStyle::Single };
        let every = if other { Every::OtherStave } else { Every::Stave };
        let tail = Some(Length::mm(tail));
        let lashing = lash(&LashingPattern { tail, ..pattern(every, style) }, count, strand);
        prop_assert!(lashing.length.to_mm().is_finite());
        prop_assert!(lashing.tight <= lashing.net && lashing.net <= lashing.length);
        prop_assert_eq!(lashing.joins.len() as u32 + 1, lashing.strands);
        prop_assert!(lashing.joins.iter().all(|stave| (1..=count.max(1)).contains(stave)));
    }

    #[test]
    fn filler_and_ears_make_the_round(count in 3_u32..200, radius in 40.0..400.0_f64, way in 0_usize..4) {
        use basket::pattern::EarPlacing::*;
        let (filler, round) = fill(Some([OnStaves, StaveAndGap, Shared, ByAngle][way]), count, radius);
        prop_assert!((filler.length.to_mm() + 2.0 * 12.7 - round.to_mm()).abs() < 1e-9);
        for piece in &filler.pieces {
            let turn = (piece.to_turn - piece.from_turn).rem_euclid(1.0);
            prop_assert!((turn * round.to_mm() - piece.length.to_mm()).abs() < 1e-9);
        }
    }
}
