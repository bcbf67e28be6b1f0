//! What the log says of a hand.

use basket::{Draft, Hand};
use planning::records::{self, Adopted, Compared, Learned, Record};
use serde::{Deserialize, Serialize};

use crate::bench::api::LearnedHand;
use crate::bench::compute::{self, Shop};
use crate::bench::refusal::Refusal;
use crate::report::hand;

/// Makings, with the texts of the patterns that they may be of.
#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Learning {
    /// The makings, as a file of records.
    pub(crate) records: String,
    /// The texts.
    pub(crate) sources: Vec<String>,
    /// Only of this maker.
    pub(crate) who: Option<String>,
    /// Language of the answer.
    pub(crate) language: Option<String>,
}

/// What is learned, and the figures to take up; none where there is no making to learn from.
pub(crate) fn learn(learning: &Learning, shop: Shop<'_>) -> Result<(LearnedHand, Option<Adopted>), Refusal> {
    let makings = records::read(&learning.records).map_err(|_| Refusal::broken())?;
    let who = learning.who.as_deref();
    let makings: Vec<&Record> =
        makings.iter().filter(|record| who.is_none() || record.who.as_deref() == who).collect();
    let usual = Shop { hand: &Hand::USUAL, ..shop };
    let drafts: Vec<(&str, Draft)> = learning
        .sources
        .iter()
        .filter_map(|source| Some((source.as_str(), compute::draft(source, usual).ok()?)))
        .collect();
    let beside = |record: &&Record| {
        let of = drafts.iter().find(|(_, draft)| draft.basket.title == record.pattern)?;
        Some((of, Compared::of(record, &of.1).ok()?))
    };
    let (of, compared): (Vec<_>, Vec<Compared>) = makings.iter().filter_map(beside).unzip();
    let count = |many: usize| u32::try_from(many).unwrap_or(u32::MAX);
    let left_out = count(makings.len() - compared.len());
    let Some((source, draft)) = of.last() else {
        return Ok((LearnedHand { left_out, ..LearnedHand::default() }, None));
    };
    let words = compute::words(learning.language.as_deref(), None, draft.pattern.units)?;
    let learned = Learned::of(&compared);
    let whose = who.map_or_else(|| words.term("hand-own"), str::to_owned);
    let adopted = learned.adopted(&whose);
    let own = adopted.hand();
    let drafted = compute::draft(source, Shop { hand: &own, ..shop }).map_err(Refusal::misread)?;
    let told = LearnedHand {
        makings: count(compared.len()),
        left_out,
        figures: hand::figures(&learned, &words),
        pattern: draft.basket.title.clone(),
        drafted: hand::drafted((draft, &drafted), &words),
    };
    Ok((told, Some(adopted)))
}
