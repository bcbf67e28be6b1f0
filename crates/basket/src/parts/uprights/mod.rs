//! What stands round the wall, whatever its foot: all that weaving, edge and fittings ask of it.

mod path;
mod wider;

pub use path::Path;
pub use wider::Wider;

use crate::form::{Form, WallPoint};
use crate::measure::{Angle, Length};
use crate::stock::Kind;

/// Keeps divisions by a length finite.
const LEAST: Length = Length::mm(1e-6);

/// How far the inner faces of uprights stand off the form, level: places along the wall, between which it
/// changes evenly. Where rows are woven every upright has weaver behind it in half of them, and stands as far
/// off as the weaver is thick.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Standing {
    places: Vec<(Length, Length)>,
}

impl Standing {
    /// Places along the wall, upward, with the distance off the form there.
    pub const fn new(places: Vec<(Length, Length)>) -> Self {
        Self { places }
    }

    /// The distance off the form this far along; beyond either end it is that of the end.
    pub fn at(&self, along: Length) -> Length {
        let after = self.places.partition_point(|(place, _)| *place <= along);
        let place = |index: usize| self.places.get(index).copied();
        match (after.checked_sub(1).and_then(place), place(after)) {
            (Some((from, low)), Some((to, high))) => {
                low + (high - low) * ((along - from) / (to - from).max(LEAST)).clamp(0.0, 1.0)
            }
            (Some((_, end)), None) | (None, Some((_, end))) => end,
            (None, None) => Length::ZERO,
        }
    }

    /// The places of the table.
    pub fn places(&self) -> impl Iterator<Item = Length> + '_ {
        self.places.iter().map(|(place, _)| *place)
    }
}

/// The uprights of a wall: strips of one thickness, evenly spread at the foot, wider from there to a place on
/// the wall and of full width above it.
#[derive(Clone, Debug, PartialEq)]
pub struct Uprights {
    /// What they are cut from; decides the shape of their section.
    pub kind: Kind,
    /// How many.
    pub count: u32,
    /// Thickness.
    pub thickness: Length,
    /// Full width.
    pub width: Length,
    /// Width at the foot.
    pub foot: Length,
    /// Where the foot ends, along the wall: negative.
    pub foot_along: Length,
    /// Where full width begins, along the wall.
    pub full_from: Length,
    /// How far their inner faces stand off the form.
    pub standing: Standing,
    /// Those that are wider than the others, if there are any.
    pub wider: Option<Wider>,
    /// The way of each up the wall; empty where all keep to the places of their feet.
    pub paths: Vec<Path>,
    /// How far along the wall these ways are known.
    pub paths_to: Length,
}

impl Uprights {
    /// Where the foot of an upright (numbered from 1) stands, as a share of the way round.
    pub fn turn(&self, number: u32) -> f64 {
        f64::from(number.saturating_sub(1)) / f64::from(self.count.max(1))
    }

    /// Where it stands this far along the wall, as a share of the way round the foot. It may go below 0 or beyond
    /// 1, so that it goes on evenly from the place of the foot.
    pub fn turn_at(&self, number: u32, along: Length) -> f64 {
        let aside = self.path(number).map_or(0.0, |path| path.aside_at(along / self.paths_to.max(LEAST)));
        self.turn(number) + aside
    }

    /// The same for a place between uprights, told as a share of the round of feet: as far between both
    /// neighbours as it is between their feet.
    pub fn turn_between(&self, share: f64, along: Length) -> f64 {
        if self.paths.is_empty() {
            return share;
        }
        let place = share.rem_euclid(1.0) * f64::from(self.count.max(1));
        let before = place as u32;
        let aside = |index: u32| {
            let number = index % self.count.max(1) + 1;
            self.turn_at(number, along) - self.turn(number)
        };
        let (from, to) = (aside(before), aside(before + 1));
        share + from + (to - from) * (place - f64::from(before))
    }

    /// The way of an upright, where it does not keep to its place in the round.
    pub fn path(&self, number: u32) -> Option<&Path> {
        self.paths.get(number.checked_sub(1)? as usize)
    }

