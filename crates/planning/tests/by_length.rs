//! Material that is sold by the running foot or metre beside whole hanks: a supplier's advice is a whole coil
//! where that is cheaper than the footage.

use std::ops::ControlFlow;

use basket::{Catalogue, Length};
use planning::buying::{Lot, Need, Offer, Purchase, Terms, buy};
use planning::cutting::{CuttingError, Piece};
use rust_decimal::Decimal;

fn offer(unit: &str, (holds, length): (u32, Length), cents: Option<i64>) -> Offer {
    Offer {
        material: "cane fine".to_owned(),
        colour: "natural".to_owned(),
        unit: unit.to_owned(),
        holds,
        length: Some(length),
        price: cents.map(|cents| Decimal::new(cents, 2)),
        from: String::new(),
    }
}

fn hank(cents: Option<i64>) -> Offer {
    offer("hank", (70, Length::feet(14.0)), cents)
}

fn foot(cents: Option<i64>) -> Offer {
    offer("foot", (1, Length::feet(1.0)), cents)
}

fn cane(pieces: &[(f64, u32)]) -> Need {
    let material = Catalogue::built_in().material("cane fine").unwrap().clone();
    let piece = |(feet, count): &(f64, u32)| Piece { length: Length::feet(*feet), count: *count };
    let pieces = pieces.iter().map(piece).collect();
    Need { material, colour: "natural".to_owned(), pieces, whole: 0, timings: Vec::new() }
}

fn bought_with(need: &Need, terms: &Terms) -> Purchase {
    buy(std::slice::from_ref(need), terms, &mut |_| ControlFlow::Continue(())).remove(0)
}

fn bought(pieces: &[(f64, u32)], offers: &[Offer]) -> Purchase {
    bought_with(&cane(pieces), &Terms { shelf: &[], offers, kerf: Length::ZERO })
}

/// A unit with how many of it, and how many strands of which length are ordered.
type Ordered<'p> = (&'p str, u32, Vec<(u32, u32)>);

fn said(purchase: &Purchase) -> Vec<Ordered<'_>> {
    purchase
        .buy
        .iter()
        .map(|bought| (bought.offer.unit.as_str(), bought.count, bought.in_lengths()))
        .collect()
}

fn money(cents: i64) -> Decimal {
    Decimal::new(cents, 2)
}

#[test]
fn little_is_bought_by_the_foot() {
    // 12 + 12 + 12 1/2 ft are 12 + 12 + 13 whole feet: 37 ft at 0.30 are 11.10, a hank is 48.00.
    let purchase = bought(&[(12.0, 2), (12.5, 1)], &[hank(Some(4800)), foot(Some(30))]);
    assert_eq!(said(&purchase), [("foot", 37, vec![(2, 12), (1, 13)])]);
    assert_eq!(
        (purchase.cost, purchase.spare, purchase.replacement()),
        (Some(money(1110)), 0, Some(money(1110)))
    );
    // Each strand is cut from the length in which it is ordered: half a foot is left of one, nothing of the others.
    let plan = purchase.plan.as_ref().unwrap();
    let tenths = |length: Length| (length.to_feet() * 10.0).round() as u32;
    let cut: Vec<(u32, u32)> = plan
        .strands
        .iter()
        .map(|strand| (tenths(purchase.job.stocks[strand.stock].length), tenths(strand.left)))
        .collect();
    assert_eq!(cut, [(120, 0), (120, 0), (130, 5)]);
    assert!(plan.is_proven() && !plan.is_shortest);
    assert_eq!(purchase.offcuts().len(), 1, "half a foot is worth keeping");
}

#[test]
fn a_whole_hank_is_bought_where_it_is_cheaper_than_the_footage() {
    // 60 times 10 ft at 0.30 are 180.00.
    let offers = [hank(Some(4800)), foot(Some(30))];
    let purchase = bought(&[(10.0, 60)], &offers);
    assert_eq!(said(&purchase), [("hank", 1, vec![])]);
    assert_eq!((purchase.cost, purchase.spare), (Some(money(4800)), 10));
    // 16 times 10 ft cost as much as the hank, which leaves more.
    assert_eq!(said(&bought(&[(10.0, 16)], &offers)), [("hank", 1, vec![])]);
    assert_eq!(said(&bought(&[(10.0, 15)], &offers)), [("foot", 150, vec![(15, 10)])]);
}

#[test]
fn what_goes_beyond_a_hank_is_bought_by_the_foot_the_shortest_first() {
    let offers = [hank(Some(4800)), offer("half hank", (35, Length::feet(14.0)), Some(2600)), foot(Some(30))];
    // 48.00 and 5 times 10 ft at 0.30 are 63.00; with half a hank it were 74.00.
    let purchase = bought(&[(13.0, 70), (9.5, 5)], &offers);
    assert_eq!(said(&purchase), [("hank", 1, vec![]), ("foot", 50, vec![(5, 10)])]);
    assert_eq!(
        (purchase.cost, purchase.spare, purchase.replacement()),
        (Some(money(6300)), 0, Some(money(6300)))
    );
}

