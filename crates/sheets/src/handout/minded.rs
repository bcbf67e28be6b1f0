//! What of the findings a student has to mind: no keys, no remedies, nothing that only a designer can change.

use basket::Grade;

use super::{Block, Source};

/// Findings that ask for care of the hands.
const MINDED: [&str; 8] = [
    "base-wood-moves",
    "stave-too-stiff",
    "weaver-bends-hard",
    "strand-too-short",
    "hoop-bent-too-hard",
    "bail-bent-too-hard",
    "pin-splits-stave",
    "ears-off-opposite",
];

impl<'a> Source<'a> {
    /// What stops the basket, and what asks for care of the hands.
    pub(super) fn minded(&self) -> Vec<Block<'a>> {
        let minded = self.draft.findings.iter();
        let minded = minded.filter(|finding| finding.grade == Grade::Stop || MINDED.contains(&finding.code));
        let items: Vec<String> = minded
            .map(|finding| {
                let told = self.scribe.words.finding(finding);
                format!("{} {}", told.what, told.why)
            })
            .collect();
        if items.is_empty() { Vec::new() } else { vec![Block::Points { items }] }
    }
}

#[cfg(test)]
mod tests {
    use basket::findings::CODES;

    use super::MINDED;

    #[test]
    fn what_is_minded_is_found() {
        assert!(MINDED.iter().all(|code| CODES.contains(code)));
    }
}
