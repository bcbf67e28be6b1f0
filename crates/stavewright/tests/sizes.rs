//! `stavewright sizes`: a nest from one pattern, from the command to patterns that are read again.

mod common;

use std::fs;

use common::{fits, names, pattern, room, run, stavewright};

/// The nest of the scenario: three Ferry egg baskets.
const NEST: [&str; 3] = ["5", "6 5/8", "8 1/4"];

#[test]
fn a_nest_of_three_is_drafted_end_to_end() {
    let room = room();
    let mut sizes = stavewright(room.path());
    let said = run(sizes.arg("sizes").arg(pattern("ferry-egg-basket.toml")).args([
        "--across",
        &NEST.join(","),
        "--out",
        "nest",
    ]));
    assert_eq!(said.code, 0, "{}{}", said.out, said.err);
    fits(&said.out);
    for part in
        ["5 in in 6 5/8 in", "6 5/8 in in 8 1/4 in", "To cut, for all together", "keeps its proportion"]
    {
        assert!(said.out.contains(part), "{part} is not told:\n{}", said.out);
    }
    let files = names(&room.path().join("nest"));
    assert_eq!(files, ["5-in.toml", "6-5-8-in.toml", "8-1-4-in.toml", "sizes.pdf"]);
    let mut widths = Vec::new();
    for file in files.iter().filter(|file| *file != "sizes.pdf") {
        let path = room.path().join("nest").join(file);
        let text = fs::read_to_string(&path).unwrap();
        assert!(text.contains("# Fine cane all the way"), "the comments of {file} are lost:\n{text}");
        let mut draft = stavewright(room.path());
        let said =
            run(draft.arg("draft").arg(&path).args(["--no-sheets", "--out", file.trim_end_matches(".toml")]));
        assert_eq!(said.code, 0, "{file}: {}{}", said.out, said.err);
        let packet = room.path().join(file.trim_end_matches(".toml")).join("basket.json");
        let basket: serde_json::Value = serde_json::from_str(&fs::read_to_string(packet).unwrap()).unwrap();
        assert!(basket["title"].as_str().unwrap().starts_with("Ferry egg basket, "), "{}", basket["title"]);
        widths.push(basket["staves"]["width_mm"].as_f64().unwrap());
    }
    // Larger baskets have staves that are no narrower, so that the set looks related.
    assert!(widths.is_sorted(), "{widths:?}");
    let page = fs::read(room.path().join("nest/sizes.pdf")).unwrap();
    assert!(page.starts_with(b"%PDF-"));
}

#[test]
fn a_size_that_does_not_go_in_says_which_would() {
    let room = room();
    let sizes = |across: &str, out: &str| {
        let mut command = stavewright(room.path());
        run(command
            .arg("sizes")
            .arg(pattern("ferry-egg-basket.toml"))
            .args(["--across", across, "--out", out]))
    };
    let said = sizes("5,5 1/2", "tight");
    assert_eq!(said.code, 1, "{}{}", said.out, said.err);
    let told = said.out.split_whitespace().collect::<Vec<_>>().join(" ");
    let least = told.split("Make the outer mould at least ").nth(1).expect("no size is named");
    let least = least.split(" in across").next().unwrap();
    let said = sizes(&format!("5,{least}"), "mended");
    assert_eq!(said.code, 0, "{least}: {}{}", said.out, said.err);
}

#[test]
fn moulds_of_other_patterns_serve_too() {
    let room = room();
    let mut command = stavewright(room.path());
    let said = run(command.arg("sizes").arg(pattern("ferry-egg-basket.toml")).args([
        "--mould".into(),
        pattern("ferry-egg-basket.toml"),
        "--mould".into(),
        pattern("channel-marker.toml"),
        "--out".into(),
        "both".into(),
    ]));
    assert!(said.code < 2, "{}", said.err);
    assert!(said.out.contains("another mould"), "{}", said.out);
    let read = |name: &str| fs::read_to_string(room.path().join("both").join(name)).unwrap();
    let written = names(&room.path().join("both"));
    let largest = written.iter().rfind(|name| *name != "sizes.pdf").unwrap();
    let theirs = fs::read_to_string(pattern("channel-marker.toml")).unwrap();
    let shape = theirs
        .lines()
        .find(|line| line.trim_start().starts_with("girths") || line.starts_with("rim ="))
        .unwrap();
    assert!(read(largest).contains(shape), "{}", read(largest));
}

#[test]
fn sizes_that_make_no_sense_are_refused() {
    let room = room();
    let sizes = |arguments: &[&str]| {
        let mut command = stavewright(room.path());
        run(command.arg("sizes").arg(pattern("ferry-egg-basket.toml")).args(arguments))
    };
    let long = vec!["5"; 13].join(",");
    for (arguments, told) in [
        (["--across", "5,five"], "--across five"),
        (["--across", "5,1/4"], "at least 20 mm"),
        (["--across", "5,5.01"], "two sizes of 5 in"),
        (["--across", "900 in"], "no basket has such a size"),
        (["--across", &long], "at most 12"),
        (["--mould", "no-such-file.toml"], "no-such-file.toml"),
    ] {
        let said = sizes(&arguments);
        assert_eq!(said.code, 2, "{arguments:?}");
        assert!(said.err.contains(told), "{arguments:?}: {}", said.err);
    }
    fs::create_dir(room.path().join("there")).unwrap();
    let said = sizes(&["--across", "5", "--out", "there"]);
    assert!(said.code == 2 && said.err.contains("already"), "{}", said.err);
}
