//! The words by which the file tells apart what the computation tells apart.

use serde::Serialize;

/// Declares words with the same variants as an enum of the computation; one that is missing does not
/// compile.
macro_rules! words {
    ($($(#[$doc:meta])* $name:ident = $of:ty { $($variant:ident),+ })+) => { $(
        $(#[$doc])*
        #[derive(Clone, Copy, Serialize)]
        #[cfg_attr(test, derive(schemars::JsonSchema))]
        #[serde(rename_all = "kebab-case")]
        pub(crate) enum $name {
            $(#[allow(missing_docs, reason = "the word says it")] $variant),+
        }

        impl From<&$of> for $name {
            fn from(of: &$of) -> Self {
                match of { $(<$of>::$variant => Self::$variant),+ }
            }
        }
    )+ };
}

words! {
    /// Units that stand first.
    Units = basket::pattern::Units { Inches, Millimetres }
    /// What protects the finished basket.
    Finish = basket::pattern::Finish { None, Shellac, StainAndShellac, Oil, Varnish }
    /// What a finish goes on.
    FinishPart = basket::pattern::FinishPart { All, Handle, Base, Rim }
    /// What lies ready before the making begins.
    Ready = basket::pattern::Ready { StavesCut, StavesTapered, Rings, Handle, Ears, Base }
    /// Which vessel of a basket.
    Of = basket::Of { Body, Lid }
    /// Which face of a stave looks out.
    OvalSide = basket::pattern::OvalSide { Out, In }
    /// At each stave or at each second one.
    Every = basket::pattern::Every { Stave, OtherStave }
    /// How the rim is bound.
    LashingStyle = basket::pattern::LashingStyle { Single, Crossed }
    /// What ears are made of.
    EarMaterial = basket::pattern::EarMaterial { Brass, Oak, Bone }
    /// How two ears are placed on a count of staves.
    EarPlacing = basket::pattern::EarPlacing { OnStaves, StaveAndGap, Shared, ByAngle }
    /// The curve of a bail.
    BailCurve = basket::pattern::BailCurve { Semicircle, ThreeCentred, HalfEllipse }
    /// How one row follows the other.
    Way = basket::pattern::Way { Continuous, RowByRow }
    /// What would make a weave run on a count of staves.
    Mend = basket::weave::Mend {
        SecondWeaver, OneWeaver, RunOn, StepUp, StartStop, SkipOne, SplitStave, HalfStave
    }
    /// How much a finding weighs.
    Grade = basket::Grade { Stop, Care, Note }
    /// A state of the basket that a step reaches.
    Stage = basket::steps::Stage {
        Prepared, BaseOnMould, StavesSet, FirstRows, HalfWoven, Woven, EarsSet, RimClamped, Pinned, Lashed,
        Handled, Finished
    }
    /// A step of the making.
    StepKind = basket::pattern::StepKind {
        Cut, Base, Staves, FirstRows, Half, Rest, Dry, Ears, Rim, Pins, Lashing, Handle, OffMould, Finish
    }
}
