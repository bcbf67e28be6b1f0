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
    /// To which side a weaver runs.
    CaneFace = basket::pattern::CaneFace { Dull, Shiny }
    Direction = basket::pattern::Direction { Right, Left }
    /// What a finish goes on.
    FinishPart = basket::pattern::FinishPart { All, Handle, Base, Rim }
    /// What lies ready before the making begins.
    Ready = basket::pattern::Ready { StavesCut, StavesTapered, Rings, Handle, Ears, Base }
    /// Which vessel of a basket.
    Of = basket::Of { Body, Lid }
    /// Where staves are spaced evenly.
    Spacing = basket::pattern::Spacing { Foot, Rim }
    /// Which face of a stave looks out.
    OvalSide = basket::pattern::OvalSide { Out, In }
    /// At each stave or at each second one.
    Every = basket::pattern::Every { Stave, OtherStave }
    /// How the rim is bound.
    LashingStyle = basket::pattern::LashingStyle { Single, Crossed }
    /// What ears are made of.
    EarMaterial = basket::pattern::EarMaterial { Brass, Wood, Oak, Bone }
    /// How ears get into the basket.
    EarWay = basket::pattern::EarWay { WovenIn, PushedDown, AsStave }
    /// How the hoops of a rim come to be.
    HoopWay = basket::pattern::HoopWay { Rings, Bent, Bought }
    /// How two ears are placed on a count of staves.
    EarPlacing = basket::pattern::EarPlacing { OnStaves, StaveAndGap, Shared, ByAngle }
    /// An axis of a mould that is not round.
    EarAxis = basket::pattern::EarAxis { Long, Short }
    /// Who bends a handle.
    HandleMade = basket::pattern::HandleMade { Bought, Bent }
    /// How a swinging handle meets its ears.
    HandleJoint = basket::pattern::HandleJoint { Outside, Slot, Between }
    /// Whether a mould comes apart.
    MouldPieces = basket::pattern::MouldPieces { One, Several }
    /// On which face of a base rings are turned.
    Rings = basket::pattern::Rings { None, Out, In }
    /// The curve of a bow.
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
        Prepared, BaseOnMould, StavesSet, FirstRows, HalfWoven, EarsSet, Woven, RingsMade, OffMould, RimClamped,
        Pinned, Lashed, Handled, Finished
    }
    /// A step of the making.
    StepKind = basket::pattern::StepKind {
        Cut, Bend, Seal, Base, Staves, FirstRows, Half, Rest, ToEars, Dry, Ears, Rings, OffMould, Rim, Pins, Lashing, Handle,
        Plug, Lid, Finish
    }
}
