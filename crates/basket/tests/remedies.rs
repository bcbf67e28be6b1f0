//! Remedies mend: every remedy that is offered for generated bad patterns is written into the pattern's
//! text, read again and worked out anew. Its finding has to be gone, no stop may have come, and no care
//! that the remedy does not name.

#[path = "findings/draft.rs"]
mod draft;

use std::collections::BTreeSet;

use basket::Draft;
use basket::findings::{Finding, Grade};
use draft::{pattern, read, set};
use proptest::prelude::*;
use proptest::sample::{select, subsequence};
use toml::Table;

/// Keys with values from sound to absurd; any few of them make a pattern.
const CHANGES: &[(&str, &[&str])] = &[
    ("base.diameter", &["\"4 in\"", "\"6 in\"", "\"2 1/2 in\""]),
    ("base.thickness", &["\"3/16 in\"", "\"1/2 in\""]),
    ("base.groove.depth", &["\"1/16 in\"", "\"1/2 in\"", "\"2 3/8 in\""]),
    ("base.groove.width", &["\"1/32 in\"", "\"1/4 in\""]),
    ("base.wood", &["\"beech\""]),
    ("staves.count", &["40", "51", "64", "79", "80", "120"]),
    (
        "staves.taper",
        &["{ from = \"1 1/2 in\", foot = \"3/32 in\" }", "{ from = \"1 in\", foot = \"1/4 in\" }"],
    ),
    ("staves.length", &["\"4 in\"", "\"12 in\""]),
    ("weave.courses[1].rows", &["1", "30"]),
    ("weave.courses[2].weave", &["\"chase\"", "\"twill 2/2\"", "\"twill 5/3\"", "\"skip one\""]),
    ("weave.courses[2].weaver", &["\"cane common\"", "\"round reed 3\""]),
    ("weave.courses[2].rows", &["6", "90"]),
    ("weave.courses[2].strands", &["[\"6 in\"]"]),
    ("weave.courses[2].start", &["200"]),
    ("rim.lap", &["\"1 in\"", "\"8 in\""]),
    ("rim.stock", &["\"half round reed 3/4 in\""]),
    ("filler.stock", &["\"round reed 0\""]),
    ("lashing.tail", &["\"1 in\"", "\"5 in\""]),
    ("ears.width", &["\"2 in\""]),
    ("ears.hole", &["\"1/8 in\""]),
    ("ears.placing", &["\"on-staves\"", "\"stave-and-gap\""]),
    ("handle.thickness", &["\"1/2 in\""]),
    ("handle.made", &["\"bent\""]),
    ("handle.joint", &["\"slot\"", "\"between\""]),
    ("handle.shows", &["\"3/8 in\"", "\"9/16 in\""]),
    ("mould.pieces", &["\"several\""]),
];

fn any_bad() -> impl Strategy<Value = Table> {
    let changes = subsequence(CHANGES.to_vec(), 1..=4).prop_flat_map(|keys| {
        keys.into_iter()
            .map(|(key, values)| select(values.to_vec()).prop_map(move |value| (key, value)))
            .collect::<Vec<_>>()
    });
    changes.prop_map(|changes| pattern(&changes))
}

fn codes(draft: &Draft, grade: Grade) -> BTreeSet<&'static str> {
    draft.findings.iter().filter(|finding| finding.grade <= grade).map(|finding| finding.code).collect()
}

/// Whether a finding is still there as more than a note.
fn stays(draft: &Draft, finding: &Finding) -> bool {
    draft.findings.iter().any(|left| {
        left.code == finding.code && left.place.piece == finding.place.piece && left.grade != Grade::Note
    })
}

fn check(table: &Table) -> Result<(), TestCaseError> {
    let Some(bad) = read(table) else { return Ok(()) };
    for finding in bad.findings.iter().filter(|finding| finding.grade != Grade::Note) {
        for remedy in &finding.remedies {
            let said = format!("{}: {} = {}", finding.code, remedy.key, remedy.value);
            let mut mended = table.clone();
            set(&mut mended, &remedy.key, &remedy.value);
            let Some(mended) = read(&mended) else {
                return Err(TestCaseError::fail(format!("{said} cannot be read")));
            };
            prop_assert!(!stays(&mended, finding), "{said} does not mend");
            let stops = &codes(&mended, Grade::Stop) - &codes(&bad, Grade::Stop);
            prop_assert!(stops.is_empty(), "{said} brings the stops {stops:?}");
            let named: BTreeSet<&str> = remedy.brings.iter().map(|care| care.code).collect();
            let cares = &codes(&mended, Grade::Care) - &codes(&bad, Grade::Care);
            prop_assert!(cares.is_subset(&named), "{said} brings {cares:?} and names {named:?}");
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn offered_remedies_mend(table in any_bad()) {
        check(&table)?;
    }
}

/// Remedies that once did not mend.
#[test]
fn known_cases_are_mended() {
    let cases: [&[(&str, &str)]; 5] = [
        &[("staves.count", "51")],
        &[("staves.taper", "{ from = \"1 1/2 in\", foot = \"3/32 in\" }")],
        &[("staves.taper", "{ from = \"1 in\", foot = \"3/32 in\" }"), ("staves.count", "121")],
        &[("weave.courses[2].weave", "\"chase\"")],
        &[("weave.courses[2].weave", "\"twill 5/3\"")],
    ];
    for changes in cases {
        let table = pattern(changes);
        check(&table).unwrap_or_else(|error| panic!("{changes:?}: {error}"));
        let draft = read(&table).expect("it reads");
        for finding in draft.findings.iter().filter(|finding| finding.grade != Grade::Note) {
            assert!(!finding.remedies.is_empty(), "{changes:?}: {} has no remedy", finding.code);
            // To raise a limit is the maker's own act.
            assert!(finding.remedies.iter().all(|remedy| !remedy.key.starts_with("weave.float")));
        }
    }
}
