//! One value of the form.

use basket::Length;
use basket::message::Value;
use basket::pattern::keys::{Declared, Known, Takes, Usual, weaves};
use basket::pattern::{Units, WeaveKind};
use basket::stock::Kind;
use words::Words;

use super::lengths;
use super::usual::is_usual;
use crate::bench::api::{self, Edit, EditValue, Field, Range, Used, Word};
use crate::bench::text::marks;

/// What a field is made from.
pub(super) struct Making<'a> {
    /// Its path.
    pub(super) path: String,
    /// Its key.
    pub(super) key: &'a dyn Declared,
    /// What stands in the file.
    pub(super) written: Option<EditValue>,
    /// What is used if nothing stands there, and why.
    pub(super) chosen: Option<(Value, String)>,
}

impl Making<'_> {
    /// The field.
    pub(super) fn field(self, words: &Words, units: Units) -> Field {
        let takes = self.key.takes();
        let text = words.key(self.key);
        let options = options(&takes, words);
        let used = match (&self.written, &self.chosen) {
            (Some(written), _) => Some(of_written(written, &takes, &options, words, units)),
            (None, Some((value, _))) => Some(of_value(value, &options, words, units)),
            (None, None) => None,
        };
        let left_out = self.written.is_none();
        let taken = self.chosen.as_ref().filter(|_| left_out).and_then(|(value, _)| to_write(value, units));
        let taken = taken.map(|value| as_taken(value, &takes));
        let set = |value| Edit::Set { path: self.path.clone(), value };
        let is_needed = self.key.usual() == Usual::Needed;
        Field {
            take: taken.map(set).into_iter().collect(),
            give: (!left_out && !is_needed)
                .then(|| Edit::Remove { path: self.path.clone() })
                .into_iter()
                .collect(),
            why: self.chosen.filter(|_| left_out).map(|(_, why)| why).filter(|why| !why.is_empty()),
            range: range(&takes, used.as_ref(), units),
            kinds: kinds(&takes).iter().map(|kind| kind.words().to_owned()).collect(),
            kind: kind(&takes),
            path: self.path,
            label: text.name,
            about: text.about,
            takes: text.takes,
            usual: is_usual(self.key),
            written: self.written,
            used,
            options,
        }
    }
}

/// A choice of yes or no is written as one, and not as a word.
fn as_taken(value: EditValue, takes: &Takes) -> EditValue {
    match (takes, &value) {
        (Takes::Flag, EditValue::Text(word)) => EditValue::Flag(word == "true"),
        _ => value,
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
    length.print(marks(length, units))
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

fn of_written(written: &EditValue, takes: &Takes, options: &[Word], words: &Words, units: Units) -> Used {
    let word = as_word(written);
    match (takes, written) {
        (Takes::Length(_), EditValue::Text(text)) => match Length::parse(text, Some(units.unit())) {
            Ok(length) => Used { text: lengths::both(words, length), word, number: Some(length.to_mm()) },
            Err(_) => Used { text: word.clone(), word, number: None },
        },
        (_, EditValue::Whole(number)) => Used { text: word.clone(), word, number: Some(f64::from(*number)) },
        (Takes::Words(_), EditValue::List(list)) => {
            let labels: Vec<String> = list.iter().map(|one| label_of(&as_word(one), options)).collect();
            Used { text: labels.join(", "), word, number: None }
        }
        (Takes::Weave, EditValue::Text(text)) => {
            let name = weaves::read(text).map(|kind| words.say(&kind.name()));
            Used { text: name.unwrap_or_else(|| word.clone()), word, number: None }
        }
        (Takes::Wood | Takes::Woods(_) | Takes::Material(_) | Takes::Materials(_), _) => {
            Used { text: each(written, &|name| words.material(name)), word, number: None }
        }
        (Takes::Colours(_) | Takes::WeaverColours(_), _) => {
            Used { text: each(written, &|name| words.colour(name)), word, number: None }
        }
        _ => Used { text: label_of(&word, options), word, number: None },
    }
}

/// The names in a value, each in the reader's language.
fn each(value: &EditValue, name: &dyn Fn(&str) -> String) -> String {
    match value {
        EditValue::Text(text) => name(text),
        EditValue::List(list) => list.iter().map(|one| each(one, name)).collect::<Vec<_>>().join(", "),
        other => as_word(other),
    }
}

/// A value on one line, as the page shows it while it is not being typed.
pub(super) fn as_word(value: &EditValue) -> String {
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

fn options(takes: &Takes, words: &Words) -> Vec<Word> {
    match takes {
        Takes::Word(known) | Takes::Words(known) => known.iter().map(|known| option(*known, words)).collect(),
        Takes::Weave => {
            weaves::ALL.iter().flat_map(weaves::Weave::offered).map(|kind| weave(kind, words)).collect()
        }
        _ => Vec::new(),
    }
}

fn option(known: Known, words: &Words) -> Word {
    Word { word: known.word.to_owned(), label: words.term(known.term) }
}

fn weave(kind: WeaveKind, words: &Words) -> Word {
    Word { word: kind.to_string(), label: words.say(&kind.name()) }
}

fn kinds(takes: &Takes) -> &'static [Kind] {
    match takes {
        Takes::Material(kinds) => kinds,
        Takes::Materials(list) => list.each,
        _ => &[],
    }
}

fn range(takes: &Takes, used: Option<&Used>, units: Units) -> Option<Range> {
    let present = used.and_then(|used| used.number);
    match takes {
        Takes::Length(limits) => {
            let [least, most] = limits.usually?;
            Some(lengths::slider(least.to_mm(), most.to_mm(), units, present.map(Length::mm)))
        }
        Takes::Count(counts) => {
            let [least, most] = counts.usually.map(f64::from);
            let (least, most) =
                (present.map_or(least, |now| now.min(least)), present.map_or(most, |now| now.max(most)));
            Some(Range { least, most, step: 1.0 })
        }
        _ => None,
    }
}

/// What the page shows it with; sections, girths and what stands in lists of sections have no field of
/// their own.
fn kind(takes: &Takes) -> api::FieldKind {
    match takes {
        Takes::Length(_) => api::FieldKind::Length,
        Takes::Count(_) => api::FieldKind::Count,
        Takes::Share(_) => api::FieldKind::Share,
        Takes::Word(_) => api::FieldKind::Word,
        Takes::Words(_) => api::FieldKind::Words,
        Takes::Weave => api::FieldKind::OpenWord,
        Takes::Material(_) => api::FieldKind::Material,
        Takes::Materials(_) => api::FieldKind::Materials,
        Takes::Wood | Takes::Woods(_) => api::FieldKind::Wood,
        Takes::Colours(_) | Takes::WeaverColours(_) => api::FieldKind::Colours,
        Takes::Lengths(_) => api::FieldKind::Lengths,
        Takes::Chart(_) => api::FieldKind::Chart,
        Takes::Flag => api::FieldKind::Flag,
        Takes::Part(..) => api::FieldKind::Part,
        Takes::Text(_)
        | Takes::End
        | Takes::Minutes(_)
        | Takes::Pairs(_)
        | Takes::Section(_)
        | Takes::Sections(_)
        | Takes::Named(_)
        | Takes::OwnColours(_) => api::FieldKind::Text,
    }
}
