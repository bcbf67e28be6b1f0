//! `stavewright records`.

use std::path::{Path, PathBuf};

use basket::pattern::Units;
use basket::{Draft, Hand};
use clap::Subcommand;
use planning::records::{self, Compared, Record};
use serde_json::json;
use sheets::workshop::making_log;
use sheets::{Card, Provenance};
use words::Words;

use super::{StoreArgs, failure, show};
use crate::cli::outcome::{Format, Outcome};
use crate::cli::printing::Printing;
use crate::cli::reading::{Reading, Speaking, UnitsArg, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{input, packet, photos, report, screen};

/// Keep the log of what was made, from which the program learns your own hand.
///
/// Without a subcommand it lists the log. A making is written down in a small file, for which `form`
/// prints an empty one; `log` gives it the next number. Who made it need not be said, and what is told
/// of a person can be handed to that person and forgotten.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright records form harbour.toml > making.toml    fill it in
  stavewright records log making.toml harbour.toml
  stavewright records
  stavewright records show 12
  stavewright records sheet --out log.pdf
  stavewright records card 12 harbour.toml --maker \"the school\" --out card.pdf
  stavewright records export mine.toml --who \"student 3\"
  stavewright records delete --who \"student 3\" --yes
  stavewright hand workshop.db harbour.toml    what the log says of your hand")]
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
    /// Print an empty record of a pattern, with what was planned beside each line.
    Form(Box<Reading>),
    /// Write makings down, under the next numbers.
    Log {
        /// The file of the records; - reads standard input.
        file: PathBuf,
        #[command(flatten)]
        reading: Box<Reading>,
    },
    /// Show one record.
    Show { number: u32 },
    /// Write the log as .pdf, to print.
    Sheet {
        /// Only this maker's records.
        #[arg(long, value_name = "NAME")]
        who: Option<String>,
        /// The file to write.
        #[arg(long, value_name = "FILE", default_value = "makings.pdf")]
        out: PathBuf,
        /// Units to print first.
        #[arg(long, value_name = "UNITS", default_value = "in")]
        units: UnitsArg,
        #[command(flatten)]
        speaking: Speaking,
        #[command(flatten)]
        printing: Box<Printing>,
    },
    /// Write the card that says where a basket comes from, as .pdf.
    Card {
        /// Its number in the log.
        number: u32,
        #[command(flatten)]
        reading: Box<Reading>,
        /// Who made it, as it is to stand on the card [default: as in the record].
        #[arg(long, value_name = "TEXT")]
        maker: Option<String>,
        /// The file to write.
        #[arg(long, value_name = "FILE", default_value = "provenance.pdf")]
        out: PathBuf,
        #[command(flatten)]
        printing: Box<Printing>,
    },
    /// Write records to a file that `log` and `hand` read.
    Export {
        out: PathBuf,
        /// Only this maker's.
        #[arg(long, value_name = "NAME")]
        who: Option<String>,
    },
    /// Forget records for good.
    Delete {
        /// Which one.
        #[arg(required_unless_present = "who", conflicts_with = "who")]
        number: Option<u32>,
        /// All of this maker.
        #[arg(long, value_name = "NAME")]
        who: Option<String>,
        /// Do it; without, it is only said what would be forgotten.
        #[arg(long)]
        yes: bool,
    },
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    match &args.what {
        None => list(&all(args)?, args.format)?,
        Some(What::Form(reading)) => form(reading)?,
        Some(What::Log { file, reading }) => log(args, file, reading)?,
        Some(What::Show { number }) => {
            let record = one(args, *number)?;
            match args.format {
                Format::Json => screen::print_json(&record)?,
                Format::Text => screen::print(&report::records::one(&record))?,
            }
        }
        Some(What::Sheet { who, out, units, speaking, printing }) => {
            let words = speaking.words(Units::from(*units));
            sheet((&of_maker(all(args)?, who.as_deref())?, who.as_deref()), &words, (out, printing))?;
        }
        Some(What::Card { number, reading, maker, out, printing }) => {
            let record = one(args, *number)?;
            let draft = reading.read()?.draft();
            card((&record, maker.as_deref()), &draft, (out, printing))?;
        }
        Some(What::Export { out, who }) => {
            show::ending(out, &["toml"])?;
            show::wrote(out, records::write(&of_maker(all(args)?, who.as_deref())?).as_bytes())?;
        }
        Some(What::Delete { number, who, yes }) => delete(args, *number, who.as_deref(), *yes)?,
    }
    Ok(Outcome::Fine)
}

fn one(args: &Args, number: u32) -> Result<Record, Failure> {
    args.store.open()?.record(number).map_err(|fault| failure(&args.store.store, &fault))
}

fn card(
    (record, maker): (&Record, Option<&str>),
    draft: &Draft,
    (out, printing): (&Path, &Printing),
) -> Result<(), Failure> {
    show::ending(out, &["pdf"])?;
    if record.pattern != draft.basket.title {
        let what = format!(
            "record {} is of \u{201c}{}\u{201d}, and this is \u{201c}{}\u{201d}",
            record.number, record.pattern, draft.basket.title
        );
        return Err(Failure::plain(what, "Name the pattern that was made."));
    }
    let of = Provenance {
        number: record.number.to_string(),
        made: record.made.map(|day| day.to_string()).unwrap_or_default(),
        wood: record.wood.clone().unwrap_or_default(),
        maker: maker.or(record.who.as_deref()).unwrap_or_default().to_owned(),
    };
    let card = Card { paper: printing.paper(&draft.basket), templates: printing.templates()? };
    let page = printing.set(draft, &words(&draft.basket), move |draft, words, say| {
        say("provenance card");
        card.provenance(draft, &of, words)
    })?;
    show::wrote(out, &page)
}

