//! The mould: its measurements and its side.

use basket::pattern::keys::Declared;
use basket::pattern::keys::mould::{BASE, GIRTHS, HEIGHT, MEASURED_OR_DRAWN, RIM, SIDE};
use basket::pattern::{MouldForm, Pattern, Side, Word};
use basket::{Basket, Length};
use words::Words;

use super::field::in_file;
use super::grips::{self, Hold};
use super::{lengths, outlines};
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
        MouldForm::Girths(girths) => girths.as_slice(),
        MouldForm::Drawn { .. } => &[],
    };
    let entries = written.entries(GIRTHS.path);
    let seen = |spot: basket::form::Spot| {
        let across = basket.body.form.across(spot.along, Length::ZERO);
        [across.length / 2.0, across.width / 2.0, spot.height].map(Length::to_mm)
    };
    let hold = Hold { pattern, basket, words };
    let one = |(index, girth): (usize, &basket::pattern::Girth)| Girth {
        path: format!("{}[{}]", GIRTHS.path, index + 1),
        height: measured(entries.get(index), 0, girth.height, words),
        girth: measured(entries.get(index), 1, girth.girth, words),
    };
    Mould {
        girths: girths.iter().enumerate().map(one).collect(),
        profile: profile.spots(SPOTS).map(|spot| [spot.radius.to_mm(), spot.height.to_mm()]).collect(),
        seen: profile.spots(SPOTS).map(seen).collect(),
        height_mm: basket.body.form.height().to_mm(),
        woven_to_mm: basket.body.weave.top_height.to_mm(),
        measure: if girths.is_empty() { measure(pattern, basket) } else { Vec::new() },
        draw: if girths.is_empty() { Vec::new() } else { draw(pattern, basket) },
        grips: grips::of_side(&hold),
        plan: (!basket.body.form.outline.is_round()).then(|| grips::plan(&hold)),
        shapes: outlines::shapes(pattern, basket),
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

fn remove(keys: &[&dyn Declared]) -> Vec<Edit> {
    keys.iter().map(|key| Edit::Remove { path: key.path().to_owned() }).collect()
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
    let [_, drawn] = MEASURED_OR_DRAWN.ways;
    let mut edits = remove(drawn);
    edits.push(Edit::Set { path: GIRTHS.path.to_owned(), value: girths });
    edits
}

/// Base, rim and height in place of girths. The foot of a mould that is not round keeps its length and width.
fn draw(pattern: &Pattern, basket: &Basket) -> Vec<Edit> {
    let form = &basket.body.form;
    let [base, rim] = [Length::ZERO, form.arc()].map(|along| form.across(along, Length::ZERO).length);
    let side = if base < rim { Side::Bowl } else { Side::Cone };
    let set = |key: &dyn Declared, value: EditValue| Edit::Set { path: key.path().to_owned(), value };
    let text = |length| in_file(length, pattern.units).as_str().into();
    let mut edits = remove(&[&GIRTHS]);
    if form.outline.is_round() {
        edits.push(set(&BASE, text(base)));
    }
    edits.extend([set(&RIM, text(rim)), set(&HEIGHT, text(form.height())), set(&SIDE, side.word().into())]);
    edits
}
