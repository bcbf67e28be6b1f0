//! The lashing that binds the rim, and the filler under it.

mod filler;
mod hull;
mod section;

use crate::pattern::keys;
use std::f64::consts::TAU;

use crate::making::Making;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::{Every, LashingPattern, LashingStyle};
use crate::rim::Rim;
use crate::stock::{Kind, Material};
use crate::uprights::Uprights;
pub use filler::{Filler, FillerPiece, filler_round};
pub use hull::Hull;
pub use section::RimSection;

/// Tail at each end of a strand (a basket maker's lashing tutorial: 2 in, hooked behind the rim row).
const TAIL: Length = Length::inches(2.0);
/// What is laid out beyond the need: common practice is 5 to 10 %.
const SPARE: f64 = 1.08;
/// Wraps closer than this many widths of the strand hide the hoops; then every other stave is lashed
/// (common practice).
const CLOSEST: f64 = 2.0;
/// Sides by which a rounded face of the rim's parts is drawn: the way round is right to 1e-5 of itself.
const STEPS: u32 = 256;

/// The lashing as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Lashing {
    /// The strand.
    pub weaver: Material,
    /// Once round or crossed.
    pub style: LashingStyle,
    /// How often it goes round the rim.
    pub every: Every,
    /// How many wraps in all.
    pub wraps: u32,
    /// Way round the rim's section, at the strand's neutral axis.
    pub round: Length,
    /// Step along the rim from wrap to wrap.
    pub step: Length,
    /// Length on the rim when every wrap is pulled into a helix.
    pub tight: Length,
    /// Length on the rim when each wrap goes round and then steps along.
    pub net: Length,
    /// Length left at each end of a strand.
    pub tail: Length,
    /// Length to lay out, with tails and a spare.
    pub length: Length,
    /// How long one strand is.
    pub strand: Length,
    /// How many strands.
    pub strands: u32,
    /// Staves at which a new strand begins.
    pub joins: Vec<u32>,
}

/// Length of wraps pulled tight into a helix: `N√(c² + q²)`, the least that can bind the rim.
pub fn tight_length(wraps: u32, round: Length, step: Length) -> Length {
    f64::from(wraps) * Length::mm(round.to_mm().hypot(step.to_mm()))
}

/// Length of wraps that each go round and then step along: `N(c + q)`. Baskets that were measured
/// took this much (`tests/published_lashing.rs`).
pub fn laid_length(wraps: u32, round: Length, step: Length) -> Length {
    f64::from(wraps) * (round + step)
}

impl Lashing {
    /// The lashing of a rim. A strand that the pattern leaves open is the basket's own weaver
    /// (`default_weaver`) where that is flat enough, else cane.
    pub fn of(
        pattern: &LashingPattern,
        (rim, uprights, filler): (&Rim, &Uprights, Option<&Filler>),
        default_weaver: &Material,
        making: &mut Making<'_>,
    ) -> Self {
        let weaver = pattern.weaver.clone().unwrap_or_else(|| choose_weaver(default_weaver, making));
        let girth = TAU * ((rim.outer_radius(uprights) + rim.inner_radius()) / 2.0);
        let pitch = girth / f64::from(uprights.count.max(1));
        let every = pattern.every.unwrap_or_else(|| choose_every(pitch, weaver.width, making));
        let style = pattern.style.unwrap_or_else(|| choose_style(making));
        let tail = pattern.tail.unwrap_or_else(|| choose_tail(making));

        let once = wraps_once(every, uprights.count);
        let wraps = once.saturating_mul(if style == LashingStyle::Crossed { 2 } else { 1 });
        let round = RimSection::of(rim, filler, STEPS).hull().girth(weaver.thickness / 2.0);
        let step = girth / f64::from(once.max(1));
        let net = laid_length(wraps, round, step);
        let strand = weaver.put_up.strand.or(weaver.put_up.length).unwrap_or(net * SPARE + 2.0 * tail);
        let usable = (strand - 2.0 * tail).max(round + step).max(Length::mm(1.0));
        let strands = ((net * SPARE / usable).ceil() as u32).max(1);
        Self {
            style,
            every,
            wraps,
            round,
            step,
            tight: tight_length(wraps, round, step),
            net,
            tail,
            length: net * SPARE + 2.0 * tail * f64::from(strands),
            strand,
            strands,
            joins: joins(strands, wraps, every, uprights.count),
            weaver,
        }
    }

    /// How far its strands stand off what they bind: one strand, or two that cross.
    pub fn thickness(&self) -> Length {
        self.weaver.thickness * if self.style == LashingStyle::Crossed { 2.0 } else { 1.0 }
    }
}

fn wraps_once(every: Every, count: u32) -> u32 {
    match every {
        Every::Stave => count,
        Every::OtherStave => count.div_ceil(2),
    }
}

/// The staves at which the second and later strands begin, when all strands make as many wraps.
fn joins(strands: u32, wraps: u32, every: Every, count: u32) -> Vec<u32> {
    let once = u64::from(wraps_once(every, count).max(1));
    let stride = if every == Every::Stave { 1 } else { 2 };
    (1..strands)
        .map(|strand| {
            let wrap = u64::from(strand) * u64::from(wraps) / u64::from(strands);
            (wrap % once * stride) as u32 + 1
        })
        .collect()
}

fn choose_weaver(weaver: &Material, making: &mut Making<'_>) -> Material {
    let lies_flat = |material: &Material| {
        matches!(material.kind, Kind::ChairCane | Kind::BinderCane | Kind::Splint | Kind::FlatReed)
    };
    let canes = || {
        let canes = making.catalogue.of_kind(Kind::ChairCane);
        let off = |material: &Material| (material.width - weaver.width).abs().to_mm();
        canes.min_by(|a, b| off(a).total_cmp(&off(b)))
    };
    let (chosen, id) = if lies_flat(weaver) {
        (weaver, "choice-lashing-weaver-same")
    } else {
        canes().map_or((weaver, "choice-lashing-weaver-same"), |cane| (cane, "choice-lashing-weaver-cane"))
    };
    making.chose(
        keys::lashing::WEAVER.path,
        Value::Name(chosen.name.clone()),
        Message::new(id).with("weaver", weaver).with("width", chosen.width),
    );
    chosen.clone()
}

fn choose_every(pitch: Length, width: Length, making: &mut Making<'_>) -> Every {
    let (every, value, id) = if pitch < CLOSEST * width {
        (Every::OtherStave, "other-stave", "choice-lashing-every-other")
    } else {
        (Every::Stave, "stave", "choice-lashing-every-stave")
    };
    making.chose(
        keys::lashing::EVERY.path,
        value,
        Message::new(id).with("pitch", pitch).with("width", width),
    );
    every
}

fn choose_style(making: &mut Making<'_>) -> LashingStyle {
    let reason = Message::new("choice-lashing-style");
    making.chose(keys::lashing::STYLE.path, "single", reason);
    LashingStyle::Single
}

fn choose_tail(making: &mut Making<'_>) -> Length {
    let reason = Message::new("choice-lashing-tail");
    making.chose(keys::lashing::TAIL.path, TAIL, reason);
    TAIL
}
