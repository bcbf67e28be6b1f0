//! Samples with the work on them, in minutes before a moment from which all is reckoned.

use basket::steps::{Stage, Step};

use super::backward::{Chain, Past, place, plan, shared, whole};
use super::span::Span;
use crate::class::schedule::Minute;

/// The work of one step on one sample.
#[derive(Clone, Debug, PartialEq)]
pub struct Block {
    /// Number of the step.
    pub step: u32,
    /// When hands are at work, the earliest first: one span a day.
    pub work: Vec<Span>,
}

impl Block {
    /// Minutes of work.
    pub fn minutes(&self) -> f64 {
        self.work.iter().map(|span| span.from - span.to).sum()
    }

    /// When it is begun.
    pub fn begin(&self) -> Option<f64> {
        self.work.first().map(|span| span.from)
    }
}

/// A basket that stands ready at a stage.
#[derive(Clone, Debug, PartialEq)]
pub struct Sample {
    /// The stage at which it is stopped.
    pub stage: Stage,
    /// Number of the last step done on it.
    pub last_step: u32,
    /// Latest moment to begin, with the first soaking if there is one.
    pub begin: f64,
    /// Minutes of work on it, its share of what is done for all together included.
    pub work_minutes: f64,
    /// Its own work, in making order; what is done for all samples together is not among it.
    pub blocks: Vec<Block>,
    /// The number of its mould, from 0, and when it holds it; none when it never stands on one.
    pub mould: Option<(u32, Span)>,
}

/// Samples, and what is done for all of them.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Prepared {
    pub(super) samples: Vec<Sample>,
    pub(super) together: Option<Block>,
    /// Stages that the steps never come to.
    pub(super) missing: Vec<Stage>,
}

/// A sample for each stage, ready so many minutes before the moment from which all is reckoned; none where the
/// hours do not hold the work.
pub(super) fn prepare(steps: &[Step], wanted: &[(Stage, Minute)], past: Past) -> Option<Prepared> {
    let reached = |stage: Stage| steps.iter().position(|step| step.stage == stage);
    let mut wanted = wanted.to_vec();
    wanted.sort_by_key(|(stage, _)| (reached(*stage), *stage as usize));
    wanted.dedup_by_key(|(stage, _)| *stage);
    let missing = wanted.iter().map(|(stage, _)| *stage).filter(|stage| reached(*stage).is_none()).collect();
    wanted.retain(|(stage, _)| reached(*stage).is_some());
    let whole_chains: Vec<&[Step]> =
        wanted.iter().filter_map(|(stage, _)| steps.get(..=reached(*stage)?)).collect();
    // Staves are cut for all samples at once: the same gauge, the same bench, one soaking.
    let together = shared(&whole_chains);
    let own = usize::from(together.is_some());
    let chains: Vec<Chain> = whole_chains
        .iter()
        .zip(&wanted)
        .map(|(chain, (_, due))| Chain { steps: chain.get(own..).unwrap_or_default(), due: *due })
        .collect();
    let hours = past.hours.clone();
    let placed = plan(&chains, past)?;
    let samples: Vec<Sample> = wanted
        .iter()
        .zip(&whole_chains)
        .zip(chains.iter().zip(placed))
        .map(|(((stage, _), whole_chain), (chain, placed))| {
            let blocks = chain.steps.iter().zip(placed.work).filter(|(_, work)| !work.is_empty());
            Sample {
                stage: *stage,
                last_step: whole_chain.last().map_or(0, |step| step.number),
                begin: placed.begin,
                work_minutes: whole_chain.iter().map(|step| whole(step.work_minutes) as f64).sum(),
                blocks: blocks.map(|(step, work)| Block { step: step.number, work }).collect(),
                mould: placed.mould,
            }
        })
        .collect();
    let together = match together {
        None => None,
        Some(step) => {
            let first = samples.iter().map(|sample| sample.begin).fold(0.0, f64::max);
            let work = whole(step.work_minutes) * i64::try_from(samples.len()).unwrap_or(i64::MAX);
            let work = place(&hours, work, whole(first + step.wait_minutes))?;
            Some(Block { step: step.number, work })
        }
    };
    Some(Prepared { samples, together, missing })
}
