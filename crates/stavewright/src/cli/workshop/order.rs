//! `stavewright order`.

use std::path::{Path, PathBuf};

use basket::Draft;
use clap::Subcommand;
use jiff::ZonedDateTime;
use jiff::civil::Date;
use planning::price::{Line, cents};
use planning::promise::{Free, promise};
use rust_decimal::Decimal;
use serde_json::json;
use sheets::Card;
use sheets::workshop::OrderPaper;
use workshop::{Fault, Item, Mould, Order, State, Store};

use super::{StoreArgs, failure, plan, show};
use crate::cli::outcome::{Format, Outcome};
use crate::cli::printing::Printing;
use crate::cli::reading::{Reading, Speaking, words};
use crate::failure::Failure;
use crate::planned::{Planned, Worked, of_order};
use crate::source::Origin;
use crate::{input, kits_file, report, screen};

/// Keep orders: quote a price and a day, take the deposit, hand over with slip and care card.
///
/// Without a subcommand it lists the orders. The day is promised from the hours you have and the
/// moulds that are free, with a fifth of the days to spare. What a basket must cost, `stavewright
/// price` says.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright order quote \"bread baskets\" harbour.toml --count 4 --price 180 \\
      --buyer \"the harbour cafe\" --hours 4 --days 5 --out quote.pdf
  stavewright order quote \"egg baskets\" ferry.toml --price-plan autumn-weekend.toml
  stavewright order accept \"bread baskets\" --deposit 200 --needed 2026-11-02
  stavewright order
  stavewright order slip \"bread baskets\" --out slip.pdf
  stavewright order care \"bread baskets\" --out care.pdf
  stavewright order deliver \"bread baskets\"")]
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
    /// Name a price and a day, and write the order down as quoted.
    Quote(Box<QuoteArgs>),
    /// It was ordered.
    Accept {
        name: String,
        /// What was paid ahead.
        #[arg(long, value_parser = super::amount)]
        deposit: Option<Decimal>,
        /// The day on which the material is needed.
        #[arg(long, value_name = "DAY")]
        needed: Option<Date>,
    },
    /// It was handed over.
    Deliver { name: String },
    /// Write the slip that lies in the parcel, as .pdf; without --out it is shown.
    Slip(Box<PaperArgs>),
    /// Write the card for the buyer that tells how to care for the basket, as .pdf.
    Care(Box<PaperArgs>),
}

#[derive(Debug, clap::Args)]
struct QuoteArgs {
    name: String,

    #[command(flatten)]
    reading: Reading,

    /// How many baskets.
    #[arg(long, default_value_t = 1, value_parser = clap::value_parser!(u32).range(1..=500))]
    count: u32,

    /// Price of one.
    #[arg(long, value_parser = super::amount, required_unless_present = "price_plan", conflicts_with = "price_plan")]
    price: Option<Decimal>,

    /// Take the price of one from `stavewright price`, by the table `price` of this kits file.
    #[arg(long, value_name = "FILE")]
    price_plan: Option<PathBuf>,

    /// The buyer is a shop: take the price to a shop.
    #[arg(long, requires = "price_plan")]
    to_shop: bool,

    /// What you call the currency.
    #[arg(long, default_value = "", hide_default_value = true)]
    currency: String,

    /// For whom.
    #[arg(long, default_value = "", hide_default_value = true)]
    buyer: String,

    /// Share of the price that is paid ahead.
    #[arg(long, value_name = "SHARE", default_value = "0.3", value_parser = share)]
    deposit: Decimal,

    /// Hours a day that you have for it.
    #[arg(long, default_value_t = 6, value_parser = clap::value_parser!(u8).range(1..=16))]
    hours: u8,

    /// Days of a week that you work, from Monday on.
    #[arg(long, default_value_t = 5, value_parser = clap::value_parser!(u8).range(1..=7))]
    days: u8,

    /// Moulds that are free [default: those of the store for the pattern, when they are back].
    #[arg(long, value_name = "COUNT", value_parser = clap::value_parser!(u32).range(1..=99))]
    moulds: Option<u32>,

    /// The first day of work [default: tomorrow].
    #[arg(long, value_name = "DAY")]
    from: Option<Date>,

    /// The day on which the material is needed, for `stavewright buy` [default: that of --from].
    #[arg(long, value_name = "DAY")]
    needed: Option<Date>,

    /// Anything else.
    #[arg(long, default_value = "", hide_default_value = true)]
    note: String,

