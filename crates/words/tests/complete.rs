//! Every identifier that the computation uses has a message in every language.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use basket::findings::CODES;
use basket::message::{Message, Term, Value};
use basket::pattern::Units;
use basket::{Catalogue, Draft, Hand};
use words::{Language, Words};

/// How identifiers of messages begin.
const PREFIXES: &[&str] = &[
    "bail-curve-",
    "caution-",
    "choice-",
    "cut-",
    "ear-material-",
    "ear-placing-",
    "every-",
    "fault-",
    "finish-",
    "grade-",
    "handle-kind-",
    "kind-",
    "language-",
    "lean-",
    "lashing-style-",
    "outline-",
    "oval-side-",
    "part-",
    "piece-",
    "question-",
    "side-",
    "stage-",
    "stave-reason-",
    "step-",
    "tool-",
    "units-",
    "usual-",
    "way-",
    "weave-count-",
    "weave-mend-",
    "weave-band-",
    "weave-begin-",
    "weave-how-",
    "weave-on-",
    "weave-row",
    "weave-shift-",
];

fn readers() -> impl Iterator<Item = Words> {
    Language::ALL
        .iter()
        .flat_map(|language| [Units::Inches, Units::Millimetres].map(|units| Words::new(*language, units)))
}

fn sources(folder: &Path, files: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder of sources") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources(&path, files);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            files.push(path);
        }
    }
}

/// Text literals of the computation's sources that look like identifiers of messages.
fn used() -> BTreeSet<String> {
    let mut files = Vec::new();
    sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join("../basket/src"), &mut files);
    let mut found = BTreeSet::new();
    for file in files {
        let text = std::fs::read_to_string(file).expect("a source file");
        for literal in text.split('"').filter(|literal| is_identifier(literal)) {
            found.insert(literal.to_owned());
        }
    }
    found
}

fn is_identifier(literal: &str) -> bool {
    PREFIXES.iter().any(|prefix| literal.strip_prefix(prefix).is_some_and(|rest| !rest.is_empty()))
        && literal.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
        && !literal.ends_with('-')
        // Keys of a pattern, not messages.
        && !["step-up", "finish-on"].contains(&literal)
}

#[test]
fn every_identifier_in_the_sources_has_a_message() {
    let used = used();
    for known in ["choice-rim-lap", "stave-reason-lock", "step-cut", "tool-knife", "caution-knife"] {
        assert!(used.contains(known), "{known} was not seen: does the search still work?");
    }
    for words in readers() {
        let missing: Vec<&String> = used.iter().filter(|id| !words.has(id)).collect();
        assert!(missing.is_empty(), "{:?}: {missing:#?}", words.language());
    }
}

#[test]
fn every_finding_has_its_three_sentences() {
    for words in readers() {
        for code in CODES {
            for attribute in ["", ".why", ".remedy"] {
                let id = format!("finding-{code}{attribute}");
                assert!(words.has(&id), "{id} in {:?}", words.language());
            }
        }
    }
}

#[test]
fn every_fault_has_its_cure_and_every_question_its_answer() {
    for words in readers() {
        let lacks = |id: &&String| {
            let attribute = if id.starts_with("fault-") { "cure" } else { "answer" };
            !words.has(&format!("{id}.{attribute}"))
        };
        let used = used();
        let told = || used.iter().filter(|id| id.starts_with("fault-") || id.starts_with("question-"));
        assert!(told().count() > 40, "does the search still work?");
        let lacking: Vec<&String> = told().filter(lacks).collect();
        assert!(lacking.is_empty(), "{:?}: {lacking:#?}", words.language());
    }
}

#[test]
fn every_piece_of_the_cut_list_has_a_name() {
    let catalogue = Catalogue::built_in();
    let pattern =
        basket::pattern::read(include_str!("../../../patterns/harbour-bread-basket.toml"), catalogue);
    let draft = Draft::of(pattern.expect("the example can be read"), catalogue, &Hand::USUAL);
    for words in readers() {
        for cut in &draft.cuts {
            let name = words.cut(cut.of, cut.piece);
            assert!(!name.starts_with("piece-"), "{name} in {:?}", words.language());
        }
    }
}

#[test]
fn every_key_of_a_pattern_is_named_and_described() {
    use basket::pattern::keys::{self, Group};
    for words in readers() {
        for group in Group::ALL {
            assert!(words.has(&format!("form-group-{}", group.name())), "{group:?}");
        }
        for key in keys::every() {
            let (path, text) = (key.path(), words.key(key));
            assert!(words.has(&key.label()), "{path} in {:?}", words.language());
            for said in [&text.name, &text.about, &text.takes, &text.left_out] {
                assert_whole(said, path);
                let unsaid = ["key-", "usual-", "takes-", "kind-"].iter().any(|id| said.contains(id));
                assert!(!unsaid, "{path} in {:?}: {said}", words.language());
            }
        }
    }
}

#[test]
fn an_unknown_identifier_shows_itself() {
    for words in readers() {
        assert_eq!(words.term("no-such-message"), "no-such-message");
        assert_eq!(words.term("piece-rim.no-such"), "piece-rim.no-such");
        assert_eq!(words.say(&Message::new("no-such")), "no-such");
    }
}

