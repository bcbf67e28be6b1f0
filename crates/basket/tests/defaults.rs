//! What stands in the place of what a pattern leaves open (common practice, no source, unless a line says more),
//! and that it says why.

use basket::findings::Grade;
use basket::message::Value;
use basket::pattern::{CaneFace, Every, read};
use basket::{Catalogue, Draft, Hand};

fn draft(rim: f64, more: &str) -> Draft {
    let (base, height) = (rim * 0.62, rim * 0.5);
    let text = format!(
        "title = \"T\"\nunits = \"in\"\n{more}\n\
         [mould]\nbase = \"{base:.3}\"\nrim = \"{rim}\"\nheight = \"{height:.3}\"\nside = \"bowl\"\n"
    );
    let pattern = read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}"));
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn reason<'d>(draft: &'d Draft, key: &str) -> &'d str {
    let of_key = |choice: &&basket::choice::Choice| choice.key == key;
    draft.basket.choices.iter().find(of_key).unwrap_or_else(|| panic!("{key} is not explained")).reason.id
}

/// One maker weaves a 6 in basket with 2.25 mm throughout, another a 10 in one with 1.5, then 1.75 mm (makers'
/// weblogs): the usual cane is 2.25 mm wide, the first rows one grade finer (Perry, *Seat Weaving*, pp. 7-8:
/// superfine comes before fine-fine).
#[test]
fn the_first_rows_are_one_grade_finer() {
    for rim in [4.0, 6.0, 8.0, 10.0, 12.0] {
        let draft = draft(rim, "");
        let courses = &draft.basket.body.weave.courses;
        let names: Vec<&str> = courses.iter().map(|course| course.weaver.name.as_str()).collect();
        assert_eq!(names, ["cane superfine", "cane fine-fine"], "{rim} in");
        assert!((courses[1].weaver.width.to_mm() - 2.25).abs() < 1e-9);
        assert_eq!(courses[0].rows, 4);
    }
}

/// Rings go on when the basket is off its mould, so that the weaving uses all of it but what packing takes.
#[test]
fn the_weaving_ends_at_the_top_of_the_mould_less_what_packing_takes() {
    for (lines, shrink) in [("", None), ("weave = { shrink = \"10 %\" }", Some(0.10))] {
        let rings = draft(8.0, lines);
        let weave = &rings.basket.body.weave;
        let shrink = shrink.unwrap_or(weave.courses[1].weaver.shrink);
        let end = rings.basket.body.form.height() * (1.0 - shrink);
        let short = end - weave.top_height;
        assert!((0.0..weave.courses[1].pitch.to_mm()).contains(&short.to_mm()), "{lines}: {short:?}");
        assert_eq!(reason(&rings, "weave.courses"), "choice-weave-courses");
    }
    let bent = draft(8.0, "rim = { hoops = \"bent\" }");
    assert_eq!(reason(&bent, "weave.courses"), "choice-weave-courses-bent");
    let left = bent.basket.body.form.height() - bent.basket.body.weave.top_height;
    assert!((25.4..30.0).contains(&left.to_mm()), "the mould backs hoops that are bent on it: {left:?}");
}

/// From 1 1/2 in above the foot where gaps stay at least 1/32 in: on a mould with steep sides.
#[test]
fn the_taper_begins_an_inch_and_a_half_above_the_foot() {
    let text = "title = \"T\"\nunits = \"in\"\nstaves = { stock = \"flat oval reed 1/4 in\" }\n\
                mould = { base = \"6 3/4\", rim = \"8\", height = \"4\", side = \"cone\" }\n";
    let pattern = read(text, Catalogue::built_in()).expect("it reads");
    let draft = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL);
    let staves = draft.basket.body.staves();
    let above_foot = staves.taper.from - staves.uprights.foot_along;
    assert!(
        (above_foot.to_inches() - 1.5).abs() < 1e-9,
        "{:#?}",
        (above_foot, staves.taper, &staves.uprights)
    );
    assert!(staves.narrowest.gap.to_inches() >= 1.0 / 32.0);
    assert_eq!(reason(&draft, "staves.taper"), "choice-staves-taper-usual");
}

/// Where staves crowd above that place, the taper begins higher.
#[test]
fn a_taper_that_would_crowd_begins_elsewhere() {
    let crowded = draft(8.0, "staves = { stock = \"flat oval reed 1/4 in\", count = 83 }");
    let staves = crowded.basket.body.staves();
    let above_foot = staves.taper.from - staves.uprights.foot_along;
    assert!(above_foot.to_inches() > 1.6, "{above_foot:?}");
    assert_eq!(reason(&crowded, "staves.taper"), "choice-staves-taper");
}

/// About 1 in beyond the rim, to hold and band; lengths to cut are rounded up to a sixteenth.
#[test]
fn staves_stand_an_inch_beyond_the_rim_before_they_are_trimmed() {
    for rim in [5.0, 8.0, 11.0] {
        let draft = draft(rim, "");
        let trim = draft.basket.body.staves().length_parts.trim.to_inches();
        assert!((1.0 - 1e-9..1.0 + 1.0 / 16.0).contains(&trim), "{rim} in: {trim}");
    }
}

