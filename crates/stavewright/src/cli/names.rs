//! Names on the command line for what the core tells apart.

use basket::steps::Stage;
use basket::stock::Kind;
use clap::builder::{PossibleValuesParser, TypedValueParser};

/// A stage of the making by its name.
pub(super) fn stages() -> impl TypedValueParser<Value = Stage> {
    PossibleValuesParser::new(Stage::ALL.map(Stage::name))
        .try_map(|name| Stage::named(&name).ok_or("there is no such stage"))
}

/// A kind of material by its name.
pub(super) fn kinds() -> impl TypedValueParser<Value = Kind> {
    PossibleValuesParser::new(Kind::ALL.map(Kind::name))
        .try_map(|name| Kind::ALL.into_iter().find(|kind| kind.name() == name).ok_or("there is no such kind"))
}
