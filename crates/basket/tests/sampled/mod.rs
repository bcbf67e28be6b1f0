//! Baskets with handles, and their rim and wall as a condition that a place in them meets.

use basket::stock::{Kind, Material};
use basket::{Basket, Catalogue, Hand, Length, assemble};

/// What is varied; lengths in millimetres.
pub(crate) struct Case {
    pub(crate) mould: [&'static str; 4],
    pub(crate) stave: &'static str,
    pub(crate) hoop: &'static str,
    pub(crate) filler: &'static str,
    pub(crate) crossed: bool,
    pub(crate) ears: [&'static str; 4],
    pub(crate) handle: &'static str,
}

pub(crate) const CONE: [&str; 4] = ["180 mm", "200 mm", "120 mm", "cone"];
pub(crate) const USUAL: Case = Case {
    mould: CONE,
    stave: "flat oval reed 1/4 in",
    hoop: "half round reed 3/8 in",
    filler: "cane common",
    crossed: false,
    ears: ["on-staves", "12 mm", "1.6 mm", "16 mm"],
    handle: "",
};

pub(crate) fn basket(case: &Case) -> Basket {
    let [base, rim, height, side] = case.mould;
    let [placing, width, thickness, hole] = case.ears;
    let (stave, hoop, filler, handle) = (case.stave, case.hoop, case.filler, case.handle);
    let filler = if filler == "none" {
        "filler = \"none\"".into()
    } else {
        format!("filler = {{ stock = \"{filler}\" }}")
    };
    let style = if case.crossed { "crossed" } else { "single" };
    let text = format!(
        r#"title = "Sampled"
units = "mm"
{filler}
[mould]
base = "{base}"
rim = "{rim}"
height = "{height}"
side = "{side}"
[staves]
stock = "{stave}"
[weave]
courses = [{{ weave = "plain", weaver = "cane medium", until = "14 mm below mould top" }}]
[rim]
stock = "{hoop}"
[lashing]
weaver = "cane fine"
style = "{style}"
[ears]
material = "brass"
placing = "{placing}"
width = "{width}"
thickness = "{thickness}"
hole = "{hole}"
[handle]
kind = "swing"
{handle}
"#
    );
    let catalogue = Catalogue::built_in();
    let pattern =
        basket::pattern::read(&text, catalogue).unwrap_or_else(|wrong| panic!("{wrong:#?}\n{text}"));
    assemble(&pattern, catalogue, &Hand::USUAL)
}

/// The wall as an axis of the section and its inverse: how far out from the staves' inner face and how
/// far along the wall a place lies.
enum Wall {
    /// From this radius at the foot, leaning out by the angle with this sine and cosine.
    Cone { base: f64, sin: f64, cos: f64 },
    /// An arc about this radius and height, of this radius; along is measured from this angle below level.
    Bowl { centre: [f64; 2], radius: f64, from: f64 },
}

impl Wall {
    fn of(case: &Case) -> Self {
        let mm = |text: &str| text.trim_end_matches(" mm").parse::<f64>().expect("a length in mm");
        let [base, rim, height, side] = case.mould;
        let (base, height) = (mm(base) / 2.0, mm(height));
        let wider = if side == "straight" { 0.0 } else { mm(rim) / 2.0 - base };
        if side == "bowl" {
            let radius = (wider * wider + height * height) / (2.0 * wider);
            let centre = [base + wider - radius, height];
            return Self::Bowl { centre, radius, from: (height / radius).asin() };
        }
        let slope = wider.hypot(height);
        Self::Cone { base, sin: wider / slope, cos: height / slope }
    }

    /// How far out from the wall's inner face, and how far along it.
    fn out_and_along(&self, radius: f64, height: f64) -> [f64; 2] {
        match self {
            Self::Cone { base, sin, cos } => {
                let off = radius - base;
                [off * cos - height * sin, off * sin + height * cos]
            }
            Self::Bowl { centre: [across, up], radius: arc, from } => {
                let (across, up) = (radius - across, height - up);
                [across.hypot(up) - arc, (up.atan2(across) + from) * arc]
            }
        }
    }

    /// Height of the wall's inner face so far along.
    fn height(&self, along: f64) -> f64 {
        match self {
            Self::Cone { cos, .. } => along * cos,
            Self::Bowl { centre, radius, from } => centre[1] + radius * (along / radius - from).sin(),
        }
    }
}

/// How far the section of a stock reaches in a direction: its flat lies at 0, its middle at 0.
fn reach(stock: &Material, [across, high]: [f64; 2]) -> f64 {
    let (half, thick) = (stock.width.to_mm() / 2.0, stock.thickness.to_mm());
    let flat = half * across.abs();
    match stock.kind {
        Kind::HalfRoundReed if high > 0.0 => (half * across).hypot(thick * high),
        Kind::RoundReed => thick / 2.0 * high + (half * across).hypot(thick / 2.0 * high),
        Kind::ChairCane | Kind::FlatOvalReed if high > 0.0 => {
            let at = (half * across / (thick * high)).clamp(-1.0, 1.0);
            (half * at * across + thick * (1.0 - at * at / 2.0) * high).max(flat)
        }
        Kind::FlatReed => flat + thick * high.max(0.0),
        Kind::HalfRoundReed | Kind::ChairCane | Kind::FlatOvalReed => flat,
        other => panic!("no section of {other:?}"),
    }
}

/// Everything that a bail can meet.
pub(crate) struct Solid<'a> {
    basket: &'a Basket,
    wall: Wall,
    /// Directions in the section, and how far the bare and the lashed rim reach in them.
    reach: Vec<([f64; 2], f64, f64)>,
    pivots: f64,
}

impl<'a> Solid<'a> {
    pub(crate) fn of(case: &Case, basket: &'a Basket) -> Self {
        let (rim, wall) = (basket.body.rim(), Wall::of(case));
        let stave = basket.body.uprights().thickness.to_mm();
        let strand = basket.body.lashing().expect("it is lashed").weaver.thickness.to_mm()
            * if case.crossed { 2.0 } else { 1.0 };
        let height = rim.height.to_mm();
        let reach = (0..360).step_by(3).map(|degree| {
            let (up, out) = f64::from(degree).to_radians().sin_cos();
            let outer = out * stave + up * height / 2.0 + reach(&rim.outer.stock, [up, out]);
            let inner = up * height / 2.0 + reach(&rim.inner.stock, [up, -out]);
            let bare = outer.max(inner);
            let filler = basket.body.filler().map_or(f64::NEG_INFINITY, |filler| {
                out * stave / 2.0 + up * height + self::reach(&filler.stock, [out, up])
            });
            ([out, up], bare, bare.max(filler) + strand)
        });
        let top = wall.height((rim.along + rim.height).to_mm());
        let hole = basket.ears.as_ref().expect("it has ears").hole_height.to_mm();
        Self { basket, reach: reach.collect(), pivots: top + hole, wall }
    }

