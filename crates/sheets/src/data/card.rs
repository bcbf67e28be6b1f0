//! The bench card: the numbers needed with wet hands.

use basket::fittings::{Handle, Pins};
use basket::limits::TABLE_ROWS;
use basket::pattern::{HandleMade, HoopWay};
use basket::rim::{Hoop, Scarf};
use basket::weave::Band;
use basket::{Basket, Length};
use serde::Serialize;

use crate::handout::{begins, rows_of, weavers};
use crate::scribe::{Scribe, name};

#[derive(Serialize)]
pub(crate) struct Card {
    lines: Vec<CardLine>,
    bands: Vec<CardBand>,
    /// What the rows in heavy boxes are for.
    marks: Vec<String>,
}

#[derive(Serialize)]
struct CardLine {
    name: String,
    value: String,
    note: String,
}

/// Rows that are woven alike.
#[derive(Serialize)]
struct CardBand {
    name: String,
    note: String,
    /// Its rows, where they are few enough to be ticked off.
    rows: Vec<CardRow>,
}

/// A row to be ticked off.
#[derive(Serialize)]
struct CardRow {
    number: u32,
    /// Whether a colour changes in it.
    joined: bool,
    /// Whether ears or rim stand on it.
    heavy: bool,
}

pub(crate) fn card(basket: &Basket, scribe: &Scribe<'_>) -> Card {
    Card {
        lines: lines(basket, scribe),
        bands: basket.body.weave.bands().iter().map(|band| tally(band, basket, scribe)).collect(),
        marks: marks(basket, scribe),
    }
}

fn lines(basket: &Basket, scribe: &Scribe<'_>) -> Vec<CardLine> {
    let line = |id: &str, value: String, note: String| CardLine { name: scribe.label(id), value, note };
    let own = |length: Length| length_of(length, scribe);
    // A ring that lies ready has no length to cut; it is told by its width.
    let is_ready = !matches!(basket.body.rim().hoops, HoopWay::Bent) && !basket.rings_are_made();
    let hoop = |[strip, ring]: [&str; 2], hoop: &Hoop| {
        let (id, size) = match is_ready {
            true if hoop.across.is_round() => (ring, own(hoop.across.length)),
            true => (ring, scribe.words.across(hoop.across)),
            false => (strip, own(hoop.cut)),
        };
        line(id, size, scarf(hoop.scarf, scribe))
    };
    let (staves, rim, pins) = (basket.body.staves(), basket.body.rim(), basket.body.pins());
    let taper = [
        ("from", name(scribe.words.fine(staves.taper.foot))),
        ("to", name(scribe.words.fine(staves.uprights.width))),
    ];
    let mut lines = vec![
        line("card-staves", staves.uprights.count.to_string(), spare(staves.spares, scribe)),
        line("card-stave-length", own(staves.length), scribe.text("card-taper", &taper)),
        line("card-gap", scribe.words.fine(staves.gap_rim_wall), scribe.label("card-gap-note")),
        line("card-rows", basket.body.weave.rows.to_string(), rows_to_add(basket, scribe)),
        line("card-top", own(basket.body.weave.top_height), scribe.label("card-top-note")),
        hoop(["card-outer", "card-outer-ring"], &rim.outer),
        hoop(["card-inner", "card-inner-ring"], &rim.inner),
        line("card-pins", pins.count().to_string(), pin_note(pins, scribe)),
    ];
    lines.extend(
        basket
            .body
            .lashing()
            .map(|lashing| line("card-lashing", own(lashing.length), strands(lashing.strands, scribe))),
    );
    if let Some(ears) = &basket.ears {
        let [first, second] = ears.each.map(|ear| ear.stave);
        let note = scribe.text("card-ears-note", &[("placing", name(scribe.words.name(ears.placing)))]);
        lines.push(line("card-ears", format!("{first} · {second}"), note));
    }
    let drill = basket
        .rivets()
        .map(|rivets| scribe.text("card-drill", &[("drill", name(scribe.words.fine(rivets.drill)))]));
    let size = match &basket.handle {
        Some(Handle::Knobs(knobs)) => Some(knobs.diameter),
        handle => handle.as_ref().and_then(Handle::bow).map(|bow| match bow.made {
            HandleMade::Bent => bow.cut,
            HandleMade::Bought => bow.half_span * 2.0,
        }),
    };
    lines.extend(size.map(|size| line("card-handle", own(size), drill.unwrap_or_default())));
    lines.extend(basket.lid.as_ref().map(|lid| {
        let (staves, weave) = (lid.vessel.staves(), &lid.vessel.weave);
        let note = [("length", name(own(staves.length))), ("rows", weave.rows.into())];
        line("card-lid", staves.uprights.count.to_string(), scribe.text("card-lid-note", &note))
    }));
    lines
}

fn length_of(length: Length, scribe: &Scribe<'_>) -> String {
    scribe.lines(length).into_iter().next().unwrap_or_default()
}

fn spare(count: u32, scribe: &Scribe<'_>) -> String {
    if count == 0 { String::new() } else { scribe.text("card-spares", &[("count", count.into())]) }
}

