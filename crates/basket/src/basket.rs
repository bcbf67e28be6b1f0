//! The basket as computed: its parts, and what was chosen for them.

use crate::choice::Choice;
use crate::hand::Hand;
use crate::parts::fittings::{Bow, Ears, Handle, Rivets, SwingHandle};
use crate::parts::form::Across;
use crate::parts::lid::Lid;
use crate::parts::vessel::Vessel;
use crate::pattern::{AllReady, Finish, FinishPart, Language, Note, Units};

/// Everything computed for one basket, and nothing that follows from it. A plain value: nothing in it
/// changes once it is made.
#[derive(Clone, Debug, PartialEq)]
pub struct Basket {
    /// Name of the basket.
    pub title: String,
    /// Units in which the maker thinks.
    pub units: Units,
    /// Language of the sheets; none when the pattern does not say.
    pub language: Option<Language>,
    /// The basket itself.
    pub body: Vessel,
    /// Its lid, if there is one.
    pub lid: Option<Lid>,
    /// The ears, if there are any.
    pub ears: Option<Ears>,
    /// The handle, if there is one.
    pub handle: Option<Handle>,
    /// What protects it.
    pub finish: Finish,
    /// What that goes on; empty: the whole basket.
    pub finish_on: Vec<FinishPart>,
    /// What is written on it beside the date.
    pub signature: Option<String>,
    /// What lies ready before the making begins.
    pub ready: AllReady,
    /// The maker's own words and photographs for the steps.
    pub notes: Vec<Note>,
    /// The hand that it was computed for.
    pub hand: Hand,
    /// What Stavewright chose, and why.
    pub choices: Vec<Choice>,
}

impl Basket {
    /// Length and width over the outer hoop.
    pub fn across(&self) -> Across {
        self.body.rim_level(self.body.rim().outer_radius(self.body.uprights())).across()
    }

    /// What stands in the rim at two places that face each other: the ears, or the ends of a fixed handle.
    pub fn in_rim(&self) -> Option<&Ears> {
        self.handle.as_ref().and_then(Handle::ends).or(self.ears.as_ref())
    }

    /// Its swinging handle, if it has one.
    pub fn swing(&self) -> Option<&SwingHandle> {
        self.handle.as_ref().and_then(Handle::swing)
    }

    /// The bow of its handle, if it has one.
    pub fn bow(&self) -> Option<&Bow> {
        self.handle.as_ref().and_then(Handle::bow)
    }

    /// The rivets on its ears, if there are any.
    pub fn rivets(&self) -> Option<&Rivets> {
        self.handle.as_ref().and_then(Handle::rivets)
    }

    /// The numbers of the staves that ears stand for.
    pub fn staves_left_out(&self) -> Vec<u32> {
        let ears = self.ears.as_ref().filter(|ears| ears.replace_staves());
        ears.iter().flat_map(|ears| &ears.each).map(|ear| ear.stave).collect()
    }

    /// How many staves are cut, spares apart: all but those that ears stand for.
    pub fn staves_to_cut(&self) -> u32 {
        self.body.uprights().count.saturating_sub(self.staves_left_out().len() as u32)
    }
}
