//! The handout as a page of HTML: whole, escaped, with all that the printed one shows.

mod common;

use std::collections::BTreeSet;

use basket::pattern::Units;
use common::{FIXED, HARBOUR, STOPPED, basket, packet_of, text, words};
use sheets::{Options, Paper, Photos, SheetError, Templates, packet};

fn page_of(pattern: &str) -> String {
    text(&packet_of(pattern, Paper::Letter, Units::Inches), "handout.html").to_owned()
}

fn page_with(pattern: &str, options: &Options) -> Result<String, SheetError> {
    let packet = packet(&basket(pattern), &words(Units::Inches), options, &mut |_| ())?;
    Ok(text(&packet, "handout.html").to_owned())
}

/// Values of an attribute, in the order of the page.
fn attributes<'a>(page: &'a str, name: &str) -> Vec<&'a str> {
    let opening = format!(" {name}=\"");
    page.split(opening.as_str()).skip(1).filter_map(|rest| rest.split('"').next()).collect()
}

#[test]
fn elements_close_in_the_order_in_which_they_open() {
    const VOID: [&str; 4] = ["meta", "br", "img", "link"];
    for pattern in [HARBOUR, STOPPED, FIXED] {
        let page = page_of(pattern);
        let mut open: Vec<&str> = Vec::new();
        for tag in page.split('<').skip(1) {
            let (tag, _) = tag.split_once('>').expect("every tag ends");
            let name = tag.trim_start_matches('/').split([' ', '\n', '/']).next().unwrap_or_default();
            if tag.starts_with('!') || VOID.contains(&name) || tag.ends_with('/') {
                continue;
            }
            if tag.starts_with('/') {
                assert_eq!(open.pop(), Some(name), "inside {open:?}");
            } else {
                open.push(name);
            }
        }
        assert!(open.is_empty(), "{open:?}");
    }
}

#[test]
fn page_needs_nothing_else_and_runs_nothing() {
    let page = page_of(HARBOUR);
    assert!(page.starts_with("<!DOCTYPE html>\n<html lang=\"en\">"), "{}", &page[..60]);
    for code in ["<script", "javascript:", " onload=", " onclick=", " onerror="] {
        assert!(!page.contains(code), "{code}");
    }
    let outside = page.replace("http://www.w3.org/2000/svg", "");
    for way in ["http:", "https:", "//", "@import", "url(h"] {
        let found = outside.find(way).map(|at| &outside[at.saturating_sub(40)..at + 20]);
        assert!(found.is_none(), "{found:?}");
    }
}

#[test]
fn identifiers_are_unique_and_references_find_them() {
    let page = page_of(HARBOUR);
    let ids = attributes(&page, "id");
    let unique: BTreeSet<&str> = ids.iter().copied().collect();
    assert_eq!(ids.len(), unique.len(), "an id stands twice");
    let links = attributes(&page, "href").into_iter().filter_map(|link| link.strip_prefix('#'));
    let labels = attributes(&page, "aria-labelledby").into_iter().flat_map(str::split_whitespace);
    for wanted in links.chain(labels) {
        assert!(unique.contains(wanted), "nothing is called {wanted}");
    }
}

#[test]
fn headings_never_skip_a_level_and_cells_have_a_scope() {
    let page = page_of(HARBOUR);
    let levels: Vec<u32> = page
        .split("<h")
        .skip(1)
        .filter_map(|rest| rest.chars().next().and_then(|level| level.to_digit(10)))
        .collect();
    assert_eq!(levels.iter().filter(|level| **level == 1).count(), 1);
    assert!(levels.windows(2).all(|pair| pair[1] <= pair[0] + 1), "{levels:?}");
    for cell in page.split("<th").skip(1).filter(|cell| !cell.starts_with("ead")) {
        assert!(cell.starts_with(" scope=\""), "{}", &cell[..30]);
    }
}

