//! Lashing and filler: check values, measured baskets and properties.

mod rim_bench;

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use basket::lashing::{Filler, Hull, Lashing, RimSection, filler_round, laid_length, tight_length};
use basket::measure::Length;
use basket::pattern::{EarsPattern, Every, FillerPattern, LashingPattern, LashingStyle};
use basket::rim::Rim;
use basket::stock::{Catalogue, Kind, Material};
use basket::uprights::Uprights;
use proptest::prelude::*;
use rim_bench::{close, made, material, uprights};

/// A rectangle with rounded corners, by places on its outline.
fn rectangle(width: f64, height: f64, corner: f64) -> Hull {
    let steps = 512_u32;
    let place = |step: u32| {
        let (up, right) = (TAU * f64::from(step) / f64::from(steps)).sin_cos();
        let middle = |half: f64, way: f64| (half - corner) * way.signum() + corner * way;
        (Length::mm(middle(width / 2.0, right)), Length::mm(middle(height / 2.0, up)))
    };
    Hull::of((0..steps).map(place).chain([(Length::ZERO, Length::ZERO)]))
}

/// Perimeter of a rounded rectangle, `2(a + b) − 8r + 2πr (+ πt)`; computed.
#[test]
fn way_round_the_rim() {
    let section = rectangle(14.0, 16.0, 3.0);
    close(section.girth(Length::ZERO).to_mm(), 54.8496, 2e-4);
    close(section.girth(Length::mm(0.5)).to_mm(), 57.9911, 2e-4);
}

/// A helix on the ring, `N√(c² + q²)`; computed, and within 0.02 % of the integral over the torus
/// (1586.798).
#[test]
fn tight_helix_round_a_ring() {
    let step = Length::mm(TAU * 127.0 / 25.0);
    let bare = tight_length(25, Length::mm(54.8496), step);
    close(bare.to_mm(), 1586.5193, 2e-3);
    close(bare.to_mm() / 1586.798, 1.0, 2e-4);
    close(tight_length(25, Length::mm(57.9911), step).to_mm(), 1654.8733, 2e-3);
}

/// Half round hoops back to back make a round split by the staves: `2t + 2πR + πt_w`.
#[test]
fn section_of_half_round_hoops() {
    let (rim, _) = rim(25, 125.0);
    let round = RimSection::of(&rim, None, 256).hull().girth(Length::mm(0.5));
    close(round.to_mm(), 3.0 + 11.0 * PI, 1e-3);
}

/// A filler of 2 mm round reed on the same hoops, worked by hand: the circles of 5 about (1.5, 5) and of 1
/// about (0.75, 11) are D = √(0.75² + 6²) apart, so the strand runs straight for √(D² − 4²) between
/// them and leaves the hoop `atan2(6, −0.75) − acos(4/D)` above level.
#[test]
fn section_with_a_round_filler() {
    let (rim, _) = rim(25, 125.0);
    let filler = filler(&rim, material("round reed", Kind::RoundReed, 2.0, 2.0));
    let apart = 0.75_f64.hypot(6.0);
    let straight = (apart * apart - 16.0).sqrt();
    let leaves = 6.0_f64.atan2(-0.75) - (4.0 / apart).acos();
    let by_hand = 1.5 + 2.0 * straight + 10.0 * (FRAC_PI_2 + leaves) + 2.0 * (FRAC_PI_2 - leaves);
    close(by_hand, 36.1963, 1e-4);
    close(RimSection::of(&rim, Some(&filler), 256).hull().girth(Length::ZERO).to_mm(), by_hand, 1e-3);
}

fn filler(rim: &Rim, stock: Material) -> Filler {
    let (stock, uprights) = (FillerPattern::Stock(stock), uprights(25, 1.5));
    let filler = made(&Catalogue::default(), |making| Filler::of(&stock, (rim, &uprights, None), making)).0;
    filler.expect("stock is given")
}

