//! The basket in a dozen lines.

use std::fmt::Write;

use basket::fittings::{Ears, Fold, Handle, Pins};
use basket::lashing::{Filler, Lashing};
use basket::mould::Mould;
use basket::rim::Rim;
use basket::staves::{Candidate, Staves};
use basket::weave::{Course, Face, Weave};
use basket::{Basket, Length};
use words::Words;

use crate::screen;

const INDENT: usize = 9;
const LITRES_PER_QUART: f64 = 0.946_352_946;

/// The summary.
pub(crate) fn render(basket: &Basket, words: &Words) -> String {
    let style = screen::HEADING;
    let mut said = String::new();
    let _ = writeln!(said, "{style}{}{style:#}", screen::wrap(&basket.title, "", ""));
    for (label, text) in parts(basket, words) {
        said.push_str(&super::entry(label, style, INDENT, &text));
    }
    said
}

fn parts(basket: &Basket, words: &Words) -> Vec<(&'static str, String)> {
    let mut parts = vec![
        ("Mould", mould(&basket.mould, words)),
        ("Base", base(&basket.base, words)),
        ("Staves", staves(&basket.staves, words)),
        ("", gaps(&basket.staves, words)),
    ];
    parts.extend(others(&basket.staves, words).map(|text| ("", text)));
    parts.push(("Weave", weave(&basket.weave, words)));
    parts.extend(basket.weave.courses.iter().map(|course| ("", self::course(&basket.weave, course, words))));
    parts.push(("Rim", rim(&basket.rim, words)));
    parts.extend(basket.filler.iter().map(|filler| ("Filler", self::filler(filler, words))));
    parts.push(("Lashing", lashing(&basket.lashing, words)));
    parts.push(("Pins", pins(&basket.pins, words)));
    parts.extend(basket.ears.iter().map(|ears| ("Ears", self::ears(ears, words))));
    parts.extend(basket.handle.iter().map(|handle| ("Handle", self::handle(handle, words))));
    parts
}

fn mould(mould: &Mould, words: &Words) -> String {
    format!(
        "round, {} high, girth {} at the base and {} at the top; holds {:.1} litres ({:.1} US quarts)",
        words.length(mould.height),
        words.length(mould.girth_base),
        words.length(mould.girth_top),
        mould.capacity_litres,
        mould.capacity_litres / LITRES_PER_QUART,
    )
}

fn base(base: &basket::base::Base, words: &Words) -> String {
    format!(
        "{} disc, {} across, {} thick; groove {} deep, {} wide",
        base.wood.name,
        words.length(base.diameter),
        words.length(base.thickness),
        words.fine(base.groove_depth),
        words.fine(base.groove_width),
    )
}

fn staves(staves: &Staves, words: &Words) -> String {
    format!(
        "{} and {} spare, {} long, of {}, {}; {} wide from {} up, tapered to {} at the foot",
        staves.count,
        staves.spares,
        words.length(staves.length),
        staves.stock.name,
        words.name(staves.oval_side),
        words.fine(staves.width),
        words.length(staves.taper.from),
        words.fine(staves.taper.foot),
    )
}

fn gaps(staves: &Staves, words: &Words) -> String {
    let [rim, narrowest, widest] =
        [staves.gap_rim, staves.narrowest.gap, staves.widest.gap].map(|gap| words.fine(gap));
    if rim == narrowest && rim == widest {
        return format!("gap {rim} from base to rim");
    }
    format!("gap {rim} at the rim, {narrowest} at the narrowest, {widest} at the widest")
}

/// The next best ways to stave the basket.
fn others(staves: &Staves, words: &Words) -> Option<String> {
    let one = |candidate: &Candidate| {
        format!(
            "{} of {} (gap {} at the rim)",
            candidate.count,
            candidate.stock.name,
            words.fine(candidate.gap_rim)
        )
    };
    let others: Vec<_> = staves.candidates.iter().skip(1).take(2).map(one).collect();
    (!others.is_empty()).then(|| format!("next best: {}", others.join("; ")))
}

