//! What changes in a pattern when its basket is made in another size.
//!
//! The mould and what belongs to its shape keep their proportion. Staves and weavers come from stock that is
//! sold, of the kind that the pattern has and in the size nearest to that proportion, so that the baskets of
//! a set look related. What follows from these is taken out, to be computed anew; all else is kept.

use crate::follows::findings::write;
use crate::form::Form;
use crate::measure::Length;
use crate::pattern::keys::{self, Declared as _};
use crate::pattern::{Girth, Levels, MouldForm, MouldPattern, Outline, Pattern, Until, WidthAt};
use crate::stock::{Catalogue, Material};

/// Sizes that differ by less are one size: a tape round a mould says no more about its diameter.
const SAME: Length = Length::inches(1.0 / 32.0);
/// Stocks whose widths differ by less than this share are as near.
const AS_NEAR: f64 = 1e-6;

/// A key that another size changes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// The key, such as `base.diameter` or `weave.courses[1].weaver`.
    pub key: String,
    /// The value to write, as TOML; none where the key is taken out.
    pub value: Option<String>,
    /// Identifier of the message that says why.
    pub why: &'static str,
}

impl Change {
    fn scaled(key: &str, value: String) -> Self {
        Self { key: key.to_owned(), value: Some(value), why: "sizes-why-scaled" }
    }

    fn stock(key: &str, value: String) -> Self {
        Self { key: key.to_owned(), value: Some(value), why: "sizes-why-stock" }
    }

    fn anew(key: &str) -> Self {
        Self { key: key.to_owned(), value: None, why: "sizes-why-anew" }
    }
}

/// What a maker calls the size of a mould: its diameter, or its length, at the top.
pub fn across(mould: &MouldPattern) -> Length {
    let form = Form::on_mould(mould);
    form.across(form.arc(), Length::ZERO).length
}

/// What changes when the pattern's mould is `to` across instead, in the order of the file; nothing where it is
/// that already.
pub fn changes(pattern: &Pattern, to: Length, catalogue: &Catalogue) -> Vec<Change> {
    let own = across(&pattern.mould);
    if (to - own).abs() < SAME {
        return Vec::new();
    }
    let factor = to / own.max(Length::mm(1.0));
    let size = Size { pattern, catalogue, factor };
    let mut changes = size.mould();
    changes.extend(size.length(keys::base::DIAMETER.path, pattern.base.diameter));
    changes.extend(size.staves());
    changes.extend(size.courses());
    changes.extend(gone(keys::rim::LAP.path, pattern.rim.lap.is_some()));
    changes.extend(size.handle());
    changes
}

fn gone(key: &str, is_written: bool) -> Option<Change> {
    is_written.then(|| Change::anew(key))
}

/// A pattern on its way to another size.
struct Size<'a> {
    pattern: &'a Pattern,
    catalogue: &'a Catalogue,
    factor: f64,
}

