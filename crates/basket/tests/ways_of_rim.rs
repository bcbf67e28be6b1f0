//! The ways of ears and hoops: each has its steps in the trade's order (common practice), and cut list, tools,
//! cautions, times and stages follow it.

use basket::cuts::{Cut, CutStock};
use basket::message::{Message, Value};
use basket::pattern::StepKind::{self, *};
use basket::steps::{Stage, Step};
use basket::{Catalogue, Draft, Hand, Piece, pattern};

/// A basket 8 in across of 79 staves, with these lines for its ears and its rim.
fn draft(ears: &str, rim: &str) -> Draft {
    let text = format!(
        "title = \"Ways\"\nunits = \"in\"\n\
         mould = {{ base = \"5\", rim = \"8\", height = \"4\", side = \"bowl\" }}\n\
         [staves]\nstock = \"flat oval reed 1/4 in\"\ncount = 79\n\
         [weave]\ncourses = [{{ weaver = \"cane fine\", until = \"3/8 below mould top\" }}]\n\
         [ears]\n{ears}\n[rim]\n{rim}\n[handle]\n"
    );
    let pattern = pattern::read(&text, Catalogue::built_in()).expect("the pattern reads");
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn kinds(draft: &Draft) -> Vec<StepKind> {
    draft.steps.iter().map(|step| step.kind).collect()
}

fn step(draft: &Draft, kind: StepKind) -> &Step {
    draft.steps.iter().find(|step| step.kind == kind).expect("the basket has the step")
}

fn cut(draft: &Draft, piece: Piece) -> &Cut {
    draft.cuts.iter().find(|cut| cut.piece == piece).expect("the piece is in the cut list")
}

fn says<'d>(step: &'d Step, id: &str) -> &'d Message {
    step.text.iter().find(|message| message.id == id).unwrap_or_else(|| panic!("{id} in {:?}", step.text))
}

fn value<'m>(message: &'m Message, name: &str) -> &'m Value {
    &message.args.iter().find(|(arg, _)| *arg == name).expect("the value is mentioned").1
}

fn has(list: &[&str], item: &str) -> bool {
    list.contains(&item)
}

/// Ears on the outside of marked staves with about 1 in of mould left, then rows to the top; rings made; only
/// then off the mould, and the rim.
#[test]
fn woven_in_ears_and_rings_are_usual() {
    let draft = draft("", "");
    let order = [
        Cut, Seal, Base, Staves, FirstRows, Half, ToEars, Ears, Rest, Dry, Rings, OffMould, Rim, Pins,
        Lashing, Handle, Plug, Finish,
    ];
    assert_eq!(kinds(&draft), order);
    let numbers: Vec<u32> = draft.steps.iter().map(|step| step.number).collect();
    assert_eq!(numbers, (1..=18).collect::<Vec<_>>());
    let stages = draft.basket.stages();
    let place = |stage| stages.iter().position(|other| *other == stage).expect("it passes the stage");
    assert!(place(Stage::HalfWoven) < place(Stage::EarsSet));
    assert!(place(Stage::EarsSet) < place(Stage::Woven));
    assert!(place(Stage::Woven) < place(Stage::RingsMade));
    assert!(place(Stage::RingsMade) < place(Stage::OffMould));
    assert!(place(Stage::OffMould) < place(Stage::RimClamped));
}

