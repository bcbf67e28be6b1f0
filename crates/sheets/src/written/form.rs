//! The shape of a wall.

use basket::Length;
use basket::form::{self, Held};
use serde::Serialize;

use super::measure::{Degrees, Mm};
use super::vocabulary::MouldPieces;

/// Places of the side that are written, at even steps along the wall.
const PLACES: u32 = 33;

/// The shape of a wall, and what holds it while it is woven.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Form {
    /// Shape seen from above.
    outline: Outline,
    /// Length of the foot; its diameter where it is round.
    length_mm: Mm,
    /// Width of the foot.
    width_mm: Mm,
    /// Smallest radius round the foot.
    tightest_mm: Mm,
    /// How the levels of a foot that is not round follow from it.
    levels: Levels,
    /// Shape seen from the side, base upward.
    profile: Vec<Spot>,
    /// Height from base to top.
    height_mm: Mm,
    /// Way along the wall from base to top.
    arc_mm: Mm,
    /// Girth at the base.
    girth_base_mm: Mm,
    /// Girth at the top.
    girth_top_mm: Mm,
    /// Largest girth.
    girth_widest_mm: Mm,
    /// What it holds, in litres.
    capacity_litres: f64,
    /// The mould over which it is woven; `null` where there is none.
    mould: Option<Mould>,
}

/// An outline seen from above.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
enum Outline {
    /// A circle.
    Round,
    /// An ellipse, or a fuller one.
    Oval,
    /// Of straight sides and arcs.
    Arcs,
}

/// How the levels of a wall follow from its foot.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
enum Levels {
    /// At an even distance from it all round.
    Even,
    /// The foot in another size.
    Scaled,
    /// By widths along the shorter axis.
    Widths,
}

/// A place on the side.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Spot {
    /// Way along the wall from the base.
    along_mm: Mm,
    /// Height above the base.
    height_mm: Mm,
    /// Radius; for outlines that are not round, girth / 2π.
    radius_mm: Mm,
    /// From edge to edge along the longer axis.
    length_mm: Mm,
    /// From edge to edge along the shorter axis.
    width_mm: Mm,
    /// Lean of the wall outward from upright.
    lean_deg: Degrees,
}

/// A mould: whether it comes out again.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Mould {
    /// How far the mould narrows again above a wider place; zero when the basket lifts off.
    undercut: Undercut,
    /// Smallest draft angle (lean of the wall outward); negative where it leans in.
    draft_deg: Degrees,
    /// Whether it comes apart.
    pieces: MouldPieces,
    /// The least diameter of its core; `null` for a mould in one piece.
    core_mm: Option<Mm>,
}

/// How far a mould narrows toward the rim.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Undercut {
    /// Largest loss of radius.
    depth_mm: Mm,
    /// Height of the wide place.
    wide_at_mm: Mm,
    /// Height of the narrow place above it.
    narrow_at_mm: Mm,
}

impl From<&form::Form> for Form {
    fn from(form: &form::Form) -> Self {
        let form::Form { outline, profile, levels, held } = form;
        let Held::Mould(mould) = held;
        let foot = form.across(Length::ZERO, Length::ZERO);
        Self {
            outline: match outline {
                form::Shape::Circle(_) => Outline::Round,
                form::Shape::Oval(_) => Outline::Oval,
                form::Shape::Arcs(_) => Outline::Arcs,
            },
            length_mm: foot.length.into(),
            width_mm: foot.width.into(),
            tightest_mm: form.tightest(Length::ZERO, Length::ZERO).into(),
            levels: match levels {
                form::Levels::Even => Levels::Even,
                form::Levels::Scaled => Levels::Scaled,
                form::Levels::Widths(_) => Levels::Widths,
            },
            profile: profile.spots(PLACES).map(|spot| Spot::of(form, spot)).collect(),
            height_mm: form.height().into(),
            arc_mm: form.arc().into(),
            girth_base_mm: form.girth_base().into(),
            girth_top_mm: form.girth_top().into(),
            girth_widest_mm: form.girth_widest().into(),
            capacity_litres: form.litres(),
            mould: Some(mould.into()),
        }
    }
}

impl Spot {
    fn of(form: &form::Form, spot: form::Spot) -> Self {
        let form::Spot { along, height, radius, lean } = &spot;
        let across = form.across(*along, Length::ZERO);
        Self {
            along_mm: along.into(),
            height_mm: height.into(),
            radius_mm: radius.into(),
            length_mm: across.length.into(),
            width_mm: across.width.into(),
            lean_deg: lean.into(),
        }
    }
}

impl From<&form::Mould> for Mould {
    fn from(mould: &form::Mould) -> Self {
        let form::Mould { undercut: form::Undercut { depth, wide_at, narrow_at }, draft, pieces } = mould;
        let undercut =
            Undercut { depth_mm: depth.into(), wide_at_mm: wide_at.into(), narrow_at_mm: narrow_at.into() };
        Self { undercut, draft_deg: draft.into(), pieces: pieces.into(), core_mm: mould.core().map(Mm::from) }
    }
}
