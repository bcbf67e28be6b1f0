//! Weaves for a wanted look. The search proposes; each proposal is written into the text, woven and looked
//! at before it is offered.

use basket::message::Value;
use basket::pattern::Lean;
use basket::pattern::keys::{Declared, course, staves, weave};
use basket::weave::find::{MOST_COLOURS, Proposal, Wanted, find};
use basket::weave::look::Look;
use basket::weave::{CourseLook, Face};
use words::Words;

use super::little::little_chart;
use super::trial::Trial;
use crate::bench::api::{Edit, EditValue, LookWord, SideWord, Way, Ways, WaysRequest, Wish};
use crate::bench::compute::{Shop, words};
use crate::bench::look::take_courses;
use crate::bench::refusal::Refusal;
use crate::bench::text::value_of;
use crate::report::weaves::look as seen_of;

/// Counts so far from the present one are searched.
const NEAR: u32 = 7;
/// So many ways are looked at on each count, and so many are shown.
const TRIED: usize = 12;
const SHOWN: usize = 6;
/// What a float over more than two staves weighs, in staves more or less than now: short ones hold better.
const FLOAT: f64 = 2.0;
/// Stands for the weaver's own colour where that is the staves' too, so that the look can be read.
const CONTRAST: &str = "black";
/// Rings of one colour each are courses of their own: more of them are made wider instead.
const MOST_RINGS: u32 = 24;

const LOOKS: [LookWord; 6] = [
    LookWord::Spiral,
    LookWord::Columns,
    LookWord::Bands,
    LookWord::Checks,
    LookWord::Arrows,
    LookWord::Plain,
];

/// Ways to weave a course so that it looks as wanted.
pub(crate) fn ways(request: &WaysRequest, shop: Shop<'_>) -> Result<Ways, Refusal> {
    let now = Trial::of(request.source.clone(), shop).map_err(Refusal::misread)?;
    let words = words(request.language.as_deref(), request.units, now.pattern.units)?;
    let search = Search { now: &now, number: request.course, wish: &request.wish, words: &words, shop };
    let most = request.most.map_or(SHOWN, |most| (most as usize).min(SHOWN));
    let each = if let Some(look) = request.wish.look {
        search.ways(look, most)?
    } else {
        let best = LOOKS.iter().map(|look| search.ways(*look, 1));
        best.collect::<Result<Vec<_>, _>>()?.into_iter().flatten().collect()
    };
    Ok(Ways { each })
}

impl LookWord {
    const fn look(self) -> Look {
        match self {
            Self::Spiral => Look::Spiral,
            Self::Columns => Look::Columns,
            Self::Bands => Look::Bands,
            Self::Checks => Look::Checks,
            Self::Arrows => Look::Arrows,
            Self::Plain => Look::Plain,
        }
    }
}

impl SideWord {
    pub(super) const fn lean(self) -> Lean {
        match self {
            Self::Left => Lean::Left,
            Self::Right => Lean::Right,
        }
    }

    pub(super) const fn of(lean: Lean) -> Self {
        match lean {
            Lean::Left => Self::Left,
            Lean::Right => Self::Right,
        }
    }
}

/// A search for ways to weave one course.
pub(super) struct Search<'a> {
    /// The pattern as it is.
    pub(super) now: &'a Trial,
    /// Number of the course, counted from 1.
    pub(super) number: u32,
    /// What is wanted.
    pub(super) wish: &'a Wish,
    /// In whose words.
    pub(super) words: &'a Words,
    /// What the pattern may name.
    pub(super) shop: Shop<'a>,
}

