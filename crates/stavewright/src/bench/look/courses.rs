//! The courses of the weaving as rows of the form.

use std::collections::BTreeMap;

use basket::Basket;
use basket::message::Value;
use basket::pattern::fields::{COURSE_FIELDS, CourseField, FieldKind};
use basket::pattern::{CoursePattern, Pattern, Until};
use basket::weave::BAND;
use words::Words;

use super::field::{Making, in_file};
use super::lengths;
use crate::bench::api::{Course, Courses, Edit, EditValue, Field};
use crate::bench::text::Written;

/// Keys of which a course has one or the other.
const EITHER: [(&str, &str); 3] = [("rows", "until"), ("weaver", "weavers"), ("packing", "spaced")];

/// All courses.
pub(super) fn courses(written: &Written, pattern: &Pattern, basket: &Basket, words: &Words) -> Courses {
    let entries = written.entries("weave.courses");
    let choice = basket.choices.iter().find(|choice| choice.key == "weave.courses");
    let list = Edit::Set { path: "weave.courses".to_owned(), value: EditValue::List(Vec::new()) };
    let take = basket.body.weave.courses.iter().zip(1..).map(|(course, at)| Edit::Insert {
        path: "weave.courses".to_owned(),
        at,
        value: in_braces(course, at as usize == basket.body.weave.courses.len(), basket, pattern),
    });
    Courses {
        each: basket
            .body
            .weave
            .courses
            .iter()
            .zip(1..)
            .map(|(course, number)| {
                let entry = entries.get(number as usize - 1);
                let of = Row { course, pattern: pattern.weave.courses.get(number as usize - 1), entry };
                of.shown(number, basket, pattern, words)
            })
            .collect(),
        why: choice.map(|choice| words.say(&choice.reason)),
        take: if choice.is_some() { std::iter::once(list).chain(take).collect() } else { Vec::new() },
        give: match choice {
            Some(_) => Vec::new(),
            None => vec![Edit::Remove { path: "weave.courses".to_owned() }],
        },
        fresh: fresh(basket),
    }
}

fn table<const N: usize>(pairs: [(&str, EditValue); N]) -> EditValue {
    EditValue::Table(BTreeMap::from(pairs.map(|(key, value)| (key.to_owned(), value))))
}

/// A few rows of plain weave in the weaver of the last course.
fn fresh(basket: &Basket) -> EditValue {
    let weaver = basket.body.weave.courses.last().map_or("cane fine", |course| course.weaver.name.as_str());
    table([("weave", "plain".into()), ("weaver", weaver.into()), ("rows", EditValue::Whole(4))])
}

/// A chosen course as the maker would write it; the last one goes up to where it ends now.
fn in_braces(course: &basket::weave::Course, last: bool, basket: &Basket, pattern: &Pattern) -> EditValue {
    let end = match (last, course.wanted_to) {
        (true, Some(_)) => ("until", below_top(basket, course, pattern)),
        _ => ("rows", EditValue::Whole(i32::try_from(course.rows).unwrap_or(1).max(1))),
    };
    table([
        ("weave", course.weave.to_string().as_str().into()),
        ("weaver", course.weaver.name.as_str().into()),
        end,
    ])
}

/// Where a course ends, as a distance below the mould's top.
fn below_top(basket: &Basket, course: &basket::weave::Course, pattern: &Pattern) -> EditValue {
    let end = course.wanted_to.unwrap_or(course.to);
    let below =
        (basket.body.form.height() - basket.body.form.profile.at(end).height).max(basket::Length::ZERO);
    if below.to_mm() < 0.05 {
        return "mould top".into();
    }
    format!("{} below mould top", in_file(below, pattern.units)).as_str().into()
}

/// One course with what the file says of it.
struct Row<'a> {
    course: &'a basket::weave::Course,
    pattern: Option<&'a CoursePattern>,
    entry: Option<&'a EditValue>,
}

