//! Calendar files that other programs take over: iCalendar (RFC 5545).

use jiff::Timestamp;
use jiff::tz::TimeZone;

use super::schedule::{Minute, Window};
use super::written::clock;

/// Something that stands in a calendar.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Event {
    /// When.
    pub time: Window,
    /// Its heading.
    pub summary: String,
    /// What is done.
    pub description: String,
}

/// A calendar.
#[derive(Clone, Debug)]
pub struct Calendar<'c> {
    /// Its name; with it and their beginnings events are known again when they come in a later file.
    pub name: &'c str,
    /// The zone of the clock on the wall.
    pub zone: &'c TimeZone,
    /// The moment at which it is written.
    pub written: Minute,
}

impl Calendar<'_> {
    /// The file: times by the clock on the wall, with the zone's changes from before the first event until
    /// after the last, so that a reader needs no database of zones.
    pub fn file(&self, events: &[Event]) -> String {
        let mut text = String::new();
        line(&mut text, "BEGIN:VCALENDAR");
        line(&mut text, "VERSION:2.0");
        line(&mut text, "PRODID:-//Stavewright//Class//EN");
        line(&mut text, "CALSCALE:GREGORIAN");
        line(&mut text, &format!("X-WR-CALNAME:{}", escaped(self.name)));
        let first = events.iter().map(|event| event.time.from).min();
        let last = events.iter().map(|event| event.time.to).max();
        if let (Some(first), Some(last)) = (first, last) {
            self.zone(&mut text, Window { from: first, to: last });
        }
        for event in events {
            self.event(&mut text, event);
        }
        line(&mut text, "END:VCALENDAR");
        text
    }

    fn event(&self, text: &mut String, event: &Event) {
        line(text, "BEGIN:VEVENT");
        line(text, &format!("UID:{:x}-{}@stavewright.invalid", known_again(self.name), event.time.from));
        line(text, &format!("DTSTAMP:{}Z", stamp(self.written, &TimeZone::UTC)));
        line(text, &format!("DTSTART{}", self.told(event.time.from)));
        line(text, &format!("DTEND{}", self.told(event.time.to)));
        line(text, &format!("SUMMARY:{}", escaped(&event.summary)));
        line(text, &format!("DESCRIPTION:{}", escaped(&event.description)));
        line(text, "END:VEVENT");
    }

    /// The zone's name; none for Greenwich, whose times need no zone.
    fn zone_name(&self) -> Option<&str> {
        self.zone.iana_name().filter(|_| *self.zone != TimeZone::UTC)
    }

    /// A moment, with its zone before it.
    fn told(&self, moment: Minute) -> String {
        match self.zone_name() {
            Some(zone) => format!(";TZID={zone}:{}", stamp(moment, self.zone)),
            None => format!(":{}Z", stamp(moment, &TimeZone::UTC)),
        }
    }

    /// The zone: the change before the first event, and each one until the last.
    fn zone(&self, text: &mut String, events: Window) {
        let first = Timestamp::from_second(events.from.saturating_mul(60));
        let (Some(name), Ok(first)) = (self.zone_name(), first) else { return };
        line(text, "BEGIN:VTIMEZONE");
        line(text, &format!("TZID:{name}"));
        let before = self.zone.preceding(first).next().map(|change| change.timestamp());
        let until = events.to;
        let changes = self.zone.following(first).map(|change| change.timestamp());
        let during = changes.take_while(|change| change.as_second() < until.saturating_mul(60));
        let mut any = false;
        for change in before.into_iter().chain(during) {
            self.change(text, change);
            any = true;
        }
        if !any {
            // A zone whose clocks never changed.
            self.observance(
                text,
                "STANDARD",
                (self.zone.to_offset(first).seconds(), first),
                "19700101T000000",
            );
        }
        line(text, "END:VTIMEZONE");
    }

    fn change(&self, text: &mut String, change: Timestamp) {
        let summer = self.zone.to_offset_info(change).dst().is_dst();
        let before = change.checked_sub(jiff::Span::new().seconds(1)).unwrap_or(change);
        let offset = self.zone.to_offset(before);
        // The change as the clock that is about to change tells it.
        let told = offset.to_datetime(change).strftime("%Y%m%dT%H%M%S").to_string();
        self.observance(
            text,
            if summer { "DAYLIGHT" } else { "STANDARD" },
            (offset.seconds(), change),
            &told,
        );
    }

    fn observance(&self, text: &mut String, kind: &str, (before, at): (i32, Timestamp), told: &str) {
        let info = self.zone.to_offset_info(at);
        line(text, &format!("BEGIN:{kind}"));
        line(text, &format!("DTSTART:{told}"));
        line(text, &format!("TZOFFSETFROM:{}", offset(before)));
        line(text, &format!("TZOFFSETTO:{}", offset(info.offset().seconds())));
        line(text, &format!("TZNAME:{}", escaped(info.abbreviation())));
        line(text, &format!("END:{kind}"));
    }
}

/// A moment by the clock of a zone, as RFC 5545 writes it.
fn stamp(moment: Minute, zone: &TimeZone) -> String {
    clock::local(moment, zone).strftime("%Y%m%dT%H%M%S").to_string()
}

fn offset(seconds: i32) -> String {
    let sign = if seconds < 0 { '-' } else { '+' };
    let minutes = seconds.abs() / 60;
    format!("{sign}{:02}{:02}", minutes / 60, minutes % 60)
}

/// Text with what would end it taken out of the way.
fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '\\' | ';' | ',' => safe.extend(['\\', character]),
            '\n' => safe.push_str("\\n"),
            character if character.is_control() => {}
            character => safe.push(character),
        }
    }
    safe
}

/// A line, folded so that none is longer than 75 bytes.
fn line(text: &mut String, content: &str) {
    const MOST: usize = 74;
    let mut used = 0;
    for character in content.chars() {
        if used + character.len_utf8() > MOST {
            text.push_str("\r\n ");
            used = 1;
        }
        text.push(character);
        used += character.len_utf8();
    }
    text.push_str("\r\n");
}

/// A number that a name always gives (FNV-1a).
fn known_again(name: &str) -> u64 {
    name.bytes()
        .fold(0xCBF2_9CE4_8422_2325, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01B3))
}
