//! The files for other programs.

mod common;

use std::collections::BTreeSet;

use basket::pattern::Units;
use common::{FIXED, STOPPED, basket, packet_of, text};
use serde_json::Value as Json;
use sheets::Paper;

const MANUAL: &str = include_str!("../../../docs/basket-json.md");

fn json(pattern: &str) -> Json {
    let packet = packet_of(pattern, Paper::Letter, Units::Inches);
    serde_json::from_str(text(&packet, "basket.json")).expect("it is JSON")
}

/// Key paths of the top two levels; a list counts through its first entry: `findings[].code`.
fn paths(file: &Json) -> BTreeSet<String> {
    let mut paths = BTreeSet::new();
    for (key, value) in file.as_object().expect("an object") {
        let (prefix, inner) = match value {
            Json::Object(object) => (format!("{key}."), Some(object)),
            Json::Array(list) => (format!("{key}[]."), list.first().and_then(Json::as_object)),
            _ => (String::new(), None),
        };
        match inner {
            Some(inner) => paths.extend(inner.keys().map(|name| format!("{prefix}{name}"))),
            None => drop(paths.insert(key.clone())),
        }
    }
    paths
}

/// Key paths in the first column of the manual's tables.
fn documented() -> BTreeSet<String> {
    let cells = MANUAL.lines().filter_map(|line| line.strip_prefix("| `")?.split_once('`'));
    cells.map(|(path, _)| path.to_owned()).filter(|path| path.matches('.').count() < 2).collect()
}

#[test]
fn every_key_is_documented_and_every_documented_key_exists() {
    let mut found = paths(&json(FIXED));
    found.extend(paths(&json(STOPPED)));
    for list in ["findings", "choices", "notes"] {
        found.remove(list);
    }
    assert_eq!(documented(), found);
}

#[test]
fn nothing_of_the_basket_is_left_out() {
    let file = json(FIXED);
    let whole = serde_json::to_value(basket(FIXED)).expect("it serializes");
    for key in whole.as_object().expect("an object").keys() {
        assert!(file.get(key).is_some(), "`{key}` is missing");
    }
}

#[test]
fn keys_that_other_programs_rely_on() {
    let file = json(STOPPED);
    assert_eq!(file["format"], "stavewright-basket");
    assert_eq!(file["version"], 1);
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
        let packet = packet_of(pattern, Paper::Letter, Units::Inches);
        for name in ["basket.json", "cuts.json"] {
            for id in ["sheet-", "cut-", "step-", "tool-", "caution-", "choice-", "finding-"] {
                let text = text(&packet, name);
                let unsaid = |line: &&str| line.contains(&format!("\"{id}")) && !line.contains("\"step-up\"");
                let left: Vec<_> = text.lines().filter(unsaid).collect();
                assert!(left.is_empty(), "{name}: {left:?}");
            }
        }
    }
}

#[test]
fn cut_list_as_table() {
    let packet = packet_of(FIXED, Paper::Letter, Units::Inches);
    insta::assert_snapshot!("cuts_csv", text(&packet, "cuts.csv"));
    let json: Json = serde_json::from_str(text(&packet, "cuts.json")).expect("it is JSON");
    let cuts = json["cuts"].as_array().expect("a list");
    assert_eq!(cuts.len(), basket(FIXED).cuts.len());
    let millimetres = cuts[0]["width_mm"].as_f64().expect("the base has a diameter");
    let inches = cuts[0]["width_in"].as_f64().expect("the base has a diameter");
    assert!((millimetres / 25.4 - inches).abs() < 0.001, "{millimetres} mm, {inches} in");
}
