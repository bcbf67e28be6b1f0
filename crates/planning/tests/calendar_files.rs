//! Calendar files, read by a parser that is not ours (`icalendar`), with the zones of another database
//! (`chrono-tz`).

use chrono::{DateTime, Utc};
use icalendar::{Calendar, CalendarComponent, Component};
use planning::class::ics::{self, Event};
use planning::class::schedule::Window;
use planning::class::written::{Class, read};

fn class(zone: &str, days: &str) -> Class {
    let text = format!(
        "title = \"Baskets, by the water; \u{fc}bung\"\npattern = \"a.toml\"\nzone = \"{zone}\"\nmoulds = 1\n\
         [[students]]\ncount = 1\nhand = \"learner\"\n{days}"
    );
    read(&text).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn file(class: &Class) -> String {
    let long =
        "Weave rows 1 to 12, then let it dry; \u{201e}nie ohne Band\u{201c}, \\ and on. ".repeat(4) + "\nEnd";
    let event = |time: Window| Event { time, summary: class.title.clone(), description: long.clone() };
    let events: Vec<Event> = class.sessions().into_iter().map(event).collect();
    let calendar = ics::Calendar { name: &class.title, zone: &class.zone, written: 29_000_000 };
    calendar.file(&events)
}

/// Beginning and end of each event, in Greenwich.
fn times(text: &str) -> Vec<(String, String)> {
    let calendar: Calendar = text.parse().expect("a calendar");
    let utc = |time: Option<icalendar::DatePerhapsTime>| {
        let icalendar::DatePerhapsTime::DateTime(time) = time.expect("a time") else { panic!("a date") };
        let time: DateTime<Utc> = time.try_into_utc().expect("a known zone");
        time.format("%F %R").to_string()
    };
    let event = |component: &CalendarComponent| {
        component.as_event().map(|event| (utc(event.get_start()), utc(event.get_end())))
    };
    calendar.components.iter().filter_map(event).collect()
}

#[test]
fn a_class_over_a_change_of_the_clocks_keeps_its_hours_on_the_wall() {
    // New York went to summer time on 14 March 2027 at 2 (Energy Policy Act of 2005, sec. 110: the second
    // Sunday in March), from UTC-5 to UTC-4.
    let days = "[[days]]\ndate = \"2027-03-13\"\ntimes = 2\nevery = 1\nhours = [\"09:00-12:00\"]\n";
    let text = file(&class("America/New_York", days));
    let pair = |from: &str, to: &str| (from.to_owned(), to.to_owned());
    assert_eq!(
        times(&text),
        [pair("2027-03-13 14:00", "2027-03-13 17:00"), pair("2027-03-14 13:00", "2027-03-14 16:00"),]
    );
    // The file says so itself, too: the change lies in it, told by the clock that is about to change.
    assert!(
        text.contains("BEGIN:DAYLIGHT\r\nDTSTART:20270314T020000\r\nTZOFFSETFROM:-0500\r\nTZOFFSETTO:-0400")
    );
}

#[test]
fn zones_all_over_the_world_agree_with_another_database() {
    let days = "[[days]]\ndate = \"2026-09-05\"\ntimes = 40\nevery = 7\nhours = [\"18:30-21:00\"]\n";
    for zone in [
        "Europe/Berlin",
        "America/Los_Angeles",
        "Australia/Sydney",
        "Asia/Kolkata",
        "America/St_Johns",
        "UTC",
    ] {
        let class = class(zone, days);
        let told = |moment: i64| DateTime::<Utc>::from_timestamp(moment * 60, 0).expect("a time");
        let own: Vec<(String, String)> = class
            .sessions()
            .iter()
            .map(|session| (told(session.from), told(session.to)))
            .map(|(from, to)| (from.format("%F %R").to_string(), to.format("%F %R").to_string()))
            .collect();
        assert_eq!(own.len(), 40);
        assert_eq!(times(&file(&class)), own, "{zone}");
    }
}

#[test]
fn texts_come_back_as_they_were_and_no_line_is_too_long() {
    let class = class("Europe/Berlin", "[[days]]\ndate = \"2027-05-01\"\nhours = [\"09:00-12:00\"]\n");
    let text = file(&class);
    for line in text.split("\r\n") {
        assert!(line.len() <= 75 && !line.contains('\n'), "{line}");
    }
    let calendar: Calendar = text.parse().expect("a calendar");
    let event = calendar.components.iter().find_map(CalendarComponent::as_event).expect("an event");
    assert_eq!(event.get_summary(), Some(class.title.as_str()));
    assert!(event.get_description().expect("text").ends_with("\\ and on. \nEnd"));
    assert!(event.get_uid().is_some() && event.get_timestamp().is_some());
}
