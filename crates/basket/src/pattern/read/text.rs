//! What reading needs of texts: a text with its place in the file, the nearest valid word, shortening,
//! what is wrong with one.

use std::ops::Range;
use std::path::{Component, Path};

use super::problem::Fault;

/// A text value and where it stands in the file, quotes included.
pub(super) struct Text<'s> {
    pub(super) text: &'s str,
    pub(super) span: Range<usize>,
}

impl Text<'_> {
    /// The place in the file of a part of the text; the whole value when escapes blur it.
    pub(super) fn place(&self, part: Range<usize>) -> Range<usize> {
        if part.is_empty() || self.span.len() != self.text.len() + 2 {
            return self.span.clone();
        }
        let start = self.span.start + 1;
        start + part.start..start + part.end
    }
}

/// The valid word that looks most like `word`, if any is near.
pub(super) fn nearest<'w>(word: &str, valid: impl IntoIterator<Item = &'w str>) -> Option<&'w str> {
    const LONGEST: usize = 80;
    const NEAR: f64 = 0.8;
    if word.len() > LONGEST {
        return None;
    }
    let word = word.to_lowercase();
    valid
        .into_iter()
        .map(|candidate| (strsim::jaro_winkler(&word, candidate), candidate))
        .filter(|(likeness, _)| *likeness >= NEAR)
        .max_by(|(a, _), (b, _)| a.total_cmp(b))
        .map(|(_, candidate)| candidate)
}

/// At most forty characters, on one line.
pub(super) fn shorten(text: &str) -> String {
    const LONGEST: usize = 40;
    let mut short: String =
        text.chars().take(LONGEST).map(|c| if c.is_control() { ' ' } else { c }).collect();
    if text.chars().nth(LONGEST).is_some() {
        short.push('…');
    }
    short
}

/// The words as a list to choose from: `a`, `b` or `c`.
pub(super) fn one_of(words: &[&str]) -> String {
    match words {
        [] => String::new(),
        [only] => format!("`{only}`"),
        [first @ .., last] => {
            let first: Vec<String> = first.iter().map(|word| format!("`{word}`")).collect();
            format!("{} or `{last}`", first.join(", "))
        }
    }
}

/// What is wrong with a text.
#[derive(Clone, Copy)]
pub(super) enum TextFault {
    Empty,
    /// Line breaks or signs that cannot be printed, where neither may stand.
    Lines,
    Signs,
    Long(usize),
}

impl TextFault {
    /// The same of a text that is called so.
    pub(super) fn of(self, what: &str) -> Fault {
        let (id, said) = match self {
            Self::Empty => ("problem-empty", "is empty"),
            Self::Lines => ("problem-lines", "has line breaks or signs that cannot be printed"),
            Self::Signs => ("problem-signs", "has signs that cannot be printed"),
            Self::Long(_) => ("problem-long", "is too long"),
        };
        let fault = Fault::new(id, format!("{what} {said}"));
        if let Self::Long(most) = self { fault.with("most", most as u32) } else { fault }
    }
}

/// What is wrong with a title, if anything.
pub(super) fn title_fault(title: &str) -> Option<TextFault> {
    const LONGEST: usize = 120;
    if title.is_empty() {
        Some(TextFault::Empty)
    } else if title.chars().any(char::is_control) {
        Some(TextFault::Lines)
    } else if title.chars().count() > LONGEST {
        Some(TextFault::Long(LONGEST))
    } else {
        None
    }
}

/// What is wrong with paragraphs of at most so many characters, if anything.
pub(super) fn paragraphs_fault(text: &str, longest: usize) -> Option<TextFault> {
    if text.is_empty() {
        Some(TextFault::Empty)
    } else if text.chars().count() > longest {
        Some(TextFault::Long(longest))
    } else if text.chars().any(|sign| sign.is_control() && !matches!(sign, '\n' | '\r' | '\t')) {
        Some(TextFault::Signs)
    } else {
        None
    }
}

/// Whether a path stays inside the folder that it starts from, on any system.
pub(super) fn is_inside(path: &str) -> bool {
    let plain = |part| matches!(part, Component::Normal(_));
    !path.is_empty()
        && !path.contains(['\\', ':'])
        && !path.chars().any(char::is_control)
        && Path::new(path).components().all(plain)
}

/// Whether a path ends as a picture does.
pub(super) fn is_picture(path: &str) -> bool {
    let ending = path.rsplit_once('.').map_or(String::new(), |(_, ending)| ending.to_lowercase());
    matches!(ending.as_str(), "jpg" | "jpeg" | "png")
}
