//! `stavewright class`.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant, SystemTime};

use basket::Draft;
use basket::pattern::Units;
use planning::class::written::{self, Class};
use planning::class::{Answer, Doing, Source};
use sheets::ClassPlan;
use words::{Language, Words};

use super::outcome::{Format, Outcome};
use super::own_hand::OwnHand;
use super::printing::Printing;
use super::reading::{Reading, Shared, words};
use crate::failure::Failure;
use crate::progress::Progress;
use crate::source::Origin;
use crate::{input, report, screen, single};

/// Plan a class: whether it fits, who does what when on which mould, and what would mend it.
///
/// A class is a file of its own that names a pattern. Students of a kind are planned alike; moulds
/// are held until the wall is dry, waits run through the night, and work is broken off between rows,
/// staves or wraps alone.
#[derive(Debug, clap::Args)]
#[command(
    after_help = "A whole file of a class; [teacher], [tables], [home], [samples], drills, from, ready, every and
times may be left out:
  title = \"Harbour bread basket in four days\"
  pattern = \"harbour.toml\"          # from this file's folder
  zone = \"America/New_York\"
  moulds = 4
  drills = 2
  [[students]]
  count = 6
  hand = \"learner\"                  # or \"practised\"
  from = \"2027-04-10 13:00\"         # when they come
  ready = [\"staves tapered\", \"rings\"]
  [[days]]
  date = \"2027-04-10\"
  hours = [\"09:00-12:00\", \"13:00-17:00\"]
  every = 7                         # days apart, so many times
  times = 4
  [teacher]                         # stands by at these steps
  at_once = 2
  steps = [\"handle\"]
  [tables]                          # room for so many at these steps
  at_once = 4
  steps = [\"cut\", \"rings\"]
  [home]                            # may be done at home as well
  steps = [\"lashing\"]
  hours = \"19:00-21:00\"
  [samples]                         # the teacher's, made in these hours beforehand
  stages = [\"staves-set\", \"half-woven\", \"woven\"]
  hours = \"09:00-15:00\"
  moulds = 2                        # beside the students'

Examples:
  stavewright class weekend.toml
  stavewright class weekend.toml --sheet weekend.pdf --calendar weekend.ics
  stavewright class weekend.toml --hand workshop.db     at the pace of the log
  stavewright class weekend.toml --format json

Exit status: 0 when the class fits, 1 when it does not or no plan was found in
time, 2 when a file cannot be read or written."
)]
pub(super) struct Args {
    /// The file of the class; - reads standard input.
    class: PathBuf,

    #[command(flatten)]
    shared: Shared,

    #[command(flatten)]
    hand: OwnHand,

    /// Write the plan as PDF: picture, a page a session, a card a student.
    #[arg(long, value_name = "FILE")]
    sheet: Option<PathBuf>,

    /// Write the sessions as a calendar file, .ics.
    #[arg(long, value_name = "FILE")]
    calendar: Option<PathBuf>,

    /// How long to look for a better plan, and for what would mend one that does not fit.
    #[arg(long, value_name = "SECONDS", default_value_t = 5, value_parser = clap::value_parser!(u64).range(1..=3600))]
    time_limit: u64,

    #[command(flatten)]
    printing: Printing,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let templates = args.printing.templates()?;
    let class = read(&args.class)?;
    let read = Reading::of(beside(&args.class, &class.pattern), &args.shared).read()?;
    let (hand, said) = args.hand.of(&read)?;
    screen::tell(&said);
    let answer = plan(&class, read.source_of_steps(&hand), args.time_limit);
    let draft = read.draft_by(&hand);
    let words = words(&draft.basket);
    let told = sheets::class_plan(&draft, &answer, &words);
    if let Some(out) = &args.calendar {
        single::write(out, sheets::calendar(&answer, &told, &words, now()).as_bytes())?;
    }
    if let Some(out) = &args.sheet {
        single::write(out, &sheet(args, templates, (&draft, &answer))?)?;
    }
    match args.format {
        Format::Json => screen::print_json(&told)?,
        Format::Text => text(args, &told, &words)?,
    }
    Ok(if answer.found().is_some() { Outcome::Fine } else { Outcome::Stopped })
}

fn read(path: &Path) -> Result<Class, Failure> {
    let text = input::read(Origin::of(path))?;
    written::read(&text.content).map_err(|faults| {
        let words = Words::new(Language::English, Units::default());
        let problems = faults.into_iter().map(|fault| fault.told(|id, args| words.with(id, args)));
        Failure::Misread { text, problems: problems.collect() }
    })
}

/// The pattern's path, from the folder of the class.
fn beside(class: &Path, pattern: &str) -> PathBuf {
    class.parent().map_or_else(|| PathBuf::from(pattern), |folder| folder.join(pattern))
}

fn plan(class: &Class, source: Source, seconds: u64) -> Answer {
    let progress = Progress::begin();
    let begun = Instant::now();
    let limit = Duration::from_secs(seconds);
    Answer::of(class, source, &mut |doing| {
        // Half of the time is for the plan; what would mend it has the rest.
        let (said, until) = match doing {
            Doing::Planning(so_far) => {
                let best = so_far.best.map(|best| class.local(best));
                let best =
                    best.map_or_else(String::new, |(date, time)| format!(", so far until {date} {time}"));
                (format!("planning{best}"), limit / 2)
            }
            Doing::Trying(count) => (format!("trying changes: {count}"), limit),
        };
        progress.say(&said);
        begun.elapsed() < until
    })
}

fn sheet(
    args: &Args,
    templates: sheets::Templates,
    (draft, answer): (&Draft, &Answer),
) -> Result<Vec<u8>, Failure> {
    let paper = args.printing.paper(&draft.basket);
    let answer = answer.clone();
    args.printing.set(draft, &words(&draft.basket), move |draft, words, say| {
        say("class");
        sheets::class_sheet((draft, &answer), words, paper, &templates)
    })
}

fn text(args: &Args, told: &ClassPlan, words: &Words) -> Result<(), Failure> {
    screen::print(&report::class::render(told, words))?;
    for out in [&args.sheet, &args.calendar].into_iter().flatten() {
        screen::print(&format!("Wrote {}\n", out.display()))?;
    }
    Ok(())
}

/// Minutes since 1970 began in Greenwich.
fn now() -> i64 {
    let since = SystemTime::now().duration_since(SystemTime::UNIX_EPOCH).unwrap_or_default();
    i64::try_from(since.as_secs() / 60).unwrap_or(0)
}
