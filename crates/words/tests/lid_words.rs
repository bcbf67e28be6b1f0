//! The steps of a lid speak of the lid and its plaque, in every language.

use basket::steps::Step;
use basket::{Catalogue, Draft, Hand, Of};
use words::{Language, Words};

const PATTERNS: [&str; 2] = [
    r#"title = "Box"
mould = { shape = "oval", length = "9 in", width = "6 in", rim = "10 in", height = "4 in", side = "bowl" }
lid = { fit = "flush" }"#,
    r#"title = "Box"
mould = { base = "6 in", rim = "8 in", height = "4 in", side = "bowl" }
base = { sealed = true, wood = ["cherry", "white ash"] }
weave = { direction = "left" }
ready = ["staves cut"]
lid = { fit = "drop-in" }"#,
];

/// Words for what a lid has not.
fn strange(language: Language) -> [&'static str; 2] {
    match language {
        Language::English => ["basket", "base"],
        Language::German => ["Korb", "Boden"],
    }
}

fn told(step: &Step, words: &Words) -> String {
    let text = step.text.iter().map(|said| words.say(said));
    std::iter::once(words.step(step.of, step.kind)).chain(text).collect::<Vec<_>>().join("\n")
}

#[test]
fn a_lid_has_a_plaque_and_no_base() {
    let catalogue = Catalogue::built_in();
    for (pattern, language) in
        PATTERNS.iter().flat_map(|pattern| Language::ALL.iter().map(move |l| (pattern, l)))
    {
        let draft = Draft::of(basket::pattern::read(pattern, catalogue).unwrap(), catalogue, &Hand::USUAL);
        let words = Words::new(*language, draft.basket.units);
        let own: Vec<&Step> = draft.steps.iter().filter(|step| step.of == Of::Lid).collect();
        // The last one sets it on the basket, and has to name that.
        let (_, own) = own.split_last().unwrap();
        assert!(own.len() > 6);
        let strange = strange(*language);
        let told = own.iter().map(|step| told(step, &words)).collect::<Vec<_>>().join("\n");
        let is_strange =
            |text: &&str| text.split(|sign: char| !sign.is_alphabetic()).any(|word| strange.contains(&word));
        assert_eq!(told.lines().filter(is_strange).collect::<Vec<_>>(), Vec::<&str>::new());
    }
}
