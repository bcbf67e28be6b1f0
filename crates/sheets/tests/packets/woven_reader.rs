//! A reader and a weaver that know nothing but the English sentences of a handout.

use std::collections::BTreeMap;

/// A basket as woven: the colour seen at each row and stave (both from 1); nothing where the stave is seen.
pub(crate) type Woven = BTreeMap<(u32, u32), Option<String>>;

/// Rows: the first, the last and how many on the next is.
#[derive(Clone, Copy, Debug)]
struct Rows {
    first: u32,
    last: u32,
    every: u32,
}

/// Where a weaver begins.
#[derive(Clone, Copy, Debug)]
enum Begin {
    /// Over (or behind) so many staves from this one on.
    Passing { over: bool, stave: u32, staves: u32 },
    /// With its end behind a stave.
    Behind(u32),
}

#[derive(Clone, Debug)]
struct Thread {
    number: u32,
    name: String,
    row: u32,
    begin: Begin,
}

#[derive(Clone, Debug)]
enum How {
    RunningOn(u32, u32),
    InTurn(u32, u32),
    EachRow(u32, u32),
    Twisted,
    /// Over first or under first, the runs, and how many of them come again and again.
    Drawn {
        over: bool,
        stave: u32,
        runs: Vec<u32>,
        again: Option<usize>,
    },
}

/// A band of rows, as its sentences tell it.
#[derive(Clone, Debug)]
struct Band {
    rows: Rows,
    how: How,
    threads: Vec<Thread>,
    /// Staves by which each row lies further on.
    shift: i64,
    /// Whether each round begins as the first.
    steps_up: bool,
    /// Row and stave of each stave that is passed like the one before it.
    skipped: Vec<(u32, u32)>,
    /// Weaver, row, stave and colour.
    changes: Vec<(u32, u32, u32, String)>,
}

/// Weaves what a handout tells.
pub(crate) fn weave(handout: &str) -> Woven {
    let count =
        number_after(handout, "Then count them again: ").expect("the handout tells the count of staves");
    let mut bands: Vec<Band> = Vec::new();
    for sentence in handout.split(". ") {
        let sentence = uncaptioned(sentence.trim().trim_end_matches('.'));
        if let Some(band) = head(sentence) {
            bands.push(band);
        } else if let Some(band) = bands.last_mut() {
            more(band, sentence, count);
        }
    }
    let mut woven = Woven::new();
    for band in &bands {
        lay(band, count, &mut woven);
    }
    woven
}

/// How the sentences of a band begin.
const BEGINNINGS: [&str; 7] =
    ["Rows ", "Row ", "Weaver ", "Each row lies ", "Each round ends ", "In row ", "From stave "];

/// A sentence without the caption that stands before it at the head of a page: captions have no full stop.
fn uncaptioned(sentence: &str) -> &str {
    let begins = BEGINNINGS.iter().filter_map(|beginning| sentence.find(&format!(" {beginning}")));
    begins.min().map_or(sentence, |at| &sentence[at + 1..])
}

fn number_after(text: &str, words: &str) -> Option<u32> {
    digits(text.split_once(words)?.1)
}

fn digits(text: &str) -> Option<u32> {
    text.split(|c: char| !c.is_ascii_digit()).next()?.parse().ok()
}

/// `one stave`, `3 staves`.
fn staves(text: &str) -> Option<u32> {
    if text.starts_with("one stave ") { Some(1) } else { digits(text) }
}

/// `Rows 5–9, …`, `Rows 5 and 7, …`, `Rows 5, 7 and so on to 11, …`, `Row 5, …`: the rows and the rest.
fn rows(sentence: &str) -> Option<(Rows, &str)> {
    if let Some(rest) = sentence.strip_prefix("Row ") {
        let (row, rest) = rest.split_once(", ")?;
        let row = row.parse().ok()?;
        return Some((Rows { first: row, last: row, every: 1 }, rest));
    }
    let rest = sentence.strip_prefix("Rows ")?;
    if let Some((numbers, after)) = rest.split_once(" and so on to ") {
        let (first, second) = numbers.split_once(", ")?;
        let (last, rest) = after.split_once(", ")?;
        let (first, second): (u32, u32) = (first.parse().ok()?, second.parse().ok()?);
        return Some((Rows { first, last: last.parse().ok()?, every: second - first }, rest));
    }
    let (numbers, rest) = rest.split_once(", ")?;
    if let Some((first, last)) = numbers.split_once('–') {
        return Some((Rows { first: first.parse().ok()?, last: last.parse().ok()?, every: 1 }, rest));
    }
    let (first, last) = numbers.split_once(" and ")?;
    let (first, last): (u32, u32) = (first.parse().ok()?, last.parse().ok()?);
    Some((Rows { first, last, every: last - first }, rest))
}

