//! A pattern from what is asked for a first basket.

use basket::Length;
use basket::measure::Printing;
use basket::pattern::keys::{self, ears, handle, mould, staves};
use basket::pattern::{EarMaterial, HandleKind, Units, Word};

use super::trial::Trial;
use super::ways::Search;
use crate::bench::api::{Edit, EditValue, Edited, FirstMould, FirstRequest, HandleWord};
use crate::bench::compute::{Shop, words};
use crate::bench::look::look;
use crate::bench::refusal::Refusal;
use crate::bench::text;

/// Height and width at the base of a bowl of which only the width at the rim is known, as shares of that
/// width (derived for this project from the example patterns).
const HEIGHT: f64 = 4.0 / 7.0;
const BASE: f64 = 5.0 / 7.0;

/// Makes the pattern. What was typed and cannot be read is written as it is and told as a problem.
pub(crate) fn first(request: &FirstRequest, shop: Shop<'_>) -> Result<Edited, Refusal> {
    let units = Units::from(request.typed_in);
    let plain = text::edit("", &plain(request, units))?;
    let source = match Trial::of(plain.clone(), shop) {
        Ok(now) => woven(request, &now, shop)?,
        Err(_) => plain,
    };
    let look = look(&source, request.language.as_deref(), request.units, shop)?;
    Ok(Edited { source, look })
}

fn set(path: &str, value: impl Into<EditValue>) -> Edit {
    Edit::Set { path: path.to_owned(), value: value.into() }
}

/// Everything but the weaving.
fn plain(request: &FirstRequest, units: Units) -> Vec<Edit> {
    let mut edits = vec![set(keys::TITLE.path, request.title.as_str()), set(keys::UNITS.path, units.word())];
    if let Some(language) = request.language.as_deref().filter(|tag| *tag != "en") {
        edits.push(set(keys::LANGUAGE.path, language));
    }
    match &request.mould {
        FirstMould::Guessed { across, high } => {
            let rim = Length::parse(across.trim(), Some(units.unit())).ok();
            let share =
                |share: f64| rim.map_or_else(|| across.trim().to_owned(), |rim| rounded(rim * share, units));
            let high = if high.trim().is_empty() { share(HEIGHT) } else { high.trim().to_owned() };
            edits.extend([
                set(mould::BASE.path, share(BASE).as_str()),
                set(mould::RIM.path, across.trim()),
                set(mould::HEIGHT.path, high.as_str()),
                set(mould::SIDE.path, "bowl"),
            ]);
        }
        FirstMould::Measured { base, top, high } => {
            let pair =
                |height: &str, girth: &str| EditValue::List(vec![height.trim().into(), girth.trim().into()]);
            let girths = EditValue::List(vec![pair("0", base), pair(high, top)]);
            edits.push(set(mould::GIRTHS.path, girths));
        }
    }
    if !request.staves.is_empty() {
        edits.push(set(staves::STOCK.path, request.staves.as_str()));
    }
    let kind = match request.handle {
        HandleWord::None => return edits,
        HandleWord::Swing => HandleKind::Swing,
        HandleWord::Fixed => HandleKind::Fixed,
        HandleWord::Knob => HandleKind::Knob,
    };
    if kind != HandleKind::Fixed {
        edits.push(set(ears::MATERIAL.path, EarMaterial::Brass.word()));
    }
    edits.push(set(handle::KIND.path, kind.word()));
    edits
}

/// To a quarter of an inch, or to five millimetres: a guess is no measurement.
fn rounded(length: Length, units: Units) -> String {
    let printing = match units {
        Units::Inches => Printing::Inches { denominator: 4 },
        Units::Millimetres => Printing::Millimetres { step: 5.0 },
    };
    let text = length.print(printing);
    text.trim_end_matches(" in").trim_end_matches(" mm").to_owned()
}

/// The pattern with the longest course woven as wanted.
fn woven(request: &FirstRequest, now: &Trial, shop: Shop<'_>) -> Result<String, Refusal> {
    let Some(look) = request.wish.look else { return Ok(now.source.clone()) };
    let words = words(request.language.as_deref(), request.units, now.pattern.units)?;
    let courses = now.basket.body.weave.courses.iter().zip(1..);
    let number = courses.max_by_key(|(course, _)| course.rows).map_or(1, |(_, number)| number);
    let search = Search { now, number, wish: &request.wish, words: &words, shop };
    let mut ways = search.ways(look, 1)?;
    match ways.pop() {
        Some(way) => text::edit(&now.source, &way.edits),
        None => Ok(now.source.clone()),
    }
}
