//! The maker's own words and photographs, by the step that they belong to.

use basket::Of;
use basket::pattern::{Note, Photo, StepKind};
use basket::steps::Step;

use super::Source;
use super::lines::{NoteLine, PhotoLine};
use crate::photos::Photos;

impl Source<'_> {
    /// The notes for a step; those without a step are told in a finding.
    pub(super) fn notes(&self, step: &Step) -> Vec<NoteLine> {
        let notes = self
            .draft
            .basket
            .notes
            .iter()
            .filter(|note| note.step == step.kind && (step.of == Of::Body || step.kind == StepKind::Lid));
        notes.map(|note| line(note, self.photos)).collect()
    }
}

fn line(note: &Note, photos: &Photos) -> NoteLine {
    let photo = |photo: &Photo| {
        let file = photos.file(&photo.path)?;
        Some(PhotoLine { file, caption: photo.caption.clone() })
    };
    NoteLine { text: paragraphs(note.text.as_deref()), photo: note.photo.as_ref().and_then(photo) }
}

/// The paragraphs of a text, which an empty line parts; the lines of one run on.
pub(crate) fn paragraphs(text: Option<&str>) -> Vec<String> {
    let mut paragraphs = vec![String::new()];
    for line in text.unwrap_or_default().lines().map(str::trim) {
        match paragraphs.last_mut() {
            Some(paragraph) if !line.is_empty() => {
                if !paragraph.is_empty() {
                    paragraph.push(' ');
                }
                paragraph.push_str(line);
            }
            _ => paragraphs.push(String::new()),
        }
    }
    paragraphs.retain(|paragraph| !paragraph.is_empty());
    paragraphs
}

#[cfg(test)]
mod tests {
    use super::paragraphs;

    #[test]
    fn an_empty_line_parts_paragraphs() {
        assert_eq!(paragraphs(Some("one\ntwo\n\n \n three ")), ["one two", "three"]);
        assert!(paragraphs(None).is_empty());
    }
}
