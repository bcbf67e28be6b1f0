//! The basket in a dozen lines.

use std::fmt::Write;

use basket::fittings::{Bow, Ears, Fold, Handle, PinSet, Pins};
use basket::form::{Form, litres_to_us_quarts};
use basket::lashing::{Filler, Lashing};
use basket::lid::LidSeat;
use basket::message::{Term as _, Value};
use basket::pattern::HandleMade;
use basket::rim::Rim;
use basket::staves::{Candidate, Staves};
use basket::weave::{Course, Face, Weave};
use basket::{Angle, Basket, Length, Lid};
use words::Words;

use crate::screen;

/// Room at least for the names of the parts.
const INDENT: usize = 9;

/// The summary.
pub(crate) fn render(basket: &Basket, words: &Words) -> String {
    let style = screen::HEADING;
    let mut said = String::new();
    let _ = writeln!(said, "{style}{}{style:#}", screen::wrap(&basket.title, "", ""));
    for (label, text) in parts(basket, words) {
        said.push_str(&super::entry(&label, style, INDENT, &text));
    }
    said
}

fn parts(basket: &Basket, words: &Words) -> Vec<(String, String)> {
    let label = |part: &str| words.term(&format!("screen-{part}"));
    let mut parts = vec![
        (label("mould"), mould(&basket.body.form, words)),
        (label("base"), base(basket.body.base(), words)),
        (label("staves"), staves(basket.body.staves(), words)),
        (String::new(), gaps(basket.body.staves(), words)),
    ];
    parts.extend(others(basket.body.staves(), words).map(|text| (String::new(), text)));
    parts.push((label("weave"), weave(&basket.body.weave, words)));
    parts.extend(
        basket
            .body
            .weave
            .courses
            .iter()
            .map(|course| (String::new(), self::course(&basket.body.weave, course, words))),
    );
    parts.push((label("rim"), rim(basket.body.rim(), words)));
    parts.extend(basket.body.filler().iter().map(|filler| (label("filler"), self::filler(filler, words))));
    parts.extend(
        basket.body.lashing().iter().map(|lashing| (label("lashing"), self::lashing(lashing, words))),
    );
    parts.push((label("pins"), pins(basket.body.pins(), words)));
    parts.extend(basket.ears.iter().map(|ears| (label("ears"), self::ears(ears, words))));
    parts.extend(basket.handle.iter().map(|handle| (label("handle"), self::handle(handle, words))));
    parts.extend(basket.lid.iter().map(|lid| (label("lid"), self::lid(lid, words))));
    parts.extend(basket.hand.whose.iter().map(|whose| {
        let args = [("whose", Value::Name(whose.clone()))];
        (label("hand"), words.with("hand-of", &args))
    }));
    parts
}

fn lid(lid: &Lid, words: &Words) -> String {
    let uprights = lid.vessel.uprights();
    let args = [
        ("count", uprights.count.into()),
        ("rows", lid.vessel.weave.rows.into()),
        ("across", lid.across.into()),
        ("clearance", lid.clearance.into()),
        ("seat", Value::Name(lid_seat(lid, words))),
        ("mould", lid.vessel.form.across(lid.vessel.form.arc(), Length::ZERO).into()),
        ("height", lid.vessel.form.height().into()),
    ];
    words.with("screen-lid-text", &args)
}

/// What a lid sits on, and where it turns.
fn lid_seat(lid: &Lid, words: &Words) -> String {
    let seat = match &lid.seat {
        LidSeat::Ledge(ledge) => {
            words.with("screen-lid-ledge", &[("rings", (ledge.rings.len() as u32).into())])
        }
        LidSeat::Over(over) => words.with("screen-lid-over", &[("down", over.down.into())]),
        LidSeat::Collar(collar) => words.with("screen-lid-collar", &[("outside", collar.outside.into())]),
    };
    let Some(hinge) = &lid.hinge else { return seat };
    let args = [("seat", Value::Name(seat)), ("at", Value::Term(hinge.at.term()))];
    words.with("screen-lid-hinge", &args)
}

/// A length as a piece, to the sixteenth.
fn piece(length: Length, words: &Words) -> Value {
    Value::Name(words.length(length))
}

/// A small length.
fn fine(length: Length, words: &Words) -> Value {
    Value::Name(words.fine(length))
}

/// A long run of material.
fn run(length: Length, words: &Words) -> Value {
    Value::Name(words.run(length))
}

