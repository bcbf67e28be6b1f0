//! Kits for a class: what goes into each bag, what to cut for all of them at once, and how many spares the
//! teacher keeps for everybody.

use std::collections::BTreeMap;

use basket::cuts::Cut;
use basket::message::Message;
use basket::staves::SPARES_CONFIDENCE;
use basket::{Colour, Draft, Length, Piece, chance};

/// Spares of what is not made by chance: one in ten (common practice).
const SPARE_IN: u32 = 10;
/// Lengths that differ by less are cut alike.
const ALIKE: Length = Length::mm(0.05);

/// One student of a class.
#[derive(Clone, Debug)]
pub struct Student<'d> {
    /// Who, such as `student 4`.
    pub name: String,
    /// The basket with the size that the student makes, and what is prepared for it.
    pub draft: &'d Draft,
    /// Colours that the student has in the place of the pattern's.
    pub colours: BTreeMap<String, Colour>,
}

/// What lies in one student's bag.
#[derive(Clone, Debug, PartialEq)]
pub struct Bag {
    /// Whose it is.
    pub student: String,
    /// Which basket.
    pub title: String,
    /// The lines of the batch that are in it, and how many pieces of each.
    pub holds: Vec<(usize, u32)>,
    /// The longest soak of anything in it, in minutes.
    pub soak_minutes: Option<f64>,
}

/// Pieces that are cut alike for the whole class.
#[derive(Clone, Debug, PartialEq)]
pub struct Batch {
    /// What one piece is; its counts are those of the whole class.
    pub cut: Cut,
    /// How many bags hold how many each, the most first.
    pub shares: Vec<(u32, u32)>,
}

/// The kits of one class.
#[derive(Clone, Debug, PartialEq)]
pub struct Kits {
    /// A bag for each student, in their order.
    pub bags: Vec<Bag>,
    /// What is cut for all of them, in making order.
    pub batches: Vec<Batch>,
    /// Tools that the room shares, as identifiers of messages, each once.
    pub tools: Vec<&'static str>,
}

impl Kits {
    /// The kits of these students. Spares are pooled: staves by the chance that one is spoilt by the hand that
    /// the baskets were computed for, so that in 95 of 100 classes there are enough; of what the cut list has
    /// spares of otherwise, one in ten.
    pub fn of(students: &[Student]) -> Self {
        let mut kits = Self { bags: Vec::new(), batches: Vec::new(), tools: Vec::new() };
        for student in students {
            kits.fill(student);
        }
        // What is spoilt of the pooled pieces is spoilt by all of them: the clumsiest hand decides.
        let spoilt = students.iter().map(|student| student.draft.basket.hand.spoilt).fold(0.0, f64::max);
        for batch in &mut kits.batches {
            batch.cut.spares = match batch.cut.piece {
                Piece::Uprights => chance::spares(batch.cut.count, spoilt, SPARES_CONFIDENCE),
                _ if batch.cut.spares == 0 => 0,
                _ => batch.cut.count.div_ceil(SPARE_IN),
            };
            batch.cut.total =
                batch.cut.length.map(|length| length * f64::from(batch.cut.count + batch.cut.spares));
        }
        kits
    }

    fn fill(&mut self, student: &Student) {
        let mut bag = Bag {
            student: student.name.clone(),
            title: student.draft.basket.title.clone(),
            holds: Vec::new(),
            soak_minutes: soak(student.draft),
        };
        for cut in student.draft.cuts.iter().filter(|cut| cut.count > 0) {
            let dyed = cut.colour.clone().unwrap_or_default();
            let own = student.colours.get(&dyed.name).cloned().unwrap_or(dyed);
            let colour = (own != Colour::natural()).then_some(own);
            let cut = Cut { colour, ..cut.clone() };
            let place = self.batches.iter().position(|batch| is_alike(&batch.cut, &cut));
            let place = place.unwrap_or_else(|| {
                self.batches
                    .push(Batch { cut: Cut { count: 0, spares: 0, ..cut.clone() }, shares: Vec::new() });
                self.batches.len() - 1
            });
            if let Some(batch) = self.batches.get_mut(place) {
                batch.add(&cut);
            }
            match bag.holds.iter_mut().find(|(line, _)| *line == place) {
                Some((_, count)) => *count += cut.count,
                None => bag.holds.push((place, cut.count)),
            }
        }
        for tool in student.draft.steps.iter().flat_map(|step| &step.tools) {
            if !self.tools.contains(tool) {
                self.tools.push(tool);
            }
        }
        self.bags.push(bag);
    }
}

impl Batch {
    fn add(&mut self, cut: &Cut) {
        self.cut.count = self.cut.count.saturating_add(cut.count);
        self.cut.spares = self.cut.spares.saturating_add(cut.spares);
        match self.shares.iter_mut().find(|(_, each)| *each == cut.count) {
            Some((bags, _)) => *bags += 1,
            None => self.shares.push((1, cut.count)),
        }
        self.shares.sort_by_key(|(bags, each)| (std::cmp::Reverse(*bags), *each));
    }
}

/// Whether two lines are cut alike: the same piece of the same size from the same stock.
fn is_alike(a: &Cut, b: &Cut) -> bool {
    let lengths = match (a.length, b.length) {
        (Some(a), Some(b)) => (a - b).abs() < ALIKE,
        (a, b) => a == b,
    };
    let shapes = |cut: &Cut| cut.shape.as_ref().map(|shape: &Message| shape.id);
    lengths
        && a.piece == b.piece
        && a.of == b.of
        && a.stock == b.stock
        && a.colour == b.colour
        && a.width == b.width
        && shapes(a) == shapes(b)
}

fn soak(draft: &Draft) -> Option<f64> {
    draft.steps.iter().filter_map(|step| step.soak_minutes).reduce(f64::max)
}