    /// Write the quote as .pdf.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    #[command(flatten)]
    printing: Printing,
}

#[derive(Debug, clap::Args)]
struct PaperArgs {
    name: String,

    /// The file to write.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    #[command(flatten)]
    speaking: Speaking,

    #[command(flatten)]
    printing: Printing,
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let mut store = args.store.open()?;
    let faulty = |fault: Fault| failure(&args.store.store, &fault);
    match &args.what {
        None => list(&store.orders().map_err(faulty)?, args.format)?,
        Some(What::Quote(quote)) => self::quote(args, quote, &mut store)?,
        Some(What::Accept { name, deposit, needed }) => {
            let order = find(args, &store, name)?;
            let deposit = deposit.or(order.deposit);
            let needed = needed.map(|day| day.to_string()).or(order.needed);
            store.put_order(&Order { state: State::Ordered, deposit, needed, ..order }).map_err(faulty)?;
            screen::print("Written down as ordered.\n")?;
        }
        Some(What::Deliver { name }) => {
            let order = find(args, &store, name)?;
            store.put_order(&Order { state: State::Delivered, ..order }).map_err(faulty)?;
            screen::print("Written down as handed over.\n")?;
        }
        Some(What::Slip(paper)) => slip(&find(args, &store, &paper.name)?, paper, args.store.named())?,
        Some(What::Care(paper)) => care(&find(args, &store, &paper.name)?, paper, args.store.named())?,
    }
    Ok(Outcome::Fine)
}

fn quote(args: &Args, quote: &QuoteArgs, store: &mut Store) -> Result<(), Failure> {
    if let Some(out) = &quote.out {
        show::ending(out, &["pdf"])?;
    }
    let faulty = |fault: Fault| failure(&args.store.store, &fault);
    let there = store.orders().map_err(faulty)?;
    if there.iter().any(|own| own.name == quote.name && own.state != State::Quoted) {
        let what = format!("the order \u{201c}{}\u{201d} is no longer a quote", quote.name);
        return Err(Failure::plain(what, "Give this one another name."));
    }
    let reading = quote.reading.clone().measured_by(args.store.named());
    let draft = reading.read()?.draft();
    let from = quote.from.map_or_else(|| ZonedDateTime::now().date().tomorrow(), Ok);
    let from = from.map_err(|_| Failure::plain("this day is beyond the calendar", "Name an earlier one."))?;
    let pattern = quote.reading.pattern.display().to_string();
    let moulds = match quote.moulds {
        Some(count) => vec![from; count as usize],
        None => free(&store.moulds().map_err(faulty)?, &pattern, from),
    };
    let time = Free { from, hours: f64::from(quote.hours), days: u32::from(quote.days), moulds };
    let promised = promise(&draft, quote.count, &time).ok_or_else(|| {
        let help = "Say how many there are with --moulds, or when one is due with `stavewright shelf lend`.";
        Failure::plain("no mould is free for this pattern, so no day can be promised", help)
    })?;
    let order = Order {
        name: quote.name.clone(),
        pattern,
        count: quote.count,
        price: quote.price,
        currency: quote.currency.clone(),
        buyer: quote.buyer.clone(),
        promised: Some(promised.promised.to_string()),
        needed: quote.needed.or(quote.from).map(|day| day.to_string()),
        price_plan: quote.price_plan.as_ref().map(|plan| plan.display().to_string()).unwrap_or_default(),
        note: quote.note.clone(),
        ..Order::default()
    };
    let items = store.items().map_err(faulty)?;
    let order = priced(order, quote, (&draft, &items))?;
    store.put_order(&order).map_err(faulty)?;
    let words = words(&draft.basket);
    let leaf = paper(&order).quote(&draft, &words);
    show::leaf(&leaf, quote.out.as_deref(), (Some(&draft), &words, &quote.printing))
}

/// From when on each mould is free that is written down for the pattern; one that is out and due nowhere counts
/// for nothing. Where no mould is written down for it, one is taken to be free.
fn free(moulds: &[Mould], pattern: &str, from: Date) -> Vec<Date> {
    let name = Path::new(pattern).file_name().unwrap_or_default().to_string_lossy();
    let fits = |mould: &&Mould| mould.patterns.split(',').any(|own| own.trim() == name);
    let fitting: Vec<&Mould> = moulds.iter().filter(fits).collect();
    if fitting.is_empty() {
        return vec![from];
    }
    let free = fitting.iter().filter_map(|mould| match &mould.loan {
        None => Some(from),
        Some(loan) => loan.due.as_ref()?.parse().ok(),
    });
    free.collect()
}

