//! The poster for the wall and the page that offers a class.

use basket::pattern::Units;
use basket::{Draft, Length};
use lopdf::{Document, Object};
use sheets::{Paper, Poster, PosterSize, Proposal, Templates};
use words::{Language, Words};

use crate::common::{FIXED, HARBOUR, STOPPED, draft, poppler, told, words};
use crate::pdf::{assert_sound, says_stop};
use crate::tags::assert_tagged;

const TEN_FEET: Length = Length::feet(10.0);

fn poster(draft: &Draft, words: &Words, size: PosterSize, parts_on: Option<Paper>) -> Vec<u8> {
    let wanted = Poster { size, read_from: TEN_FEET, parts_on };
    sheets::poster(draft, words, &wanted, &Templates::default()).expect("the poster can be set")
}

fn number(object: &Object) -> f64 {
    object.as_float().map_or(0.0, f64::from)
}

/// Sizes of all type on the pages of a PDF, in pt.
fn sizes(pdf: &[u8]) -> Vec<f64> {
    let document = Document::load_mem(pdf).expect("lopdf opens it");
    let mut sizes = Vec::new();
    for page in document.get_pages().values() {
        let content = document.get_and_decode_page_content(*page).expect("its content");
        let (mut scale, mut kept, mut font, mut text) = (1.0_f64, Vec::new(), 0.0, 1.0);
        for operation in &content.operations {
            let operand = |index: usize| operation.operands.get(index).map_or(0.0, number);
            match operation.operator.as_str() {
                "q" => kept.push(scale),
                "Q" => scale = kept.pop().unwrap_or(1.0),
                "cm" => scale *= operand(3).abs(),
                "Tf" => font = operand(1),
                "Tm" => text = operand(3).abs(),
                "Tj" | "TJ" => sizes.push(font * text * scale),
                _ => {}
            }
        }
    }
    sizes
}

/// Capitals of Libertinus Serif are 658 of 1000 high (from the font file); the common rule of sign writers is an
/// inch for every 25 ft, so 0.4 in, 28.8 pt, at ten feet.
#[test]
fn all_lettering_of_a_poster_is_read_from_ten_feet() {
    let draft = draft(HARBOUR);
    for (size, width, height) in
        [(PosterSize::A2, 1190.55, 1683.78), (PosterSize::Inches16x20, 1152.0, 1440.0)]
    {
        for language in [Language::English, Language::German] {
            let pdf = poster(&draft, &Words::new(language, Units::Inches), size, None);
            let sizes = sizes(&pdf);
            assert!(sizes.len() > 10, "{} runs of type", sizes.len());
            let least = sizes.iter().copied().fold(f64::INFINITY, f64::min);
            assert!(least * 0.658 >= 28.8 - 0.01, "{size:?} {language:?}: {least} pt");
            let document = Document::load_mem(&pdf).expect("lopdf opens it");
            assert_eq!(document.get_pages().len(), 1, "{size:?} {language:?}");
            let said = poppler("pdfinfo", &["-"], &pdf);
            let sides: Vec<f64> = said
                .lines()
                .find(|line| line.starts_with("Page size"))
                .into_iter()
                .flat_map(|line| line.split_whitespace().filter_map(|word| word.parse().ok()))
                .collect();
            assert!((sides[0] - width).abs() < 0.1 && (sides[1] - height).abs() < 0.1, "{sides:?}");
        }
    }
}

#[test]
fn a_poster_tells_its_five_moments_in_the_order_of_the_making() {
    let draft = draft(HARBOUR);
    let basket = &draft.basket;
    let pdf = poster(&draft, &words(Units::Inches), PosterSize::A2, None);
    assert_sound(&pdf, ("1190", "en"), &basket.title);
    let said = told(&pdf);
    let mut from = 0;
    for heading in ["1 Start", "2 Join", "3 Ear", "4 Scarf", "5 Lashing"] {
        from += said[from..].find(heading).unwrap_or_else(|| panic!("{heading} in its place: {said}"));
    }
    let ears = basket.ears.as_ref().expect("ears");
    let [first, second] = [0, 1].map(|ear| basket.body.uprights().nearest(ears.each[ear].turn));
    assert!(said.contains(&format!("staves {first} and {second}")), "{said}");
}

#[test]
fn a_poster_in_parts_fits_the_printer_and_tells_its_text_once_for_reading_machines() {
    let draft = draft(HARBOUR);
    let pdf = poster(&draft, &words(Units::Inches), PosterSize::Inches16x20, Some(Paper::Letter));
    assert_tagged(&pdf, "poster in parts");
    let document = Document::load_mem(&pdf).expect("lopdf opens it");
    // A page that says how, and six to be joined (worked out beside the code).
    assert_eq!(document.get_pages().len(), 7);
    let structure = poppler("pdfinfo", &["-struct-text", "-"], &pdf);
    assert_eq!(structure.matches("Shave both ends").count(), 1, "{structure}");
}

#[test]
fn a_proposal_is_told_from_the_pattern_and_can_be_written_over() {
    let draft = draft(HARBOUR);
    let words = words(Units::Inches);
    let proposal = Proposal { level: "some <b>experience</b>".to_owned(), ..Proposal::default() };
    let page = String::from_utf8(proposal.html(&draft, &words).expect("a page")).expect("text");
    let page = page.replace("&#x2f;", "/");
    assert!(page.contains("some &lt;b&gt;experience"), "all text is escaped");
    let across = words.across(draft.basket.across());
    for told in [draft.basket.title.as_str(), &across, "for a learner", "fee for materials"] {
        assert!(page.contains(told), "{told}");
    }
    assert!(page.contains("<svg"), "the picture is inside");
    assert!(
        !page.contains("http://")
            || page.matches("http://").count() == page.matches("http://www.w3.org").count()
    );
    // Title, about, three sizes, hours, level, what to bring, and seven terms.
    assert_eq!(page.matches("contenteditable=\"true\"").count(), 15);
    assert_eq!(page.matches("aria-label=").count(), 15 + page.matches("role=\"img\" aria-label=").count());
    let pdf = proposal.pdf(&draft, &words).expect("a page");
    assert_sound(&pdf, ("612", "en"), &draft.basket.title);
    assert_eq!(Document::load_mem(&pdf).expect("lopdf opens it").get_pages().len(), 1);
    // A learner takes about twice as long (common practice); the page rounds up to half an hour.
    let [work, learner] = [true, false].map(|practised| {
        let minutes =
            draft.steps.iter().map(|step| if practised { step.work_minutes } else { step.learner_minutes });
        minutes.sum::<f64>()
    });
    assert!((1.8..=2.2).contains(&(learner / work)), "{learner} of {work}");
    let learner = words.minutes((learner / 30.0).ceil() * 30.0);
    assert!(told(&pdf).contains(&learner), "{learner}");
}

#[test]
fn both_come_in_german_and_for_a_basket_without_ears() {
    let draft = draft(FIXED);
    let words = Words::new(Language::German, Units::Millimetres);
    let pdf = poster(&draft, &words, PosterSize::A2, None);
    assert!(told(&pdf).contains("Anfang"), "{}", told(&pdf));
    let page = Proposal::default().html(&draft, &words).expect("a page");
    assert!(String::from_utf8(page).expect("text").contains("<html lang=\"de\">"));
}

#[test]
fn a_stopped_basket_is_marked_on_both() {
    let draft = draft(STOPPED);
    let words = words(Units::Inches);
    assert!(says_stop(&Proposal::default().pdf(&draft, &words).expect("a page")));
    assert!(told(&poster(&draft, &words, PosterSize::A2, None)).contains("STOP"));
}
