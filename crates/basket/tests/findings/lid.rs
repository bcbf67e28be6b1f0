//! Findings of a lid, on both sides of their limits.

use basket::pattern::read;
use basket::{Catalogue, Draft, Hand, Length};

fn codes(lid: &str, more: &str) -> Vec<&'static str> {
    let mould = r#"base = "6 in", rim = "8 in", height = "4 in", side = "bowl""#;
    let text = format!("title = \"Box\"\nmould = {{ {mould} }}\nlid = {{ {lid} }}\n{more}\n");
    let pattern = read(&text, Catalogue::built_in()).unwrap();
    let draft = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL);
    draft.findings.iter().map(|finding| finding.code).collect()
}

#[test]
fn lid_clearance() {
    let text = r#"title = "Box"
mould = { base = "6 in", rim = "8 in", height = "4 in", side = "bowl" }
lid = {}"#;
    let pattern = read(text, Catalogue::built_in()).unwrap();
    let lid = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL).basket.lid.unwrap();
    let across = lid.vessel.form.across(lid.vessel.form.arc(), Length::ZERO).length.to_mm();
    let over = |more: f64| codes(&format!("across = \"{} mm\"", across + more), "");
    assert!(!over(0.0).contains(&"lid-clearance"));
    assert!(over(2.0).contains(&"lid-clearance"));
}

#[test]
fn lid_ledge_narrow() {
    assert!(!codes("", "").contains(&"lid-ledge-narrow"));
    assert!(codes(r#"clearance = "1/2 in""#, "").contains(&"lid-ledge-narrow"));
}

#[test]
fn lid_under_handle() {
    let handle = |rise: &str| codes("", &format!("handle = {{ kind = \"swing\", rise = \"{rise}\" }}"));
    assert!(!handle("5 in").contains(&"lid-under-handle"));
    assert!(handle("1 in").contains(&"lid-under-handle"));
}

#[test]
fn lid_clearance_cap() {
    let across = |more: f64| format!("fit = \"cap\", across = \"{} mm\"", usual("cap") + more);
    assert!(!codes(&across(0.0), "").contains(&"lid-clearance-cap"));
    assert!(codes(&across(-2.0), "").contains(&"lid-clearance-cap"));
}

#[test]
fn lid_cap_shallow() {
    let height = |height: &str| {
        let low = "rim = { stock = \"flat oval reed 3/16 in\" }";
        codes(&format!("fit = \"cap\", height = \"{height}\""), low)
    };
    assert!(!height("1 in").contains(&"lid-cap-shallow"));
    assert!(height("1/16 in").contains(&"lid-cap-shallow"));
}

#[test]
fn lid_not_flush() {
    let across = |more: f64| format!("fit = \"flush\", across = \"{} mm\"", usual("flush") + more);
    assert!(!codes(&across(0.5), "").contains(&"lid-not-flush"));
    // Where the lid is much larger, its staves are of thinner stock.
    for more in [-3.0, 5.0] {
        assert!(codes(&across(more), "").contains(&"lid-not-flush"), "{more}");
    }
}

#[test]
fn lid_on_ears() {
    for fit in ["cap", "flush"] {
        let fit = format!("fit = \"{fit}\"");
        assert!(!codes(&fit, "").contains(&"lid-on-ears"));
        assert!(codes(&fit, "ears = {}").contains(&"lid-on-ears"));
        assert!(codes(&fit, "handle = { kind = \"fixed\" }").contains(&"lid-on-ears"));
    }
    assert!(!codes("", "ears = {}").contains(&"lid-on-ears"));
}

/// How far the mould reaches of a lid that is left open.
fn usual(fit: &str) -> f64 {
    let text = format!(
        "title = \"Box\"\nmould = {{ base = \"6 in\", rim = \"8 in\", height = \"4 in\", side = \"bowl\" }}\n\
         lid = {{ fit = \"{fit}\" }}\n"
    );
    let pattern = read(&text, Catalogue::built_in()).unwrap();
    let lid = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL).basket.lid.unwrap();
    lid.vessel.form.across(lid.vessel.form.arc(), Length::ZERO).length.to_mm()
}
