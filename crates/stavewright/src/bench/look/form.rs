//! The form in making order.

use basket::Basket;
use basket::message::Value;
use basket::pattern::fields::{COURSE_FIELDS, FIELDS, Group};
use basket::pattern::{BailCurve, FillerPattern, Form, Pattern};
use basket::weave::{FLOAT_ROWS, FLOAT_STAVES};
use words::Words;

use super::field::{Making, in_file};
use crate::bench::api::{self, Edit, EditValue, Field};
use crate::bench::text::Written;

/// All groups with their fields.
pub(super) fn groups(
    written: &Written,
    pattern: &Pattern,
    basket: &Basket,
    words: &Words,
) -> Vec<api::Group> {
    let form = FormInput { written, pattern, basket, words };
    let group = |group: &Group| api::Group {
        id: group.name().to_owned(),
        label: words.term(&format!("form-group-{}", group.name())),
        fields: FIELDS
            .iter()
            .filter(|field| field.group == *group && form.applies(field.path))
            .map(|field| form.field(field))
            .collect(),
    };
    Group::ALL.iter().map(group).collect()
}

/// The name of a value with its group, such as `Staves: Count`; the path itself if there is none.
pub(crate) fn label_of(path: &str, words: &Words) -> String {
    if let Some((number, key)) = path.strip_prefix("weave.courses[").and_then(|rest| rest.split_once("].")) {
        let Some(field) = COURSE_FIELDS.iter().find(|field| field.key == key) else { return path.to_owned() };
        let args = [("number", Value::Name(number.to_owned())), ("field", name(words.term(&field.label())))];
        return words.with("form-in-course", &args);
    }
    let known = FIELDS.iter().find(|field| field.path == path || field.path.starts_with(&format!("{path}.")));
    let label = format!("form-{}", path.replace('.', "-"));
    let Some(field) = known.filter(|_| words.has(&label)) else { return path.to_owned() };
    let group = words.term(&format!("form-group-{}", field.group.name()));
    words.with("form-in-group", &[("group", name(group)), ("field", name(words.term(&label)))])
}

fn name(text: String) -> Value {
    Value::Name(text)
}

/// What the form is filled in from.
struct FormInput<'a> {
    written: &'a Written,
    pattern: &'a Pattern,
    basket: &'a Basket,
    words: &'a Words,
}

impl FormInput<'_> {
    /// Whether a value belongs to this basket. What the file says is shown in any case.
    fn applies(&self, path: &str) -> bool {
        let drawn = matches!(self.pattern.mould.form, Form::Drawn { .. });
        let curve = self.pattern.handle.as_ref().and_then(|handle| handle.curve);
        let fits = match path {
            "mould.base" | "mould.rim" | "mould.height" | "mould.side" => drawn,
            "filler.stock" => self.basket.body.filler().is_some(),
            "handle.rise" => curve != Some(BailCurve::Semicircle),
            "handle.corner" => {
                self.basket.handle.as_ref().is_some_and(|handle| handle.curve == BailCurve::ThreeCentred)
            }
            _ if path.starts_with("ears.") => self.basket.ears.is_some(),
            _ if path.starts_with("handle.") => self.basket.handle.is_some(),
            _ => true,
        };
        fits || self.written.has(path)
    }

    fn field(&self, field: &basket::pattern::fields::Field) -> Field {
        let path = field.path;
        let making = Making {
            path: path.to_owned(),
            label: self.words.term(&field.label()),
            kind: &field.kind,
            written: self.written(path),
            chosen: self.chosen(path),
        };
        let mut made = making.field(self.words, self.pattern.units);
        self.amend(&mut made);
        made
    }

    fn written(&self, path: &str) -> Option<EditValue> {
        let there = |there: bool| Some(EditValue::Flag(there));
        match path {
            "ears" => there(self.pattern.ears.is_some()),
            "handle" => there(self.pattern.handle.is_some()),
            "filler" => match self.pattern.filler {
                FillerPattern::Choose => None,
                FillerPattern::None => there(false),
                FillerPattern::Stock(_) => there(true),
            },
            _ => self.written.get(path),
        }
    }

    /// What is used where the file says nothing, and why.
    fn chosen(&self, path: &str) -> Option<(Value, String)> {
        let choice = |key: &str| self.basket.choices.iter().find(|choice| choice.key == key);
        if let Some(choice) = choice(path) {
            let value = match &choice.value {
                Value::Term(term) => Value::Term(term),
                other => other.clone(),
            };
            return Some((value, self.words.say(&choice.reason)));
        }
        let usual = |value: Value| Some((value, self.words.term("form-why-usual")));
        let staves = &self.basket.body.staves();
        match path {
            "staves.taper.from" | "staves.taper.foot" => {
                let why = choice("staves.taper").map(|choice| self.words.say(&choice.reason))?;
                let taper = staves.taper;
                let value = if path == "staves.taper.from" { taper.from } else { taper.foot };
                Some((value.into(), why))
            }
            "filler" => {
                let there = if self.basket.body.filler().is_some() { "true" } else { "false" };
                let why = choice("filler.stock").or(choice("filler"));
                Some((there.into(), why.map(|choice| self.words.say(&choice.reason)).unwrap_or_default()))
            }
            "rim.inner" => Some((
                self.basket.body.rim().inner.stock.name.as_str().into(),
                self.words.term("form-why-rim-inner"),
            )),
            "units" => usual("in".into()),
            "language" => usual("en".into()),
            "mould.shape" => usual("round".into()),
            "mould.side" => usual("cone".into()),
            "finish" => usual("shellac".into()),
            "weave.shrink" => usual(Value::Percent(self.basket.body.weave.shrink)),
            "weave.float-staves" => usual(FLOAT_STAVES.into()),
            "weave.float-rows" => usual(FLOAT_ROWS.into()),
            _ => None,
        }
    }

    /// Taking over and giving back where it is not one value written or taken out.
    fn amend(&self, field: &mut Field) {
        let set = |path: &str, text: &str| Edit::Set { path: path.to_owned(), value: text.into() };
        let remove = |path: &str| Edit::Remove { path: path.to_owned() };
        let taper = self.basket.body.staves().taper;
        match field.path.as_str() {
            "staves.taper.from" | "staves.taper.foot" => {
                if field.written.is_none() {
                    field.take = vec![
                        set("staves.taper.from", &in_file(taper.from, self.pattern.units)),
                        set("staves.taper.foot", &in_file(taper.foot, self.pattern.units)),
                    ];
                } else {
                    field.give = vec![remove("staves.taper")];
                }
            }
            // Bare lengths need the units; a drawn mould needs its sizes.
            "units" | "mould.base" | "mould.rim" | "mould.height" => field.give.clear(),
            "ears" => {
                (field.take, field.give) = (vec![set("ears.material", "brass")], vec![remove("ears")]);
            }
            "handle" => {
                (field.take, field.give) = (vec![set("handle.kind", "swing")], vec![remove("handle")]);
            }
            "filler" => {
                let stock = self.basket.body.filler().map(|filler| filler.stock.name.clone());
                field.take = match stock {
                    Some(stock) => vec![set("filler.stock", &stock)],
                    None => vec![remove("filler")],
                };
                field.give = vec![set("filler", "none")];
            }
            _ => {}
        }
    }
}
