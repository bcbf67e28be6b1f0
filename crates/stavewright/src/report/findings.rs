//! The findings, heaviest first.

use std::fmt::Write;

use anstyle::Style;
use basket::{Finding, Grade};
use words::Words;

use super::{entry, heading};
use crate::screen;

const INDENT: usize = 7;

/// All findings, and how many there are of each grade.
pub(crate) fn render(findings: &[Finding], words: &Words) -> String {
    let mut said = heading("Findings");
    if findings.is_empty() {
        said.push_str("Nothing was found against this basket.\n");
        return said;
    }
    for finding in findings {
        said.push_str(&one(finding, words));
    }
    let _ = writeln!(said, "{}", count(findings));
    said
}

fn one(finding: &Finding, words: &Words) -> String {
    let text = words.finding(finding);
    let plain = Style::new();
    let mut said =
        entry(&text.grade, colour(finding.grade), INDENT, &format!("{} ({})", text.what, finding.code));
    // Where nothing was measured against a limit, both are the same.
    let place = if finding.measured == finding.limit {
        text.place
    } else {
        let (measured, limit) = (words.value(&finding.measured), words.value(&finding.limit));
        format!("{}: measured {measured}, limit {limit}", text.place)
    };
    said.push_str(&entry("", plain, INDENT, &place));
    said.push_str(&entry("", plain, INDENT, &text.why));
    if !text.remedy.is_empty() {
        said.push_str(&entry("mend:", Style::new().bold(), INDENT, &text.remedy));
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

fn count(findings: &[Finding]) -> String {
    let of = |grade| findings.iter().filter(|finding| finding.grade == grade).count();
    format!("{} stop, {} care, {} note", of(Grade::Stop), of(Grade::Care), of(Grade::Note))
}
