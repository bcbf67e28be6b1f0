//! A basket woven with the left hand is the mirror image: the same numbers, the other side. What is said of its look,
//! and of counts on which it leans as asked, follows.

use basket::pattern::{Direction, Lean, read};
use basket::weave::Face;
use basket::weave::find::{Wanted, find};
use basket::weave::look::Look;
use basket::weave::runs::runs_on;
use basket::{Catalogue, Draft, Hand};

fn draft(top: &str, weave: &str) -> Draft {
    let text = format!(
        "title = \"T\"\nunits = \"in\"\n{top}\n[mould]\nbase = \"5\"\nrim = \"6\"\nheight = \"4\"\nside = \"cone\"\n\
         [staves]\ncount = 40\n[weave]\n{weave}\n"
    );
    let pattern = read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}"));
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

const TWILL: &str = "courses = [{ weave = \"twill 2/2\", way = \"row by row\", colours = \"blue\", weaver = \"cane fine\", rows = 12 }]";

#[test]
fn the_hand_decides_unless_the_pattern_says() {
    let direction = |top, weave: &str| draft(top, &format!("{weave}\n{TWILL}")).basket.body.weave.direction;
    assert_eq!(direction("", ""), Direction::Right);
    assert_eq!(direction("hand = \"left\"", ""), Direction::Left);
    assert_eq!(direction("hand = \"left\"", "direction = \"right\""), Direction::Right);
    assert_eq!(direction("", "direction = \"left\""), Direction::Left);
}

#[test]
fn a_left_handed_basket_has_the_same_cells_and_leans_the_other_way() {
    let [right, left] = ["", "hand = \"left\""].map(|top| draft(top, TWILL).basket);
    for row in 1..=12 {
        for stave in 1..=40 {
            assert_eq!(right.body.weave.cell(row, stave), left.body.weave.cell(row, stave), "{row} {stave}");
        }
    }
    let look =
        |basket: &basket::Basket| basket.body.weave.look(&basket.body.weave.courses[0], Face::Outside).lean;
    assert_eq!((look(&right), look(&left)), (Some(Lean::Right), Some(Lean::Left)));
    let said = |basket: &basket::Basket| {
        basket.body.weave.bands().into_iter().flat_map(|band| band.text).collect::<Vec<_>>()
    };
    assert_eq!(said(&right), said(&left), "sentences name staves, not sides");
}

#[test]
fn a_lean_that_is_asked_for_is_as_it_is_seen() {
    for (asked, lean) in [("left", Lean::Left), ("right", Lean::Right)] {
        for top in ["", "hand = \"left\""] {
            let twill = TWILL.replace("weaver", &format!("lean = \"{asked}\", weaver"));
            let draft = draft(top, &twill);
            let weave = &draft.basket.body.weave;
            assert_eq!(weave.look(&weave.courses[0], Face::Outside).lean, Some(lean), "{asked} {top}");
            assert!(
                draft.findings.iter().all(|finding| finding.code != "weave-leans-other-way"),
                "{asked} {top}"
            );
        }
    }
}

/// A drawn weave is seen outside as it is drawn: the drawing's right comes first where numbers rise to the left.
#[test]
fn a_drawing_is_seen_as_it_is_drawn() {
    let drawn = "courses = [{ weave = \"drawn\", weaver = \"cane fine\", chart = [\"XX.X....\"], rows = 4 }]";
    for (top, seen) in [
        ("", [false, false, false, false, true, false, true, true]),
        ("hand = \"left\"", [true, true, false, true, false, false, false, false]),
    ] {
        let weave = draft(top, drawn).basket.body.weave;
        let row: Vec<bool> = (1..=8).map(|stave| weave.cell(1, stave).outside.is_some()).collect();
        assert_eq!(row, seen, "{top}");
    }
}

