//! The files for other programs.

use std::collections::BTreeSet;
use std::path::Path;

use basket::pattern::Units;
use boon::{Compiler, Schemas};
use serde_json::Value as Json;
use sheets::{PacketFile, basket_json, data};

use crate::common::{FIXED, HARBOUR, STOPPED, draft, file, text, words};

const MANUAL: &str = include_str!("../../../../docs/basket-json.md");
/// The example patterns.
const EXAMPLES: [&str; 5] = [
    include_str!("../../../../patterns/harbour-bread-basket.toml"),
    include_str!("../../../../patterns/ferry-egg-basket.toml"),
    include_str!("../../../../patterns/channel-marker.toml"),
    FIXED,
    STOPPED,
];

fn json(pattern: &str) -> Json {
    serde_json::to_value(basket_json(&draft(pattern), &words(Units::Inches))).expect("it is JSON")
}

fn data_of(pattern: &str) -> Vec<PacketFile> {
    data(&draft(pattern), &words(Units::Inches)).expect("the data can be written")
}

fn schema() -> Json {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/basket.schema.json");
    let text = std::fs::read_to_string(file).expect("the schema is published");
    serde_json::from_str(&text).expect("it is JSON")
}

/// Key paths of a schema, such as `findings[].code`; the lid has the keys of the body.
fn paths(schema: &Json, root: &Json, prefix: &str, found: &mut BTreeSet<String>) {
    if let Some(name) = schema["$ref"].as_str() {
        return paths(root.pointer(&name[1..]).expect("a definition"), root, prefix, found);
    }
    // Either the one or null; a handle is one of several kinds.
    let kinds = schema["oneOf"].as_array().filter(|_| prefix == "handle.");
    for either in schema["anyOf"].as_array().into_iter().chain(kinds).flatten() {
        paths(either, root, prefix, found);
    }
    if schema["items"].is_object() {
        paths(&schema["items"], root, &format!("{}[].", prefix.trim_end_matches('.')), found);
    }
    for (key, inner) in schema["properties"].as_object().into_iter().flatten() {
        found.insert(format!("{prefix}{key}"));
        // A lid is told as a body is, the ends of a fixed handle as ears are.
        if key != "lid" && key != "ends" {
            paths(inner, root, &format!("{prefix}{key}."), found);
        }
    }
}

/// Key paths in the first column of the manual's tables.
fn documented() -> BTreeSet<String> {
    let (_, tables) = MANUAL.split_once("## The file").expect("the tables");
    let cells = tables.lines().filter_map(|line| line.strip_prefix("| `")?.split_once('`'));
    cells.map(|(path, _)| path.to_owned()).collect()
}

#[test]
fn every_key_is_documented_and_every_documented_key_exists() {
    let schema = schema();
    let mut found = BTreeSet::new();
    paths(&schema, &schema, "", &mut found);
    let documented = documented();
    let missing: Vec<_> = found.difference(&documented).collect();
    let stale: Vec<_> = documented.difference(&found).collect();
    assert!(missing.is_empty() && stale.is_empty(), "missing: {missing:#?}\nstale: {stale:#?}");
}

#[test]
fn examples_are_as_the_schema_says() {
    let (mut schemas, mut compiler) = (Schemas::new(), Compiler::new());
    let schema = schema();
    compiler.add_resource("basket.schema.json", schema).expect("a schema");
    let index = compiler.compile("basket.schema.json", &mut schemas).expect("a sound schema");
    for pattern in EXAMPLES {
        let file = json(pattern);
        if let Err(error) = schemas.validate(&file, index) {
            panic!("{}: {error:#}", file["title"]);
        }
        let mut without = file.clone();
        without["staves"].as_object_mut().expect("an object").remove("count");
        assert!(schemas.validate(&without, index).is_err(), "a key that is missing is not noticed");
    }
}

#[test]
fn keys_that_other_programs_rely_on() {
    let file = json(STOPPED);
    assert_eq!(file["format"], "stavewright-basket");
    assert_eq!(file["version"], 3);
    assert_eq!((&file["of"], &file["lid"]), (&Json::from("body"), &Json::Null));
    for pointer in [
        "/staves/count",
        "/staves/width_mm",
        "/staves/length_mm",
        "/staves/gap_rim_mm",
        "/weave/rows",
        "/weave/length_mm",
        "/rim/outer/cut_mm",
        "/rim/inner/cut_mm",
        "/lashing/length_mm",
    ] {
        assert!(file.pointer(pointer).is_some_and(Json::is_number), "{pointer}");
    }
    assert!(file["staves"]["stock"].is_string());
    let stop = &file["findings"][0];
    assert_eq!(stop["grade"], "stop");
    for key in ["code", "remedy", "why"] {
        assert!(stop[key].as_str().is_some_and(|text| !text.is_empty()), "{key}: {stop}");
    }
    for key in ["where", "measured", "limit"] {
        assert!(stop[key].is_object(), "{key}: {stop}");
    }
    assert!(stop["remedy"].as_str().is_some_and(|remedy| remedy.contains(" = ")), "{stop}");
}

