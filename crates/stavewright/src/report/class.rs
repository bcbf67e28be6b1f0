//! A class that was planned.

use std::fmt::Write;

use sheets::{ClassPlan, SamplePlan, StudentPlan, StudentStep};
use words::Words;

use super::heading;
use crate::screen;

/// Whether it fits, what would mend it, who does what and who waits.
pub(crate) fn render(plan: &ClassPlan, words: &Words) -> String {
    let mut text = String::new();
    let style = screen::HEADING;
    let _ = writeln!(text, "{style}{}{style:#}", plan.title);
    for says in &plan.says {
        lines(&mut text, says, 0);
    }
    part(&mut text, "sheet-class-mends", &plan.mends, words);
    for student in &plan.students {
        self::student(&mut text, student);
    }
    part(&mut text, "sheet-class-waits", &plan.waits, words);
    part(&mut text, "sheet-class-chance", &plan.chance, words);
    part(&mut text, "sheet-class-samples", &plan.samples_say, words);
    for sample in &plan.samples {
        self::sample(&mut text, sample, words);
    }
    text
}

fn part(text: &mut String, id: &str, says: &[String], words: &Words) {
    if !says.is_empty() {
        text.push_str(&heading(&words.term(id)));
        for says in says {
            lines(text, says, 2);
        }
    }
}

fn student(text: &mut String, student: &StudentPlan) {
    text.push_str(&heading(&format!("{} ({})", student.name, student.hand)));
    if let Some(mould) = &student.mould {
        lines(text, mould, 2);
    }
    steps(text, &student.steps);
}

fn steps(text: &mut String, steps: &[StudentStep]) {
    let mut day = "";
    for step in steps {
        if step.from.day != day {
            day = &step.from.day;
            lines(text, day, 2);
        }
        lines(text, &step.says, 4);
    }
}

fn sample(text: &mut String, sample: &SamplePlan, words: &Words) {
    text.push_str(&heading(&sample.name));
    for says in &sample.says {
        lines(text, says, 2);
    }
    steps(text, &sample.steps);
    for (id, said) in [("tray", &sample.tray), ("say", &sample.tell)] {
        if !said.is_empty() {
            lines(text, &words.term(&format!("sheet-class-{id}")), 2);
            for said in said {
                lines(text, said, 4);
            }
        }
    }
}

fn lines(text: &mut String, says: &str, indent: usize) {
    let margin = " ".repeat(indent);
    let _ = writeln!(text, "{}", screen::wrap(says, &margin, &format!("{margin}  ")));
}
