//! A finding as sentences.

use basket::findings::Remedy;
use basket::message::Value;
use basket::{Finding, Grade};

use crate::{Words, piece_term};

/// A finding as sentences.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FindingText {
    /// `stop`, `care` or `note`, in the reader's language.
    pub grade: String,
    /// What was found.
    pub what: String,
    /// Where.
    pub place: String,
    /// What was measured.
    pub measured: String,
    /// What it was measured against; never printed like what was measured, unless both are the same.
    pub limit: String,
    /// Why it matters.
    pub why: String,
    /// What mends it; empty when nothing has to be mended.
    pub remedy: String,
}

impl Words {
    /// A finding.
    pub fn finding(&self, finding: &Finding) -> FindingText {
        let mut args = finding.args.clone();
        let (measured, limit) = self.compared(&finding.measured, &finding.limit);
        let (said_measured, said_limit) = (self.value(&measured), self.value(&limit));
        args.extend([("measured", measured), ("limit", limit)]);
        let id = format!("finding-{}", finding.code);
        FindingText {
            grade: self.name(finding.grade),
            what: self.of(finding.place.of, self.with(&id, &args)),
            place: self.of(finding.place.of, self.place(finding)),
            measured: said_measured,
            limit: said_limit,
            why: self.with(&format!("{id}.why"), &args),
            remedy: match finding.grade {
                Grade::Note if finding.remedies.is_empty() => String::new(),
                _ => self.remedy(&id, &args, &finding.remedies),
            },
        }
    }

    fn place(&self, finding: &Finding) -> String {
        let place = &finding.place;
        let name = self.with(piece_term(place.of, place.piece), &place.piece.name().args);
        match place.height {
            Some(height) => {
                self.with("place-at-height", &[("piece", Value::Name(name)), ("height", height.into())])
            }
            None => name,
        }
    }

    fn remedy(&self, id: &str, args: &[(&str, Value)], remedies: &[Remedy]) -> String {
        let what = self.with(&format!("{id}.remedy"), args);
        if remedies.is_empty() {
            return what;
        }
        let changes: Vec<String> = remedies.iter().map(|remedy| self.change(remedy)).collect();
        let changes = changes.join(&self.term("remedy-or"));
        self.with("remedy-changes", &[("what", Value::Name(what)), ("changes", Value::Name(changes))])
    }

    /// What to write, and the cares that come with it.
    fn change(&self, remedy: &Remedy) -> String {
        let change = format!("{} = {}", remedy.key, remedy.value);
        if remedy.brings.is_empty() {
            return change;
        }
        let cares = self.brought(remedy).join(" ");
        self.with("remedy-brings", &[("change", Value::Name(change)), ("cares", Value::Name(cares))])
    }

    /// What comes with a change, a sentence for each care.
    pub fn brought(&self, remedy: &Remedy) -> Vec<String> {
        remedy.brings.iter().map(|care| self.finding(care).what).collect()
    }
}
