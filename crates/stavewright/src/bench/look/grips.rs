//! What a hand takes hold of on the drawings of a mould.

use std::f64::consts::{FRAC_1_SQRT_2, SQRT_2, TAU};

use basket::form::{Outline as _, Shape};
use basket::message::Value;
use basket::pattern::keys::Declared;
use basket::pattern::keys::mould::{
    BASE, CORNER, FULLNESS, GIRTHS, HEIGHT, LENGTH, RAYS, RIM, WIDTH, WIDTHS,
};
use basket::pattern::{FootSize, Girth, Levels, MouldForm, Outline, Pattern, Side, Units, WidthAt, ray_ends};
use basket::{Basket, Length};
use words::Words;

use super::lengths;
use crate::bench::api::{Grip, MouldPlan, Pull};

/// Places of an outline that are sent: enough for a smooth line.
const PLACES: u32 = 144;
/// No length of a mould is dragged below, in mm.
const LEAST: f64 = 10.0;
/// Nor above.
const MOST: f64 = 5000.0;
/// No girth is dragged below, in mm.
const LEAST_GIRTH: f64 = 20.0;
/// Two measured heights stay so far apart, in mm.
const APART: f64 = 2.0;
/// An oval is dragged no fuller: beyond, its corners are all but those of its rectangle.
const FULLEST: f64 = 0.75;
/// More rays than these lie too close to be dragged one by one (own choice).
const MOST_RAYS: usize = 72;

/// Whose mould it is.
pub(super) struct Hold<'a> {
    pub(super) pattern: &'a Pattern,
    pub(super) basket: &'a Basket,
    pub(super) words: &'a Words,
}

/// Grips on the side.
pub(super) fn of_side(hold: &Hold<'_>) -> Vec<Grip> {
    let mut grips: Vec<Grip> = match &hold.pattern.mould.form {
        MouldForm::Girths(girths) => (0..girths.len()).filter_map(|at| hold.girth(girths, at)).collect(),
        MouldForm::Drawn { base, rim, height, side } => hold.drawn([*base, *rim, *height], *side),
    };
    if let Levels::Widths(widths) = &hold.pattern.mould.levels {
        grips.extend(widths.iter().enumerate().map(|(index, width)| hold.width(index, width)));
    }
    grips
}

/// The mould from above, with its grips. A traced foot is drawn round the middle from which it was traced.
pub(super) fn plan(hold: &Hold<'_>) -> MouldPlan {
    let form = &hold.basket.body.form;
    let outline = &hold.pattern.mould.outline;
    let drawn = Shape::of(outline).map_or(form.outline.girth(), |shape| shape.girth());
    let scale = form.outline.girth() / drawn.max(1e-9);
    let [x, y] = middle(outline).map(|middle| middle * scale);
    let turns = || (0..PLACES).map(|place| f64::from(place) / f64::from(PLACES));
    let level = |along: Length| {
        let at = move |turn| {
            let [across, up, _] = form.at(along, turn, Length::ZERO).point;
            [across.to_mm() + x, up.to_mm() + y]
        };
        turns().map(at).collect()
    };
    MouldPlan { foot: level(Length::ZERO), top: level(form.arc()), grips: hold.of_plan(scale) }
}

/// Where the middle of a traced foot's length and width lies from that of its rays.
fn middle(outline: &Outline) -> [f64; 2] {
    let Outline::Traced(rays) = outline else { return [0.0; 2] };
    let ends: Vec<[f64; 2]> = ray_ends(rays).map(|end| end.map(Length::to_mm)).collect();
    [0, 1].map(|axis| {
        let along = || ends.iter().filter_map(|end| end.get(axis).copied());
        f64::midpoint(along().fold(f64::INFINITY, f64::min), along().fold(f64::NEG_INFINITY, f64::max))
    })
}

