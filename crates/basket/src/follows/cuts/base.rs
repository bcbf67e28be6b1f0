//! Cuts of the base.

use super::cut::{Cut, CutStock};
use crate::message::{Message, Value};
use crate::parts::base::Base;
use crate::pattern::Rings;
use crate::piece::{FloorPart, Piece};

pub(super) fn disc(base: &Base) -> Cut {
    let shape = Message::new("cut-base-shape")
        .with("thickness", base.thickness)
        .with("depth", base.groove_depth)
        .with("width", base.groove_width)
        .with("hole", base.screw_hole)
        .with("strips", strips(base))
        .with("rings", rings(base));
    let stock = if base.strips.is_empty() {
        CutStock::Wood(base.wood.clone())
    } else {
        CutStock::Strips(base.strips.clone())
    };
    Cut::new(Piece::Floor(FloorPart::Disc), stock, 1, Message::new("cut-base-purpose"))
        .across(base.across())
        .shape(shape)
}

/// What is said of strips and rings besides the disc itself; empty where there are none.
fn strips(base: &Base) -> Value {
    if base.strips.is_empty() {
        return Value::Name(String::new());
    }
    let count = u32::try_from(base.strips.len()).unwrap_or(u32::MAX);
    Message::new("cut-base-strips").with("count", count).with("width", base.strip_width()).into()
}

fn rings(base: &Base) -> Value {
    let id = match base.rings {
        Rings::None => return Value::Name(String::new()),
        Rings::Out => "cut-base-rings-out",
        Rings::In => "cut-base-rings-in",
    };
    let radii = base.ring_radii().into_iter().map(|radius| Value::Length(radius * 2.0)).collect();
    Message::new(id).with("across", Value::List(radii)).into()
}

pub(super) fn plug(base: &Base) -> Cut {
    let purpose = Message::new("cut-plug-purpose").with("hole", base.screw_hole);
    let plug = Cut::new(Piece::Floor(FloorPart::Plug), CutStock::Wood(base.wood.clone()), 1, purpose);
    Cut { length: Some(base.thickness), ..plug.width(base.plug_diameter) }
}
