//! The computation's own words (stages, weaves, placings, …) as identifiers of their names in the
//! message files.

use crate::findings::{Grade, Part};
use crate::message::Message;
use crate::pattern::{
    BailCurve, EarMaterial, EarPlacing, Every, Finish, Language, LashingStyle, Lean, Outline, OvalSide, Side,
    Units, Way, WeaveKind,
};
use crate::steps::Stage;
use crate::stock::Kind;
use crate::weave::Rule;

/// A word with a name in the message files.
pub trait Term {
    /// Identifier of its name in the message files.
    fn term(self) -> &'static str;
}

impl Term for EarMaterial {
    fn term(self) -> &'static str {
        match self {
            Self::Brass => "ear-material-brass",
            Self::Oak => "ear-material-oak",
            Self::Bone => "ear-material-bone",
        }
    }
}

impl Term for EarPlacing {
    fn term(self) -> &'static str {
        match self {
            Self::OnStaves => "ear-placing-on-staves",
            Self::StaveAndGap => "ear-placing-stave-and-gap",
            Self::Shared => "ear-placing-shared",
            Self::ByAngle => "ear-placing-by-angle",
        }
    }
}

impl Term for BailCurve {
    fn term(self) -> &'static str {
        match self {
            Self::Semicircle => "bail-curve-semicircle",
            Self::ThreeCentred => "bail-curve-three-centred",
            Self::HalfEllipse => "bail-curve-half-ellipse",
        }
    }
}

impl Term for Finish {
    fn term(self) -> &'static str {
        match self {
            Self::None => "finish-none",
            Self::Shellac => "finish-shellac",
            Self::StainAndShellac => "finish-stain-and-shellac",
            Self::Oil => "finish-oil",
        }
    }
}

impl Term for WeaveKind {
    fn term(self) -> &'static str {
        match self {
            Self::Plain => "weave-plain",
            Self::Twill(_) => "weave-twill",
            Self::ReversedTwill(_) => "weave-reversed-twill",
            Self::Chase(rule) if rule == Rule::PLAIN => "weave-chase",
            Self::Chase(_) => "weave-chase-twill",
            Self::Slew(rule) if rule == Rule::PLAIN => "weave-slew",
            Self::Slew(_) => "weave-slew-twill",
            Self::Pairing => "weave-pairing",
            Self::Wale(3) => "weave-wale-3",
            Self::Wale(4) => "weave-wale-4",
            Self::Wale(_) => "weave-wale-5",
            Self::SkipOne => "weave-skip-one",
            Self::Drawn => "weave-drawn",
        }
    }
}

impl Term for Units {
    fn term(self) -> &'static str {
        match self {
            Self::Inches => "units-inches",
            Self::Millimetres => "units-millimetres",
        }
    }
}

impl Term for Language {
    fn term(self) -> &'static str {
        match self {
            Self::English => "language-english",
            Self::German => "language-german",
        }
    }
}

impl Term for Outline {
    fn term(self) -> &'static str {
        match self {
            Self::Round => "outline-round",
        }
    }
}

impl Term for Side {
    fn term(self) -> &'static str {
        match self {
            Self::Straight => "side-straight",
            Self::Cone => "side-cone",
            Self::Bowl => "side-bowl",
        }
    }
}

impl Term for Way {
    fn term(self) -> &'static str {
        match self {
            Self::Continuous => "way-continuous",
            Self::RowByRow => "way-row-by-row",
        }
    }
}

impl Term for Lean {
    fn term(self) -> &'static str {
        match self {
            Self::Left => "lean-left",
            Self::Right => "lean-right",
        }
    }
}

impl WeaveKind {
    /// Its name, with over and under where they belong to it.
    pub fn name(self) -> Message {
        let name = Message::new(self.term());
        match self {
            Self::Twill(rule) | Self::ReversedTwill(rule) | Self::Chase(rule) | Self::Slew(rule) => {
                name.with("over", rule.over()).with("under", rule.under())
            }
            _ => name,
        }
    }
}

impl Term for Every {
    fn term(self) -> &'static str {
        match self {
            Self::Stave => "every-stave",
            Self::OtherStave => "every-other-stave",
        }
    }
}

impl Term for LashingStyle {
    fn term(self) -> &'static str {
        match self {
            Self::Single => "lashing-style-single",
            Self::Crossed => "lashing-style-crossed",
        }
    }
}

impl Term for OvalSide {
    fn term(self) -> &'static str {
        match self {
            Self::Out => "oval-side-out",
            Self::In => "oval-side-in",
        }
    }
}

impl Term for Grade {
    fn term(self) -> &'static str {
        match self {
            Self::Stop => "grade-stop",
            Self::Care => "grade-care",
            Self::Note => "grade-note",
        }
    }
}

impl Term for Part {
    fn term(self) -> &'static str {
        match self {
            Self::Whole => "part-whole",
            Self::Mould => "part-mould",
            Self::Base => "part-base",
            Self::Groove => "part-groove",
            Self::Staves => "part-staves",
            Self::Weave => "part-weave",
            Self::Rim => "part-rim",
            Self::OuterHoop => "part-outer-hoop",
            Self::InnerHoop => "part-inner-hoop",
            Self::Pins => "part-pins",
            Self::Filler => "part-filler",
            Self::Lashing => "part-lashing",
            Self::Ears => "part-ears",
            Self::Handle => "part-handle",
        }
    }
}

impl Term for Stage {
    fn term(self) -> &'static str {
        match self {
            Self::Prepared => "stage-prepared",
            Self::BaseOnMould => "stage-base-on-mould",
            Self::StavesSet => "stage-staves-set",
            Self::FirstRows => "stage-first-rows",
            Self::HalfWoven => "stage-half-woven",
            Self::Woven => "stage-woven",
            Self::EarsSet => "stage-ears-set",
            Self::RimClamped => "stage-rim-clamped",
            Self::Pinned => "stage-pinned",
            Self::Lashed => "stage-lashed",
            Self::Handled => "stage-handled",
            Self::Finished => "stage-finished",
        }
    }
}

impl Term for Kind {
    fn term(self) -> &'static str {
        match self {
            Self::RoundReed => "kind-round-reed",
            Self::FlatReed => "kind-flat-reed",
            Self::FlatOvalReed => "kind-flat-oval-reed",
            Self::HalfRoundReed => "kind-half-round-reed",
            Self::ChairCane => "kind-chair-cane",
            Self::BinderCane => "kind-binder-cane",
            Self::Splint => "kind-splint",
            Self::Pin => "kind-pin",
            Self::Rivet => "kind-rivet",
            Self::Burr => "kind-burr",
        }
    }
}