#[test]
fn no_sentence_is_missing() {
    for pattern in [FIXED, STOPPED] {
        let files = data_of(pattern);
        for name in ["basket.json", "cuts.json"] {
            for id in ["sheet-", "cut-", "step-", "tool-", "caution-", "choice-", "finding-"] {
                let text = text(&files, name);
                let unsaid = |line: &&str| line.contains(&format!("\"{id}")) && !line.contains("\"step-up\"");
                let left: Vec<_> = text.lines().filter(unsaid).collect();
                assert!(left.is_empty(), "{name}: {left:?}");
            }
        }
    }
}

/// What a program does with a cell of `cuts.csv`, as the manual says.
fn exact(cell: &str) -> &str {
    cell.strip_prefix('\'').unwrap_or(cell)
}

#[test]
fn no_cell_of_the_cut_list_is_a_formula_and_each_says_what_it_said() {
    // The first signs that OWASP's page on CSV injection names, and the sign that guards against them.
    let names = ["=1+1", "+49", "-reed", "@SUM(A1)", "'tis", "''", "=cmd|' /C calc'!A0", "\u{ff1d}1"];
    let mut tried = 0;
    for name in names {
        let pattern = HARBOUR.replace(
            "[staves]\nstock = \"flat oval reed 1/4 in\"",
            &format!(
                "[materials.\"{name}\"]\nlike = \"flat oval reed 1/4 in\"\n\n[staves]\nstock = \"{name}\""
            ),
        );
        let files = data_of(&pattern);
        let json: Json = serde_json::from_str(text(&files, "cuts.json")).expect("it is JSON");
        let mut table = csv::Reader::from_reader(file(&files, "cuts.csv"));
        let header = table.headers().expect("a header").clone();
        for (record, cut) in table.records().zip(json["cuts"].as_array().expect("a list")) {
            for (key, cell) in header.iter().zip(&record.expect("a row")) {
                assert!(
                    !cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '\u{ff1d}']),
                    "{key}: {cell}"
                );
                match &cut[key] {
                    Json::String(said) => assert_eq!(exact(cell), said, "{key}"),
                    Json::Number(number) => assert_eq!(cell.parse().ok(), number.as_f64(), "{key}"),
                    nothing => assert!(nothing.is_null() && cell.is_empty(), "{key}: {nothing} {cell}"),
                }
                tried += usize::from(exact(cell) == name);
            }
        }
    }
    assert!(tried >= names.len(), "each name stands in the list: {tried}");
}

#[test]
fn cut_list_as_table() {
    let files = data_of(FIXED);
    insta::assert_snapshot!("cuts_csv", text(&files, "cuts.csv"));
    let json: Json = serde_json::from_str(text(&files, "cuts.json")).expect("it is JSON");
    let cuts = json["cuts"].as_array().expect("a list");
    assert_eq!(cuts.len(), draft(FIXED).cuts.len());
    let millimetres = cuts[0]["width_mm"].as_f64().expect("the base has a diameter");
    let inches = cuts[0]["width_in"].as_f64().expect("the base has a diameter");
    assert!((millimetres / 25.4 - inches).abs() < 0.001, "{millimetres} mm, {inches} in");
}

#[test]
fn colours_have_a_column_of_their_own() {
    let dyed = FIXED.replace(
        "weaver = \"cane fine-fine\", rows = 4",
        "weaver = \"cane fine-fine\", rows = 4, colours = \"blue\"",
    );
    assert_ne!(dyed, FIXED);
    let file = json(&dyed);
    let weavers: Vec<&Json> =
        file["cuts"].as_array().expect("a list").iter().filter(|cut| cut["kind"] == "course").collect();
    assert_eq!(weavers[0]["colour"], "blue");
    assert_eq!((&weavers[0]["number"], &weavers[1]["number"]), (&Json::from(1), &Json::from(2)));
    assert_eq!((&weavers[1]["colour"], &weavers[0]["shape"]), (&Json::Null, &Json::from("")));
}
