//! The text of a plan: what kind it is, what stands in it, what is wrong with it.

use basket::pattern::Units;
use planning::class::written::{self as class_file, Fault};
use words::{Language, Words};

use crate::bench::api::{PlanKind, PlanRequest, PlanText, Problem};
use crate::bench::refusal::Refusal;
use crate::bench::text;
use crate::kits_file;

/// A plan after changes to it.
pub(crate) fn written(request: &PlanRequest) -> Result<PlanText, Refusal> {
    let source = text::edit(&request.source, &request.edits)?;
    let values = toml::from_str(&source).unwrap_or_default();
    let faults = match request.kind {
        PlanKind::Kits => kits_file::read(&source).err(),
        PlanKind::Class => class_file::read(&source).err(),
    };
    let problems = problems(&source, faults.unwrap_or_default(), request.language.as_deref());
    Ok(PlanText { source, values, problems })
}

/// What is wrong in a plan, in the language of this tag.
pub(super) fn problems(source: &str, faults: Vec<Fault>, tag: Option<&str>) -> Vec<Problem> {
    let words = Words::new(tag.and_then(Language::of).unwrap_or_default(), Units::default());
    let problems = faults.into_iter().map(|fault| fault.told(|id, args| words.with(id, args)));
    let one = |problem: basket::pattern::Problem| {
        let (line, column) = problem.line_column(source);
        Problem {
            message: problem.message,
            help: problem.help,
            told: String::new(),
            line: u32::try_from(line).unwrap_or(u32::MAX),
            column: u32::try_from(column).unwrap_or(u32::MAX),
            path: None,
            fault: None,
        }
    };
    problems.map(one).collect()
}