fn weave(weave: &Weave, words: &Words) -> String {
    let mut text = format!(
        "{} rows, {} of weaver, up to {} on the mould",
        weave.rows,
        words.run(weave.length),
        words.length(weave.top_height)
    );
    if weave.rows_to_add > 0 {
        let _ = write!(text, "; {} more to add when it has dried and is packed down", weave.rows_to_add);
    }
    text
}

fn course(weave: &Weave, course: &Course, words: &Words) -> String {
    let last = course.first_row + course.rows.saturating_sub(1);
    let mut text = format!(
        "rows {} to {last}: {} in {}, {} in {}",
        course.first_row,
        words.say(&course.weave.name()),
        course.weaver.name,
        words.run(course.cut),
        strands(course.strands),
    );
    if course.rows > 0 {
        let _ = write!(text, "; seen outside: {}", words.say(&weave.look(course, Face::Outside).said()));
    }
    if let Some(first) = course.joins.first() {
        let _ = write!(
            text,
            "; first join in row {}, cut over stave {}, start behind stave {}",
            first.row, first.cut_over, first.start_behind
        );
    }
    text
}

fn rim(rim: &Rim, words: &Words) -> String {
    let hoop = |hoop: &basket::rim::Hoop| {
        format!(
            "{} of {} (scarf {}, staves {} to {})",
            words.length(hoop.cut),
            hoop.stock.name,
            words.length(hoop.scarf.lap),
            hoop.scarf.from_stave,
            hoop.scarf.to_stave
        )
    };
    format!("outer hoop {}; inner hoop {}", hoop(&rim.outer), hoop(&rim.inner))
}

fn filler(filler: &Filler, words: &Words) -> String {
    let pieces: Vec<_> = filler.pieces.iter().map(|piece| words.length(piece.length)).collect();
    format!("{}: {}", filler.stock.name, pieces.join(" and "))
}

fn lashing(lashing: &Lashing, words: &Words) -> String {
    format!(
        "{}, {}, {} of {} in {}",
        words.name(lashing.style),
        words.name(lashing.every),
        words.run(lashing.length),
        lashing.weaver.name,
        strands(lashing.strands)
    )
}

fn strands(count: u32) -> String {
    if count == 1 { "1 strand".to_owned() } else { format!("{count} strands") }
}

fn pins(pins: &Pins, words: &Words) -> String {
    format!(
        "{} and {} spare, {}, {}; needs {} through {}",
        pins.count,
        pins.spares,
        pins.stock.name,
        words.name(pins.every),
        words.fine(pins.length_needed),
        words.fine(pins.stack),
    )
}

fn ears(ears: &Ears, words: &Words) -> String {
    let [first, second] = &ears.each;
    let (material, placing) = (words.name(ears.material), words.name(ears.placing));
    let mut text = format!("{material}, at staves {} and {}, {placing}", first.stave, second.stave);
    if ears.off_opposite_rim.abs() > Length::mm(0.05) {
        let off = ears.off_opposite.to_degrees().abs();
        let _ = write!(
            text,
            "; {off:.1}° off opposite, {} along the rim",
            words.fine(ears.off_opposite_rim.abs())
        );
    }
    text
}

fn handle(handle: &Handle, words: &Words) -> String {
    let (fold, below) = match handle.fold {
        Fold::OnWall { below_level, .. } => ("folds down to", below_level.to_degrees()),
        Fold::OnRim { above_level } => ("rests on the rim,", -above_level.to_degrees()),
    };
    let side = if below < 0.0 { "above" } else { "below" };
    format!(
        "cut {}, rise {}, on rivets {} above the rim; {fold} {:.0}° {side} level",
        words.length(handle.cut),
        words.length(handle.rise),
        words.length(handle.pivot_height),
        below.abs(),
    )
}
