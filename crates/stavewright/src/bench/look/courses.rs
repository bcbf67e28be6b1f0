//! The courses of the weaving as rows of the form.

use std::collections::BTreeMap;

use basket::Basket;
use basket::message::Value;
use basket::pattern::keys::course::{
    self, BAND, COLOURS, DOUBLED, LEAN, PACKING, ROWS, SPACED, START, STEP_UP, UNTIL, WAY, WEAVE, WEAVER,
    WEAVERS,
};
use basket::pattern::keys::weave::{self, COURSES};
use basket::pattern::keys::{Declared, Usual};
use basket::pattern::{CoursePattern, Pattern, Until, WeaveKind, Word};
use basket::weave::Face;
use words::Words;

use super::field::{Making, in_file};
use super::lengths;
use crate::bench::api::{Course, Courses, Edit, EditValue, Field, Used};
use crate::bench::text::Written;

/// All courses.
pub(super) fn courses(written: &Written, pattern: &Pattern, basket: &Basket, words: &Words) -> Courses {
    let path = || COURSES.path.to_owned();
    let entries = written.entries(COURSES.path);
    let choice = basket.choices.iter().find(|choice| choice.key == COURSES.path);
    let list = Edit::Set { path: path(), value: EditValue::List(Vec::new()) };
    let courses = &basket.body.weave.courses;
    let take = courses.iter().zip(1..).map(|(course, at)| Edit::Insert {
        path: path(),
        at,
        value: in_braces(course, at as usize == courses.len(), basket, pattern),
    });
    let row = |(course, number): (_, u32)| {
        let index = number as usize - 1;
        let (pattern_of, entry) = (pattern.weave.courses.get(index), entries.get(index));
        Row { course, pattern: pattern_of, entry, file: pattern, basket, words }.shown(number)
    };
    Courses {
        each: courses.iter().zip(1..).map(row).collect(),
        why: choice.map(|choice| words.say(&choice.reason)),
        take: if choice.is_some() { std::iter::once(list).chain(take).collect() } else { Vec::new() },
        give: match choice {
            Some(_) => Vec::new(),
            None => vec![Edit::Remove { path: path() }],
        },
        fresh: fresh(basket),
    }
}

fn table<const N: usize>(pairs: [(&dyn Declared, EditValue); N]) -> EditValue {
    EditValue::Table(BTreeMap::from(pairs.map(|(key, value)| (key.name().to_owned(), value))))
}

/// A few rows of plain weave in the weaver of the last course.
fn fresh(basket: &Basket) -> EditValue {
    let weaver = basket.body.weave.courses.last().map_or("cane fine", |course| course.weaver.name.as_str());
    let plain = WeaveKind::Plain.to_string();
    table([(&WEAVE, plain.as_str().into()), (&WEAVER, weaver.into()), (&ROWS, EditValue::Whole(4))])
}

/// A chosen course as the maker would write it; the last one goes up to where it ends now.
fn in_braces(course: &basket::weave::Course, last: bool, basket: &Basket, pattern: &Pattern) -> EditValue {
    let end: (&dyn Declared, EditValue) = match (last, course.wanted_to) {
        (true, Some(_)) => (&UNTIL, below_top(basket, course, pattern)),
        _ => (&ROWS, EditValue::Whole(i32::try_from(course.rows).unwrap_or(1).max(1))),
    };
    let weave = course.weave.to_string();
    table([(&WEAVE, weave.as_str().into()), (&WEAVER, course.weaver.name.as_str().into()), end])
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
    file: &'a Pattern,
    basket: &'a Basket,
    words: &'a Words,
}

