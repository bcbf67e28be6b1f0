//! Does a basket go into the next one of its nest?

use super::finding::{Finding, Grade, Place};
use crate::follows::sizes::Nest;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::piece::Piece;

/// What is found where a basket has less room in the next one than is wanted: by their names, and with the size of
/// the outer mould that was found to serve, where one was.
pub fn in_a_nest(
    nest: &Nest,
    [inner, outer]: [&str; 2],
    wanted: Length,
    serves: Option<Length>,
) -> Option<Finding> {
    let named = |id: &'static str| {
        let [inner, outer] = [inner, outer].map(|name| Value::Name(name.to_owned()));
        Message::new(id).with("inner", inner).with("outer", outer)
    };
    let stands = if nest.room < Length::ZERO {
        named("nest-lacks").with("over", -nest.room)
    } else {
        named("nest-has").with("room", nest.room)
    };
    let mend =
        serves.map_or_else(|| named("nest-none-serves"), |least| named("nest-serves").with("least", least));
    let grade = if nest.room < Length::ZERO { Grade::Stop } else { Grade::Care };
    (!nest.fits(wanted)).then(|| {
        Finding::new(grade, "nest-clearance", Place::from(Piece::Whole).at(nest.at))
            .measured(nest.room, wanted)
            .arg("stands", Value::Said(stands))
            .arg("mend", Value::Said(mend))
    })
}