/// Counted by hand from the rows of the basket: those whose lower edge lies no more than 1 in below the last
/// row's top.
#[test]
fn the_row_of_woven_in_ears_is_said() {
    let draft = draft("", "");
    let body = &draft.basket.body;
    let from = body.rim().along.to_mm() - 25.4 - 1e-6;
    let below = body.weave.each_row.iter().filter(|row| (row.along - row.pitch / 2.0).to_mm() < from).count();
    let lay = says(step(&draft, Ears), "step-ears-text-lay");
    assert_eq!(value(lay, "row"), &Value::Count(below as i64));
    assert_eq!(value(lay, "rows"), &Value::Count(i64::from(body.weave.rows) - below as i64));
    let Value::Length(left) = value(lay, "left") else { panic!("{lay:?}") };
    assert!((20.0..40.0).contains(&left.to_mm()), "about 1 in of the mould is left: {left:?}");
    let ears = draft.basket.ears.as_ref().unwrap();
    let Value::Length(stands) = value(lay, "stands") else { panic!("{lay:?}") };
    assert!((*stands + ears.tail - ears.length).to_mm().abs() < 1e-9, "tail and what stands are the ear");
    let rows = [Stage::FirstRows, Stage::HalfWoven, Stage::EarsSet, Stage::Woven]
        .map(|stage| draft.basket.rows_at(stage));
    assert!(rows.is_sorted(), "{rows:?}");
    assert_eq!(rows[2], below as u32);
}

/// 79 staves: both ways from stave 1 to stave 41 it is 40 and 39. Half a pitch is 8 in · π / 158 = 4 mm, toward
/// stave 42.
#[test]
fn the_error_of_an_odd_count_is_said_by_staves() {
    let draft = draft("", "");
    let ears = step(&draft, Ears);
    let counted = says(ears, "step-ears-text-count");
    let counts = ["first", "second", "up", "down"].map(|name| value(counted, name).clone());
    assert_eq!(counts, [1, 41, 40, 39].map(Value::Count));
    let placed = says(ears, "step-ears-text-on-staves-off");
    assert_eq!(value(placed, "toward"), &Value::Count(42));
    let Value::Length(off) = value(placed, "off") else { panic!("{placed:?}") };
    let pitch = draft.basket.body.rim().girth.to_mm() / 79.0;
    assert!((off.to_mm() - pitch / 2.0).abs() < 1e-9);
}

#[test]
fn ears_pushed_down_come_when_the_basket_is_off_its_mould() {
    let draft = draft("way = \"pushed-down\"", "");
    let order = [
        Cut, Seal, Base, Staves, FirstRows, Half, Rest, Dry, Rings, OffMould, Ears, Rim, Pins, Lashing,
        Handle, Plug, Finish,
    ];
    assert_eq!(kinds(&draft), order);
    let ears = step(&draft, Ears);
    says(ears, "step-ears-text-push");
    assert!(has(&ears.tools, "tool-awl"));
    assert!(!has(&step(&self::draft("", ""), Ears).tools, "tool-awl"), "woven in there is no way to open");
    let stages = draft.basket.stages();
    let place = |stage| stages.iter().position(|other| *other == stage);
    assert!(
        place(Stage::OffMould) < place(Stage::EarsSet) && place(Stage::EarsSet) < place(Stage::RimClamped)
    );
    let Value::Length(tail) = value(says(ears, "step-ears-text-push"), "tail") else { panic!("no length") };
    assert!((tail.to_inches() - 2.0).abs() < 1e-9);
}

/// Wood stands in the place of two staves, which are not cut; brass lies on them.
#[test]
fn ears_as_staves_come_before_the_staves() {
    let wood = draft("way = \"as-stave\"\nmaterial = \"wood\"\nwood = \"white ash\"", "");
    let order = [
        Cut, Seal, Base, Ears, Staves, FirstRows, Half, Rest, Dry, Rings, OffMould, Rim, Pins, Lashing,
        Handle, Plug, Finish,
    ];
    assert_eq!(kinds(&wood), order);
    assert_eq!(cut(&wood, Piece::Uprights).count, 77);
    assert_eq!(value(says(step(&wood, Cut), "step-cut-text-staves"), "count"), &Value::Count(77));
    let ears = cut(&wood, Piece::Ears);
    let CutStock::Wood(stuff) = &ears.stock else { panic!("{ears:?}") };
    assert_eq!(stuff.name, "white ash");
    // Down the wall and into the groove as a stave; above it the hoops, the hole and half the head.
    let basket = &wood.basket;
    let parts = &basket.body.staves().length_parts;
    let set = basket.ears.as_ref().expect("it has ears");
    let length = parts.groove + parts.turn + parts.wall + parts.rim + set.hole_height + set.width / 2.0;
    assert!((ears.length.expect("a length") - length).abs().to_mm() < 1e-6);

    let brass = draft("way = \"as-stave\"", "");
    assert_eq!(kinds(&brass), order);
    assert_eq!(cut(&brass, Piece::Uprights).count, 79);
    says(step(&brass, Ears), "step-ears-text-on-stave");
    assert_eq!(brass.basket.rows_at(Stage::EarsSet), 0);
}

