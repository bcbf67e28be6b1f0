//! Cuts of the lid beside those of its vessel: the ledge it lies on, and what lifts it.

use super::cut::{Cut, CutStock};
use crate::measure::Length;
use crate::message::Message;
use crate::parts::lid::Lid;
use crate::pattern::LidLift;
use crate::piece::{FloorPart, Of, Piece};

/// A usual knob: how wide, how high (common practice).
const KNOB: [Length; 2] = [Length::inches(0.75), Length::inches(0.625)];
/// What a loop of cane takes: two turns that stand up a finger's width, and ends to be tucked (common practice).
const LOOP: Length = Length::inches(14.0);

/// What is cut for a lid, when its vessel's own pieces are known: the knob closes the hole of its plaque.
pub(super) fn cuts(lid: &Lid, vessel: Vec<Cut>) -> Vec<Cut> {
    let is_closed = lid.lift == LidLift::Knob;
    let mut cuts = vessel;
    cuts.retain(|cut| !is_closed || cut.piece != Piece::Floor(FloorPart::Plug));
    cuts.extend(ledge(lid));
    cuts.extend(lift(lid));
    cuts.into_iter().map(|cut| Cut { of: Of::Lid, ..cut }).collect()
}

fn ledge(lid: &Lid) -> impl Iterator<Item = Cut> {
    let ledge = &lid.ledge;
    ledge.rings.iter().zip(1_u32..).map(move |(length, number)| {
        let purpose =
            Message::new("cut-ledge-purpose").with("number", number).with("rings", ledge.rings.len() as u32);
        Cut::new(Piece::Ledge, CutStock::Material(ledge.stock.clone()), 1, purpose)
            .length(*length)
            .width(ledge.stock.width)
            .shape(Message::new("cut-ledge-shape").with("lap", ledge.lap))
    })
}

fn lift(lid: &Lid) -> Option<Cut> {
    let base = lid.vessel.base();
    match lid.lift {
        LidLift::Knob => {
            let [width, height] = KNOB;
            let shape = Message::new("cut-lift-shape")
                .with("hole", base.screw_hole)
                .with("thickness", base.thickness);
            let purpose = Message::new("cut-lift-purpose");
            let knob = Cut::new(Piece::Lift, CutStock::Knob, 1, purpose).width(width).shape(shape);
            Some(Cut { length: Some(height), ..knob })
        }
        LidLift::Loop => {
            let stock = lid.vessel.lashing().map(|lashing| lashing.weaver.clone())?;
            let purpose = Message::new("cut-loop-purpose").with("hole", base.screw_hole);
            let width = stock.width;
            Some(Cut::new(Piece::Lift, CutStock::Material(stock), 1, purpose).length(LOOP).width(width))
        }
        LidLift::None => None,
    }
}
