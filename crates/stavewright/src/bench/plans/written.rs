//! The text of a plan: what kind it is, what stands in it, what is wrong with it.

use basket::pattern::Units;
use planning::class::written as class_file;
use words::{Language, Words};

use crate::bench::api::{PlanKind, PlanRequest, PlanText, Problem};
use crate::bench::refusal::Refusal;
use crate::bench::text;
use crate::kits_file;
use crate::source::{Origin, Text};

/// A plan after changes to it.
pub(crate) fn written(request: &PlanRequest) -> Result<PlanText, Refusal> {
    let source = text::edit(&request.source, &request.edits)?;
    let values = toml::from_str(&source).unwrap_or_default();
    let problems = match request.kind {
        PlanKind::Kits => of_kits(&source),
        PlanKind::Class => of_class(&source, request.language.as_deref()),
    };
    Ok(PlanText { source, values, problems })
}

fn of_kits(source: &str) -> Vec<Problem> {
    let text = Text { origin: Origin::File("kits.toml".into()), content: source.to_owned() };
    match kits_file::parse(&text) {
        Ok(_) => Vec::new(),
        Err(failure) => {
            let (message, help) = failure.parts();
            vec![Problem {
                message,
                help: Some(help),
                told: String::new(),
                line: 1,
                column: 1,
                path: None,
                fault: None,
            }]
        }
    }
}

/// What is wrong in a class, in the language of this tag.
pub(super) fn of_class(source: &str, tag: Option<&str>) -> Vec<Problem> {
    let Err(faults) = class_file::read(source) else { return Vec::new() };
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
