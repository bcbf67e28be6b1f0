//! `stavewright shelf`.

use std::path::PathBuf;

use basket::limits::STORE_BYTES;
use basket::{Catalogue, Length};
use clap::Subcommand;
use rust_decimal::Decimal;
use serde_json::json;
use workshop::{Change, Everything, Fault, Girth, Item, Kind, Loan, Mould, Store, read_shelf, write_shelf};

use super::{StoreArgs, failure, show};
use crate::cli::outcome::{Format, Outcome};
use crate::cli::reading::{Reading, Speaking};
use crate::failure::Failure;
use crate::report;
use crate::source::Origin;
use crate::{input, screen};

/// Keep the shelf: what lies there, what came and went, which moulds are out.
///
/// Without a subcommand it lists the shelf. Nothing is booked unless you say so, and everything that
/// was booked can be taken back.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright shelf
  stavewright shelf put \"fine cane\" --material \"cane fine\" --length \"12 ft\" \\
      --count 70 --unit hank --holds 83 --price 48.00 --reorder 20
  stavewright shelf put \"cane by the foot\" --material \"cane fine\" \\
      --length \"1 ft\" --unit foot --holds 1 --price 0.12
  stavewright shelf came \"fine cane\" 83
  stavewright shelf count \"fine cane\" 61
  stavewright shelf remove \"old cane\"
  stavewright shelf history
  stavewright shelf undo
  stavewright shelf mould A --place \"boat shed\" --measured harbour.toml
  stavewright shelf lend A --to \"student 4\" --due 2026-10-18
  stavewright shelf export shelf.csv        or everything: workshop.toml
  stavewright shelf import shelf.csv")]
pub(crate) struct Args {
    #[command(subcommand)]
    what: Option<What>,

    #[command(flatten)]
    store: StoreArgs,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,
}

#[derive(Debug, Subcommand)]
enum What {
    /// Put something on the shelf, or change what is said of it.
    Put(Box<PutArgs>),
    /// Strands or pieces came.
    Came { name: String, count: u32 },
    /// Count anew: so many are there.
    Count { name: String, count: u32 },
    /// Take something off the shelf, with all that is said of it; its history stays.
    Remove {
        /// The item, or the mould.
        name: String,
        /// It is a mould.
        #[arg(long)]
        mould: bool,
    },
    /// Show what came and went, the last first.
    History,
    /// Take a movement back [default: the last one].
    Undo { movement: Option<i64> },
    /// Write a mould down.
    Mould {
        name: String,
        /// Where it is kept.
        #[arg(long, default_value = "", hide_default_value = true)]
        place: String,
        /// Take its girths over from this pattern's mould.
        #[arg(long, value_name = "PATTERN")]
        measured: Option<PathBuf>,
        /// Pattern files that fit it.
        #[arg(long, default_value = "", hide_default_value = true)]
        patterns: String,
        /// Anything else.
        #[arg(long, default_value = "", hide_default_value = true)]
        note: String,
    },
    /// List the moulds.
    Moulds,
    /// Lend a mould.
    Lend {
        mould: String,
        /// To whom.
        #[arg(long)]
        to: String,
        /// The day on which it is due back, as 2026-10-18.
        #[arg(long)]
        due: Option<String>,
    },
    /// A mould is back.
    Back { mould: String },
    /// Write the shelf as .csv, or everything as .toml: also orders, log, hand and histories.
    Export { out: PathBuf },
    /// Read a shelf from .csv, or everything from .toml into an empty store.
    Import { file: PathBuf },
}

