//! The demonstration sheet: samples, days, and what stands ready at the show.

use basket::Draft;
use basket::limits::TABLE_ROWS;
use basket::message::{Message, Value};
use basket::pattern::StepKind;
use basket::piece::{FloorPart, Piece};
use basket::steps::Step;
use basket::teaching;
use drawings::{Drawing, Lane, sample_letter, timeline};
use planning::samples::{DAY, Day, Demonstration, Sample, Span, Task, day_before};
use serde::Serialize;
use words::Words;

use crate::scribe::{Scribe, name};

/// The plan as a template sees it.
#[derive(Serialize)]
pub(crate) struct Plan {
    intro: String,
    sum: String,
    more_days: String,
    missing: String,
    samples: Vec<SampleLine>,
    days: Vec<DayLine>,
    at_show: Vec<Beside>,
}

/// A sample at the show: what comes next, and what lies ready beside it for that.
#[derive(Serialize)]
struct Beside {
    says: String,
    ready: Vec<String>,
    tell: Vec<String>,
}

#[derive(Serialize)]
struct SampleLine {
    letter: String,
    stage: String,
    stop: String,
    begin: String,
    work: String,
    mould: String,
}

#[derive(Serialize)]
struct DayLine {
    name: String,
    work: String,
    tasks: Vec<String>,
}

pub(crate) fn plan(draft: &Draft, show: &Demonstration, scribe: &Scribe<'_>) -> Plan {
    let days = show.days();
    let missing: Vec<String> = show.missing.iter().map(|stage| scribe.words.name(*stage)).collect();
    Plan {
        intro: scribe.text("demo-intro", &[("hours", Value::Minutes(show.work_a_day))]),
        sum: sum(show, scribe),
        more_days: more_days(days.len(), scribe),
        missing: if missing.is_empty() {
            String::new()
        } else {
            scribe.text("demo-missing", &[("stages", name(missing.join(", ")))])
        },
        samples: all(show).map(|(letter, sample)| line(draft, show, &letter, sample, scribe)).collect(),
        days: days.iter().take(TABLE_ROWS).map(|day| day_line(draft, day, scribe)).collect(),
        at_show: all(show).map(|(letter, sample)| at_show(draft, &letter, sample, scribe)).collect(),
    }
}

/// When each sample is worked on, dries and stands ready.
pub(crate) fn picture(show: &Demonstration, words: &Words) -> Drawing {
    let span = |span: &Span| (span.from, span.to);
    let lane = |(letter, sample): (String, &Sample)| Lane {
        name: format!("{letter}  {}", words.name(sample.stage)),
        begin: sample.begin,
        work: sample.blocks.iter().flat_map(|block| &block.work).map(span).collect(),
        mould: sample.mould.map(|(_, held)| span(&held)),
    };
    let lanes: Vec<Lane> = all(show).map(lane).collect();
    timeline(&lanes, (day_before(show.begin()), show.moulds), words)
}

/// How many days are not told one by one.
fn more_days(days: usize, scribe: &Scribe<'_>) -> String {
    match days.saturating_sub(TABLE_ROWS) {
        0 => String::new(),
        more => scribe.text("demo-more-days", &[("days", Value::Count(more as i64))]),
    }
}

/// The samples with their letters.
fn all(show: &Demonstration) -> impl Iterator<Item = (String, &Sample)> {
    show.samples.iter().enumerate().map(|(index, sample)| (sample_letter(index), sample))
}

fn sum(show: &Demonstration, scribe: &Scribe<'_>) -> String {
    let args = [
        ("samples", Value::Count(show.samples.len() as i64)),
        ("work", Value::Minutes(show.work_minutes())),
        ("days", day_before(show.begin()).into()),
        ("moulds", show.moulds.into()),
        ("standing", show.moulds_at_show.into()),
    ];
    scribe.text("demo-sum", &args)
}

fn line(
    draft: &Draft,
    show: &Demonstration,
    letter: &str,
    sample: &Sample,
    scribe: &Scribe<'_>,
) -> SampleLine {
    let stop = step(draft, sample.last_step);
    SampleLine {
        letter: letter.to_owned(),
        stage: scribe.words.name(sample.stage),
        stop: stop
            .map(|step| format!("{}. {}", step.number, scribe.words.step(step.of, step.kind)))
            .unwrap_or_default(),
        begin: when(sample.begin, show.work_a_day, scribe),
        work: scribe.minutes(sample.work_minutes),
        mould: match sample.mould {
            None => scribe.label("demo-no-mould"),
            Some((number, span)) => {
                let args = [
                    ("number", Value::Count(i64::from(number) + 1)),
                    ("when", name(when(span.to, show.work_a_day, scribe))),
                ];
                scribe.text(if span.to <= 0.0 { "demo-on-mould" } else { "demo-off-mould" }, &args)
            }
        },
    }
}

/// A moment before the show: the day, and how far into its work; a moment in the night is the next
/// morning.
fn when(minutes: f64, work_a_day: f64, scribe: &Scribe<'_>) -> String {
    let day = day_before(minutes);
    let into = f64::from(day) * DAY - minutes;
    let (day, into) = if into > work_a_day { (day.saturating_sub(1), 0.0) } else { (day, into) };
    if into < 1.0 {
        scribe.text("demo-when-first", &[("days", day.into())])
    } else {
        scribe.text("demo-when", &[("days", day.into()), ("hours", Value::Minutes(into))])
    }
}