/// A value that a sentence mentions but does not get is left in braces by Fluent.
fn assert_whole(sentence: &str, id: &str) {
    assert!(!sentence.contains(['{', '}']), "{id}: {sentence}");
    assert!(!sentence.contains(['\u{2068}', '\u{2069}']), "{id}: {sentence:?}");
    assert!(!sentence.is_empty(), "{id} is empty");
}

fn drafted(text: &str) -> Draft {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(text, catalogue).unwrap_or_else(|problems| panic!("{problems:#?}"));
    Draft::of(pattern, catalogue, &Hand::USUAL)
}

/// Patterns that between them reach many sentences.
fn drafts() -> Vec<Draft> {
    let mould = "[mould]\nbase = \"5\"\nrim = \"8\"\nheight = \"4\"\nside = \"bowl\"\n";
    let bare = format!("title = \"Bare\"\nunits = \"in\"\n{mould}");
    let handled = format!("{bare}[ears]\n[handle]\nkind = \"swing\"\n");
    let bad = format!(
        "title = \"Bad\"\nunits = \"in\"\nfinish = \"oil\"\n{mould}[base]\ndiameter = \"5 1/2\"\n\
         groove = {{ depth = \"1/8\", width = \"1/32\" }}\n[staves]\ncount = 120\nlength = \"3\"\n\
         taper = {{ from = \"2\", foot = \"1/32\" }}\n\
         [weave]\ncourses = [{{ weave = \"plain\", weaver = \"cane common\", rows = 200 }}]\n\
         [rim]\nlap = \"1/2\"\n[filler]\nstock = \"round reed 0\"\n[lashing]\ntail = \"1/2\"\nstyle = \"crossed\"\n\
         [ears]\nmaterial = \"bone\"\nplacing = \"on-staves\"\nwidth = \"2\"\nhole = \"1/8\"\n[handle]\nkind = \"swing\"\n"
    );
    [bare, handled, bad].iter().map(|text| drafted(text)).collect()
}

fn messages(draft: &Draft) -> Vec<Message> {
    let basket = &draft.basket;
    let choices = basket.choices.iter().map(|choice| choice.reason.clone());
    let reasons = basket.body.staves().candidates.iter().flat_map(|candidate| candidate.reasons.clone());
    let cuts = draft.cuts.iter().flat_map(|cut| cut.shape.clone().into_iter().chain([cut.purpose.clone()]));
    let steps = draft
        .steps
        .iter()
        .flat_map(|step| step.text.clone().into_iter().chain([Message::new(step.kind.term())]));
    choices.chain(reasons).chain(cuts).chain(steps).collect()
}

#[test]
fn sentences_get_all_values_that_they_mention() {
    for draft in drafts() {
        for words in readers() {
            for message in messages(&draft) {
                assert_whole(&words.say(&message), message.id);
            }
            for finding in &draft.findings {
                let text = words.finding(finding);
                for sentence in [&text.grade, &text.what, &text.place, &text.why] {
                    assert_whole(sentence, finding.code);
                }
                // A remedy may name a table such as { from = …, foot = … }.
                let said = words.with(&format!("finding-{}.remedy", finding.code), &finding.args);
                assert_whole(&said, finding.code);
            }
        }
    }
}

#[test]
fn a_bad_pattern_is_told_many_things() {
    let drafts = drafts();
    let codes: BTreeSet<&str> =
        drafts.iter().flat_map(|draft| &draft.findings).map(|finding| finding.code).collect();
    assert!(codes.len() >= 12, "{codes:?}");
}

#[test]
fn counts_choose_their_plural() {
    let words = Words::new(Language::English, Units::Inches);
    let rows =
        |count: u32| words.with("cut-weaver-purpose", &[("course", 1_u32.into()), ("rows", count.into())]);
    assert_eq!(rows(1), "course 1: one row");
    assert_eq!(rows(34), "course 1: 34 rows");
}

#[test]
fn values_are_printed_for_the_reader() {
    let inches = Words::new(Language::English, Units::Inches);
    let metric = Words::new(Language::English, Units::Millimetres);
    let length = basket::Length::mm(142.875);
    assert_eq!(inches.both(length), "5 5/8 in (143 mm)");
    assert_eq!(metric.both(length), "143 mm (5 5/8 in)");
    assert_eq!(inches.run(basket::Length::mm(49_073.0)), "161 ft (49.1 m)");
    assert_eq!(inches.value(&Value::Percent(0.0775)), "7.8 %");
    assert_eq!(inches.shares(0.0575, 0.118), "6–12 %");
    assert_eq!(inches.shares(0.0575, 0.0603), "6 %");
    assert_eq!(inches.shares(0.0091, 0.0152), "0.9–1.5 %");
    assert_eq!(inches.value(&Value::Minutes(90.0)), "1 h 30 min");
    assert_eq!(inches.value(&Value::Angle(basket::Angle::degrees(4.186))), "4.2°");
    assert_eq!(inches.value(&Value::Term("weave-plain")), "plain weave");
    assert_eq!(inches.value(&basket::Length::mm(1.4766).into()), "1/16 in (1.5 mm)");
}
