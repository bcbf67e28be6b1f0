//! How long twelve kits of each pattern of the school take, from the pattern read to the last cut.
//!
//! Target: a second.

use std::collections::BTreeMap;
use std::ops::ControlFlow;
use std::time::Instant;

use basket::{Catalogue, Draft, Hand, Length};
use planning::buying::{Terms, buy, needs};
use planning::cutting::Plan;
use planning::kits::{Kits, Student};

const PATTERNS: [(&str, &str); 5] = [
    ("Channel marker", include_str!("../../../patterns/channel-marker.toml")),
    ("Ferry egg basket", include_str!("../../../patterns/ferry-egg-basket.toml")),
    ("Harbour bread basket", include_str!("../../../patterns/harbour-bread-basket.toml")),
    ("Pilot letter basket", include_str!("../../../patterns/pilot-letter-basket.toml")),
    ("Sound market basket", include_str!("../../../patterns/sound-market-basket.toml")),
];

fn main() {
    for (name, text) in PATTERNS {
        let began = Instant::now();
        let pattern = basket::pattern::read(text, Catalogue::built_in()).expect("a pattern of the school");
        let draft = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL);
        let student =
            |at| Student { name: format!("student {at}"), draft: &draft, colours: BTreeMap::default() };
        let class: Vec<Student<'_>> = (1..=12).map(student).collect();
        let needs = needs([(&Kits::of(&class), None)]);
        let terms = Terms { shelf: &[], offers: &[], kerf: Length::ZERO };
        let plans = buy(&needs, &terms, &mut |_| ControlFlow::Continue(()));
        let proven = plans.iter().filter_map(|purchase| purchase.plan.as_ref()).all(Plan::is_proven);
        println!(
            "{name}: {:.3} s, {}",
            began.elapsed().as_secs_f64(),
            if proven { "proven" } else { "not proven" }
        );
    }
}
