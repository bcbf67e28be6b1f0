//! The weaves that a course may name.

use crate::pattern::{Rule, WeaveKind};

/// The longest float that a rule may ask for.
pub const LONGEST_FLOAT: u32 = 8;

/// A weave by the word for it.
pub struct Weave {
    /// The word, without figures.
    pub word: &'static str,
    /// Which figures follow it.
    pub figures: Figures,
}

/// What follows the word for a weave.
#[derive(Clone, Copy)]
pub enum Figures {
    /// Nothing.
    None(WeaveKind),
    /// Over and under, each from 1 to [`LONGEST_FLOAT`].
    Rule(fn(Rule) -> WeaveKind),
    /// How many rods: one of these.
    Rods(fn(u32) -> WeaveKind, &'static [u32]),
}

/// All weaves.
pub const ALL: &[Weave] = &[
    Weave { word: "plain", figures: Figures::None(WeaveKind::Plain) },
    Weave { word: "twill", figures: Figures::Rule(WeaveKind::Twill) },
    Weave { word: "reversed twill", figures: Figures::Rule(WeaveKind::ReversedTwill) },
    Weave { word: "chase", figures: Figures::None(WeaveKind::Chase(Rule::PLAIN)) },
    Weave { word: "chase twill", figures: Figures::Rule(WeaveKind::Chase) },
    Weave { word: "pairing", figures: Figures::None(WeaveKind::Pairing) },
    Weave { word: "wale", figures: Figures::Rods(WeaveKind::Wale, &[3, 4, 5]) },
    Weave { word: "slew", figures: Figures::None(WeaveKind::Slew(Rule::PLAIN)) },
    Weave { word: "slew twill", figures: Figures::Rule(WeaveKind::Slew) },
    Weave { word: "skip one", figures: Figures::None(WeaveKind::SkipOne) },
    Weave { word: "drawn", figures: Figures::None(WeaveKind::Drawn) },
];

impl Weave {
    /// The weave with the figures that most often follow its word, then with others that are few.
    pub fn offered(&self) -> Vec<WeaveKind> {
        match self.figures {
            Figures::None(kind) => vec![kind],
            Figures::Rule(kind) => vec![kind(Rule::new(2, 2))],
            Figures::Rods(kind, rods) => rods.iter().map(|rods| kind(*rods)).collect(),
        }
    }

    fn with(&self, figures: &str) -> Option<WeaveKind> {
        match self.figures {
            Figures::None(kind) => figures.is_empty().then_some(kind),
            Figures::Rule(kind) => rule(figures).map(kind),
            Figures::Rods(kind, rods) => {
                rods.iter().find(|rods| rods.to_string() == figures).map(|rods| kind(*rods))
            }
        }
    }
}

/// The weave of this name, such as `twill 2/1`; doubled spaces do not matter.
pub fn read(text: &str) -> Option<WeaveKind> {
    let words: Vec<&str> = text.split_whitespace().collect();
    let text = words.join(" ");
    ALL.iter().find_map(|weave| {
        let figures = text.strip_prefix(weave.word)?;
        let parted = figures.is_empty() || figures.starts_with(' ');
        if parted { weave.with(figures.trim_start()) } else { None }
    })
}

fn rule(text: &str) -> Option<Rule> {
    let (over, under) = text.split_once('/')?;
    let figure = |text: &str| text.parse().ok().filter(|figure| (1..=LONGEST_FLOAT).contains(figure));
    Some(Rule::new(figure(over)?, figure(under)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_weave_on_offer_is_read() {
        for weave in ALL {
            for kind in weave.offered() {
                assert!(kind.to_string().starts_with(weave.word), "{kind}");
                assert_eq!(read(&kind.to_string()), Some(kind));
            }
        }
    }

    #[test]
    fn figures_beyond_a_weave_are_not_read() {
        for text in [
            "plain 2",
            "twill",
            "twill 2",
            "twill 9/1",
            "twill 0/1",
            "wale 2",
            "wale 6",
            "wale3",
            "twills 2/2",
        ] {
            assert_eq!(read(text), None, "{text}");
        }
        assert_eq!(read(" reversed  twill 3/1 "), Some(WeaveKind::ReversedTwill(Rule::new(3, 1))));
    }
}
