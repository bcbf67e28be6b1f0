//! Kits of a class and what they take.

use std::collections::BTreeMap;
use std::ops::ControlFlow;

use basket::{Catalogue, Colour, Draft, Hand, Length, Piece};
use jiff::civil::date;
use planning::buying::{Bought, Due, Lot, Need, Offer, Terms, Timing, buy, needs};
use planning::kits::{Kits, Student};
use rust_decimal::Decimal;

fn draft(name: &str) -> Draft {
    let path = format!("{}/../../patterns/{name}.toml", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(path).unwrap();
    let pattern = basket::pattern::read(&text, Catalogue::built_in()).unwrap();
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn class<'d>(draft: &'d Draft, colours: &[(&str, &str)]) -> Vec<Student<'d>> {
    let own: BTreeMap<String, Colour> =
        colours.iter().map(|(from, to)| ((*from).to_owned(), Colour::built_in(to).unwrap())).collect();
    (1..=12).map(|at| Student { name: format!("student {at}"), draft, colours: own.clone() }).collect()
}

/// The chance of at least `good` good ones of `made`, summed term by term.
fn chance_of(good: u32, made: u32, fail: f64) -> f64 {
    let mut term = (1.0 - fail).powi(made as i32);
    let mut sum = term;
    for spoilt in 0..(made - good) {
        term *= f64::from(made - spoilt) / f64::from(spoilt + 1) * fail / (1.0 - fail);
        sum += term;
    }
    sum
}

/// Pooled over twelve kits of 25 at one in twenty and 95 in 100: 323 in all, against 360 kept apart
/// (binomial sums, computed apart).
#[test]
fn spares_of_staves_are_pooled_by_chance() {
    assert_eq!(basket::chance::to_make(300, 0.05, 0.95), 323);
    let marker = draft("channel-marker");
    let kits = Kits::of(&class(&marker, &[]));
    let staves = &kits.batches.iter().find(|batch| batch.cut.piece == Piece::Uprights).unwrap().cut;
    assert_eq!(staves.count, 12 * marker.basket.body.uprights().count);
    let made = staves.count + staves.spares;
    assert!(chance_of(staves.count, made, Hand::USUAL.spoilt) >= 0.95);
    assert!(chance_of(staves.count, made - 1, Hand::USUAL.spoilt) < 0.95);
    assert!(staves.spares < 12 * marker.basket.body.staves().spares);
}

#[test]
fn each_bag_holds_what_its_basket_takes_in_its_own_colours() {
    let (marker, bread) = (draft("channel-marker"), draft("harbour-bread-basket"));
    let mut students = class(&marker, &[("blue", "red")]);
    students.truncate(2);
    students.extend(class(&bread, &[]).into_iter().take(3));
    let kits = Kits::of(&students);
    assert_eq!(kits.bags.len(), 5);
    for (student, bag) in students.iter().zip(&kits.bags) {
        let pieces: u32 = bag.holds.iter().map(|(_, count)| count).sum();
        assert_eq!(pieces, student.draft.cuts.iter().map(|cut| cut.count).sum::<u32>(), "{}", bag.student);
    }
    let held: u32 = kits.bags.iter().flat_map(|bag| &bag.holds).map(|(_, count)| count).sum();
    assert_eq!(held, kits.batches.iter().map(|batch| batch.cut.count).sum::<u32>());
    let colours: Vec<&str> =
        kits.batches.iter().filter_map(|batch| Some(batch.cut.colour.as_ref()?.name.as_str())).collect();
    assert!(colours.contains(&"red") && !colours.contains(&"blue"), "{colours:?}");
}

fn terms<'t>(shelf: &'t [Lot], offers: &'t [Offer]) -> Terms<'t> {
    Terms { shelf, offers, kerf: Length::ZERO }
}

fn bought(needs: &[Need], terms: &Terms) -> Vec<planning::buying::Purchase> {
    buy(needs, terms, &mut |_| ControlFlow::Continue(()))
}

/// Twelve kits of each pattern of the school: every cutting plan whole and proven.
#[test]
fn twelve_kits_are_planned_and_proven() {
    for name in [
        "channel-marker",
        "ferry-egg-basket",
        "harbour-bread-basket",
        "pilot-letter-basket",
        "sound-market-basket",
    ] {
        let draft = draft(name);
        let needs = needs([(&Kits::of(&class(&draft, &[])), None)]);
        for purchase in bought(&needs, &terms(&[], &[])) {
            assert_eq!(purchase.fault, None, "{name}: {}", purchase.need.material.name);
            assert!(purchase.plan.as_ref().is_none_or(planning::cutting::Plan::is_proven), "{name}");
            let got: u32 = purchase.buy.iter().map(Bought::strands).sum();
            let used = purchase.plan.as_ref().map_or(purchase.need.whole, |plan| plan.strands.len() as u32);
            assert_eq!(got, used + purchase.spare, "{name}: {}", purchase.need.material.name);
        }
    }
}

fn offer(unit: &str, holds: u32, cents: i64) -> Offer {
    Offer {
        material: "cane fine".to_owned(),
        colour: "natural".to_owned(),
        unit: unit.to_owned(),
        holds,
        length: Some(Length::feet(14.0)),
        price: Some(Decimal::new(cents, 2)),
        from: String::new(),
    }
}

fn cane(count: u32, colour: &str) -> Need {
    let material = Catalogue::built_in().material("cane fine").unwrap().clone();
    let piece = planning::cutting::Piece { length: Length::feet(10.0), count };
    Need { material, colour: colour.to_owned(), pieces: vec![piece], whole: 0, timings: Vec::new() }
}