    /// The numbers of those whose way is of a sort.
    pub fn numbers_of(&self, is_so: impl Fn(&Path) -> bool) -> Vec<u32> {
        self.paths.iter().zip(1..).filter(|(path, _)| is_so(path)).map(|(_, number)| number).collect()
    }

    /// How far the one leans that leans most, to either side.
    pub fn most_lean(&self) -> Angle {
        let leans = self.paths.iter().map(|path| path.lean.to_radians().abs());
        Angle::radians(leans.fold(0.0, f64::max))
    }

    /// The upright whose foot is nearest to a share of the way round.
    pub fn nearest(&self, turn: f64) -> u32 {
        let count = f64::from(self.count.max(1));
        let index = (turn.rem_euclid(1.0) * count).round() % count;
        index as u32 + 1
    }

    /// The uprights nearest to the quarters of the way round. Marking them first halves the way over which
    /// small errors add up (the spread of a sum of independent errors grows with the root of their number).
    pub fn quarters(&self) -> [u32; 4] {
        [0.0, 0.25, 0.5, 0.75].map(|turn| self.nearest(turn))
    }

    /// Width of an upright this far along the wall; of one that is no wider than most.
    pub fn width_at(&self, along: Length) -> Length {
        self.tapered(self.width, along)
    }

    /// Full width of the upright of this number.
    pub fn full_width(&self, number: u32) -> Length {
        let wider = self.wider.as_ref().filter(|wider| wider.numbers.binary_search(&number).is_ok());
        wider.map_or(self.width, |wider| wider.width)
    }

    /// Width of the upright of this number this far along the wall.
    pub fn width_of(&self, number: u32, along: Length) -> Length {
        self.tapered(self.full_width(number), along)
    }

    /// Width, this far along the wall, of an upright of a full width: all have one foot.
    pub fn tapered(&self, full: Length, along: Length) -> Length {
        let share = (along - self.foot_along) / (self.full_from - self.foot_along).max(LEAST);
        self.foot + (full - self.foot) * share.clamp(0.0, 1.0)
    }

    /// How far the middle of their thickness stands off the form this far along the wall.
    pub fn middle(&self, along: Length) -> Length {
        self.standing.at(along) + self.thickness / 2.0
    }

    /// Way once round on the middle of the uprights.
    pub fn girth(&self, form: &Form, along: Length) -> Length {
        form.girth(along, self.middle(along))
    }

    /// The gaps along the flattest part of the wall, and those round its tightest, this far along: equal at the
    /// foot, the way from upright to upright grows as the level there does. Where uprights have ways or
    /// widths of their own, the least and the widest.
    pub fn gaps_between(&self, form: &Form, along: Length) -> [Length; 2] {
        if !self.paths.is_empty() || self.wider.is_some() {
            let gaps = self.each_gap(form, along);
            let most = gaps.iter().copied().fold(Length::ZERO, Length::max);
            return [gaps.iter().copied().reduce(Length::min).unwrap_or(Length::ZERO), most];
        }
        let foot = form.girth_base() / f64::from(self.count.max(1));
        let level = form.level_at(along).grown(self.middle(along));
        level.stretched().map(|stretched| foot * stretched - self.width_at(along))
    }

    /// The gap after each upright, this far along: along the wall as it bends there.
    pub fn each_gap(&self, form: &Form, along: Length) -> Vec<Length> {
        let outward = self.middle(along);
        let places: Vec<(WallPoint, Length)> = (1..=self.count)
            .map(|number| {
                let place = form.at(along, self.turn_at(number, along), outward);
                (place, self.width_of(number, along) / 2.0)
            })
            .collect();
        let next = places.iter().skip(1).chain(places.first());
        places
            .iter()
            .zip(next)
            .map(|((from, half), (to, other))| from.way_round_to(to) - *half - *other)
            .collect()
    }

    /// Way from the middle of one upright to that of the next.
    pub fn pitch(&self, form: &Form, along: Length) -> Length {
        self.girth(form, along) / f64::from(self.count.max(1))
    }
}

/// The short way from one place in the round to another in turns, positive toward higher numbers.
pub(crate) fn short_way(from: f64, to: f64) -> f64 {
    (to - from) - (to - from).round()
}
