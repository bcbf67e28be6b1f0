//! How good a count and a stock are for a basket.
//!
//! The penalty is a sum of parts, each measured in wanted gaps or as a share; its weights are our
//! own judgement: what cannot be woven weighs most, then what will show, then what costs work.

use super::foot::{Bend, UNSEEN};
use super::formulas::touch_width;
use super::length::LengthParts;
use super::needs::Needs;
use super::taper::{Taper, Task, least_foot};
use super::wall::StandingRoom;
use crate::base::Base;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::stock::Material;

/// Penalty of a count on which the weave does not lock.
const NO_LOCK: f64 = 100.0;
/// Penalty of each course that holds on a count but does not run as wanted.
const AMISS: f64 = 20.0;
/// Penalty of stock that is narrower than the width the pattern asks.
const TOO_NARROW: f64 = 50.0;
/// Least penalty of feet that overlap in the groove.
const FEET_OVERLAP: f64 = 10.0;
/// Least penalty of a stave that does not go into the groove.
const TOO_THICK: f64 = 5.0;
/// Penalty of a wanted gap's width by which a stave stands off the mould at the foot, and the most.
const STANDS_OFF: (f64, f64) = (0.25, 2.0);
/// Least penalty of a gap that the weaver does not pass, and of a foot that is too thin.
const POOR: f64 = 1.0;
/// Penalty of each stave to be shaped.
const WORK: f64 = 0.004;
/// Penalty of an odd count where two ears should face each other.
const ODD_EARS: f64 = 0.01;
/// Measures are compared with this much allowance.
const HAIR: Length = Length::mm(0.01);

/// What all candidates are judged by.
#[derive(Clone, Copy)]
pub(super) struct Judge<'a> {
    pub(super) base: &'a Base,
    pub(super) needs: &'a Needs<'a>,
    pub(super) gap: Length,
}

/// A stock, how it bends at the foot, and the wall as it meets it from there.
pub(super) struct Offer<'a> {
    pub(super) stock: &'a Material,
    pub(super) bend: Bend,
    pub(super) parts: LengthParts,
    pub(super) wall: StandingRoom,
}

/// A count and a stock before a taper is sought for them.
#[derive(Clone, Copy)]
pub(super) struct Entry<'a> {
    pub(super) count: u32,
    pub(super) offer: &'a Offer<'a>,
    pub(super) width: Length,
}

/// The same with its taper, its gaps and what it costs.
#[derive(Clone, Copy)]
pub(super) struct Judged<'a> {
    pub(super) entry: Entry<'a>,
    pub(super) taper: Taper,
    pub(super) gap_rim: Length,
    pub(super) gap_rim_wall: Length,
    pub(super) narrowest: Length,
    pub(super) widest: Length,
    pub(super) penalty: f64,
}

