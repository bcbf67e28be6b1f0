//! From kits files to kits and purchases.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::rc::Rc;
use std::time::{Duration, Instant};

use basket::pattern::{AllReady, Units};
use basket::{Draft, Hand};
use workshop::{Fault, Store};

use super::StoreArgs;
use super::failure;
use crate::cli::own_hand::OwnHand;
use crate::cli::reading::{Read, Reading, Speaking, UnitsArg};
use crate::failure::Failure;
use crate::kits_file::PriceTable;
use crate::planned::{self, Planned, PlannedClass, of_order};
use crate::progress::Progress;
use crate::source::Origin;
use crate::{input, kits_file, screen};

/// Seconds for all searches together, where nobody says otherwise.
pub(super) const SECONDS: u64 = 20;
/// The same as a duration.
pub(super) const LIMIT: Duration = Duration::from_secs(SECONDS);

/// Which classes, and with what shelf.
#[derive(Debug, clap::Args)]
pub(super) struct Planning {
    /// Kits files: who is in a class, and what each makes.
    #[arg(required_unless_present = "orders")]
    files: Vec<PathBuf>,

    /// An order of the store that is planned for together with them; may be given several times.
    #[arg(long = "order", value_name = "NAME")]
    orders: Vec<String>,

    #[command(flatten)]
    pub(super) store: StoreArgs,

    /// Units to print first [default: the first pattern's].
    #[arg(long, value_name = "UNITS")]
    units: Option<UnitsArg>,

    #[command(flatten)]
    hand: OwnHand,

    #[command(flatten)]
    speaking: Speaking,
}

impl Planning {
    /// How many of the classes stand in kits files; they come before the orders.
    pub(super) fn written(&self) -> usize {
        self.files.len()
    }

    pub(super) fn read(&self) -> Result<Planned, Failure> {
        let store = self.store.existing()?;
        let of_store = |fault| failure(&self.store.store, &fault);
        let items = store.as_ref().map_or_else(|| Ok(Vec::new()), Store::items).map_err(of_store)?;
        let patterns = Patterns { planning: self, known: RefCell::default() };
        let mut classes: Vec<PlannedClass> =
            self.files.iter().map(|path| patterns.class(path)).collect::<Result<_, _>>()?;
        for name in &self.orders {
            let order = store.as_ref().map(|store| store.order(name)).transpose().map_err(of_store)?;
            let order =
                order.ok_or_else(|| of_store(Fault::Unknown { what: "order", name: name.clone() }))?;
            let draft = patterns.draft(PathBuf::from(&order.pattern), None)?;
            classes.push(of_order(&order, draft, PriceTable::default()));
        }
        let first = classes.iter().flat_map(|class| &class.drafts).next();
        let units = self.units.map(Units::from).or(first.map(|draft| draft.basket.units)).unwrap_or_default();
        Ok(Planned::of(classes, &items, self.speaking.words(units)))
    }
}

/// Lets a search go on for a time, and says how far it is.
pub(super) fn watch(limit: Duration) -> impl FnMut(planning::cutting::Progress) -> ControlFlow<()> {
    let (began, progress) = (Instant::now(), Progress::begin());
    move |so_far| {
        progress.say(&format!("planning: {} found, {} at least", so_far.cost, so_far.bound));
        if began.elapsed() < limit { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
    }
}

/// The patterns of the plans. Each is read once, and drafted as `stavewright draft` does it: with the measures of the
/// shelf, by the hand that is asked for.
struct Patterns<'p> {
    planning: &'p Planning,
    known: RefCell<BTreeMap<PathBuf, Rc<Known>>>,
}

/// A pattern with the hand that it is drafted by, and what was said of its measures and of the hand.
struct Known {
    read: Read,
    hand: Hand,
    said: [String; 2],
}

impl Patterns<'_> {
    fn class(&self, path: &Path) -> Result<PlannedClass, Failure> {
        let text = input::read(Origin::of(path))?;
        let folder = text.origin.folder();
        let file = kits_file::parse(&text)?;
        let draft = |named: &str, ready: Option<AllReady>| self.draft(folder.join(named), ready);
        planned::Reading { words: &self.planning.speaking.words(Units::default()), draft: &draft }.class(file)
    }

    fn draft(&self, path: PathBuf, ready: Option<AllReady>) -> Result<Draft, Failure> {
        let known = self.known(path)?;
        let (pattern, catalogue) = known.read.said();
        let mut pattern = pattern.clone();
        pattern.ready = ready.unwrap_or(pattern.ready);
        Ok(Draft::of(pattern, catalogue, &known.hand))
    }

    fn known(&self, path: PathBuf) -> Result<Rc<Known>, Failure> {
        let mut all = self.known.borrow_mut();
        if let Some(known) = all.get(&path) {
            return Ok(Rc::clone(known));
        }
        let reading = Reading::plain(path.clone(), &self.planning.speaking);
        let (read, measures) = reading.measured_by(self.planning.store.named()).read_and_say()?;
        let (hand, of_hand) = self.planning.hand.of(&read)?;
        let said = [measures, of_hand];
        // What was said of another pattern already is not said again.
        for text in said.iter().filter(|text| all.values().all(|known| !known.said.contains(text))) {
            screen::tell(text);
        }
        let known = Rc::new(Known { read, hand, said });
        all.insert(path, Rc::clone(&known));
        Ok(known)
    }
}
