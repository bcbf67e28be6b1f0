//! What counts of staves near by do, each computed.

use basket::assemble;
use basket::pattern::keys::staves;
use basket::weave::Face;

use super::trial::Trial;
use crate::bench::api::{CountOfStaves, Counts, CountsRequest, Edit, EditValue, SideWord};
use crate::bench::compute::{Shop, words};
use crate::bench::look::lengths;
use crate::bench::refusal::Refusal;

/// So many fewer and so many more are shown.
const EACH_WAY: u32 = 8;

/// The counts round the present one.
pub(crate) fn counts(request: &CountsRequest, shop: Shop<'_>) -> Result<Counts, Refusal> {
    let now = Trial::of(request.source.clone(), shop).map_err(Refusal::misread)?;
    let words = words(request.language.as_deref(), request.units, now.pattern.units)?;
    let present = now.basket.body.uprights().count;
    let fewest = present.saturating_sub(EACH_WAY).max(3);
    let each = (fewest..=present + EACH_WAY).filter_map(|count| {
        let pattern = now.pattern.amended(staves::COUNT.path, &count.to_string(), shop.catalogue)?;
        let basket = assemble(&pattern, shop.catalogue, shop.hand);
        let weave = &basket.body.weave;
        let longest = weave.courses.iter().max_by_key(|course| course.rows);
        let look = longest.map(|course| weave.look(course, Face::Outside));
        let rim = weave.courses.last().map_or(basket::Length::ZERO, |course| course.to);
        Some(CountOfStaves {
            count,
            now: count == present,
            runs: weave.courses.iter().all(|course| course.verdict.holds && course.verdict.mends.is_empty()),
            seen: look.map(|look| words.say(&look.said())).unwrap_or_default(),
            lean: look.and_then(|look| look.lean.or(look.skips)).map(SideWord::of),
            gap: lengths::both(&words, basket.body.staves().gap_rim),
            width: lengths::both(&words, basket.body.uprights().width_at(rim)),
            edits: vec![Edit::Set {
                path: staves::COUNT.path.to_owned(),
                value: EditValue::Whole(i32::try_from(count).ok()?),
            }],
        })
    });
    Ok(Counts { each: each.collect() })
}
