//! No text can make the reader panic, and whatever it says points into the text.

mod support;

use basket::Catalogue;
use basket::pattern::{MouldForm, STARTER, keys, read};
use proptest::prelude::*;

/// A value that may stand behind a key: sound, doubtful or nonsense.
fn any_value() -> impl Strategy<Value = String> {
    let words = prop::sample::select(vec![
        "\"in\"",
        "\"mm\"",
        "\"round\"",
        "\"5\"",
        "\"5 5/8 in\"",
        "\"143 mm\"",
        "\"-1\"",
        "\"0\"",
        "\"9 m\"",
        "5",
        "-5",
        "0.5",
        "nan",
        "inf",
        "true",
        "\"plain\"",
        "\"cane fine\"",
        "\"flat oval reed 1/4 in\"",
        "\"none\"",
        "\"stave\"",
        "\"1 below mould top\"",
        "\"height 2\"",
        "\"4 %\"",
        "\"brass\"",
        "\"semicircle\"",
        "\"cherry\"",
        "2026-01-01",
        "[]",
        "[[\"0\", \"15\"], [\"4\", \"20\"]]",
        "[5, 10]",
        "{}",
        "{ depth = \"1/4\", width = \"1/16\" }",
        "{ from = \"1\", foot = \"1/8\" }",
        "[{ weaver = \"cane fine\", rows = 4 }]",
        "\"cone\"",
        "\"straight\"",
        "99",
        "0x43",
        "\"splint\"",
    ]);
    prop_oneof![
        6 => words.prop_map(str::to_owned),
        1 => "\\PC{0,12}",
        1 => "[0-9 /.,a-z%]{0,12}".prop_map(|text| format!("\"{text}\"")),
    ]
}

fn any_line() -> impl Strategy<Value = String> {
    let all: Vec<&'static str> = keys::every().iter().map(|key| key.name()).collect();
    let sections = prop::sample::select(keys::ALL.iter().map(|key| key.name()).collect::<Vec<_>>());
    prop_oneof![
        8 => (prop::sample::select(all), any_value()).prop_map(|(key, value)| format!("{key} = {value}")),
        3 => sections.prop_map(|section| format!("[{section}]")),
        1 => Just("[[weave.courses]]".to_owned()),
        1 => "[a-z ]{1,8}".prop_map(|name| format!("[materials.\"{name}\"]")),
        1 => "\\PC{0,20}",
    ]
}

fn check(text: &str) -> Result<(), TestCaseError> {
    if let Err(problems) = read(text, Catalogue::built_in()) {
        prop_assert!(!problems.is_empty());
        for problem in problems {
            let span = problem.span.clone().unwrap_or_default();
            prop_assert!(span.start <= span.end && span.end <= text.len(), "{problem:?}");
            prop_assert!(problem.line_column(text).0 <= text.lines().count().max(1) + 1);
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3000))]

    #[test]
    fn reading_random_sections_never_panics(lines in prop::collection::vec(any_line(), 0..16)) {
        check(&lines.join("\n"))?;
        check(&format!("title = \"T\"\nunits = \"in\"\n{}", lines.join("\n")))?;
    }

    #[test]
    fn reading_a_damaged_pattern_never_panics(
        place in any::<prop::sample::Index>(),
        length in 0_usize..6,
        new in prop_oneof![Just(String::new()), "\\PC{0,6}", any_value(), any_line()],
    ) {
        let characters: Vec<char> = STARTER.chars().collect();
        let start = place.index(characters.len());
        let end = (start + length).min(characters.len());
        let damaged: String =
            characters[..start].iter().copied().chain(new.chars()).chain(characters[end..].iter().copied()).collect();
        check(&damaged)?;
    }

    #[test]
    fn reading_random_text_never_panics(text in "(?s).{0,200}") {
        check(&text)?;
    }

    #[test]
    fn a_shelf_of_random_lines_never_panics(lines in prop::collection::vec(any_line(), 0..8)) {
        let text = format!("[materials.x]\n{}", lines.join("\n"));
        let shelf = Catalogue::built_in().with_shelf(&text);
        prop_assert!(shelf.is_ok() || shelf.is_err_and(|problems| !problems.is_empty()));
    }

    #[test]
    fn random_patterns_are_varied_but_finite(pattern in support::any_pattern()) {
        if let MouldForm::Girths(girths) = &pattern.mould.form {
            prop_assert!(girths.len() >= 2);
            prop_assert!(girths.windows(2).all(|pair| pair[0].height < pair[1].height));
        }
        prop_assert!(pattern.staves.count.is_none_or(|count| (3..=999).contains(&count)));
        let needs_ears = pattern.handle.as_ref().is_some_and(|handle| handle.ears().is_some());
        prop_assert!(!needs_ears || pattern.ears.is_some());
    }
}
