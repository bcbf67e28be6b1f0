//! The day on which the baskets of an order can be ready: one maker, so many hours a day, few moulds.
//!
//! The maker always goes on with the basket that is furthest on and does not dry, and begins another one where a
//! mould is free. That is a plan that can be kept, and not the quickest there is.

use basket::Draft;
use basket::pattern::StepKind;
use jiff::ToSpan;
use jiff::civil::Date;

/// Baskets of one order.
pub const MOST_BASKETS: u32 = 500;
/// Share of the days that is kept for what comes between (assumed).
const SPARE: f64 = 0.2;
/// When a day's work begins; only how far the evening is from the morning counts.
const MORNING: f64 = 8.0 * 60.0;
const DAY: f64 = 24.0 * 60.0;

/// What a maker has for orders.
#[derive(Clone, Debug, PartialEq)]
pub struct Free {
    /// The first day of work.
    pub from: Date,
    /// Hours of work a day; at least a quarter of one is counted, and at most sixteen.
    pub hours: f64,
    /// Days of work in a week, from Monday on; at least one is counted, and at most seven.
    pub days: u32,
    /// From when on each mould is free.
    pub moulds: Vec<Date>,
}

/// When an order can be ready.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Promise {
    /// The day on which the last basket is done, if nothing comes between.
    pub ready: Date,
    /// The day to promise: a fifth of the days later, and a day of work.
    pub promised: Date,
    /// Minutes of work in all.
    pub minutes: u32,
}

/// A basket in the making, by the minute since the first morning's midnight.
#[derive(Clone, Copy, Debug, Default)]
struct Making {
    /// The next step.
    next: usize,
    /// When what was made is dry.
    dry: f64,
    /// Its mould.
    mould: Option<usize>,
}

/// The day for so many baskets of a draft. None where there is no mould, no basket or more than
/// [`MOST_BASKETS`], or the day is beyond the calendar.
pub fn promise(draft: &Draft, count: u32, free: &Free) -> Option<Promise> {
    if count == 0 || count > MOST_BASKETS {
        return None;
    }
    let place = |kind| draft.steps.iter().position(|step| step.kind == kind);
    // Held from the base that is screwed on until the wall is dry.
    let (first, last) = (place(StepKind::Base).unwrap_or(0), place(StepKind::Dry).unwrap_or(0));
    let mut moulds: Vec<f64> = free.moulds.iter().map(|day| DAY * days_between(free.from, *day)).collect();
    let mut makings = vec![Making::default(); count as usize];
    let (mut now, mut end, mut minutes) = (0.0_f64, 0.0_f64, 0.0_f64);
    while makings.iter().any(|making| making.next < draft.steps.len()) {
        let mould = moulds.iter().position(|from| *from <= now);
        let can = |making: &&mut Making| {
            making.next < draft.steps.len()
                && making.dry <= now
                && (making.next != first || making.mould.is_some() || mould.is_some())
        };
        let Some(making) = makings.iter_mut().filter(can).rev().max_by_key(|making| making.next) else {
            let drying =
                makings.iter().filter(|making| making.next < draft.steps.len()).map(|making| making.dry);
            let next = drying.chain(moulds.iter().copied()).filter(|at| *at > now && at.is_finite());
            now = next.reduce(f64::min)?;
            continue;
        };
        let step = draft.steps.get(making.next)?;
        if making.next == first && making.mould.is_none() {
            making.mould = mould;
            moulds.iter_mut().skip(mould?).take(1).for_each(|from| *from = f64::INFINITY);
        }
        let work = if step.work_minutes.is_finite() { step.work_minutes.clamp(0.0, 1e5) } else { 0.0 };
        let wait = if step.wait_minutes.is_finite() { step.wait_minutes.clamp(0.0, 1e6) } else { 0.0 };
        now = free.after(now, work);
        making.dry = now + wait;
        minutes += work;
        end = end.max(making.dry);
        if making.next == last
            && let Some(mould) = making.mould.take()
        {
            moulds.iter_mut().skip(mould).take(1).for_each(|from| *from = making.dry);
        }
        making.next += 1;
    }
    let days = (end / DAY).floor();
    let day = |days: f64| free.from.checked_add((days.min(1e6) as i64).days()).ok();
    let promised = free.morning(days + (days * SPARE).ceil() + 1.0);
    Some(Promise { ready: day(days)?, promised: day(promised)?, minutes: minutes.round() as u32 })
}

fn days_between(from: Date, to: Date) -> f64 {
    f64::from(from.until(to).map_or(0, |span| span.get_days()).max(0))
}

impl Free {
    /// The minute at which so much work is done that begins now; it is broken off for the night.
    fn after(&self, now: f64, minutes: f64) -> f64 {
        let hours = if self.hours.is_finite() { self.hours } else { 0.0 };
        let length = hours.clamp(0.25, 16.0) * 60.0;
        let (mut now, mut left) = (now, minutes);
        loop {
            let day = (now / DAY).floor();
            let works = self.morning(day);
            let begins = works * DAY + MORNING;
            if works > day || now < begins {
                now = begins;
            }
            let until = begins + length;
            if now + left <= until {
                return now + left;
            }
            left -= (until - now).max(0.0);
            now = (works + 1.0) * DAY;
        }
    }

    /// This day, or the next one on which work is done.
    fn morning(&self, day: f64) -> f64 {
        let first = f64::from(self.from.weekday().to_monday_zero_offset());
        let weekday = (first + day).rem_euclid(7.0);
        if weekday < f64::from(self.days.clamp(1, 7)) { day } else { day + 7.0 - weekday }
    }
}
