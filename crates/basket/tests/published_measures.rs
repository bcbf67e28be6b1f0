//! Lengths against outside sources.

use basket::Length;
use basket::measure::{Printing, Unit};

/// National Institute of Standards and Technology, *Guide for the Use of the International System of
/// Units*, Special Publication 811, 2008, appendix B.8: inch 2.54 E−02 m and foot 3.048 E−01 m, exact.
#[test]
fn inch_and_foot() {
    assert_eq!(Length::parse("1 in", None), Ok(Length::mm(25.4)));
    assert!((Length::parse("1 ft", None).unwrap().to_mm() - 304.8).abs() < 1e-12);
    assert!((Unit::Foot.one().to_metres() - 0.3048).abs() < 1e-15);
}

/// Anna A. Gill, *Practical Basketry*, 1916, p. 37: a base of 5 3/4 in.
#[test]
fn a_size_as_a_book_prints_it() {
    let base = Length::parse("5 3/4 inches", None).unwrap();
    assert!((base.to_mm() - 146.05).abs() < 1e-9);
    assert_eq!(base.print(Printing::Inches { denominator: 16 }), "5 3/4 in");
    assert_eq!(base.print(Printing::Millimetres { step: 0.5 }), "146 mm");
}

/// A learner's weblog works out a mould basket from a rim of 800 mm and calls the mould a 10-inch one.
#[test]
fn a_girth_of_800_mm_is_a_ten_inch_mould() {
    let diameter = Length::parse("800 mm", None).unwrap() / std::f64::consts::PI;
    assert!((diameter.to_mm() - 254.648).abs() < 1e-3);
    assert_eq!(diameter.print(Printing::Inches { denominator: 16 }), "10 in");
}

/// L. Day Perry, *Seat Weaving*, Manual Arts Press, 1917, p. 7: a hank of cane holds 1000 feet.
#[test]
fn a_hank_in_metres() {
    let hank = Length::parse("1000 ft", None).unwrap();
    assert_eq!(
        (hank.print(Printing::Feet), hank.print(Printing::Metres)),
        ("1000 ft".into(), "304.8 m".into())
    );
}
