//! Reading the chart of a drawn weave.

use toml::Spanned;

use super::problem::Fault;
use super::section::Section;
use super::text::{is_inside, shorten};
use crate::pattern::WeaveKind;
use crate::pattern::drawn::{Drawn, DrawnFault};
use crate::pattern::keys::Declared;
use crate::pattern::keys::course::{CHART, CHART_FILE};

/// The drawing of a drawn weave; one in a file is loaded by whoever read the pattern.
pub(super) fn chart(section: &Section, kind: Option<WeaveKind>) -> Option<Drawn> {
    check_place(section, kind);
    let list = section.list(&CHART, CHART.takes)?;
    let path = CHART.path;
    let lines: Vec<&str> =
        list.iter().filter_map(|value| Some(section.context.text(path, value)?.text)).collect();
    if lines.len() < list.len() {
        return None;
    }
    let drawn = Drawn::read(lines);
    if let Err(fault) = &drawn {
        let line = match fault {
            DrawnFault::Ragged { line, .. } | DrawnFault::Sign { line, .. } => list.get(line - 1),
            _ => None,
        };
        let told = Fault { message: format!("`{path}`: {fault}"), told: fault.told() };
        match line.or(list.first()).map(Spanned::span) {
            Some(span) => section.context.problem(span, told, fault.help()),
            None => section.problem(&CHART, told, fault.help()),
        }
    }
    drawn.ok()
}

/// The name of a file with the drawing, which lies in the pattern's own folder or below.
pub(super) fn chart_file(section: &Section) -> Option<String> {
    let file = section.get(&CHART_FILE)?;
    if is_inside(&file) {
        return Some(file);
    }
    let message = format!("`{}` cannot be `{}`", CHART_FILE.path, shorten(&file));
    section.problem(
        &CHART_FILE,
        Fault::new("problem-path", message).with("written", shorten(&file)),
        format!("write a path from the pattern's own folder downward, such as {}", CHART_FILE.example),
    );
    None
}

/// A drawn weave has a chart, and no other has one.
fn check_place(section: &Section, kind: Option<WeaveKind>) {
    let keys: [&dyn Declared; 2] = [&CHART, &CHART_FILE];
    let written = keys.into_iter().find(|key| section.has(*key));
    match written {
        None if kind == Some(WeaveKind::Drawn) => {
            let example = format!(
                "{} = {}, as seen from outside, the uppermost row first",
                CHART.name(),
                CHART.example
            );
            section.missing(&CHART, &example);
        }
        Some(key) if kind != Some(WeaveKind::Drawn) => {
            let message = format!("`{}` belongs to a drawn weave", key.path());
            section.problem(
                key,
                Fault::new("problem-not-drawn", message),
                r#"write weave = "drawn", or take it out"#,
            );
        }
        _ => {}
    }
}
