//! What is published of the pattern file says what is declared of its keys: the schema for editors and the
//! tables of the manual. `STAVEWRIGHT_UPDATE=1 cargo test -p words --test manual` writes them anew.

use std::path::{Path, PathBuf};

use basket::pattern::keys::{self, Declared, Takes};
use basket::pattern::{STARTER, Units};
use boon::{Compiler, Draft, Schemas};
use serde_json::Value;
use words::{Language, Words};

/// Set to write the files anew.
const UPDATE: &str = "STAVEWRIGHT_UPDATE";

fn file(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").join(name)
}

fn text(name: &str) -> String {
    std::fs::read_to_string(file(name)).unwrap_or_default()
}

fn assert_kept(name: &str, generated: &str) {
    if std::env::var_os(UPDATE).is_some() {
        std::fs::write(file(name), generated).unwrap();
    }
    assert!(text(name) == generated, "{name} is not what is declared; write it anew with {UPDATE}=1");
}

fn english() -> Words {
    Words::new(Language::English, Units::Inches)
}

#[test]
fn the_published_schema_has_not_drifted() {
    assert_kept("docs/pattern.schema.json", &english().schema());
}

const BEGIN: &str = "<!-- keys: ";
const END: &str = "<!-- end of keys -->";

#[test]
fn the_tables_of_the_manual_have_not_drifted() {
    let name = "docs/pattern-file.md";
    let manual = text(name);
    let mut parts = manual.split(BEGIN);
    let mut generated = parts.next().unwrap_or_default().to_owned();
    let mut tables = 0;
    for part in parts {
        let (marked, rest) = part.split_once(END).expect("each table has an end");
        let section = marked.split_once(" -->").expect("a name").0;
        generated.extend([BEGIN, section, " -->\n", &table(section), END, rest]);
        tables += 1;
    }
    let sections = keys::every().iter().filter(|key| !key.takes().contents().keys.is_empty()).count();
    // The groove and the taper stand in the tables of their sections.
    assert_eq!(tables, sections + 1 - 2);
    assert_kept(name, &generated);
}

fn table(section: &str) -> String {
    let keys = match keys::find(section) {
        Some(key) => key.takes().contents().keys,
        None => keys::ALL,
    };
    let rows: String = keys.iter().map(|key| rows(*key, section == "the whole file", "")).collect();
    format!("| key | what it is | takes | left out | example |\n|---|---|---|---|---|\n{rows}")
}

/// The row of a key, and below it those of a section in braces.
fn rows(key: &dyn Declared, at_top: bool, before: &str) -> String {
    let words = english();
    let (said, name) = (words.key(key), format!("{before}{}", key.name()));
    let takes = key.takes();
    let example = match takes {
        Takes::Section(_) | Takes::Part(_, None) | Takes::Named(_) | Takes::OwnColours(_) if at_top => {
            format!("[{name}]")
        }
        Takes::Sections(_) if at_top => format!("[[{name}]]"),
        _ => format!("{} = {}", key.name(), key.example()),
    };
    let row = format!("| `{name}` | {} | {} | {} | `{example}` |\n", said.about, said.takes, said.left_out);
    let inner = match takes {
        Takes::Section(contents) if !at_top => contents.keys,
        _ => &[],
    };
    row + &inner.iter().map(|key| rows(*key, false, &format!("{name}."))).collect::<String>()
}

fn json(toml: &str) -> Value {
    let table: toml::Table = toml.parse().unwrap_or_else(|error| panic!("{error}\n{toml}"));
    serde_json::to_value(table).unwrap()
}

/// What a schema finds in a value; the schema itself is held against draft 7 first.
fn faults_by(schema: Value, value: &Value) -> Option<String> {
    let mut compiler = Compiler::new();
    compiler.set_default_draft(Draft::V7);
    compiler.add_resource("pattern.json", schema).unwrap();
    let mut schemas = Schemas::new();
    let index = compiler.compile("pattern.json", &mut schemas).unwrap_or_else(|error| panic!("{error:#}"));
    schemas.validate(value, index).err().map(|error| format!("{error:#}"))
}

fn schema(language: Language) -> Value {
    serde_json::from_str(&Words::new(language, Units::Inches).schema()).unwrap()
}

fn faults(toml: &str) -> Option<String> {
    faults_by(schema(Language::English), &json(toml))
}

