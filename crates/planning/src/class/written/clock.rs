//! The clock on the wall, and moments.

use jiff::Timestamp;
use jiff::civil::{Date, DateTime, Time};
use jiff::tz::{AmbiguousOffset, TimeZone};

use crate::class::schedule::{Minute, Window};

/// From one time of the day to another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Hours {
    /// When they begin.
    pub from: Time,
    /// When they end; midnight for the end of the day.
    pub to: Time,
}

impl Hours {
    /// Reads `09:00-12:30`.
    pub(super) fn parse(text: &str) -> Option<Self> {
        let (from, to) = text.split_once(['-', '–'])?;
        let end_of_day = to.trim() == "24:00";
        let to = if end_of_day { Some(Time::midnight()) } else { time(to) };
        Some(Self { from: time(from)?, to: to? }).filter(|hours| hours.from < hours.to || end_of_day)
    }

    /// These hours on a date.
    pub fn on(&self, date: Date, zone: &TimeZone) -> Option<Window> {
        let until = if self.to == Time::midnight() { date.tomorrow().ok()? } else { date };
        Some(Window { from: moment(date, self.from, zone)?, to: moment(until, self.to, zone)? })
    }
}

/// Reads `09:00`.
pub(super) fn time(text: &str) -> Option<Time> {
    let (hour, minute) = text.trim().split_once(':')?;
    let digits = |text: &str| text.len() <= 2 && text.bytes().all(|byte| byte.is_ascii_digit());
    if !digits(hour) || !digits(minute) {
        return None;
    }
    Time::new(hour.parse().ok()?, minute.parse().ok()?, 0, 0).ok()
}

/// The moment at which the clock on the wall says so; where it says so twice the first, where it never does
/// as long after the change as it would have been (RFC 5545, 3.3.5).
pub(super) fn moment(date: Date, time: Time, zone: &TimeZone) -> Option<Minute> {
    let stamp = zone.to_ambiguous_timestamp(date.to_datetime(time)).compatible().ok()?;
    Some(stamp.as_second().div_euclid(60))
}

/// Whether the clock on the wall says so once.
pub(super) fn is_plain(date: Date, time: Time, zone: &TimeZone) -> bool {
    let offset = zone.to_ambiguous_timestamp(date.to_datetime(time)).offset();
    matches!(offset, AmbiguousOffset::Unambiguous { .. })
}

/// A moment by the clock on the wall.
pub(in crate::class) fn local(moment: Minute, zone: &TimeZone) -> DateTime {
    let stamp = Timestamp::from_second(moment.saturating_mul(60)).unwrap_or(Timestamp::UNIX_EPOCH);
    zone.to_datetime(stamp)
}