impl Row<'_> {
    fn shown(&self, number: u32, basket: &Basket, pattern: &Pattern, words: &Words) -> Course {
        let course = self.course;
        let path = self.pattern.map(|_| format!("weave.courses[{number}]"));
        let fields = match &path {
            Some(path) => COURSE_FIELDS
                .iter()
                .filter(|field| (field.fits)(course.weave) || self.written(field.key).is_some())
                .map(|field| self.field(field, path, basket, pattern, words))
                .collect(),
            None => Vec::new(),
        };
        let weavers = course.weavers.iter().flat_map(|weaver| &weaver.colours);
        let mut colours: Vec<String> = Vec::new();
        for colour in weavers.map(basket::Colour::to_hex) {
            if !colours.contains(&colour) {
                colours.push(colour);
            }
        }
        Course {
            path,
            fields,
            first_row: course.first_row,
            rows: course.rows,
            summary: self.summary(words),
            length: words.run(course.cut),
            runs: course.verdict.holds,
            colours,
        }
    }

    fn summary(&self, words: &Words) -> String {
        let course = self.course;
        let args = [
            ("weave", Value::Name(words.say(&course.weave.name()))),
            ("first", course.first_row.into()),
            ("last", (course.first_row + course.rows.saturating_sub(1)).into()),
            ("weaver", Value::Name(course.weaver.name.clone())),
        ];
        let id = match course.rows {
            0 => "form-course-summary-none",
            1 => "form-course-summary-one",
            _ => "form-course-summary",
        };
        words.with(id, &args)
    }

    fn written(&self, key: &str) -> Option<EditValue> {
        match self.entry {
            Some(EditValue::Table(table)) => table.get(key).cloned(),
            _ => None,
        }
    }

    fn field(
        &self,
        field: &CourseField,
        path: &str,
        basket: &Basket,
        pattern: &Pattern,
        words: &Words,
    ) -> Field {
        let making = Making {
            path: format!("{path}.{}", field.key),
            label: words.term(&field.label()),
            kind: &field.kind,
            written: self.written(field.key),
            chosen: self.used(field.key).map(|value| (value, String::new())),
        };
        let mut made = making.field(words, pattern.units);
        if matches!(field.key, "rows" | "until" | "weaver" | "weavers") {
            made.give.clear();
        }
        if let FieldKind::Flag = field.kind {
            made.take = vec![Edit::Set { path: made.path.clone(), value: EditValue::Flag(true) }];
        }
        if let Some(other) = other(field.key).filter(|_| made.written.is_none()) {
            made.take = self.instead(field.key, basket, pattern).map_or_else(Vec::new, |value| {
                let remove = Edit::Remove { path: format!("{path}.{other}") };
                vec![remove, Edit::Set { path: made.path.clone(), value }]
            });
        }
        if field.key == "until" && made.used.is_none() {
            let place = self.course.to;
            let height = basket.body.form.profile.at(place).height;
            made.used = Some(crate::bench::api::Used {
                text: lengths::both(words, height),
                word: format!("height {}", in_file(height, pattern.units)),
                number: None,
            });
        }
        made
    }

    /// What is used of a key that the course leaves out.
    fn used(&self, key: &str) -> Option<Value> {
        let course = self.course;
        Some(match key {
            "weave" => course.weave.to_string().into(),
            "rows" => course.rows.into(),
            "way" => match course.way {
                basket::pattern::Way::Continuous => "continuous".into(),
                basket::pattern::Way::RowByRow => "row by row".into(),
            },
            "band" => BAND.into(),
            "start" => 1_u32.into(),
            "doubled" => 0_u32.into(),
            "colours" => "natural".into(),
            "packing" => Value::Percent(course.pitch.to_mm() / course.weaver.width.to_mm().max(1e-3)),
            _ => return None,
        })
    }

    /// The value of a key in place of the other one of its pair.
    fn instead(&self, key: &str, basket: &Basket, pattern: &Pattern) -> Option<EditValue> {
        let course = self.course;
        Some(match key {
            "rows" => EditValue::Whole(i32::try_from(course.rows).ok()?.max(1)),
            "until" => match self.pattern?.until {
                Until::Rows(_) => below_top(basket, course, pattern),
                _ => return None,
            },
            "weaver" => course.weaver.name.as_str().into(),
            "weavers" => {
                let count = self.pattern?.weavers();
                let names = (0..count).map(|weaver| self.pattern.map(|course| course.material(weaver)));
                EditValue::List(names.flatten().map(|material| material.name.as_str().into()).collect())
            }
            "packing" => {
                let share = course.pitch.to_mm() / course.weaver.width.to_mm().max(1e-3);
                format!("{:.0} %", (share * 100.0).clamp(50.0, 300.0)).as_str().into()
            }
            "spaced" => {
                let clear = (course.pitch - course.weaver.width).max(basket::Length::mm(0.5));
                in_file(clear, pattern.units).as_str().into()
            }
            _ => return None,
        })
    }
}

fn other(key: &str) -> Option<&'static str> {
    EITHER.iter().find_map(|(one, two)| match key {
        _ if key == *one => Some(*two),
        _ if key == *two => Some(*one),
        _ => None,
    })
}
