//! A teacher's own templates, and what happens when one is wrong.

mod common;

use basket::pattern::Units;
use common::{HARBOUR, basket, poppler, words};
use sheets::{Options, SheetError, Templates, sheets};

fn with_template(text: &str) -> Result<Vec<sheets::Sheet>, SheetError> {
    let templates = Templates::default().with("bench-card.typ", text);
    let options = Options { templates, ..Options::default() };
    sheets(&basket(HARBOUR), &words(Units::Inches), &options, &mut |_| ())
}

#[test]
fn own_template_takes_the_place_of_the_built_in() {
    let own = "#import \"house.typ\": *\n#show: house.with(\"own card\")\n#title(data.title)\nOur own card.";
    let sheets = with_template(own).expect("the template is fine");
    let text = poppler("pdftotext", &["-", "-"], &sheets[1].pdf);
    assert!(text.contains("Our own card."), "{text}");
}

#[test]
fn mistake_points_into_the_template() {
    let error = with_template("#import \"house.typ\": *\n= Card\nü #nonsense").expect_err("it is wrong");
    let SheetError::Template { sheet, mistakes } = &error else { panic!("{error}") };
    assert_eq!(sheet, "bench-card");
    let at = mistakes[0].at.as_ref().expect("a place");
    assert_eq!((at.file.as_str(), at.line, at.column), ("bench-card.typ", 3, 4));
    assert!(error.to_string().contains("bench-card.typ:3:4: unknown variable: nonsense"), "{error}");
}

#[test]
fn files_outside_cannot_be_read() {
    let error = with_template("#read(\"/etc/passwd\")").expect_err("there is no such file");
    assert!(error.to_string().contains("bench-card.typ:1:"), "{error}");
    let error = with_template("#import \"@preview/x:1.0.0\": y").expect_err("there is no such package");
    assert!(error.to_string().contains("bench-card.typ:1:"), "{error}");
}

#[test]
fn drawing_without_text_is_refused() {
    let own = "#import \"house.typ\": *\n#show: house.with(\"x\")\n#image(data.figures.view.file)";
    let error = with_template(own).expect_err("PDF/UA-1 asks for a text");
    assert!(error.to_string().contains("bench-card.typ:3:"), "{error}");
}

#[test]
fn mistakes_carry_the_typesetters_hint() {
    let error =
        with_template("#import \"house.typ\": *\n#let long-name = 1\n#long_name").expect_err("it is wrong");
    assert!(error.to_string().contains("bench-card.typ:3:"), "{error}");
    let error = with_template("#let a = 1\n#a-b").expect_err("it is wrong");
    let said = error.to_string();
    assert!(said.contains("bench-card.typ:2:2") && said.contains("hint: "), "{said}");
}

#[test]
fn mistake_in_a_file_that_a_template_imports_is_found_there() {
    let templates = Templates::default()
        .with("own-notes.typ", "#let own-notes(step, indent: 0mm) = {\n  step.nothing\n}");
    let options = Options { templates, ..Options::default() };
    let error =
        sheets(&basket(HARBOUR), &words(Units::Inches), &options, &mut |_| ()).expect_err("it is wrong");
    assert!(error.to_string().contains("own-notes.typ:2:"), "{error}");
}
