//! `stavewright price`.

use std::path::PathBuf;

use planning::price::{Class, Making, Rates, Reckoning, of_one};
use rust_decimal::Decimal;
use serde_json::json;
use sheets::workshop::{Priced, Prices, prices};

use super::plan::{Planned, PlannedClass, Planning};
use super::{plan, show};
use crate::cli::outcome::{Format, Outcome};
use crate::cli::printing::Printing;
use crate::failure::Failure;
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
    let (material, unpriced) = materials(&planned)?;
    for class in &planned.classes {
        let rates = rates(class);
        let price = &class.file.price;
        let work = average(class, |draft| draft.steps.iter().map(|step| step.work_minutes).sum());
        let office_minutes = price.office_minutes;
        let basket = priced(Making { materials: material, minutes: work, office_minutes }, &rates);
        let of_kit = Rates { mould: Decimal::ZERO, ..rates.clone() };
        let kit = priced(Making { materials: material, minutes: price.kit_minutes, office_minutes }, &of_kit);
        let seats = Class {
            students: class.kits.bags.len() as u32,
            minutes: price.teaching_hours * 60.0,
            travel: price.travel.0,
            room: price.room.0,
            venue: price.venue.0,
            kit: kit.reckoning.amount(planning::price::Line::Cost),
        };
        if args.format == Format::Json {
            let seat = seats.seat(&rates);
            screen::print_json(&json!({
                "format": "stavewright-price",
                "version": 1,
                "title": class.file.title,
                "currency": price.currency,
                "basket": lines(&basket.reckoning),
                "kit": lines(&kit.reckoning),
                "seat": seat.as_ref().map(lines),
                "unpriced": unpriced,
            }))?;
            continue;
        }
        let all = Prices {
            rates: &rates,
            currency: &price.currency,
            basket,
            kit,
            class: &seats,
            target: price.target.map(|target| target.0),
            fee: price.fee.map(|fee| fee.0),
            unpriced: &unpriced,
        };
        let leaf = prices(&class.file.title, &all, &planned.words);
        show::leaf(&leaf, args.out.as_deref(), (planned.first(), &planned.words, &args.printing))?;
    }
    Ok(Outcome::Fine)
}

fn priced(making: Making, rates: &Rates) -> Priced {
    Priced { making, reckoning: of_one(&making, rates) }
}

/// What the material of one kit costs when it is bought anew, and what has no price.
fn materials(planned: &Planned) -> Result<(Decimal, Vec<String>), Failure> {
    let purchases = planned.purchases(false, plan::LIMIT)?;
    let kits: usize = planned.classes.iter().map(|class| class.kits.bags.len()).sum();
    let all: Decimal = purchases.iter().filter_map(planning::buying::Purchase::replacement).sum();
    let unpriced = purchases.iter().filter(|purchase| purchase.replacement().is_none());
    let unpriced = unpriced.map(|purchase| purchase.need.material.name.clone()).collect();
    Ok((all.checked_div(Decimal::from(kits)).unwrap_or_default(), unpriced))
}

fn rates(class: &PlannedClass) -> Rates {
    let price = &class.file.price;
    Rates {
        wage: price.wage.0,
        overhead: price.overhead.0,
        waste: price.waste.0,
        mould: price.mould.0,
        packing: price.packing.0,
        margin: price.margin.0,
        retail: price.retail.map_or(Decimal::TWO, |retail| retail.0),
        step: price.step.0,
    }
}

/// Over all students of the class.
fn average(class: &PlannedClass, of: impl Fn(&basket::Draft) -> f64) -> f64 {
    let groups = class.file.students.iter().zip(&class.drafts);
    let (sum, count) = groups.fold((0.0, 0.0), |(sum, count), (group, draft)| {
        (sum + of(draft) * f64::from(group.count), count + f64::from(group.count))
    });
    if count > 0.0 { sum / count } else { 0.0 }
}

fn lines(reckoning: &Reckoning) -> serde_json::Value {
    let line = |(line, amount): &(planning::price::Line, Decimal)| {
        (format!("{line:?}").to_lowercase(), serde_json::Value::from(format!("{amount:.2}")))
    };
    serde_json::Value::Object(reckoning.0.iter().map(line).collect())
}