fn day_line(draft: &Draft, day: &Day, scribe: &Scribe<'_>) -> DayLine {
    DayLine {
        name: scribe.text("demo-day", &[("days", day.before.into())]),
        work: scribe.minutes(day.tasks.iter().map(|task| task.minutes).sum()),
        tasks: day.tasks.iter().map(|task| task_line(draft, task, scribe)).collect(),
    }
}

fn task_line(draft: &Draft, task: &Task, scribe: &Scribe<'_>) -> String {
    let title = step(draft, task.step).map(|step| scribe.words.step(step.of, step.kind)).unwrap_or_default();
    let args = [
        ("sample", name(task.sample.map_or_else(|| scribe.label("demo-all"), sample_letter))),
        ("step", task.step.into()),
        ("title", name(title)),
        ("time", Value::Minutes(task.minutes)),
    ];
    scribe.text(if task.goes_on { "demo-task-on" } else { "demo-task" }, &args)
}

fn at_show(draft: &Draft, letter: &str, sample: &Sample, scribe: &Scribe<'_>) -> Beside {
    Beside {
        says: next(draft, letter, sample, scribe),
        ready: tray(draft, sample.last_step, scribe),
        tell: tell(draft, sample.last_step, scribe)
            .into_iter()
            .map(|said| scribe.text("demo-say", &[("said", name(said))]))
            .collect(),
    }
}

fn next(draft: &Draft, letter: &str, sample: &Sample, scribe: &Scribe<'_>) -> String {
    let mut args = vec![("sample", name(letter)), ("stage", name(scribe.words.name(sample.stage)))];
    let Some(next) = step(draft, sample.last_step.saturating_add(1)) else {
        return scribe.text("demo-last", &args);
    };
    args.extend([("step", next.number.into()), ("title", name(scribe.words.step(next.of, next.kind)))]);
    match next.soak_minutes {
        Some(soak) => {
            args.push(("time", Value::Minutes(soak)));
            scribe.text("demo-next-soak", &args)
        }
        None => scribe.text("demo-next", &args),
    }
}

/// What the next step works in or puts on, and its tools.
pub(crate) fn tray(draft: &Draft, last_step: u32, scribe: &Scribe<'_>) -> Vec<String> {
    let Some(next) = step(draft, last_step.saturating_add(1)) else { return Vec::new() };
    let cuts = draft.cuts.iter().filter(|cut| cut.of == next.of && is_taken_up(next.kind, cut.piece));
    let pieces = cuts.map(|cut| {
        let args = [
            ("count", cut.count.into()),
            ("piece", name(scribe.words.cut(cut.of, cut.piece))),
            ("material", name(scribe.stock(cut))),
        ];
        scribe.text("demo-piece", &args)
    });
    let mut ready: Vec<String> = Vec::new();
    for thing in pieces.chain(crate::handout::tools([next], scribe)) {
        if !ready.contains(&thing) {
            ready.push(thing);
        }
    }
    ready
}

/// What to say when going on from a sample: the usual faults of the next step, and their cures.
pub(crate) fn tell(draft: &Draft, last_step: u32, scribe: &Scribe<'_>) -> Vec<String> {
    let Some(next) = step(draft, last_step.saturating_add(1)) else { return Vec::new() };
    let faults = teaching::faults(next.kind, &draft.basket);
    let fault = |fault: &Message| {
        let cure = scribe.words.with(&format!("{}.cure", fault.id), &fault.args);
        format!("{} {cure}", scribe.words.say(fault))
    };
    faults.iter().map(fault).collect()
}

/// Whether a step takes up a piece of the cut list.
fn is_taken_up(step: StepKind, piece: Piece) -> bool {
    match step {
        StepKind::Cut | StepKind::Staves => piece.sort() == Piece::Uprights,
        StepKind::Base => matches!(piece, Piece::Floor(FloorPart::Disc)),
        StepKind::FirstRows => matches!(piece, Piece::Course(1)),
        StepKind::Half | StepKind::Rest | StepKind::ToEars | StepKind::Dry => {
            matches!(piece, Piece::Course(_))
        }
        StepKind::Ears => piece.sort() == Piece::Ears,
        StepKind::Rings | StepKind::Rim => matches!(piece.sort(), Piece::OuterHoop | Piece::InnerHoop),
        StepKind::Pins => piece.sort() == Piece::Pins,
        StepKind::Lashing => matches!(piece.sort(), Piece::Lashing | Piece::Fillers),
        StepKind::Bend | StepKind::Handle => {
            matches!(piece.sort(), Piece::Handle | Piece::Rivets | Piece::Washers)
        }
        StepKind::OffMould | StepKind::Plug => matches!(piece, Piece::Floor(FloorPart::Plug)),
        StepKind::Lid => matches!(
            piece,
            Piece::Ledge | Piece::Collar | Piece::Lift | Piece::Hinge | Piece::Latch | Piece::Peg
        ),
        StepKind::Seal | StepKind::Finish => false,
    }
}

pub(crate) fn step(draft: &Draft, number: u32) -> Option<&Step> {
    draft.steps.iter().find(|step| step.number == number)
}
