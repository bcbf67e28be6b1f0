//! The mould: its measurements and its side.

use basket::pattern::{Form, Pattern};
use basket::{Basket, Length};
use words::Words;

use super::field::in_file;
use super::lengths;
use crate::bench::api::{Edit, EditValue, Girth, Measured, Mould};
use crate::bench::text::Written;

/// Places of the side that are sent: enough for a smooth line.
const SPOTS: u32 = 65;
/// Girths taken when a drawn mould is measured.
const TAKEN: u32 = 5;

/// The mould.
pub(super) fn mould(written: &Written, pattern: &Pattern, basket: &Basket, words: &Words) -> Mould {
    let profile = &basket.body.form.profile;
    let girths = match &pattern.mould.form {
        Form::Girths(girths) => girths.as_slice(),
        Form::Drawn { .. } => &[],
    };
    let entries = written.entries("mould.girths");
    let one = |(index, girth): (usize, &basket::pattern::Girth)| Girth {
        path: format!("mould.girths[{}]", index + 1),
        height: measured(entries.get(index), 0, girth.height, words),
        girth: measured(entries.get(index), 1, girth.girth, words),
    };
    Mould {
        girths: girths.iter().enumerate().map(one).collect(),
        profile: profile.spots(SPOTS).map(|spot| [spot.radius.to_mm(), spot.height.to_mm()]).collect(),
        height_mm: basket.body.form.height().to_mm(),
        woven_to_mm: basket.body.weave.top_height.to_mm(),
        measure: if girths.is_empty() { measure(pattern, basket) } else { Vec::new() },
        draw: if girths.is_empty() { Vec::new() } else { draw(pattern, basket) },
    }
}

fn measured(entry: Option<&EditValue>, at: usize, length: Length, words: &Words) -> Measured {
    let written = match entry {
        Some(EditValue::List(pair)) => match pair.get(at) {
            Some(EditValue::Text(text)) => text.clone(),
            _ => String::new(),
        },
        _ => String::new(),
    };
    Measured { written, text: lengths::both(words, length), mm: length.to_mm() }
}

fn remove(keys: &[&str]) -> Vec<Edit> {
    keys.iter().map(|key| Edit::Remove { path: format!("mould.{key}") }).collect()
}

/// Girths at even heights in place of base, rim and height.
fn measure(pattern: &Pattern, basket: &Basket) -> Vec<Edit> {
    let form = &basket.body.form;
    let pair = |step: u32| {
        let height = form.height() * (f64::from(step) / f64::from(TAKEN - 1));
        let girth = form.girth(form.profile.along_at_height(height), Length::ZERO);
        let text = |length| in_file(length, pattern.units).as_str().into();
        EditValue::List(vec![text(height), text(girth)])
    };
    let girths = EditValue::List((0..TAKEN).map(pair).collect());
    let mut edits = remove(&["base", "rim", "height", "side"]);
    edits.push(Edit::Set { path: "mould.girths".to_owned(), value: girths });
    edits
}

/// Base, rim and height in place of girths.
fn draw(pattern: &Pattern, basket: &Basket) -> Vec<Edit> {
    let form = &basket.body.form;
    let across = |girth: Length| girth / std::f64::consts::PI;
    let (base, rim) = (across(form.girth_base()), across(form.girth_top()));
    let side = if base < rim { "bowl" } else { "cone" };
    let set = |key: &str, value: EditValue| Edit::Set { path: format!("mould.{key}"), value };
    let text = |length| in_file(length, pattern.units).as_str().into();
    let mut edits = remove(&["girths"]);
    edits.extend([
        set("base", text(base)),
        set("rim", text(rim)),
        set("height", text(form.height())),
        set("side", side.into()),
    ]);
    edits
}
