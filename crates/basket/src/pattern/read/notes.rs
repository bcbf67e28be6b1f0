//! Reading `[[note]]`: the maker's own words and photographs for a step.

use std::path::{Component, Path};

use toml::Spanned;
use toml::de::DeValue;

use super::keys;
use super::section::{Section, type_name};
use super::text::{Text, nearest, one_of, shorten};
use crate::pattern::{Note, Photo, StepKind};

/// More notes than any handout wants.
const MOST: usize = 100;
/// The longest text of a note, in characters: about a page.
const LONGEST: usize = 4000;

pub(super) fn notes(file: &Section) -> Vec<Note> {
    let wants = file.value("note").is_some_and(|value| value.get_ref().as_array().is_none());
    if wants {
        let message = "`note` must be a list of sections".to_owned();
        file.problem("note", message, "write [[note]] in two brackets, and its keys below");
        return Vec::new();
    }
    file.list("note", MOST).unwrap_or_default().iter().filter_map(|entry| note(file, entry)).collect()
}

fn note(file: &Section, entry: &Spanned<DeValue<'_>>) -> Option<Note> {
    let DeValue::Table(table) = entry.get_ref() else {
        let message = format!("each `note` must be a section, not {}", type_name(entry.get_ref()));
        file.context.problem(entry.span(), message, "write [[note]] and its keys below");
        return None;
    };
    let section = Section::open(file.context, "note", table, entry.span(), keys::NOTE);
    if !section.has("step") {
        section.missing("step", r#"step = "lashing" with the step that it belongs to"#);
    }
    if !section.has("text") && !section.has("photo") {
        section.missing("text", r#"text = "…", photo = "…", or both"#);
    }
    let step = step(&section);
    let text = text(&section);
    let photo = photo(&section);
    Some(Note { step: step?, text, photo })
}

fn step(section: &Section) -> Option<StepKind> {
    let text = section.text("step")?;
    let written = text.text.trim().to_lowercase();
    let found = StepKind::WORDS.iter().find(|(word, _)| *word == written).map(|(_, step)| *step);
    if found.is_none() {
        let words = StepKind::WORDS.map(|(word, _)| word);
        let help = match nearest(&written, words) {
            Some(near) => format!("did you mean `{near}`? The steps are {}", one_of(&words)),
            None => format!("write {}", one_of(&words)),
        };
        section.problem("step", format!("`{}` is not a known step", shorten(text.text)), help);
    }
    found
}

fn text(section: &Section) -> Option<String> {
    let text = section.text("text")?.text.trim();
    let fault = if text.is_empty() {
        "is empty"
    } else if text.chars().count() > LONGEST {
        "is too long"
    } else if text.chars().any(|sign| sign.is_control() && !matches!(sign, '\n' | '\r' | '\t')) {
        "has signs that cannot be printed"
    } else {
        return Some(text.to_owned());
    };
    let help = format!("write at most {LONGEST} characters; leave a line empty between paragraphs");
    section.problem("text", format!("`note.text` {fault}"), help);
    None
}

/// A photograph's path and caption; the file is the caller's part.
fn photo(section: &Section) -> Option<Photo> {
    if section.has("caption") && !section.has("photo") {
        let message = "`note.caption` stands without a photo".to_owned();
        section.problem("caption", message, r#"add photo = "photos/….jpg", or leave the caption out"#);
    }
    let path = section.text("photo")?;
    if !section.has("caption") {
        let message = "`note.photo` has no caption".to_owned();
        let help = r#"add caption = "…" with what the photo shows, for those who cannot see it"#;
        section.problem("photo", message, help);
    }
    let sound = is_inside(&path) && is_picture(&path);
    if !is_inside(&path) {
        let message = format!("`note.photo` cannot be `{}`", shorten(path.text));
        let help = r#"write a path from the pattern's own folder downward, such as "photos/lash.jpg""#;
        section.problem("photo", message, help);
    } else if !is_picture(&path) {
        let message = format!("`{}` is not named as a photo", shorten(path.text));
        section.problem("photo", message, "save it as .jpg, .jpeg or .png");
    }
    let caption = section.title("caption")?;
    sound.then(|| Photo { path: path.text.to_owned(), span: path.span.clone(), caption })
}

/// Whether a path stays inside the folder that it starts from, on any system.
fn is_inside(path: &Text) -> bool {
    let plain = |part| matches!(part, Component::Normal(_));
    !path.text.is_empty()
        && !path.text.contains(['\\', ':'])
        && !path.text.chars().any(char::is_control)
        && Path::new(path.text).components().all(plain)
}

fn is_picture(path: &Text) -> bool {
    let ending = path.text.rsplit_once('.').map_or(String::new(), |(_, ending)| ending.to_lowercase());
    matches!(ending.as_str(), "jpg" | "jpeg" | "png")
}
