//! Keys with the type of what they hold.

use super::declared::{Declared, Fits, Takes, Usual};
use super::group::Group;
use crate::message::Value;

/// A key of the pattern file that holds a `T`.
///
/// Reading, the form of the bench, the JSON Schema, the tables of the manual and the names in choices and
/// remedies all come from this one declaration.
#[derive(Clone, Copy, Debug)]
pub struct Key<T: Writable> {
    /// The way to it from the top of the file, such as `base.groove.depth`. A list on the way is passed
    /// over: `weave.courses.rows`.
    pub path: &'static str,
    /// Which values it takes.
    pub takes: T::Takes,
    /// What stands in its place where it is left out.
    pub usual: Usual<T::Usual>,
    /// A value, as a file writes it.
    pub example: &'static str,
    group: Option<Group>,
    fits: Fits,
}

/// What a key can hold.
pub trait Writable: 'static {
    /// What is said of the values that a key takes.
    type Takes: Copy + Sync;
    /// A value that may be usual, whatever the basket.
    type Usual: Copy + Sync;

    /// Which values a key takes.
    fn takes(takes: &Self::Takes) -> Takes;

    /// A usual value, to be said.
    fn say(usual: Self::Usual) -> Value;
}

impl<T: Writable> Key<T> {
    /// A key; the example stands as a file writes it.
    pub(super) const fn new(
        path: &'static str,
        takes: T::Takes,
        usual: Usual<T::Usual>,
        example: &'static str,
    ) -> Self {
        Self { path, takes, usual, example, group: None, fits: Fits::ALL }
    }

    /// The same among the values of this group, and with it all keys within it.
    pub(super) const fn among(self, group: Group) -> Self {
        Self { group: Some(group), ..self }
    }

    /// The same for courses of some weaves only.
    pub(super) const fn with(self, fits: Fits) -> Self {
        Self { fits, ..self }
    }

    /// The value that is usual whatever the basket, if there is one.
    pub const fn constant(&self) -> Option<T::Usual> {
        match self.usual {
            Usual::Constant(usual) => Some(usual),
            _ => None,
        }
    }
}

impl<T: Writable> Declared for Key<T> {
    fn path(&self) -> &'static str {
        self.path
    }

    fn takes(&self) -> Takes {
        T::takes(&self.takes)
    }

    fn usual(&self) -> Usual<Value> {
        match self.usual {
            Usual::Needed => Usual::Needed,
            Usual::Constant(usual) => Usual::Constant(T::say(usual)),
            Usual::Computed(id) => Usual::Computed(id),
            Usual::Nothing(id) => Usual::Nothing(id),
        }
    }

    fn example(&self) -> &'static str {
        self.example
    }

    fn group(&self) -> Option<Group> {
        self.group
    }

    fn fits(&self) -> Fits {
        self.fits
    }
}

/// Declares keys, and lists them in the order of the form as `ALL`.
macro_rules! keys {
    ($($(#[$about:meta])* pub const $name:ident: $of:ty = $key:expr;)+) => {
        $($(#[$about])* pub const $name: $of = $key;)+

        /// All of them, in the order of the form.
        pub const ALL: &[&dyn $crate::pattern::keys::Declared] = &[$(&$name),+];
    };
}
pub(super) use keys;
