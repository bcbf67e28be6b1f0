//! Every language says the same things: the same identifiers, attributes and values as English,
//! and nothing left in English.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use basket::Catalogue;
use basket::message::Value;
use basket::pattern::Units;
use fluent_syntax::ast;
use words::{Language, Words};

/// Messages that read alike in two languages.
const ALIKE: &[&str] = &[
    "bench-class-seconds-of",
    "bench-course",
    "bench-cut-count",
    "bench-did-drag",
    "bench-did-set",
    "bench-in-part",
    "bench-kilobytes",
    "bench-page-title",
    "bench-paper-a4",
    "bench-paper-letter",
    "bench-plan-file",
    "bench-shop-act-of",
    "bench-shop-change-of",
    "bench-shop-material",
    "bench-shop-name",
    "bench-solid-3mf",
    "bench-solid-glb",
    "bench-solid-stl",
    "bench-tell-figure",
    "bench-version-file",
    "bench-view-text",
    "bench-which-of",
    "class-does",
    "class-sample-work",
    "drawing-chart-ideal",
    "finding-nest-clearance.remedy",
    "finding-weave-mend.why",
    "form-in-group",
    "form-remedy",
    "history-differs",
    "length-by-width",
    "outline-oval",
    "plan-pattern",
    "plate-cover",
    "screen-material",
    "sheet-card-ears-note",
    "sheet-demo-last",
    "sheet-demo-piece",
    "sheet-demo-task",
    "sheet-material",
    "sheet-sold-by",
    "weave-band-drawn",
    "weave-band-one",
    "workshop-bag",
    "workshop-cannot-read",
    "workshop-material",
    "workshop-metres",
    "workshop-nest-in",
    "workshop-pieces-of",
    "workshop-row-unread",
    "workshop-share",
    "workshop-size-holds-text",
    "workshop-units",
];

/// What a message says, and which values it mentions.
#[derive(Debug, Default, PartialEq, Eq)]
struct Said {
    text: String,
    values: BTreeSet<String>,
}

impl Said {
    fn of(pattern: &ast::Pattern<String>) -> Self {
        let mut said = Self::default();
        said.read(pattern);
        said
    }
    fn read(&mut self, pattern: &ast::Pattern<String>) {
        for element in &pattern.elements {
            match element {
                ast::PatternElement::TextElement { value } => self.text.push_str(value),
                ast::PatternElement::Placeable { expression } => self.express(expression),
            }
        }
    }
    fn express(&mut self, expression: &ast::Expression<String>) {
        match expression {
            ast::Expression::Inline(inline) => self.inline(inline),
            ast::Expression::Select { selector, variants } => {
                self.inline(selector);
                for variant in variants {
                    self.read(&variant.value);
                }
            }
        }
    }
    fn inline(&mut self, inline: &ast::InlineExpression<String>) {
        match inline {
            ast::InlineExpression::VariableReference { id } => drop(self.values.insert(id.name.clone())),
            ast::InlineExpression::StringLiteral { value } => self.text.push_str(value),
            ast::InlineExpression::Placeable { expression } => self.express(expression),
            _ => {}
        }
    }
}

/// All messages of a language, attributes after a dot.
fn messages(language: Language) -> BTreeMap<String, Said> {
    let mut found = BTreeMap::new();
    for file in files(language) {
        let text = std::fs::read_to_string(&file).expect("a message file");
        let resource = fluent_syntax::parser::parse(text).expect("it reads");
        for entry in resource.body {
            let ast::Entry::Message(message) = entry else { continue };
            let id = message.id.name;
            for attribute in &message.attributes {
                let old = found.insert(format!("{id}.{}", attribute.id.name), Said::of(&attribute.value));
                assert_eq!(old, None, "{id} stands twice");
            }
            if let Some(value) = &message.value {
                assert_eq!(found.insert(id.clone(), Said::of(value)), None, "{id} stands twice");
            }
        }
    }
    found
}

fn folder(language: Language) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("messages").join(language.tag())
}

fn files(language: Language) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder(language)).expect("a folder of messages");
    entries.map(|entry| entry.expect("an entry").path()).collect()
}

fn others() -> impl Iterator<Item = Language> {
    Language::ALL.iter().copied().filter(|language| *language != Language::English)
}

#[test]
fn every_language_has_the_same_files_and_all_are_read() {
    let names = |language| -> BTreeSet<_> {
        files(language).iter().map(|file| file.file_name().expect("a name").to_owned()).collect()
    };
    for language in Language::ALL {
        assert_eq!(names(*language), names(Language::English), "{language:?}");
        let words = Words::new(*language, Units::Inches);
        // The page reads its own texts.
        let ours = messages(*language).into_keys().filter(|id| !id.starts_with("bench-"));
        let unread: Vec<_> = ours.filter(|id| !words.has(id)).collect();
        assert!(unread.is_empty(), "{language:?}: {unread:?}");
    }
}

#[test]
fn every_language_has_the_same_messages_with_the_same_values() {
    let english = messages(Language::English);
    assert!(english.len() > 500, "{} messages: were they read?", english.len());
    for language in others() {
        let own = messages(language);
        let ids = |all: &BTreeMap<String, Said>| all.keys().cloned().collect::<BTreeSet<_>>();
        let (english_ids, own_ids) = (ids(&english), ids(&own));
        let missing: Vec<_> = english_ids.difference(&own_ids).collect();
        let idle: Vec<_> = own_ids.difference(&english_ids).collect();
        assert!(missing.is_empty() && idle.is_empty(), "{language:?} lacks {missing:#?}, has {idle:#?}");
        for (id, said) in &own {
            assert_eq!(said.values, english[id].values, "{id} in {language:?}");
        }
    }
}