/// How far a stock's section reaches in a direction from the middle of its flat.
fn reach(stock: &Material, across: f64, high: f64) -> f64 {
    let (half, thick) = (stock.width.to_mm() / 2.0, stock.thickness.to_mm());
    let flat = half * across.abs();
    match stock.kind {
        Kind::HalfRoundReed => {
            if high > 0.0 {
                (half * across).hypot(thick * high)
            } else {
                flat
            }
        }
        Kind::RoundReed => thick / 2.0 * high + (half * across).hypot(thick / 2.0 * high),
        Kind::FlatReed => flat + thick * high.max(0.0),
        _ if high <= 0.0 => flat,
        _ => {
            let at = (half * across / (thick * high)).clamp(-1.0, 1.0);
            flat.max(half * at * across + thick * (1.0 - at * at / 2.0) * high)
        }
    }
}

/// Perimeter of the hull of a rim's parts as the integral of its reach over all directions
/// (A. Cauchy, 1832): nothing here knows of corners or chains.
fn by_reach(rim: &Rim, filler: &Material) -> f64 {
    let (outer, inner, height) = (&rim.outer.stock, &rim.inner.stock, rim.height.to_mm());
    let thick = (rim.stack - outer.thickness - inner.thickness).to_mm();
    let steps = 4000_u32;
    let reaches = (0..steps).map(|step| {
        let (up, out) = (TAU * f64::from(step) / f64::from(steps)).sin_cos();
        let hoop = |stock: &Material, flat: f64, side: f64| {
            out * flat + up * stock.width.to_mm() / 2.0 + reach(stock, up, side * out)
        };
        let tip = out * thick / 2.0 + up * height + reach(filler, out, up);
        let stave = (out * thick).max(0.0) + (up * height).max(0.0);
        hoop(outer, thick, 1.0).max(hoop(inner, 0.0, -1.0)).max(tip).max(stave)
    });
    reaches.sum::<f64>() * TAU / f64::from(steps)
}

