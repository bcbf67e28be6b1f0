//! The way to a value: keys and, in brackets, entries of lists counted from 1.

use std::fmt;

use crate::bench::refusal::Refusal;

/// No pattern nests deeper.
const DEEPEST: usize = 8;
/// No list of a pattern is longer.
const LONGEST_LIST: usize = 10_000;

/// One step of the way.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum PathStep {
    /// A key of a section.
    Key(String),
    /// An entry of a list, counted from 0.
    Entry(usize),
}

/// The way to a value, such as `weave.courses[2].rows`. It begins with a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Path(Vec<PathStep>);

impl Path {
    /// Reads a way.
    pub(crate) fn read(text: &str) -> Result<Self, Refusal> {
        let steps = steps(text).filter(|steps| (1..=DEEPEST).contains(&steps.len()));
        steps.map(Self).ok_or_else(|| {
            let shown: String = text.chars().take(80).collect();
            Refusal::senseless(
                format!("`{shown}` is not the name of a value"),
                "path",
                "Write keys with dots between them and entries in brackets: weave.courses[2].rows.",
            )
        })
    }

    /// Its steps; the first is a key.
    pub(crate) fn steps(&self) -> &[PathStep] {
        &self.0
    }

    /// The way with one more step.
    pub(crate) fn then(&self, step: PathStep) -> Self {
        Self(self.0.iter().cloned().chain([step]).collect())
    }
}

impl From<PathStep> for Path {
    fn from(step: PathStep) -> Self {
        Self(vec![step])
    }
}

impl fmt::Display for Path {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (index, step) in self.0.iter().enumerate() {
            match step {
                PathStep::Key(key) if index == 0 => write!(f, "{key}")?,
                PathStep::Key(key) => write!(f, ".{key}")?,
                PathStep::Entry(entry) => write!(f, "[{}]", entry + 1)?,
            }
        }
        Ok(())
    }
}

fn steps(text: &str) -> Option<Vec<PathStep>> {
    let mut steps = Vec::new();
    for piece in text.split('.') {
        let (key, entries) = piece.split_once('[').map_or((piece, None), |(key, rest)| (key, Some(rest)));
        let plain = |sign: char| sign.is_ascii_alphanumeric() || sign == '-' || sign == '_';
        if key.is_empty() || key.len() > 60 || !key.chars().all(plain) {
            return None;
        }
        steps.push(PathStep::Key(key.to_owned()));
        if let Some(entries) = entries {
            for entry in entries.strip_suffix(']')?.split("][") {
                let number: usize =
                    entry.parse().ok().filter(|number| (1..=LONGEST_LIST).contains(number))?;
                steps.push(PathStep::Entry(number - 1));
            }
        }
    }
    Some(steps)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ways_are_read_and_written() {
        for text in ["title", "base.groove.depth", "weave.courses[2].rows", "mould.girths[3][1]", "step-up"] {
            assert_eq!(Path::read(text).unwrap().to_string(), text);
        }
    }

    #[test]
    fn nonsense_is_refused() {
        for text in ["", ".", "a..b", "a[0]", "a[1", "a[x]", "[1]", "a b", "a[1]b", "a.b.c.d.e.f.g.h.i", "ä"]
        {
            let refusal = Path::read(text).unwrap_err();
            assert_eq!(refusal.status(), 422, "{text}");
        }
    }
}
