//! A sheet as a page of HTML: whole, escaped, and of use without anything else.

use std::collections::BTreeSet;

/// Values of an attribute, in the order of the page.
fn attributes<'a>(page: &'a str, name: &str) -> Vec<&'a str> {
    let opening = format!(" {name}=\"");
    page.split(opening.as_str()).skip(1).filter_map(|rest| rest.split('"').next()).collect()
}

/// A page is well formed, needs nothing else, and serves those who cannot see it.
pub(crate) fn assert_sound(page: &str) {
    elements_close_in_the_order_in_which_they_open(page);
    page_needs_nothing_else_and_runs_nothing(page);
    identifiers_are_unique_and_references_find_them(page);
    headings_never_skip_a_level_and_cells_have_a_scope(page);
    for drawing in page.split("<svg ").skip(1) {
        drawing_has_a_title_and_a_description(drawing);
    }
}

fn page_needs_nothing_else_and_runs_nothing(page: &str) {
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

fn identifiers_are_unique_and_references_find_them(page: &str) {
    let ids = attributes(page, "id");
    let unique: BTreeSet<&str> = ids.iter().copied().collect();
    assert_eq!(ids.len(), unique.len(), "an id stands twice");
    let links = attributes(page, "href").into_iter().filter_map(|link| link.strip_prefix('#'));
    let labels = attributes(page, "aria-labelledby").into_iter().flat_map(str::split_whitespace);
    for wanted in links.chain(labels) {
        assert!(unique.contains(wanted), "nothing is called {wanted}");
    }
}

fn headings_never_skip_a_level_and_cells_have_a_scope(page: &str) {
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

fn drawing_has_a_title_and_a_description(drawing: &str) {
    let head = &drawing[..drawing.find("<clipPath").expect("a frame")];
    for part in ["<title id=", "<desc id="] {
        let (_, rest) = head.split_once(part).expect(part);
        let said = rest.split_once('>').and_then(|(_, rest)| rest.split_once('<')).expect(part).0;
        assert!(said.len() > 3, "{head}");
    }
}

/// A handout shows the basket, how it grows, and how it should look.
pub(crate) fn assert_drawn(page: &str) {
    let drawings = page.split("<svg ").count() - 1;
    assert!(drawings > 12, "{drawings}");
}

fn elements_close_in_the_order_in_which_they_open(page: &str) {
    const VOID: [&str; 4] = ["meta", "br", "img", "link"];
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

/// Signs of markup in the maker's text stay signs.
pub(crate) fn assert_escaped(page: &str) {
    assert!(!page.contains("<script") && !page.contains("<b>"), "markup came through");
    assert!(page.contains("&lt;script&gt;alert(1)"), "the text is there");
    assert!(attributes(page, "alt").iter().any(|alt| alt.contains("&quot;quoted&quot; &amp;")));
}

/// The note stands in the step that it names, with its photograph.
pub(crate) fn assert_notes(page: &str) {
    let (_, step) = page.split_once("<h3>Lay the filler and lash the rim</h3>").expect("the step");
    let step = step.split_once("</li>").expect("its end").0;
    assert!(step.contains("<p>Shiny side out.</p>"), "{step}");
    assert!(step.contains("<img src=\"data:image/png;base64,iVBORw0KGgo"), "{step}");
    assert!(step.contains("alt=\"The first wrap\""), "{step}");
}
