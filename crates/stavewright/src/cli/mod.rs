//! The commands, one file each.

mod bench;
mod chart;
mod check;
mod class;
mod completions;
mod draft;
mod find_weave;
mod hand;
mod handed;
mod licences;
mod materials;
mod mould;
mod names;
mod new;
mod outcome;
mod outline;
mod own_hand;
mod own_templates;
mod picture;
mod poster;
mod printing;
mod proposal;
mod reading;
mod schema;
mod setting;
mod sheet;
mod sizes;
mod solid;
mod templates;
mod trace;
mod weaves;
mod worker;
mod workshop;

use clap::{CommandFactory, Parser, Subcommand};

use crate::failure::Failure;
pub(crate) use outcome::Outcome;
pub(crate) use worker::run as work;

const EXAMPLES: &str = "\
Examples:
  stavewright new my-basket.toml         begin a pattern
  stavewright check my-basket.toml       ask whether it will work
  stavewright draft my-basket.toml       write all that is needed to make it
  stavewright chart my-basket.toml       draw the weaving row by row
  stavewright bench                      design by looking, in the browser
  stavewright picture my-basket.toml     draw the basket, from any side
  stavewright sheet sale my-basket.toml  write a pattern to sell
  stavewright sizes my-basket.toml --across 5,6,7
                                         make a nest of it
  stavewright class weekend.toml         plan a class over few moulds
  stavewright weaves --staves 73         ask which weaves run on 73 staves
  stavewright materials flat oval        see which flat oval reed there is

Exit status: 0 when the basket can be woven, 1 when a finding says stop,
2 when the pattern cannot be read or a file cannot be written.";

/// Works out a basket woven over a mould and writes what is needed to make it.
///
/// You write down what you know: what the tape read round the mould, the stock on the shelf, how
/// you like your rim. Stavewright works out the rest (staves, taper, rows, cane, hoops, lashing,
/// pins, ears and handle), tells you what will not work and what would mend it, and writes cut
/// list, sheets for student, teacher and maker, bench card and templates at true size.
#[derive(Debug, Parser)]
#[command(name = "stavewright", version, max_term_width = 80, after_help = EXAMPLES)]
pub(crate) struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Debug, Subcommand)]
enum Command {
    Draft(draft::Args),
    Check(check::Args),
    Chart(chart::Args),
    Picture(picture::Args),
    Poster(poster::Args),
    Proposal(proposal::Args),
    Class(class::Args),
    Hand(hand::Args),
    Solid(solid::Args),
    Sheet(sheet::Args),
    Templates(templates::Args),
    Trace(trace::Args),
    Outline(outline::Args),
    Mould(mould::Args),
    Sizes(sizes::Args),
    Weaves(weaves::Args),
    FindWeave(find_weave::Args),
    New(new::Args),
    Materials(materials::Args),
    Shelf(workshop::shelf::Args),
    Kits(workshop::kits::Args),
    Buy(workshop::buy::Args),
    Cutting(workshop::cutting::Args),
    Price(workshop::price::Args),
    Order(workshop::order::Args),
    Records(workshop::records::Args),
    History(workshop::history::Args),
    Backup(workshop::backup::Args),
    Schema(schema::Args),
    Bench(bench::Args),
    Licences(licences::Args),
    Completions(completions::Args),
}

/// Runs a command.
pub(crate) fn run(cli: &Cli) -> Result<Outcome, Failure> {
    match &cli.command {
        Command::Draft(args) => draft::run(args),
        Command::Check(args) => check::run(args),
        Command::Chart(args) => chart::run(args),
        Command::Picture(args) => picture::run(args),
        Command::Poster(args) => poster::run(args),
        Command::Proposal(args) => proposal::run(args),
        Command::Class(args) => class::run(args),
        Command::Hand(args) => hand::run(args),
        Command::Solid(args) => solid::run(args),
        Command::Sheet(args) => sheet::run(args),
        Command::Templates(args) => templates::run(args),
        Command::Trace(args) => trace::run(args),
        Command::Outline(args) => outline::run(args),
        Command::Mould(args) => mould::run(args),
        Command::Sizes(args) => sizes::run(args),
        Command::Weaves(args) => weaves::run(args),
        Command::FindWeave(args) => find_weave::run(args),
        Command::New(args) => new::run(args),
        Command::Materials(args) => materials::run(args),
        Command::Shelf(args) => workshop::shelf::run(args),
        Command::Kits(args) => workshop::kits::run(args),
        Command::Buy(args) => workshop::buy::run(args),
        Command::Cutting(args) => workshop::cutting::run(args),
        Command::Price(args) => workshop::price::run(args),
        Command::Order(args) => workshop::order::run(args),
        Command::Records(args) => workshop::records::run(args),
        Command::History(args) => workshop::history::run(args),
        Command::Backup(args) => workshop::backup::run(args),
        Command::Schema(args) => schema::run(args),
        Command::Bench(args) => bench::run(args),
        Command::Licences(args) => licences::run(args),
        Command::Completions(args) => completions::run(args, &mut Cli::command()),
    }
}
