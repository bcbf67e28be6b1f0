//! Lengths: what is read, what is refused, and that printing and reading go round.

use basket::Length;
use basket::measure::{LengthFault, Printing, Unit};
use proptest::prelude::*;

#[track_caller]
fn reads(text: &str, mm: f64) {
    let length = Length::parse(text, Some(Unit::Inch)).unwrap_or_else(|error| panic!("{text}: {error}"));
    assert!((length.to_mm() - mm).abs() < 1e-9, "{text} reads as {} mm", length.to_mm());
}

#[test]
fn makers_spellings_are_read() {
    for text in [
        "5 5/8 in",
        "5-5/8\"",
        "5.625in",
        "5⅝",
        "5 ⅝ in.",
        "5 5⁄8 inches",
        "45/8 in",
        "5,625000 in",
        "5-5/8-in",
    ] {
        reads(text, 142.875);
    }
    for text in ["1 ft 2 in", "1' 2\"", "1′2″", "1 foot 2 inches", "14", " 14 IN ", "1 1/6 ft"] {
        reads(text, 355.6);
    }
    for text in ["143 mm", "14.3 cm", "14,3 cm", "0.143 m", "143 millimetres", "143MM"] {
        reads(text, 143.0);
    }
    reads("1.2 m", 1200.0);
    reads("0", 0.0);
    reads("3/8", 9.525);
    reads("⅜ in", 9.525);
    reads(".5 in", 12.7);
    reads("0,125 in", 3.175);
}

#[test]
fn a_bare_number_takes_the_unit_of_the_file_or_is_refused() {
    assert_eq!(Length::parse("143", Some(Unit::Millimetre)), Ok(Length::mm(143.0)));
    let error = Length::parse("143", None).unwrap_err();
    assert_eq!((error.fault, error.span), (LengthFault::NoUnit, 0..3));
}

#[test]
fn what_is_no_length_is_refused_with_its_place() {
    use LengthFault::{
        AmbiguousComma, Empty, ImproperFraction, Negative, NoUnit, NotANumber, TooLarge, Trailing,
        UnknownUnit, ZeroDenominator,
    };
    let unknown = |found: &str, nearest| UnknownUnit { found: found.to_owned(), nearest };
    let cases = [
        ("", Empty, 0..0),
        ("  ", Empty, 0..2),
        ("-3 in", Negative, 0..1),
        ("−3 in", Negative, 0..3),
        ("nan", NotANumber("nan".to_owned()), 0..3),
        ("inf mm", NotANumber("inf".to_owned()), 0..3),
        ("five in", NotANumber("five".to_owned()), 0..4),
        ("5/ in", NotANumber("/".to_owned()), 1..2),
        ("5 inn", unknown("inn", Some("in")), 2..5),
        ("5 yards", unknown("yards", None), 2..7),
        ("5e3 mm", unknown("e", None), 1..2),
        ("143 mn", unknown("mn", Some("mm")), 4..6),
        ("5 5/0 in", ZeroDenominator, 4..5),
        ("5 9/8 in", ImproperFraction("9/8".to_owned()), 2..5),
        ("5 in 3", Trailing("3".to_owned()), 5..6),
        ("5 in in", Trailing("in".to_owned()), 5..7),
        ("2 in 1 ft", Trailing("1 ft".to_owned()), 5..9),
        ("1 ft 2 mm", Trailing("2 mm".to_owned()), 5..9),
        ("1 ft 2", NoUnit, 5..6),
        ("1 m 20 cm", Trailing("20 cm".to_owned()), 4..9),
        ("1,200 mm", AmbiguousComma("1,200".to_owned()), 0..5),
        ("1.2.3", Trailing(".3".to_owned()), 3..5),
        ("5 / 8", Trailing("/ 8".to_owned()), 2..5),
    ];
    for (text, fault, span) in cases {
        let error = Length::parse(text, Some(Unit::Inch)).unwrap_err();
        assert_eq!((&error.fault, &error.span), (&fault, &span), "{text:?}");
        assert!(!error.help().is_empty());
    }
    let huge = "9".repeat(400);
    assert_eq!(Length::parse(&huge, Some(Unit::Inch)).unwrap_err().fault, TooLarge);
}

