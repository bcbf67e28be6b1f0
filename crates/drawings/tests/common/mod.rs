//! Baskets to draw.

#![allow(dead_code, reason = "each test file uses a part of this")]

pub(crate) mod solids;

use basket::{Basket, Catalogue, Hand, assemble};
use drawings::{At, Drawing, Item, Label};
use words::{Language, Words};

pub(crate) const HARBOUR: &str = include_str!("../../../../patterns/harbour-bread-basket.toml");
pub(crate) const FERRY: &str = include_str!("../../../../patterns/ferry-egg-basket.toml");
pub(crate) const CHANNEL: &str = include_str!("../../../../patterns/channel-marker.toml");

/// Baskets at the edges of what can be written: small, large, straight, closing in, crowded, bare.
pub(crate) const ODD: [&str; 6] = [
    "title = \"Thimble\"\nunits = \"mm\"\n[mould]\nside = \"straight\"\nbase = \"20\"\nrim = \"20\"\nheight = \"15\"\n[ears]\n[handle]\n",
    "title = \"Tun\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"900\"\nrim = \"1500\"\nheight = \"900\"\n",
    "title = \"Plate\"\nunits = \"mm\"\n[mould]\nside = \"bowl\"\nbase = \"100\"\nrim = \"400\"\nheight = \"20\"\n[ears]\n[handle]\n",
    "title = \"Jar\"\nunits = \"mm\"\n[mould]\ngirths = [[\"0\", \"560\"], [\"60\", \"760\"], [\"180\", \"300\"]]\n",
    "title = \"Crowd\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"150\"\nrim = \"250\"\nheight = \"120\"\n[staves]\ncount = 107\n[lashing]\nstyle = \"crossed\"\n",
    "title = \"Three <& \\\"odd\\\">\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"50\"\nrim = \"250\"\nheight = \"220\"\n[base]\ndiameter = \"5\"\ngroove = { depth = \"2.4\", width = \"0.1\" }\n[staves]\ncount = 3\n[ears]\n[handle]\n",
];

/// The ways of a handle: how it meets its ears, or what stands in its place.
pub(crate) const HANDLES: [&str; 4] = [
    "kind = \"swing\"\njoint = \"slot\"",
    "kind = \"swing\"\njoint = \"between\"",
    "kind = \"knob\"",
    "kind = \"fixed\"",
];

/// The bread basket with another handle.
pub(crate) fn with_handle(handle: &str) -> String {
    let text = HARBOUR.replace("kind = \"swing\"", handle);
    match (text.find("[ears]"), text.find("[handle]"), handle.contains("fixed")) {
        (Some(ears), Some(handle), true) => format!("{}{}", &text[..ears], &text[handle..]),
        _ => text,
    }
}

pub(crate) fn basket(pattern: &str) -> Basket {
    let catalogue = Catalogue::built_in();
    let pattern = basket::pattern::read(pattern, catalogue).expect("the pattern can be read");
    assemble(&pattern, catalogue, &Hand::USUAL)
}

pub(crate) fn words(basket: &Basket) -> Words {
    Words::new(Language::English, basket.units)
}

pub(crate) fn all(basket: &Basket) -> Vec<Drawing> {
    let words = &words(basket);
    let mut all = vec![
        drawings::section(basket, words),
        drawings::base_plan(basket, words),
        drawings::base_disc(basket, words),
        drawings::taper_chart(basket, words),
        drawings::spacing_strip(basket, words, At::Base),
        drawings::spacing_strip(basket, words, At::Rim),
        drawings::drilling_template(basket, words),
        drawings::scarf_template(basket, words),
        drawings::check_bars(words),
    ];
    all.extend(drawings::stave_templates(basket, words));
    all.extend(drawings::ear_template(basket, words));
    all
}

pub(crate) fn labels(drawing: &Drawing) -> impl Iterator<Item = &Label> {
    drawing.items().iter().filter_map(|item| match item {
        Item::Label(label) => Some(label),
        Item::Path { .. } => None,
    })
}
