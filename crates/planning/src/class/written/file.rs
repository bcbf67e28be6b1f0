//! From the text of a file to a class, or to all that is wrong with it.

use std::cell::RefCell;
use std::ops::{Range, RangeInclusive};

use basket::limits;
use basket::message::{Message, Value};
use basket::pattern::{Ready, StepKind, Word};
use basket::steps::Stage;
use jiff::civil::Date;
use jiff::tz::{TimeZone, TimeZoneDatabase};
use toml::Spanned;

use super::clock::{self, Hours};
use super::fault::{Fault, name};
use super::raw;
use super::{AtOnce, Class, Home, Samples, Students};
use crate::class::schedule::Minute;
use crate::samples::Show;

/// Reads the file of a class.
///
/// # Errors
/// Everything that is wrong with it, in the order of the file; a key that is missing or unknown alone, for
/// it may be one that is spelt wrong.
pub fn read(text: &str) -> Result<Class, Vec<Fault>> {
    if text.len() > limits::PATTERN_BYTES {
        return Err(vec![Fault { says: Message::new("class-fault-large"), span: None }]);
    }
    let raw: raw::File = toml::from_str(text).map_err(|error| vec![misread(text, &error)])?;
    let reader = Reader { faults: RefCell::new(Vec::new()), end: text.len() };
    let class = reader.class(&raw);
    let mut faults = reader.faults.into_inner();
    faults.sort_by_key(|fault| fault.span.as_ref().map_or(0, |span| span.start));
    match class {
        Some(class) if faults.is_empty() => Ok(class),
        _ => Err(faults),
    }
}

fn misread(text: &str, error: &toml::de::Error) -> Fault {
    let span = error.span().map(|span| span.start.min(text.len())..span.end.min(text.len()));
    let said = error.message().replace('\n', "; ");
    Fault { says: Message::new("class-fault-toml").with("said", name(said)), span }
}

pub(super) struct Reader {
    faults: RefCell<Vec<Fault>>,
    pub(super) end: usize,
}

impl Reader {
    pub(super) fn fault(&self, span: Range<usize>, says: Message) {
        self.faults.borrow_mut().push(Fault { says, span: Some(span) });
    }

    fn class(&self, raw: &raw::File) -> Option<Class> {
        let zone = self.zone(&raw.zone);
        let moulds = self.number(&raw.moulds, "moulds", 1..=limits::CLASS_STUDENTS);
        let drills =
            raw.drills.as_ref().map(|drills| self.number(drills, "drills", 1..=limits::CLASS_STUDENTS));
        let teacher = raw.teacher.as_ref().map(|teacher| self.at_once(teacher));
        let tables = raw.tables.as_ref().map(|tables| self.at_once(tables));
        let home = raw.home.as_ref().map(|home| self.home(home));
        let samples = raw.samples.as_ref().map(|samples| self.samples(samples));
        let zone = zone?;
        let days = self.days(&raw.days, &zone);
        let over = days.last().and_then(|day| Some((day.hours.last()?).on(day.date, &zone)?.to));
        let students = self.students(&raw.students, &zone, over);
        Some(Class {
            title: raw.title.get_ref().clone(),
            pattern: raw.pattern.get_ref().clone(),
            zone,
            students,
            days,
            moulds: moulds?,
            drills: drills.map_or(Some(None), |drills| drills.map(Some))?,
            teacher: teacher.map_or(Some(None), |teacher| teacher.map(Some))?,
            tables: tables.map_or(Some(None), |tables| tables.map(Some))?,
            home: home.map_or(Some(None), |home| home.map(Some))?,
            samples: samples.map_or(Some(None), |samples| samples.map(Some))?,
        })
    }

    fn zone(&self, zone: &Spanned<String>) -> Option<TimeZone> {
        let known = TimeZoneDatabase::bundled();
        if let Ok(known) = known.get(zone.get_ref()) {
            return Some(known);
        }
        let names: Vec<String> = known.available().map(|known| known.to_string()).collect();
        let says = match nearest(zone.get_ref(), names.iter().map(String::as_str)) {
            Some(nearest) => Message::new("class-fault-zone-near").with("nearest", name(nearest)),
            None => Message::new("class-fault-zone"),
        };
        self.fault(zone.span(), says.with("zone", name(zone.get_ref())));
        None
    }

    pub(super) fn number(&self, number: &Spanned<i64>, of: &str, range: RangeInclusive<u32>) -> Option<u32> {
        let found = u32::try_from(*number.get_ref()).ok().filter(|number| range.contains(number));
        if found.is_none() {
            let says = Message::new("class-fault-number")
                .with("key", name(of))
                .with("value", name(number.get_ref().to_string()))
                .with("from", *range.start())
                .with("to", *range.end());
            self.fault(number.span(), says);
        }
        found
    }

