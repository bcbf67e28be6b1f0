//! A plan that was found.

use super::problem::{Minute, Window};

/// A step of one student.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placed {
    /// The stretches of its work, one a session; none for work of no minutes.
    pub work: Vec<Window>,
    /// From the beginning of the work to its end.
    pub span: Window,
    /// When the next step may begin: the end of its work and its wait.
    pub until: Minute,
}

/// What one student does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Turn {
    /// The number of the student's group, from 0.
    pub group: usize,
    /// The student's steps in order.
    pub steps: Vec<Placed>,
    /// The number of the mould, from 0, and when it is held.
    pub mould: Option<(u32, Window)>,
}

/// Who does what when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// The students, in the order of their groups.
    pub students: Vec<Turn>,
    /// The end of the last work.
    pub end: Minute,
}
