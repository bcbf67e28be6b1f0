//! Whole packets: each is made once and asked everything.

use basket::pattern::Units;
use sheets::{Options, PAGES, Paper, Photos, SHEETS, sheet};
use words::{Language, Words};

use crate::common::{FIXED, HARBOUR, STOPPED, draft, file, on, packet_of, poppler, text, told, words};
use crate::{german, handout, html, pdf, true_size};

#[test]
fn a_basket_in_inches_on_letter() {
    let (draft, words) = (draft(HARBOUR), words(Units::Inches));
    let packet = packet_of(&draft, &words, &on(Paper::Letter));
    for (_, name) in SHEETS {
        pdf::assert_sound(file(&packet, name), ("612 x 792 pts", "en"), "Harbour bread basket – ");
    }
    true_size::assert_bars(file(&packet, "templates.pdf"));
    true_size::assert_disc(file(&packet, "templates.pdf"), draft.basket.body.base().diameter);
    for (_, name) in PAGES {
        html::assert_sound(text(&packet, name));
    }
    html::assert_drawn(text(&packet, "handout.html"));
    handout::assert_alike(&packet, &draft);
    handout::assert_whole(&packet, &draft, &words);
    handout::assert_staves_are_named(&draft, &words);
    pdf::assert_demonstration(file(&packet, "demonstration.pdf"));
    assert!(!pdf::says_stop(file(&packet, "handout.pdf")) && !text(&packet, "handout.html").contains("STOP"));
}

#[test]
fn the_same_basket_on_a4_in_millimetres_twice() {
    let (draft, words) = (draft(HARBOUR), words(Units::Millimetres));
    let packet = packet_of(&draft, &words, &on(Paper::A4));
    for (_, name) in SHEETS {
        pdf::assert_sound(file(&packet, name), ("595.276 x 841.89 pts", "en"), "Harbour bread basket – ");
    }
    true_size::assert_bars(file(&packet, "templates.pdf"));
    for (first, second) in packet.iter().zip(packet_of(&draft, &words, &on(Paper::A4))) {
        assert!(first.bytes == second.bytes, "{} differs", first.name);
    }
}

#[test]
fn a_basket_of_which_all_is_written_in_english() {
    let (draft, words) = (draft(FIXED), words(Units::Inches));
    let packet = packet_of(&draft, &words, &on(Paper::Letter));
    for (_, name) in PAGES {
        html::assert_sound(text(&packet, name));
    }
    html::assert_drawn(text(&packet, "handout.html"));
    handout::assert_alike(&packet, &draft);
    handout::assert_whole(&packet, &draft, &words);
    handout::assert_staves_are_named(&draft, &words);
    let card = poppler("pdftotext", &["-layout", "-", "-"], file(&packet, "bench-card.pdf"));
    insta::assert_snapshot!("bench_card_in_english", card);
}

#[test]
fn the_same_in_german() {
    let (draft, words) = (draft(FIXED), Words::new(Language::German, Units::Millimetres));
    let packet = packet_of(&draft, &words, &on(Paper::A4));
    for (_, name) in SHEETS {
        pdf::assert_sound(file(&packet, name), ("595.276 x 841.89 pts", "de"), "Fixed basket – ");
        german::assert_no_english(name, file(&packet, name), &draft);
    }
    handout::assert_alike(&packet, &draft);
    handout::assert_whole(&packet, &draft, &words);
    handout::assert_staves_are_named(&draft, &words);
    german::assert_tables(&packet);
    let card = poppler("pdftotext", &["-layout", "-", "-"], file(&packet, "bench-card.pdf"));
    insta::assert_snapshot!("bench_card_in_german", card.replace('\u{a0}', " "));
}

