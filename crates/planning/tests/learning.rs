//! What is learned from records: simulated makers whose hands are drawn from the prior.

use basket::pattern::StepKind;
use basket::{Catalogue, Draft, Hand, Length};
use planning::records::{Compared, Figure, Learned, Mismatch, Record, Work, read};
use rand_distr::{Binomial, ChiSquared, Distribution, Normal};
use rand_pcg::Pcg64Mcg;

const HARBOUR: &str = include_str!("../../../patterns/harbour-bread-basket.toml");

fn figures() -> Vec<Figure> {
    let others = [Figure::TakeUp, Figure::RowHeight, Figure::Shrink];
    others.into_iter().chain(Work::ALL.map(Figure::Pace)).collect()
}

/// A maker whose figures are drawn: as the usual hand counts for five makings and its spread for eight.
struct Maker {
    /// Figure, its true value as it is taken, and its spread.
    hand: Vec<(Figure, f64, f64)>,
    spoilt: f64,
}

impl Maker {
    fn drawn(dice: &mut Pcg64Mcg) -> Self {
        let hand = figures().into_iter().map(|figure| {
            let drawn: f64 = ChiSquared::new(8.0).expect("eight").sample(dice);
            let spread = figure.spread() * (8.0 / drawn).sqrt();
            let usual = if figure.by_logarithm() { 0.0 } else { 1.0 };
            let mean = Normal::new(usual, spread / 5.0_f64.sqrt()).expect("a spread").sample(dice);
            (figure, mean, spread)
        });
        let hand = hand.collect();
        let beta = rand_distr::Beta::new(0.05 * 350.0, 0.95 * 350.0).expect("a share");
        Self { hand, spoilt: beta.sample(dice) }
    }

    fn record(&self, dice: &mut Pcg64Mcg) -> Compared {
        let times = self.hand.iter().map(|(figure, mean, spread)| {
            let drawn = Normal::new(*mean, *spread).expect("a spread").sample(dice);
            (*figure, if figure.by_logarithm() { drawn.exp() } else { drawn })
        });
        let times = times.collect();
        let spoilt = Binomial::new(70, self.spoilt).expect("a share").sample(dice);
        Compared { times, usual_shrink: 0.06, staves: Some((70, spoilt as u32)) }
    }
}

fn learned(maker: &Maker, records: usize, dice: &mut Pcg64Mcg) -> Learned {
    let records: Vec<Compared> = (0..records).map(|_| maker.record(dice)).collect();
    Learned::of(&records)
}

#[test]
fn the_true_hand_lies_within_the_stated_bounds_about_as_often_as_they_say() {
    for records in [1, 3, 30] {
        let mut within: Vec<(String, u32)> = Vec::new();
        let mut count = |name: String, inside: bool| {
            let place = within.iter().position(|(of, _)| *of == name);
            let place = place.unwrap_or_else(|| {
                within.push((name, 0));
                within.len() - 1
            });
            within[place].1 += u32::from(inside);
        };
        for seed in 0..100 {
            let mut dice = Pcg64Mcg::new(seed << 1 | 1);
            let maker = Maker::drawn(&mut dice);
            let learned = learned(&maker, records, &mut dice);
            for ((figure, own), (of, mean, _)) in learned.times.iter().zip(&maker.hand) {
                assert_eq!(figure, of);
                let truth = if figure.by_logarithm() { mean.exp() } else { *mean };
                count(format!("{figure:?}"), own.within.0 <= truth && truth <= own.within.1);
            }
            let own = learned.spoilt.expect("staves were counted");
            count("spoilt".to_owned(), own.within.0 <= maker.spoilt && maker.spoilt <= own.within.1);
        }
        println!("{records}: {within:?}");
        assert_eq!(within.len(), 10);
        for (figure, runs) in within {
            assert!((90..=99).contains(&runs), "{figure}: {runs} of 100 after {records} records");
        }
    }
}

#[test]
fn thirty_records_halve_the_bounds_of_three() {
    let width = |records: usize| {
        let mut widths: Vec<(Figure, f64)> = figures().into_iter().map(|figure| (figure, 0.0)).collect();
        let mut spoilt = 0.0;
        for seed in 0..100 {
            let mut dice = Pcg64Mcg::new(seed << 1 | 1);
            let maker = Maker::drawn(&mut dice);
            let learned = learned(&maker, records, &mut dice);
            for ((_, sum), (_, own)) in widths.iter_mut().zip(&learned.times) {
                *sum += own.within.1 - own.within.0;
            }
            spoilt += learned.spoilt.map_or(0.0, |own| own.within.1 - own.within.0);
        }
        (widths, spoilt)
    };
    let ((three, spoilt_three), (thirty, spoilt_thirty)) = (width(3), width(30));
    for ((figure, three), (_, thirty)) in three.iter().zip(&thirty) {
        println!("{figure:?}: {:.3}", thirty / three);
        assert!(thirty <= &(0.5 * three), "{figure:?}: {thirty} of {three}");
    }
    println!("spoilt: {:.3}", spoilt_thirty / spoilt_three);
    assert!(spoilt_thirty <= 0.5 * spoilt_three);
}

