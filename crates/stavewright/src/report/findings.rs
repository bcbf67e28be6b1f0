//! The findings, heaviest first.

use std::fmt::Write;

use anstyle::Style;
use basket::message::Value;
use basket::{Finding, Grade};
use words::Words;

use super::{entry, heading};
use crate::screen;

/// Room at least for a grade.
const INDENT: usize = 7;

/// All findings, and how many there are of each grade.
pub(crate) fn render(findings: &[Finding], words: &Words) -> String {
    let mut said = heading(&words.term("screen-findings"));
    if findings.is_empty() {
        let _ = writeln!(said, "{}", words.term("screen-no-findings"));
        return said;
    }
    for finding in findings {
        said.push_str(&one(finding, words));
    }
    let _ = writeln!(said, "{}", count(findings, words));
    said
}

fn one(finding: &Finding, words: &Words) -> String {
    let text = words.finding(finding);
    let plain = Style::new();
    let indent = indent(words);
    let mut said =
        entry(&text.grade, colour(finding.grade), indent, &format!("{} ({})", text.what, finding.code));
    // Where nothing was measured against a limit, both are the same.
    let place = if finding.measured == finding.limit {
        text.place
    } else {
        let limits = [
            ("place", Value::Name(text.place)),
            ("measured", Value::Name(text.measured)),
            ("limit", Value::Name(text.limit)),
        ];
        words.with("screen-measured", &limits)
    };
    said.push_str(&entry("", plain, indent, &place));
    said.push_str(&entry("", plain, indent, &text.why));
    if !text.remedy.is_empty() {
        said.push_str(&entry(&words.term("screen-mend"), plain.bold(), indent, &text.remedy));
    }
    said.push('\n');
    said
}

fn colour(grade: Grade) -> Style {
    match grade {
        Grade::Stop => screen::STOP,
        Grade::Care => screen::CARE,
        Grade::Note => screen::NOTE,
    }
}

/// Room for the longest word that stands at the left.
fn indent(words: &Words) -> usize {
    let grades = [Grade::Stop, Grade::Care, Grade::Note].map(|grade| words.name(grade));
    let longest = grades.iter().chain([&words.term("screen-mend")]).map(|word| word.chars().count()).max();
    INDENT.max(longest.unwrap_or_default() + 1)
}

fn count(findings: &[Finding], words: &Words) -> String {
    let of = |grade| {
        let count = findings.iter().filter(|finding| finding.grade == grade).count();
        Value::Count(i64::try_from(count).unwrap_or(i64::MAX))
    };
    let args = [("stop", of(Grade::Stop)), ("care", of(Grade::Care)), ("note", of(Grade::Note))];
    words.with("screen-findings-count", &args)
}