#[test]
fn every_drawing_has_a_title_and_a_description() {
    let page = page_of(HARBOUR);
    let drawings: Vec<&str> = page.split("<svg ").skip(1).collect();
    assert!(drawings.len() > 12, "{}", drawings.len());
    for drawing in drawings {
        let head = &drawing[..drawing.find("<clipPath").expect("a frame")];
        for part in ["<title id=", "<desc id="] {
            let (_, rest) = head.split_once(part).expect(part);
            let said = rest.split_once('>').and_then(|(_, rest)| rest.split_once('<')).expect(part).0;
            assert!(said.len() > 3, "{head}");
        }
    }
}

#[test]
fn the_makers_text_is_never_markup() {
    let evil = "<script>alert(1)</script> \\\"quoted\\\" & <b>";
    let note =
        format!("[[note]]\nstep = \"rim\"\ntext = \"{evil}\"\nphoto = \"a.png\"\ncaption = \"{evil}\"\n");
    let pattern = HARBOUR.replace("Harbour bread basket\"", &format!("{evil}\"")) + &note;
    assert!(pattern.contains("title = \"<script>"), "the title was replaced");
    let photos = Photos::default().with("a.png", include_bytes!("fixed/dot.png").to_vec());
    let page =
        page_with(&pattern, &Options { photos, ..Options::default() }).expect("the packet can be made");
    assert!(!page.contains("<script") && !page.contains("<b>"), "markup came through");
    assert!(page.contains("&lt;script&gt;alert(1)"), "the text is there");
    assert!(attributes(&page, "alt").iter().any(|alt| alt.contains("&quot;quoted&quot; &amp;")));
}

#[test]
fn notes_and_photographs_stand_in_their_step() {
    let note = "[[note]]\nstep = \"lashing\"\ntext = \"Shiny side out.\"\nphoto = \"photos/dot.png\"\n\
                caption = \"The first wrap\"\n";
    let pattern = format!("{HARBOUR}\n{note}");
    let photos = Photos::default().with("photos/dot.png", include_bytes!("fixed/dot.png").to_vec());
    let options = Options { photos, ..Options::default() };
    let page = page_with(&pattern, &options).expect("the packet can be made");
    let (_, step) = page.split_once("<h3>Lay the filler and lash the rim</h3>").expect("the step");
    let step = step.split_once("</li>").expect("its end").0;
    assert!(step.contains("<p>Shiny side out.</p>"), "{step}");
    assert!(step.contains("<img src=\"data:image/png;base64,iVBORw0KGgo"), "{step}");
    assert!(step.contains("alt=\"The first wrap\""), "{step}");

    let packet = packet(&basket(&pattern), &words(Units::Inches), &options, &mut |_| ()).expect("made");
    let told = common::poppler("pdftotext", &["-", "-"], common::file(&packet, "handout.pdf"));
    let (_, after) = told.split_once("Lay the filler and lash the rim").expect("the step");
    let step = after.split_once("Bend and rivet the handle").expect("the next step").0;
    assert!(step.contains("Shiny side out.") && step.contains("The first wrap"), "{step}");
}

#[test]
fn a_basket_that_cannot_be_woven_says_so_first() {
    let page = page_of(STOPPED);
    let at = page.find("<p class=\"stop\">STOP").expect("the mark");
    assert!(at < page.find("<h1").expect("a heading"));
    assert!(!page_of(HARBOUR).contains("STOP"));
}

#[test]
fn a_mistake_in_the_template_is_pointed_at() {
    let cases = [
        ("<p>\n{{ t('handout') }}\n  {{ t('handuot') }}", 3, "there is no label `handuot`"),
        ("{{ drawing('nowhere') }}", 1, "there is no drawing `nowhere`"),
        ("a\n{% for step in steps %}", 2, "end"),
        ("a\n\n{{ titel }}", 3, "undefined"),
    ];
    for (template, line, part) in cases {
        let templates = Templates::default().with("handout.html", template);
        let options = Options { templates, ..Options::default() };
        let error = page_with(HARBOUR, &options).expect_err("it is wrong");
        let SheetError::Template { sheet, mistakes } = &error else { panic!("{error}") };
        let at = mistakes[0].at.as_ref().unwrap_or_else(|| panic!("no place: {error}"));
        assert_eq!(
            (sheet.as_str(), at.file.as_str(), at.line),
            ("handout.html", "handout.html", line),
            "{error}"
        );
        assert!(error.to_string().contains(part), "{error}");
    }
}
