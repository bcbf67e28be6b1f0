//! `stavewright find-weave`.

use std::collections::BTreeMap;

use basket::pattern::{Lean, Units};
use basket::weave::find::{COUNTS, MOST_COLOURS, Proposal, Wanted, find};
use basket::weave::look::{Look, Sighting};
use clap::ValueEnum;
use serde::Serialize;

use super::handed::HandArg;
use super::outcome::{Format, Outcome};
use super::reading::Speaking;
use crate::failure::Failure;
use crate::{report, screen};

/// Names of the colours in which proposals are told.
pub(crate) const NAMES: [&str; MOST_COLOURS as usize] = ["natural", "blue", "red"];

/// Propose weaves that give a wanted look near a wanted count of staves.
///
/// Every weave on every count is woven and looked at; what fits is printed best first, each with
/// a small chart and the keys to write into a course of the pattern.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright find-weave --look spiral --lean right --turns 2 --colours 2 --near 73
  stavewright find-weave --look spiral --lean right --hand left --near 73
  stavewright find-weave --look columns --colours 3 --near 60
  stavewright find-weave --look arrows --near 72 --format json

Right and left are as seen from outside on a basket that stands on its base.")]
pub(super) struct Args {
    /// What is to be seen from outside.
    #[arg(long, value_enum)]
    look: LookArg,

    /// For spirals: the side to which they climb.
    #[arg(long, value_enum)]
    lean: Option<LeanArg>,

    /// For spirals: how often a line goes round the basket.
    #[arg(long, value_name = "NUMBER", value_parser = turns)]
    turns: Option<f64>,

    /// How many colours; one shows the look by weaver and stave alone.
    #[arg(long, value_name = "COUNT", default_value_t = 1,
          value_parser = clap::value_parser!(u8).range(1..=i64::from(MOST_COLOURS)))]
    colours: u8,

    /// The count of staves that would be best.
    #[arg(long, value_name = "COUNT", value_parser = clap::value_parser!(u32).range(3..=999))]
    near: u32,

    /// Fewest staves.
    #[arg(long, value_name = "COUNT", default_value_t = *COUNTS.start(),
          value_parser = clap::value_parser!(u32).range(3..=999))]
    fewest: u32,

    /// Most staves.
    #[arg(long, value_name = "COUNT", default_value_t = *COUNTS.end(),
          value_parser = clap::value_parser!(u32).range(3..=999))]
    most: u32,

    /// How many rows the look has to grow in.
    #[arg(long, value_name = "COUNT", default_value_t = 80,
          value_parser = clap::value_parser!(u32).range(1..=2000))]
    rows: u32,

    /// How many proposals to print.
    #[arg(long, value_name = "COUNT", default_value_t = 5,
          value_parser = clap::value_parser!(u32).range(1..=50))]
    show: u32,

    /// Which hand leads the weaver.
    #[arg(long, value_enum, default_value_t)]
    hand: HandArg,

    #[command(flatten)]
    speaking: Speaking,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum LookArg {
    /// Lines that climb round the basket.
    Spiral,
    /// Lines straight up.
    Columns,
    /// Lines straight round.
    Bands,
    /// No line stands out.
    Checks,
    /// Lines that lean one way, then the other.
    Arrows,
    /// All alike.
    Plain,
}

impl From<LookArg> for Look {
    fn from(look: LookArg) -> Self {
        match look {
            LookArg::Spiral => Self::Spiral,
            LookArg::Columns => Self::Columns,
            LookArg::Bands => Self::Bands,
            LookArg::Checks => Self::Checks,
            LookArg::Arrows => Self::Arrows,
            LookArg::Plain => Self::Plain,
        }
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum LeanArg {
    /// Up to the left.
    Left,
    /// Up to the right.
    Right,
}

fn turns(text: &str) -> Result<f64, String> {
    let number: f64 = text.parse().map_err(|_| "write a number such as 2 or 1.5".to_owned())?;
    if (0.05..=50.0).contains(&number) {
        Ok(number)
    } else {
        Err("write a number from 0.05 to 50".to_owned())
    }
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let wanted = wanted(args)?;
    let found = find(&wanted, args.show as usize);
    if found.is_empty() {
        return Err(Failure::plain("no weave gives this look", remedy(&wanted)));
    }
    match args.format {
        Format::Text => {
            let words = args.speaking.words(Units::Inches);
            screen::print(&report::proposals::render(&found, &wanted, &words, names(args.colours)))?;
        }
        Format::Json => screen::print_json(
            &found.iter().map(|proposal| Told::of(proposal, args.colours)).collect::<Vec<_>>(),
        )?,
    }
    Ok(Outcome::Fine)
}

fn wanted(args: &Args) -> Result<Wanted, Failure> {
    if args.fewest > args.most {
        return Err(Failure::plain(
            format!("--fewest {} is more than --most {}", args.fewest, args.most),
            "Give the smaller count to --fewest.",
        ));
    }
    if args.look != LookArg::Spiral && (args.lean.is_some() || args.turns.is_some()) {
        return Err(Failure::plain(
            "only a spiral has a lean and turns",
            "Leave out --lean and --turns, or ask for --look spiral.",
        ));
    }
    Ok(Wanted {
        direction: args.hand.direction(),
        lean: args.lean.map(|lean| match lean {
            LeanArg::Left => Lean::Left,
            LeanArg::Right => Lean::Right,
        }),
        turns: args.turns,
        counts: args.fewest..=args.most,
        rows: args.rows,
        ..Wanted::new(args.look.into(), args.colours, args.near)
    })
}

/// What might be found instead.
fn remedy(wanted: &Wanted) -> &'static str {
    match (wanted.look, wanted.turns) {
        (Look::Plain, _) if wanted.colours > 1 => "All alike has one colour: ask for --colours 1.",
        (Look::Spiral, Some(_)) => {
            "Ask for fewer turns, for more --rows, or for other counts with --fewest and --most."
        }
        _ => "Ask for another count of colours, or for other counts of staves with --fewest and --most.",
    }
}

/// A proposal for other programs.
#[derive(Serialize)]
struct Told {
    staves: u32,
    course: BTreeMap<&'static str, String>,
    stave_colours: Vec<&'static str>,
    seen: Sighting,
    lean: Option<Lean>,
    turns: f64,
    float_staves: u32,
    penalty: f64,
}

impl Told {
    fn of(proposal: &Proposal, colours: u8) -> Self {
        Self {
            staves: proposal.count,
            course: proposal.keys(names(colours)).into_iter().collect(),
            stave_colours: proposal
                .colouring
                .staves
                .iter()
                .filter_map(|&colour| NAMES.get(usize::from(colour)).copied())
                .collect(),
            seen: proposal.sighting,
            lean: proposal.lean(),
            turns: proposal.turns,
            float_staves: proposal.float,
            penalty: proposal.penalty,
        }
    }
}

/// Names of so many colours.
fn names(colours: u8) -> &'static [&'static str] {
    NAMES.get(..usize::from(colours)).unwrap_or(&NAMES)
}
