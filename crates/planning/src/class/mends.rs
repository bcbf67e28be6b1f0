//! What would mend a class that does not fit: changes that are tried, none only guessed.

use basket::pattern::{Ready, StepKind};
use jiff::civil::Time;

use super::asked::{Days, DaysNeeded, Doing, problem};
use super::lesson::Source;
use super::schedule::{Answer, Minute, solve};
use super::written::{Class, Home, Hours, Students};

/// A change of a class.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Change {
    /// Days more, like the last.
    pub days: u32,
    /// Whether of the last of those days the first hours are enough.
    pub half: bool,
    /// Moulds more.
    pub moulds: u32,
    /// Drills more.
    pub drills: u32,
    /// Places at the tables more.
    pub tables: u32,
    /// Students more by whom the teacher stands at once.
    pub hands: u32,
    /// Students fewer.
    pub fewer: u32,
    /// What is prepared before the class, for all.
    pub ready: Vec<Ready>,
    /// Whether lashing, plug and finish may be done at home in the evening.
    pub home: bool,
}

/// A change that was tried.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mend {
    /// The change.
    pub change: Change,
    /// How many days the class has then; none if it does not fit even so.
    pub days: Option<u32>,
}

impl Change {
    /// How many things are changed: days, moulds, drills, tables and hands each by their number.
    fn size(&self) -> u32 {
        let ready = u32::try_from(self.ready.len()).unwrap_or(u32::MAX);
        let things = [self.days, self.moulds, self.drills, self.tables, self.hands, self.fewer];
        things.iter().sum::<u32>() + ready + u32::from(self.home)
    }

    /// The class with the change.
    #[must_use]
    pub fn of(&self, class: &Class) -> Class {
        let mut class = class.longer(self.days);
        if let Some(last) = class.days.last_mut().filter(|_| self.half && self.days > 0) {
            last.hours.truncate(1);
        }
        class.moulds += self.moulds;
        class.drills = class.drills.map(|drills| drills + self.drills);
        if let Some(tables) = &mut class.tables {
            tables.at_once += self.tables;
        }
        if let Some(teacher) = &mut class.teacher {
            teacher.at_once += self.hands;
        }
        if self.home && class.home.is_none() {
            class.home = homework(&class);
        }
        let mut fewer = self.fewer;
        for students in class.students.iter_mut().rev() {
            students.ready.extend(&self.ready);
            let less = fewer.min(students.count);
            students.count -= less;
            fewer -= less;
        }
        class.students.retain(|students| students.count > 0);
        class
    }
}

/// Work that needs neither mould nor drill.
const AT_HOME: [StepKind; 3] = [StepKind::Lashing, StepKind::Plug, StepKind::Finish];
/// Hours of an evening at home (assumed).
const EVENING: [i8; 2] = [19, 21];

/// Such work in the evenings of a class; none where the teacher stands by at all of it.
fn homework(class: &Class) -> Option<Home> {
    let taught = |kind: &StepKind| class.teacher.as_ref().is_some_and(|teacher| teacher.steps.contains(kind));
    let steps: Vec<StepKind> = AT_HOME.into_iter().filter(|kind| !taught(kind)).collect();
    let [from, to] = EVENING.map(|hour| Time::new(hour, 0, 0, 0).ok());
    Some(Home { steps, hours: Hours { from: from?, to: to? } }).filter(|home| !home.steps.is_empty())
}

/// What may be prepared, in making order. Tapered staves are cut.
const PREPARED: [Ready; 5] = [Ready::StavesTapered, Ready::Rings, Ready::Handle, Ready::Ears, Ready::Base];
/// Most days that are tried.
const MOST_DAYS: u32 = 40;
/// How many beginnings of plans one trial looks at.
const LOOKED_AT: u64 = 4000;

/// Trials of changes.
pub(super) struct Tries<'t> {
    class: &'t Class,
    source: Source<'t>,
    go_on: &'t mut dyn FnMut(Doing) -> bool,
    count: u32,
}

impl<'t> Tries<'t> {
    pub(super) fn of(class: &'t Class, source: Source<'t>, go_on: &'t mut dyn FnMut(Doing) -> bool) -> Self {
        Self { class, source, go_on, count: 0 }
    }

    /// How many days one student would need, and all.
    pub(super) fn days_needed(&mut self) -> DaysNeeded {
        let alone = self.class.students.iter().map(|students| {
            let mut class = self.class.clone();
            class.students = vec![Students { count: 1, ..students.clone() }];
            class
        });
        let alone: Vec<Class> = alone.collect();
        let alone: Option<Vec<Days>> = alone.iter().map(|class| self.days(class)).collect();
        let with_moulds = self.with(&Change { moulds: self.moulds_short(), ..Change::default() });
        DaysNeeded {
            alone: alone.and_then(|days| days.into_iter().max()),
            with_moulds,
            for_all: self.with(&Change::default()),
        }
    }