/// On a count one above and one below a multiple of four over two, under two leans to different sides; with the left
/// hand they change places. What a finding proposes leans as asked on that basket.
#[test]
fn counts_that_are_proposed_lean_as_asked_with_either_hand() {
    for (top, asked) in
        [("", "left"), ("", "right"), ("hand = \"left\"", "left"), ("hand = \"left\"", "right")]
    {
        for count in [77, 79] {
            let twill =
                "courses = [{ weave = \"twill 2/2\", lean = \"LEAN\", weaver = \"cane fine\", rows = 24 }]";
            let text = format!(
                "title = \"T\"\nunits = \"in\"\n{top}\nmould = {{ base = \"5\", rim = \"8\", height = \"4\", side = \"bowl\" }}\n\
                 [staves]\ncount = COUNT\nstock = \"flat oval reed 1/4 in\"\n[weave]\n{}\n",
                twill.replace("LEAN", asked)
            );
            let draft = |count: u32| {
                let pattern = read(&text.replace("COUNT", &count.to_string()), Catalogue::built_in());
                Draft::of(pattern.expect("it reads"), Catalogue::built_in(), &Hand::USUAL)
            };
            let leans = |draft: &Draft| {
                let weave = &draft.basket.body.weave;
                let lean = weave.courses[0].verdict.diagonal.lean().expect("it leans");
                if weave.direction == Direction::Left { lean.other() } else { lean }
            };
            let wanted = if asked == "left" { Lean::Left } else { Lean::Right };
            let first = draft(count);
            let finding = first.findings.iter().find(|finding| finding.code == "weave-leans-other-way");
            assert_eq!(finding.is_some(), leans(&first) != wanted, "{top} {asked} {count}");
            let proposed = finding.into_iter().flat_map(|finding| &finding.remedies);
            let counts: Vec<u32> = proposed
                .filter(|remedy| remedy.key == "staves.count")
                .map(|remedy| remedy.value.parse().expect("a count"))
                .chain(first.basket.body.weave.courses[0].verdict.counts.iter().copied())
                .collect();
            assert!(!counts.is_empty());
            for other in counts {
                assert_eq!(leans(&draft(other)), wanted, "{top} {asked}: {other}");
            }
        }
    }
}

/// Every weave on a count, told for the other hand: the same weaves run, and all that climbs climbs to the other
/// side.
#[test]
fn weaves_on_a_count_are_told_for_either_hand() {
    let cane = Catalogue::built_in().material("cane fine").expect("in the catalogue");
    for count in [72, 73] {
        let [right, left] = [Direction::Right, Direction::Left].map(|side| runs_on(count, cane, side));
        assert_eq!(right.len(), left.len());
        for (right, left) in right.iter().zip(&left) {
            assert_eq!((right.weave, right.runs, &right.verdict), (left.weave, left.runs, &left.verdict));
            assert_eq!(right.lean.map(Lean::other), left.lean, "{} on {count}", right.weave);
        }
        assert!(right.iter().any(|run| run.lean.is_some()));
    }
}

/// What is found for the left hand is woven with it, from the keys that are proposed, and looks as asked.
#[test]
fn a_spiral_for_the_left_hand_climbs_as_asked() {
    for lean in [Lean::Left, Lean::Right] {
        let wanted = Wanted {
            lean: Some(lean),
            direction: Direction::Left,
            counts: 70..=76,
            ..Wanted::new(Look::Spiral, 2, 73)
        };
        let found = find(&wanted, 20);
        let mut seen = 0;
        for proposal in found {
            assert_eq!(proposal.lean(), Some(lean));
            let mut keys = proposal.keys(&["natural", "blue"]);
            if keys.iter().all(|(key, _)| *key != "rows") {
                keys.push(("rows", "40".to_owned()));
            }
            let keys: Vec<String> = keys.iter().map(|(key, value)| format!("{key} = {value}")).collect();
            let names = ["natural", "blue"];
            let staves: Vec<String> = proposal
                .colouring
                .staves
                .iter()
                .map(|&one| format!("\"{}\"", names[usize::from(one)]))
                .collect();
            let text = format!(
                "title = \"T\"\nunits = \"in\"\nhand = \"left\"\nmould = {{ base = \"8\", rim = \"8\", height = \"6\" }}\n\
                 [staves]\ncount = {}\nstock = \"flat oval reed 1/4 in\"\ncolours = [{}]\n\
                 [weave]\ncourses = [{{ weaver = \"cane fine\", {} }}]\n",
                proposal.count,
                staves.join(", "),
                keys.join(", ")
            );
            let pattern =
                read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}\n{text}"));
            let basket = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL).basket;
            let look = basket.body.weave.look(&basket.body.weave.courses[0], Face::Outside);
            // Rows and staves of this basket are not of the usual proportion: what only lies near looks otherwise.
            if look.sighting.look == Look::Spiral {
                assert_eq!(look.lean, Some(lean), "{text}");
                seen += 1;
            }
        }
        assert!(seen > 3, "{seen}");
    }
}

/// A twill woven row by row says its lean in its keys: as it is seen on that basket.
#[test]
fn a_lean_among_the_keys_is_as_it_is_seen() {
    for direction in [Direction::Left, Direction::Right] {
        let wanted = Wanted { direction, counts: 72..=72, ..Wanted::new(Look::Spiral, 1, 72) };
        let told = find(&wanted, 20).into_iter().filter_map(|proposal| {
            let lean = proposal.lean().expect("a spiral climbs");
            let keys = proposal.keys(&[]);
            let key = keys.into_iter().find(|(key, _)| *key == "lean")?.1;
            Some((key, lean))
        });
        let told: Vec<(String, Lean)> = told.collect();
        assert!(!told.is_empty(), "{direction:?}");
        for (key, lean) in told {
            assert_eq!(key, if lean == Lean::Left { "\"left\"" } else { "\"right\"" }, "{direction:?}");
        }
    }
}
