//! What a worker is told, and what it says.

use planning::records::Adopted;
use serde::{Deserialize, Serialize};

use crate::own::Own;

/// A kind of work. The request itself follows as it was sent to the server.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub(crate) enum Task {
    /// Everything but pictures.
    Look,
    /// A changed pattern, and what it gives.
    Edit,
    /// The basket in the round.
    Picture,
    /// A flat drawing.
    Drawing,
    /// The weaving crossing by crossing.
    Chart,
    /// Two versions side by side.
    Compare,
    /// A mould from its photograph.
    Trace,
    /// The pattern in several sizes.
    Nest,
    /// The sheet of several sizes.
    NestSheet,
    /// Ways to weave a course for a look.
    Ways,
    /// Counts of staves near by.
    Counts,
    /// A first basket.
    First,
    /// Whether a packet can be made of a pattern.
    CheckPacket,
    /// A packet.
    Packet,
    /// A plan of a class: what is shown of it, or its sheets.
    Plan,
    /// What can be written down of a pattern's making.
    MakingForm,
    /// What was written down of one, read and held beside its pattern.
    ReadMaking,
    /// The log, or the card of a making, to print.
    PrintMakings,
    /// What makings tell of a hand.
    Learn,
    /// In what versions of a pattern differ.
    History,
    /// No work of its own: the search that is going on shall answer with the best it has.
    Enough,
}

impl Task {
    /// Whether it is a matter of a moment, which nobody should wait for behind pictures.
    pub(crate) fn is_quick(self) -> bool {
        matches!(self, Self::Look | Self::Edit | Self::Chart | Self::Compare)
    }
}

/// An order to a worker.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(crate) struct Order {
    /// What to do.
    pub(crate) task: Task,
    /// Whether the pattern may name files of the folder that no pattern there names.
    pub(crate) any_file: bool,
    /// What the shelf of the folder says of materials.
    pub(crate) own: Own,
    /// The figures that the workshop took up; none for the usual hand.
    pub(crate) hand: Option<Adopted>,
}

/// What a worker says, with a body.
#[derive(Clone, Debug, Serialize, Deserialize)]
pub(crate) enum Word {
    /// It begins with a piece of the work.
    Step(String),
    /// A file is done.
    File(String),
    /// The work is done.
    Answer {
        /// Status code of the answer.
        status: u16,
        /// Media type of the body.
        media: String,
    },
}
