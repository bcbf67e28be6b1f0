//! The shape of a vessel's wall, and what holds it while it is woven.
//!
//! Whoever walks round the wall asks the form, so that an outline of another shape changes nothing else.

mod across;
mod arcs;
mod capacity;
mod curve;
mod layers;
mod level;
mod levels;
mod mould;
mod off;
mod outline;
mod oval;
mod pchip;
mod profile;
mod shape;
mod side;
mod undercut;
mod way;

use std::f64::consts::TAU;

pub use across::Across;
pub use arcs::Arcs;
pub use capacity::litres_to_us_quarts;
pub use layers::Layer;
pub use level::{Chord, Level};
pub use levels::Levels;
pub use mould::Mould;
pub use off::Off;
pub use outline::{Circle, Outline, OutlinePoint};
pub use oval::Oval;
pub(crate) use profile::EDGE;
pub use profile::{BOARD, Profile, Spot};
pub use shape::Shape;
pub use undercut::Undercut;

use self::capacity::MM3_PER_LITRE;
use self::levels::Section;
use crate::measure::Length;
use crate::pattern::MouldPattern;

/// The shape of a wall: an outline seen from above and a profile seen from the side.
#[derive(Clone, Debug, PartialEq)]
pub struct Form {
    /// The outline of the foot.
    pub outline: Shape,
    /// The side: at each way along the wall its height, and its girth divided by 2π.
    pub profile: Profile,
    /// How its levels follow from the foot.
    pub levels: Levels,
    /// What holds the wall while it is woven.
    pub held: Held,
}

/// What holds a wall while it is woven.
#[derive(Clone, Debug, PartialEq)]
pub enum Held {
    /// A wooden mould.
    Mould(Mould),
}

/// A place on the wall, or so far out from it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallPoint {
    /// Across, along and up from the middle of the foot.
    pub point: [Length; 3],
    /// Away from the wall, square to it; of length 1.
    pub outward: [f64; 3],
    /// Up along the wall; of length 1.
    pub along: [f64; 3],
    /// One over the radius round the wall at this level, in 1/mm.
    pub curvature: f64,
}

impl Form {
    /// The form that a pattern's mould gives.
    pub fn on_mould(pattern: &MouldPattern) -> Self {
        let drawn = Shape::of(&pattern.outline);
        let levels = Levels::of(&pattern.levels, drawn.as_ref());
        let profile = side::side(pattern, drawn.as_ref(), &levels);
        let girth = profile.at(Length::ZERO).radius.to_mm();
        let outline = match drawn {
            Some(drawn) => drawn.of_girth(girth * TAU),
            None => Shape::Circle(Circle { radius: girth }),
        };
        let held = Held::Mould(Mould::of((&outline, &profile, &levels), pattern.pieces));
        Self { outline, profile, levels, held }
    }

    /// The mould on which it is woven.
    pub fn mould(&self) -> &Mould {
        let Held::Mould(mould) = &self.held;
        mould
    }

    /// Height from foot to top.
    pub fn height(&self) -> Length {
        self.profile.height()
    }

    /// Way along the wall from foot to top.
    pub fn arc(&self) -> Length {
        self.profile.length()
    }

    /// Girth this far along, on a surface `outward` from the form, level.
    pub fn girth(&self, along: Length, outward: Length) -> Length {
        (self.profile.at(along).radius + outward).max(Length::ZERO) * TAU
    }

    /// Girth at the foot.
    pub fn girth_base(&self) -> Length {
        self.girth(Length::ZERO, Length::ZERO)
    }

    /// Girth at the top.
    pub fn girth_top(&self) -> Length {
        self.girth(self.arc(), Length::ZERO)
    }

    /// Largest girth.
    pub fn girth_widest(&self) -> Length {
        self.profile.widest() * TAU
    }

    /// Where it is narrowest up to a place along the wall; beyond the form's end the wall runs on straight.
    pub fn narrowest(&self, to: Length) -> Spot {
        let end = self.profile.at(to);
        let below = self.profile.turning_spots().filter(|spot| spot.along <= to);
        below.fold(end, |least, spot| if spot.radius < least.radius { spot } else { least })
    }

    /// What it holds, in litres.
    pub fn litres(&self) -> f64 {
        let short = self.levels.short_of_round(&self.outline, &self.profile);
        (self.profile.volume_mm3() - short) / MM3_PER_LITRE
    }

    /// How far it narrows again above a wider place, below this place along the wall.
    pub fn undercut_below(&self, along: Length) -> Undercut {
        Undercut::below((&self.outline, &self.profile, &self.levels), along)
    }

    /// The level at a height above the foot whose girth over 2π is `radius`: on the form itself, or so far out
    /// or in from it. Below the foot levels have its shape.
    pub fn level(&self, height: Length, radius: Length) -> Level<'_> {
        let own = || self.profile.at(self.profile.along_at_height(height.max(Length::ZERO)));
        let section = if self.levels == Levels::Even { Section::EVEN } else { self.section(&own()) };
        Level::new(&self.outline, section, radius)
    }

    /// Its own level this far along.
    pub fn level_at(&self, along: Length) -> Level<'_> {
        self.level_on(&self.profile.at(along))
    }

    fn level_on(&self, spot: &Spot) -> Level<'_> {
        Level::new(&self.outline, self.section(spot), spot.radius)
    }

    /// The shape of the level at a place of its side.
    fn section(&self, spot: &Spot) -> Section {
        self.levels.section(spot, self.outline.girth() / TAU)
    }

    /// How far it reaches from edge to edge this far along, on a surface `outward` from it, level.
    pub fn across(&self, along: Length, outward: Length) -> Across {
        let level = self.level_at(along);
        level.grown(outward.max(-level.radius())).across()
    }

    /// The place this far along and so far round, `outward` from the form, level.
    pub fn at(&self, along: Length, turn: f64, outward: Length) -> WallPoint {
        let spot = self.profile.at(along);
        let foot = self.outline.at(turn);
        let level = self.level_on(&spot).grown(outward);
        let [x, y] = level.of_foot(&foot);
        let [away_x, away_y] = foot.outward;
        let [sin, cos] = self.levels.rise(&spot, &foot, self.outline.girth() / TAU);
        WallPoint {
            point: [Length::mm(x), Length::mm(y), spot.height],
            outward: [away_x * cos, away_y * cos, -sin],
            along: [away_x * sin, away_y * sin, cos],
            curvature: level.curvature_of(&foot),
        }
    }

    /// Smallest radius round the wall this far along, on a surface `outward` from the form.
    pub fn tightest(&self, along: Length, outward: Length) -> Length {
        self.level_at(along).tightest() + outward
    }
}