fn inches(wraps: u32, girth: f64, height: f64, across: f64, tails: f64) -> (f64, f64) {
    let corners = [(0.0, 0.0), (across, 0.0), (across, height), (0.0, height)];
    let section = Hull::of(corners.map(|(x, y)| (Length::inches(x), Length::inches(y))));
    let round = section.girth(Length::ZERO);
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

fn rim(count: u32, radius: f64) -> (Rim, Uprights) {
    (rim_bench::rim(count, radius, Some(50.0), None), uprights(count, 1.5))
}

fn cane(strand: f64) -> Material {
    let mut cane = material("cane fine", Kind::ChairCane, 2.5, 1.0);
    cane.put_up.strand = Some(Length::mm(strand));
    cane
}

fn lash(pattern: &LashingPattern, count: u32, strand: f64) -> Lashing {
    let (rim, uprights) = rim(count, 125.0);
    let around = (&rim, &uprights, None);
    made(&Catalogue::default(), |making| Lashing::of(pattern, around, &cane(strand), making)).0
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
    let (rim, uprights) = rim(25, 125.0);
    let reed = material("round reed 2", Kind::RoundReed, 1.75, 1.75);
    let catalogue = Catalogue {
        materials: vec![cane(4000.0), material("cane medium", Kind::ChairCane, 3.0, 1.0)],
        woods: Vec::new(),
    };
    let with = |default: &Material| {
        let around = (&rim, &uprights, None);
        let open = LashingPattern::default();
        let (lashing, choices) = made(&catalogue, |making| Lashing::of(&open, around, default, making));
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
    let (rim, uprights) = rim(count, radius);
    let ears = placing.map(|placing| {
        let pattern = EarsPattern { placing: Some(placing), ..EarsPattern::default() };
        rim_bench::ears(&pattern, count, radius)
    });
    let stock = FillerPattern::Stock(material("round reed 3", Kind::RoundReed, 2.25, 2.25));
    let around = (&rim, &uprights, ears.as_ref());
    let filler = made(&Catalogue::default(), |making| Filler::of(&stock, around, making)).0;
    (filler.expect("stock is given"), filler_round(rim.radius(), uprights.thickness))
}

#[test]
fn filler_goes_round_once_or_between_the_ears() {
    let (whole, round) = fill(None, 25, 125.0);
    assert_eq!(whole.pieces.len(), 1);
    close(whole.length.to_mm(), TAU * 125.75, 1e-9);
    assert_eq!(whole.length, round);
    let (uneven, _) = fill(Some(basket::pattern::EarPlacing::OnStaves), 25, 125.0);
    let [first, second] = uneven.pieces[..] else { panic!("two pieces") };
    close(first.length.to_mm(), round.to_mm() * 13.0 / 25.0 - 6.35, 1e-9);
    close(second.length.to_mm(), round.to_mm() * 12.0 / 25.0 - 6.35, 1e-9);
}

/// Common cane is the usual filler; else the narrowest cane, then the thinnest round reed, that is a
/// quarter wider than the staves are thick (1.5).
#[test]
fn filler_covers_the_stave_tips() {
    let (rim, uprights) = rim(25, 125.0);
    let reed = |mm: f64| material(&format!("round reed {mm} mm"), Kind::RoundReed, mm, mm);
    let cane = |name: &str, mm: f64| material(name, Kind::ChairCane, mm, 1.0);
    let chosen = |materials: Vec<Material>| {
        let catalogue = Catalogue { materials, woods: Vec::new() };
        let around = (&rim, &uprights, None);
        let (filler, choices) = made(&catalogue, |making| Filler::of(&FillerPattern::Choose, around, making));
        assert_eq!(choices.len(), 1);
        (filler.map(|filler| filler.stock.name), choices[0].reason.id)
    };
    let is = |name: &str, reason| (Some(name.to_owned()), reason);
    let built_in = Catalogue::built_in().materials.clone();
    assert_eq!(chosen(built_in), is("cane common", "choice-filler-common"));
    let canes = vec![reed(2.0), cane("cane medium", 3.0), cane("cane fine", 2.5), cane("cane", 1.5)];
    assert_eq!(chosen(canes), is("cane fine", "choice-filler"));
    let narrow = vec![reed(1.75), cane("cane common", 1.75), reed(3.25), reed(2.25)];
    assert_eq!(chosen(narrow), is("round reed 2.25 mm", "choice-filler"));
    assert_eq!(chosen(vec![reed(1.0), reed(1.5)]), is("round reed 1.5 mm", "choice-filler"));
    assert_eq!(chosen(vec![material("flat reed", Kind::FlatReed, 6.0, 1.2)]), (None, "choice-filler-none"));
}

proptest! {
    #[test]
    fn the_way_round_is_the_hull_of_the_parts(
        outer in 0_usize..4, inner in 0_usize..4, filler in 0_usize..4,
        sizes in prop::array::uniform6(1.0..12.0_f64), stave in 0.5..4.0_f64,
    ) {
        let kinds = [Kind::HalfRoundReed, Kind::RoundReed, Kind::FlatReed, Kind::FlatOvalReed];
        let stock = |kind: usize, at: usize| material("any", kinds[kind], sizes[at], sizes[at + 1]);
        let mut rim = rim(25, 125.0).0;
        (rim.outer.stock, rim.inner.stock) = (stock(outer, 0), stock(inner, 2));
        rim.height = rim.outer.stock.width;
        rim.stack = rim.outer.stock.thickness + Length::mm(stave) + rim.inner.stock.thickness;
        let on_top = stock(filler, 4);
        let hull = RimSection::of(&rim, Some(&self::filler(&rim, on_top.clone())), 256).hull();
        let wanted = by_reach(&rim, &on_top);
        prop_assert!((hull.girth(Length::ZERO).to_mm() - wanted).abs() < 2e-3, "{hull:?} {wanted}");
    }

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
        prop_assert!((filler.length.to_mm() + 2.0 * 6.35 - round.to_mm()).abs() < 1e-9);
        for piece in &filler.pieces {
            let turn = (piece.to_turn - piece.from_turn).rem_euclid(1.0);
            prop_assert!((turn * round.to_mm() - piece.length.to_mm()).abs() < 1e-9);
        }
    }
}
