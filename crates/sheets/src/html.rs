//! A sheet that is told in sections, as one page of HTML that needs nothing else: drawings inlined, photographs as data.

use std::path::Path;
use std::sync::Arc;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use basket::limits::TEMPLATE_STEPS;
use minijinja::value::Value;
use minijinja::{Environment, Error, ErrorKind, UndefinedBehavior};

use crate::error::{Mistake, Position, SheetError};
use crate::press::Files;
use crate::templates::Templates;

/// The template of all pages.
const PAGE: &str = "page.html";

/// Fills the template `page.html` with the sections of this sheet, and with the data and drawings that the
/// other templates read.
///
/// All text is escaped. The template finds the name of the sheet as `sheet` and its sections as `sections`. It
/// may call `t(id)` for a label, `drawing(name)` for a drawing as
/// inline SVG and `photo(file)` for a photograph as a data URI.
///
/// # Errors
/// [`SheetError::Template`] when the template is wrong.
pub(crate) fn page(sheet: &str, templates: &Templates, files: &Files) -> Result<Vec<u8>, SheetError> {
    let mut data: serde_json::Value =
        serde_json::from_slice(files.get("data.json").map_or(b"null", Vec::as_slice))?;
    if let Some(data) = data.as_object_mut() {
        data.insert("sections".to_owned(), data.get(sheet).cloned().unwrap_or_default());
        data.insert("sheet".to_owned(), sheet.into());
    }
    fill(PAGE, &data, templates, files)
}

/// Fills a template that has a page to itself, such as `proposal.html`.
///
/// # Errors
/// [`SheetError::Template`] when the template is wrong.
pub(crate) fn alone(name: &str, templates: &Templates, files: &Files) -> Result<Vec<u8>, SheetError> {
    let data = serde_json::from_slice(files.get("data.json").map_or(b"null", Vec::as_slice))?;
    fill(name, &data, templates, files)
}

fn fill(
    name: &str,
    data: &serde_json::Value,
    templates: &Templates,
    files: &Files,
) -> Result<Vec<u8>, SheetError> {
    let text = templates.text(name).unwrap_or_default();
    let page = render((name, text), data, files).map_err(|error| SheetError::Template {
        sheet: name.to_owned(),
        mistakes: vec![mistake((name, text), &error)],
    })?;
    Ok(page.into_bytes())
}

fn render((name, text): (&str, &str), data: &serde_json::Value, files: &Files) -> Result<String, Error> {
    let mut house = Environment::new();
    house.set_undefined_behavior(UndefinedBehavior::Strict);
    house.set_trim_blocks(true);
    house.set_lstrip_blocks(true);
    house.set_debug(true);
    // A template without an end runs out of it.
    house.set_fuel(Some(TEMPLATE_STEPS));
    let labels = Value::from_serialize(&data["labels"]);
    house.add_function("t", move |id: String| {
        labels.get_attr(&id).ok().filter(|label| !label.is_undefined()).ok_or_else(|| nothing("label", &id))
    });
    let figures = data["figures"].clone();
    let files = Arc::new(files.clone());
    let drawings = Arc::clone(&files);
    house.add_function("drawing", move |name: String| {
        let file = figures[&name]["file"].as_str().and_then(|file| drawings.get(file));
        let svg = file.and_then(|svg| std::str::from_utf8(svg).ok());
        svg.map(|svg| Value::from_safe_string(svg.to_owned())).ok_or_else(|| nothing("drawing", &name))
    });
    house.add_function("photo", move |file: String| {
        let bytes = files.get(&file).ok_or_else(|| nothing("photo", &file))?;
        let is_png = Path::new(&file).extension().is_some_and(|ending| ending == "png");
        let kind = if is_png { "png" } else { "jpeg" };
        let uri = format!("data:image/{kind};base64,{}", STANDARD.encode(bytes));
        Ok::<_, Error>(Value::from_safe_string(uri))
    });
    house.add_template(name, text)?;
    house.get_template(name)?.render(Value::from_serialize(data))
}

fn nothing(what: &str, name: &str) -> Error {
    Error::new(ErrorKind::InvalidOperation, format!("there is no {what} `{name}`"))
}

fn mistake((name, text): (&str, &str), error: &Error) -> Mistake {
    let start = error.range().map(|range| range.start);
    let before = start.and_then(|start| text.get(..start)).map(|before| before.rsplit('\n').next());
    let column = before.flatten().map_or(1, |line| line.chars().count() + 1);
    let at = error.line().map(|line| Position { file: name.to_owned(), line, column });
    let detail = error.detail().map(|detail| format!(": {detail}")).unwrap_or_default();
    Mistake { at, message: format!("{}{detail}", error.kind()), hints: Vec::new() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_template_without_an_end_runs_out_of_steps() {
        let data = br#"{ "labels": {}, "figures": {}, "handout": [] }"#;
        let files = Files::from([("data.json".to_owned(), data.to_vec())]);
        let endless = "{% for a in range(90000) %}{% for b in range(90000) %}{% endfor %}{% endfor %}";
        let error =
            page("handout", &Templates::default().with(PAGE, endless), &files).expect_err("it has no end");
        assert!(error.to_string().contains("fuel"), "{error}");
    }

    #[test]
    fn a_mistake_in_the_template_is_pointed_at() {
        let data = br#"{ "labels": { "handout": "handout" }, "figures": {}, "handout": [] }"#;
        let files = Files::from([("data.json".to_owned(), data.to_vec())]);
        let cases = [
            ("<p>\n{{ t('handout') }}\n  {{ t('handuot') }}", 3, "there is no label `handuot`"),
            ("{{ drawing('nowhere') }}", 1, "there is no drawing `nowhere`"),
            ("a\n{% for section in handout %}", 2, "end"),
            ("a\n\n{{ titel }}", 3, "undefined"),
        ];
        for (template, line, part) in cases {
            let templates = Templates::default().with(PAGE, template);
            let error = page("handout", &templates, &files).expect_err("it is wrong");
            let SheetError::Template { sheet, mistakes } = &error else { panic!("{error}") };
            let at = mistakes[0].at.as_ref().unwrap_or_else(|| panic!("no place: {error}"));
            assert_eq!((sheet.as_str(), at.file.as_str(), at.line), (PAGE, PAGE, line), "{error}");
            assert!(error.to_string().contains(part), "{error}");
        }
    }
}
