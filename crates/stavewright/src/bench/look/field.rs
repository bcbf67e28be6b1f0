//! One value of the form.

use basket::Length;
use basket::message::Value;
use basket::pattern::Units;
use basket::pattern::fields::{self, FieldKind, Word as KnownWord};
use basket::stock::Kind;
use words::Words;

use super::lengths;
use crate::bench::api::{self, Edit, EditValue, Field, Range, Used, Word};
use crate::bench::text::marks;

/// What a field is made from.
pub(super) struct Making<'a> {
    /// Its path.
    pub(super) path: String,
    /// Its name.
    pub(super) label: String,
    /// What it takes.
    pub(super) kind: &'a FieldKind,
    /// What stands in the file.
    pub(super) written: Option<EditValue>,
    /// What is used if nothing stands there, and why.
    pub(super) chosen: Option<(Value, String)>,
}

impl Making<'_> {
    /// The field.
    pub(super) fn field(self, words: &Words, units: Units) -> Field {
        let options = options(self.kind, words);
        let used = match (&self.written, &self.chosen) {
            (Some(written), _) => Some(of_written(written, self.kind, &options, words, units)),
            (None, Some((value, _))) => Some(of_value(value, &options, words, units)),
            (None, None) => None,
        };
        let left_out = self.written.is_none();
        let taken = self.chosen.as_ref().filter(|_| left_out).and_then(|(value, _)| to_write(value, units));
        let set = |value| Edit::Set { path: self.path.clone(), value };
        let is_needed = matches!(self.path.as_str(), "title");
        Field {
            take: taken.map(set).into_iter().collect(),
            give: (!left_out && !is_needed)
                .then(|| Edit::Remove { path: self.path.clone() })
                .into_iter()
                .collect(),
            why: self.chosen.filter(|_| left_out).map(|(_, why)| why).filter(|why| !why.is_empty()),
            range: range(self.kind, used.as_ref(), units),
            kinds: kinds(self.kind).iter().map(|kind| kind.words().to_owned()).collect(),
            kind: kind(self.kind),
            path: self.path,
            label: self.label,
            written: self.written,
            used,
            options,
        }
    }
}

/// The value in use, as text of the pattern.
pub(super) fn to_write(value: &Value, units: Units) -> Option<EditValue> {
    Some(match value {
        Value::Length(length) => EditValue::Text(in_file(*length, units)),
        Value::Count(count) => EditValue::Whole(i32::try_from(*count).ok()?),
        Value::Percent(share) => EditValue::Text(percent(*share)),
        Value::Name(name) => EditValue::Text(name.clone()),
        _ => return None,
    })
}

/// A length as a maker writes it: `4 7/8 in`.
pub(super) fn in_file(length: Length, units: Units) -> String {
    length.print(marks(length, units == Units::Millimetres))
}

fn percent(share: f64) -> String {
    let text = format!("{:.1}", share * 100.0);
    format!("{} %", text.trim_end_matches('0').trim_end_matches('.'))
}

fn of_value(value: &Value, options: &[Word], words: &Words, units: Units) -> Used {
    match value {
        Value::Length(length) => Used {
            text: lengths::both(words, *length),
            word: in_file(*length, units),
            number: Some(length.to_mm()),
        },
        Value::Count(count) => {
            Used { text: count.to_string(), word: count.to_string(), number: Some(*count as f64) }
        }
        Value::Percent(share) => {
            Used { text: words.value(value), word: percent(*share), number: Some(*share * 100.0) }
        }
        other => {
            let word = words.value(other);
            Used { text: label_of(&word, options), word, number: None }
        }
    }
}

fn label_of(word: &str, options: &[Word]) -> String {
    options.iter().find(|option| option.word == word).map_or(word, |option| &option.label).to_owned()
}

fn of_written(written: &EditValue, kind: &FieldKind, options: &[Word], words: &Words, units: Units) -> Used {
    let word = as_word(written);
    match (kind, written) {
        (FieldKind::Length(_), EditValue::Text(text)) => match Length::parse(text, Some(units.unit())) {
            Ok(length) => Used { text: lengths::both(words, length), word, number: Some(length.to_mm()) },
            Err(_) => Used { text: word.clone(), word, number: None },
        },
        (_, EditValue::Whole(number)) => Used { text: word.clone(), word, number: Some(f64::from(*number)) },
        _ => Used { text: label_of(&word, options), word, number: None },
    }
}

/// A value on one line, as the page shows it while it is not being typed.
fn as_word(value: &EditValue) -> String {
    match value {
        EditValue::Flag(flag) => flag.to_string(),
        EditValue::Whole(number) => number.to_string(),
        EditValue::Number(number) => number.to_string(),
        EditValue::Text(text) => text.clone(),
        EditValue::List(list) => list.iter().map(as_word).collect::<Vec<_>>().join(", "),
        EditValue::Table(table) => table
            .iter()
            .map(|(key, value)| format!("{key} {}", as_word(value)))
            .collect::<Vec<_>>()
            .join(", "),
    }
}

fn options(kind: &FieldKind, words: &Words) -> Vec<Word> {
    match kind {
        FieldKind::Word(known) => known().into_iter().map(|word| option(word, words)).collect(),
        FieldKind::Weave => fields::weaves().map(|word| weave(word, words)).collect(),
        _ => Vec::new(),
    }
}

fn option((word, term): KnownWord, words: &Words) -> Word {
    Word { word: word.to_owned(), label: words.term(term) }
}

fn weave(word: String, words: &Words) -> Word {
    let label = fields::weave(&word).map_or_else(|| word.clone(), |kind| words.say(&kind.name()));
    Word { word, label }
}

fn kinds(kind: &FieldKind) -> &'static [Kind] {
    match kind {
        FieldKind::Material(kinds) | FieldKind::Materials(kinds) => kinds,
        _ => &[],
    }
}

fn range(kind: &FieldKind, used: Option<&Used>, units: Units) -> Option<Range> {
    let present = used.and_then(|used| used.number);
    match kind {
        FieldKind::Length(usual) => {
            Some(lengths::slider(*usual.start(), *usual.end(), units, present.map(Length::mm)))
        }
        FieldKind::Count(usual) => {
            let (least, most) = (f64::from(*usual.start()), f64::from(*usual.end()));
            let (least, most) =
                (present.map_or(least, |now| now.min(least)), present.map_or(most, |now| now.max(most)));
            Some(Range { least, most, step: 1.0 })
        }
        _ => None,
    }
}

fn kind(kind: &FieldKind) -> api::FieldKind {
    match kind {
        FieldKind::Text => api::FieldKind::Text,
        FieldKind::Length(_) => api::FieldKind::Length,
        FieldKind::Count(_) => api::FieldKind::Count,
        FieldKind::Share => api::FieldKind::Share,
        FieldKind::Word(_) => api::FieldKind::Word,
        FieldKind::Weave => api::FieldKind::OpenWord,
        FieldKind::Material(_) => api::FieldKind::Material,
        FieldKind::Materials(_) => api::FieldKind::Materials,
        FieldKind::Wood => api::FieldKind::Wood,
        FieldKind::Colours => api::FieldKind::Colours,
        FieldKind::Lengths => api::FieldKind::Lengths,
        FieldKind::Chart => api::FieldKind::Chart,
        FieldKind::Flag => api::FieldKind::Flag,
        FieldKind::Part => api::FieldKind::Part,
    }
}
