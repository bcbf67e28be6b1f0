//! Names on the command line for what the core tells apart.

use basket::Basket;
use basket::steps::Stage;
use basket::stock::Kind;
use clap::builder::{PossibleValuesParser, TypedValueParser};
use drawings::solid::LidPose;

use crate::failure::Failure;

/// A stage of the making by its name.
pub(super) fn stages() -> impl TypedValueParser<Value = Stage> {
    PossibleValuesParser::new(Stage::ALL.map(Stage::name))
        .try_map(|name| Stage::named(&name).ok_or("there is no such stage"))
}

/// How a lid is shown, by its name.
pub(super) fn lid_poses() -> impl TypedValueParser<Value = LidPose> {
    PossibleValuesParser::new(LidPose::ALL.map(LidPose::name)).try_map(|name| {
        LidPose::ALL.into_iter().find(|pose| pose.name() == name).ok_or("a lid is not shown so")
    })
}

/// That a basket has no lid to be shown so, where one is asked for.
pub(super) fn has_lid(basket: &Basket, lid: Option<LidPose>) -> Result<LidPose, Failure> {
    match lid {
        Some(pose) if basket.lid.is_none() => Err(Failure::plain(
            format!("--lid {}: this basket has no lid", pose.name()),
            "Leave out --lid, or give the pattern a [lid].",
        )),
        pose => Ok(pose.unwrap_or_default()),
    }
}

/// A kind of material by its name.
pub(super) fn kinds() -> impl TypedValueParser<Value = Kind> {
    PossibleValuesParser::new(Kind::ALL.map(Kind::name))
        .try_map(|name| Kind::ALL.into_iter().find(|kind| kind.name() == name).ok_or("there is no such kind"))
}