#[derive(Debug, clap::Args)]
struct PutArgs {
    name: String,
    /// Material, by the name that a pattern uses.
    #[arg(long)]
    material: String,
    /// Colour.
    #[arg(long, default_value = "natural")]
    colour: String,
    /// Length of one strand; none for pieces used whole.
    #[arg(long)]
    length: Option<String>,
    /// How many there are; only for something new.
    #[arg(long, default_value_t = 0)]
    count: u32,
    /// Width as you measured it.
    #[arg(long)]
    width: Option<String>,
    /// Thickness as you measured it.
    #[arg(long)]
    thickness: Option<String>,
    /// What it is bought in, such as hank; foot or metre for what is sold by length.
    #[arg(long, default_value = "", hide_default_value = true)]
    unit: String,
    /// Strands or pieces in one such unit; 1 by the foot or metre.
    #[arg(long, default_value_t = 0, hide_default_value = true)]
    holds: u32,
    /// What one such unit costs.
    #[arg(long, value_parser = super::amount)]
    price: Option<Decimal>,
    /// Where it is bought.
    #[arg(long, default_value = "", hide_default_value = true)]
    from: String,
    /// Below this many it is time to buy.
    #[arg(long, default_value_t = 0, hide_default_value = true)]
    reorder: u32,
    /// Anything else.
    #[arg(long, default_value = "", hide_default_value = true)]
    note: String,
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let mut store = args.store.open()?;
    let faulty = |fault: Fault| failure(&args.store.store, &fault);
    let done = match &args.what {
        None => return list(&store.items().map_err(faulty)?, args.format),
        Some(What::History) => return history(&store.history(200).map_err(faulty)?, args.format),
        Some(What::Moulds) => return moulds(&store.moulds().map_err(faulty)?, args.format),
        Some(What::Export { out }) => return export(&store, out, args),
        Some(What::Import { file }) => import(&mut store, file, args)?,
        Some(What::Put(put)) => {
            let item = put.item()?;
            store.put_items(std::slice::from_ref(&item)).map_err(faulty)?;
            format!("On the shelf: {}", item.name)
        }
        Some(What::Came { name, count }) => {
            let changes = [Change { item: name.clone(), count: i64::from(*count) }];
            booked(store.book(Kind::Bought, "", &changes).map_err(faulty)?)
        }
        Some(What::Count { name, count }) => booked(store.count(name, *count).map_err(faulty)?),
        Some(What::Remove { name, mould: false }) => booked(store.remove_item(name).map_err(faulty)?),
        Some(What::Remove { name, mould: true }) => booked(store.remove_mould(name).map_err(faulty)?),
        Some(What::Undo { movement }) => {
            let undone = store.undo(*movement).map_err(faulty)?;
            format!("Taken back: movement {} ({})", undone.id, undone.kind.word())
        }
        Some(What::Mould { name, place, measured, patterns, note }) => {
            let profile = measured.as_deref().map(profile).transpose()?.unwrap_or_default();
            let (name, place, patterns, note) = (name.clone(), place.clone(), patterns.clone(), note.clone());
            let said = Mould { name, place, patterns, note, profile, ..Mould::default() };
            store.put_mould(&said).map_err(faulty)?;
            "Written down.".to_owned()
        }
        Some(What::Lend { mould, to, due }) => {
            store.lend(mould, &Loan { to: to.clone(), due: due.clone() }).map_err(faulty)?;
            format!("Mould {mould} is with {to}.")
        }
        Some(What::Back { mould }) => {
            store.bring_back(mould).map_err(faulty)?;
            format!("Mould {mould} is back.")
        }
    };
    screen::print(&format!("{done}\n"))?;
    Ok(Outcome::Fine)
}

/// Girths of a pattern's mould, evenly from its foot to its top.
fn profile(pattern: &std::path::Path) -> Result<Vec<Girth>, Failure> {
    const PLACES: u32 = 8;
    let form = Reading::plain(pattern.to_owned(), &Speaking::default()).read_and_say()?.0.basket().body.form;
    let girth = |place: u32| {
        let along = form.profile.along_at_height(form.height() * (f64::from(place) / f64::from(PLACES)));
        let girth = form.girth(along, Length::ZERO);
        Girth { height_mm: form.profile.at(along).height.to_mm(), girth_mm: girth.to_mm() }
    };
    Ok((0..=PLACES).map(girth).collect())
}

fn booked(id: i64) -> String {
    format!("Booked as movement {id}; `stavewright shelf undo` takes it back.")
}

