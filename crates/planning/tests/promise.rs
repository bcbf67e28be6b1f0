//! The promised day, against reckoning by hand.

use basket::pattern::StepKind;
use basket::steps::Step;
use basket::{Catalogue, Draft, Hand};
use jiff::civil::{Date, date};
use planning::promise::{Free, MOST_BASKETS, Promise, promise};

const HARBOUR: &str = include_str!("../../../patterns/harbour-bread-basket.toml");

/// A basket of two steps: 6 h on the mould, then 12 h drying on it, and 3 h after that.
fn small() -> Draft {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(HARBOUR, catalogue).unwrap();
    let mut draft = Draft::of(pattern, catalogue, &Hand::USUAL);
    let step = |kind, work_minutes: f64, wait_minutes: f64| {
        let like = draft.steps.iter().find(|step| step.kind == kind).unwrap();
        Step { work_minutes, wait_minutes, ..like.clone() }
    };
    draft.steps = vec![
        step(StepKind::Base, 0.0, 0.0),
        step(StepKind::Dry, 360.0, 720.0),
        step(StepKind::Lashing, 180.0, 0.0),
    ];
    draft
}

fn free(moulds: usize) -> Free {
    // A Monday.
    let from = date(2027, 3, 1);
    Free { from, hours: 8.0, days: 5, moulds: vec![from; moulds] }
}

fn ready(count: u32, free: &Free) -> Date {
    promise(&small(), count, free).unwrap().ready
}

#[test]
fn one_maker_with_few_moulds() {
    // Monday: 6 h of weaving, 8 to 14 o'clock; dry at 2 at night. Tuesday: 3 h of lashing.
    let one = promise(&small(), 1, &free(1)).unwrap();
    assert_eq!(one, Promise { ready: date(2027, 3, 2), promised: date(2027, 3, 4), minutes: 540 });
    // With one mould the second is woven on Tuesday from 11 o'clock until Wednesday 9, and dries until 21
    // o'clock, when work is over: Thursday. With two it is begun on Monday at 14 and woven on Tuesday after the
    // first is lashed, 11 to 15 o'clock; Wednesday.
    assert_eq!(ready(2, &free(1)), date(2027, 3, 4));
    assert_eq!(ready(2, &free(2)), date(2027, 3, 3));
    // A mould that comes back on Thursday.
    let late = Free { moulds: vec![date(2027, 3, 4)], ..free(1) };
    assert_eq!(ready(1, &late), date(2027, 3, 5));
    // Nobody works on the weekend: the same on a Friday is lashed on Monday.
    let friday = Free { from: date(2027, 3, 5), moulds: vec![date(2027, 3, 5)], ..free(1) };
    assert_eq!(ready(1, &friday), date(2027, 3, 8));
    let every = Free { days: 7, ..friday };
    assert_eq!(ready(1, &every), date(2027, 3, 6));
}

#[test]
fn what_cannot_be_promised_is_not() {
    assert_eq!(promise(&small(), 0, &free(1)), None);
    assert_eq!(promise(&small(), MOST_BASKETS + 1, &free(1)), None);
    assert_eq!(promise(&small(), 1, &free(0)), None);
    // Neither no hours nor a year without end is more than a long time.
    let slow = Free { hours: f64::NAN, days: 0, ..free(1) };
    let _ = promise(&small(), 3, &slow);
    assert!(promise(&small(), MOST_BASKETS, &free(3)).is_some());
}

#[test]
fn more_moulds_or_hours_never_make_the_harbour_basket_later() {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(HARBOUR, catalogue).unwrap();
    let draft = Draft::of(pattern, catalogue, &Hand::USUAL);
    let ready = |count, hours, moulds| promise(&draft, count, &Free { hours, ..free(moulds) }).unwrap().ready;
    assert!(ready(4, 8.0, 1) >= ready(4, 8.0, 4));
    assert!(ready(4, 4.0, 4) > ready(4, 8.0, 4));
    assert!(ready(4, 8.0, 4) > ready(1, 8.0, 4));
}