#[test]
fn nothing_is_left_in_english() {
    let english = messages(Language::English);
    for language in others() {
        let same: BTreeSet<String> = messages(language)
            .into_iter()
            .filter(|(id, said)| english.get(id).is_some_and(|english| english.text == said.text))
            .map(|(id, _)| id)
            .collect();
        assert_eq!(same, ALIKE.iter().map(|id| (*id).to_owned()).collect(), "{language:?}");
    }
}

#[test]
fn every_catalogue_name_is_known_and_reads_in_english_as_it_stands() {
    let catalogue = Catalogue::built_in();
    let english = Words::new(Language::English, Units::Inches);
    let names = catalogue.materials.iter().map(|material| &material.name);
    for name in names.chain(catalogue.woods.iter().map(|wood| &wood.name)) {
        assert_eq!(english.material(name), *name);
        for language in others() {
            let own = Words::new(language, Units::Inches).material(name);
            assert_ne!(own, *name, "{language:?}");
        }
    }
    for material in &catalogue.materials {
        let unit = &material.put_up.unit;
        assert_eq!(english.put_up(unit), *unit);
        assert!(others().all(|language| Words::new(language, Units::Inches).put_up(unit) != *unit), "{unit}");
    }
    for (name, _) in basket::colour::BUILT_IN {
        assert_eq!(english.colour(name), *name);
        let own = |language| Words::new(language, Units::Inches).has(&format!("colour-{name}"));
        assert!(others().all(own), "{name}");
    }
}

/// German names chair cane by its width; the name has to be the catalogue's width.
#[test]
fn german_chair_cane_is_called_by_the_width_of_the_catalogue() {
    let german = Words::new(Language::German, Units::Millimetres);
    let cane = Catalogue::built_in().materials.iter().filter(|one| one.name.starts_with("cane "));
    let mut seen = 0;
    for material in cane {
        let width = german.value(&Value::Number(material.width.to_mm(), 2));
        assert_eq!(german.material(&material.name), format!("Stuhlflechtrohr {width}\u{a0}mm"));
        seen += 1;
    }
    assert_eq!(seen, 7);
}

#[test]
fn an_own_material_keeps_its_name() {
    let german = Words::new(Language::German, Units::Millimetres);
    assert_eq!(german.material("marsh reed 3 mm"), "marsh reed 3 mm");
    assert_eq!(german.material("flat oval reed 1/4 in"), "Flachovalrohr 6,3\u{a0}mm (1/4\u{a0}Zoll)");
    assert_eq!(german.material("round reed 5.5"), "Rundrohr 5,5");
    assert_eq!(
        german.material("brass pin 18 x 1/2 in"),
        "Messingstift 18\u{a0}x\u{a0}12,7\u{a0}mm (1/2\u{a0}Zoll)"
    );
    assert_eq!(german.colour("harbour blue"), "harbour blue");
    assert_eq!(german.colour("blue"), "Blau");
}

#[test]
fn german_writes_numbers_and_lengths_its_own_way() {
    let inches = Words::new(Language::German, Units::Inches);
    let metric = Words::new(Language::German, Units::Millimetres);
    let length = basket::Length::mm(142.7);
    let plain = |text: String| text.replace('\u{a0}', " ");
    assert_eq!(metric.fine(length), "142,7\u{a0}mm", "no line ends before a unit");
    assert_eq!(plain(metric.both(length)), "142,5 mm (5 5/8 Zoll)");
    assert_eq!(plain(inches.both(length)), "5 5/8 Zoll (142,5 mm)");
    assert_eq!(plain(metric.run(basket::Length::mm(49_073.0))), "49,1 m (161 Fuß)");
    assert_eq!(plain(inches.fine(basket::Length::mm(0.3))), "< 1/64 Zoll (0,3 mm)");
    assert_eq!(plain(metric.value(&Value::Percent(0.0775))), "7,8 %");
    assert_eq!(plain(metric.value(&Value::Number(-4.25, 2))), "−4,25");
    assert_eq!(plain(metric.value(&Value::Angle(basket::Angle::degrees(4.186)))), "4,2°");
}

#[test]
fn german_counts_choose_their_plural() {
    let words = Words::new(Language::German, Units::Millimetres);
    let rows =
        |count: u32| words.with("cut-weaver-purpose", &[("course", 1_u32.into()), ("rows", count.into())]);
    assert_eq!(rows(1), "Abschnitt 1: eine Reihe");
    assert_eq!(rows(34), "Abschnitt 1: 34 Reihen");
}

/// Sizes that a maker tells apart with a caliper never print alike.
#[test]
fn two_sizes_never_look_alike() {
    let words = Words::new(Language::English, Units::Inches);
    for (one, other) in [(1.98, 2.15), (3.7, 4.2), (2.25, 2.5), (2.0, 2.1)] {
        let [one, other] = [one, other].map(|mm| words.fine(basket::Length::mm(mm)));
        assert_ne!(one, other);
    }
    assert_eq!(words.fine(basket::Length::mm(3.7)), "5/32 in (3.7 mm)");
    assert_eq!(words.fine(basket::Length::inches(0.25)), "1/4 in");
}