impl PutArgs {
    fn item(&self) -> Result<Item, Failure> {
        if Catalogue::built_in().material(&self.material).is_none() {
            let help = "`stavewright materials` lists the names; ask with a word of it.";
            return Err(Failure::plain(format!("there is no material called `{}`", self.material), help));
        }
        Ok(Item {
            name: self.name.clone(),
            material: self.material.clone(),
            colour: self.colour.clone(),
            length_mm: measure("--length", self.length.as_deref())?,
            count: self.count,
            width_mm: measure("--width", self.width.as_deref())?,
            thickness_mm: measure("--thickness", self.thickness.as_deref())?,
            unit: self.unit.clone(),
            holds: self.holds,
            price: self.price,
            bought_from: self.from.clone(),
            reorder: self.reorder,
            note: self.note.clone(),
            gone: false,
        })
    }
}

fn measure(option: &str, text: Option<&str>) -> Result<Option<f64>, Failure> {
    let Some(text) = text else { return Ok(None) };
    let wrong = |what: String| {
        Failure::plain(format!("{option} \"{text}\": {what}"), "Write it as \"12 ft\" or \"3.6 m\".")
    };
    Length::parse(text, None).map(|length| Some(length.to_mm())).map_err(|error| wrong(error.to_string()))
}

fn list(items: &[Item], format: Format) -> Result<Outcome, Failure> {
    match format {
        Format::Json => {
            screen::print_json(&json!({ "format": "stavewright-shelf", "version": 1, "items": items }))
        }
        Format::Text => screen::print(&report::shelf::items(items)),
    }?;
    Ok(Outcome::Fine)
}

fn history(movements: &[workshop::Movement], format: Format) -> Result<Outcome, Failure> {
    match format {
        Format::Json => screen::print_json(
            &json!({ "format": "stavewright-movements", "version": 1, "movements": movements }),
        ),
        Format::Text => screen::print(&report::shelf::movements(movements)),
    }?;
    Ok(Outcome::Fine)
}

fn moulds(moulds: &[Mould], format: Format) -> Result<Outcome, Failure> {
    match format {
        Format::Json => {
            screen::print_json(&json!({ "format": "stavewright-moulds", "version": 1, "moulds": moulds }))
        }
        Format::Text => screen::print(&report::shelf::moulds(moulds)),
    }?;
    Ok(Outcome::Fine)
}

fn export(store: &Store, out: &std::path::Path, args: &Args) -> Result<Outcome, Failure> {
    let faulty = |fault: Fault| failure(&args.store.store, &fault);
    let ending = show::ending(out, &["csv", "toml"])?;
    let bytes = if ending == "csv" {
        write_shelf(&store.items().map_err(faulty)?).map_err(faulty)?
    } else {
        store.everything().and_then(|all| all.to_toml()).map_err(faulty)?.into_bytes()
    };
    show::wrote(out, &bytes)?;
    Ok(Outcome::Fine)
}

fn import(store: &mut Store, file: &std::path::Path, args: &Args) -> Result<String, Failure> {
    let faulty = |fault: Fault| failure(&args.store.store, &fault);
    let in_file = |fault: Fault| failure(file, &fault);
    let ending = show::ending(file, &["csv", "toml"])?;
    let text = input::read_up_to(STORE_BYTES, Origin::of(file))?;
    if ending == "toml" {
        let all = Everything::from_toml(&text.content).map_err(in_file)?;
        store.take_in(&all).map_err(faulty)?;
        return Ok(format!(
            "Taken in: {} items, {} movements, {} records, {} versions of patterns",
            all.items.len(),
            all.movements.len(),
            all.records.len(),
            all.versions.len()
        ));
    }
    let items = read_shelf(text.content.as_bytes()).map_err(in_file)?;
    let counted = store.take_in_items(&items, &file.display().to_string()).map_err(faulty)?;
    Ok(format!("Taken in: {} items, {} of them counted anew", items.len(), counted))
}
