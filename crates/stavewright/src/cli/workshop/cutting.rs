//! `stavewright cutting`.

use std::path::PathBuf;
use std::time::Duration;

use planning::buying::Purchase;
use serde_json::json;
use sheets::workshop::cutting_plan;

use super::plan::Planning;
use super::{book, plan, show};
use crate::cli::outcome::{Format, Outcome};
use crate::cli::printing::Printing;
use crate::failure::Failure;
use crate::screen;

/// Plan which pieces to cut from which strand, so that the fewest strands are bought.
///
/// Strands and offcuts on the shelf are used first. Of plans that buy equally little the one that opens
/// the least stock is taken, and what is left is kept in long ends. The answer says whether fewer
/// strands could do.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright cutting autumn-weekend.toml
  stavewright cutting autumn-weekend.toml --out cutting.pdf    with the strands drawn
  stavewright cutting autumn-weekend.toml --time 60            search longer
  stavewright cutting autumn-weekend.toml --cut                it was cut: book it")]
pub(crate) struct Args {
    #[command(flatten)]
    planning: Planning,

    /// Write the plan as .pdf.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    /// Seconds after which the best plan so far is taken.
    #[arg(long, value_name = "SECONDS", default_value_t = plan::SECONDS, value_parser = clap::value_parser!(u64).range(0..=86_400))]
    time: u64,

    /// It was cut so: take the strands from the shelf, and put ends worth keeping back.
    #[arg(long)]
    cut: bool,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,

    #[command(flatten)]
    printing: Printing,
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let planned = args.planning.read()?;
    let purchases = planned.purchases(&mut plan::watch(Duration::from_secs(args.time)));
    if args.format == Format::Json {
        let all: Vec<_> = purchases.iter().filter_map(written).collect();
        screen::print_json(&json!({ "format": "stavewright-cutting", "version": 1, "materials": all }))?;
    } else {
        let leaf = cutting_plan(&planned.title(), &purchases, &planned.words);
        show::leaf(&leaf, args.out.as_deref(), (planned.first(), &planned.words, &args.printing))?;
    }
    if args.cut {
        book::cut(&args.planning.store, &planned.title(), &purchases)?;
    }
    Ok(Outcome::Fine)
}

fn written(purchase: &Purchase) -> Option<serde_json::Value> {
    let plan = purchase.plan.as_ref()?;
    let strands = plan.alike().into_iter().map(|(times, strand)| {
        let pieces = strand.pieces.iter().filter_map(|piece| Some(purchase.job.pieces.get(*piece)?.length));
        json!({
            "times": times,
            "item": purchase.lots.get(strand.stock).map(|lot| &lot.name),
            "length_mm": purchase.job.stocks.get(strand.stock).map(|stock| stock.length),
            "pieces_mm": pieces.collect::<Vec<_>>(),
            "left_mm": strand.left,
        })
    });
    Some(json!({
        "material": purchase.need.material.name,
        "colour": purchase.need.colour,
        "bought_strands": plan.cost,
        "at_least": plan.bound,
        "proven": plan.is_proven(),
        "least_stock": plan.is_shortest,
        "strands": strands.collect::<Vec<_>>(),
    }))
}
