//! In what each version of a pattern differs from the one before it, in words.

use basket::message::Value;
use basket::{Catalogue, Hand};
use serde::{Deserialize, Serialize};
use words::Words;

use crate::bench::api::{CompareRequest, PastVersion};
use crate::bench::compare::compare;
use crate::bench::compute::{self, Shop};
use crate::bench::folder::Folder;
use crate::bench::refusal::Refusal;
use crate::own::Own;

/// Versions of a pattern, the last one first.
#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Past {
    /// The versions; nothing is said of them yet.
    pub(crate) versions: Vec<PastVersion>,
    /// Language of the answer.
    pub(crate) language: Option<String>,
}

/// So many differences of a version are told.
const TOLD: usize = 6;

/// The same, each with what differs from the one before it.
pub(crate) fn told(past: Past, shop: Shop<'_>) -> Result<Vec<PastVersion>, Refusal> {
    let Past { mut versions, language } = past;
    let words = compute::words(language.as_deref(), None, basket::pattern::Units::default())?;
    let befores: Vec<String> = versions.iter().skip(1).map(|version| version.source.clone()).collect();
    for (version, before) in versions.iter_mut().zip(befores) {
        let request = CompareRequest {
            left: before,
            right: version.source.clone(),
            language: language.clone(),
            units: None,
        };
        version.says = between(&request, shop, &words);
    }
    Ok(versions)
}

/// The same for a command, by the usual hand.
pub(crate) fn differences(
    past: Past,
    folder: &Folder,
    catalogue: &Catalogue,
) -> Result<Vec<PastVersion>, Refusal> {
    told(past, Shop { folder, catalogue, own: &Own::default(), hand: &Hand::USUAL, any_file: true })
}

fn between(request: &CompareRequest, shop: Shop<'_>, words: &Words) -> Vec<String> {
    let Ok(comparison) = compare(request, shop) else { return vec![words.term("history-unread")] };
    let figures = comparison.figures.iter().filter(|pair| !pair.same);
    let mut said: Vec<String> = figures
        .chain(&comparison.fields)
        .map(|pair| {
            let side = |side: &Option<String>| side.clone().unwrap_or_else(|| words.term("history-nothing"));
            let (before, after) = (side(&pair.left), side(&pair.right));
            counted(&pair.id, (&before, &after), words).unwrap_or_else(|| {
                let name = |text: &str| Value::Name(text.to_owned());
                let args = [("what", name(&pair.label)), ("before", name(&before)), ("after", name(&after))];
                words.with("history-differs", &args)
            })
        })
        .collect();
    if said.is_empty() {
        return vec![words.term("history-alike")];
    }
    let more = said.len().saturating_sub(TOLD);
    if more > 0 {
        said.truncate(TOLD);
        said.push(
            words.with("history-more", &[("count", Value::Count(i64::try_from(more).unwrap_or(i64::MAX)))]),
        );
    }
    said
}

/// How many staves or rows more or fewer.
fn counted(id: &str, (before, after): (&str, &str), words: &Words) -> Option<String> {
    let message = match id {
        "staves" => "history-staves",
        "rows" => "history-rows",
        _ => return None,
    };
    let (before, after): (i64, i64) = (before.parse().ok()?, after.parse().ok()?);
    let way = if after < before { "fewer" } else { "more" };
    Some(words.with(&format!("{message}-{way}"), &[("count", Value::Count((after - before).abs()))]))
}
