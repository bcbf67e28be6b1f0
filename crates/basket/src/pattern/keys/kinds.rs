//! Which kinds of material serve for what.

use crate::stock::Kind;

/// Staves.
pub const STAVES: &[Kind] = &[
    Kind::FlatReed,
    Kind::FlatOvalReed,
    Kind::HalfRoundReed,
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::Splint,
];
/// Weavers.
pub const WEAVERS: &[Kind] = &[
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::RoundReed,
    Kind::FlatReed,
    Kind::FlatOvalReed,
    Kind::HalfRoundReed,
    Kind::Splint,
];
/// Hoops.
pub const HOOPS: &[Kind] =
    &[Kind::HalfRoundReed, Kind::FlatOvalReed, Kind::FlatReed, Kind::RoundReed, Kind::Splint];
/// What covers the stave tips.
pub const FILLERS: &[Kind] = &[
    Kind::RoundReed,
    Kind::HalfRoundReed,
    Kind::FlatOvalReed,
    Kind::FlatReed,
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::Splint,
];
/// Strands that bind a rim.
pub const LASHINGS: &[Kind] =
    &[Kind::ChairCane, Kind::BinderCane, Kind::FlatReed, Kind::FlatOvalReed, Kind::Splint];
/// Pins through the rim.
pub const PINS: &[Kind] = &[Kind::Pin];
/// Rivets of a handle.
pub const RIVETS: &[Kind] = &[Kind::Rivet];
/// Whatever is known.
pub const ALL: &[Kind] = &Kind::ALL;
