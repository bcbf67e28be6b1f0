//! Staves that are wider at the tight ends, where gaps grow.

use basket::pattern::read;
use basket::piece::Piece;
use basket::{Catalogue, Draft, Hand, Length};

fn draft(mould: &str, staves: &str) -> Draft {
    let text = format!("title = \"T\"\nunits = \"in\"\n[mould]\n{mould}\n[staves]\n{staves}\n");
    let catalogue = Catalogue::built_in();
    let pattern = read(&text, catalogue).unwrap_or_else(|problems| panic!("{problems:?}"));
    Draft::of(pattern, catalogue, &Hand::USUAL)
}

const OVAL: &str = "shape = \"oval\"\nlength = \"8\"\nwidth = \"5\"\nrim = \"10 1/2\"\nheight = \"4\"";
const ALIKE: &str = "stock = \"flat oval reed 3/8 in\"\nwidth = \"3/16\"\ncount = 71";

/// Distances along straight chords, which know nothing of how gaps are computed.
fn gaps(draft: &Draft) -> Vec<f64> {
    let (form, uprights) = (&draft.basket.body.form, draft.basket.body.uprights());
    let along = draft.basket.body.rim().along;
    let place = |number: u32| {
        let at = form.at(along, uprights.turn(number), uprights.middle(along));
        at.point.map(Length::to_mm)
    };
    (1..=uprights.count)
        .map(|number| {
            let next = number % uprights.count + 1;
            let (a, b) = (place(number), place(next));
            let chord = a.iter().zip(b).map(|(a, b)| (a - b).powi(2)).sum::<f64>().sqrt();
            chord - (uprights.full_width(number) + uprights.full_width(next)).to_mm() / 2.0
        })
        .collect()
}

#[test]
fn wide_staves_stand_where_gaps_have_room_for_them() {
    let (alike, wider) = (draft(OVAL, ALIKE), draft(OVAL, &format!("{ALIKE}\nends = \"1/4\"")));
    let wide = wider.basket.body.uprights().wider.clone().expect("there is room at the ends");
    let (before, after) = (gaps(&alike), gaps(&wider));
    let least = |gaps: &[f64]| gaps.iter().copied().fold(f64::INFINITY, f64::min);
    let most = |gaps: &[f64]| gaps.iter().copied().fold(0.0, f64::max);
    assert!(least(&after) > least(&before) - 0.02, "{after:?}");
    assert!(most(&after) < most(&before) - 1.0, "{after:?}");
    // Stave 1 stands at the end of the length; both ends have theirs, and the sides have none.
    assert!(wide.numbers.contains(&1) && wide.numbers.contains(&36), "{:?}", wide.numbers);
    assert!(!wide.numbers.contains(&18) && !wide.numbers.contains(&54), "{:?}", wide.numbers);
    for (number, gap) in (1_u32..).zip(&after) {
        let is_wide = |number: u32| wide.numbers.contains(&number);
        let own = if is_wide(number) { 0.25 } else { 0.1875 };
        assert!((wider.basket.body.uprights().full_width(number).to_inches() - own).abs() < 1e-9);
        assert!(*gap > 0.0);
    }
}

#[test]
fn they_are_cut_as_a_group_of_their_own() {
    let draft = draft(OVAL, &format!("{ALIKE}\nends = \"1/4\""));
    let staves = draft.basket.body.staves();
    let sixteenths = |width: Length| (width.to_inches() * 16.0 * 1e6).round() / 1e6;
    let widths: Vec<f64> = staves.groups.iter().map(|group| sixteenths(group.width)).collect();
    assert_eq!(staves.groups.iter().map(|group| group.numbers.len()).sum::<usize>(), 71);
    assert!(widths.len() == 2 && widths.contains(&4.0) && widths.contains(&3.0), "{widths:?}");
    let lines = draft.cuts.iter().filter(|cut| cut.piece == Piece::Uprights);
    assert_eq!(lines.map(|cut| cut.count).sum::<u32>(), 71);
}

/// On a round mould no end is tight; wider than the stock there is none.
#[test]
fn a_round_mould_and_narrow_stock_have_none() {
    let round = draft("base = \"5\"\nrim = \"8\"\nheight = \"4\"", &format!("{ALIKE}\nends = \"1/4\""));
    assert!(round.basket.body.uprights().wider.is_none());
    let full = ALIKE.replace("width = \"3/16\"\n", "");
    let full = draft(OVAL, &full.replace("3/8 in", "3/16 in").replace("71", "71\nends = \"1/4\""));
    assert!(full.basket.body.uprights().wider.is_none());
}