/// Pins to have ready, and which go through the ears where they are others.
fn pin_note(pins: &Pins, scribe: &Scribe<'_>) -> String {
    let spares = spare(pins.sets().map(|set| set.spares).sum(), scribe);
    match pins.ears.as_ref().filter(|ears| ears.stock.name != pins.others.stock.name) {
        Some(ears) => {
            let args = [("spares", name(spares)), ("stock", (&ears.stock).into())];
            scribe.text(if pins.of_handle { "card-pins-ends" } else { "card-pins-ears" }, &args)
        }
        None => spares,
    }
}

fn strands(count: u32, scribe: &Scribe<'_>) -> String {
    scribe.text("card-strands", &[("count", count.into())])
}

fn rows_to_add(basket: &Basket, scribe: &Scribe<'_>) -> String {
    let rows = basket.body.weave.rows_to_add;
    if rows == 0 { String::new() } else { scribe.text("card-rows-to-add", &[("rows", rows.into())]) }
}

fn scarf(scarf: Scarf, scribe: &Scribe<'_>) -> String {
    scribe.text("card-scarf", &[("from", scarf.from_stave.into()), ("to", scarf.to_stave.into())])
}

/// The row on which ears stand that are woven in.
fn ear_row(basket: &Basket) -> Option<u32> {
    basket.ears.as_ref().and_then(|ears| ears.woven_in.as_ref()).map(|woven_in| woven_in.on_row)
}

fn marks(basket: &Basket, scribe: &Scribe<'_>) -> Vec<String> {
    let said = |id: &str, row: u32| scribe.text(id, &[("row", row.into())]);
    let ears = ear_row(basket).map(|row| said("card-ears-row", row));
    let last = basket.body.weave.rows;
    ears.into_iter().chain((last > 0).then(|| said("card-rim-row", last))).collect()
}

fn tally(band: &Band, basket: &Basket, scribe: &Scribe<'_>) -> CardBand {
    let weave = &basket.body.weave;
    let heavy = |row: u32| row == weave.rows || Some(row) == ear_row(basket);
    let kind = weave.course_of(band.first).map(|course| scribe.words.say(&course.weave.name()));
    let note = [
        ("rows", name(rows_of(band))),
        ("weave", name(kind.unwrap_or_default())),
        ("begin", name(begins(band))),
    ];
    let joined = |row: u32| {
        weave
            .course_of(row)
            .is_some_and(|course| course.joins.iter().any(|join| join.recolour && join.row == row))
    };
    let rows = (band.first..=band.last).step_by(band.every as usize);
    let ticked = weave.rows as usize <= TABLE_ROWS;
    CardBand {
        name: weavers(band, scribe),
        note: scribe.text("card-band", &note),
        rows: rows
            .filter(|_| ticked)
            .map(|number| CardRow { number, joined: joined(number), heavy: heavy(number) })
            .collect(),
    }
}

#[cfg(test)]
mod tests {
    use basket::pattern::Units;
    use basket::{Catalogue, Draft, Hand};
    use planning::samples::{Demonstration, Show};
    use words::{Language, Words};

    use crate::data::{SheetData, demonstration};
    use crate::figures::Drawn;
    use crate::handout::Source;
    use crate::paper::Paper;
    use crate::press::{Files, print};
    use crate::scribe::Scribe;
    use crate::{Photos, Templates, basket_json};

    const PATTERNS: [&str; 3] = [
        include_str!("../../../../patterns/harbour-bread-basket.toml"),
        include_str!("../../tests/fixed/fixed.toml"),
        include_str!("../../tests/fixed/stopped.toml"),
    ];

    /// How many pages the bench card has. It shows no drawing, so none is made.
    fn pages(draft: &Draft, paper: Paper, units: Units) -> usize {
        let words = Words::new(Language::English, units);
        let (scribe, written) = (Scribe::new(&words), basket_json(draft, &words));
        let photos = Photos::default();
        let source = Source { draft, written: &written, scribe: &scribe, figures: &[], photos: &photos };
        let show = Demonstration::of(&draft.steps, &Show::default());
        let plan = demonstration::plan(draft, &show, &scribe);
        let drawn = Drawn { paper, figures: Vec::new(), pieces: Vec::new() };
        let data = SheetData::of(&source, &drawn, plan);
        let data = serde_json::to_vec(&data).expect("it is JSON");
        let files = Files::from([("data.json".to_owned(), data)]);
        let pdf = print("bench-card", &Templates::default(), &files).expect("the card can be set");
        lopdf::Document::load_mem(&pdf).expect("lopdf opens it").get_pages().len()
    }

    #[test]
    fn bench_card_is_one_page_with_large_type() {
        let catalogue = Catalogue::built_in();
        for pattern in PATTERNS {
            let pattern = basket::pattern::read(pattern, catalogue).expect("the pattern can be read");
            let draft = Draft::of(pattern, catalogue, &Hand::USUAL);
            for (paper, units) in [
                (Paper::Letter, Units::Inches),
                (Paper::Letter, Units::Millimetres),
                (Paper::A4, Units::Inches),
                (Paper::A4, Units::Millimetres),
            ] {
                assert_eq!(pages(&draft, paper, units), 1, "{} {paper:?} {units:?}", draft.basket.title);
            }
        }
    }
}