fn sheet(
    (records, who): (&[Record], Option<&str>),
    words: &Words,
    (out, printing): (&Path, &Printing),
) -> Result<(), Failure> {
    show::ending(out, &["pdf"])?;
    let (paper, templates) = (printing.paper_for(words.units()), printing.templates()?);
    let leaf = making_log(records, who, words);
    let page = printing.set_alone(words, move |words, say| {
        say(&leaf.name);
        leaf.pdf(words, paper, &templates)
    })?;
    show::wrote(out, &page)
}

fn all(args: &Args) -> Result<Vec<Record>, Failure> {
    let Some(store) = args.store.existing()? else { return Ok(Vec::new()) };
    store.records().map_err(|fault| failure(&args.store.store, &fault))
}

/// Those of one maker, or all; an error where there is none.
fn of_maker(mut all: Vec<Record>, who: Option<&str>) -> Result<Vec<Record>, Failure> {
    all.retain(|record| who.is_none() || record.who.as_deref() == who);
    if all.is_empty() {
        let whose = who.map_or_else(String::new, |who| format!(" of \u{201c}{who}\u{201d}"));
        return Err(Failure::plain(
            format!("there is no record{whose}"),
            "`stavewright records` lists them.",
        ));
    }
    Ok(all)
}

fn list(all: &[Record], format: Format) -> Result<(), Failure> {
    match format {
        Format::Json => {
            screen::print_json(&json!({ "format": "stavewright-records", "version": 1, "records": all }))?;
        }
        Format::Text => screen::print(&report::records::log(all))?,
    }
    Ok(())
}

fn form(reading: &Reading) -> Result<(), Failure> {
    let draft = reading.read()?.draft();
    Ok(screen::print(&report::records::form(&draft, &words(&draft.basket)))?)
}

/// All of the file, or nothing. Each is held beside the pattern first, so that none is of another one, or
/// measured something else.
fn log(args: &Args, file: &Path, reading: &Reading) -> Result<(), Failure> {
    let origin = Origin::of(file);
    let text = input::read(origin.clone())?;
    let mut makings = match records::read(&text.content) {
        Ok(records) => records,
        Err(problems) => return Err(Failure::Misread { text, problems }),
    };
    if makings.is_empty() {
        let help = "`stavewright records form PATTERN` prints an empty one.";
        return Err(Failure::of_file(&origin, "there is no record in it", help));
    }
    let read = reading.read()?;
    let version = packet::version(read.source());
    let draft = read.draft_by(&Hand::USUAL);
    let beside = args.store.store.parent().unwrap_or(Path::new(""));
    for (number, record) in (1_u32..).zip(&mut makings) {
        if record.is_blank() {
            let what = format!("record {number} says nothing but its pattern");
            return Err(Failure::of_file(&origin, what, "Take the # away before a line, and fill it in."));
        }
        let held = Compared::of(&Record { number, ..record.clone() }, &draft);
        held.map_err(|mismatch| {
            let help = "Counted in the file's order. Name the pattern that was made, or mend the figure.";
            Failure::of_file(&origin, mismatch, help)
        })?;
        photos::check(beside, &record.photos)
            .map_err(|(what, help)| Failure::of_file(&origin, format!("record {number}: {what}"), help))?;
        record.version.get_or_insert_with(|| version.clone());
    }
    let numbers = args.store.open()?.log(&makings).map_err(|fault| failure(&args.store.store, &fault))?;
    let numbers: Vec<String> = numbers.iter().map(u32::to_string).collect();
    Ok(screen::print(&format!("Logged: number {}\n", numbers.join(", ")))?)
}

fn delete(args: &Args, number: Option<u32>, who: Option<&str>, yes: bool) -> Result<(), Failure> {
    let mut gone = of_maker(all(args)?, who)?;
    gone.retain(|record| number.is_none_or(|number| record.number == number));
    if gone.is_empty() {
        let what = format!("there is no record {}", number.unwrap_or_default());
        return Err(Failure::plain(what, "`stavewright records` lists them."));
    }
    if !yes {
        screen::tell(&report::records::log(&gone));
        let what = format!("{} would be forgotten for good; nothing was changed", count(gone.len()));
        return Err(Failure::plain(what, "Say --yes to do it; `stavewright records export` keeps a copy."));
    }
    let numbers: Vec<u32> = gone.iter().map(|record| record.number).collect();
    let done = args.store.open()?.forget(&numbers).map_err(|fault| failure(&args.store.store, &fault))?;
    let said = "Forgotten: {} (a backup that was made before still holds it)\n";
    Ok(screen::print(&said.replace("{}", &count(done)))?)
}

fn count(records: usize) -> String {
    if records == 1 { "one record".to_owned() } else { format!("{records} records") }
}
