//! Keys of one `[[note]]`.

use super::declared::{Contents, Either, Usual};
use super::key::{Key, keys};
use super::limits::Texts;
use crate::pattern::StepKind;

/// The longest text, in characters: about a page.
pub const LONGEST: usize = 4000;

keys! {
    /// The step that it belongs to.
    pub const STEP: Key<StepKind> = Key::new("note.step", (), Usual::Needed, r#""lashing""#);
    /// What to say.
    pub const TEXT: Key<String> = Key::new(
        "note.text",
        Texts::Paragraphs(LONGEST),
        Usual::Nothing("usual-note-text"),
        r#""Shiny side out. Mine took two goes.""#,
    );
    /// What to show.
    pub const PHOTO: Key<String> =
        Key::new("note.photo", Texts::Photo, Usual::Nothing("usual-note-photo"), r#""photos/lash.jpg""#);
    /// What the photograph shows.
    pub const CAPTION: Key<String> =
        Key::new("note.caption", Texts::Line, Usual::Nothing("usual-note-caption"), r#""The first wrap""#);
}

/// A note says something, shows something, or both.
pub const TEXT_OR_PHOTO: Either =
    Either { ways: [&[&TEXT], &[&PHOTO, &CAPTION]], is_needed: true, help: None, may_lack: &[] };

/// What stands in a note.
pub const CONTENTS: Contents = Contents { keys: ALL, either: &[TEXT_OR_PHOTO] };
