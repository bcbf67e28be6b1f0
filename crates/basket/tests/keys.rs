//! What is declared of the keys of a pattern is true of reading, of what is chosen, and of the starter.

use std::collections::BTreeSet;

use basket::pattern::keys::{self, Declared, Takes, Usual};
use basket::pattern::{Finish, Language, Outline, STARTER, Units, read};
use basket::{Catalogue, Length, Pattern};

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
        ("mould", _) => head(&format!("{line}, base = \"5\", rim = \"8\", height = \"4\"")),
        ("base.groove", _) => format!("{drawn}[base]\ngroove = {{ {line} }}"),
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
