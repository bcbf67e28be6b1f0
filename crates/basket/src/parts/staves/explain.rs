//! What was chosen for the staves, and why.

use super::Staves;
use super::needs::Needs;
use super::taper::{LEAST_USUAL_GAP, USUAL_START};
use super::usual::{SPARE_SHARE, SPARES_CONFIDENCE, USUAL_GAP};
use crate::base::Base;
use crate::making::Making;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::StavesPattern;
use crate::pattern::keys;
use crate::stock::Kind;

/// Adds a choice for each value that the pattern left out.
pub(super) fn choices(
    pattern: &StavesPattern,
    staves: &Staves,
    needs: &Needs<'_>,
    base: &Base,
    making: &mut Making<'_>,
) {
    let spoilt = making.hand.spoilt;
    let mut chosen = |open: bool, key, value: Value, reason: Message| {
        if open {
            making.chose(key, value, reason);
        }
    };
    chosen(pattern.gap.is_none(), keys::staves::GAP.path, staves.gap_wanted.into(), gap(staves, needs));
    chosen(
        pattern.stock.is_none(),
        keys::staves::STOCK.path,
        staves.stock.name.as_str().into(),
        stock(staves, base),
    );
    chosen(pattern.width.is_none(), keys::staves::WIDTH.path, staves.uprights.width.into(), width(staves));
    chosen(pattern.count.is_none(), keys::staves::COUNT.path, staves.uprights.count.into(), count(staves));
    chosen(pattern.taper.is_none(), keys::staves::TAPER.path, staves.taper.from.into(), taper(staves));
    chosen(pattern.length.is_none(), keys::staves::LENGTH.path, staves.length.into(), length(staves));
    chosen(pattern.spares.is_none(), keys::staves::SPARES.path, staves.spares.into(), spares(staves, spoilt));
    if !needs.form.outline.is_round() {
        let reason = Message::new("choice-staves-spacing");
        chosen(pattern.spacing.is_none(), keys::staves::SPACING.path, "foot".into(), reason);
    }
    let two_sided = matches!(staves.stock.kind, Kind::FlatOvalReed | Kind::HalfRoundReed);
    chosen(
        pattern.oval_side.is_none() && two_sided,
        keys::staves::OVAL.path,
        "out".into(),
        Message::new("choice-staves-oval-side"),
    );
}

fn gap(staves: &Staves, needs: &Needs<'_>) -> Message {
    let id = if staves.gap_wanted > USUAL_GAP { "choice-staves-gap-weaver" } else { "choice-staves-gap" };
    Message::new(id).with("gap", staves.gap_wanted).with("weaver", needs.row)
}

fn stock(staves: &Staves, base: &Base) -> Message {
    Message::new("choice-staves-stock")
        .with("stock", &staves.stock)
        .with("thickness", staves.uprights.thickness)
        .with("groove", base.groove_width)
        .with("count", staves.uprights.count)
}

fn width(staves: &Staves) -> Message {
    Message::new("choice-staves-width").with("width", staves.uprights.width).with("stock", &staves.stock)
}

fn count(staves: &Staves) -> Message {
    Message::new("choice-staves-count")
        .with("count", staves.uprights.count)
        .with("stock", &staves.stock)
        .with("wanted", staves.gap_wanted)
        .with("rim", staves.gap_rim)
        .with("narrowest", staves.narrowest.gap)
        .with("widest", staves.widest.gap)
}

fn taper(staves: &Staves) -> Message {
    if !staves.taper.is_of(staves.uprights.width) {
        return Message::new("choice-staves-taper-none").with("worst", staves.taper.worst);
    }
    let above_foot = staves.taper.from - staves.uprights.foot_along;
    let usual = (above_foot - USUAL_START).abs() < Length::mm(0.01);
    Message::new(if usual { "choice-staves-taper-usual" } else { "choice-staves-taper" })
        .with("above_foot", above_foot)
        .with("least", LEAST_USUAL_GAP)
        .with("from", staves.taper.from)
        .with("width", staves.uprights.width)
        .with("foot", staves.taper.foot)
        .with("worst", staves.taper.worst.max(Length::inches(1.0 / 64.0)))
        .with("ideal", staves.taper.worst_ideal)
}

fn length(staves: &Staves) -> Message {
    let parts = staves.length_parts;
    Message::new("choice-staves-length")
        .with("groove", parts.groove)
        .with("turn", parts.turn)
        .with("wall", parts.wall)
        .with("rim", parts.rim)
        .with("trim", parts.trim)
}

fn spares(staves: &Staves, spoilt: f64) -> Message {
    Message::new("choice-staves-spares")
        .with("spares", staves.spares)
        .with("count", staves.uprights.count)
        .with("share", Value::Percent(SPARE_SHARE))
        .with("spoilt", Value::Percent(spoilt))
        .with("confidence", Value::Percent(SPARES_CONFIDENCE))
}
