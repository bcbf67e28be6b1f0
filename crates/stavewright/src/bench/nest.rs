//! The pattern in several sizes, each basket standing in the next.

use std::collections::BTreeMap;

use axum::http::StatusCode;
use basket::findings::in_a_nest;
use basket::message::{Message, Value};
use basket::pattern::{Pattern, Units};
use basket::sizes::{Nest, across, changes, serving, to_the_mark};
use basket::{Basket, Finding, Length};
use planning::kits::{Kits, Student};
use sheets::Templates;
use sheets::workshop::{Leaf, Size, Sizes, sizes};
use words::{FindingText, Words};

use super::api::{Edit, NestBasket, NestRequest, NestRoom, NestShown};
use super::compute::{Shop, draft, language, paper, read, words};
use super::plans::leaf;
use super::refusal::Refusal;
use super::text::{edit, value_of};

/// More sizes at once are a mistake.
const MOST: usize = 12;
/// Nobody weaves over a smaller mould, in mm.
const LEAST: f64 = 20.0;
/// Places of a wall that are sent.
const PLACES: u32 = 40;

/// The set, worked out.
struct Set {
    sizes: Sizes,
    /// How each stands in the next, and what is found where it has too little room.
    nests: Vec<(Nest, Option<Finding>)>,
    title: String,
    words: Words,
}

/// The set as the page shows it.
pub(crate) fn nest(request: &NestRequest, shop: Shop<'_>) -> Result<NestShown, Refusal> {
    told(request, || {
        let set = Set::of(request, shop)?;
        Ok(NestShown { baskets: set.baskets(), rooms: set.rooms(), leaf: leaf("sizes", set.leaf()) })
    })
}

/// The set as a sheet to print.
pub(crate) fn sheet(request: &NestRequest, shop: Shop<'_>) -> Result<Vec<u8>, Refusal> {
    told(request, || {
        let set = Set::of(request, shop)?;
        let pdf = set.leaf().pdf(&set.words, paper(None, &set.words), &Templates::default());
        pdf.map_err(|_| Refusal::broken())
    })
}

/// What is refused, in the reader's language.
fn told<T>(request: &NestRequest, work: impl FnOnce() -> Result<T, Refusal>) -> Result<T, Refusal> {
    let language = language(request.language.as_deref())?;
    work().map_err(|refusal| refusal.told(language))
}

impl Set {
    fn of(request: &NestRequest, shop: Shop<'_>) -> Result<Self, Refusal> {
        let pattern = read(&request.source, shop).map_err(Refusal::misread)?;
        let words = words(request.language.as_deref(), request.units, pattern.units)?;
        let wanted = length(&request.clearance, "clearance", pattern.units)?;
        // Where semicolons part them, a comma is a decimal one.
        let parted = if request.sizes.contains(';') { ';' } else { ',' };
        let mut tops = request
            .sizes
            .split(parted)
            .filter(|size| !size.trim().is_empty())
            .map(|size| length(size, "sizes", pattern.units))
            .collect::<Result<Vec<Length>, Refusal>>()?;
        tops.sort_by(|a, b| a.to_mm().total_cmp(&b.to_mm()));
        tops.dedup();
        if tops.is_empty() || tops.len() > MOST {
            let message = Message::new("refused-nest-count").with("most", Value::Count(MOST as i64));
            return Err(Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, "sizes"));
        }
        if tops.iter().any(|top| top.to_mm() < LEAST || *top > basket::limits::PART) {
            let message = Message::new("refused-nest-size");
            return Err(Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, "sizes"));
        }
        let each = tops
            .into_iter()
            .map(|top| size(&request.source, &pattern, top, shop))
            .collect::<Result<Vec<Size>, Refusal>>()?;
        let nests = each
            .windows(2)
            .filter_map(|pair| if let [inner, outer] = pair { Some([inner, outer]) } else { None })
            .map(|pair| standing((&request.source, &pattern), pair, wanted, shop))
            .collect::<Result<Vec<_>, Refusal>>()?;
        let students: Vec<Student> = each
            .iter()
            .map(|size| Student { name: size.name.clone(), draft: &size.draft, colours: BTreeMap::default() })
            .collect();
        let kits = Kits::of(&students);
        // How each stands in the next is drawn and told beside the sheet's own tables.
        let sizes = Sizes { nests: Vec::new(), wanted, kits, each };
        Ok(Self { sizes, nests, title: pattern.title, words })
    }

    fn leaf(&self) -> Leaf {
        sizes(&self.title, &self.sizes, &self.words)
    }

    /// Each stands with its base on the floor of the next.
    fn baskets(&self) -> Vec<NestBasket> {
        let mut lift = Length::ZERO;
        let mut drawn: Vec<NestBasket> = Vec::new();
        for (place, size) in self.sizes.each.iter().rev().enumerate() {
            if place > 0 {
                lift += size.draft.basket.body.base().thickness;
            }
            drawn.push(cut(&size.name, &size.draft.basket, lift));
        }
        drawn.reverse();
        drawn
    }

    fn rooms(&self) -> Vec<NestRoom> {
        let each = &self.sizes.each;
        // Floors of the larger baskets lie lower: each by the thickness of those that stand in it.
        let floor = |from: usize| {
            let inner = each.iter().take(each.len().saturating_sub(1)).skip(from);
            inner.fold(Length::ZERO, |sum, size| sum + size.draft.basket.body.base().thickness)
        };
        let pairs = each.iter().zip(each.iter().skip(1));
        let one = |place: usize, [inner, outer]: [&Size; 2], (nest, finding): &(Nest, Option<Finding>)| {
            let [inside, outside] = [inner, outer].map(|size| Value::Name(size.name.clone()));
            let said = match finding {
                Some(finding) => {
                    let FindingText { what, why, remedy, .. } = self.words.finding(finding);
                    format!("{what} {why} {remedy}")
                }
                None => self.words.with(
                    "form-nest-room",
                    &[
                        ("room", Value::Name(self.words.fine(nest.room))),
                        ("at", nest.at.into()),
                        ("below", nest.below.into()),
                    ],
                ),
            };
            NestRoom {
                name: self.words.with("workshop-nest-in", &[("inner", inside), ("outer", outside)]),
                fits: finding.is_none(),
                said,
                at_mm: (nest.at + floor(place + 1)).to_mm(),
            }
        };
        let rooms = pairs.zip(&self.nests).enumerate();
        rooms.map(|(place, ((inner, outer), nest))| one(place, [inner, outer], nest)).collect()
    }
}

