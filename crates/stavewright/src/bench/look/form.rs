//! The form in making order.

use basket::Basket;
use basket::message::Value;
use basket::pattern::keys::{
    self, Declared, Group, Usual, ears, filler, handle, lashing, lid, mould, rim, staves, taper, weave,
};
use basket::pattern::{BailCurve, EarMaterial, FillerPattern, HandleKind, LidFit, MouldForm, Pattern, Word};
use words::Words;

use super::field::{Making, in_file};
use super::outlines;
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
    let fields = keys::fields();
    let group = |group: &Group| api::Group {
        id: group.name().to_owned(),
        label: words.term(&format!("form-group-{}", group.name())),
        fields: fields
            .iter()
            .filter(|field| field.group == *group && form.applies(field.key.path()))
            .map(|field| form.field(field.key))
            .collect(),
    };
    Group::ALL.iter().map(group).collect()
}

/// The name of a value with its group, such as `Staves: Count`; the path itself if there is none.
pub(crate) fn label_of(path: &str, words: &Words) -> String {
    let Some(key) = keys::find(path) else { return path.to_owned() };
    let field = ("field", name(words.term(&key.label())));
    let course = path.strip_prefix(keys::weave::COURSES.path).and_then(|rest| rest.strip_prefix('['));
    if let Some((number, _)) = course.and_then(|rest| rest.split_once(']')) {
        return words.with("form-in-course", &[("number", name(number.to_owned())), field]);
    }
    let group = path.split('.').next().and_then(keys::find).and_then(Declared::group);
    let Some(group) = group else { return path.to_owned() };
    let group = name(words.term(&format!("form-group-{}", group.name())));
    words.with("form-in-group", &[("group", group), field])
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
        let [_, drawn] = mould::MEASURED_OR_DRAWN.ways;
        let within = |part: &str| path.strip_prefix(part).is_some_and(|rest| rest.starts_with('.'));
        let curve = self.pattern.handle.as_ref().and_then(|handle| handle.curve);
        let of_axis = [ears::AXIS.path, handle::AXIS.path].contains(&path);
        let outline = self.pattern.mould.outline.kind();
        let fits = if let Some(shapes) = outlines::shapes_with(path) {
            shapes.contains(&outline)
                && (path != mould::BASE.path || matches!(self.pattern.mould.form, MouldForm::Drawn { .. }))
        } else if drawn.iter().any(|key| key.path() == path) {
            matches!(self.pattern.mould.form, MouldForm::Drawn { .. })
        } else if path == filler::STOCK.path {
            self.basket.body.filler().is_some()
        } else if within(keys::LASHING.path) {
            self.basket.body.lashing().is_some()
        } else if of_axis && self.basket.body.form.outline.is_round()
            || path == handle::RISE.path && curve == Some(BailCurve::Semicircle)
        {
            false
        } else if path == handle::CORNER.path {
            self.basket.bow().is_some_and(|bow| bow.curve == BailCurve::ThreeCentred)
        } else if let Some(handle) = self.pattern.handle.as_ref().filter(|_| within(keys::HANDLE.path)) {
            handle::belongs(path, handle.kind())
        } else if within(keys::EARS.path) {
            self.basket.ears.is_some()
        } else if within(keys::LID.path) {
            self.basket.lid.is_some()
        } else {
            !within(keys::HANDLE.path) || self.basket.handle.is_some()
        };
        fits || self.written.has(path)
    }

    fn field(&self, key: &dyn Declared) -> Field {
        let path = key.path();
        let making =
            Making { path: path.to_owned(), key, written: self.written(path), chosen: self.chosen(key) };
        let mut made = making.field(self.words, self.pattern.units);
        self.amend(&mut made);
        made
    }

    fn written(&self, path: &str) -> Option<EditValue> {
        let there = |there: bool| Some(EditValue::Flag(there));
        if path == keys::EARS.path {
            there(self.pattern.ears.is_some())
        } else if path == keys::HANDLE.path {
            there(self.pattern.handle.is_some())
        } else if path == keys::LID.path {
            there(self.pattern.lid.is_some())
        } else if path == keys::FILLER.path {
            match self.pattern.filler {
                FillerPattern::Choose => None,
                FillerPattern::None => there(false),
                FillerPattern::Stock(_) => there(true),
            }
        } else if path == keys::LASHING.path {
            match &self.pattern.lashing {
                None => there(false),
                Some(_) => self.written.has(keys::LASHING.path).then_some(EditValue::Flag(true)),
            }
        } else {
            self.written.get(path)
        }
    }

    /// What is used where the file says nothing, and why.
    fn chosen(&self, key: &dyn Declared) -> Option<(Value, String)> {
        let path = key.path();
        let choice = |key: &str| self.basket.choices.iter().find(|choice| choice.key == key);
        let reason = |key: &str| choice(key).map(|choice| self.words.say(&choice.reason));
        if let Some(choice) = choice(path) {
            return Some((choice.value.clone(), self.words.say(&choice.reason)));
        }
        let taper = self.basket.body.staves().taper;
        let in_taper = reason(staves::TAPER.path);
        let usual = |value: Value| Some((value, self.words.key(key).left_out));
        match key.usual() {
            Usual::Constant(usual) => Some((usual, self.words.term("form-why-usual"))),
            _ if path == taper::FROM.path => Some((taper.from.into(), in_taper?)),
            _ if path == taper::FOOT.path => Some((taper.foot.into(), in_taper?)),
            _ if path == keys::FILLER.path => {
                let there = self.basket.body.filler().is_some().to_string();
                let why = reason(filler::STOCK.path).or_else(|| reason(path));
                Some((there.into(), why.unwrap_or_default()))
            }
            _ if path == keys::LASHING.path => usual(self.basket.body.lashing().is_some().to_string().into()),
            _ if path == rim::INNER.path => usual(self.basket.body.rim().inner.stock.name.as_str().into()),
            _ if path == weave::DIRECTION.path => usual(self.basket.body.weave.direction.word().into()),
            _ if path == weave::SHRINK.path => usual(Value::Percent(self.basket.body.weave.shrink)),
            _ => None,
        }
    }

    /// Taking over and giving back where it is not one value written or taken out.
    fn amend(&self, field: &mut Field) {
        let set = |path: &str, text: &str| Edit::Set { path: path.to_owned(), value: text.into() };
        let remove = |path: &str| Edit::Remove { path: path.to_owned() };
        let path = field.path.as_str();
        let [_, drawn] = mould::MEASURED_OR_DRAWN.ways;
        if taper::ALL.iter().any(|key| key.path() == path) {
            let used = self.basket.body.staves().taper;
            if field.written.is_none() {
                let length = |length| in_file(length, self.pattern.units);
                field.take = vec![
                    set(taper::FROM.path, &length(used.from)),
                    set(taper::FOOT.path, &length(used.foot)),
                ];
            } else {
                field.give = vec![remove(staves::TAPER.path)];
            }
        } else if path == keys::UNITS.path
            || path != mould::SIDE.path && drawn.iter().any(|key| key.path() == path)
            || ![mould::FULLNESS.path, mould::LEVELS.path].contains(&path)
                && outlines::shapes_with(path).is_some()
        {
            // Bare lengths need the units; a drawn mould needs its sizes, as an outline does.
            field.give.clear();
        } else if path == keys::EARS.path {
            field.take = vec![set(ears::MATERIAL.path, EarMaterial::Brass.word())];
            field.give = vec![remove(path)];
        } else if path == keys::HANDLE.path {
            field.take = vec![set(handle::KIND.path, HandleKind::Swing.word())];
            field.give = vec![remove(path)];
        } else if path == keys::LID.path {
            field.take = vec![set(lid::FIT.path, LidFit::DropIn.word())];
            field.give = vec![remove(path)];
        } else if path == keys::FILLER.path {
            let stock = self.basket.body.filler().map(|filler| filler.stock.name.clone());
            field.take = match stock {
                Some(stock) => vec![set(filler::STOCK.path, &stock)],
                None => vec![remove(path)],
            };
            field.give = vec![set(path, filler::NONE)];
        } else if path == keys::LASHING.path {
            let every = self.basket.body.lashing().map(|lashing| lashing.every.word());
            field.take = match every {
                Some(every) => vec![set(lashing::EVERY.path, every)],
                None => vec![remove(path)],
            };
            field.give = vec![set(path, lashing::NONE)];
        }
    }
}