impl Row<'_> {
    fn shown(&self, number: u32) -> Course {
        let (course, words) = (self.course, self.words);
        let is_shown =
            |key: &&&dyn Declared| (key.fits().with)(course.weave) || self.written(**key).is_some();
        let fields = match self.pattern {
            Some(_) => course::ALL.iter().filter(is_shown).map(|key| self.field(*key, number)).collect(),
            None => Vec::new(),
        };
        let lean_path = weave::in_course(number, &LEAN);
        let lean = fields.iter().find(|field| field.path == lean_path).and_then(|field| field.why.clone());
        let weavers = course.weavers.iter().flat_map(|weaver| &weaver.colours);
        let mut colours: Vec<String> = Vec::new();
        for colour in weavers.map(basket::Colour::to_hex) {
            if !colours.contains(&colour) {
                colours.push(colour);
            }
        }
        Course {
            path: self.pattern.map(|_| weave::course(number)),
            fields,
            first_row: course.first_row,
            rows: course.rows,
            summary: self.summary(),
            length: words.run(course.cut),
            runs: course.verdict.holds,
            colours,
            seen: words.say(&self.basket.body.weave.look(course, Face::Outside).said()),
            lean,
        }
    }

    fn summary(&self) -> String {
        let (course, words) = (self.course, self.words);
        let args = [
            ("weave", Value::Name(words.say(&course.weave.name()))),
            ("first", course.first_row.into()),
            ("last", (course.first_row + course.rows.saturating_sub(1)).into()),
            ("weaver", Value::Name(words.material(&course.weaver.name))),
        ];
        let id = match course.rows {
            0 => "form-course-summary-none",
            1 => "form-course-summary-one",
            _ => "form-course-summary",
        };
        words.with(id, &args)
    }

    fn written(&self, key: &dyn Declared) -> Option<EditValue> {
        match self.entry {
            Some(EditValue::Table(table)) => table.get(key.name()).cloned(),
            _ => None,
        }
    }

    fn field(&self, key: &dyn Declared, number: u32) -> Field {
        let making = Making {
            path: weave::in_course(number, key),
            key,
            written: self.written(key),
            chosen: self.used(key).map(|value| (value, self.reason(key))),
        };
        let mut made = making.field(self.words, self.file.units);
        let pair = pair(key);
        if pair.as_ref().is_some_and(|pair| pair.is_needed) {
            made.give.clear();
        }
        if key.path() == STEP_UP.path {
            made.take = vec![Edit::Set { path: made.path.clone(), value: EditValue::Flag(true) }];
        }
        if let Some(pair) = pair.filter(|_| made.written.is_none()) {
            made.take = self.instead(key).map_or_else(Vec::new, |value| {
                let remove = Edit::Remove { path: weave::in_course(number, pair.other) };
                vec![remove, Edit::Set { path: made.path.clone(), value }]
            });
        }
        if key.path() == UNTIL.path && made.used.is_none() {
            let height = self.basket.body.form.profile.at(self.course.to).height;
            made.used = Some(Used {
                text: lengths::both(self.words, height),
                word: format!("height {}", in_file(height, self.file.units)),
                number: None,
            });
        }
        made
    }

    /// What is used of a key that the course leaves out.
    fn used(&self, key: &dyn Declared) -> Option<Value> {
        let course = self.course;
        let is = |other: &dyn Declared| key.path() == other.path();
        Some(if is(&WEAVE) {
            course.weave.to_string().into()
        } else if is(&ROWS) {
            course.rows.into()
        } else if is(&WAY) {
            course.way.word().into()
        } else if is(&COLOURS) {
            "natural".into()
        } else if is(&PACKING) {
            Value::Percent(self.packing())
        } else if is(&LEAN) {
            let lean = course.verdict.diagonal.lean().filter(|_| course.weave.has_diagonal())?;
            self.basket.body.weave.direction.seen(lean).word().into()
        } else if let (true, Usual::Constant(usual)) = (is(&BAND) || is(&START) || is(&DOUBLED), key.usual())
        {
            usual
        } else {
            return None;
        })
    }

    /// Why a value is used that the course leaves out, where that is more than usual.
    fn reason(&self, key: &dyn Declared) -> String {
        if key.path() != LEAN.path {
            return String::new();
        }
        let count = self.basket.body.uprights().count;
        let turned = self.pattern.map_or_else(Vec::new, |pattern| pattern.turned_near(count));
        let counts: Vec<String> = turned.iter().map(u32::to_string).collect();
        match counts.as_slice() {
            [] => String::new(),
            counts => self.words.with("form-lean-count", &[("counts", Value::Name(counts.join(", ")))]),
        }
    }

    /// The value of a key in place of the other one of its pair.
    fn instead(&self, key: &dyn Declared) -> Option<EditValue> {
        let (course, pattern) = (self.course, self.pattern?);
        let is = |other: &dyn Declared| key.path() == other.path();
        Some(if is(&ROWS) {
            EditValue::Whole(i32::try_from(course.rows).ok()?.max(1))
        } else if is(&UNTIL) && matches!(pattern.until, Until::Rows(_)) {
            below_top(self.basket, course, self.file)
        } else if is(&WEAVER) {
            course.weaver.name.as_str().into()
        } else if is(&WEAVERS) {
            let names = (0..pattern.weavers()).map(|weaver| pattern.material(weaver).name.as_str().into());
            EditValue::List(names.collect())
        } else if is(&PACKING) {
            let limits = PACKING.takes;
            format!("{:.0} %", self.packing().clamp(limits.least, limits.most) * 100.0).as_str().into()
        } else if is(&SPACED) {
            let clear = (course.pitch - course.weaver.width).max(basket::Length::mm(0.5));
            in_file(clear, self.file.units).as_str().into()
        } else {
            return None;
        })
    }

    /// Height of a row in widths of the weaver.
    fn packing(&self) -> f64 {
        self.course.pitch.to_mm() / self.course.weaver.width.to_mm().max(1e-3)
    }
}

/// The key of which a course has one or this one.
struct Pair {
    other: &'static dyn Declared,
    is_needed: bool,
}

fn pair(key: &dyn Declared) -> Option<Pair> {
    course::CONTENTS.either.iter().find_map(|either| match either.ways {
        [[one], [other]] if one.path() == key.path() => {
            Some(Pair { other: *other, is_needed: either.is_needed })
        }
        [[other], [one]] if one.path() == key.path() => {
            Some(Pair { other: *other, is_needed: either.is_needed })
        }
        _ => None,
    })
}
