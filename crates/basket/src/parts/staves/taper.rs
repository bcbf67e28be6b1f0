//! The practical taper: full width above a point, then straight to the foot.
//!
//! The point is the usual one where every gap stays wide enough with it, else the one that is best.
//! For a given point the gaps depend on the width of the foot alone, and each gap linearly; the
//! foot that makes the largest departure from the wanted gap least is where the worst excess and
//! the worst want are equal. The point is searched over the wall's height. Derived here.

use super::formulas::touch_width;
use super::wall::StandingRoom;
use crate::measure::Length;

/// Points that are tried between base and rim before the best is refined.
const POINTS: u32 = 16;
/// Room between neighbouring feet in the groove, so that all go in (common practice).
const FOOT_PLAY: f64 = 0.25;
/// The thinnest foot that a straight taper is given even where nothing fits, in mm.
const POINTED_FOOT: f64 = 0.2;
/// Points are rounded to this many mm, so that a maker can mark them.
const POINT_STEP: f64 = 25.4 / 16.0;
/// How much the mean departure counts beside the largest, in choosing between equal tapers.
const MEAN_SHARE: f64 = 0.1;
/// How much a gap that the weaver cannot pass counts beside a gap that is off.
const JAM_SHARE: f64 = 100.0;

/// How far above the foot of a stave the taper usually begins (common practice).
pub const USUAL_START: Length = Length::inches(1.5);
/// The narrowest gap with which it begins there (common practice).
pub const LEAST_USUAL_GAP: Length = Length::inches(1.0 / 32.0);

/// What a taper has to better in the worst gap to be worth its work (common practice: no hand sees less).
const WORTH_SHAVING: Length = Length::mm(0.1);

/// A taper a maker can shave: full width above a point, then straight to the foot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Taper {
    /// Distance above the mould's base, along the mould, at which full width begins.
    pub from: Length,
    /// Width at the foot, at the bottom of the groove.
    pub foot: Length,
    /// Largest departure of a gap from the one aimed at, with this taper.
    pub worst: Length,
    /// The same for the ideal width curve, which only the stock's width limits.
    pub worst_ideal: Length,
}

impl Taper {
    /// Whether staves of this full width are shaved at all.
    pub fn is_of(&self, width: Length) -> bool {
        self.foot < width
    }
}

/// Narrowest foot of a stave of this full width that still holds in the groove: a third of the
/// width, and 2 mm at least (common practice).
pub fn least_foot(width: Length) -> Length {
    (width / 3.0).max(Length::mm(2.0)).min(width)
}

/// What a taper must suit: the wall, how many staves of which width stand on it, the gap that is
/// wanted and the least one that the weaver can pass. Millimetres.
#[derive(Clone, Copy)]
pub(super) struct Task<'a> {
    pub(super) wall: &'a StandingRoom,
    pub(super) count: u32,
    pub(super) width: f64,
    pub(super) gap: f64,
    pub(super) least_gap: f64,
}

/// A taper under trial.
#[derive(Clone, Copy)]
struct Trial {
    from: f64,
    foot: f64,
    cost: f64,
}