    /// Words of a list, each of which means something. The messages are for one that is like another, and for one
    /// that is like none.
    fn each<T: Copy>(
        &self,
        words: &[Spanned<String>],
        known: &[(&'static str, T)],
        [near, none]: [&'static str; 2],
    ) -> Vec<T> {
        let meant = |word: &Spanned<String>| {
            let found = known.iter().find(|(own, _)| own == word.get_ref()).map(|(_, meant)| *meant);
            if found.is_none() {
                let all = || known.iter().map(|(own, _)| *own);
                let says = match nearest(word.get_ref(), all()) {
                    Some(nearest) => Message::new(near).with("nearest", name(nearest)),
                    None => Message::new(none).with("all", name(all().collect::<Vec<_>>().join(", "))),
                };
                self.fault(word.span(), says.with("word", name(word.get_ref())));
            }
            found
        };
        words.iter().filter_map(meant).collect()
    }

    fn steps(&self, words: &[Spanned<String>]) -> Vec<StepKind> {
        self.each(words, &known::<StepKind>(), ["class-fault-step-near", "class-fault-step"])
    }

    fn samples(&self, samples: &raw::Samples) -> Option<Samples> {
        let known: Vec<(&str, Stage)> = Stage::ALL.iter().map(|stage| (stage.name(), *stage)).collect();
        let stages = samples.stages.as_ref().map_or_else(
            || Show::default().stages,
            |words| self.each(words, &known, ["class-fault-stage-near", "class-fault-stage"]),
        );
        let moulds = samples.moulds.as_ref();
        let moulds = moulds.map(|moulds| self.number(moulds, "moulds", 1..=limits::CLASS_STUDENTS));
        Some(Samples {
            stages,
            hours: self.hours(&samples.hours)?,
            moulds: moulds.map_or(Some(None), |moulds| moulds.map(Some))?,
        })
    }

    fn at_once(&self, raw: &raw::AtOnce) -> Option<AtOnce> {
        let steps = self.steps(&raw.steps);
        let at_once = self.number(&raw.at_once, "at_once", 1..=limits::CLASS_STUDENTS)?;
        Some(AtOnce { at_once, steps })
    }

    fn home(&self, home: &raw::Home) -> Option<Home> {
        let steps = self.steps(&home.steps);
        Some(Home { steps, hours: self.hours(&home.hours)? })
    }

    pub(super) fn hours(&self, hours: &Spanned<String>) -> Option<Hours> {
        let read = Hours::parse(hours.get_ref());
        if read.is_none() {
            let says = Message::new("class-fault-hours").with("hours", name(hours.get_ref()));
            self.fault(hours.span(), says);
        }
        read
    }

    pub(super) fn date(&self, date: &Spanned<String>) -> Option<Date> {
        let read = date.get_ref().parse::<Date>().ok().filter(|date| (1990..=2200).contains(&date.year()));
        if read.is_none() {
            self.fault(date.span(), Message::new("class-fault-date").with("date", name(date.get_ref())));
        }
        read
    }

    fn students(&self, groups: &[raw::Students], zone: &TimeZone, over: Option<Minute>) -> Vec<Students> {
        let mut all = Vec::new();
        for group in groups {
            let count = self.number(&group.count, "count", 1..=limits::CLASS_STUDENTS);
            let learners = match group.hand.get_ref().as_str() {
                "learner" => true,
                "practised" => false,
                other => {
                    self.fault(group.hand.span(), Message::new("class-fault-hand").with("hand", name(other)));
                    continue;
                }
            };
            let from = group.from.as_ref().and_then(|from| self.from(from, zone, over));
            let ready =
                self.each(&group.ready, &known::<Ready>(), ["class-fault-ready-near", "class-fault-ready"]);
            all.extend(count.map(|count| Students { count, learners, from, ready }));
        }
        let count: u64 = all.iter().map(|students| u64::from(students.count)).sum();
        if groups.is_empty() {
            self.fault(self.end..self.end, Message::new("class-fault-nobody"));
        } else if count > u64::from(limits::CLASS_STUDENTS) {
            let span = groups.last().map_or(0..0, |group| group.count.span());
            let count = Value::Count(i64::try_from(count).unwrap_or(i64::MAX));
            let says = Message::new("class-fault-students").with("count", count);
            self.fault(span, says.with("most", limits::CLASS_STUDENTS));
        }
        all
    }

    fn from(&self, from: &Spanned<String>, zone: &TimeZone, over: Option<Minute>) -> Option<Minute> {
        let parts = from.get_ref().split_once([' ', 'T']);
        let read = parts.and_then(|(date, time)| clock::moment(date.parse().ok()?, clock::time(time)?, zone));
        match (read, over) {
            (None, _) => {
                let says = Message::new("class-fault-moment").with("moment", name(from.get_ref()));
                self.fault(from.span(), says);
            }
            (Some(begin), Some(over)) if begin >= over => {
                self.fault(from.span(), Message::new("class-fault-late"));
            }
            _ => {}
        }
        read
    }
}

fn nearest<'a>(word: &str, all: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    let near = all.map(|one| (strsim::jaro_winkler(&word.to_lowercase(), &one.to_lowercase()), one));
    near.filter(|(like, _)| *like > 0.8).max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, one)| one)
}

/// All words of a kind with what they mean.
fn known<W: Word + Copy>() -> Vec<(&'static str, W)> {
    W::ALL.iter().map(|one| (one.word(), *one)).collect()
}