#[test]
fn two_records_hardly_move_the_figures() {
    // Twice a fifth slower: the figure moves by less than a third of that.
    let slow = Compared {
        times: vec![(Figure::Pace(Work::Weaving), 1.2)],
        usual_shrink: 0.06,
        staves: Some((70, 7)),
    };
    let learned = Learned::of(&[slow.clone(), slow]);
    let (_, own) = learned.times[0];
    assert!(own.value > 1.0 && own.value - 1.0 < 0.2 / 3.0, "{own:?}");
    assert!(own.within.0 < 1.0 && own.within.1 > 1.2, "the usual hand is not ruled out: {own:?}");
    let spoilt = learned.spoilt.expect("counted").value;
    assert!(spoilt > 0.05 && spoilt < 0.05 + 0.05 / 3.0, "{spoilt}");
}

fn draft(hand: &Hand) -> Draft {
    let pattern = basket::pattern::read(HARBOUR, Catalogue::built_in()).expect("a pattern");
    Draft::of(pattern, Catalogue::built_in(), hand)
}

/// What a hand would write down that works exactly as it does.
fn exact(hand: &Hand) -> Record {
    let draft = draft(hand);
    let weave = &draft.basket.body.weave;
    let wet = weave.each_row.iter().map(|row| row.pitch).fold(Length::ZERO, |sum, pitch| sum + pitch);
    Record {
        number: 1,
        pattern: draft.basket.title.clone(),
        minutes: draft.steps.iter().map(|step| (step.kind, step.work_minutes)).collect(),
        weaver: Some(weave.length),
        rows: Some(weave.rows),
        wet: Some(wet),
        dry: Some(wet * (1.0 - weave.shrink)),
        ..Record::default()
    }
}

#[test]
fn the_usual_hand_learns_that_it_is_usual() {
    let compared = Compared::of(&exact(&Hand::USUAL), &draft(&Hand::USUAL)).expect("its own");
    let learned = Learned::of(&[compared]);
    assert_eq!(learned.times.len(), figures().len());
    for (figure, own) in &learned.times {
        assert!((own.value - 1.0).abs() < 1e-6, "{figure:?}: {own:?}");
    }
    let hand = learned.hand("teacher");
    assert_eq!((hand.whose.as_deref(), hand.pace), (Some("teacher"), Hand::USUAL.pace));
}

#[test]
fn a_hand_that_always_differs_is_learned_in_time() {
    // Rows a tenth higher, more take-up, weaving half as quick again.
    let mut other = Hand { take_up: 1.5, row_height: 1.1, ..Hand::USUAL };
    other.pace.crossing *= 1.5;
    other.pace.join *= 1.5;
    other.pace.pack *= 1.5;
    let compared = Compared::of(&exact(&other), &draft(&Hand::USUAL)).expect("its own");
    let learned = Learned::of(&vec![compared; 60]);
    let hand = learned.hand("teacher");
    println!("{hand:?}");
    assert!((hand.row_height - 1.1).abs() < 0.02, "{}", hand.row_height);
    assert!((hand.take_up - 1.5).abs() < 0.12, "{}", hand.take_up);
    assert!((hand.pace.crossing / Hand::USUAL.pace.crossing - 1.5).abs() < 0.08, "{:?}", hand.pace);
    // The basket that is drafted with it says so.
    assert_eq!(draft(&hand).basket.hand.whose.as_deref(), Some("teacher"));
}

#[test]
fn a_record_of_something_else_is_refused() {
    let usual = draft(&Hand::USUAL);
    let other = Record { pattern: "Ferry egg basket".to_owned(), ..exact(&Hand::USUAL) };
    assert!(matches!(Compared::of(&other, &usual), Err(Mismatch::OtherPattern { number: 1, .. })));
    let hours = Record { minutes: vec![(StepKind::Lashing, 9000.0)], ..exact(&Hand::USUAL) };
    let refused = Compared::of(&hours, &usual).expect_err("no hand takes so long");
    assert!(refused.to_string().contains("the time for a kind of work"), "{refused}");
}

#[test]
fn records_are_read_from_a_file_with_their_mistakes_and_places() {
    let text = "[[record]]\nnumber = 1\npattern = \"Harbour bread basket\"\nlearner = true\nweaver = \"160 ft\"\n\
                wet = \"4 1/8 in\"\ndry = \"3 7/8 in\"\nrows = 36\nstaves = 71\nspoilt = 4\n\
                minutes = { cut = 220, half = 100 }\n";
    let records = read(text).expect("a record");
    assert_eq!(records[0].staves, Some((71, 4)));
    assert_eq!(records[0].minutes.len(), 2);
    let place = |text: &str| {
        let problems = read(text).expect_err("wrong");
        (problems[0].line_column(text), problems[0].message.clone())
    };
    assert_eq!(place(&text.replace("half", "halve")), ((11, 24), "\"halve\" is no step".to_owned()));
    assert_eq!(place(&text.replace("4 1/8 in", "4 1/8 inn")).0, (6, 7));
    assert_eq!(place(&text.replace("rows", "rowz")).0.0, 8);
    assert_eq!(place(&text.replace("220", "-220")).0, (11, 19));
}