#[test]
fn the_shelf_goes_first_and_the_cheaper_units_are_bought() {
    let offers = [offer("hank", 70, 4800), offer("half hank", 35, 2600)];
    let lot = |count| Lot {
        name: "hank on the shelf".to_owned(),
        material: "cane fine".to_owned(),
        colour: "natural".to_owned(),
        length: Some(Length::feet(14.0)),
        count,
    };
    // 100 less 20 on the shelf: 80 take a hank and a half at 74.00, not two hanks at 96.00.
    let purchase = &bought(&[cane(100, "natural")], &terms(&[lot(20)], &offers))[0];
    let units: Vec<(&str, u32)> =
        purchase.buy.iter().map(|bought| (bought.offer.unit.as_str(), bought.count)).collect();
    assert_eq!(units, [("hank", 1), ("half hank", 1)]);
    assert_eq!((purchase.cost, purchase.spare), (Some(Decimal::new(7400, 2)), 25));
    // All on the shelf: nothing to buy, and nothing to pay.
    let purchase = &bought(&[cane(100, "natural")], &terms(&[lot(100)], &offers))[0];
    assert_eq!((purchase.buy.len(), purchase.cost), (0, Some(Decimal::ZERO)));
    // A dyed lot is none of the natural ones.
    let purchase = &bought(&[cane(10, "blue")], &terms(&[lot(100)], &offers))[0];
    assert_eq!((purchase.buy.is_empty(), purchase.cost), (false, None));
}

#[test]
fn dyed_stock_is_ordered_earlier() {
    let timing = Timing { needed: date(2026, 10, 17), delivery_days: 5, dye_days: 7 };
    let needs = [cane(10, "natural"), cane(10, "blue")].map(|need| Need { timings: vec![timing], ..need });
    let purchases = bought(&needs, &terms(&[], &[]));
    let dates: Vec<_> = purchases.iter().map(|purchase| purchase.order_by.unwrap()).collect();
    assert_eq!(dates, [date(2026, 10, 12), date(2026, 10, 5)]);
}

/// Each class and order has days of its own; what several need is ordered for the first of them.
#[test]
fn several_classes_order_each_in_its_time() {
    let (marker, bread) = (draft("channel-marker"), draft("harbour-bread-basket"));
    let [blue, plain] =
        [(&marker, "buoys"), (&bread, "bread")].map(|(draft, name)| (Kits::of(&class(draft, &[])), name));
    let october = Timing { needed: date(2026, 10, 17), delivery_days: 5, dye_days: 7 };
    let november = Timing { needed: date(2026, 11, 14), ..october };
    let due = Due::of(blue.1, &blue.0, november);
    assert_eq!((due.order_by, due.order_dyed_by), (Some(date(2026, 11, 9)), Some(date(2026, 11, 2))));
    assert_eq!(Due::of(plain.1, &plain.0, october).order_dyed_by, None, "nothing of it is dyed");
    let needs = needs([(&plain.0, Some(october)), (&blue.0, Some(november))]);
    let purchases = bought(&needs, &terms(&[], &[]));
    let until = |is_both: bool, is_dyed: bool| {
        let meant = |need: &Need| need.is_dyed() == is_dyed && (need.timings.len() == 2) == is_both;
        let of: Vec<_> =
            purchases.iter().filter(|bought| meant(&bought.need)).map(|bought| bought.order_by).collect();
        assert!(!of.is_empty(), "{is_both} {is_dyed}");
        of
    };
    assert!(until(true, false).iter().all(|day| *day == Some(date(2026, 10, 12))));
    assert!(until(false, true).iter().all(|day| *day == Some(date(2026, 11, 2))));
}

/// Two classes that take the same piece take it twice, not two kinds of it: the plan reads as one.
#[test]
fn pieces_of_one_length_are_cut_as_one_kind() {
    let marker = draft("channel-marker");
    let kits = Kits::of(&class(&marker, &[]));
    let lengths = |needs: &[Need]| -> Vec<usize> { needs.iter().map(|need| need.pieces.len()).collect() };
    let (one, two) = (needs([(&kits, None)]), needs([(&kits, None), (&kits, None)]));
    assert_eq!(lengths(&one), lengths(&two));
    let count =
        |needs: &[Need]| -> u32 { needs.iter().flat_map(|need| &need.pieces).map(|piece| piece.count).sum() };
    assert_eq!(2 * count(&one), count(&two));
    for need in &one {
        for (at, piece) in need.pieces.iter().enumerate() {
            assert!(need.pieces.iter().skip(at + 1).all(|other| other.length != piece.length));
        }
    }
}

/// The hand decides how many staves are spoilt, in the kits as in the packet.
#[test]
fn a_clumsier_hand_has_more_spares_in_its_kits() {
    let usual = draft("channel-marker");
    let clumsy =
        Draft::of(usual.pattern.clone(), Catalogue::built_in(), &Hand { spoilt: 0.2, ..Hand::USUAL });
    let spares = |draft: &Draft| {
        let kits = Kits::of(&class(draft, &[]));
        kits.batches.iter().find(|batch| batch.cut.piece == Piece::Uprights).unwrap().cut.clone()
    };
    let cut = spares(&clumsy);
    assert!(cut.spares > 2 * spares(&usual).spares);
    assert!(chance_of(cut.count, cut.count + cut.spares, 0.2) >= 0.95);
}

#[test]
fn what_no_strand_is_long_enough_for_is_said() {
    let long = Need {
        pieces: vec![planning::cutting::Piece { length: Length::feet(60.0), count: 1 }],
        ..cane(1, "natural")
    };
    let purchase = &bought(&[long], &terms(&[], &[]))[0];
    assert_eq!(purchase.fault, Some(planning::cutting::CuttingError::NotEnough(vec![(0, 1)])));
}
