//! Patterns are read whole: what stands in them, what is left out, and what the manual says.

use basket::pattern::{
    BailCurve, EarMaterial, EarPlacing, EarWay, EarsPattern, Every, FillerPattern, Finish, HandleJoint,
    HandleKind, HandleMade, HandlePattern, HoopWay, LashingStyle, MouldForm, OvalSide, Rings, STARTER,
    StepKind, TaperPattern, Units, Until, read,
};
use basket::{Catalogue, Length, Pattern};

fn read_well(text: &str) -> Pattern {
    read(text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{text}\n{problems:#?}"))
}

/// A small sound pattern with more lines after it.
fn with(lines: &str) -> String {
    format!(
        "title = \"T\"\nunits = \"in\"\nmould = {{ base = \"5\", rim = \"8\", height = \"4\" }}\n{lines}\n"
    )
}

#[test]
fn the_starter_reads() {
    assert_eq!(read_well(STARTER).title, "My first basket");
}

#[test]
fn the_lines_that_the_starter_leaves_out_read_too() {
    let uncommented: String = STARTER
        .lines()
        .filter(|line| {
            !["# base =", "# rim =", "# height =", "# side ="].iter().any(|key| line.starts_with(key))
        })
        .map(|line| match line.strip_prefix("# ") {
            Some(rest)
                if rest.contains(" = ") && !rest.contains(", or ") || rest.starts_with("[materials") =>
            {
                format!("{rest}\n")
            }
            _ => format!("{line}\n"),
        })
        .filter(|line| !line.starts_with("From the base") && !line.starts_with("until"))
        .collect();
    let pattern = read_well(&uncommented);
    assert_eq!((pattern.staves.count, pattern.materials.len()), (Some(67), 1));
}

#[test]
fn every_pattern_of_the_repository_reads() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../patterns");
    let mut titles = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        titles.push(read_well(&std::fs::read_to_string(path).unwrap()).title);
    }
    titles.sort();
    assert_eq!(
        titles,
        [
            "Channel marker",
            "Ferry egg basket",
            "Harbour bread basket",
            "Pilot letter basket",
            "Sound market basket"
        ]
    );
}

#[test]
fn what_is_left_out_stays_open() {
    let pattern = read_well(&with(""));
    assert_eq!(pattern.units, Units::Inches);
    assert_eq!(pattern.staves, basket::pattern::StavesPattern::default());
    assert!(pattern.weave.courses.is_empty() && pattern.weave.shrink.is_none());
    assert_eq!((&pattern.filler, &pattern.ears, &pattern.handle), (&FillerPattern::Choose, &None, &None));
}

const EVERY_KEY: &str = r#"
finish = "stain-and-shellac"
filler = "none"
[base]
diameter = "4 7/8"
thickness = "10 mm"
groove = { depth = "1/4", width = "3/32" }
wood = ["Cherry", "walnut", "cherry"]
rings = "in"
sealed = false
screw = "3/16"
[staves]
count = 44
stock = "my quarter-inch"
width = "6 mm"
gap = "1/16"
taper = { from = "0", foot = "1/8" }
length = "7 1/2"
spares = 5
oval = "in"
[weave]
shrink = "4,5 %"
courses = [
  { weaver = "cane fine-fine", rows = 4 },
  { weave = "plain", weaver = "cane fine", until = "height 2 1/2", packing = 1.1 },
  { weave = "plain", weaver = "fine cane", until = "25 mm below mould top", packing = "95 %" },
  { weave = "plain", weaver = "cane fine", until = "mould top" },
]
[rim]
hoops = "bent"
stock = "half round reed 3/8 in"
inner = "flat oval reed 3/8 in"
lap = "3"
[lashing]
weaver = "cane superfine"
every = "other-stave"
style = "crossed"
tail = "2"
[pins]
stock = "brass pin 18 x 1/2 in"
every = "stave"
[ears]
material = "wood"
wood = "cherry"
way = "pushed-down"
placing = "shared"
width = "3/8"
thickness = "1/8"
hole = "0"
tail = "3"
[handle]
kind = "swing"
made = "bent"
joint = "slot"
curve = "three-centred"
rise = "4"
corner = "2"
width = "1/2"
thickness = "1/4"
shows = "1/8"
rivet = "copper rivet 10"
[materials."my quarter-inch"]
like = "flat oval reed 1/4 in"
width = "6.1 mm"
thickness = "2.0 mm"
soak = [5, 8]
strand = "2 m"
shrink = "5 %"
"#;