#[test]
fn a_basket_that_cannot_be_woven_says_so_on_every_page() {
    let (draft, words) = (draft(STOPPED), words(Units::Inches));
    let packet = packet_of(&draft, &words, &on(Paper::Letter));
    for (_, name) in SHEETS {
        assert!(pdf::says_stop(file(&packet, name)), "{name}");
    }
    let page = text(&packet, "handout.html");
    html::assert_sound(page);
    let at = page.find("<p class=\"stop\">STOP").expect("the mark");
    assert!(at < page.find("<h1").expect("a heading"));
    handout::assert_alike(&packet, &draft);
    handout::assert_whole(&packet, &draft, &words);
}

#[test]
fn the_makers_own_text_and_photographs_stand_in_their_step_and_are_never_markup() {
    let evil = "<script>alert(1)</script> \\\"quoted\\\" & <b>";
    let notes = format!(
        "[[note]]\nstep = \"rim\"\ntext = \"{evil}\"\nphoto = \"a.png\"\ncaption = \"{evil}\"\n\
         [[note]]\nstep = \"lashing\"\ntext = \"Shiny side out.\"\nphoto = \"photos/dot.png\"\n\
         caption = \"The first wrap\"\n"
    );
    let pattern = HARBOUR.replace("Harbour bread basket\"", &format!("{evil}\"")) + &notes;
    assert!(pattern.contains("title = \"<script>"), "the title was replaced");
    let dot = include_bytes!("../fixed/dot.png");
    let photos = Photos::default().with("a.png", dot.to_vec()).with("photos/dot.png", dot.to_vec());
    let options = Options { photos, ..Options::default() };
    let packet = packet_of(&draft(&pattern), &words(Units::Inches), &options);
    html::assert_escaped(text(&packet, "handout.html"));
    html::assert_notes(text(&packet, "handout.html"));
    pdf::assert_notes(file(&packet, "handout.pdf"));
}

#[test]
fn a_pattern_for_sale_has_a_title_page_and_its_rights_on_every_page() {
    let sale = "\n[sale]\nedition = \"Third edition\"\nrights = \"Not to be copied.\"\n\
                words = \"\"\"\nThe one for the market.\n\nMine took two evenings.\"\"\"\n";
    let (draft, words) = (draft(&format!("{FIXED}{sale}")), words(Units::Inches));
    let pdf = sheet("sale", &draft, &words, &on(Paper::A4)).expect("it can be set");
    pdf::assert_sound(&pdf, ("595.276 x 841.89 pts", "en"), "Fixed basket – pattern");
    let said = poppler("pdftotext", &["-raw", "-", "-"], &pdf);
    let pages: Vec<&str> = said.trim_end_matches('\u{c}').split('\u{c}').collect();
    for part in ["Fixed basket", "Third edition", "The one for the market.", "Mine took two evenings."] {
        assert!(pages[0].contains(part), "{part}: {}", pages[0]);
    }
    assert!(pages.len() > 5 && !pages[0].contains("Materials"), "{}", pages[0]);
    assert!(pages.iter().all(|page| page.contains("Not to be copied.")));
    assert!(said.contains("Materials and cut list") && said.contains("Finish and check"));
}

#[test]
fn what_lies_ready_is_told_first_and_neither_shaped_nor_soaked_again() {
    let kit = draft(
        "title = \"Kit\"\nunits = \"in\"\nready = [\"staves tapered\", \"rings\"]\n\
         [mould]\nbase = \"4\"\nrim = \"6\"\nheight = \"3\"\nside = \"bowl\"\n",
    );
    let words = words(Units::Inches);
    let said = told(file(&packet_of(&kit, &words, &on(Paper::Letter)), "handout.pdf"));
    let ready = said.find("What lies ready").expect("the handout says what lies ready");
    assert!(ready < said.find("Materials and cut list").expect("there is a cut list"), "{said}");
    assert!(said.contains("the rim outside the staves; lies ready"), "{said}");
    let (_, after) = said.split_once("Soak in warm water").expect("strands are soaked");
    let (soaked, _) = after.split_once("Times are for one basket").expect("the making follows");
    assert!(soaked.contains("Stave") && soaked.contains("Weaver"), "{soaked}");
    assert!(!soaked.contains("hoop") && !soaked.contains("Shape the staves"), "{soaked}");
}
