//! Cuts of the lid beside those of its vessel: what it sits on, what lifts it, and what it turns on.

use super::cut::{Cut, CutStock};
use crate::measure::Length;
use crate::message::Message;
use crate::parts::lid::{Collar, KNOB, Ledge, Lid, LidSeat, PEG};
use crate::pattern::LidLift;
use crate::piece::{FloorPart, Of, Piece};

/// What a loop of cane takes: two turns that stand up a finger's width, and ends to be tucked (common practice).
const LOOP: Length = Length::inches(14.0);
/// How many loops a hinge has.
const LOOPS: u32 = 2;

/// What is cut for a lid, when its vessel's own pieces are known: the knob closes the hole of its plaque.
pub(super) fn cuts(lid: &Lid, vessel: Vec<Cut>) -> Vec<Cut> {
    let is_closed = lid.lift == LidLift::Knob;
    let mut cuts = vessel;
    cuts.retain(|cut| !is_closed || cut.piece != Piece::Floor(FloorPart::Plug));
    match &lid.seat {
        LidSeat::Ledge(ledge) => cuts.extend(self::ledge(ledge)),
        LidSeat::Over(_) => {}
        LidSeat::Collar(collar) => cuts.push(self::collar(collar)),
    }
    cuts.extend(lift(lid));
    cuts.extend(hinge(lid));
    cuts.into_iter().map(|cut| Cut { of: Of::Lid, ..cut }).collect()
}

fn ledge(ledge: &Ledge) -> impl Iterator<Item = Cut> {
    ledge.rings.iter().zip(1_u32..).map(move |(length, number)| {
        let purpose =
            Message::new("cut-ledge-purpose").with("number", number).with("rings", ledge.rings.len() as u32);
        Cut::new(Piece::Ledge, CutStock::Material(ledge.stock.clone()), 1, purpose)
            .length(*length)
            .width(ledge.stock.width)
            .shape(Message::new("cut-ledge-shape").with("lap", ledge.lap))
    })
}

fn collar(collar: &Collar) -> Cut {
    let purpose = Message::new("cut-collar-purpose");
    Cut::new(Piece::Collar, CutStock::Material(collar.stock.clone()), 1, purpose)
        .length(collar.length)
        .width(collar.stock.width)
        .shape(Message::new("cut-ledge-shape").with("lap", collar.lap))
}

fn lift(lid: &Lid) -> Option<Cut> {
    let base = lid.vessel.base();
    match lid.lift {
        LidLift::Knob => {
            let shape = Message::new("cut-lift-shape")
                .with("hole", base.screw_hole)
                .with("thickness", base.thickness);
            Some(turned(Piece::Lift, KNOB, Message::new("cut-lift-purpose")).shape(shape))
        }
        LidLift::Loop => {
            cane(lid, Piece::Lift, 1, Message::new("cut-loop-purpose").with("hole", base.screw_hole))
        }
        LidLift::None => None,
    }
}

fn hinge(lid: &Lid) -> impl Iterator<Item = Cut> {
    let hinge = lid.hinge.as_ref().map(|_| {
        [
            cane(lid, Piece::Hinge, LOOPS, Message::new("cut-hinge-purpose")),
            cane(lid, Piece::Latch, 1, Message::new("cut-latch-purpose")),
            Some(turned(Piece::Peg, PEG, Message::new("cut-peg-purpose"))),
        ]
    });
    hinge.into_iter().flatten().flatten()
}

/// Loops of the cane with which the lid is lashed.
fn cane(lid: &Lid, piece: Piece, count: u32, purpose: Message) -> Option<Cut> {
    let stock = lid.cane()?.clone();
    let width = stock.width;
    Some(Cut::new(piece, CutStock::Material(stock), count, purpose).length(LOOP).width(width))
}

fn turned(piece: Piece, [width, height]: [Length; 2], purpose: Message) -> Cut {
    let cut = Cut::new(piece, CutStock::Knob, 1, purpose).width(width);
    Cut { length: Some(height), ..cut }
}
