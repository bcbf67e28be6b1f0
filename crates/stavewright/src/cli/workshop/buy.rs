//! `stavewright buy`.

use std::path::PathBuf;

use planning::buying::{Bought, Due, Purchase};
use serde_json::json;
use sheets::workshop::{Shopping, shopping_csv, shopping_list};

use super::plan::Planning;
use super::{book, plan, show};
use crate::cli::outcome::{Format, Outcome};
use crate::cli::printing::Printing;
use crate::failure::Failure;
use crate::screen;

/// Write the shopping list for classes and orders together: what the shelf has, what is to be bought.
///
/// Strands on the shelf are used first, offcuts among them. What is missing is bought in the units
/// that cost least, or by the running foot or metre where the shelf knows a unit `foot` or `metre` and
/// that costs less; prices and units are those of the shelf, else those of the catalogue. Where a
/// kits file or an order says when its material is needed, the list says until when to order it.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright buy autumn-weekend.toml
  stavewright buy autumn-weekend.toml winter-class.toml --out shopping.pdf
  stavewright buy autumn-weekend.toml --order \"bread baskets\" --out shopping.csv
  stavewright buy autumn-weekend.toml --bought      all of it was bought: book it")]
pub(crate) struct Args {
    #[command(flatten)]
    planning: Planning,

    /// Write the list as .pdf or .csv.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    /// Everything on the list was bought: put it on the shelf.
    #[arg(long)]
    bought: bool,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,

    #[command(flatten)]
    printing: Printing,
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let planned = args.planning.read()?;
    let purchases = planned.purchases(&mut plan::watch(plan::LIMIT));
    if args.format == Format::Json {
        let all: Vec<_> = purchases.iter().map(written).collect();
        let due: Vec<_> = planned.due().iter().map(due).collect();
        let (format, version) = ("stavewright-shopping", 1);
        screen::print_json(&json!({ "format": format, "version": version, "due": due, "materials": all }))?;
    } else if args.out.as_ref().is_some_and(|out| out.extension().is_some_and(|ending| ending == "csv")) {
        let out = args.out.clone().unwrap_or_default();
        show::wrote(&out, &shopping_csv(&purchases)?)?;
    } else {
        let list = Shopping { purchases: &purchases, due: &planned.due(), currency: &planned.currency() };
        let leaf = shopping_list(&planned.title(), &list, &planned.words);
        show::leaf(&leaf, args.out.as_deref(), (planned.first(), &planned.words, &args.printing))?;
    }
    if args.bought {
        book::bought(&args.planning.store, &planned.title(), &purchases)?;
    }
    Ok(Outcome::Fine)
}

fn due(due: &Due) -> serde_json::Value {
    json!({
        "for": due.name,
        "needed": due.needed.to_string(),
        "order_by": due.order_by.map(|day| day.to_string()),
        "order_dyed_by": due.order_dyed_by.map(|day| day.to_string()),
    })
}

fn written(purchase: &Purchase) -> serde_json::Value {
    let shelf = purchase.taken().into_iter().map(|(lot, count)| json!({ "item": lot.name, "count": count }));
    json!({
        "material": purchase.need.material.name,
        "colour": purchase.need.colour,
        "from_shelf": shelf.collect::<Vec<_>>(),
        "buy": purchase.buy.iter().map(ordered).collect::<Vec<_>>(),
        "cost": purchase.cost.map(|cost| cost.to_string()),
        "order_by": purchase.order_by.map(|day| day.to_string()),
        "stays_whole": purchase.spare,
        "fault": purchase.fault.as_ref().map(ToString::to_string),
    })
}

/// `lengths` are in units, for what is ordered by length.
fn ordered(bought: &Bought) -> serde_json::Value {
    let Bought { offer, count, lengths } = bought;
    json!({
        "unit": offer.unit,
        "count": count,
        "lengths": bought.is_by_length().then_some(lengths),
        "holds": offer.holds,
        "price": offer.price.map(|price| price.to_string()),
        "cost": bought.cost().map(|cost| cost.to_string()),
        "from": offer.from,
    })
}