impl Hold<'_> {
    fn both(&self, length: Length) -> String {
        lengths::both(self.words, length)
    }

    fn said(&self, id: &str, values: &[(&str, Value)]) -> String {
        self.words.with(id, values)
    }

    /// A grip for one length.
    fn length(&self, key: &dyn Declared, length: Length, at: [f64; 2], pull: Pull) -> Grip {
        Grip { name: self.words.key(key).name, text: self.both(length), at, pulls: vec![pull] }
    }

    /// What follows a pull: so much more for each mm of the way.
    fn pull(&self, path: impl Into<String>, value: Length, way: [f64; 2], per: f64) -> Pull {
        let step = match self.pattern.units {
            Units::Inches => Length::inches(1.0 / 16.0).to_mm(),
            Units::Millimetres => 1.0,
        };
        let (value, paths) = (value.to_mm(), vec![path.into()]);
        Pull { paths, share: false, value, way, per, least: LEAST, most: MOST, step }
    }

    /// Half of how far the mould reaches along its length at a height.
    fn half(&self, height: Length) -> f64 {
        let form = &self.basket.body.form;
        form.across(form.profile.along_at_height(height), Length::ZERO).length.to_mm() / 2.0
    }

    fn girth(&self, girths: &[Girth], at: usize) -> Option<Grip> {
        let Girth { height, girth } = *girths.get(at)?;
        let path = |part: u32| format!("{}[{}][{part}]", GIRTHS.path, at + 1);
        let round = Pull { least: LEAST_GIRTH, ..self.pull(path(2), girth, [1.0, 0.0], TAU) };
        let mut pulls = vec![round];
        if let Some(below) = at.checked_sub(1).and_then(|below| girths.get(below)) {
            let above = girths.get(at + 1).map_or(MOST, |above| above.height.to_mm() - APART);
            let least = below.height.to_mm() + APART;
            pulls.push(Pull { least, most: above, ..self.pull(path(1), height, [0.0, 1.0], 1.0) });
        }
        let (round, up) = (Value::Name(self.both(girth)), Value::Name(self.both(height)));
        Some(Grip {
            name: self.said("form-grip-girth", &[("number", Value::Count(at as i64 + 1))]),
            text: self.said("form-grip-girth-at", &[("girth", round), ("height", up)]),
            at: [self.half(height), height.to_mm()],
            pulls,
        })
    }

    /// A grip on the side of the ends, to the left, where those of the long sides do not lie.
    fn width(&self, index: usize, at: &WidthAt) -> Grip {
        let path = format!("{}[{}][2]", WIDTHS.path, index + 1);
        let (across, up) = (Value::Name(self.both(at.width)), Value::Name(self.both(at.height)));
        Grip {
            name: self.said("form-grip-width", &[("number", Value::Count(index as i64 + 1))]),
            text: self.said("form-grip-top-at", &[("across", across), ("height", up)]),
            at: [-at.width.to_mm() / 2.0, at.height.to_mm()],
            pulls: vec![self.pull(path, at.width, [-1.0, 0.0], 2.0)],
        }
    }

    /// Grips at base and rim of a mould that is drawn from three figures.
    fn drawn(&self, [base, rim, height]: [Length; 3], side: Side) -> Vec<Grip> {
        let foot: Option<&dyn Declared> = match self.pattern.mould.outline {
            Outline::Round => Some(&BASE),
            Outline::Traced(_) => None,
            _ => Some(&LENGTH),
        };
        let straight = side == Side::Straight;
        let mut top = self.pull(RIM.path, rim, [1.0, 0.0], 2.0);
        if let (true, Some(foot)) = (straight, foot) {
            top.paths.push(foot.path().to_owned());
        }
        let (across, up) = (Value::Name(self.both(rim)), Value::Name(self.both(height)));
        let rise = self.pull(HEIGHT.path, height, [0.0, 1.0], 1.0);
        let of_rim = Grip {
            name: self.said("form-grip-top", &[]),
            text: self.said("form-grip-top-at", &[("across", across), ("height", up)]),
            at: [rim.to_mm() / 2.0, height.to_mm()],
            pulls: vec![top, rise],
        };
        let of_foot = foot.map(|key| {
            let mut pull = self.pull(key.path(), base, [1.0, 0.0], 2.0);
            if straight {
                pull.paths.push(RIM.path.to_owned());
            }
            self.length(key, base, [base.to_mm() / 2.0, 0.0], pull)
        });
        of_foot.into_iter().chain([of_rim]).collect()
    }

    /// Grips on the outline of the foot, which is drawn to this scale: girths that were measured give its size.
    fn of_plan(&self, scale: f64) -> Vec<Grip> {
        let grips = match &self.pattern.mould.outline {
            Outline::Round => Vec::new(),
            Outline::Oval { size, fullness } => {
                let mut grips = self.of_size(*size);
                grips.push(self.fullness(*size, *fullness));
                grips
            }
            Outline::Stadium(size) => self.of_size(*size),
            Outline::Rectangle { size, corner } => {
                let mut grips = self.of_size(*size);
                grips.push(self.corner(*size, *corner));
                grips
            }
            Outline::Traced(rays) if rays.len() > MOST_RAYS => Vec::new(),
            Outline::Traced(rays) => self.rays(rays),
        };
        let scaled = |grip: Grip| Grip {
            at: grip.at.map(|place| place * scale),
            pulls: grip.pulls.into_iter().map(|pull| Pull { per: pull.per / scale, ..pull }).collect(),
            ..grip
        };
        grips.into_iter().map(scaled).collect()
    }

    /// Grips at the ends of length and width.
    fn of_size(&self, FootSize { length, width }: FootSize) -> Vec<Grip> {
        let mut along = self.pull(LENGTH.path, length, [1.0, 0.0], 2.0);
        if let MouldForm::Drawn { side: Side::Straight, .. } = self.pattern.mould.form {
            along.paths.push(RIM.path.to_owned());
        }
        along.least = width.to_mm();
        let across = self.pull(WIDTH.path, width, [0.0, 1.0], 2.0);
        vec![
            self.length(&LENGTH, length, [length.to_mm() / 2.0, 0.0], along),
            self.length(&WIDTH, width, [0.0, width.to_mm() / 2.0], Pull { most: length.to_mm(), ..across }),
        ]
    }

    /// A grip where the oval crosses the diagonal of its rectangle.
    fn fullness(&self, size: FootSize, fullness: f64) -> Grip {
        let corner = [size.length, size.width].map(|side| side.to_mm() / 2.0);
        let way = libm::hypot(corner[0], corner[1]).max(1e-9);
        let reach = FRAC_1_SQRT_2 + fullness * (1.0 - FRAC_1_SQRT_2);
        let pull = Pull {
            paths: vec![FULLNESS.path.to_owned()],
            share: true,
            value: fullness,
            way: corner.map(|side| side / way),
            per: 1.0 / (way * (1.0 - FRAC_1_SQRT_2)),
            least: 0.0,
            most: FULLEST,
            step: 0.01,
        };
        Grip {
            name: self.words.key(&FULLNESS).name,
            text: self.words.value(&Value::Percent(fullness)),
            at: corner.map(|side| side * reach),
            pulls: vec![pull],
        }
    }

    /// A grip on the middle of a rounded corner.
    fn corner(&self, size: FootSize, corner: Length) -> Grip {
        let inward = corner.to_mm() * (1.0 - FRAC_1_SQRT_2);
        let at = [size.length, size.width].map(|side| side.to_mm() / 2.0 - inward);
        // Moved outward along the diagonal, the middle of the arc leaves the corner's tip so much nearer.
        let pull = self.pull(CORNER.path, corner, [FRAC_1_SQRT_2; 2], -1.0 / (SQRT_2 - 1.0));
        self.length(&CORNER, corner, at, Pull { least: 1.0, most: size.width.to_mm() / 2.0, ..pull })
    }

    fn rays(&self, rays: &[Length]) -> Vec<Grip> {
        let count = rays.len();
        let one = |(index, (ray, end)): (usize, (&Length, [Length; 2]))| {
            let at = end.map(Length::to_mm);
            let long = ray.to_mm().max(1e-9);
            let number = Value::Count(index as i64 + 1);
            Grip {
                name: self
                    .said("form-grip-ray", &[("number", number), ("count", Value::Count(count as i64))]),
                text: self.both(*ray),
                at,
                pulls: vec![self.pull(
                    format!("{}[{}]", RAYS.path, index + 1),
                    *ray,
                    at.map(|part| part / long),
                    1.0,
                )],
            }
        };
        rays.iter().zip(ray_ends(rays)).enumerate().map(one).collect()
    }
}