#[test]
fn tools_and_cautions_follow_what_ears_are_made_of() {
    let of = |material: &str| {
        let draft = draft(&format!("material = \"{material}\""), "");
        let step = step(&draft, Ears);
        (step.tools.clone(), step.cautions.clone())
    };
    let (tools, cautions) = of("brass");
    assert!(has(&tools, "tool-file") && !has(&tools, "tool-knife"));
    assert_eq!(cautions, ["caution-brass"]);
    for wood in ["wood", "oak"] {
        let (tools, cautions) = of(wood);
        assert!(has(&tools, "tool-knife") && !has(&tools, "tool-file"));
        assert_eq!(cautions, ["caution-knife", "caution-sanding-dust"]);
    }
    assert_eq!(of("bone").1, ["caution-bone"]);
}

/// Rings are soaked, glued and dried in their own step; on the rim they need neither soaking nor waiting.
#[test]
fn rings_are_made_before_the_rim() {
    let draft = draft("", "hoops = \"rings\"");
    let (rings, rim) = (step(&draft, Rings), step(&draft, Rim));
    assert!(rings.soak_minutes.is_some() && has(&rings.tools, "tool-glue"));
    assert!(has(&rings.cautions, "caution-glue") && has(&rings.cautions, "caution-knife"));
    assert!((rings.wait_minutes - 12.0 * 60.0).abs() < 1e-9);
    assert_eq!((rim.soak_minutes, rim.wait_minutes), (None, 0.0));
    assert!(!has(&rim.cautions, "caution-knife"));
    let outer = cut(&draft, Piece::OuterHoop);
    assert_eq!(outer.length, Some(draft.basket.body.rim().outer.cut));
    assert_eq!(outer.shape.as_ref().map(|shape| shape.id), Some("cut-hoop-shape-ring-outer"));
    says(rim, "step-rim-text-ring-outer");
}

#[test]
fn hoops_bent_in_place_have_no_step_of_their_own() {
    let draft = draft("", "hoops = \"bent\"");
    assert!(!kinds(&draft).contains(&Rings));
    assert!(!draft.basket.stages().contains(&Stage::RingsMade));
    let rim = step(&draft, Rim);
    assert!(
        rim.soak_minutes.is_some() && has(&rim.tools, "tool-knife") && has(&rim.cautions, "caution-knife")
    );
    assert!((rim.wait_minutes - 12.0 * 60.0).abs() < 1e-9);
    let rings = self::draft("", "hoops = \"rings\"");
    let work = |draft: &Draft| -> f64 {
        let of_hoops = |step: &&Step| matches!(step.kind, Rings | Rim);
        draft.steps.iter().filter(of_hoops).map(|step| step.work_minutes).sum()
    };
    assert!((work(&draft) - work(&rings)).abs() <= 10.0, "the work is the same, rounded by the step");
}

/// A bought ring is asked for by its width at its flat face: inside for the outer one, outside for the inner.
#[test]
fn bought_rings_are_no_strips() {
    let draft = draft("", "hoops = \"bought\"");
    assert!(!kinds(&draft).contains(&Rings));
    let rim = draft.basket.body.rim();
    for (piece, hoop) in [(Piece::OuterHoop, &rim.outer), (Piece::InnerHoop, &rim.inner)] {
        let cut = cut(&draft, piece);
        assert!(matches!(&cut.stock, CutStock::Ring(stock) if *stock == hoop.stock));
        assert_eq!((cut.count, cut.length, cut.total, cut.stock.material()), (1, None, None, None));
        let shape = cut.shape.as_ref().expect("a size");
        assert_eq!(value(shape, "across"), &Value::from(hoop.across));
    }
    let stave = draft.basket.body.uprights().thickness;
    assert!((rim.outer.across.length - rim.inner.across.length - stave * 2.0).abs().to_mm() < 1e-9);
    let (bought, bent) = (step(&draft, Rim), self::draft("", "hoops = \"bent\""));
    assert!(bought.work_minutes < step(&bent, Rim).work_minutes);
    assert!(!has(&bought.tools, "tool-knife") && bought.cautions.is_empty());
}

