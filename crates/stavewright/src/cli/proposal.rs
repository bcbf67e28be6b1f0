//! `stavewright proposal`.

use std::path::PathBuf;

use sheets::Proposal;

use super::outcome::Outcome;
use super::printing::Printing;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{screen, single};

/// Write the page that offers a class: picture, size, hours, level, what students bring, terms.
///
/// As .html every text on it can be written over in the browser, printed, and saved with the
/// changes. As .pdf it has room to write in.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright proposal harbour.toml
  stavewright proposal harbour.toml --level \"some experience\" --out class.pdf

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
page is written all the same, and says so), 2 when the pattern cannot be read
or the page cannot be written.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// For whom the class is, in your own words; left open without.
    #[arg(long, value_name = "TEXT", default_value = "", hide_default_value = true)]
    level: String,

    /// The file to write, .html or .pdf [default: the pattern's name and -proposal.html].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    #[command(flatten)]
    printing: Printing,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let out = args.out.clone().unwrap_or_else(|| single::named(&args.reading.pattern, "proposal.html"));
    let ending = single::ending(&out);
    if !["html", "pdf"].contains(&ending.as_str()) {
        let (what, help) = ("a proposal is written as .html or .pdf", "Give the file one of these endings.");
        return Err(Failure::of_file(&Origin::File(out), what, help));
    }
    let templates = args.printing.templates()?;
    let draft = args.reading.read()?.draft();
    let paper = args.printing.paper(&draft.basket);
    let proposal = Proposal { paper, level: args.level.clone(), templates };
    let page = args.printing.set(&draft, &words(&draft.basket), move |draft, words, say| {
        say("proposal");
        if ending == "pdf" { proposal.pdf(draft, words) } else { proposal.html(draft, words) }
    })?;
    single::write(&out, &page)?;
    screen::print(&format!("Wrote {}\n", out.display()))?;
    Ok(Outcome::of(&draft))
}
