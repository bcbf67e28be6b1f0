//! From the text of a file to a class, or to all that is wrong with it.

use std::cell::RefCell;
use std::ops::{Range, RangeInclusive};

use basket::limits;
use basket::pattern::{Problem, Ready, StepKind, Word};
use jiff::civil::Date;
use jiff::tz::{TimeZone, TimeZoneDatabase};
use toml::Spanned;

use super::clock::{self, Hours};
use super::raw;
use super::{Class, Day, Home, Students, Teacher};
use crate::class::schedule::{Minute, Window};

/// Reads the file of a class.
///
/// # Errors
/// Everything that is wrong with it, in the order of the file; a key that is missing or unknown alone, for
/// it may be one that is spelt wrong.
pub fn read(text: &str) -> Result<Class, Vec<Problem>> {
    if text.len() > limits::PATTERN_BYTES {
        let problem = Problem {
            message: "the file is larger than 1 MB".to_owned(),
            span: None,
            help: Some("a class is a few kilobytes: is this the right file?".to_owned()),
            fault: None,
        };
        return Err(vec![problem]);
    }
    let raw: raw::File = toml::from_str(text).map_err(|error| vec![misread(text, &error)])?;
    let reader = Reader { problems: RefCell::new(Vec::new()), end: text.len() };
    let class = reader.class(&raw);
    let mut problems = reader.problems.into_inner();
    problems.sort_by_key(|problem| problem.span.as_ref().map_or(0, |span| span.start));
    match class {
        Some(class) if problems.is_empty() => Ok(class),
        _ => Err(problems),
    }
}

fn misread(text: &str, error: &toml::de::Error) -> Problem {
    let span = error.span().map(|span| span.start.min(text.len())..span.end.min(text.len()));
    let help = "`stavewright class --help` shows a whole file with every key".to_owned();
    Problem { message: error.message().replace('\n', "; "), span, help: Some(help), fault: None }
}

struct Reader {
    problems: RefCell<Vec<Problem>>,
    end: usize,
}

impl Reader {
    fn problem(&self, span: Range<usize>, message: impl Into<String>, help: impl Into<String>) {
        let problem =
            Problem { message: message.into(), span: Some(span), help: Some(help.into()), fault: None };
        self.problems.borrow_mut().push(problem);
    }