/// Our own ears draw no finding: as wide as a stave, and off by no more than most accept.
#[test]
fn what_is_usual_for_ears_and_hoops_is_left_in_peace() {
    let codes = |draft: &Draft| -> Vec<&str> {
        let codes = draft.findings.iter().map(|finding| finding.code);
        codes.filter(|code| ["ear", "hoop", "lap", "scarf"].iter().any(|of| code.starts_with(of))).collect()
    };
    for material in ["brass", "wood", "oak", "bone"] {
        for way in ["woven-in", "pushed-down", "as-stave"] {
            let draft = draft(&format!("way = \"{way}\"\nmaterial = \"{material}\""), "");
            assert_eq!(codes(&draft), Vec::<&str>::new(), "{material} {way}");
        }
    }
}

/// The stave of each ear is pinned, whatever the way.
#[test]
fn ears_are_pinned_through_their_staves() {
    for way in ["woven-in", "pushed-down", "as-stave"] {
        let draft = draft(&format!("way = \"{way}\""), "");
        let pins = draft.basket.body.pins().ears.as_ref().expect("pins of the ears");
        assert_eq!(pins.staves, [1, 41]);
        says(step(&draft, Pins), "step-pins-text-ears");
    }
}

#[test]
fn what_contradicts_the_way_is_refused() {
    let problems = |lines: &str| -> Vec<String> {
        let text = format!(
            "title = \"Ways\"\nmould = {{ base = \"5 in\", rim = \"8 in\", height = \"4 in\" }}\n[ears]\n{lines}\n"
        );
        let found = pattern::read(&text, Catalogue::built_in()).expect_err("it does not read");
        found.iter().map(ToString::to_string).collect()
    };
    let of = |lines: &str, words: &str| {
        let found = problems(lines);
        assert!(found.len() == 1 && found[0].contains(words), "{found:?}");
    };
    of("wood = \"cherry\"", "`ears.wood` belongs to wooden ears only");
    of("way = \"as-stave\"\nplacing = \"shared\"", "`ears.placing` of ears that run down as staves");
    of("way = \"as-stave\"\ntail = \"2 in\"", "`ears.tail` of ears that run down as staves");
    of("way = \"woven\"", "did you mean `woven-in`?");
}

/// A class kit: what lies ready is taken and not made.
#[test]
fn rings_and_ears_that_lie_ready_shorten_their_steps() {
    let with = |ready: &str| {
        let text = format!(
            "title = \"Kit\"\nunits = \"in\"\nready = [{ready}]\n\
             mould = {{ base = \"5\", rim = \"8\", height = \"4\", side = \"bowl\" }}\n[ears]\n"
        );
        let pattern = pattern::read(&text, Catalogue::built_in()).expect("the pattern reads");
        Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
    };
    let (made, kit) = (with(""), with("\"rings\", \"ears\""));
    assert!(kinds(&made).contains(&Rings) && !kinds(&kit).contains(&Rings));
    assert!(!kit.basket.stages().contains(&Stage::RingsMade));
    says(step(&kit, Rim), "step-rim-text-ready-outer");
    let (saws, takes) = (step(&made, Ears), step(&kit, Ears));
    says(takes, "step-ears-text-ready");
    assert!(saws.work_minutes > takes.work_minutes && takes.work_minutes > 0.0);
    assert_eq!((takes.tools.as_slice(), takes.cautions.len()), (&["tool-ruler", "tool-pencil"][..], 0));
    assert!(has(&saws.tools, "tool-saw") && has(&saws.cautions, "caution-brass"));
}