#[test]
fn every_key_is_read() {
    let pattern = read_well(&with(EVERY_KEY));
    assert_eq!(pattern.staves.count, Some(44));
    let stock = pattern.staves.stock.as_ref().unwrap();
    assert_eq!((stock.width, stock.thickness), (Length::mm(6.1), Length::mm(2.0)));
    assert_eq!((stock.soak_minutes, stock.put_up.strand), (Some((5.0, 8.0)), Some(Length::mm(2000.0))));
    assert_eq!(stock.sources["width"], "as the maker wrote it");
    assert_eq!(
        stock.sources["bend"],
        Catalogue::built_in().material("flat oval reed 1/4 in").unwrap().sources["bend"]
    );
    assert_eq!(pattern.weave.shrink, Some(0.045));
    let ends: Vec<Until> = pattern.weave.courses.iter().map(|course| course.until).collect();
    let places = [Length::inches(2.5), Length::mm(25.0), Length::ZERO];
    let wanted =
        [Until::Rows(4), Until::Height(places[0]), Until::BelowTop(places[1]), Until::BelowTop(places[2])];
    assert_eq!(ends, wanted);
    let woods = pattern.base.woods.unwrap();
    let names: Vec<&str> = woods.iter().map(|wood| wood.name.as_str()).collect();
    assert_eq!(names, ["cherry", "walnut", "cherry"]);
    assert_eq!((pattern.base.rings, pattern.base.sealed), (Some(Rings::In), Some(false)));
    assert_eq!(pattern.filler, FillerPattern::None);
    let inches = |number| Some(Length::inches(number));
    let ears = EarsPattern {
        material: Some(EarMaterial::Wood),
        wood: Catalogue::built_in().wood("cherry").cloned(),
        way: Some(EarWay::PushedDown),
        axis: None,
        placing: Some(EarPlacing::Shared),
        width: inches(0.375),
        thickness: inches(0.125),
        hole_height: Some(Length::ZERO),
        tail: inches(3.0),
    };
    assert_eq!(pattern.ears, Some(ears));
    let handle = HandlePattern {
        kind: Some(HandleKind::Swing),
        made: Some(HandleMade::Bent),
        axis: None,
        joint: Some(HandleJoint::Slot),
        shows: inches(0.125),
        ends: None,
        curve: Some(BailCurve::ThreeCentred),
        rise: inches(4.0),
        corner: inches(2.0),
        width: inches(0.5),
        thickness: inches(0.25),
        rivet: Catalogue::built_in().material("copper rivet 10").cloned(),
    };
    assert_eq!(pattern.handle, Some(handle));
    let lashing = pattern.lashing.as_ref().expect("it is lashed");
    assert_eq!((lashing.every, lashing.style), (Some(Every::OtherStave), Some(LashingStyle::Crossed)));
    assert_eq!((lashing.tail, pattern.rim.lap), (inches(2.0), inches(3.0)));
    assert_eq!(pattern.rim.hoops, Some(HoopWay::Bent));
    assert_eq!((pattern.pins.every, pattern.finish), (Some(Every::Stave), Finish::StainAndShellac));
    let taper = TaperPattern { from: Length::ZERO, foot: Length::inches(0.125) };
    assert_eq!((pattern.staves.taper, pattern.staves.oval_side), (Some(taper), Some(OvalSide::In)));
    assert_eq!((pattern.base.groove_depth, pattern.base.groove_width), (inches(0.25), inches(0.09375)));
}

