//! Reading one course of `[weave]`.

use toml::Spanned;
use toml::de::DeValue;

use super::chart::{chart, chart_file};
use super::context::Context;
use super::ends::ends;
use super::problem::Fault;
use super::raw::{type_name, type_term};
use super::section::Section;
use super::text::{nearest, one_of, shorten};
use super::weavers;
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::keys::course::{
    self, BAND, DOUBLED, LEAN, PACKED_OR_SPACED, PACKING, SPACED, START, STEP, STEP_UP, STRANDS, WAY, WEAVE,
};
use crate::pattern::keys::weave::COURSES;
use crate::pattern::keys::weaves::{self, Figures, LONGEST_FLOAT, Weave};
use crate::pattern::{CoursePattern, Way, WeaveKind, Word};
use crate::term::Term;

/// Reads one course; `top` is the height of the mould.
pub(super) fn course(
    context: Context,
    entry: &Spanned<DeValue<'_>>,
    top: Option<Length>,
) -> Option<CoursePattern> {
    let DeValue::Table(table) = entry.get_ref() else {
        let message =
            format!("each of `{}` must be in braces, not {}", COURSES.path, type_name(entry.get_ref()));
        let help = r#"write { weave = "plain", weaver = "cane fine", rows = 4 }"#;
        let fault = Fault::new("problem-not-section", message).with("found", type_term(entry.get_ref()));
        context.problem(entry.span(), fault, help);
        return None;
    };
    let section = Section::open(context, &COURSES, table, entry.span());
    let kind = if section.has(&WEAVE) { kind(&section) } else { WEAVE.constant() };
    let weavers = weavers::weavers(&section);
    let until = ends(&section, top);
    let chart = chart(&section, kind);
    let colours = weavers::colours(&section);
    let read = Course { section: &section, kind };
    read.check_keys();
    let (way, step_up) = (read.way(), section.get_or_usual(&STEP_UP));
    let step = read.step(way == Some(Way::RowByRow) || step_up);
    section.one_way(&PACKED_OR_SPACED);
    let mut weavers = weavers?.into_iter();
    let course = CoursePattern {
        way,
        lean: section.get(&LEAN),
        step_up,
        step,
        band: section.get(&BAND),
        start: section.get(&START),
        chart,
        chart_file: chart_file(&section),
        doubled: section.get_or_usual(&DOUBLED),
        strands: section.get(&STRANDS).unwrap_or_default(),
        packing: section.get(&PACKING),
        spaced: section.get(&SPACED),
        ..CoursePattern::new(kind?, weavers.next()?, until?)
    };
    let course = CoursePattern { others: weavers.collect(), ..course };
    weavers::check_weavers(&section, &course);
    Some(CoursePattern { colours: weavers::dealt(&section, &course, colours?), ..course })
}

fn kind(section: &Section) -> Option<WeaveKind> {
    let text = section.text(&WEAVE)?.text;
    let kind = weaves::read(text);
    if kind.is_none() {
        let message = format!("`{}` cannot be `{}`", WEAVE.path, shorten(text));
        let fault = Fault::new("problem-weave", message).with("written", shorten(text));
        section.problem(&WEAVE, fault, kind_help(text));
    }
    kind
}

/// What mends a text that is no weave.
fn kind_help(text: &str) -> String {
    let word = text.trim_end_matches(|sign: char| sign.is_ascii_digit() || " /".contains(sign));
    let named = |word: &str| weaves::ALL.iter().find(|weave| weave.word == word);
    let example = |weave: &Weave| weave.offered().first().map_or(String::new(), ToString::to_string);
    let words: Vec<&str> = weaves::ALL.iter().map(|weave| weave.word).collect();
    match (named(word), nearest(word, words.iter().copied()).and_then(named)) {
        (Some(weave), _) => match weave.figures {
            Figures::None(_) => format!("write \"{word}\" and nothing behind it"),
            Figures::Rule(_) => {
                format!("write over and under, each from 1 to {LONGEST_FLOAT}: \"{}\"", example(weave))
            }
            Figures::Rods(..) => {
                let all: Vec<String> = weave.offered().iter().map(|kind| format!("\"{kind}\"")).collect();
                format!("write one of {}", all.join(", "))
            }
        },
        (None, Some(near)) => format!("did you mean `{}`?", example(near)),
        (None, None) => format!("write {}", one_of(&words)),
    }
}

/// What depends on the weave.
struct Course<'s, 'd> {
    section: &'s Section<'s, 'd>,
    kind: Option<WeaveKind>,
}

impl Course<'_, '_> {
    /// Notes keys that belong to other weaves.
    fn check_keys(&self) {
        let Some(kind) = self.kind else { return };
        for key in course::ALL.iter().filter(|key| self.section.has(**key)) {
            if let (Some(what), false) = (key.fits().only, (key.fits().with)(kind)) {
                let message = format!("`{}` belongs to {what}", key.path());
                let fault = Fault::new("problem-other-weave", message).with("weave", kind.name());
                self.section.problem(*key, fault, "take it out, or choose another weave");
            }
        }
    }

    fn way(&self) -> Option<Way> {
        let way = self.section.get(&WAY)?;
        let fits = !matches!(
            (self.kind?, way),
            (WeaveKind::ReversedTwill(_), Way::Continuous)
                | (WeaveKind::Chase(_) | WeaveKind::SkipOne, Way::RowByRow)
        );
        if !fits {
            let message = format!("`{}` is not woven {}", self.kind?, way.word());
            let fault = Fault::new("problem-way", message).with("way", Value::Term(way.term()));
            self.section.problem(&WAY, fault, "take it out: this weave can go only one way");
        }
        fits.then_some(way)
    }

    /// Less than half the repeat, so that the diagonal leans as the course says.
    fn step(&self, level: bool) -> Option<u32> {
        let (WeaveKind::Twill(rule) | WeaveKind::Slew(rule)) = self.kind? else { return None };
        let section = self.section;
        if section.has(&STEP) && !level {
            let message = format!("`{}` belongs to a twill woven row by row", STEP.path);
            let help = "write way = \"row by row\", or take it out: how far a twill that runs on steps is \
                        decided by the count";
            section.problem(&STEP, Fault::new("problem-step-level", message), help);
        }
        let step = section.get(&STEP)?;
        let most = (rule.repeat() - 1) / 2;
        if step > most {
            let message = format!("`{}` is {step}, half the repeat of {} or more", STEP.path, rule.repeat());
            let help = if most == 0 {
                "take it out: over one, under one has no diagonal".to_owned()
            } else {
                format!("write a step of at most {most}, and lean for the side to which it climbs")
            };
            section.problem(&STEP, Fault::new("problem-step", message).with("most", most), help);
        }
        Some(step)
    }
}
