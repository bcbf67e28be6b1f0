//! The days of a class: dates that repeat, and sessions that must not overlap.

use std::ops::Range;

use basket::limits;
use basket::message::{Message, Value};
use jiff::civil::Date;
use jiff::tz::TimeZone;

use super::Day;
use super::clock::{self, Hours};
use super::fault::name;
use super::file::Reader;
use super::raw;
use crate::class::schedule::Window;

impl Reader {
    pub(super) fn days(&self, written: &[raw::Days], zone: &TimeZone) -> Vec<Day> {
        let mut days: Vec<(Day, Range<usize>)> = Vec::new();
        for entry in written {
            let hours: Vec<(Hours, Range<usize>)> =
                entry.hours.iter().filter_map(|hours| Some((self.hours(hours)?, hours.span()))).collect();
            if entry.hours.is_empty() {
                self.fault(entry.date.span(), Message::new("class-fault-day-hours"));
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
            self.fault(self.end..self.end, Message::new("class-fault-no-days"));
        } else if days.len() > limits::CLASS_DAYS as usize {
            let span = written.last().map_or(0..0, |entry| entry.date.span());
            let count = Value::Count(i64::try_from(days.len()).unwrap_or(i64::MAX));
            let says = Message::new("class-fault-days").with("count", count);
            self.fault(span, says.with("most", limits::CLASS_DAYS));
        }
        self.no_overlap(&days, zone);
        in_order(days)
    }

    fn plain_hours(&self, date: Date, hours: &[(Hours, Range<usize>)], zone: &TimeZone) {
        for (hours, span) in hours {
            if let Some(time) =
                [hours.from, hours.to].into_iter().find(|time| !clock::is_plain(date, *time, zone))
            {
                let time = format!("{:02}:{:02}", time.hour(), time.minute());
                let says = Message::new("class-fault-clock").with("date", name(date.to_string()));
                self.fault(span.clone(), says.with("time", name(time)));
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
                let says = Message::new("class-fault-overlap").with("date", name(date.to_string()));
                self.fault((*span).clone(), says);
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
