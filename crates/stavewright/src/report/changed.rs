//! What came out differently than in the packet that stood there.

use std::fmt::Write;

use basket::message::Value;
use words::Words;

use crate::packet::Changed;
use crate::screen;

/// What changed, and how to keep it as it was; empty when nothing did.
pub(crate) fn render(changed: &[Changed<'_>], words: &Words) -> String {
    if changed.is_empty() {
        return String::new();
    }
    let mut said = super::heading(&words.term("screen-changed"));
    for one in changed {
        let args = [
            ("key", Value::Name(one.now.key.to_owned())),
            ("before", one.before.clone()),
            ("now", one.now.value.clone()),
        ];
        let mut line = words.with("screen-changed-line", &args);
        if let Some(keep) = one.keep() {
            line += &words.with("screen-changed-keep", &[("keep", Value::Name(keep))]);
        }
        let _ = writeln!(said, "{}", screen::wrap(&line, "", "    "));
    }
    said
}
