//! `stavewright kits`.

use std::path::PathBuf;

use basket::Draft;
use clap::ValueEnum;
use serde_json::json;
use sheets::workshop::{LabelSize, Leaf, check_card, labels};

use super::plan::Planning;
use super::show;
use crate::cli::outcome::{Format, Outcome};
use crate::cli::printing::Printing;
use crate::failure::Failure;
use crate::planned::Planned;
use crate::screen;

/// Put the kits of a class together: what to cut for all, what goes into each bag, labels.
///
/// A kits file names the patterns and how many students make each; some may have other colours, or
/// more prepared for them. Spares are pooled: the teacher keeps one stock of them for everybody.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright kits autumn-weekend.toml
  stavewright kits autumn-weekend.toml --out kits.pdf --labels labels.pdf
  stavewright kits autumn-weekend.toml --checks checks.pdf
  stavewright kits autumn-weekend.toml --format json

A kits file:
  title = \"Autumn weekend\"
  needed = \"2026-10-17\"
  [[students]]
  pattern = \"channel-marker.toml\"
  count = 8
  [[students]]
  pattern = \"channel-marker.toml\"
  count = 4
  colours = { blue = \"red\" }")]
pub(crate) struct Args {
    #[command(flatten)]
    planning: Planning,

    /// Write the list as .pdf.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    /// Write labels for the bags as .pdf.
    #[arg(long, value_name = "FILE")]
    labels: Option<PathBuf>,

    /// Write the card by which students check their own work, as .pdf.
    #[arg(long, value_name = "FILE")]
    checks: Option<PathBuf>,

    /// Which sheets of labels.
    #[arg(long, value_enum, default_value_t)]
    label_size: SizeArg,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,

    #[command(flatten)]
    printing: Printing,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
enum SizeArg {
    /// 4 × 2 in, ten to a letter sheet.
    #[default]
    #[value(name = "4x2in")]
    FourByTwo,
    /// 4 × 3 1/3 in, six to a letter sheet.
    #[value(name = "4x3in")]
    LetterSix,
    /// 4 × 2 in, ten to an A4 sheet.
    #[value(name = "4x2in-a4")]
    A4FourByTwo,
    /// 105 × 57 mm, ten to an A4 sheet.
    #[value(name = "105x57mm")]
    A4Ten,
    /// 99.1 × 67.7 mm, eight to an A4 sheet.
    #[value(name = "99x68mm")]
    A4Eight,
    /// 63.5 × 72 mm, twelve to an A4 sheet.
    #[value(name = "64x72mm")]
    A4Twelve,
}

impl From<SizeArg> for LabelSize {
    fn from(size: SizeArg) -> Self {
        match size {
            SizeArg::FourByTwo => Self::FourByTwo,
            SizeArg::A4Ten => Self::A4Ten,
            SizeArg::A4Eight => Self::A4Eight,
            SizeArg::LetterSix => Self::LetterSix,
            SizeArg::A4FourByTwo => Self::A4FourByTwo,
            SizeArg::A4Twelve => Self::A4Twelve,
        }
    }
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let planned = args.planning.read()?;
    if args.format == Format::Json {
        screen::print_json(&written(&planned))?;
        return Ok(Outcome::Fine);
    }
    if let Some(out) = &args.labels {
        show::ending(out, &["pdf"])?;
        let classes = planned.classes.iter().map(|class| (class.file.title.as_str(), &class.kits));
        let sheet = labels(&classes.collect::<Vec<_>>(), args.label_size.into(), &planned.words);
        show::wrote(out, &sheet.pdf(&planned.words, &args.printing.templates()?)?)?;
    }
    if let Some(out) = &args.checks {
        let drafts: Vec<Draft> = planned.classes.iter().flat_map(|class| &class.drafts).cloned().collect();
        let leaf = check_card(&planned.title(), &drafts, &planned.words);
        show::leaf(&leaf, Some(out), (planned.first(), &planned.words, &args.printing))?;
    }
    if args.out.is_some() || (args.labels.is_none() && args.checks.is_none()) {
        let leaves = planned
            .classes
            .iter()
            .map(|class| sheets::workshop::kits(&class.file.title, &class.kits, &planned.words));
        let leaf = Leaf::joined(planned.title(), leaves.collect());
        show::leaf(&leaf, args.out.as_deref(), (planned.first(), &planned.words, &args.printing))?;
    }
    Ok(Outcome::Fine)
}

fn written(planned: &Planned) -> serde_json::Value {
    let words = &planned.words;
    let classes = planned.classes.iter().map(|class| {
        let batches = class.kits.batches.iter().map(|batch| {
            let cut = &batch.cut;
            json!({
                "piece": words.cut(cut.of, cut.piece),
                "material": words.value(&cut.stock.name()),
                "colour": cut.colour.as_ref().map(|colour| &colour.name),
                "length_mm": cut.length,
                "count": cut.count,
                "spares": cut.spares,
                "shares": batch.shares.iter().map(|(bags, each)| json!({ "bags": bags, "each": each })).collect::<Vec<_>>(),
            })
        });
        let bags = class.kits.bags.iter().map(|bag| {
            json!({
                "student": bag.student,
                "title": bag.title,
                "soak_minutes": bag.soak_minutes,
                "holds": bag.holds.iter().map(|(batch, count)| json!({ "batch": batch, "count": count })).collect::<Vec<_>>(),
            })
        });
        json!({
            "title": class.file.title,
            "batches": batches.collect::<Vec<_>>(),
            "bags": bags.collect::<Vec<_>>(),
            "room": class.kits.tools.iter().map(|tool| words.term(tool)).collect::<Vec<_>>(),
        })
    });
    json!({ "format": "stavewright-kits", "version": 1, "classes": classes.collect::<Vec<_>>() })
}