impl Task<'_> {
    /// Full width down to the foot where that is as good, else the usual taper where it leaves room, else the
    /// one whose worst gap is best.
    pub(super) fn chosen(&self) -> Taper {
        let best = self.usual().unwrap_or_else(|| self.best());
        self.untapered().filter(|whole| whole.worst - best.worst < WORTH_SHAVING).unwrap_or(best)
    }

    /// The taper that begins where it usually does, if no gap and no foot is too narrow with it.
    fn usual(&self) -> Option<Taper> {
        let from = USUAL_START.to_mm() + self.wall.foot_along;
        let foot = self.foot_for(from);
        let least = LEAST_USUAL_GAP.to_mm().max(self.least_gap);
        let roomy = self.pitches().all(|(along, pitch)| pitch - self.width_at(along, from, foot) >= least);
        let holds = foot >= least_foot(Length::mm(self.width)).to_mm();
        let on_wall = (0.0..self.wall.top_along).contains(&from);
        (on_wall && roomy && holds).then(|| self.measured(Length::mm(from), Length::mm(foot)))
    }

    /// The taper whose worst gap is best.
    fn best(&self) -> Taper {
        let top = self.wall.top_along;
        let mut step = top / f64::from(POINTS);
        let mut best = self.trial(0.0);
        for number in 1..=POINTS {
            best = better(best, self.trial(step * f64::from(number)));
        }
        while step > POINT_STEP {
            step /= 2.0;
            for from in [best.from - step, best.from + step] {
                best = better(best, self.trial(from.clamp(0.0, top)));
            }
        }
        let mark = (best.from / POINT_STEP).floor() * POINT_STEP;
        let best = better(self.trial(mark), self.trial(mark + POINT_STEP));
        self.measured(Length::mm(best.from), Length::mm(best.foot))
    }

    /// Full width down to the foot, where neither the groove nor the weaver forbids it.
    fn untapered(&self) -> Option<Taper> {
        let roomy = self.widest_foot() >= self.width && self.roomiest_foot(0.0) >= self.width;
        roomy.then(|| self.measured(Length::ZERO, Length::mm(self.width)))
    }

    /// A given taper with its departures from the wanted gap.
    pub(super) fn measured(&self, from: Length, foot: Length) -> Taper {
        let (from_mm, foot_mm) = (from.to_mm(), foot.to_mm());
        let departures = self.pitches().map(|(along, pitch)| {
            let gap = pitch - self.width_at(along, from_mm, foot_mm);
            (gap - self.gap).abs()
        });
        Taper {
            from,
            foot,
            worst: Length::mm(departures.fold(0.0, f64::max)),
            worst_ideal: Length::mm(self.worst_ideal()),
        }
    }

    /// Largest departure that no shaving can mend: where the stock is too narrow.
    pub(super) fn worst_ideal(&self) -> f64 {
        self.pitches().map(|(_, pitch)| pitch - self.width - self.gap).fold(0.0, f64::max)
    }

    /// Width at a place for a point of full width and a foot.
    pub(super) fn width_at(&self, along: f64, from: f64, foot: f64) -> f64 {
        foot + (self.width - foot) * self.share(along, from)
    }

    pub(super) fn pitches(&self) -> impl Iterator<Item = (f64, f64)> + '_ {
        let count = f64::from(self.count.max(1));
        self.wall.girths.iter().map(move |(along, girth)| (*along, girth / count))
    }

    /// Share of the full width's gain that a place has on the way up from the foot.
    fn share(&self, along: f64, from: f64) -> f64 {
        ((along - self.wall.foot_along) / (from - self.wall.foot_along).max(1e-6)).clamp(0.0, 1.0)
    }

    fn trial(&self, from: f64) -> Trial {
        let foot = self.foot_for(from);
        let (mut worst, mut sum, mut jam) = (0.0_f64, 0.0, 0.0_f64);
        for (along, pitch) in self.pitches() {
            let gap = pitch - self.width_at(along, from, foot);
            let departure = (gap - self.gap).abs();
            worst = worst.max(departure);
            sum += departure;
            jam = jam.max(self.least_gap - gap);
        }
        let mean = sum / self.wall.girths.len().max(1) as f64;
        Trial { from, foot, cost: worst + MEAN_SHARE * mean + JAM_SHARE * jam }
    }

    /// The best foot for a point of full width, between the narrowest that holds and the widest
    /// that leaves the weaver room everywhere.
    fn foot_for(&self, from: f64) -> f64 {
        let widest = self.widest_foot().max(POINTED_FOOT);
        let least = least_foot(Length::mm(self.width)).to_mm().min(widest);
        let most = within(self.roomiest_foot(from), least, widest);
        let (mut low, mut high) = (least, most);
        let mut foot = most;
        for _ in 0..12 {
            let Some((excess, want)) = self.extremes(from, foot) else { return most };
            let balance = excess.at(foot) - want.at(foot);
            (low, high) = if balance > 0.0 { (foot, high) } else { (low, foot) };
            let meeting = within(excess.meeting(&want), low, high);
            if (meeting - foot).abs() < 1e-4 {
                return meeting;
            }
            foot = meeting;
        }
        foot
    }

    /// Widest foot that the groove has room for.
    fn widest_foot(&self) -> f64 {
        (touch_width(self.wall.groove_radius, self.count).to_mm() - FOOT_PLAY).min(self.width)
    }

    /// Widest foot with which no gap is less than the weaver needs, where the taper can help it, and
    /// no two staves meet at the edge of the base.
    fn roomiest_foot(&self, from: f64) -> f64 {
        let edge_room = touch_width(self.wall.edge_radius, self.count).to_mm() - FOOT_PLAY;
        let edge = std::iter::once((self.wall.edge_along, edge_room));
        let wall = self.pitches().map(|(along, pitch)| (along, pitch - self.least_gap));
        edge.chain(wall)
            .filter_map(|(along, room)| {
                let share = self.share(along, from);
                (share < 1.0 - 1e-9).then(|| (room - self.width * share) / (1.0 - share))
            })
            .fold(f64::INFINITY, f64::min)
    }

    /// The widest and the narrowest gap of the tapered part, each as it changes with the foot.
    fn extremes(&self, from: f64, foot: f64) -> Option<(Departure, Departure)> {
        let departures = self.pitches().filter_map(|(along, pitch)| {
            let share = self.share(along, from);
            let departure = Departure { at_zero: pitch - self.gap - self.width * share, fall: 1.0 - share };
            departure.is_tapered().then_some(departure)
        });
        departures.fold(None, |extremes, departure| match extremes {
            None => Some((departure, departure.turned())),
            Some((excess, want)) => Some((
                if departure.at(foot) > excess.at(foot) { departure } else { excess },
                if departure.turned().at(foot) > want.at(foot) { departure.turned() } else { want },
            )),
        })
    }
}

/// How far a gap is off, as a line over the width of the foot.
#[derive(Clone, Copy)]
struct Departure {
    at_zero: f64,
    fall: f64,
}

impl Departure {
    fn at(&self, foot: f64) -> f64 {
        self.at_zero - self.fall * foot
    }

    /// Whether the foot changes it at all.
    fn is_tapered(&self) -> bool {
        self.fall > 1e-9
    }

    /// The same departure counted the other way.
    fn turned(self) -> Self {
        Self { at_zero: -self.at_zero, fall: -self.fall }
    }

    /// The foot at which this falling line meets a rising one.
    fn meeting(&self, rising: &Self) -> f64 {
        let closing = self.fall - rising.fall;
        if closing > 1e-9 { (self.at_zero - rising.at_zero) / closing } else { 0.0 }
    }
}

/// A figure brought within limits; unlike `clamp` it takes limits of any kind.
fn within(figure: f64, low: f64, high: f64) -> f64 {
    figure.max(low).min(high)
}

fn better(one: Trial, other: Trial) -> Trial {
    if other.cost < one.cost { other } else { one }
}
