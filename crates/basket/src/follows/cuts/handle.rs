//! Cuts of the handle, its rivets and washers.

use super::cut::{Cut, CutStock};
use crate::fittings::{Bow, FixedHandle, Handle, Knobs, Rivets, SwingHandle};
use crate::message::{Message, Term, Value};
use crate::pattern::{HandleJoint, HandleMade};
use crate::piece::Piece;

pub(super) fn cuts(handle: &Handle) -> Vec<Cut> {
    let piece = match handle {
        Handle::Swing(swing) => bail(swing),
        Handle::Fixed(fixed) => self::fixed(fixed),
        Handle::Knobs(knobs) => self::knobs(knobs),
    };
    let rivets = handle.rivets().into_iter().flat_map(|rivets| {
        let purpose = match handle {
            Handle::Knobs(_) => ["cut-rivet-purpose-knob", "cut-washer-purpose-knob"],
            _ if handle.swing().is_some_and(|swing| swing.joint != HandleJoint::Outside) => {
                ["cut-rivet-purpose", "cut-washer-purpose-head"]
            }
            _ => ["cut-rivet-purpose", "cut-washer-purpose"],
        };
        [rivet(rivets, purpose[0]), washers(rivets, purpose[1])]
    });
    std::iter::once(piece).chain(rivets).collect()
}

/// A bow to be bent is cut to its length; one that is bought is asked for by its size.
fn bow(bow: &Bow, purpose: &'static str, shape: Message) -> Cut {
    let purpose = Message::new(purpose);
    match bow.made {
        HandleMade::Bent => {
            Cut::new(Piece::Handle, CutStock::Bail, 1, purpose).length(bow.cut).width(bow.width).shape(shape)
        }
        HandleMade::Bought => {
            Cut::new(Piece::Handle, CutStock::BoughtBow, 1, purpose).width(bow.width).shape(
                Message::new("cut-bow-bought")
                    .with("curve", Value::Term(bow.curve.term()))
                    .with("span", bow.half_span * 2.0)
                    .with("rise", bow.rise)
                    .with("shape", shape),
            )
        }
    }
}

fn bail(handle: &SwingHandle) -> Cut {
    let id = match handle.joint {
        HandleJoint::Outside => "cut-bail-shape",
        HandleJoint::Slot => "cut-bail-shape-slot",
        HandleJoint::Between => "cut-bail-shape-between",
    };
    let shape = Message::new(id)
        .with("thickness", handle.bow.thickness)
        .with("drill", handle.rivets.drill)
        .with("end", handle.bow.beyond())
        .with("half", handle.bow.thickness / 2.0)
        .with("slot", handle.slot.unwrap_or_default());
    bow(&handle.bow, "cut-bail-purpose", shape)
}

fn fixed(handle: &FixedHandle) -> Cut {
    let shape =
        Message::new("cut-fixed-shape").with("thickness", handle.bow.thickness).with("leg", handle.leg);
    bow(&handle.bow, "cut-fixed-purpose", shape)
}

fn knobs(knobs: &Knobs) -> Cut {
    let shape = Message::new("cut-knob-shape").with("length", knobs.length).with("drill", knobs.rivets.drill);
    let knob = Cut::new(Piece::Knobs, CutStock::Knob, 2, Message::new("cut-knob-purpose"));
    Cut { length: Some(knobs.length), ..knob.width(knobs.diameter).shape(shape) }
}

fn rivet(rivets: &Rivets, purpose: &'static str) -> Cut {
    let (stock, purpose) = (CutStock::Material(rivets.stock.clone()), Message::new(purpose));
    let rivet = Cut::new(Piece::Rivets, stock, rivets.count, purpose)
        .spares(1)
        .width(rivets.stock.width)
        .shape(Message::new("cut-rivet-shape").with("needed", rivets.length).with("grip", rivets.grip));
    Cut { length: Some(rivets.stock.length.unwrap_or(rivets.length)), ..rivet }
}

fn washers(rivets: &Rivets, purpose: &'static str) -> Cut {
    let washer = |stock| Cut::new(Piece::Washers, stock, rivets.washers, Message::new(purpose)).spares(2);
    match &rivets.burr {
        Some(burr) => washer(CutStock::Material(burr.clone())).width(burr.width),
        None => washer(CutStock::WasherFor(rivets.stock.clone())),
    }
}