    /// The changes, the smallest that help first, then those that do not.
    pub(super) fn mends(&mut self) -> Vec<Mend> {
        let all: Vec<Ready> = self.preparable();
        let moulds = self.moulds_short();
        let drills = if self.class.drills.is_some() { self.class.count() } else { 0 };
        let tables = if self.class.tables.is_some() { self.class.count() } else { 0 };
        let hands = if self.class.teacher.is_some() { self.class.count() } else { 0 };
        let home = self.class.home.is_none();
        let nothing = Change::default();
        let kinds = vec![
            nothing.clone(),
            Change { moulds, ..nothing.clone() },
            Change { drills, ..nothing.clone() },
            Change { tables, ..nothing.clone() },
            Change { hands, ..nothing.clone() },
            Change { ready: all.clone(), ..nothing.clone() },
            Change { home, ..nothing.clone() },
            Change { ready: all.clone(), home, ..nothing.clone() },
            Change { ready: all.clone(), moulds, ..nothing.clone() },
            Change { ready: all, moulds, drills, tables, hands, ..nothing.clone() },
        ];
        let mut mends: Vec<Mend> = Vec::new();
        for change in kinds {
            let Some(days) = self.with(&change) else {
                mends.extend((change.size() > 0).then_some(Mend { change, days: None }));
                continue;
            };
            let now = self.days_now();
            let least = self.least(Change { days: days.enough.saturating_sub(now), ..change });
            let change = self.halved(least);
            let mend = Mend { days: Some(now + change.days), change };
            // A change that helps no more than its days alone would is none.
            if mend.change.size() > 0 && !mends.contains(&mend) {
                mends.push(mend);
            }
        }
        mends.extend(self.fewer());
        mends.sort_by_key(|mend| (mend.days.is_none(), mend.change.size()));
        mends
    }

    /// As many students fewer as it takes for the rest to fit.
    fn fewer(&mut self) -> Option<Mend> {
        let count = self.class.count();
        let with = |fewer| Change { fewer, ..Change::default() };
        // With more than half of them gone it is another class.
        let most = count / 2;
        if most == 0 || !self.fits(&with(most)) {
            return None;
        }
        let fewer = self.smallest(1, most, &|fewer| with(fewer));
        Some(Mend { change: with(fewer), days: Some(self.days_now()) })
    }

    /// The same, less of everything that is not needed for it to fit.
    fn least(&mut self, mut change: Change) -> Change {
        for thing in change.ready.clone() {
            let mut without = change.clone();
            without.ready.retain(|ready| *ready != thing);
            if self.fits(&without) {
                change = without;
            }
        }
        if change.home {
            let without = Change { home: false, ..change.clone() };
            change.home = !self.fits(&without);
        }
        let base = change.clone();
        change.moulds = self.smallest(0, base.moulds, &|moulds| Change { moulds, ..base.clone() });
        let base = change.clone();
        change.drills = self.smallest(0, base.drills, &|drills| Change { drills, ..base.clone() });
        let base = change.clone();
        change.tables = self.smallest(0, base.tables, &|tables| Change { tables, ..base.clone() });
        let base = change.clone();
        change.hands = self.smallest(0, base.hands, &|hands| Change { hands, ..base.clone() });
        change
    }

    /// The same with half of the last day more, where that is enough.
    fn halved(&mut self, change: Change) -> Change {
        let has_halves = self.class.days.last().is_some_and(|day| day.hours.len() > 1);
        let halved = Change { half: true, ..change.clone() };
        if change.days > 0 && has_halves && self.fits(&halved) { halved } else { change }
    }

    /// The smallest number with which it fits; with the largest it does.
    fn smallest(&mut self, from: u32, to: u32, change: &dyn Fn(u32) -> Change) -> u32 {
        let (mut short, mut enough) = (from, to);
        while short < enough {
            let middle = u32::midpoint(short, enough);
            if self.fits(&change(middle)) {
                enough = middle;
            } else {
                short = middle + 1;
            }
        }
        enough
    }

    fn fits(&mut self, change: &Change) -> bool {
        self.try_plan(&change.of(self.class), false).is_some()
    }

    /// How many days the class needs with a change.
    fn with(&mut self, change: &Change) -> Option<Days> {
        self.days(&change.of(self.class))
    }

    fn days(&mut self, class: &Class) -> Option<Days> {
        let longer = class.longer(MOST_DAYS);
        let (end, bound) = self.try_plan(&longer, true)?;
        Some(Days { enough: longer.days_until(end), at_least: longer.days_until(bound) })
    }

    /// Looks for a plan, the best or any: its end, and a time that none undercuts.
    fn try_plan(&mut self, class: &Class, best: bool) -> Option<(Minute, Minute)> {
        self.count += 1;
        let (problem, _) = problem(class, &self.source);
        let count = self.count;
        let go_on = &mut *self.go_on;
        let mut look = |progress: super::schedule::Progress| {
            let enough = progress.best.is_some() && (!best || progress.looked_at > LOOKED_AT);
            !enough && progress.looked_at < 4 * LOOKED_AT && go_on(Doing::Trying(count))
        };
        match solve(&problem, &mut look) {
            Answer::Plan { plan, bound } => Some((plan.end, bound)),
            Answer::NoPlan | Answer::Unknown => None,
        }
    }

    /// What is not prepared for all yet, and would change a step.
    fn preparable(&self) -> Vec<Ready> {
        let steps = |change: &Change| problem(&change.of(self.class), &self.source).0.groups;
        let now = steps(&Change::default());
        let changes = |ready: &Ready| steps(&Change { ready: vec![*ready], ..Change::default() }) != now;
        PREPARED.into_iter().filter(changes).collect()
    }

    fn moulds_short(&self) -> u32 {
        self.class.count().saturating_sub(self.class.moulds)
    }

    fn days_now(&self) -> u32 {
        u32::try_from(self.class.days.len()).unwrap_or(u32::MAX)
    }
}
