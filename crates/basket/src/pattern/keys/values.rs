//! What keys can hold.

use std::convert::Infallible;

use super::declared::{Contents, Known, Takes};
use super::key::Writable;
use super::limits::{Counts, Lengths, ListOf, Shares, Texts};
use crate::Material;
use crate::colour::Colour;
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::drawn::Drawn;
use crate::pattern::{Girth, Until, WeaveKind, WidthAt, Word};
use crate::stock::{Kind, Wood};

/// A section, as what a key holds.
#[derive(Clone, Copy, Debug)]
pub enum Section {}

/// A section that makes a part of the basket be there, as what a key holds.
#[derive(Clone, Copy, Debug)]
pub enum Presence {}

/// A list of sections, as what a key holds.
#[derive(Clone, Copy, Debug)]
pub enum Sections {}

/// Sections under names of the maker's own, as what a key holds.
#[derive(Clone, Copy, Debug)]
pub enum Named {}

/// Colours under names of the maker's own, as what a key holds.
#[derive(Clone, Copy, Debug)]
pub enum OwnColours {}

/// Shortest and longest time in minutes.
pub type Minutes = (f64, f64);

impl<W: Word + Sync> Writable for W {
    type Takes = ();
    type Usual = W;

    fn takes((): &()) -> Takes {
        Takes::Word(known::<W>())
    }

    fn say(usual: W) -> Value {
        usual.word().into()
    }
}

impl<W: Word + Sync> Writable for Vec<W> {
    type Takes = ();
    type Usual = Infallible;

    fn takes((): &()) -> Takes {
        Takes::Words(known::<W>())
    }

    fn say(usual: Infallible) -> Value {
        match usual {}
    }
}

fn known<W: Word>() -> Vec<Known> {
    W::ALL.iter().map(|one| Known { word: one.word(), term: one.term() }).collect()
}

impl Writable for Length {
    type Takes = Lengths;
    type Usual = Self;

    fn takes(takes: &Lengths) -> Takes {
        Takes::Length(*takes)
    }

    fn say(usual: Self) -> Value {
        usual.into()
    }
}

impl Writable for u32 {
    type Takes = Counts;
    type Usual = Self;

    fn takes(takes: &Counts) -> Takes {
        Takes::Count(*takes)
    }

    fn say(usual: Self) -> Value {
        usual.into()
    }
}

/// A share of one.
impl Writable for f64 {
    type Takes = Shares;
    type Usual = Self;

    fn takes(takes: &Shares) -> Takes {
        Takes::Share(*takes)
    }

    fn say(usual: Self) -> Value {
        Value::Percent(usual)
    }
}

impl Writable for bool {
    type Takes = ();
    type Usual = Self;

    fn takes((): &()) -> Takes {
        Takes::Flag
    }

    fn say(usual: Self) -> Value {
        usual.to_string().into()
    }
}

impl Writable for WeaveKind {
    type Takes = ();
    type Usual = Self;

    fn takes((): &()) -> Takes {
        Takes::Weave
    }

    fn say(usual: Self) -> Value {
        usual.to_string().into()
    }
}

/// What a key can hold of which nothing is usual whatever the basket.
macro_rules! writable {
    ($($of:ty: $takes:ty => $how:expr;)+) => {
        $(impl Writable for $of {
            type Takes = $takes;
            type Usual = Infallible;

            fn takes(takes: &$takes) -> Takes {
                $how(*takes)
            }

            fn say(usual: Infallible) -> Value {
                match usual {}
            }
        })+
    };
}

writable! {
    String: Texts => Takes::Text;
    Minutes: u32 => Takes::Minutes;
    Until: () => |()| Takes::End;
    Material: &'static [Kind] => Takes::Material;
    Vec<Material>: ListOf<&'static [Kind]> => Takes::Materials;
    Wood: () => |()| Takes::Wood;
    Vec<Wood>: usize => Takes::Woods;
    Vec<Colour>: usize => Takes::Colours;
    Vec<Vec<Colour>>: ListOf<usize> => Takes::WeaverColours;
    Vec<Length>: ListOf<Lengths> => Takes::Lengths;
    Vec<Girth>: usize => Takes::Pairs;
    Vec<WidthAt>: usize => Takes::Pairs;
    Drawn: usize => Takes::Chart;
    Section: Contents => Takes::Section;
    Presence: (Contents, Option<&'static str>) => |(contents, none)| Takes::Part(contents, none);
    Sections: ListOf<Contents> => Takes::Sections;
    Named: ListOf<Contents> => Takes::Named;
    OwnColours: usize => Takes::OwnColours;
}