fn mould(form: &Form, words: &Words) -> String {
    let foot = form.across(Length::ZERO, Length::ZERO);
    let shape = if foot.is_round() {
        Value::Term("outline-round")
    } else {
        Value::Name(words.with("screen-mould-foot", &[("foot", foot.into())]))
    };
    let args = [
        ("shape", shape),
        ("height", piece(form.height(), words)),
        ("base", piece(form.girth_base(), words)),
        ("top", piece(form.girth_top(), words)),
        ("litres", Value::Number(form.litres(), 1)),
        ("quarts", Value::Number(litres_to_us_quarts(form.litres()), 1)),
    ];
    words.with("screen-mould-text", &args)
}

fn base(base: &basket::base::Base, words: &Words) -> String {
    let args = [
        ("wood", base.woods()),
        ("diameter", base.across().into()),
        ("thickness", piece(base.thickness, words)),
        ("depth", fine(base.groove_depth, words)),
        ("width", fine(base.groove_width, words)),
    ];
    words.with("screen-base-text", &args)
}

fn staves(staves: &Staves, words: &Words) -> String {
    let args = [
        ("count", staves.uprights.count.into()),
        ("spares", staves.spares.into()),
        ("length", piece(staves.length, words)),
        ("stock", (&staves.stock).into()),
        ("side", Value::Name(words.name(staves.oval_side))),
        ("width", fine(staves.uprights.width, words)),
        ("from", piece(staves.taper.from, words)),
        ("foot", fine(staves.taper.foot, words)),
    ];
    words.with("screen-staves-text", &args)
}

fn gaps(staves: &Staves, words: &Words) -> String {
    let [taped, narrowest, widest] =
        [staves.gap_rim, staves.narrowest.gap, staves.widest.gap].map(|gap| fine(gap, words));
    let id = if taped == narrowest && taped == widest { "screen-gap-even" } else { "screen-gaps" };
    words.with(id, &[("taped", taped), ("narrowest", narrowest), ("widest", widest)])
}

/// The next best ways to stave the basket.
fn others(staves: &Staves, words: &Words) -> Option<String> {
    let one = |candidate: &Candidate| {
        let args = [
            ("count", candidate.count.into()),
            ("stock", (&candidate.stock).into()),
            ("gap", fine(candidate.gap_rim, words)),
        ];
        words.with("screen-candidate", &args)
    };
    let others: Vec<_> = staves.candidates.iter().skip(1).take(2).map(one).collect();
    let args = [("others", Value::Name(others.join("; ")))];
    (!others.is_empty()).then(|| words.with("screen-next-best", &args))
}

fn weave(weave: &Weave, words: &Words) -> String {
    let args = [
        ("rows", weave.rows.into()),
        ("length", run(weave.length, words)),
        ("top", piece(weave.top_height, words)),
    ];
    let mut text = words.with("screen-weave-text", &args);
    if weave.rows_to_add > 0 {
        let _ = write!(text, "; {}", words.with("screen-weave-dry", &[("rows", weave.rows_to_add.into())]));
    }
    text
}

fn course(weave: &Weave, course: &Course, words: &Words) -> String {
    let args = [
        ("first", course.first_row.into()),
        ("last", (course.first_row + course.rows.saturating_sub(1)).into()),
        ("weave", course.weave.name().into()),
        ("weaver", (&course.weaver).into()),
        ("length", run(course.cut, words)),
        ("strands", strands(course.strands, words)),
        ("takes", Value::Name(words.shares(course.take_up.least, course.take_up.most))),
    ];
    let mut text = words.with("screen-course", &args);
    if course.rows > 0 {
        let look = [("look", weave.look(course, Face::Outside).said().into())];
        let _ = write!(text, "; {}", words.with("screen-seen", &look));
    }
    if let Some(first) = course.joins.first() {
        let args =
            [("row", first.row.into()), ("cut", first.cut_over.into()), ("start", first.start_behind.into())];
        let _ = write!(text, "; {}", words.with("screen-first-join", &args));
    }
    text
}

fn rim(rim: &Rim, words: &Words) -> String {
    let hoop = |hoop: &basket::rim::Hoop| {
        let args = [
            ("length", piece(hoop.cut, words)),
            ("stock", (&hoop.stock).into()),
            ("lap", piece(hoop.scarf.lap, words)),
            ("from", hoop.scarf.from_stave.into()),
            ("to", hoop.scarf.to_stave.into()),
        ];
        Value::Name(words.with("screen-hoop", &args))
    };
    words.with("screen-hoops", &[("outer", hoop(&rim.outer)), ("inner", hoop(&rim.inner))])
}

