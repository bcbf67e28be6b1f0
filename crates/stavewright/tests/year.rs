//! Twelve baskets of a teacher's year: every way that a pattern can choose is drafted, and none is stopped.

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::{names, room, run, stavewright};
use serde_json::Value;

fn patterns() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/year");
    names(&folder).into_iter().map(|name| folder.join(name)).collect()
}

#[test]
fn each_basket_of_the_year_is_drafted_without_a_stop() {
    let patterns = patterns();
    assert_eq!(patterns.len(), 12);
    let mut kinds = Vec::new();
    for pattern in patterns {
        let room = room();
        let mut draft = stavewright(room.path());
        let said = run(draft.arg("draft").arg(&pattern).args(["--no-sheets", "--out", "packet"]));
        assert_eq!(said.code, 0, "{}: {}{}", pattern.display(), said.out, said.err);
        let text = fs::read_to_string(room.path().join("packet/basket.json")).unwrap();
        let basket: Value = serde_json::from_str(&text).unwrap();
        let steps = basket["steps"].as_array().unwrap();
        assert!(steps.len() >= 8, "{}", pattern.display());
        kinds.extend(steps.iter().map(|step| step["kind"].as_str().unwrap().to_owned()));
    }
    // Together they take every step that there is.
    for kind in ["bend", "seal", "to-ears", "ears", "rings", "off-mould", "handle", "plug"] {
        assert!(kinds.iter().any(|one| one == kind), "nobody takes the step {kind}: {kinds:?}");
    }
}
