//! Findings with the steps that mend them.

use basket::findings::Remedy;
use basket::message::Value;
use basket::pattern::keys;
use basket::{Basket, Draft, Grade};
use words::Words;

use super::field::as_word;
use super::form::label_of;
use super::place;
use crate::bench::api::{self, Edit, EditValue, Finding, Place, Step};
use crate::bench::text::{Written, value_of};

/// All findings, heaviest first.
pub(crate) fn findings(draft: &Draft, written: &Written, words: &Words) -> Vec<Finding> {
    draft.findings.iter().map(|finding| shown(&draft.basket, finding, (written, words))).collect()
}

fn shown(basket: &Basket, finding: &basket::Finding, (written, words): (&Written, &Words)) -> Finding {
    let text = words.finding(finding);
    Finding {
        code: finding.code.to_owned(),
        grade: match finding.grade {
            Grade::Stop => api::Grade::Stop,
            Grade::Care => api::Grade::Care,
            Grade::Note => api::Grade::Note,
        },
        grade_label: text.grade,
        what: text.what,
        why: text.why,
        remedy: text.remedy,
        measured: text.measured,
        limit: text.limit,
        place: of_place(basket, finding, text.place, words),
        steps: finding.remedies.iter().filter_map(|remedy| step(remedy, written, words)).collect(),
    }
}

fn of_place(basket: &Basket, finding: &basket::Finding, label: String, words: &Words) -> Place {
    let place = finding.place;
    let path = path(finding);
    Place {
        label,
        span_mm: place::span(basket, place),
        shown: place::shown(basket, place),
        cause: path.as_deref().map(|path| label_of(path, words)),
        path,
    }
}

/// The value that the first remedy changes, else one of the part.
fn path(finding: &basket::Finding) -> Option<String> {
    if let Some(remedy) = finding.remedies.first() {
        return Some(remedy.key.clone());
    }
    let section = place::section(finding.place.piece);
    let fields = keys::fields();
    let mut paths = fields.iter().map(|field| field.key.path());
    paths.find(|path| path.split('.').next() == Some(section)).map(str::to_owned)
}

fn step(remedy: &Remedy, written: &Written, words: &Words) -> Option<Step> {
    let value = value_of(&remedy.value)?;
    let shown = match &value {
        EditValue::Text(text) => text.clone(),
        _ => remedy.value.clone(),
    };
    let args = [("field", Value::Name(label_of(&remedy.key, words))), ("value", Value::Name(shown))];
    let other = match remedy.key.rsplit_once('.') {
        // A course ends by rows or at a place, not both.
        Some((course, "rows")) => Some(format!("{course}.until")),
        Some((course, "until")) => Some(format!("{course}.rows")),
        _ => None,
    };
    let mut edits: Vec<Edit> = other.map(|path| Edit::Remove { path }).into_iter().collect();
    edits.push(Edit::Set { path: remedy.key.clone(), value });
    let undoes = edits.iter().filter_map(|edit| undone(edit, written, words)).collect();
    Some(Step { label: words.with("form-remedy", &args), brings: words.brought(remedy), undoes, edits })
}

/// What the maker wrote where a change writes something else.
fn undone(edit: &Edit, written: &Written, words: &Words) -> Option<String> {
    let (Edit::Set { path, .. } | Edit::Remove { path }) = edit else { return None };
    let old = written.at(path)?;
    let args = [("field", Value::Name(label_of(path, words))), ("value", Value::Name(as_word(&old)))];
    Some(words.with("form-undoes", &args))
}