/// The order with its price and what is paid ahead: the price that was typed, or by the price plan.
fn priced(order: Order, quote: &QuoteArgs, (draft, items): (&Draft, &[Item])) -> Result<Order, Failure> {
    let (price, currency) = match (&quote.price, &quote.price_plan) {
        (None, Some(plan)) => by_plan(&order, plan, (draft, items), quote.to_shop)?,
        (typed, _) => (cents(typed.unwrap_or_default()), String::new()),
    };
    let sum = price.saturating_mul(Decimal::from(order.count));
    let currency = if order.currency.is_empty() { currency } else { order.currency.clone() };
    let deposit = Some(cents(sum.saturating_mul(quote.deposit)));
    Ok(Order { price: Some(price), deposit, currency, ..order })
}

/// What `stavewright price` says of one basket of this order, and the currency of the plan. What is not in the
/// price is told the maker alone.
fn by_plan(
    order: &Order,
    plan: &Path,
    (draft, items): (&Draft, &[Item]),
    to_shop: bool,
) -> Result<(Decimal, String), Failure> {
    let rates = kits_file::parse(&input::read(Origin::of(plan))?)?.price;
    let words = words(&draft.basket);
    let class = of_order(order, draft.clone(), rates);
    let planned = Planned::of(vec![class], items, words.clone());
    let Some(class) = planned.classes.first() else { return Ok(Default::default()) };
    let anew = planned.anew(class, &mut plan::watch(plan::LIMIT));
    let worked = Worked::of(class, &anew);
    let unpriced = worked.unpriced.iter().map(|(material, colour)| match colour.as_str() {
        "natural" => material.clone(),
        dyed => format!("{material}, {dyed}"),
    });
    let unpriced = unpriced.collect::<Vec<_>>().join("; ");
    if !unpriced.is_empty() {
        screen::tell(&format!("No price is known of: {unpriced}. They are not in the price.\n"));
    }
    let line = if to_shop { Line::Wholesale } else { Line::Retail };
    Ok((worked.basket.reckoning.amount(line), class.file.price.currency.clone()))
}

fn find(args: &Args, store: &Store, name: &str) -> Result<Order, Failure> {
    store.order(name).map_err(|fault| failure(&args.store.store, &fault))
}

fn paper(order: &Order) -> OrderPaper<'_> {
    OrderPaper {
        name: &order.name,
        buyer: &order.buyer,
        count: order.count,
        price: order.price.unwrap_or_default(),
        currency: &order.currency,
        deposit: order.deposit.unwrap_or_default(),
        promised: order.promised.clone(),
    }
}

fn draft(order: &Order, args: &PaperArgs, store: Option<&Path>) -> Result<Draft, Failure> {
    let reading = Reading::plain(PathBuf::from(&order.pattern), &args.speaking);
    Ok(reading.measured_by(store).read()?.draft())
}

fn slip(order: &Order, args: &PaperArgs, store: Option<&Path>) -> Result<(), Failure> {
    let draft = draft(order, args, store)?;
    let words = words(&draft.basket);
    let leaf = paper(order).packing_slip(&draft, &words);
    show::leaf(&leaf, args.out.as_deref(), (Some(&draft), &words, &args.printing))
}

fn care(order: &Order, args: &PaperArgs, store: Option<&Path>) -> Result<(), Failure> {
    let out = args.out.clone().unwrap_or_else(|| PathBuf::from("care.pdf"));
    show::ending(&out, &["pdf"])?;
    let draft = draft(order, args, store)?;
    let card = Card { paper: args.printing.paper(&draft.basket), templates: args.printing.templates()? };
    let page = args.printing.set(&draft, &words(&draft.basket), move |draft, words, say| {
        say("care card");
        card.care(draft, words)
    })?;
    show::wrote(&out, &page)
}

fn list(orders: &[Order], format: Format) -> Result<(), Failure> {
    match format {
        Format::Json => {
            screen::print_json(&json!({ "format": "stavewright-orders", "version": 1, "orders": orders }))?;
        }
        Format::Text => screen::print(&report::shelf::orders(orders))?,
    }
    Ok(())
}

/// From nothing to all of it.
fn share(text: &str) -> Result<Decimal, String> {
    let read =
        text.parse().ok().filter(|share: &Decimal| !share.is_sign_negative() && *share <= Decimal::ONE);
    read.ok_or_else(|| "write a share of one, such as 0.3".to_owned())
}
