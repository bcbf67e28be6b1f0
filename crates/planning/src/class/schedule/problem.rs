//! What is to be planned.

/// Minutes from any moment that all of a problem share, such as midnight before the first day.
pub type Minute = i64;

/// A stretch of time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Window {
    /// Its beginning.
    pub from: Minute,
    /// Its end.
    pub to: Minute,
}

impl Window {
    /// Minutes from beginning to end; none if it ends before it begins.
    pub fn minutes(&self) -> Minute {
        self.to.saturating_sub(self.from).max(0)
    }
}

/// A step as the plan sees it.
#[expect(
    clippy::struct_excessive_bools,
    reason = "what a step takes and where it is done are answers of their own"
)]
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Task {
    /// Minutes of work.
    pub work: Minute,
    /// Minutes of waiting after the work, which run through the night.
    pub wait: Minute,
    /// Into how many like pieces the work can be broken where a session ends; 1 for work that is not broken.
    pub pieces: u32,
    /// Whether it is done on a mould. The mould is held from the first such step to the end of the wait of
    /// the last.
    pub mould: bool,
    /// Whether it takes a drill, from its beginning to its end.
    pub drill: bool,
    /// Whether it takes a table, from its beginning to its end.
    pub table: bool,
    /// Whether it takes the teacher's hands, from its beginning to its end.
    pub hands: bool,
    /// Whether it may be done at home as well.
    pub home: bool,
}

/// Students with the same steps, who begin at the same time.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Group {
    /// How many.
    pub students: u32,
    /// When they come.
    pub from: Minute,
    /// Whether each of them has a mould from then on, and waits for none.
    pub on_mould: bool,
    /// Their steps, in order.
    pub tasks: Vec<Task>,
}

/// A class to be planned.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// The students.
    pub groups: Vec<Group>,
    /// The sessions, in order, none over another.
    pub sessions: Vec<Window>,
    /// Hours at home, in order, none over another or over a session.
    pub home: Vec<Window>,
    /// How many moulds there are.
    pub moulds: u32,
    /// How many drills there are.
    pub drills: u32,
    /// How many have room at the tables at once.
    pub tables: u32,
    /// How many students the teacher can stand by at once.
    pub hands: u32,
}

impl Problem {
    /// How many moulds are taken before anybody begins.
    pub(super) fn moulds_held(&self) -> u32 {
        let held = self.groups.iter().filter(|group| group.on_mould).map(|group| group.students);
        held.fold(0, u32::saturating_add)
    }

    /// How many moulds are free before anybody begins, no more than there are students.
    pub(super) fn moulds_free(&self) -> u32 {
        self.moulds.min(self.students()).saturating_sub(self.moulds_held())
    }

    /// How many students there are.
    pub fn students(&self) -> u32 {
        self.groups.iter().map(|group| group.students).fold(0, u32::saturating_add)
    }
}

impl Task {
    /// The longest stretch of work that cannot be broken off.
    pub fn longest_piece(&self) -> Minute {
        let pieces = Minute::from(self.pieces.max(1));
        (self.work + pieces - 1) / pieces
    }
}