/// Against every way to share up to seven strands out, with every number of hanks.
#[test]
fn no_way_to_share_the_strands_out_costs_less() {
    let strand = Length::feet(14.0);
    for (case, step) in [3_u32, 5, 7, 11, 13].into_iter().enumerate() {
        let feet: Vec<u32> = (0..7).map(|at| 8 + (at * step + case as u32) % 7).collect();
        let pieces: Vec<(f64, u32)> = feet.iter().map(|feet| (f64::from(*feet), 1)).collect();
        for (few, many) in [(150, 700), (400, 900), (900, 1700), (1300, 3000), (5000, 5000)] {
            let offers = [
                offer("bundle", (2, strand), Some(few)),
                offer("hank", (5, strand), Some(many)),
                foot(Some(60)),
            ];
            let mut least = i64::MAX;
            for subset in 0_u32..(1 << feet.len()) {
                let footage: u32 = feet
                    .iter()
                    .enumerate()
                    .filter(|(at, _)| (subset >> at) & 1 == 1)
                    .map(|(_, feet)| feet)
                    .sum();
                let rest = feet.len() as u32 - subset.count_ones();
                for hanks in 0..=2_u32 {
                    let bundles = rest.saturating_sub(5 * hanks).div_ceil(2);
                    let cost = 60 * i64::from(footage) + many * i64::from(hanks) + few * i64::from(bundles);
                    least = least.min(cost);
                }
            }
            assert_eq!(bought(&pieces, &offers).cost, Some(money(least)), "{feet:?} {few} {many}");
        }
    }
}

#[test]
fn without_prices_lengths_are_bought_only_where_nothing_else_is_offered() {
    let pieces = [(12.0, 3)];
    for (whole, by_length) in [(None, Some(1)), (Some(4800), None), (None, None)] {
        let purchase = bought(&pieces, &[foot(by_length), hank(whole)]);
        assert_eq!((said(&purchase), purchase.cost), (vec![("hank", 1, vec![])], whole.map(money)));
    }
    let purchase = bought(&pieces, &[foot(None)]);
    assert_eq!((said(&purchase), purchase.cost), (vec![("foot", 36, vec![(3, 12)])], None));
    // Of two shops the one whose price is known, and the cheaper of those.
    let metre = |cents| offer("metre", (1, Length::mm(1000.0)), Some(cents));
    let purchase = bought(&pieces, &[foot(None), metre(300), metre(200)]);
    // 12 ft are 3.66 m.
    assert_eq!((said(&purchase), purchase.cost), (vec![("metre", 12, vec![(3, 4)])], Some(money(2400))));
}

#[test]
fn cuts_count_and_lengths_are_rounded_up() {
    let need = cane(&[(5.0, 2)]);
    let strand = need.material.put_up.strand.unwrap();
    assert!(strand > Length::feet(11.0), "two pieces share a strand");
    let offers = [foot(Some(30))];
    let exact = bought_with(&need, &Terms { shelf: &[], offers: &offers, kerf: Length::ZERO });
    assert_eq!(said(&exact), [("foot", 10, vec![(1, 10)])]);
    let sawn = bought_with(&need, &Terms { shelf: &[], offers: &offers, kerf: Length::mm(2.0) });
    assert_eq!(said(&sawn), [("foot", 11, vec![(1, 11)])]);
}

/// What a strand of the catalogue is too short for is ordered in one length; with hanks alone it is a fault.
#[test]
fn a_piece_longer_than_the_usual_strand_is_ordered_as_long_as_it_is() {
    let purchase = bought(&[(40.25, 1)], &[foot(Some(30))]);
    assert_eq!((said(&purchase), &purchase.fault), (vec![("foot", 41, vec![(1, 41)])], &None));
    let hanks = bought(&[(40.25, 1)], &[hank(Some(4800))]);
    assert_eq!(hanks.fault, Some(CuttingError::NotEnough(vec![(0, 1)])));
}

#[test]
fn the_shelf_goes_before_the_foot() {
    let lot = Lot {
        name: "three strands".to_owned(),
        material: "cane fine".to_owned(),
        colour: "natural".to_owned(),
        length: Some(Length::feet(14.0)),
        count: 3,
    };
    let offers = [hank(Some(4800)), foot(Some(30))];
    let terms = Terms { shelf: &[lot], offers: &offers, kerf: Length::ZERO };
    let purchase = bought_with(&cane(&[(12.0, 5)]), &terms);
    assert_eq!(said(&purchase), [("foot", 24, vec![(2, 12)])]);
    assert_eq!(purchase.taken().iter().map(|(_, count)| *count).sum::<u32>(), 3);
}

/// Rivets by the foot are no rivets.
#[test]
fn what_is_used_whole_is_not_bought_by_length() {
    let mut need = cane(&[]);
    need.whole = 7;
    let piece = Offer { length: None, ..offer("box", (5, Length::ZERO), Some(100)) };
    let purchase =
        bought_with(&need, &Terms { shelf: &[], offers: &[foot(Some(1)), piece], kerf: Length::ZERO });
    assert_eq!((said(&purchase), purchase.spare), (vec![("box", 2, vec![])], 3));
}