fn begin(text: &str) -> Option<Begin> {
    let behind = ["lay its end behind stave ", "go on where it lies behind stave "];
    if let Some(rest) = behind.iter().find_map(|words| text.strip_prefix(words)) {
        return Some(Begin::Behind(digits(rest)?));
    }
    let rest = text.strip_prefix("begin ").or_else(|| text.strip_prefix("go on "))?;
    let over = rest.starts_with("over ");
    let rest = rest.strip_prefix("over ").or_else(|| rest.strip_prefix("behind "))?;
    if let Some(stave) = rest.strip_prefix("stave ") {
        return Some(Begin::Passing { over, stave: digits(stave)?, staves: 1 });
    }
    let (from, to) = rest.strip_prefix("staves ")?.split_once('–')?;
    let (from, to) = (digits(from)?, digits(to)?);
    // Round the last stave the run is counted when the count is known.
    let staves = if to >= from { to - from + 1 } else { 1000 + to };
    Some(Begin::Passing { over, stave: from, staves })
}

fn how(text: &str) -> Option<How> {
    if text.starts_with("twisted") {
        return Some(How::Twisted);
    }
    let rest = text.strip_prefix("over ")?;
    let (over, under) = (digits(rest)?, number_after(rest, ", under ")?);
    Some(match text {
        text if text.contains("in turn") => How::InTurn(over, under),
        text if text.contains("in each row") => How::EachRow(over, under),
        text if text.contains("running on") => How::RunningOn(over, under),
        _ => return None,
    })
}

fn head(sentence: &str) -> Option<Band> {
    let (rows, rest) = rows(sentence)?;
    let band = |how, threads| Band {
        rows,
        how,
        threads,
        shift: 0,
        steps_up: false,
        skipped: Vec::new(),
        changes: Vec::new(),
    };
    let thread = |name: &str, begin| Thread { number: 1, name: name.to_owned(), row: rows.first, begin };
    let Some((named, told)) = rest.split_once(": ") else {
        let drawn = How::Drawn { over: true, stave: 1, runs: Vec::new(), again: None };
        let anywhere = Begin::Behind(1);
        return Some(band(drawn, vec![thread(rest, anywhere)]));
    };
    if named.ends_with("weavers") {
        return Some(band(how(told)?, Vec::new()));
    }
    let (told, begins) = told.split_once("; ")?;
    Some(band(how(told)?, vec![thread(named, begin(begins)?)]))
}

/// A sentence after the first of a band.
fn more(band: &mut Band, sentence: &str, count: u32) {
    if let Some(rest) = sentence.strip_prefix("Weaver ") {
        let Some(number) = digits(rest) else { return };
        if let Some((_, name)) = rest.split_once(" from below: ") {
            if number == 1 {
                name.clone_into(&mut band.threads[0].name);
            }
        } else if let Some((_, rest)) = rest.split_once(" from stave ") {
            change(band, number, rest);
        } else if let Some((name, begins)) = rest.split_once(", ").and_then(|(_, rest)| rest.split_once(": "))
        {
            let row = number_after(begins, " in row ").unwrap_or(band.rows.first);
            let begin = begin(begins).unwrap_or_else(|| panic!("{sentence}"));
            band.threads.push(Thread { number, name: name.to_owned(), row, begin });
        }
    } else if let Some(rest) = sentence.strip_prefix("Each row lies ") {
        let by = staves(rest).map_or(0, i64::from);
        band.shift = if rest.contains("further back") { -by } else { by };
    } else if sentence.starts_with("Each round ends with a step up") {
        band.steps_up = true;
    } else if let Some(rest) = sentence.strip_prefix("In row ") {
        let (Some(row), Some(stave)) = (digits(rest), number_after(rest, "pass stave ")) else { return };
        let last = number_after(rest, "up to row ").unwrap_or(row);
        band.skipped.extend((row..=last).map(|at| (at, (stave - 1 + at - row) % count + 1)));
    } else if let Some(rest) = sentence.strip_prefix("From stave ") {
        if let (How::Drawn { over, stave, runs, again }, Some((told, list))) =
            (&mut band.how, rest.split_once(" in turn: "))
        {
            *over = told.contains("over first");
            *stave = digits(rest).expect("a stave");
            let (list, rule) = list.split_once("; the last ").unwrap_or((list, ""));
            *runs = list.split(" · ").map(|run| digits(run).expect("a run")).collect();
            *again = digits(rule).map(|last| last as usize);
        } else {
            change(band, 1, rest);
        }
    }
}

