//! A basket woven with the left hand is the mirror image: the same numbers, the other side.

use basket::pattern::{Direction, Lean, read};
use basket::weave::Face;
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