fn filler(filler: &Filler, words: &Words) -> String {
    let pieces: Vec<_> = filler.pieces.iter().map(|piece| words.length(piece.length)).collect();
    format!("{}: {}", words.material(&filler.stock.name), pieces.join(&words.term("screen-and")))
}

fn lashing(lashing: &Lashing, words: &Words) -> String {
    let args = [
        ("style", Value::Name(words.name(lashing.style))),
        ("every", Value::Name(words.name(lashing.every))),
        ("length", run(lashing.length, words)),
        ("weaver", (&lashing.weaver).into()),
        ("strands", strands(lashing.strands, words)),
    ];
    words.with("screen-lashing-text", &args)
}

fn strands(count: u32, words: &Words) -> Value {
    Value::Name(words.with("screen-strands", &[("count", count.into())]))
}

fn pins(pins: &Pins, words: &Words) -> String {
    let set = |id: &str, set: &PinSet| {
        let args = [
            ("count", set.count().into()),
            ("spares", set.spares.into()),
            ("stock", (&set.stock).into()),
            ("every", Value::Name(words.name(pins.every))),
            ("needed", fine(set.length_needed, words)),
            ("stack", fine(set.stack, words)),
        ];
        words.with(id, &args)
    };
    let others = set("screen-pins-text", &pins.others);
    let ears = pins.ears.as_ref().map(|ears| set("screen-pins-ears", ears));
    others + &ears.unwrap_or_default()
}

fn ears(ears: &Ears, words: &Words) -> String {
    let [first, second] = &ears.each;
    let mut args = vec![
        ("material", Value::Name(words.name(ears.material))),
        ("first", first.stave.into()),
        ("second", second.stave.into()),
        ("placing", Value::Name(words.name(ears.placing))),
    ];
    let id = if let Some(axis) = ears.axis {
        args.push(("axis", Value::Name(words.name(axis))));
        "screen-ears-text-axis"
    } else {
        "screen-ears-text"
    };
    let mut text = words.with(id, &args);
    if ears.off_opposite_rim.abs() > Length::mm(0.05) {
        let args = [
            ("angle", Angle::degrees(ears.off_opposite.to_degrees().abs()).into()),
            ("off", fine(ears.off_opposite_rim.abs(), words)),
        ];
        let _ = write!(text, "; {}", words.with("screen-ears-off", &args));
    }
    text
}

fn handle(handle: &Handle, words: &Words) -> String {
    let bow = |bow: &Bow| {
        [
            ("length", piece(bow.cut, words)),
            ("span", piece(bow.half_span * 2.0, words)),
            ("rise", piece(bow.rise, words)),
        ]
    };
    let bought = handle.bow().is_some_and(|bow| bow.made == HandleMade::Bought);
    match handle {
        Handle::Swing(swing) => {
            let own =
                [("pivot", piece(swing.pivot_height, words)), ("fold", Value::Name(fold(swing.fold, words)))];
            let id = if bought { "screen-handle-bought" } else { "screen-handle-text" };
            words.with(id, &[&bow(&swing.bow)[..], &own].concat())
        }
        Handle::Fixed(fixed) => {
            let own = [("ends", piece(fixed.ends.tail, words))];
            let id = if bought { "screen-handle-fixed-bought" } else { "screen-handle-fixed" };
            words.with(id, &[&bow(&fixed.bow)[..], &own].concat())
        }
        Handle::Knobs(knobs) => {
            let args = [("width", piece(knobs.diameter, words)), ("pivot", piece(knobs.pivot_height, words))];
            words.with("screen-handle-knobs", &args)
        }
    }
}

/// How the handle lies when it is let down, to the degree.
fn fold(fold: Fold, words: &Words) -> String {
    let (id, below) = match fold {
        Fold::OnWall { below_level, .. } => ("wall", below_level.to_degrees()),
        Fold::OnRim { above_level } => ("rim", -above_level.to_degrees()),
    };
    let side = if below < 0.0 { "above" } else { "below" };
    let angle = [("angle", Angle::degrees(below.abs().round()).into())];
    words.with(&format!("screen-fold-{id}-{side}"), &angle)
}