#[test]
fn lengths_print_no_finer_than_asked() {
    let sixteenths = Printing::Inches { denominator: 16 };
    for (mm, text) in
        [(142.875, "5 5/8 in"), (9.525, "3/8 in"), (0.0, "0 in"), (0.7, "0 in"), (0.8, "1/16 in")]
    {
        assert_eq!(Length::mm(mm).print(sixteenths), text);
    }
    assert_eq!(Length::inches(4.99).print(sixteenths), "5 in");
    assert_eq!(Length::inches(-0.51).print(sixteenths), "-1/2 in");
    assert_eq!(Length::mm(-0.1).print(sixteenths), "0 in");
    assert_eq!(Length::mm(2.4).print(Printing::Inches { denominator: 32 }), "3/32 in");
    for (mm, step, text) in [
        (143.1, 0.5, "143 mm"),
        (142.6, 0.5, "142.5 mm"),
        (1.96, 0.1, "2 mm"),
        (1.94, 0.1, "1.9 mm"),
        (143.4, 1.0, "143 mm"),
        (1234.0, 5.0, "1235 mm"),
        (-0.01, 0.5, "0 mm"),
    ] {
        assert_eq!(Length::mm(mm).print(Printing::Millimetres { step }), text);
    }
    for (feet, text) in [(160.7, "161 ft"), (9.96, "10 ft"), (2.34, "2.3 ft"), (3.0, "3 ft")] {
        assert_eq!(Length::feet(feet).print(Printing::Feet), text);
    }
    for (metres, text) in [(49.07, "49.1 m"), (0.347, "0.35 m"), (2.0, "2 m"), (0.996, "1 m")] {
        assert_eq!(Length::mm(metres * 1000.0).print(Printing::Metres), text);
    }
    assert_eq!(Length::mm(f64::NAN).print(sixteenths), "?");
}

proptest! {
    #[test]
    fn inches_go_round_within_half_a_part(mm in 0.0..20_000.0, power in 0_u32..7) {
        let denominator = 1 << power;
        let length = Length::mm(mm);
        let text = length.print(Printing::Inches { denominator });
        let back = Length::parse(&text, None).unwrap();
        let half = Length::inches(0.5 / f64::from(denominator));
        prop_assert!((back - length).abs().to_mm() <= half.to_mm() + 1e-9, "{text}");
    }

    #[test]
    fn any_denominator_goes_round(mm in 0.0..5_000.0, denominator in 1_u32..=100) {
        let length = Length::mm(mm);
        let back = Length::parse(&length.print(Printing::Inches { denominator }), None).unwrap();
        prop_assert!((back - length).abs().to_mm() <= 12.7 / f64::from(denominator) + 1e-9);
    }

    #[test]
    fn millimetres_go_round_within_half_a_step(
        mm in 0.0..20_000.0,
        step in prop::sample::select(vec![0.01, 0.05, 0.1, 0.5, 1.0, 5.0]),
    ) {
        let length = Length::mm(mm);
        let text = length.print(Printing::Millimetres { step });
        let back = Length::parse(&text, None).unwrap();
        prop_assert!((back - length).abs().to_mm() <= step / 2.0 + 1e-9, "{text}");
        prop_assert_eq!(back.print(Printing::Millimetres { step }), text);
    }

    #[test]
    fn runs_go_round(mm in 0.0..1_000_000.0) {
        let length = Length::mm(mm);
        for (printing, half) in [(Printing::Feet, 152.4), (Printing::Metres, 50.0)] {
            let back = Length::parse(&length.print(printing), None).unwrap();
            prop_assert!((back - length).abs().to_mm() <= half + 1e-6);
        }
    }

    #[test]
    fn reading_never_panics_and_points_into_the_text(text in "\\PC{0,30}", inch in any::<bool>()) {
        check_place(&text, inch.then_some(Unit::Inch))?;
    }

    #[test]
    fn reading_likely_text_never_panics(text in "[-−0-9 .,/⁄½⅝'\"″a-z]{0,14}") {
        check_place(&text, None)?;
    }
}

fn check_place(text: &str, default: Option<Unit>) -> Result<(), TestCaseError> {
    match Length::parse(text, default) {
        Ok(length) => prop_assert!(length.to_mm().is_finite() && length.to_mm() >= 0.0),
        Err(error) => prop_assert!(text.get(error.span.clone()).is_some(), "{error:?}"),
    }
    Ok(())
}
