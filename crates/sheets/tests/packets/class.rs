//! The plan of a class on paper: what stands on it, in both languages, and that all of it can be read.

use basket::pattern::Units;
use basket::{Catalogue, Draft, Hand};
use planning::class::{Answer, Source, written};
use sheets::{Paper, Templates};
use words::{Language, Words};

use crate::common::{draft, poppler, told};
use crate::pdf::assert_sound;

const FERRY: &str = include_str!("../../../../patterns/ferry-egg-basket.toml");
const CLASS: &str = include_str!("../../../../classes/ferry-two-weekends.toml");

/// The class of the Ferry egg basket over two weekends, with the teacher's samples. Its plan is proven, so it is
/// the same every time.
fn planned() -> (Draft, Answer) {
    let draft = draft(FERRY);
    let class = written::read(CLASS).expect("a class");
    let source = Source { pattern: &draft.pattern, catalogue: Catalogue::built_in(), hand: &Hand::USUAL };
    let answer = Answer::of(&class, source, &mut |_| true);
    (draft, answer)
}

fn sheet(planned: &(Draft, Answer), language: Language, paper: Paper) -> Vec<u8> {
    let words = Words::new(language, Units::Inches);
    sheets::class_sheet((&planned.0, &planned.1), &words, paper, &Templates::default())
        .expect("the plan can be set")
}

/// The pages as lines, each without what stands at its foot.
fn pages(pdf: &[u8]) -> Vec<String> {
    let said = poppler("pdftotext", &["-layout", "-", "-"], pdf).replace('\u{a0}', " ");
    let page = |page: &str| {
        let lines: Vec<&str> = page.lines().map(str::trim_end).filter(|line| !line.is_empty()).collect();
        lines.join("\n")
    };
    said.trim_end_matches('\u{c}').split('\u{c}').map(page).collect()
}

/// All pages from the one that holds this heading on.
fn from<'p>(pages: &'p [String], heading: &str) -> &'p [String] {
    let first = pages.iter().position(|page| page.contains(heading));
    &pages[first.unwrap_or_else(|| panic!("{heading} in {pages:?}"))..]
}

#[test]
fn a_class_plan_is_sound_and_tells_of_sessions_students_and_samples() {
    let planned = planned();
    let found = planned.1.found().expect("it fits");
    assert_eq!(found.bound, found.plan.end, "it is proven");
    let english = sheet(&planned, Language::English, Paper::Letter);
    assert_sound(&english, ("612", "en"), "Ferry egg basket");
    let pages_told = pages(&english);
    // A page for each session in which something is done, with its cautions; a card for each of six students.
    let sessions = from(&pages_told, "Session by session");
    let of = |text: &str| sessions.iter().filter(|page| page.contains(text)).count();
    assert_eq!((of("Cautions of this session"), of("mould A, from")), (6, 1));
    assert_eq!(of("Rows due"), 6);
    let finish = sessions.iter().find(|page| page.contains("Finish and check")).expect("the last session");
    assert!(told(&english).contains("late if not at row 32"), "{}", told(&english));
    assert!(finish.contains("oil"), "rags with oil are told of where they are used: {finish}");
    insta::assert_snapshot!(
        "class_samples_in_english",
        from(&pages_told, "Samples of the teacher").join("\n")
    );

    let german = sheet(&planned, Language::German, Paper::A4);
    assert_sound(&german, ("595", "de"), "Ferry egg basket");
    let pages_told = pages(&german);
    insta::assert_snapshot!(
        "class_samples_in_german",
        from(&pages_told, "Muster der Kursleitung").join("\n")
    );
    insta::assert_snapshot!("class_card_in_german", from(&pages_told, "Eine Karte für jeden Platz")[0]);
}