/// How a basket stands in the next. Where there is too little room, larger outer moulds are tried.
fn standing(
    (source, pattern): (&str, &Pattern),
    [inner, outer]: [&Size; 2],
    wanted: Length,
    shop: Shop<'_>,
) -> Result<(Nest, Option<Finding>), Refusal> {
    let nest = Nest::of(&inner.draft.basket, &outer.draft.basket);
    let scaled =
        |to: Length| size(source, pattern, to_the_mark(to, pattern.units), shop).map(|size| size.draft);
    let serves = if nest.fits(wanted) {
        None
    } else {
        serving(&inner.draft.basket, (across(&outer.draft.pattern.mould), nest), wanted, scaled)?
    };
    let names = [inner, outer].map(|size| size.name.as_str());
    Ok((nest, in_a_nest(&nest, names, wanted, serves)))
}

fn length(written: &str, place: &str, units: Units) -> Result<Length, Refusal> {
    Length::parse(written.trim(), Some(units.unit())).map_err(|_| {
        let typed = Value::Name(written.trim().to_owned());
        let message = Message::new("refused-length").with("typed", typed);
        Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, place)
    })
}

/// The pattern over its own mould in this size.
fn size(source: &str, pattern: &Pattern, to: Length, shop: Shop<'_>) -> Result<Size, Refusal> {
    let changes = changes(pattern, to, shop.catalogue);
    let edits: Vec<Edit> = changes
        .iter()
        .filter_map(|change| {
            let path = change.key.clone();
            match &change.value {
                Some(value) => Some(Edit::Set { path, value: value_of(value)? }),
                None => Some(Edit::Remove { path }),
            }
        })
        .collect();
    let draft = draft(&edit(source, &edits)?, shop).map_err(Refusal::misread)?;
    let name = across(&draft.pattern.mould).print(super::text::marks(to, pattern.units));
    Ok(Size { name, draft, changes })
}

/// A basket cut through along its length, so far above the floor of the largest.
fn cut(name: &str, basket: &Basket, lift: Length) -> NestBasket {
    let body = &basket.body;
    let (form, rim, uprights, base) = (&body.form, body.rim(), body.uprights(), body.base());
    let place = |along: Length, outward: Length| {
        let half = form.across(along, outward).length / 2.0;
        [half.to_mm(), (form.profile.at(along).height + lift).to_mm()]
    };
    let along = |step: u32| rim.along * (f64::from(step) / f64::from(PLACES));
    // A row stands off a stave on the outside as far as on the inside.
    let outside = |along: Length| uprights.standing.at(along) * 2.0 + uprights.thickness;
    let inner = (0..=PLACES).map(|step| place(along(step), Length::ZERO));
    let outer = (0..=PLACES).rev().map(|step| place(along(step), outside(along(step))));
    let [low, high] = [rim.along, rim.along + rim.height];
    let hoops = [rim.inner_radius(), rim.outer_radius(uprights)].map(|radius| radius - rim.radius());
    let corners = [(low, hoops[0]), (low, hoops[1]), (high, hoops[1]), (high, hoops[0])];
    let edge = form.across(Length::ZERO, base.edge_radius() - form.profile.at(Length::ZERO).radius).length;
    let (edge, top) = ((edge / 2.0).to_mm(), lift.to_mm());
    let under = top - base.thickness.to_mm();
    // The staves' feet turn into the groove.
    let foot = |share: f64| [edge, top - (base.thickness * share).to_mm()];
    NestBasket {
        name: name.to_owned(),
        wall: [foot(0.4)].into_iter().chain(inner).chain(outer).chain([foot(0.6)]).collect(),
        rim: corners.map(|(along, outward)| place(along, outward)).to_vec(),
        base: vec![[0.0, top], [edge, top], [edge, under], [0.0, under]],
    }
}
