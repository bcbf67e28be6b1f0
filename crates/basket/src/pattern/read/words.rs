//! The words and kinds of material that a pattern may use for its keys.

use crate::pattern::{
    BailCurve, EarMaterial, EarPlacing, Every, Finish, Language, LashingStyle, Outline, OvalSide, Side, Units,
};
use crate::pattern::{Lean, Way};
use crate::stock::Kind;

pub(super) const UNITS: &[(&str, Units)] = &[("in", Units::Inches), ("mm", Units::Millimetres)];
pub(super) const LANGUAGE: &[(&str, Language)] =
    &[(Language::English.tag(), Language::English), (Language::German.tag(), Language::German)];
pub(super) const SHAPE: &[(&str, Outline)] = &[("round", Outline::Round)];
pub(super) const SIDE: &[(&str, Side)] =
    &[("straight", Side::Straight), ("cone", Side::Cone), ("bowl", Side::Bowl)];
pub(super) const OVAL: &[(&str, OvalSide)] = &[("out", OvalSide::Out), ("in", OvalSide::In)];
pub(super) const WAY: &[(&str, Way)] = &[("continuous", Way::Continuous), ("row by row", Way::RowByRow)];
pub(super) const LEAN: &[(&str, Lean)] = &[("left", Lean::Left), ("right", Lean::Right)];
pub(super) const EVERY: &[(&str, Every)] = &[("stave", Every::Stave), ("other-stave", Every::OtherStave)];
pub(super) const LASHING_STYLE: &[(&str, LashingStyle)] =
    &[("single", LashingStyle::Single), ("crossed", LashingStyle::Crossed)];
pub(super) const EAR_MATERIAL: &[(&str, EarMaterial)] =
    &[("brass", EarMaterial::Brass), ("oak", EarMaterial::Oak), ("bone", EarMaterial::Bone)];
pub(super) const EAR_PLACING: &[(&str, EarPlacing)] = &[
    ("on-staves", EarPlacing::OnStaves),
    ("stave-and-gap", EarPlacing::StaveAndGap),
    ("shared", EarPlacing::Shared),
    ("by-angle", EarPlacing::ByAngle),
];
pub(super) const BAIL_CURVE: &[(&str, BailCurve)] = &[
    ("semicircle", BailCurve::Semicircle),
    ("three-centred", BailCurve::ThreeCentred),
    ("half-ellipse", BailCurve::HalfEllipse),
];
pub(super) const FINISH: &[(&str, Finish)] = &[
    ("none", Finish::None),
    ("shellac", Finish::Shellac),
    ("stain-and-shellac", Finish::StainAndShellac),
    ("oil", Finish::Oil),
];

pub(super) const STAVE_KINDS: &[Kind] = &[
    Kind::FlatReed,
    Kind::FlatOvalReed,
    Kind::HalfRoundReed,
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::Splint,
];
pub(super) const WEAVER_KINDS: &[Kind] = &[
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::RoundReed,
    Kind::FlatReed,
    Kind::FlatOvalReed,
    Kind::HalfRoundReed,
    Kind::Splint,
];
pub(super) const RIM_KINDS: &[Kind] =
    &[Kind::HalfRoundReed, Kind::FlatOvalReed, Kind::FlatReed, Kind::RoundReed, Kind::Splint];
pub(super) const FILLER_KINDS: &[Kind] = &[
    Kind::RoundReed,
    Kind::HalfRoundReed,
    Kind::FlatOvalReed,
    Kind::FlatReed,
    Kind::ChairCane,
    Kind::BinderCane,
    Kind::Splint,
];
pub(super) const LASHING_KINDS: &[Kind] =
    &[Kind::ChairCane, Kind::BinderCane, Kind::FlatReed, Kind::FlatOvalReed, Kind::Splint];