impl Size<'_> {
    fn written(&self, length: Length) -> String {
        write::marked(length * self.factor, self.pattern.units)
    }

    fn length(&self, key: &str, length: Option<Length>) -> Option<Change> {
        length.map(|length| Change::scaled(key, self.written(length)))
    }

    fn mould(&self) -> Vec<Change> {
        let mould = &self.pattern.mould;
        let one = |key: &str, length: Length| Change::scaled(key, self.written(length));
        let mut changes = match &mould.outline {
            Outline::Round => Vec::new(),
            Outline::Oval { size, .. } | Outline::Stadium(size) | Outline::Rectangle { size, .. } => {
                vec![one(keys::mould::LENGTH.path, size.length), one(keys::mould::WIDTH.path, size.width)]
            }
            Outline::Traced(rays) => {
                let rays: Vec<String> = rays.iter().map(|ray| self.written(*ray)).collect();
                vec![Change::scaled(keys::mould::RAYS.path, format!("[{}]", rays.join(", ")))]
            }
        };
        if let Outline::Rectangle { corner, .. } = &mould.outline {
            changes.push(one(keys::mould::CORNER.path, *corner));
        }
        match &mould.form {
            MouldForm::Girths(girths) => {
                let pair = |Girth { height, girth }: &Girth| {
                    format!("[{}, {}]", self.written(*height), self.written(*girth))
                };
                let pairs: Vec<String> = girths.iter().map(pair).collect();
                changes.push(Change::scaled(keys::mould::GIRTHS.path, format!("[{}]", pairs.join(", "))));
            }
            MouldForm::Drawn { base, rim, height, .. } => {
                if mould.outline == Outline::Round {
                    changes.push(one(keys::mould::BASE.path, *base));
                }
                changes.push(one(keys::mould::RIM.path, *rim));
                changes.push(one(keys::mould::HEIGHT.path, *height));
            }
        }
        if let Levels::Widths(widths) = &mould.levels {
            let pair = |at: &WidthAt| format!("[{}, {}]", self.written(at.height), self.written(at.width));
            let pairs: Vec<String> = widths.iter().map(pair).collect();
            changes.push(Change::scaled(keys::mould::WIDTHS.path, format!("[{}]", pairs.join(", "))));
        }
        changes
    }

    fn staves(&self) -> Vec<Change> {
        let staves = &self.pattern.staves;
        let stock = staves.stock.as_ref().and_then(|stock| self.other(stock));
        let stock = stock.map(|stock| Change::stock(keys::staves::STOCK.path, write::name(&stock.name)));
        let anew = [
            gone(keys::staves::COUNT.path, staves.count.is_some()),
            gone(keys::staves::WIDTH.path, staves.width.is_some()),
            gone(keys::staves::GAP.path, staves.gap.is_some()),
            gone(keys::staves::TAPER.path, staves.taper.is_some()),
            gone(keys::staves::LENGTH.path, staves.length.is_some()),
        ];
        stock.into_iter().chain(anew.into_iter().flatten()).collect()
    }

    fn courses(&self) -> Vec<Change> {
        let numbered = self.pattern.weave.courses.iter().zip(1..);
        numbered
            .flat_map(|(course, number)| {
                let key = |name: &str| format!("{}[{number}].{name}", keys::weave::COURSES.path);
                let materials: Vec<&Material> =
                    std::iter::once(&course.weaver).chain(&course.others).collect();
                let others: Vec<Option<&Material>> =
                    materials.iter().map(|material| self.other(material)).collect();
                let named = materials.iter().zip(&others);
                let names: Vec<String> =
                    named.map(|(own, other)| write::name(&other.unwrap_or(own).name)).collect();
                let (name, value) = match names.as_slice() {
                    [one] => (keys::course::WEAVER.name(), one.clone()),
                    several => (keys::course::WEAVERS.name(), format!("[{}]", several.join(", "))),
                };
                let weaver = others.iter().any(Option::is_some).then(|| Change::stock(&key(name), value));
                let until = match course.until {
                    Until::Height(height) => self.length(&key("until"), Some(height)),
                    Until::Rows(_) | Until::BelowTop(_) => None,
                };
                weaver.into_iter().chain(until)
            })
            .collect()
    }

    fn handle(&self) -> Vec<Change> {
        let (ears, handle) = (self.pattern.ears.as_ref(), self.pattern.handle.as_ref());
        let changes = [
            gone(keys::ears::WIDTH.path, ears.is_some_and(|ears| ears.width.is_some())),
            self.length(keys::handle::RISE.path, handle.and_then(|handle| handle.rise)),
            self.length(keys::handle::CORNER.path, handle.and_then(|handle| handle.corner)),
            gone(keys::handle::WIDTH.path, handle.is_some_and(|handle| handle.width.is_some())),
            gone(keys::handle::THICKNESS.path, handle.is_some_and(|handle| handle.thickness.is_some())),
        ];
        changes.into_iter().flatten().collect()
    }

    /// The material of this kind that is nearest in width to this one in the new size, where that is another.
    fn other(&self, own: &Material) -> Option<&Material> {
        let wanted = own.width * self.factor;
        let off = |material: &Material| libm::log(material.width / wanted.max(Length::mm(1e-3))).abs();
        let nearest = self.catalogue.of_kind(own.kind).min_by(|a, b| off(a).total_cmp(&off(b)))?;
        // One's own stock stays where none comes nearer: of two as near, the one that is at hand.
        (off(nearest) + AS_NEAR < off(own)).then_some(nearest)
    }
}
