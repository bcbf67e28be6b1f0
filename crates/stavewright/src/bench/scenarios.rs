//! Patterns to start from: the examples and a commented one.

use super::api::{EditValue, Scenario};
use super::text::Written;

const FILES: [(&str, &str); 4] = [
    ("starter", basket::pattern::STARTER),
    ("harbour-bread-basket", include_str!("../../../../patterns/harbour-bread-basket.toml")),
    ("ferry-egg-basket", include_str!("../../../../patterns/ferry-egg-basket.toml")),
    ("channel-marker", include_str!("../../../../patterns/channel-marker.toml")),
];

/// All of them.
pub(crate) fn all() -> Vec<Scenario> {
    let one = |(name, source): (&str, &str)| Scenario {
        name: name.to_owned(),
        title: match Written::of(source).get("title") {
            Some(EditValue::Text(title)) => title,
            _ => name.to_owned(),
        },
        source: source.to_owned(),
    };
    FILES.map(one).into()
}
