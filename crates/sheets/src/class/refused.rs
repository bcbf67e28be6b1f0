//! Why a class does not fit, and what would mend it.

use basket::message::Value;
use planning::class::{Change, Days, Mend, Refusal};

use super::teller::{Teller, count};
use crate::scribe::name;

impl Teller<'_> {
    /// Why it does not fit.
    pub(super) fn why(&self, refusal: &Refusal) -> Vec<String> {
        let minutes = |minutes: i64| Value::Minutes(minutes as f64);
        let mut says: Vec<String> = refusal
            .too_long
            .iter()
            .map(|step| {
                let args = [
                    ("step", name(self.step(step.lesson.kind))),
                    ("minutes", minutes(step.minutes)),
                    ("longest", minutes(step.longest)),
                ];
                self.words.with("class-too-long", &args)
            })
            .collect();
        let days = &refusal.days;
        for (id, days) in [
            ("class-days-alone", days.alone),
            ("class-days-with-moulds", days.with_moulds),
            ("class-days-for-all", days.for_all),
        ] {
            says.extend(days.map(|days| self.days(id, days)));
        }
        if days.for_all.is_none() && refusal.too_long.is_empty() {
            says.push(self.words.term("class-days-many"));
        }
        says
    }

    fn days(&self, id: &str, days: Days) -> String {
        let told = self.words.with(id, &[("days", Value::Count(days.enough.into()))]);
        if days.at_least == days.enough {
            return told;
        }
        let least = [("days", Value::Count(days.at_least.into()))];
        format!("{told} {}", self.words.with("class-days-at-least", &least))
    }

    /// A change that was tried, and whether it helps.
    pub(super) fn mend(&self, mend: &Mend) -> String {
        let changes = name(self.changes(&mend.change));
        match mend.days {
            Some(days) => {
                let args = [("changes", changes), ("days", Value::Count(days.into()))];
                self.words.with("class-mend-fits", &args)
            }
            None => self.words.with("class-mend-fails", &[("changes", changes)]),
        }
    }

    fn changes(&self, change: &Change) -> String {
        let numbers = [
            ("class-mend-days", change.days - u32::from(change.half).min(change.days)),
            ("class-mend-half", u32::from(change.half)),
            ("class-mend-moulds", change.moulds),
            ("class-mend-drills", change.drills),
            ("class-mend-tables", change.tables),
            ("class-mend-hands", change.hands),
            ("class-mend-fewer", change.fewer),
        ];
        let mut told: Vec<String> = numbers
            .into_iter()
            .filter(|(_, number)| *number > 0)
            .map(|(id, number)| self.words.with(id, &[("count", count(number as usize))]))
            .collect();
        if !change.ready.is_empty() {
            let things: Vec<String> = change.ready.iter().map(|thing| self.words.name(*thing)).collect();
            told.push(self.words.with("class-mend-ready", &[("things", name(things.join("; ")))]));
        }
        told.extend(change.home.then(|| self.words.term("class-mend-home")));
        let mut told = told.join(", ");
        // A sentence begins with it.
        if let Some(first) = told.chars().next() {
            told.replace_range(..first.len_utf8(), &first.to_uppercase().to_string());
        }
        told
    }
}
