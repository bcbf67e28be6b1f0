//! A basket can be woven from what its handout says: a reader that knows only the sentences gives the same chart,
//! cell by cell.

use basket::Draft;
use basket::pattern::Units;
use basket::weave::Face;

use crate::common::{draft, file, on, packet_of, run_on, words};
use crate::woven_reader::{Woven, weave};

/// Baskets 5 in across, each with a count of staves and its courses.
const BASKETS: [(&str, u32, &str); 14] = [
    ("plain", 41, r#"{ weaver = "cane fine", rows = 12 }"#),
    (
        "twill with a band",
        41,
        r#"{ weaver = "cane fine", rows = 5 },
           { weave = "twill 2/2", weaver = "cane fine", start = 31, colours = "blue", rows = 7 },
           { weave = "twill 2/2", weaver = "cane fine", rows = 3 },
           { weave = "twill 2/2", weaver = "cane fine", colours = "red", rows = 2 }"#,
    ),
    (
        "twill 2/1",
        40,
        r#"{ weave = "twill 2/1", weaver = "cane fine", start = 7, colours = "green", rows = 9 }"#,
    ),
    (
        "reversed twill",
        40,
        r#"{ weave = "reversed twill 2/2", weaver = "cane fine", colours = "blue", band = 4, rows = 17 }"#,
    ),
    (
        "row by row",
        42,
        r#"{ weave = "twill 3/3", way = "row by row", lean = "left", step = 2, weaver = "cane fine", start = 4,
             colours = [["blue", "blue", "natural"]], rows = 10 }"#,
    ),
    (
        "chase",
        40,
        r#"{ weave = "chase", weaver = "cane fine", colours = ["blue", "natural"], rows = 9 },
           { weave = "chase", weaver = "cane fine", colours = ["red", "natural"], rows = 4 }"#,
    ),
    (
        "chase twill",
        42,
        r#"{ weave = "chase twill 2/2", weaver = "cane fine", colours = ["blue", "red"], rows = 9 }"#,
    ),
    (
        "wale",
        41,
        r#"{ weave = "wale 3", weaver = "round reed 1", colours = ["blue", "natural", "red"], start = 5, rows = 4 },
           { weave = "wale 3", weaver = "round reed 1", colours = ["green", "natural", "red"], rows = 3 },
           { weaver = "cane fine", rows = 3 }"#,
    ),
    (
        "wale with a step up",
        41,
        r#"{ weave = "wale 3", step-up = true, weaver = "round reed 1", colours = ["blue", "natural", "red"], rows = 3 }"#,
    ),
    (
        "pairing",
        41,
        r#"{ weave = "pairing", weaver = "round reed 1", colours = ["blue", "white"], start = 3, rows = 4 },
           { weaver = "cane fine", start = 9, rows = 5 }"#,
    ),
    ("slew", 41, r#"{ weave = "slew", weaver = "cane fine", colours = ["blue", "red"], rows = 6 }"#),
    (
        "skip one",
        40,
        r#"{ weave = "skip one", weaver = "cane fine", start = 6, colours = "blue", rows = 12 }"#,
    ),
    (
        "colours in one weaver",
        41,
        r#"{ weaver = "cane fine", colours = [["natural", "blue", "red"]], strands = ["6 ft", "5 ft", "4 ft"], doubled = 2, rows = 16 }"#,
    ),
    (
        "drawn",
        40,
        r#"{ weave = "drawn", weaver = "cane fine", chart = ["X...", "XX..", "X.X."], start = 3, rows = 8 }"#,
    ),
];

fn basket((title, count, courses): (&str, u32, &str)) -> Draft {
    draft(&format!(
        "title = \"{title}\"\nunits = \"in\"\n[mould]\nbase = \"5\"\nrim = \"5 1/2\"\nheight = \"4\"\nside = \"cone\"\n\
         [staves]\ncount = {count}\n[weave]\ncourses = [{courses}]\n"
    ))
}

/// The chart of the program.
fn chart(draft: &Draft) -> Woven {
    let (weave, count) = (&draft.basket.body.weave, draft.basket.body.uprights().count);
    let seen = |row, stave| {
        let seen = weave.colour(row, stave, Face::Outside);
        ((row, stave), seen.weaver.map(|_| seen.colour.name.clone()))
    };
    (1..=weave.rows).flat_map(|row| (1..=count).map(move |stave| seen(row, stave))).collect()
}

fn assert_alike(title: &str, read: &Woven, chart: &Woven) {
    for (place, seen) in chart {
        let woven = read.get(place).unwrap_or_else(|| panic!("{title}: nothing is said of {place:?}"));
        assert_eq!(woven, seen, "{title}: row and stave {place:?}");
    }
    assert_eq!(read.len(), chart.len(), "{title}");
}

/// The sentences of the steps, as they stand in every rendering.
#[test]
fn the_sentences_weave_the_chart() {
    let words = words(Units::Inches);
    for one in BASKETS {
        let draft = basket(one);
        let said: Vec<String> =
            draft.steps.iter().flat_map(|step| &step.text).map(|message| words.say(message)).collect();
        assert_alike(one.0, &weave(&said.join(" ")), &chart(&draft));
    }
}

/// The same from the printed handout.
#[test]
fn the_printed_handout_weaves_the_chart() {
    let words = words(Units::Inches);
    for one in BASKETS {
        let draft = basket(one);
        let packet = packet_of(&draft, &words, &on(sheets::Paper::A4));
        assert_alike(one.0, &weave(&run_on(file(&packet, "handout.pdf"), one.0)), &chart(&draft));
    }
}

/// The reader follows the sentences: another rule, stave or row makes another basket.
#[test]
fn another_sentence_weaves_another_basket() {
    let words = words(Units::Inches);
    let draft = basket(BASKETS[1]);
    let said: Vec<String> =
        draft.steps.iter().flat_map(|step| &step.text).map(|message| words.say(message)).collect();
    let said = said.join(" ");
    for (sentence, other) in [
        ("begin over staves 31–32", "begin over staves 32–33"),
        ("over 2, under 2", "over 2, under 1"),
        ("Rows 6–8, blue", "Rows 6–8, red"),
    ] {
        assert!(said.contains(sentence), "{said}");
        assert_ne!(weave(&said.replace(sentence, other)), chart(&draft), "{other}");
    }
}
