//! `stavewright draft`.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use basket::steps::Stage;
use basket::{Basket, Draft};
use planning::samples::Show;
use sheets::{Options, PacketFile, Photos};
use words::Words;

use super::names::stages;
use super::outcome::{Format, Outcome};
use super::own_hand::OwnHand;
use super::printing::Printing;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::packet::{self, Kept, Written};
use crate::source::Origin;
use crate::{report, screen};

/// Work out the basket and write all that is needed to make it.
///
/// Prints a summary, the cut list and the findings, and writes a packet: a folder with handout,
/// teacher's and maker's sheet, bench card, templates at true size, cut list, drawings and the
/// computed basket. A packet that
/// is there already is replaced whole, and kept beside it if you changed a file in it; a folder
/// that holds anything else is left alone.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright draft harbour.toml
  stavewright draft harbour.toml --out packets/harbour --paper a4
  stavewright draft harbour.toml --hand workshop.db    by your own figures
  stavewright draft harbour.toml --no-sheets --format json > harbour.json

Print the templates at 100 % (\"actual size\") and measure the bars on the page.

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
packet is written all the same, every page marked), 2 when the pattern cannot
be read or the packet cannot be written.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    #[command(flatten)]
    hand: OwnHand,

    /// The folder to write [default: out/ and the pattern's name].
    #[arg(long, value_name = "DIR")]
    out: Option<PathBuf>,

    #[command(flatten)]
    printing: Printing,

    /// Stages that the demonstration sheet has samples for, parted by commas [default:
    /// staves-set,half-woven,woven,rim-clamped,lashed,finished].
    #[arg(long, value_parser = stages(), value_name = "STAGES", value_delimiter = ',')]
    show: Vec<Stage>,

    /// Hours of work a day while the samples are made [default: 6].
    #[arg(long, value_name = "HOURS", value_parser = clap::value_parser!(u8).range(1..=24))]
    show_hours: Option<u8>,

    /// Moulds at hand for the samples [default: as many as are wanted].
    #[arg(long, value_name = "COUNT", value_parser = clap::value_parser!(u32).range(1..=99))]
    show_moulds: Option<u32>,

    /// Leave out the sheets to print (the PDF and HTML files).
    #[arg(long)]
    no_sheets: bool,

    /// How to print the answer; json prints the computed basket.
    #[arg(long, value_enum, default_value_t)]
    format: Format,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let read = args.reading.read()?;
    let photos = read.photos()?;
    let source = read.source().to_owned();
    let draft = args.hand.draft(read)?;
    let out = packet::place(&folder(args, &draft.basket))?;
    let words = words(&draft.basket);
    let mut files = files(args, &draft, &words, photos)?;
    files.push(packet::pattern(&source));
    let changed = packet::changed(&out, &source, &draft, &words);
    let changed = report::changed::render(&changed, &words);
    let written = changed + &written(&packet::write(&out, &files)?);
    match args.format {
        Format::Text => screen::print(&(answer(&draft, &words) + &written))?,
        Format::Json => {
            screen::tell(&written);
            screen::print_json(&sheets::basket_json(&draft, &words))?;
        }
    }
    Ok(Outcome::of(&draft))
}

/// `--out`, or `out/` and the name of the pattern file, or of the basket when it comes without.
fn folder(args: &Args, basket: &Basket) -> PathBuf {
    let named = || match Origin::of(&args.reading.pattern).stem() {
        Some(stem) => stem.to_owned(),
        None => plain_name(&basket.title).into(),
    };
    args.out.clone().unwrap_or_else(|| Path::new("out").join(named()))
}

/// A title as a file name: `Harbour bread basket` becomes `harbour-bread-basket`.
fn plain_name(title: &str) -> String {
    let spaced: String = title.chars().map(|sign| if sign.is_alphanumeric() { sign } else { ' ' }).collect();
    let name = spaced.to_lowercase().split_whitespace().collect::<Vec<_>>().join("-");
    if name.is_empty() { "basket".to_owned() } else { name.chars().take(60).collect() }
}

fn files(args: &Args, draft: &Draft, words: &Words, photos: Photos) -> Result<Vec<PacketFile>, Failure> {
    let printing = &args.printing;
    let templates = printing.templates()?;
    let options = Options { paper: printing.paper(&draft.basket), templates, photos, show: show(args) };
    if args.no_sheets {
        return Ok(sheets::data(draft, words)?);
    }
    printing.set(draft, words, move |draft, words, say| sheets::packet(draft, words, &options, say))
}

/// What the demonstration sheet plans for.
fn show(args: &Args) -> Show {
    let usual = Show::default();
    Show {
        stages: match args.show.as_slice() {
            [] => usual.stages,
            stages => stages.to_vec(),
        },
        work_a_day: args.show_hours.map_or(usual.work_a_day, |hours| 60.0 * f64::from(hours)),
        moulds: args.show_moulds,
    }
}

fn answer(draft: &Draft, words: &Words) -> String {
    [
        report::summary::render(&draft.basket, words),
        report::choices::render(&draft.basket.choices, words),
        report::cuts::render(&draft.cuts, words),
        report::findings::render(&draft.findings, words),
    ]
    .concat()
}

fn written(packet: &Written) -> String {
    let names = screen::wrap(&packet.files.join(", "), "  ", "  ");
    let mut said = format!("\nWrote {}\n{names}\n", packet.folder.display());
    for Kept { place, why } in &packet.kept {
        let why = screen::wrap(why, "  ", "  ");
        let _ = writeln!(said, "Kept {}, the packet that was there:\n{why}", place.display());
    }
    said
}

#[cfg(test)]
mod tests {
    use super::plain_name;

    #[test]
    fn a_title_becomes_a_file_name() {
        assert_eq!(plain_name("Harbour bread basket"), "harbour-bread-basket");
        assert_eq!(plain_name("../../etc: \"Körbe\""), "etc-körbe");
        assert_eq!(plain_name("///"), "basket");
    }
}