impl Search<'_> {
    /// Ways to one look, best first.
    pub(super) fn ways(&self, look: LookWord, most: usize) -> Result<Vec<Way>, Refusal> {
        let wanted = self.wanted(look)?;
        // Count by count, for the search keeps a weave on its best count only, and on that another course may fail.
        let counts = wanted.counts.clone();
        let of_count = |count| find(&Wanted { counts: count..=count, ..wanted.clone() }, TRIED);
        let mut proposals: Vec<Proposal> = counts.flat_map(of_count).collect();
        let weight = |one: &Proposal| one.penalty + FLOAT * f64::from(one.float.saturating_sub(2));
        proposals.sort_by(|one, other| weight(one).total_cmp(&weight(other)));
        let mut ways: Vec<Way> = Vec::new();
        for proposal in &proposals {
            if ways.len() >= most {
                break;
            }
            let known = ways.iter().any(|way| way.weave == self.words.say(&proposal.weave().name()));
            if !known {
                ways.extend(self.way(look, proposal)?);
            }
        }
        Ok(ways)
    }

    fn colours(&self) -> Vec<&str> {
        let mut names: Vec<&str> =
            self.wish.colours.iter().map(String::as_str).take(usize::from(MOST_COLOURS)).collect();
        if names.is_empty() {
            names.push("natural");
        }
        names
    }

    fn wanted(&self, look: LookWord) -> Result<Wanted, Refusal> {
        let (course, _) = self.now.course(self.number)?;
        let uprights = self.now.basket.body.uprights();
        let middle = (course.from + course.to) / 2.0;
        let proportion = uprights.pitch(&self.now.basket.body.form, middle) / course.pitch;
        let fewest = uprights.count.saturating_sub(NEAR).max(3);
        // All alike is of one colour.
        let colours = if look == LookWord::Plain { 1 } else { self.colours().len() as u8 };
        let mut wanted = Wanted::new(look.look(), colours, uprights.count);
        wanted.direction = self.now.basket.body.weave.direction;
        wanted.lean = self.wish.lean.map(SideWord::lean).filter(|_| look == LookWord::Spiral);
        wanted.turns = self.wish.turns.filter(|turns| (0.05..=50.0).contains(turns));
        wanted.counts = fewest..=uprights.count + NEAR;
        wanted.rows = course.rows.max(1);
        if proportion.is_finite() && proportion > 0.0 {
            wanted.proportion = proportion;
        }
        Ok(wanted)
    }

    /// A proposal as it comes out on this basket; none where it comes out otherwise.
    fn way(&self, look: LookWord, proposal: &Proposal) -> Result<Option<Way>, Refusal> {
        let (course, rows) = self.now.course(self.number)?;
        let mut edits = self.course_edits(course, proposal)?;
        edits.extend(self.stave_colours(proposal));
        let set_count = Edit::Set {
            path: staves::COUNT.path.to_owned(),
            value: EditValue::Whole(i32::try_from(proposal.count).unwrap_or(i32::MAX)),
        };
        let with_count = [edits.as_slice(), std::slice::from_ref(&set_count)].concat();
        // A count that was left open stays open if the weave brings it about.
        let tries: &[Vec<Edit>] = &if self.now.written.has(staves::COUNT.path) {
            if self.now.basket.body.uprights().count == proposal.count {
                vec![edits]
            } else {
                vec![with_count]
            }
        } else {
            vec![edits, with_count]
        };
        for edits in tries {
            let Some(after) = self.now.after(edits, self.shop) else { continue };
            if !self.is_as_wanted(look, proposal, &after)? {
                continue;
            }
            return Ok(Some(Way {
                look,
                weave: self.words.say(&proposal.weave().name()),
                seen: self.seen(proposal, &after)?,
                staves: after.basket.body.uprights().count,
                changes: self.changes(proposal, &after),
                picture: little_chart(&after.basket, rows),
                edits: edits.clone(),
            }));
        }
        Ok(None)
    }

    /// What makes the course anew: its weave and what goes with it, and nothing that the old one needed.
    fn course_edits(&self, now: &basket::weave::Course, proposal: &Proposal) -> Result<Vec<Edit>, Refusal> {
        let names = self.colours();
        let mut edits = take_courses(&self.now.written, &self.now.pattern, &self.now.basket, self.words);
        let path = |key: &str| format!("{}.{key}", weave::course(self.number));
        let old: [&dyn Declared; 10] = [
            &course::WAY,
            &course::LEAN,
            &course::STEP,
            &course::BAND,
            &course::STEP_UP,
            &course::CHART,
            &course::CHART_FILE,
            &course::COLOURS,
            &course::DOUBLED,
            &course::WEAVERS,
        ];
        let entries = self.now.written.entries(weave::COURSES.path);
        let entry = self.number.checked_sub(1).and_then(|index| entries.get(index as usize));
        let is_written =
            |key: &str| matches!(entry, Some(EditValue::Table(table)) if table.contains_key(key));
        for key in old.iter().map(|key| key.name()).filter(|key| is_written(key)) {
            edits.push(Edit::Remove { path: path(key) });
        }
        let weaver = course::WEAVER.name();
        if is_written(course::WEAVERS.name()) {
            edits.push(Edit::Set { path: path(weaver), value: now.weaver.name.as_str().into() });
        }
        let keys = proposal.keys(&names).into_iter();
        for (key, value) in keys.filter(|(key, _)| *key != course::ROWS.name()) {
            let value = value_of(&value).ok_or_else(Refusal::broken)?;
            edits.push(Edit::Set { path: path(key), value });
        }
        if let Some(every) = proposal.colouring.every {
            edits.extend(self.rings(now, proposal, every));
        }
        Ok(edits)
    }

    /// Courses of one colour each, one above the other; the uppermost ends where the course ended.
    fn rings(&self, now: &basket::weave::Course, proposal: &Proposal, every: u32) -> Vec<Edit> {
        let names = self.colours();
        let every = every.max(now.rows.div_ceil(MOST_RINGS)).max(1);
        let rings = now.rows.div_ceil(every).max(1);
        let turns = &proposal.colouring.weavers;
        let colour = |ring: u32| -> EditValue {
            let index = turns.get(ring as usize % turns.len().max(1)).copied().unwrap_or(0);
            names.get(usize::from(index)).copied().unwrap_or("natural").into()
        };
        let key = |name: &str| format!("{}.{name}", weave::course(self.number));
        let mut edits = Vec::new();
        for ring in 0..rings.saturating_sub(1) {
            let pairs = [
                (course::WEAVE.name(), proposal.weave().to_string().as_str().into()),
                (course::WEAVER.name(), now.weaver.name.as_str().into()),
                (course::COLOURS.name(), colour(ring)),
                (course::ROWS.name(), EditValue::Whole(i32::try_from(every).unwrap_or(1))),
            ];
            let value = EditValue::Table(pairs.map(|(name, value)| (name.to_owned(), value)).into());
            edits.push(Edit::Insert { path: weave::COURSES.path.to_owned(), at: self.number + ring, value });
        }
        // The course itself is now the uppermost; one of so many rows has fewer left.
        let last = format!("{}.", weave::course(self.number + rings - 1));
        let moved = |path: String| path.replacen(&key(""), &last, 1);
        edits.push(Edit::Set { path: moved(key(course::COLOURS.name())), value: colour(rings - 1) });
        if now.wanted_to.is_none() {
            let left = i32::try_from(now.rows - every * (rings - 1)).unwrap_or(1).max(1);
            edits.push(Edit::Set { path: moved(key(course::ROWS.name())), value: EditValue::Whole(left) });
        }
        edits
    }

    /// Staves are dyed as proposed, and no longer where they need not be.
    fn stave_colours(&self, proposal: &Proposal) -> Option<Edit> {
        let path = staves::COLOURS.path.to_owned();
        let names = self.colours();
        let list: Vec<EditValue> = proposal
            .colouring
            .staves
            .iter()
            .map(|index| names.get(usize::from(*index)).copied().unwrap_or("natural").into())
            .collect();
        let natural = list.iter().all(|name| *name == EditValue::from("natural"));
        if natural {
            return self.now.written.has(&path).then_some(Edit::Remove { path });
        }
        Some(Edit::Set { path, value: EditValue::List(list) })
    }

    /// Whether it looks as wanted, on the basket as computed, and no other course fails for it. Rings are
    /// courses of their own and taken as the search saw them.
    fn is_as_wanted(&self, look: LookWord, proposal: &Proposal, after: &Trial) -> Result<bool, Refusal> {
        let failing = |trial: &Trial| {
            trial.basket.body.weave.courses.iter().filter(|course| !course.verdict.holds).count()
        };
        let (course, _) = after.course(self.number)?;
        let count = after.basket.body.uprights().count;
        if !course.verdict.holds || failing(after) > failing(self.now) || count.abs_diff(proposal.count) > 0 {
            return Ok(false);
        }
        if proposal.colouring.every.is_some() {
            return Ok(true);
        }
        let seen = self.look_of(after)?;
        let leans =
            self.wish.lean.is_none_or(|side| look != LookWord::Spiral || seen.lean == Some(side.lean()));
        Ok(seen.sighting.look == look.look() && leans)
    }

    /// What is seen of the course; of one colour, what light and shade make of it.
    fn look_of(&self, after: &Trial) -> Result<CourseLook, Refusal> {
        let look = |trial: &Trial| -> Result<CourseLook, Refusal> {
            Ok(trial.basket.body.weave.look(trial.course(self.number)?.0, Face::Outside))
        };
        if self.colours().len() > 1 {
            return look(after);
        }
        let path = weave::in_course(self.number, &course::COLOURS);
        let contrast = [Edit::Set { path, value: CONTRAST.into() }];
        after.after(&contrast, self.shop).map_or_else(|| look(after), |twin| look(&twin))
    }

    fn seen(&self, proposal: &Proposal, after: &Trial) -> Result<String, Refusal> {
        if proposal.colouring.every.is_some() {
            return Ok(seen_of(&proposal.sighting, proposal.lean(), self.words));
        }
        Ok(self.words.say(&self.look_of(after)?.said()))
    }

    /// What changes besides the weave.
    fn changes(&self, proposal: &Proposal, after: &Trial) -> Vec<String> {
        let words = self.words;
        let mut changes = Vec::new();
        let [before, staves] = [self.now, after].map(|trial| trial.basket.body.uprights().count);
        if before != staves {
            let is_own = self.now.written.has(staves::COUNT.path);
            let id = if is_own { "form-way-own-count" } else { "form-way-count" };
            changes.push(words.with(id, &[("before", before.into()), ("after", staves.into())]));
        }
        let courses = |trial: &Trial| trial.basket.body.weave.courses.len() as u32;
        let more = courses(after).saturating_sub(courses(self.now));
        if more > 0 {
            changes.push(words.with("form-way-courses", &[("count", (more + 1).into())]));
        }
        if proposal.colouring.staves.iter().any(|colour| *colour > 0) {
            changes.push(words.term("form-way-dyed-staves"));
        }
        if self.now.written.has(staves::COLOURS.path) && !after.written.has(staves::COLOURS.path) {
            changes.push(words.term("form-way-plain-staves"));
        }
        if proposal.float > 3 {
            changes.push(words.with("form-way-float", &[("count", Value::Count(i64::from(proposal.float)))]));
        }
        changes
    }
}
