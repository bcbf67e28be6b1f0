//! A job in whole numbers, which fit exactly or not at all.

use basket::Length;

use super::job::{CuttingError, Job, LONGEST, MOST_COST, MOST_LENGTHS, MOST_PIECES};

/// Pieces of one length, with what they take of a strand.
#[derive(Clone, Debug, PartialEq)]
pub struct Item {
    /// Length and kerf, in nanometres.
    pub size: i64,
    pub demand: u32,
    /// Places in the job of the pieces that have this length.
    pub pieces: Vec<usize>,
}

/// Strands of one length.
#[derive(Clone, Debug, PartialEq)]
pub struct Bin {
    /// Length and one kerf, in nanometres.
    pub room: i64,
    pub count: Option<u32>,
    /// In steps of [`Task::step`].
    pub cost: u64,
    /// Its place among the stocks of the job; none for what stands in for missing stock.
    pub stock: Option<usize>,
}

#[derive(Clone, Debug, PartialEq)]
pub struct Task {
    /// Longest first.
    pub items: Vec<Item>,
    pub bins: Vec<Bin>,
    /// What every cost is a multiple of.
    pub step: u64,
}

impl Task {
    pub fn of(job: &Job) -> Result<Self, CuttingError> {
        let kerf = whole(job.kerf).filter(|kerf| *kerf >= 0).ok_or(CuttingError::BadLength)?;
        let items = items(job, kerf)?;
        let mut bins = bins(job, kerf, items.last().map_or(0, |smallest| smallest.size))?;
        let step = bins.iter().map(|bin| bin.cost).fold(0, divisor).max(1);
        for bin in &mut bins {
            bin.cost /= step;
        }
        let missing = missing(&items, &bins);
        bins.extend(missing);
        Ok(Self { items, bins, step })
    }

    pub fn is_idle(&self) -> bool {
        self.items.is_empty()
    }
}

/// Whole nanometres, in which both the 64th of an inch and the micrometre are exact.
fn whole(length: Length) -> Option<i64> {
    (length.to_mm().is_finite() && length <= LONGEST).then(|| (length.to_mm() * 1e6).round() as i64)
}

fn items(job: &Job, kerf: i64) -> Result<Vec<Item>, CuttingError> {
    let mut items: Vec<Item> = Vec::new();
    let mut in_all = 0_u32;
    for (place, piece) in job.pieces.iter().enumerate().filter(|(_, piece)| piece.count > 0) {
        let size = whole(piece.length).filter(|size| *size > 0).ok_or(CuttingError::BadLength)? + kerf;
        in_all = in_all.saturating_add(piece.count);
        match items.iter_mut().find(|item| item.size == size) {
            Some(item) => {
                item.demand = item.demand.saturating_add(piece.count);
                item.pieces.push(place);
            }
            None => items.push(Item { size, demand: piece.count, pieces: vec![place] }),
        }
        if items.len() > MOST_LENGTHS || in_all > MOST_PIECES {
            return Err(CuttingError::TooMany);
        }
    }
    items.sort_by_key(|item| std::cmp::Reverse(item.size));
    Ok(items)
}

fn bins(job: &Job, kerf: i64, smallest: i64) -> Result<Vec<Bin>, CuttingError> {
    let mut bins = Vec::new();
    for (place, stock) in job.stocks.iter().enumerate() {
        let room = whole(stock.length).filter(|room| *room > 0).ok_or(CuttingError::BadLength)? + kerf;
        if stock.cost > MOST_COST {
            return Err(CuttingError::TooDear);
        }
        if room >= smallest && stock.count != Some(0) {
            bins.push(Bin { room, count: stock.count, cost: stock.cost, stock: Some(place) });
        }
    }
    if bins.len() > MOST_LENGTHS { Err(CuttingError::TooMany) } else { Ok(bins) }
}

/// What stands in for stock that may be missing, so dear that it is taken only where nothing else is left.
fn missing(items: &[Item], bins: &[Bin]) -> Vec<Bin> {
    let endless = bins.iter().filter(|bin| bin.count.is_none()).map(|bin| bin.room).max().unwrap_or(0);
    let pieces: u64 = items.iter().map(|item| u64::from(item.demand)).sum();
    let dearest = bins.iter().map(|bin| bin.cost).max().unwrap_or(0);
    let stand_in = |item: &Item| Bin {
        room: item.size,
        count: None,
        cost: dearest.saturating_mul(pieces) + 1,
        stock: None,
    };
    items.iter().filter(|item| item.size > endless).map(stand_in).collect()
}

/// The greatest common divisor.
fn divisor(a: u64, b: u64) -> u64 {
    if b == 0 { a } else { divisor(b, a % b) }
}
