//! What is wrong with the weaves of a pattern is said with its place and how to mend it.

use basket::Catalogue;
use basket::pattern::read;

/// Reads a pattern with one course and gives what is wrong: the text it points at, message and help.
#[track_caller]
fn wrong(course: &str) -> (String, String, String) {
    wrong_in(&format!("[weave]\ncourses = [{{ {course} }}]\n"))
}

#[track_caller]
fn wrong_in(sections: &str) -> (String, String, String) {
    let text = format!(
        "title = \"A basket\"\nunits = \"in\"\n[mould]\nbase = \"5\"\nrim = \"7\"\nheight = \"4\"\n{sections}"
    );
    let problems = read(&text, Catalogue::built_in()).expect_err("something is wrong");
    assert_eq!(problems.len(), 1, "{problems:#?}");
    let problem = &problems[0];
    let place = problem.span.clone().map(|span| text[span].to_owned()).unwrap_or_default();
    (place, problem.message.clone(), problem.help.clone().unwrap_or_default())
}

#[track_caller]
fn says(got: &(String, String, String), place: &str, message: &str, help: &str) {
    assert_eq!(got.0, place, "{got:?}");
    assert!(got.1.contains(message), "{got:?}");
    assert!(got.2.contains(help), "{got:?}");
}

const CANE: &str = "weaver = \"cane fine\", rows = 4";

#[test]
fn impossible_floats() {
    for figures in ["0/2", "2/0", "9/1", "1/9", "2", "2/2/2", "-1/2", "two/two", ""] {
        let weave = format!("\"twill {figures}\"");
        let got = wrong(&format!("weave = {weave}, {CANE}"));
        says(&got, &weave, "`weave.courses.weave` cannot be", "");
    }
    says(&wrong(&format!("weave = \"twill 9/1\", {CANE}")), "\"twill 9/1\"", "twill 9/1", "each from 1 to 8");
    says(&wrong(&format!("weave = \"wale 6\", {CANE}")), "\"wale 6\"", "wale 6", "\"wale 3\"");
    says(
        &wrong(&format!("weave = \"twil 2/2\", {CANE}")),
        "\"twil 2/2\"",
        "twil 2/2",
        "did you mean `twill 2/2`?",
    );
    says(&wrong(&format!("weave = \"plain 2\", {CANE}")), "\"plain 2\"", "plain 2", "nothing behind it");
}

#[test]
fn ragged_charts() {
    let ragged = wrong(&format!("weave = \"drawn\", chart = [\"XX..\", \".XX\"], {CANE}"));
    says(&ragged, "\".XX\"", "line 2 of the chart has 3 staves, the first has 4", "same number");
    let sign = wrong(&format!("weave = \"drawn\", chart = [\"XX..\", \".Xy.\"], {CANE}"));
    says(&sign, "\".Xy.\"", "line 2 of the chart, stave 3: `y`", "write X");
    let empty = wrong(&format!("weave = \"drawn\", chart = [], {CANE}"));
    says(&empty, "[]", "the chart is empty", "write a row");
    let blank = wrong(&format!("weave = \"drawn\", chart = [\"\"], {CANE}"));
    says(&blank, "\"\"", "the chart is empty", "write a row");
    let none = wrong(&format!("weave = \"drawn\", {CANE}"));
    says(
        &none,
        &format!("{{ weave = \"drawn\", {CANE} }}"),
        "`weave.courses.chart` is missing",
        "uppermost row first",
    );
    let stray = wrong(&format!("chart = [\"X.\"], {CANE}"));
    says(&stray, "[\"X.\"]", "belongs to a drawn weave", "weave = \"drawn\"");
}

#[test]
fn unknown_colours() {
    says(
        &wrong(&format!("colours = \"bleu\", {CANE}")),
        "\"bleu\"",
        "not a known colour",
        "did you mean `blue`?",
    );
    says(
        &wrong(&format!("colours = [[\"blue\", \"xyz\"]], {CANE}")),
        "\"xyz\"",
        "not a known colour",
        "[colours]",
    );
    let own = wrong_in("[colours]\nsea = \"#12345\"\n");
    says(&own, "\"#12345\"", "`colours.sea` is not a colour", "hexadecimal");
    says(&wrong_in("[colours]\nsea = 5\n"), "5", "`colours.sea` must be a text", "quotes");
    says(
        &wrong_in("[staves]\ncolours = [\"blue\", \"grene\"]\n"),
        "\"grene\"",
        "not a known colour",
        "`green`",
    );
}

