//! What can run on a count of staves, as a table.

use basket::message::Term;
use basket::message::Value;
use basket::pattern::{Lean, Way, WeaveKind};
use basket::weave::look::{Look, Sighting};
use basket::weave::runs::Run;
use words::Words;

use super::table::{Set, table};

/// The weaves that run, then those that do not and what would mend them.
pub(crate) fn render(count: u32, runs: &[Run], words: &Words) -> String {
    let of = |wanted: bool| runs.iter().filter(move |run| run.runs == wanted);
    let heading = |id: &str| super::heading(&words.with(id, &[("count", count.into())]));
    let (weave, sight) = (words.term("weaves-weave"), words.term("weaves-seen"));
    let (weavers, instead) = (words.term("weaves-weavers"), words.term("weaves-instead"));
    let running =
        [(weave.as_str(), Set::Words), (weavers.as_str(), Set::Figures), (sight.as_str(), Set::Words)];
    let rows = of(true).map(|run| vec![name(run, words), run.weavers.to_string(), seen(run, words)]);
    let mut text = heading("weaves-run").trim_start().to_owned() + &table(&running, rows);
    if of(false).next().is_some() {
        let failing = [
            (weave.as_str(), Set::Words),
            (weavers.as_str(), Set::Figures),
            (sight.as_str(), Set::Words),
            (instead.as_str(), Set::Words),
        ];
        let rows = of(false)
            .map(|run| vec![name(run, words), run.weavers.to_string(), why(run, words), mend(run, words)]);
        text += &heading("weaves-fail");
        text += &table(&failing, rows);
    }
    text
}

fn name(run: &Run, words: &Words) -> String {
    match run.way {
        Way::RowByRow => words.with("weaves-row-by-row", &[("weave", Value::Name(run.weave.to_string()))]),
        Way::Continuous => run.weave.to_string(),
    }
}

/// What is seen of a weave: of one that skips a stave a round, the line of the skips.
fn seen(run: &Run, words: &Words) -> String {
    match (run.weave, run.lean) {
        (WeaveKind::SkipOne, Some(lean)) => {
            words.with("weaves-skips", &[("side", Value::Name(words.name(lean)))])
        }
        _ => look(&run.sighting, run.lean, words),
    }
}

/// What is seen, and to which side it climbs, in words.
pub(crate) fn look(seen: &Sighting, lean: Option<Lean>, words: &Words) -> String {
    let id = match (seen.look, lean) {
        (Look::Spiral, Some(Lean::Right)) => "look-spiral-right",
        (Look::Spiral, _) => "look-spiral-left",
        (look, _) => look.term(),
    };
    words.with(id, &[("slope", Value::Number(seen.slope.abs(), 2))])
}

fn why(run: &Run, words: &Words) -> String {
    let verdict = &run.verdict;
    words.term(match (verdict.holds, verdict.closes) {
        (false, _) => "weaves-loose",
        (true, false) => "weaves-open",
        (true, true) if run.weave == WeaveKind::SkipOne => "weaves-plain",
        (true, true) => "weaves-flat",
    })
}

fn mend(run: &Run, words: &Words) -> String {
    let mut instead = Vec::new();
    if !run.verdict.counts.is_empty() {
        let counts: Vec<String> = run.verdict.counts.iter().map(ToString::to_string).collect();
        instead.push(words.with("weaves-counts", &[("counts", Value::Name(counts.join(", ")))]));
    }
    instead.extend(run.verdict.mends.iter().map(|mend| words.name(*mend)));
    instead.join("; ")
}