    /// Whether a place on this radius, so far below the pivots and aside of their line, is in wood or cane.
    pub(crate) fn holds(&self, radius: f64, below: f64, aside: f64) -> bool {
        let body = &self.basket.body;
        let (rim, stave) = (body.rim(), body.uprights().thickness.to_mm());
        // The staves stand level off the mould, by so much so far along.
        let standing = &body.uprights().standing;
        let along = |off: f64| self.wall.out_and_along(radius - off, self.pivots - below)[1];
        let off = standing.at(Length::mm(along(standing.at(rim.along).to_mm()))).to_mm();
        let [out, along] = self.wall.out_and_along(radius - off, self.pivots - below);
        let (low, height) = (rim.along.to_mm(), rim.height.to_mm());
        let up = along - low;
        if up < 0.0 && along > 0.0 {
            let course = &body.weave.courses[0];
            let woven = (course.from.to_mm()..course.to.to_mm()).contains(&along);
            let weaver = if woven { course.weaver.thickness.to_mm() } else { 0.0 };
            if out > -weaver && out < stave + weaver {
                return true;
            }
        }
        if !(-8.0..height + 8.0).contains(&up) || out.abs() > 20.0 {
            return false;
        }
        let ear = self.basket.ears.as_ref().expect("it has ears");
        let beside = aside.abs() > ear.width.to_mm() / 2.0;
        self.reach
            .iter()
            .all(|([x, y], bare, lashed)| out * x + up * y <= if beside { *lashed } else { *bare })
    }
}
