//! `stavewright price`.

use std::path::PathBuf;

use planning::price::Reckoning;
use rust_decimal::Decimal;
use serde_json::json;
use sheets::workshop::Leaf;

use super::plan::Planning;
use super::{plan, show};
use crate::cli::outcome::{Format, Outcome};
use crate::cli::printing::Printing;
use crate::failure::Failure;
use crate::planned::Worked;
use crate::screen;

/// Work out what a basket, a kit and a seat in the class must cost, line by line.
///
/// Materials count at the price of buying them anew, work by the times of the steps. Prices of
/// materials come from the shelf, everything else from the kits file, table "price".
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright price autumn-weekend.toml
  stavewright price autumn-weekend.toml --out price.pdf

In the kits file, all of them optional, money and shares as text:
  [price]
  currency = \"crowns\"   wage = \"24\"       overhead = \"4.50\"  waste = \"0.1\"
  mould = \"1.25\"        packing = \"6\"     margin = \"0.15\"    retail = \"2\"
  step = \"1\"            venue = \"0.2\"     travel = \"70\"      room = \"50\"
  office_minutes = 30   kit_minutes = 40  teaching_hours = 16
  target = \"180\"        price of the basket that you have in mind
  fee = \"130\"           fee of a seat that you have in mind")]
pub(crate) struct Args {
    #[command(flatten)]
    planning: Planning,

    /// Write the sheet as .pdf.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,

    #[command(flatten)]
    printing: Printing,
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let planned = args.planning.read()?;
    let classes = planned.classes.get(..args.planning.written()).unwrap_or_default();
    if classes.is_empty() {
        let what = "an order has no prices of its own to be reckoned with";
        return Err(Failure::plain(what, "Name a kits file whose [price] table says them."));
    }
    let mut leaves = Vec::new();
    for class in classes {
        let anew = planned.anew(class, &mut plan::watch(plan::LIMIT));
        let worked = Worked::of(class, &anew);
        if args.format == Format::Json {
            let seat = worked.seats.seat(&worked.rates);
            screen::print_json(&json!({
                "format": "stavewright-price",
                "version": 1,
                "title": class.file.title,
                "currency": class.file.price.currency,
                "basket": lines(&worked.basket.reckoning),
                "kit": lines(&worked.kit.reckoning),
                "seat": seat.as_ref().map(lines),
                "unpriced": worked.unpriced.iter().map(unpriced).collect::<Vec<_>>(),
            }))?;
            continue;
        }
        leaves.push(worked.leaf(class, &planned.words));
    }
    if !leaves.is_empty() {
        let title = leaves.iter().map(|leaf| leaf.title.as_str()).collect::<Vec<_>>().join(", ");
        let leaf = Leaf::joined(title, leaves);
        show::leaf(&leaf, args.out.as_deref(), (planned.first(), &planned.words, &args.printing))?;
    }
    Ok(Outcome::Fine)
}

fn unpriced((material, colour): &(String, String)) -> serde_json::Value {
    json!({ "material": material, "colour": colour })
}

fn lines(reckoning: &Reckoning) -> serde_json::Value {
    let line = |(line, amount): &(planning::price::Line, Decimal)| {
        (format!("{line:?}").to_lowercase(), serde_json::Value::from(format!("{amount:.2}")))
    };
    serde_json::Value::Object(reckoning.0.iter().map(line).collect())
}
