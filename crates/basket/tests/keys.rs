//! What is declared of the keys of a pattern is true of reading, of what is chosen, and of the starter.

use std::collections::{BTreeMap, BTreeSet};

use basket::message::Value;
use basket::pattern::keys::{self, Declared, Group, Takes, Usual};
use basket::pattern::{STARTER, read};
use basket::{Catalogue, Draft, Hand, Pattern};

fn read_well(text: &str) -> Pattern {
    read(text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{text}\n{problems:#?}"))
}

/// A small sound pattern in which a key stands with its example, and with what it needs beside it.
fn with_example(key: &dyn Declared) -> String {
    let line = format!("{} = {}", key.name(), key.example());
    let head = |mould: &str| format!("title = \"T\"\nunits = \"in\"\nmould = {{ {mould} }}\n");
    let drawn = head(r#"base = "5", rim = "8", height = "4""#);
    let within = key.path().rsplit_once('.').map_or("", |(section, _)| section);
    match (within, key.name()) {
        ("", "title") => format!("{line}\nmould = {{ base = \"5 in\", rim = \"8 in\", height = \"4 in\" }}"),
        ("", "mould" | "units") => format!(
            "title = \"T\"\n{line}\n{}",
            if key.name() == "units" { "mould = { base = \"5\", rim = \"8\", height = \"4\" }" } else { "" }
        ),
        ("", "finish-on") => format!("{drawn}{line}\n[handle]\n"),
        ("", _) => format!("{drawn}{line}"),
        ("mould", "girths") => head(&line),
        ("mould", "base" | "rim" | "height") => {
            let others: Vec<String> = [("base", "5"), ("rim", "8"), ("height", "4")]
                .iter()
                .filter(|(name, _)| *name != key.name())
                .map(|(name, length)| format!("{name} = \"{length}\""))
                .collect();
            head(&format!("{line}, {}", others.join(", ")))
        }
        ("mould", name @ ("length" | "width" | "corner" | "fullness" | "rays" | "levels" | "widths")) => {
            let shape = match name {
                "corner" => "rectangle",
                "rays" => "traced",
                _ => "oval",
            };
            let size = |(key, length): &(&str, &str)| {
                (*key != name && name != "rays").then(|| format!("{key} = \"{length}\", "))
            };
            let sizes: String = [("length", "9"), ("width", "6")].iter().filter_map(size).collect();
            head(&format!("shape = \"{shape}\", {sizes}{line}, rim = \"10\", height = \"4\""))
        }
        ("mould", _) => head(&format!("{line}, base = \"5\", rim = \"8\", height = \"4\"")),
        ("base.groove", _) => format!("{drawn}[base]\ngroove = {{ {line} }}"),
        ("ears", "wood") => format!("{drawn}[ears]\nmaterial = \"wood\"\n{line}"),
        ("staves.taper", "from") => format!("{drawn}[staves]\ntaper = {{ {line}, foot = \"1/8\" }}"),
        ("staves.taper", _) => format!("{drawn}[staves]\ntaper = {{ {line}, from = \"1\" }}"),
        ("weave.courses", name) => {
            let weave = match name {
                "weave" => "",
                "weavers" => "weave = \"slew\"",
                "lean" => "weave = \"twill 2/2\"",
                "step" => "weave = \"twill 3/3\"\nway = \"row by row\"",
                "band" => "weave = \"reversed twill 2/2\"",
                "chart" | "chart-file" => "weave = \"drawn\"",
                _ => "weave = \"plain\"",
            };
            let weaver = if ["weaver", "weavers"].contains(&name) { "" } else { "weaver = \"cane fine\"" };
            let end = if ["rows", "until"].contains(&name) { "" } else { "rows = 4" };
            format!("{drawn}[[weave.courses]]\n{weave}\n{weaver}\n{end}\n{line}")
        }
        ("note", name) => {
            let step = if name == "step" { "" } else { "step = \"cut\"\n" };
            let text = if name == "text" { "" } else { "text = \"Slowly.\"\n" };
            let photo = match name {
                "photo" => "caption = \"A stave\"\n",
                "caption" => "photo = \"stave.jpg\"\n",
                _ => "",
            };
            format!("{drawn}[[note]]\n{step}{text}{photo}{line}")
        }
        ("materials", name) => {
            let like = if name == "like" { "" } else { "like = \"cane fine\"\n" };
            format!("{drawn}[materials.mine]\n{like}{line}")
        }
        (section @ ("ears" | "handle"), "axis") => {
            let shape = r#"shape = "oval", length = "9", width = "6""#;
            let kind = if section == "handle" { "kind = \"fixed\"\n" } else { "" };
            let mould = head(&format!("{shape}, rim = \"10\", height = \"4\""));
            format!("{mould}[{section}]\n{kind}{line}")
        }
        ("handle", "ends") => format!("{drawn}[handle]\nkind = \"fixed\"\n{line}"),
        ("handle", "corner" | "rise") => format!("{drawn}[handle]\ncurve = \"three-centred\"\n{line}"),
        (section, _) => format!("{drawn}[{section}]\n{line}"),
    }
}

#[test]
fn every_example_reads() {
    for key in keys::every() {
        read_well(&with_example(key));
    }
}

#[test]
fn names_are_unique_and_each_leads_to_its_key() {
    let every = keys::every();
    let paths: BTreeSet<&str> = every.iter().map(|key| key.path()).collect();
    assert_eq!(paths.len(), every.len());
    assert!(every.len() > 90, "{}", every.len());
    for path in paths {
        assert_eq!(keys::find(path).map(Declared::path), Some(path));
    }
    assert_eq!(keys::find("weave.courses[2].rows").map(Declared::path), Some("weave.courses.rows"));
    assert!(keys::find("weave.courses[2].row").is_none() && keys::find("rows").is_none());
    assert_eq!(keys::weave::in_course(2, &keys::course::ROWS), "weave.courses[2].rows");
}

#[test]
fn every_section_holds_its_own_keys() {
    for key in keys::every() {
        for inner in key.takes().contents().keys {
            assert_eq!(inner.path(), format!("{}.{}", key.path(), inner.name()));
        }
        for either in key.takes().contents().either {
            let names = key.takes().contents().keys.iter().map(|key| key.path()).collect::<Vec<_>>();
            assert!(either.ways.iter().copied().flatten().all(|way| names.contains(&way.path())));
        }
    }
}

/// Keys that are edited otherwise than in a field of their own.
#[test]
fn all_but_lists_have_a_field_in_making_order() {
    let fields = keys::fields();
    let paths: BTreeSet<&str> = fields.iter().map(|field| field.key.path()).collect();
    let without: Vec<&str> = keys::every()
        .iter()
        .filter(|key| matches!(key.takes(), Takes::Section(_)).eq(&false) && !paths.contains(key.path()))
        .map(|key| key.path())
        .filter(|path| {
            !["weave.courses.", "note.", "sale.", "materials."].iter().any(|list| path.starts_with(list))
        })
        .collect();
    assert_eq!(without, ["mould.girths", "mould.widths", "weave.courses", "note", "colours", "materials"]);
    let rim = fields.iter().filter(|field| field.group == Group::Rim).map(|field| field.key.path());
    assert_eq!(
        rim.collect::<Vec<_>>(),
        [
            "rim.hoops",
            "rim.stock",
            "rim.inner",
            "rim.lap",
            "filler",
            "filler.stock",
            "pins.stock",
            "pins.every"
        ]
    );
}

const BARE: &str = "title = \"Bare\"\nmould = { base = \"5 in\", rim = \"8 in\", height = \"4 in\", side = \"bowl\" }\n\
                    [ears]\n[handle]\n";

fn draft(text: &str) -> Draft {
    Draft::of(read_well(text), Catalogue::built_in(), &Hand::USUAL)
}

#[test]
fn what_is_usual_is_what_is_chosen() {
    let chosen: BTreeMap<&str, Value> =
        draft(BARE).basket.choices.into_iter().map(|choice| (choice.key, choice.value)).collect();
    let mut compared = Vec::new();
    for key in keys::every() {
        if let (Usual::Constant(usual), Some(value)) = (key.usual(), chosen.get(key.path())) {
            assert_eq!(*value, usual, "{}", key.path());
            compared.push(key.path());
        }
    }
    let wanted = [
        "base.thickness",
        "base.groove.depth",
        "base.screw",
        "base.sealed",
        "staves.oval",
        "weave.first-face",
        "rim.hoops",
        "lashing.style",
        "lashing.tail",
        "ears.material",
        "ears.way",
        "ears.placing",
        "ears.hole",
    ];
    assert_eq!(compared, wanted);
    // What is not told as a choice, because it is never anything else.
    assert_eq!(keys::course::BAND.constant(), Some(basket::weave::BAND));
    assert_eq!(keys::weave::FLOAT_STAVES.constant(), Some(basket::weave::FLOAT_STAVES));
    assert_eq!(keys::weave::FLOAT_ROWS.constant(), Some(basket::weave::FLOAT_ROWS));
}

/// Writing down what is usual changes nothing but that it is written.
#[test]
fn usual_words_are_what_reading_takes() {
    let with = |line: &str| read_well(&format!("units = \"in\"\n{line}\n{BARE}"));
    let bare = with("");
    let usual = |key: &dyn Declared| match key.usual() {
        Usual::Constant(Value::Name(word)) => format!("{} = \"{word}\"", key.name()),
        other => panic!("{}: {other:?}", key.path()),
    };
    assert_eq!(with(&usual(&keys::FINISH)), bare);
    let in_mould = |text: &str| read_well(&BARE.replace("side = \"bowl\"", text));
    let open = in_mould("shape = \"round\"");
    assert_eq!(in_mould(&usual(&keys::mould::SIDE)), open);
    assert_eq!(in_mould(&usual(&keys::mould::SHAPE)), open);
    let units = read_well(BARE).units;
    assert_eq!(read_well(&format!("{}\n{BARE}", usual(&keys::UNITS))).units, units);
}

#[test]
fn choices_and_remedies_name_keys_that_there_are() {
    let troubled = "title = \"Bad\"\nunits = \"in\"\n[mould]\nbase = \"5\"\nrim = \"8\"\nheight = \"4\"\nside = \"bowl\"\n\
        [base]\ndiameter = \"5 1/2\"\ngroove = { depth = \"1/8\", width = \"1/32\" }\n\
        [staves]\ncount = 120\nlength = \"3\"\ntaper = { from = \"2\", foot = \"1/32\" }\n\
        [weave]\ncourses = [{ weave = \"twill 2/2\", weaver = \"cane common\", rows = 200 }]\n\
        [rim]\nlap = \"1/2\"\n[filler]\nstock = \"round reed 0\"\n[lashing]\ntail = \"1/2\"\n\
        [ears]\nmaterial = \"bone\"\nplacing = \"on-staves\"\nwidth = \"2\"\nhole = \"1/8\"\n[handle]\n";
    let drafts: Vec<Draft> = [BARE, troubled].into_iter().map(draft).collect();
    let choices = drafts.iter().flat_map(|draft| &draft.basket.choices).map(|choice| choice.key.to_owned());
    let findings = drafts.iter().flat_map(|draft| &draft.findings);
    let remedies = findings.flat_map(|finding| &finding.remedies).map(|remedy| remedy.key.clone());
    let named: BTreeSet<String> = choices.chain(remedies).collect();
    assert!(named.len() > 30, "{named:?}");
    let unknown: Vec<&String> = named.iter().filter(|key| keys::find(key).is_none()).collect();
    assert!(unknown.is_empty(), "{unknown:?}");
}

/// The starter shows each section that makes a part of the basket, with keys that there are.
#[test]
fn the_starter_shows_every_part() {
    let shown = |name: &str| {
        STARTER.lines().any(|line| {
            let line = line.trim_start_matches("# ");
            line.starts_with(&format!("[{name}")) || line.starts_with(&format!("{name} ="))
        })
    };
    let absent: Vec<&str> = keys::ALL.iter().map(|key| key.name()).filter(|name| !shown(name)).collect();
    assert_eq!(
        absent,
        [
            "language",
            "level",
            "finish",
            "finish-on",
            "signature",
            "ready",
            "filler",
            "pins",
            "lid",
            "note",
            "sale",
            "colours"
        ]
    );
}
