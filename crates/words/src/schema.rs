//! The pattern file as a JSON Schema, by which an editor checks, completes and explains.
//!
//! It stops what has a wrong name, a wrong shape or a wrong word, and lets pass all that is read and spelt
//! as the manual spells it; the rest is said when the pattern is checked. Nothing in it goes beyond
//! draft 7, which editors know.

use basket::measure::Printing;
use basket::message::Value as Said;
use basket::pattern::keys::weaves::{self, Figures, LONGEST_FLOAT, Weave};
use basket::pattern::keys::{self, Contents, Counts, Declared, Either, Known, Shares, Takes, Texts, Usual};
use serde_json::{Map, Value, json};

use crate::Words;

impl Words {
    /// The JSON Schema of a pattern file, in the reader's language.
    pub fn schema(&self) -> String {
        let mut whole = self.section(keys::PATTERN.takes);
        whole["$schema"] = json!("http://json-schema.org/draft-07/schema#");
        whole["title"] = json!(self.term("schema-title"));
        whole["description"] = json!(self.term("schema-about"));
        format!("{whole:#}\n")
    }

    fn section(&self, contents: Contents) -> Value {
        let needed = contents.keys.iter().filter(|key| key.usual() == Usual::Needed);
        let needed: Vec<&str> = needed.map(|key| key.name()).collect();
        let properties = contents.keys.iter().map(|key| (key.name().to_owned(), self.property(*key)));
        let mut section = json!({
            "type": "object",
            "properties": properties.collect::<Map<_, _>>(),
            "additionalProperties": false,
        });
        if !needed.is_empty() {
            section["required"] = json!(needed);
        }
        if !contents.either.is_empty() {
            section["allOf"] = contents.either.iter().flat_map(rules).collect();
        }
        section
    }

    fn property(&self, key: &dyn Declared) -> Value {
        let text = self.key(key);
        let args = [("about", text.about), ("takes", text.takes), ("left_out", text.left_out)];
        let args = args.map(|(name, text)| (name, Said::Name(text)));
        let mut property = self.value_of(&key.takes());
        property["title"] = json!(text.name);
        property["description"] = json!(self.with("key-description", &args));
        if let Usual::Constant(usual) = key.usual() {
            property["default"] = written(&usual, &key.takes());
        }
        // What is no section stands in TOML as in JSON.
        if let Ok(example) = serde_json::from_str::<Value>(key.example()) {
            property["examples"] = json!([example]);
        }
        property
    }

    fn value_of(&self, takes: &Takes) -> Value {
        match takes {
            Takes::Text(Texts::Line) => text(r"^\s*\S.*$"),
            Takes::Text(Texts::Photo) => text(r"\.([jJ][pP][eE]?[gG]|[pP][nN][gG])$"),
            Takes::End => text(r"^\s*(mould top|height .+|.+below mould top)\s*$"),
            Takes::Text(Texts::Paragraphs(_)) | Takes::Material(_) | Takes::Wood => name(),
            Takes::Length(_) => length(),
            Takes::Count(counts) => count(*counts),
            Takes::Share(shares) => share(*shares),
            Takes::Minutes(most) => {
                let minutes = count(Counts::of(0, *most));
                any([minutes.clone(), list(&minutes, 2, 2)])
            }
            Takes::Flag => json!({ "type": "boolean" }),
            Takes::Word(known) => words(known),
            Takes::Words(known) => any([words(known), list(&words(known), 0, known.len())]),
            Takes::Weave => any(weaves::ALL.iter().map(weave)),
            Takes::Materials(materials) => list(&name(), 1, materials.most),
            Takes::Woods(most) => any([name(), list(&name(), 1, *most)]),
            Takes::Colours(most) => any([name(), list(&name(), 0, *most)]),
            Takes::WeaverColours(weavers) => {
                let strands = any([name(), list(&name(), 1, weavers.each)]);
                any([name(), list(&strands, 0, weavers.most)])
            }
            Takes::Lengths(lengths) => list(&length(), 0, lengths.most),
            Takes::Pairs(most) => list(&list(&length(), 2, 2), 2, *most),
            Takes::Chart(most) => list(&name(), 1, *most),
            Takes::Section(contents) | Takes::Part(contents, None) => self.section(*contents),
            Takes::Part(contents, Some(none)) => any([json!({ "const": none }), self.section(*contents)]),
            Takes::Sections(sections) => list(&self.section(sections.each), 0, sections.most),
            Takes::Named(sections) => own_names(&self.section(sections.each), sections.most),
            Takes::OwnColours(most) => own_names(&name(), *most),
        }
    }
}

fn any(schemas: impl IntoIterator<Item = Value>) -> Value {
    json!({ "anyOf": schemas.into_iter().collect::<Vec<_>>() })
}

fn list(each: &Value, least: usize, most: usize) -> Value {
    json!({ "type": "array", "items": each, "minItems": least, "maxItems": most })
}

fn own_names(each: &Value, most: usize) -> Value {
    json!({ "type": "object", "additionalProperties": each, "maxProperties": most })
}

fn text(pattern: &str) -> Value {
    json!({ "type": "string", "pattern": pattern })
}

/// A name, whose meaning a schema does not know.
fn name() -> Value {
    json!({ "type": "string" })
}

/// Whatever is a length has a figure in it.
fn length() -> Value {
    text("[0-9¼½¾⅐-⅞]")
}

fn count(counts: Counts) -> Value {
    json!({ "type": "integer", "minimum": counts.least, "maximum": counts.most })
}

fn share(shares: Shares) -> Value {
    any([
        text(r"^\s*[0-9.,]+\s*%\s*$"),
        json!({ "type": "number", "minimum": shares.least, "maximum": shares.most }),
    ])
}

fn words(known: &[Known]) -> Value {
    json!({ "enum": known.iter().map(|known| known.word).collect::<Vec<_>>() })
}

/// A weave by its word, with room for the figures behind it.
fn weave(weave: &Weave) -> Value {
    match weave.figures {
        Figures::None(_) | Figures::Rods(..) => {
            json!({ "enum": weave.offered().iter().map(ToString::to_string).collect::<Vec<_>>() })
        }
        Figures::Rule(_) => text(&format!("^{} [1-{LONGEST_FLOAT}]/[1-{LONGEST_FLOAT}]$", weave.word)),
    }
}

/// One of two ways is gone where one is needed, and not both where they exclude each other.
fn rules(either: &Either) -> Vec<Value> {
    let [one, other] = either.ways;
    let whole = |way: &[&dyn Declared]| {
        let needed = way.iter().filter(|key| !matches!(key.usual(), Usual::Constant(_)));
        let needed = needed.filter(|key| !either.may_lack.contains(&key.path()));
        json!({ "required": needed.map(|key| key.name()).collect::<Vec<_>>() })
    };
    let needed = either.is_needed.then(|| any([whole(one), whole(other)]));
    let both = one.iter().flat_map(|one| other.iter().map(move |other| [one.name(), other.name()]));
    let excluded = both.map(|both| json!({ "not": { "required": both } }));
    needed.into_iter().chain(excluded.filter(|_| either.help.is_some())).collect()
}

/// A usual value as a file writes it.
fn written(usual: &Said, takes: &Takes) -> Value {
    match (usual, takes) {
        (Said::Length(length), _) => json!(length.print(Printing::Inches { denominator: 64 })),
        (Said::Count(count), _) => json!(count),
        (Said::Percent(share), _) => json!(share),
        (Said::Name(word), Takes::Flag) => json!(word == "true"),
        (Said::Name(word), _) => json!(word),
        _ => Value::Null,
    }
}
