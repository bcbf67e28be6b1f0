//! From kits files to kits and purchases.

use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use basket::pattern::{Pattern, Units};
use basket::{Catalogue, Draft, Hand};
use words::Words;
use workshop::Fault;

use super::StoreArgs;
use super::failure;
use crate::cli::reading::{Speaking, UnitsArg};
use crate::failure::Failure;
use crate::kits_file::PriceTable;
use crate::planned::{Planned, PlannedClass, Reading, of_order};
use crate::progress::Progress;
use crate::source::Origin;
use crate::{drawn, input};

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
        let (items, catalogue) = match &store {
            Some(store) => {
                (store.items().map_err(of_store)?, store.catalogue(Catalogue::built_in()).map_err(of_store)?)
            }
            None => (Vec::new(), Catalogue::built_in().clone()),
        };
        let names = self.speaking.words(Units::default());
        let mut classes: Vec<PlannedClass> =
            self.files.iter().map(|path| class(path, &catalogue, &names)).collect::<Result<_, _>>()?;
        for name in &self.orders {
            let order = store.as_ref().map(|store| store.order(name)).transpose().map_err(of_store)?;
            let order =
                order.ok_or_else(|| of_store(Fault::Unknown { what: "order", name: name.clone() }))?;
            let draft = Draft::of(pattern(Path::new(&order.pattern), &catalogue)?, &catalogue, &Hand::USUAL);
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

fn class(path: &Path, catalogue: &Catalogue, words: &Words) -> Result<PlannedClass, Failure> {
    let text = input::read(Origin::of(path))?;
    let folder = text.origin.folder();
    let pattern = |named: &str| pattern(&folder.join(named), catalogue);
    Reading { catalogue, words, pattern: &pattern }.class(&text)
}

fn pattern(path: &Path, catalogue: &Catalogue) -> Result<Pattern, Failure> {
    let origin = Origin::File(path.to_owned());
    let written = input::read(origin.clone())?;
    let mut pattern = basket::pattern::read(&written.content, catalogue)
        .map_err(|problems| Failure::Misread { text: written, problems })?;
    drawn::load(&mut pattern, origin.folder())?;
    Ok(pattern)
}