#[test]
fn a_handle_brings_ears() {
    let pattern = read_well(&with("[handle]\nkind = \"swing\""));
    assert_eq!(
        (pattern.ears, pattern.handle),
        (
            Some(EarsPattern::default()),
            Some(HandlePattern { kind: Some(HandleKind::Swing), ..HandlePattern::default() })
        )
    );
    let fixed = read_well(&with("[handle]\nkind = \"fixed\""));
    assert_eq!((fixed.ears, fixed.handle.unwrap().kind), (None, Some(HandleKind::Fixed)));
    let knobs = read_well(&with("[handle]\nkind = \"knob\""));
    assert_eq!(knobs.ears, Some(EarsPattern::default()));
    let pattern = read_well(&with("[handle]\nkind = \"none\""));
    assert_eq!((pattern.ears, pattern.handle), (None, None));
}

#[test]
fn an_even_count_is_not_a_reading_error() {
    assert_eq!(read_well(&with("[staves]\ncount = 44")).staves.count, Some(44));
}

#[test]
fn units_apply_to_bare_numbers() {
    let text = "title = \"T\"\nunits = \"mm\"\n[mould]\ngirths = [[\"0\", \"400\"], [\"100\", \"24 in\"]]\n";
    let MouldForm::Girths(girths) = read_well(text).mould.form else { panic!("not girths") };
    assert_eq!(girths[0].girth, Length::mm(400.0));
    assert_eq!(girths[1].girth, Length::inches(24.0));
}

#[test]
fn a_shelf_adds_and_replaces() {
    let shelf = Catalogue::built_in()
        .with_shelf(
            r#"
units = "mm"
[materials."cane fine"]
width = "2.6"
[materials."willow skein"]
kind = "splint"
width = "4"
thickness = "0.8"
[materials."wire"]
kind = "round reed"
diameter = "1.5"
put-up = "roll"
holds = "50 m"
"#,
        )
        .unwrap();
    assert_eq!(shelf.material("cane fine").unwrap().width, Length::mm(2.6));
    assert_eq!(shelf.material("fine cane").unwrap().width, Length::mm(2.6));
    assert_eq!(shelf.material("willow skein").unwrap().thickness, Length::mm(0.8));
    assert_eq!(shelf.material("wire").unwrap().put_up.length, Some(Length::mm(50_000.0)));
    assert_eq!(shelf.materials.len(), Catalogue::built_in().materials.len() + 2);
}

#[test]
fn notes_are_read_in_order() {
    let pattern = read_well(&with(
        r#"
[[note]]
step = "Lashing"
text = """
Shiny side out.

Pull each wrap."""
photo = "photos/lash.JPG"
caption = "The first wrap"
[[note]]
step = "off the mould"
text = "Mine sticks."
"#,
    ));
    let [lashing, off] = pattern.notes.as_slice() else { panic!("{:?}", pattern.notes) };
    assert_eq!((lashing.step, off.step), (StepKind::Lashing, StepKind::OffMould));
    assert_eq!(lashing.text.as_deref(), Some("Shiny side out.\n\nPull each wrap."));
    let photo = lashing.photo.as_ref().unwrap();
    assert_eq!((photo.path.as_str(), photo.caption.as_str()), ("photos/lash.JPG", "The first wrap"));
    assert!(off.photo.is_none());
}

#[test]
fn the_examples_of_the_manual_read() {
    let manual = include_str!("../../../docs/pattern-file.md");
    let whole: Vec<&str> =
        manual.split("```toml\n").skip(1).filter_map(|rest| rest.split("```").next()).collect();
    assert!(!whole.is_empty());
    for example in whole {
        if example.contains("title =") {
            read_well(example);
        } else {
            read_well(&with(example));
        }
    }
}
