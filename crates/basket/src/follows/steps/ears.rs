//! The ears: made, and set in one of three ways.

use super::stage::Stage;
use super::step::Step;
use crate::basket::Basket;
use crate::fittings::{Ears, WovenIn};
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::{EarAxis, EarMaterial, EarPlacing, EarWay, Ready, StepKind};
use crate::term::Term;

/// Share of the work on an ear that setting it is (common practice).
const SET: f64 = 0.25;
/// What is measured beside an axis with a ruler, and less is not.
const LEAST_SEEN: Length = Length::mm(0.25);

/// The step of the ears, wherever it comes in the making.
pub(super) fn ears(basket: &Basket, ears: &Ears) -> Step {
    let mut step = Step::new(StepKind::Ears, Stage::EarsSet);
    let work = 2.0 * basket.hand.pace.ear;
    step = if basket.ready.has(Ready::Ears) {
        step.text.push(sized("step-ears-text-ready", ears));
        step.work(work * SET)
    } else {
        step.text.extend(made(basket, ears));
        step.work(work).tools(tools(ears.material)).cautions(cautions(ears.material))
    };
    step.text.extend(placed(basket, ears));
    step.text.extend(set(basket, ears));
    let pushed = ears.way == EarWay::PushedDown;
    step.tools(if pushed {
        &["tool-ruler", "tool-pencil", "tool-awl"]
    } else {
        &["tool-ruler", "tool-pencil"]
    })
}

/// An ear with its sizes.
fn sized(id: &'static str, ears: &Ears) -> Message {
    let material = ears.wood.as_ref().map_or(Value::Term(ears.material.term()), Value::from);
    Message::new(id)
        .with("material", material)
        .with("length", ears.length)
        .with("width", ears.width)
        .with("thickness", ears.thickness)
}

/// How an ear is made.
fn made(basket: &Basket, ears: &Ears) -> Vec<Message> {
    let stave = basket.body.uprights().thickness;
    let mut text = vec![sized("step-ears-text-make", ears)];
    let shoulder = ears.shoulder(stave);
    if ears.replace_staves() {
        let taper = basket.body.staves().taper;
        text.push(
            Message::new("step-ears-text-shave-stave")
                .with("tail", ears.tail)
                .with("shaved", ears.tail + basket.body.rim().height)
                .with("blade", ears.blade(stave))
                .with("shoulder", shoulder)
                .with("width", ears.tail_width)
                .with("foot", taper.foot),
        );
    } else if shoulder > Length::ZERO {
        text.push(
            Message::new("step-ears-text-shave")
                .with("shaved", ears.tail + basket.body.rim().height)
                .with("blade", ears.blade(stave))
                .with("tip", ears.tip(stave))
                .with("shoulder", shoulder),
        );
    }
    if ears.tail_width < ears.width {
        text.push(Message::new("step-ears-text-narrow").with("width", ears.tail_width));
    }
    text
}

/// Where the ears stand, by the numbers of staves.
fn placed(basket: &Basket, ears: &Ears) -> Vec<Message> {
    let count = basket.body.uprights().count;
    let [first, second] = &ears.each;
    let up = (second.stave + count - first.stave) % count.max(1);
    let mut text = vec![
        Message::new("step-ears-text-count")
            .with("first", first.stave)
            .with("second", second.stave)
            .with("up", up)
            .with("down", count.saturating_sub(up)),
    ];
    text.extend(ears.axis.map(|axis| on_axis(axis, ears)));
    let id = match ears.placing {
        EarPlacing::OnStaves if ears.off_opposite_rim > Length::ZERO => "step-ears-text-on-staves-off",
        EarPlacing::OnStaves => "step-ears-text-on-staves",
        EarPlacing::StaveAndGap => "step-ears-text-stave-and-gap",
        EarPlacing::Shared => "step-ears-text-shared",
        EarPlacing::ByAngle if first.off_stave != Length::ZERO => "step-ears-text-shared",
        EarPlacing::ByAngle => "step-ears-text-by-angle",
    };
    text.push(
        Message::new(id)
            .with("first", first.stave)
            .with("second", second.stave)
            .with("off_first", first.off_stave.abs())
            .with("toward_first", first.toward(count))
            .with("off_second", second.off_stave.abs())
            .with("toward_second", second.toward(count))
            .with("off", ears.off_opposite_rim)
            .with("toward", ears.off_toward(count)),
    );
    text
}

/// At the ends of which axis ears or feet of a handle stand on a basket that is not round, and how far beside them.
pub(super) fn on_axis(axis: EarAxis, ears: &Ears) -> Message {
    let [first, second] = ears.each.map(|ear| ear.off_axis.abs());
    let off = first.max(second);
    let id = match (axis, off > LEAST_SEEN) {
        (EarAxis::Long, false) => "step-ears-text-long",
        (EarAxis::Long, true) => "step-ears-text-long-beside",
        (EarAxis::Short, false) => "step-ears-text-short",
        (EarAxis::Short, true) => "step-ears-text-short-beside",
    };
    Message::new(id).with("off", off)
}

/// How the tails go into the basket.
fn set(basket: &Basket, ears: &Ears) -> Vec<Message> {
    let mut text = Vec::new();
    match (ears.way, ears.woven_in) {
        (EarWay::WovenIn, Some(woven_in)) => text.extend(weave_in(basket, ears, woven_in)),
        (EarWay::WovenIn | EarWay::PushedDown, _) => {
            text.push(Message::new("step-ears-text-push").with("tail", ears.tail));
            text.push(
                Message::new("step-ears-text-measure")
                    .with("girth", basket.body.rim().radius() * std::f64::consts::PI),
            );
        }
        (EarWay::AsStave, _) if ears.replace_staves() => {
            let depth = basket.body.base().groove_depth;
            text.push(Message::new("step-ears-text-as-stave").with("depth", depth));
        }
        (EarWay::AsStave, _) => {
            text.push(Message::new("step-ears-text-on-stave").with("tail", ears.tail));
        }
    }
    text.push(Message::new("step-ears-text-hole").with("hole", ears.hole_height));
    text
}

fn weave_in(basket: &Basket, ears: &Ears, woven_in: WovenIn) -> Vec<Message> {
    let [first, second] = &ears.each;
    let rim = basket.body.rim();
    let lay = Message::new("step-ears-text-lay")
        .with("row", woven_in.on_row)
        .with("rows", woven_in.rows)
        .with("left", woven_in.mould_left)
        .with("tail", ears.tail)
        .with("stands", rim.height + ears.hole_height + ears.width / 2.0);
    let hide = Message::new("step-ears-text-hide").with("first", first.stave).with("second", second.stave);
    vec![lay, hide]
}

const fn tools(material: EarMaterial) -> &'static [&'static str] {
    match material {
        EarMaterial::Wood | EarMaterial::Oak => &["tool-saw", "tool-knife", "tool-sandpaper"],
        EarMaterial::Brass | EarMaterial::Bone => &["tool-saw", "tool-file", "tool-sandpaper"],
    }
}

const fn cautions(material: EarMaterial) -> &'static [&'static str] {
    match material {
        EarMaterial::Brass => &["caution-brass"],
        EarMaterial::Wood | EarMaterial::Oak => &["caution-knife", "caution-sanding-dust"],
        EarMaterial::Bone => &["caution-bone"],
    }
}