#[test]
fn the_dull_face_of_cane_looks_out_first() {
    let usual = draft(8.0, "");
    assert_eq!(usual.basket.body.weave.first_face, Some(CaneFace::Dull));
    assert_eq!(reason(&usual, "weave.first-face"), "choice-weave-first-face");
    let says = |draft: &Draft, id: &str| {
        draft.steps.iter().any(|step| step.text.iter().any(|message| message.id == id))
    };
    assert!(says(&usual, "step-first-text-face") && !says(&usual, "step-first-text-face-shiny"));
    let shiny = draft(8.0, "weave = { first-face = \"shiny\" }");
    assert_eq!(shiny.basket.body.weave.first_face, Some(CaneFace::Shiny));
    assert!(!says(&shiny, "step-first-text-face") && says(&shiny, "step-first-text-face-shiny"));
    assert!(shiny.basket.choices.iter().all(|choice| choice.key != "weave.first-face"));
    // Reed is alike all round.
    let reed = draft(8.0, "weave = { courses = [{ weaver = \"round reed 1\", rows = 20 }] }");
    assert_eq!(reed.basket.body.weave.first_face, None);
    assert!(!says(&reed, "step-first-text-face"));
}

/// Every other stave is pinned; where no lashing binds the rim, each one.
#[test]
fn a_rim_that_pins_alone_hold_is_pinned_at_each_stave() {
    let (lashed, alone) = (draft(8.0, ""), draft(8.0, "lashing = \"none\""));
    assert_eq!(lashed.basket.body.pins().every, Every::OtherStave);
    assert_eq!(alone.basket.body.pins().every, Every::Stave);
    assert_eq!(reason(&alone, "pins.every"), "choice-pins-every-alone");
    let every = |draft: &Draft| {
        draft
            .basket
            .choices
            .iter()
            .find(|choice| choice.key == "pins.every")
            .map(|choice| choice.value.clone())
    };
    assert_eq!(every(&alone), Some(Value::Name("stave".to_owned())));
}

/// A basket of which only the mould is known has nothing to mend; on a small one of an odd count it is said openly
/// that the handle leans a little.
#[test]
fn what_is_left_open_suits_baskets_of_all_usual_sizes() {
    let handle = "handle = { kind = \"swing\" }";
    for rim in [4.0, 5.0, 6.0, 7.0, 8.0, 10.0, 12.0] {
        for more in ["", handle, "rim = { hoops = \"bent\" }", "lashing = \"none\""] {
            let draft = draft(rim, more);
            let heavy = draft.findings.iter().filter(|finding| finding.grade != Grade::Note);
            let codes: Vec<&str> = heavy.map(|finding| finding.code).collect();
            let leans = more == handle && rim < 7.0 && draft.basket.body.uprights().count % 2 == 1;
            let openly: &[&str] = if leans { &["handle-uneven"] } else { &[] };
            assert_eq!(codes, openly, "{rim} in, {more}");
        }
    }
}

/// Where there is no half round reed 3/8 in, the one nearest to it stands in: of 1/8 and 1/2 in the wider.
#[test]
fn the_nearest_half_round_reed_stands_in() {
    let mut catalogue = Catalogue::built_in().clone();
    catalogue.materials.retain(|material| material.name != "half round reed 3/8 in");
    let half = |material: &basket::Material| material.kind == basket::stock::Kind::HalfRoundReed;
    let mut narrow = catalogue.materials.iter().find(|one| half(one)).expect("half round reed").clone();
    narrow.name = "half round reed 1/8 in".to_owned();
    narrow.width = basket::Length::inches(0.125);
    catalogue.materials.push(narrow);
    let text = "title = \"T\"\nunits = \"in\"\nmould = { base = \"5\", rim = \"8\", height = \"4\" }\n";
    let pattern = read(text, &catalogue).expect("it reads");
    let rim = Draft::of(pattern, &catalogue, &Hand::USUAL).basket.body.rim().outer.stock.width;
    assert!((rim.to_inches() - 0.5).abs() < 1e-9, "{rim:?}");
}

/// What a maker leaves open stays near what it was when another value is written: a count changes the width of
/// the staves' stock where it must, and not its kind.
#[test]
fn a_count_alone_does_not_turn_reed_into_cane() {
    for rim in [4.0, 6.0, 8.0, 10.0, 12.0] {
        let open = draft(rim, "");
        let (chosen, kind) = (open.basket.body.uprights().count, open.basket.body.staves().stock.kind);
        for count in chosen.saturating_sub(15).max(9)..chosen + 15 {
            let written = draft(rim, &format!("staves = {{ count = {count} }}"));
            let staves = written.basket.body.staves();
            assert_eq!((staves.uprights.count, staves.stock.kind), (count, kind), "{rim} in, {count} staves");
        }
    }
}