impl<'a> Judge<'a> {
    pub(super) fn task(&self, entry: &Entry<'a>) -> Task<'a> {
        Task {
            wall: &entry.offer.wall,
            count: entry.count,
            width: entry.width.to_mm(),
            // A gap is wanted on the mould's own girth; the staves stand on a longer one.
            gap: self.gap.to_mm() + entry.offer.wall.rim_more / f64::from(entry.count.max(1)),
            least_gap: self.needs.weaver.to_mm(),
        }
    }

    /// A penalty that no taper can better.
    pub(super) fn at_least(&self, entry: &Entry<'a>) -> f64 {
        let fit = Length::mm(self.task(entry).worst_ideal()) / self.unit();
        fit + self.untapered(entry).iter().map(|part| part.weight).sum::<f64>()
    }

    /// Judges an entry with a given taper, or with the one that is chosen.
    pub(super) fn judged(&self, entry: Entry<'a>, given: Option<(Length, Length)>) -> Judged<'a> {
        let task = self.task(&entry);
        let taper = given.map_or_else(|| task.chosen(), |(from, foot)| task.measured(from, foot));
        let gaps = task
            .pitches()
            .map(|(along, pitch)| pitch - task.width_at(along, taper.from.to_mm(), taper.foot.to_mm()));
        let (narrowest, widest, rim) = gaps
            .fold((f64::INFINITY, f64::NEG_INFINITY, 0.0), |(least, most, _), gap| {
                (gap.min(least), gap.max(most), gap)
            });
        let mut judged = Judged {
            entry,
            taper,
            gap_rim: Length::mm(rim - entry.offer.wall.rim_more / f64::from(entry.count.max(1))),
            gap_rim_wall: Length::mm(rim),
            narrowest: Length::mm(narrowest),
            widest: Length::mm(widest),
            penalty: 0.0,
        };
        judged.penalty = self.parts(&judged).iter().map(|part| part.weight).sum();
        judged
    }

    /// What speaks for and against, most weighty first.
    pub(super) fn reasons(&self, judged: &Judged<'_>) -> Vec<Message> {
        let mut parts = self.parts(judged);
        parts.sort_by(|one, other| other.weight.total_cmp(&one.weight));
        parts.into_iter().filter_map(|part| part.reason).collect()
    }

    fn parts(&self, judged: &Judged<'_>) -> Vec<Penalty> {
        let tapered = [self.fit(judged), self.passes(judged), self.foot(judged)];
        self.untapered(&judged.entry).into_iter().chain(tapered).collect()
    }

    /// What does not depend on the taper.
    fn untapered(&self, entry: &Entry<'_>) -> [Penalty; 6] {
        [
            self.lock(entry),
            stock_width(entry),
            self.groove(entry),
            self.bend(entry),
            self.ears(entry),
            work(entry),
        ]
    }

    /// The wanted gap, by which departures are measured.
    fn unit(&self) -> Length {
        self.gap.max(Length::mm(0.1))
    }

    /// A course that does not hold is no weaving; one that does not run as wanted shows.
    fn lock(&self, entry: &Entry<'_>) -> Penalty {
        let running = (self.needs.running)(entry.count);
        let amiss = running.courses - running.run;
        let (weight, id) = match (running.stops(), amiss) {
            (true, _) => (NO_LOCK, "stave-reason-no-lock"),
            (false, 0) => (0.0, "stave-reason-lock"),
            (false, amiss) => (AMISS * f64::from(amiss), "stave-reason-some-run"),
        };
        Penalty::new(weight, id, |message| {
            message.with("count", entry.count).with("amiss", amiss).with("courses", running.courses)
        })
    }

    fn groove(&self, entry: &Entry<'_>) -> Penalty {
        let (thickness, groove) = (entry.offer.stock.thickness, self.base.groove_width.max(Length::mm(0.1)));
        let off = (thickness - groove) / groove;
        let (weight, id) = if thickness > groove + HAIR {
            (TOO_THICK + 10.0 * off, "stave-reason-groove-tight")
        } else if off < -0.25 {
            (-off / 2.0, "stave-reason-groove-loose")
        } else {
            (-off.min(0.0) / 2.0, "stave-reason-groove-fits")
        };
        Penalty::new(weight, id, |message| {
            message.with("thickness", thickness).with("groove", self.base.groove_width)
        })
    }

    fn bend(&self, entry: &Entry<'_>) -> Penalty {
        let bend = &entry.offer.bend;
        if bend.stand_off <= UNSEEN {
            return Penalty::SILENT;
        }
        let (each, most) = STANDS_OFF;
        let weight = (each * (bend.stand_off / self.unit())).min(most);
        Penalty::new(weight, "stave-reason-too-stiff", |message| {
            message.with("off", bend.stand_off).with("radius", bend.least_radius)
        })
    }

    fn ears(&self, entry: &Entry<'_>) -> Penalty {
        if !self.needs.ears || entry.count.is_multiple_of(2) {
            return Penalty::SILENT;
        }
        Penalty::new(ODD_EARS, "stave-reason-ears", |message| message.with("count", entry.count))
    }

    /// The worst gap over the whole height and the gap at the rim, where the eye looks first.
    fn fit(&self, judged: &Judged<'_>) -> Penalty {
        let off = (judged.gap_rim - self.gap).abs() + judged.taper.worst;
        Penalty::new(off / self.unit(), "stave-reason-gap", |message| {
            message
                .with("wanted", self.gap)
                .with("rim", judged.gap_rim)
                .with("over", Value::Span(judged.narrowest, judged.widest))
        })
    }

    fn passes(&self, judged: &Judged<'_>) -> Penalty {
        let weaver = self.needs.weaver;
        if judged.narrowest >= weaver - HAIR {
            return Penalty::SILENT;
        }
        let weight = POOR + 4.0 * ((weaver - judged.narrowest) / weaver.max(Length::mm(0.1)));
        Penalty::new(weight, "stave-reason-weaver-jams", |message| {
            message.with("narrowest", judged.narrowest).with("weaver", weaver)
        })
    }

    fn foot(&self, judged: &Judged<'_>) -> Penalty {
        let foot = judged.taper.foot;
        let touch = touch_width(self.base.crowded_radius(), judged.entry.count);
        let least = least_foot(judged.entry.width);
        if foot > touch + HAIR {
            let weight = FEET_OVERLAP + 10.0 * ((foot - touch) / foot);
            Penalty::new(weight, "stave-reason-feet-overlap", |message| {
                message.with("foot", foot).with("touch", touch)
            })
        } else if foot < least - HAIR {
            let weight = POOR + 5.0 * ((least - foot) / least);
            Penalty::new(weight, "stave-reason-foot-thin", |message| {
                message.with("foot", foot).with("least", least)
            })
        } else {
            Penalty::SILENT
        }
    }
}

fn stock_width(entry: &Entry<'_>) -> Penalty {
    if entry.width <= entry.offer.stock.width + HAIR {
        return Penalty::SILENT;
    }
    Penalty::new(TOO_NARROW, "stave-reason-stock-narrow", |message| {
        message.with("width", entry.width).with("stock", entry.offer.stock.width)
    })
}

fn work(entry: &Entry<'_>) -> Penalty {
    let weight = WORK * f64::from(entry.count);
    Penalty::new(weight, "stave-reason-work", |message| message.with("count", Value::from(entry.count)))
}

/// A penalty and the sentence for it.
struct Penalty {
    weight: f64,
    reason: Option<Message>,
}

impl Penalty {
    /// Nothing to say.
    const SILENT: Self = Self { weight: 0.0, reason: None };

    fn new(weight: f64, id: &'static str, fill: impl FnOnce(Message) -> Message) -> Self {
        Self { weight, reason: Some(fill(Message::new(id))) }
    }
}