    fn class(&self, raw: &raw::File) -> Option<Class> {
        let zone = self.zone(&raw.zone);
        let moulds = self.number(&raw.moulds, "moulds", 1..=limits::CLASS_STUDENTS);
        let drills =
            raw.drills.as_ref().map(|drills| self.number(drills, "drills", 1..=limits::CLASS_STUDENTS));
        let teacher = raw.teacher.as_ref().map(|teacher| self.teacher(teacher));
        let home = raw.home.as_ref().map(|home| self.home(home));
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
            home: home.map_or(Some(None), |home| home.map(Some))?,
        })
    }

    fn zone(&self, name: &Spanned<String>) -> Option<TimeZone> {
        let known = TimeZoneDatabase::bundled();
        if let Ok(zone) = known.get(name.get_ref()) {
            return Some(zone);
        }
        let names: Vec<String> = known.available().map(|name| name.to_string()).collect();
        let help = match nearest(name.get_ref(), names.iter().map(String::as_str)) {
            Some(nearest) => format!("did you mean `{nearest}`?"),
            None => "write a place of the time zone database, such as \"America/New_York\"".to_owned(),
        };
        self.problem(name.span(), format!("there is no time zone `{}`", name.get_ref()), help);
        None
    }

    fn number(&self, number: &Spanned<i64>, of: &str, range: RangeInclusive<u32>) -> Option<u32> {
        let found = u32::try_from(*number.get_ref()).ok().filter(|number| range.contains(number));
        if found.is_none() {
            let message = format!("`{of}` cannot be {}", number.get_ref());
            let help = format!("write a number from {} to {}", range.start(), range.end());
            self.problem(number.span(), message, help);
        }
        found
    }

    fn words<W: Word>(&self, words: &[Spanned<String>], of: &str) -> Vec<W> {
        let word = |word: &Spanned<String>| {
            let found = W::ALL.iter().find(|one| one.word() == word.get_ref()).copied();
            if found.is_none() {
                let all = || W::ALL.iter().map(|one| one.word());
                let help = match nearest(word.get_ref(), all()) {
                    Some(nearest) => format!("did you mean \"{nearest}\"?"),
                    None => format!("write one of {}", all().collect::<Vec<_>>().join(", ")),
                };
                self.problem(word.span(), format!("\"{}\" is no {of}", word.get_ref()), help);
            }
            found
        };
        words.iter().filter_map(word).collect()
    }

    fn teacher(&self, teacher: &raw::Teacher) -> Option<Teacher> {
        let steps = self.words::<StepKind>(&teacher.steps, "step");
        let at_once = self.number(&teacher.at_once, "at_once", 1..=limits::CLASS_STUDENTS)?;
        Some(Teacher { at_once, steps })
    }

    fn home(&self, home: &raw::Home) -> Option<Home> {
        let steps = self.words::<StepKind>(&home.steps, "step");
        Some(Home { steps, hours: self.hours(&home.hours)? })
    }

    fn hours(&self, hours: &Spanned<String>) -> Option<Hours> {
        let read = Hours::parse(hours.get_ref());
        if read.is_none() {
            let message = format!("`{}` are no hours of a day", hours.get_ref());
            self.problem(hours.span(), message, "write them as \"09:00-12:30\", the earlier first");
        }
        read
    }

    fn date(&self, date: &Spanned<String>) -> Option<Date> {
        let read = date.get_ref().parse::<Date>().ok().filter(|date| (1990..=2200).contains(&date.year()));
        if read.is_none() {
            let message = format!("`{}` is no date of a class", date.get_ref());
            self.problem(date.span(), message, "write year, month and day, as in \"2027-03-13\"");
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
                    let message = format!("\"{other}\" is no hand");
                    self.problem(group.hand.span(), message, "write \"learner\" or \"practised\"");
                    continue;
                }
            };
            let from = group.from.as_ref().and_then(|from| self.from(from, zone, over));
            let ready = self.words::<Ready>(&group.ready, "thing that can lie ready");
            all.extend(count.map(|count| Students { count, learners, from, ready }));
        }
        let count: u64 = all.iter().map(|students| u64::from(students.count)).sum();
        if groups.is_empty() {
            let help = "add [[students]] with count = 12 and hand = \"learner\"";
            self.problem(self.end..self.end, "nobody comes to this class", help);
        } else if count > u64::from(limits::CLASS_STUDENTS) {
            let span = groups.last().map_or(0..0, |group| group.count.span());
            let help = format!("a class has {} at the most", limits::CLASS_STUDENTS);
            self.problem(span, format!("{count} students are too many"), help);
        }
        all
    }

    fn from(&self, from: &Spanned<String>, zone: &TimeZone, over: Option<Minute>) -> Option<Minute> {
        let parts = from.get_ref().split_once([' ', 'T']);
        let read = parts.and_then(|(date, time)| clock::moment(date.parse().ok()?, clock::time(time)?, zone));
        match (read, over) {
            (None, _) => {
                let message = format!("`{}` is no date and time", from.get_ref());
                self.problem(from.span(), message, "write \"2027-03-13 13:00\"");
            }
            (Some(begin), Some(over)) if begin >= over => {
                let message = "these students come when the class is over";
                self.problem(from.span(), message, "let them come before the last session ends");
            }
            _ => {}
        }
        read
    }

    fn days(&self, written: &[raw::Days], zone: &TimeZone) -> Vec<Day> {
        let mut days: Vec<(Day, Range<usize>)> = Vec::new();
        for entry in written {
            let hours: Vec<(Hours, Range<usize>)> =
                entry.hours.iter().filter_map(|hours| Some((self.hours(hours)?, hours.span()))).collect();
            if entry.hours.is_empty() {
                self.problem(entry.date.span(), "this day has no hours", "add hours = [\"09:00-12:00\"]");
            }
            let times = entry
                .times
                .as_ref()
                .map_or(Some(1), |times| self.number(times, "times", 1..=limits::CLASS_DAYS));
            let every = entry
                .every
                .as_ref()
                .map_or(Some(7), |every| self.number(every, "every", 1..=limits::CLASS_DAYS));
            let (Some(first), Some(times), Some(every)) = (self.date(&entry.date), times, every) else {
                continue;
            };
            for time in 0..times {
                let span = jiff::Span::new().days(i64::from(time) * i64::from(every));
                let Ok(date) = first.checked_add(span) else { continue };
                self.plain_hours(date, &hours, zone);
                let hours = hours.iter().map(|(hours, _)| *hours).collect();
                days.push((Day { date, hours }, entry.date.span()));
            }
        }
        if written.is_empty() {
            let help = "add [[days]] with date = \"2027-03-13\" and hours = [\"09:00-12:00\"]";
            self.problem(self.end..self.end, "the class has no days", help);
        } else if days.len() > limits::CLASS_DAYS as usize {
            let help = format!("a class has {} at the most", limits::CLASS_DAYS);
            let span = written.last().map_or(0..0, |entry| entry.date.span());
            self.problem(span, format!("{} days are too many", days.len()), help);
        }
        self.no_overlap(&days, zone);
        in_order(days)
    }

    fn plain_hours(&self, date: Date, hours: &[(Hours, Range<usize>)], zone: &TimeZone) {
        for (hours, span) in hours {
            if let Some(time) =
                [hours.from, hours.to].into_iter().find(|time| !clock::is_plain(date, *time, zone))
            {
                let message = format!("on {date} the clocks change, and {time} is not one time");
                self.problem(span.clone(), message, "begin and end the session at another time");
            }
        }
    }

    fn no_overlap(&self, days: &[(Day, Range<usize>)], zone: &TimeZone) {
        let mut sessions: Vec<(Window, &Range<usize>, Date)> = Vec::new();
        for (day, span) in days {
            let windows = day.hours.iter().filter_map(|hours| hours.on(day.date, zone));
            sessions.extend(windows.map(|window| (window, span, day.date)));
        }
        sessions.sort_by_key(|(window, span, _)| (*window, span.start));
        let mut told: Vec<Date> = Vec::new();
        for pair in sessions.windows(2) {
            if let [(first, ..), (second, span, date)] = pair
                && second.from < first.to
                && !told.contains(date)
            {
                let message = format!("two sessions on {date} overlap");
                self.problem((*span).clone(), message, "let one end before the other begins");
                told.push(*date);
            }
        }
    }
}

/// Days in order of date, sessions of one date together.
fn in_order(days: Vec<(Day, Range<usize>)>) -> Vec<Day> {
    let mut days: Vec<Day> = days.into_iter().map(|(day, _)| day).collect();
    days.sort_by_key(|day| day.date);
    days.dedup_by(|later, earlier| {
        let same = later.date == earlier.date;
        if same {
            earlier.hours.append(&mut later.hours);
        }
        same
    });
    for day in &mut days {
        day.hours.sort_by_key(|hours| hours.from);
    }
    days
}

fn nearest<'a>(word: &str, all: impl Iterator<Item = &'a str>) -> Option<&'a str> {
    let near = all.map(|one| (strsim::jaro_winkler(&word.to_lowercase(), &one.to_lowercase()), one));
    near.filter(|(like, _)| *like > 0.8).max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, one)| one)
}
