//! The keys of the pattern file, each declared once.
//!
//! From here come reading and its messages, the form of the bench, the JSON Schema for editors, the tables
//! of the manual, and the names of keys in choices and remedies.

pub mod base;
pub mod course;
mod declared;
pub mod ears;
pub mod filler;
mod form;
pub mod groove;
mod group;
pub mod handle;
mod key;
mod kinds;
pub mod lashing;
pub mod lid;
mod limits;
pub mod material;
pub mod mould;
pub mod note;
pub mod pins;
pub mod rim;
pub mod sale;
pub mod staves;
pub mod taper;
mod values;
pub mod weave;
pub mod weaves;

pub use declared::{Contents, Declared, Either, Fits, Known, Takes, Usual};
pub use form::{Field, every, fields, find};
pub use group::Group;
pub use key::{Key, Writable};
pub use limits::{Counts, Lengths, ListOf, PART, PLACE, Shares, Texts};
pub use values::{Minutes, Named, OwnColours, Presence, Section, Sections};

use self::key::keys;
use self::limits::MOST_COLOURS;
use crate::pattern::{Finish, FinishPart, Handed, Language, Level, Ready, Units};

keys! {
    /// Name of the basket.
    pub const TITLE: Key<String> =
        Key::new("title", Texts::Line, Usual::Needed, r#""Harbour bread basket""#).among(Group::Basket);
    /// Units of bare numbers.
    pub const UNITS: Key<Units> =
        Key::new("units", (), Usual::Constant(Units::Inches), r#""in""#).among(Group::Basket);
    /// Language of the sheets.
    pub const LANGUAGE: Key<Language> =
        Key::new("language", (), Usual::Constant(Language::English), r#""de""#).among(Group::Basket);
    /// For whom the basket is.
    pub const LEVEL: Key<Level> =
        Key::new("level", (), Usual::Nothing("usual-level"), r#""beginner""#).among(Group::Basket);
    /// What protects the finished basket.
    pub const FINISH: Key<Finish> =
        Key::new("finish", (), Usual::Constant(Finish::Shellac), r#""oil""#).among(Group::Finish);
    /// Which hand leads the weaver.
    pub const HAND: Key<Handed> =
        Key::new("hand", (), Usual::Constant(Handed::Right), r#""left""#).among(Group::Basket);
    /// What it goes on.
    pub const FINISH_ON: Key<Vec<FinishPart>> =
        Key::new("finish-on", (), Usual::Nothing("usual-finish-on"), r#"["handle", "base"]"#)
            .among(Group::Finish);
    /// What is written on the finished basket.
    pub const SIGNATURE: Key<String> =
        Key::new("signature", Texts::Line, Usual::Nothing("usual-signature"), r#""Tidewater, no. 12""#)
            .among(Group::Finish);
    /// What lies ready before the making begins.
    pub const READY: Key<Vec<Ready>> =
        Key::new("ready", (), Usual::Nothing("usual-ready"), r#"["staves cut", "rings"]"#)
            .among(Group::Basket);
    /// The mould.
    pub const MOULD: Key<Section> = Key::new(
        "mould",
        mould::CONTENTS,
        Usual::Needed,
        r#"{ base = "5 in", rim = "8 in", height = "4 in" }"#,
    )
    .among(Group::Mould);
    /// The base.
    pub const BASE: Key<Section> = section("base", base::ALL, r#"{ diameter = "4 7/8" }"#).among(Group::Base);
    /// The staves.
    pub const STAVES: Key<Section> = section("staves", staves::ALL, "{ count = 67 }").among(Group::Staves);
    /// The weaving.
    pub const WEAVE: Key<Section> =
        section("weave", weave::ALL, r#"{ courses = [{ weaver = "cane fine", rows = 4 }] }"#)
            .among(Group::Weave);
    /// The rim.
    pub const RIM: Key<Section> = section("rim", rim::ALL, r#"{ lap = "4" }"#).among(Group::Rim);
    /// What covers the stave tips.
    pub const FILLER: Key<Presence> = Key::new(
        "filler",
        (Contents::of(filler::ALL), Some(filler::NONE)),
        Usual::Computed("usual-chosen"),
        r#""none""#,
    )
    .among(Group::Rim);
    /// The lashing.
    pub const LASHING: Key<Presence> = Key::new(
        "lashing",
        (Contents::of(lashing::ALL), Some(lashing::NONE)),
        Usual::Computed("usual-chosen"),
        r#"{ every = "stave" }"#,
    )
    .among(Group::Lashing);
    /// The pins.
    pub const PINS: Key<Section> = section("pins", pins::ALL, r#"{ every = "stave" }"#).among(Group::Rim);
    /// The ears.
    pub const EARS: Key<Presence> = Key::new(
        "ears",
        (Contents::of(ears::ALL), None),
        Usual::Nothing("usual-ears"),
        r#"{ material = "brass" }"#,
    )
    .among(Group::Handle);
    /// The handle.
    pub const HANDLE: Key<Presence> = Key::new(
        "handle",
        (Contents::of(handle::ALL), None),
        Usual::Nothing("usual-handle"),
        r#"{ kind = "swing" }"#,
    )
    .among(Group::Handle);
    /// The lid.
    pub const LID: Key<Presence> = Key::new(
        "lid",
        (Contents::of(lid::ALL), None),
        Usual::Nothing("usual-lid"),
        r#"{ lift = "loop" }"#,
    )
    .among(Group::Lid);
    /// The maker's own words and photographs.
    pub const NOTE: Key<Sections> = Key::new(
        "note",
        ListOf { each: note::CONTENTS, most: 100 },
        Usual::Nothing("usual-none"),
        r#"[{ step = "lashing", text = "Shiny side out." }]"#,
    );
    /// What stands on the title page of a pattern for sale.
    pub const SALE: Key<Section> =
        Key::new("sale", Contents::of(sale::ALL), Usual::Nothing("usual-none"), r#"{ edition = "first" }"#);
    /// Colours of the maker's own.
    pub const COLOURS: Key<OwnColours> =
        Key::new("colours", MOST_COLOURS, Usual::Nothing("usual-none"), r##"{ rust = "#a0522d" }"##);
    /// Materials of the maker's own.
    pub const MATERIALS: Key<Named> = Key::new(
        "materials",
        ListOf { each: Contents::of(material::ALL), most: 200 },
        Usual::Nothing("usual-none"),
        r#"{ "my cane" = { like = "cane fine", width = "2.6 mm" } }"#,
    );
}

/// A whole pattern.
pub const PATTERN: Key<Section> = Key::new("", Contents::of(ALL), Usual::Needed, "");

/// A shelf file: the materials of a pattern in a file of their own.
pub const SHELF: Key<Section> = Key::new("", Contents::of(&[&UNITS, &MATERIALS]), Usual::Needed, "");

const fn section(
    path: &'static str,
    keys: &'static [&'static dyn Declared],
    example: &'static str,
) -> Key<Section> {
    Key::new(path, Contents::of(keys), Usual::Computed("usual-each"), example)
}