#[track_caller]
fn passes(toml: &str) {
    if let Some(faults) = faults(toml) {
        panic!("{faults}\n{toml}");
    }
}

#[test]
fn the_schema_is_one_in_every_language() {
    for language in Language::ALL {
        assert_eq!(faults_by(schema(*language), &json(STARTER)), None, "{language:?}");
    }
}

/// All properties of a schema and of those within it.
fn properties(schema: &Value) -> Vec<&Value> {
    let own = schema["properties"].as_object().into_iter().flat_map(|own| own.values());
    let inner = ["items", "additionalProperties"].into_iter().filter_map(|inner| schema.get(inner));
    let ways = schema["anyOf"].as_array().into_iter().flatten();
    let within = inner.chain(ways).flat_map(properties);
    own.flat_map(|own| std::iter::once(own).chain(properties(own))).chain(within).collect()
}

#[test]
fn what_is_usual_and_what_is_an_example_pass() {
    let schema = schema(Language::English);
    let properties = properties(&schema);
    assert_eq!(properties.len(), keys::every().len());
    for property in properties {
        let examples = property["examples"].as_array().into_iter().flatten();
        for value in examples.chain(property.get("default")) {
            assert_eq!(faults_by(property.clone(), value), None, "{value} as {}", property["title"]);
        }
    }
}

#[test]
fn the_patterns_and_the_starter_pass() {
    passes(STARTER);
    let folder = std::fs::read_dir(file("patterns")).unwrap();
    let patterns: Vec<String> =
        folder.map(|entry| std::fs::read_to_string(entry.unwrap().path()).unwrap()).collect();
    assert!(patterns.len() >= 3);
    for pattern in patterns {
        passes(&pattern);
    }
}

const HEAD: &str = "title = \"T\"\nunits = \"in\"\nmould = { base = \"5\", rim = \"8\", height = \"4\" }\n";

#[test]
fn the_examples_of_the_manual_pass() {
    let manual = text("docs/pattern-file.md");
    let examples: Vec<&str> =
        manual.split("```toml\n").skip(1).filter_map(|rest| rest.split("```").next()).collect();
    assert!(examples.len() > 4);
    for example in examples {
        if example.contains("title =") { passes(example) } else { passes(&format!("{HEAD}{example}")) }
    }
}

#[test]
fn what_has_a_wrong_shape_is_stopped() {
    let wrong = [
        ("a key that is not known", "[base]\ndiametre = \"5\""),
        ("a section that is not known", "[handel]"),
        ("a word that is not known", "finish = \"tar\""),
        ("a length without quotes", "[base]\ndiameter = 5"),
        ("a length without a figure", "[base]\ndiameter = \"wide\""),
        ("a count in quotes", "[staves]\ncount = \"67\""),
        ("a count beyond its limits", "[staves]\ncount = 2"),
        ("a share without its sign", "[weave]\nshrink = \"4\""),
        ("a flag in quotes", "[[weave.courses]]\nweaver = \"cane fine\"\nrows = 4\nstep-up = \"true\""),
        (
            "a weave that is not known",
            "[[weave.courses]]\nweave = \"twill\"\nweaver = \"cane fine\"\nrows = 4",
        ),
        ("a course without an end", "[[weave.courses]]\nweaver = \"cane fine\""),
        (
            "a course with two ends",
            "[[weave.courses]]\nweaver = \"cane fine\"\nrows = 4\nuntil = \"mould top\"",
        ),
        ("a taper without a foot", "[staves]\ntaper = { from = \"1\" }"),
        ("a filler of another word", "filler = \"nothing\""),
        ("a note without words or photograph", "[[note]]\nstep = \"cut\""),
        ("soaking in words", "[materials.mine]\nlike = \"cane fine\"\nsoak = \"a while\""),
    ];
    for (what, lines) in wrong {
        assert!(faults(&format!("{HEAD}{lines}")).is_some(), "{what} passes");
    }
    assert!(faults("title = \"T\"").is_some(), "a pattern without a mould passes");
    let twice = "mould = { base = \"5 in\", girths = [[\"0\", \"15\"], [\"4\", \"20\"]] }";
    assert!(faults(&format!("title = \"T\"\n{twice}")).is_some(), "a mould measured and drawn passes");
}