/// `41 in row 12 on: blue`.
fn change(band: &mut Band, weaver: u32, rest: &str) {
    let (Some(stave), Some(row), Some((_, colour))) =
        (digits(rest), number_after(rest, " in row "), rest.split_once(" on: "))
    else {
        return;
    };
    band.changes.push((weaver, row, stave, colour.to_owned()));
}

/// A weaver that follows a rule, stave by stave.
struct Passing {
    over: bool,
    left: u32,
    rule: (u32, u32),
}

impl Passing {
    fn from(begin: Begin, rule: (u32, u32), count: u32) -> (Self, u32) {
        let Begin::Passing { over, stave, staves } = begin else { panic!("it passes staves: {begin:?}") };
        let staves = if staves > 1000 { staves - 1000 + count + 1 - stave } else { staves };
        (Self { over, left: staves, rule }, stave)
    }

    fn next(&mut self) -> bool {
        if self.left == 0 {
            self.over = !self.over;
            self.left = if self.over { self.rule.0 } else { self.rule.1 };
        }
        self.left -= 1;
        self.over
    }
}

/// The first word: all colours of these baskets have one.
fn colour_of(name: &str) -> String {
    name.split(' ').next().expect("a colour").to_owned()
}

fn lay(band: &Band, count: u32, woven: &mut Woven) {
    let on = |stave: u32, by: u32| (stave - 1 + by) % count + 1;
    let changed = |thread: &Thread, row, stave| {
        let at = |(weaver, at_row, at_stave, _): &&(u32, u32, u32, String)| {
            *weaver == thread.number && (*at_row, *at_stave) == (row, stave)
        };
        band.changes.iter().find(at).map(|change| change.3.clone())
    };
    let all = || (band.rows.first..=band.rows.last).step_by(band.rows.every as usize);
    match &band.how {
        How::RunningOn(over, under) | How::InTurn(over, under) => {
            let turns = if matches!(band.how, How::InTurn(..)) { band.threads.len() } else { 1 };
            for thread in &band.threads {
                let (mut passing, first) = Passing::from(thread.begin, (*over, *under), count);
                let mut colour = colour_of(&thread.name);
                let mut before = None;
                for row in (thread.row..=band.rows.last).step_by(turns) {
                    for stave in (0..count).map(|place| on(first, place)) {
                        colour = changed(thread, row, stave).unwrap_or(colour);
                        let is_over = match before {
                            // Passed like the one before: the rule goes on as if it were not there.
                            Some(side) if band.skipped.contains(&(row, stave)) => side,
                            _ => passing.next(),
                        };
                        before = Some(is_over);
                        woven.insert((row, stave), is_over.then(|| colour.clone()));
                    }
                }
            }
        }
        How::EachRow(over, under) => {
            let thread = &band.threads[0];
            let (mut passing, first) = Passing::from(thread.begin, (*over, *under), count);
            let begun: Vec<(u32, bool)> =
                (0..count).map(|place| (on(first, place), passing.next())).collect();
            let mut colour = colour_of(&thread.name);
            for (index, row) in (0_i64..).zip(all()) {
                let by = (index * band.shift).rem_euclid(i64::from(count)) as u32;
                for (stave, is_over) in begun.iter().map(|(stave, is_over)| (on(*stave, by), *is_over)) {
                    colour = changed(thread, row, stave).unwrap_or(colour);
                    woven.insert((row, stave), is_over.then(|| colour.clone()));
                }
            }
        }
        How::Twisted => {
            let Begin::Behind(first) = band.threads[0].begin else { panic!("it begins behind a stave") };
            let order: Vec<String> = band.threads.iter().map(|thread| colour_of(&thread.name)).collect();
            for (index, thread) in (0..).zip(&band.threads) {
                assert!(
                    matches!(thread.begin, Begin::Behind(stave) if stave == on(first, index)),
                    "{thread:?}"
                );
            }
            let mut turn = 0;
            for row in all() {
                if band.steps_up {
                    turn = 0;
                }
                // The weaver that came out last lies on top.
                for place in 1..=count {
                    woven.insert((row, on(first, place)), Some(order[turn % order.len()].clone()));
                    turn += 1;
                }
            }
        }
        How::Drawn { over, stave, runs, again } => {
            let colour = colour_of(&band.threads[0].name);
            let mut list = runs.clone();
            while let (Some(last), true) = (again, (list.iter().sum::<u32>()) < count) {
                list.push(list[list.len() - last]);
            }
            let sides = list
                .iter()
                .enumerate()
                .flat_map(|(index, run)| std::iter::repeat_n((index % 2 == 0) == *over, *run as usize));
            let sides: Vec<bool> = sides.take(count as usize).collect();
            for row in all() {
                for (place, is_over) in (0..).zip(&sides) {
                    woven.insert((row, on(*stave, place)), is_over.then(|| colour.clone()));
                }
            }
        }
    }
}
