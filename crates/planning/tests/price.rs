//! Prices against worked rules.

use planning::price::{Class, Line, Making, Rates, cents, labour, margin_at, of_one, stepped};
use rust_decimal::Decimal;

fn money(text: &str) -> Decimal {
    text.parse().unwrap()
}

fn rates() -> Rates {
    Rates {
        wage: money("15"),
        overhead: money("4.50"),
        waste: Decimal::ZERO,
        mould: Decimal::ZERO,
        packing: Decimal::ZERO,
        margin: Decimal::ZERO,
        retail: money("2"),
        step: Decimal::ZERO,
    }
}

/// A folklife programme's worksheet "Pricing Your Craft": wholesale = materials + hours (production and
/// office) × wage + overhead; retail = twice that. Here 12.00 + 6.5 h × 15 + 4.50 = 114.00, 228.00.
#[test]
fn wholesale_and_retail_follow_the_worksheet() {
    let making = Making { materials: money("12"), minutes: 360.0, office_minutes: 30.0 };
    let reckoning = of_one(&making, &rates());
    assert_eq!(reckoning.amount(Line::Labour), money("97.50"));
    assert_eq!(reckoning.amount(Line::Wholesale), money("114.00"));
    assert_eq!(reckoning.amount(Line::Retail), money("228.00"));
}

/// University of Missouri Extension MP598, *Pricing Your Work*: price = all materials at replacement cost,
/// gathered ones too, + a fair wage + other business cost, packing and shipping in it or added.
#[test]
fn the_price_holds_all_materials_wage_and_other_costs() {
    let making = Making { materials: money("9.10") + money("3.00"), minutes: 300.0, office_minutes: 0.0 };
    let rates = Rates { packing: money("8.40"), mould: money("1.25"), retail: Decimal::ONE, ..rates() };
    let reckoning = of_one(&making, &rates);
    assert_eq!(reckoning.amount(Line::Cost), money("12.10") + money("75.00") + money("4.50") + money("9.65"));
    assert_eq!(reckoning.amount(Line::Wholesale), reckoning.amount(Line::Retail));
    // The lines that make the cost are all shown, and their sum is the cost to the cent.
    let shown: Decimal =
        reckoning.0.iter().take_while(|(line, _)| *line != Line::Cost).map(|(_, amount)| *amount).sum();
    assert_eq!(shown, reckoning.amount(Line::Cost));
}

#[test]
fn rounding_is_to_the_cent_away_from_zero_and_prices_go_up_to_the_step() {
    assert_eq!((cents(money("2.345")), cents(money("-2.345"))), (money("2.35"), money("-2.35")));
    assert_eq!(labour(10.0, money("25")), money("4.17"));
    assert_eq!(
        (stepped(money("114.01"), money("5")), stepped(money("115"), money("5"))),
        (money("115"), money("115"))
    );
    assert_eq!(stepped(money("114.014"), Decimal::ZERO), money("114.01"));
}

/// Ten minutes less on the lashing at 24 an hour is 4.00 off the cost, and 4.40 with a tenth on it.
#[test]
fn ten_minutes_less_are_a_sixth_of_the_wage() {
    let rates = Rates { wage: money("24"), margin: money("0.1"), ..rates() };
    let with = |minutes| of_one(&Making { materials: money("10"), minutes, office_minutes: 0.0 }, &rates);
    let saved = with(300.0).amount(Line::Wholesale) - with(290.0).amount(Line::Wholesale);
    assert_eq!(saved, money("4.40"));
}

#[test]
fn a_target_price_says_its_margin() {
    assert_eq!(margin_at(money("150"), money("120")), Some(money("0.25")));
    assert_eq!(margin_at(money("150"), Decimal::ZERO), None);
}

/// 16 h at 30 and 120 of travel and room are 600; a fee of 130 of which the venue keeps a fifth brings 104,
/// less a kit of 29 leaves 75: eight students.
#[test]
fn the_least_number_of_students_covers_what_is_spent() {
    let class = Class {
        students: 8,
        minutes: 960.0,
        travel: money("70"),
        room: money("50"),
        venue: money("0.2"),
        kit: money("29"),
    };
    let rates = Rates { wage: money("30"), ..rates() };
    assert_eq!(class.least_students(money("130"), rates.wage), Some(8));
    assert_eq!(class.least_students(money("36"), rates.wage), None);
    let seat = class.seat(&rates).unwrap();
    assert_eq!((seat.amount(Line::Fee), seat.amount(Line::Venue)), (money("130"), money("26.00")));
    assert_eq!(Class { students: 0, ..class.clone() }.seat(&rates), None);
    assert_eq!(Class { venue: Decimal::ONE, ..class }.seat(&rates), None);
}
