//! From a course as written to what its weavers do, and how its strands are joined.

use crate::message::{Message, Value};
use crate::pattern::{CoursePattern, Way};
use crate::weave::Course;
use crate::weave::fabric::Fabric;
use crate::weave::passing::Passing;

impl CoursePattern {
    /// How the rows follow: one way runs on, the other begins each row anew.
    pub fn rows_follow(&self) -> Way {
        self.weave.only_way().or(self.way).unwrap_or(Way::Continuous)
    }

    /// This course on a count of staves, where it does not go on from one below.
    pub fn fabric(&self, count: u32) -> Fabric {
        let start = self.start.unwrap_or(1).saturating_sub(1);
        Fabric::new(Passing::of(self), count).starting_at(start)
    }

    /// Whether the weave goes on from the course below: where it is the same in any material, unless the
    /// pattern says at which stave it is to start.
    pub(super) fn goes_on(&self, below: &Self) -> bool {
        self.start.is_none() && Passing::of(self) == Passing::of(below)
    }
}

impl Course {
    /// What to do at each of its joins, with its row, in weaving order.
    pub fn joining(&self) -> Vec<(u32, Message)> {
        self.joins
            .iter()
            .map(|join| {
                let colour = self.weavers.get(join.weaver as usize - 1).and_then(|weaver| {
                    let row = join.row.saturating_sub(self.first_row);
                    weaver.colour_at(row, self.fabric.place_in(row, join.cut_over.saturating_sub(1)))
                });
                let id = if join.recolour { "weave-row-join-colour" } else { "weave-row-join" };
                let message = Message::new(id)
                    .with("cut", join.cut_over)
                    .with("start", join.start_behind)
                    .with("colour", colour.map_or_else(|| Value::Name(String::new()), Value::from));
                (join.row, message)
            })
            .collect()
    }
}