#[test]
fn colours_and_weavers_that_do_not_fit() {
    let one = wrong(&format!("colours = [\"blue\", \"red\"], {CANE}"));
    says(
        &one,
        "[\"blue\", \"red\"]",
        "names the colours of 2 weavers",
        "colours = [[\"natural\", \"blue\"]]",
    );
    let wale = wrong(&format!("weave = \"wale 3\", colours = [\"blue\", \"red\"], {CANE}"));
    says(&wale, "[\"blue\", \"red\"]", "names the colours of 2 weavers", "each of the 3 weavers");
    let chase = wrong(
        "weave = \"chase\", weavers = [\"cane fine\", \"cane fine\", \"cane fine\", \"cane fine\"], rows = 4",
    );
    assert!(chase.1.contains("names 4 weavers") && chase.2.contains("takes 3 weavers"), "{chase:?}");
    let both = wrong("weaver = \"cane fine\", weavers = [\"cane fine\"], rows = 4");
    says(&both, "[\"cane fine\"]", "both weaver and weavers", "keep one");
    says(&wrong("weavers = [], rows = 4"), "[]", "names no weaver", "weavers = [");
    says(&wrong("weavers = [\"cane fien\"], rows = 4"), "\"cane fien\"", "not a known material", "cane fine");
}

#[test]
fn keys_of_other_weaves() {
    says(&wrong(&format!("band = 4, {CANE}")), "4", "belongs to a reversed twill", "another weave");
    says(&wrong(&format!("lean = \"left\", {CANE}")), "\"left\"", "belongs to a twill", "another weave");
    says(
        &wrong(&format!("weave = \"chase\", step-up = true, {CANE}")),
        "true",
        "begin level",
        "another weave",
    );
    says(&wrong(&format!("step-up = \"yes\", {CANE}")), "\"yes\"", "cannot be a text", "true or false");
    says(
        &wrong(&format!("weave = \"skip one\", way = \"row by row\", {CANE}")),
        "\"row by row\"",
        "not woven row by row",
        "take it out",
    );
    says(&wrong(&format!("weave = \"pairing\", doubled = 2, {CANE}")), "2", "one weaver", "another weave");
    says(
        &wrong(&format!("way = \"row-by-row\", {CANE}")),
        "\"row-by-row\"",
        "`weave.courses.way`",
        "did you mean `row by row`?",
    );
}

#[test]
fn counts_that_cannot_be() {
    says(
        &wrong("weaver = \"cane fine\", rows = 0"),
        "0",
        "`weave.courses.rows` cannot be 0",
        "from 1 to 2000",
    );
    says(&wrong(&format!("start = 0, {CANE}")), "0", "`weave.courses.start` cannot be 0", "from 1 to 999");
    says(
        &wrong("weaver = \"cane fine\", until = \"height 9\""),
        "\"height 9\"",
        "not on the mould",
        "between its base",
    );
    says(
        &wrong(&format!("packing = \"110 %\", spaced = \"1/8\", {CANE}")),
        "\"1/8\"",
        "both packing and spaced",
        "keep one",
    );
    says(&wrong(&format!("strands = [\"9\", \"0\"], {CANE}")), "0", "`weave.courses.strands`", "length");
}

#[test]
fn steps_that_cannot_be() {
    let level = format!("way = \"row by row\", {CANE}");
    says(
        &wrong(&format!("step = 2, weave = \"plain\", {level}")),
        "2",
        "belongs to a twill",
        "another weave",
    );
    says(&wrong(&format!("step = 2, weave = \"twill 3/3\", {CANE}")), "2", "row by row", "take it out");
    says(
        &wrong(&format!("step = 2, weave = \"twill 2/2\", {level}")),
        "2",
        "half the repeat of 4",
        "at most 1",
    );
    says(&wrong(&format!("step = 0, weave = \"twill 3/3\", {level}")), "0", "cannot be 0", "from 1");
}
