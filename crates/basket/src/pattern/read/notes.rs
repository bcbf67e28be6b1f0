//! Reading `[[note]]`: the maker's own words and photographs for a step.

use toml::Spanned;
use toml::de::DeValue;

use super::problem::Fault;
use super::raw::{type_name, type_term};
use super::section::Section;
use super::text::{nearest, one_of, shorten};
use crate::pattern::keys;
use crate::pattern::keys::note::{CAPTION, PHOTO, STEP, TEXT, TEXT_OR_PHOTO};
use crate::pattern::{Note, Photo, StepKind, Word};

pub(super) fn notes(file: &Section) -> Vec<Note> {
    let wants = file.value(&keys::NOTE).is_some_and(|value| value.get_ref().as_array().is_none());
    if wants {
        let message = format!("`{}` must be a list of sections", keys::NOTE.path);
        file.problem(
            &keys::NOTE,
            Fault::new("problem-notes", message),
            "write [[note]] in two brackets, and its keys below",
        );
        return Vec::new();
    }
    let list = file.list(&keys::NOTE, keys::NOTE.takes.most).unwrap_or_default();
    list.iter().filter_map(|entry| note(file, entry)).collect()
}

fn note(file: &Section, entry: &Spanned<DeValue<'_>>) -> Option<Note> {
    let DeValue::Table(table) = entry.get_ref() else {
        let path = keys::NOTE.path;
        let message = format!("each `{path}` must be a section, not {}", type_name(entry.get_ref()));
        let fault = Fault::new("problem-not-section", message).with("found", type_term(entry.get_ref()));
        file.context.problem(entry.span(), fault, "write [[note]] and its keys below");
        return None;
    };
    let section = Section::open(file.context, &keys::NOTE, table, entry.span());
    if !section.has(&STEP) {
        section.missing(&STEP, &format!("step = {} with the step that it belongs to", STEP.example));
    }
    if section.one_way(&TEXT_OR_PHOTO) == [false, false] {
        section.missing(&TEXT, r#"text = "…", photo = "…", or both"#);
    }
    let step = step(&section);
    let text = section.get(&TEXT);
    let photo = photo(&section);
    Some(Note { step: step?, text, photo })
}

fn step(section: &Section) -> Option<StepKind> {
    let text = section.text(&STEP)?;
    let written = text.text.trim().to_lowercase();
    let found = StepKind::ALL.iter().copied().find(|step| step.word() == written);
    if found.is_none() {
        let words: Vec<&str> = StepKind::ALL.iter().map(|step| step.word()).collect();
        let near = nearest(&written, words.iter().copied());
        let help = match near {
            Some(near) => format!("did you mean `{near}`? The steps are {}", one_of(&words)),
            None => format!("write {}", one_of(&words)),
        };
        let fault = Fault::new("problem-word", format!("`{}` is not a known step", shorten(text.text)));
        section.problem(&STEP, fault.with("written", shorten(text.text)).near(near), help);
    }
    found
}

/// A photograph's path and caption; the file is the caller's part.
fn photo(section: &Section) -> Option<Photo> {
    if section.has(&CAPTION) && !section.has(&PHOTO) {
        let message = format!("`{}` stands without a photo", CAPTION.path);
        section.problem(
            &CAPTION,
            Fault::new("problem-caption-alone", message),
            r#"add photo = "photos/….jpg", or leave the caption out"#,
        );
    }
    let span = section.value(&PHOTO)?.span();
    if section.text(&PHOTO).is_some() && !section.has(&CAPTION) {
        let message = format!("`{}` has no caption", PHOTO.path);
        let help = r#"add caption = "…" with what the photo shows, for those who cannot see it"#;
        section.problem(&PHOTO, Fault::new("problem-no-caption", message), help);
    }
    let path = section.get(&PHOTO);
    let caption = section.get(&CAPTION);
    Some(Photo { path: path?, span, caption: caption? })
}
