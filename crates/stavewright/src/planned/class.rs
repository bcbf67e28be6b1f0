//! From the text of a kits file to the class with its kits.

use std::collections::BTreeMap;

use basket::Draft;
use basket::pattern::AllReady;
use planning::kits::{Kits, Student};
use words::Words;
use workshop::Order;

use crate::kits_file::{Group, KitsFile, PriceTable};

/// One class with its kits.
pub(crate) struct PlannedClass {
    pub(crate) file: KitsFile,
    /// A draft for each group of students.
    pub(crate) drafts: Vec<Draft>,
    pub(crate) kits: Kits,
}

/// An order as a class whose students all make the same: what it takes is bought, cut and priced as a class's is.
pub(crate) fn of_order(order: &Order, draft: Draft, price: PriceTable) -> PlannedClass {
    let student = Student { name: order.name.clone(), draft: &draft, colours: BTreeMap::new() };
    let kits = Kits::of(&vec![student; order.count as usize]);
    PlannedClass { file: KitsFile::of_order(order, price), drafts: vec![draft], kits }
}

/// Drafts the pattern that a kits file names, with what is prepared in the place of the pattern's own.
type Drafting<'r, E> = dyn Fn(&str, Option<AllReady>) -> Result<Draft, E> + 'r;

/// How the classes of kits files are put together: in whose words, and how their patterns are drafted.
pub(crate) struct Reading<'r, E> {
    pub(crate) words: &'r Words,
    pub(crate) draft: &'r Drafting<'r, E>,
}

impl<E> Reading<'_, E> {
    /// The class of a kits file.
    pub(crate) fn class(&self, file: KitsFile) -> Result<PlannedClass, E> {
        let draft = |group: &Group| (self.draft)(&group.pattern, group.ready.clone());
        let drafts: Vec<Draft> = file.students.iter().map(draft).collect::<Result<_, _>>()?;
        let mut students: Vec<Student> = Vec::new();
        for (group, draft) in file.students.iter().zip(&drafts) {
            for _ in 0..group.count {
                let number = students.len() as u32 + 1;
                let name = group.name.clone().filter(|_| group.count == 1);
                let name =
                    name.unwrap_or_else(|| self.words.with("workshop-student", &[("number", number.into())]));
                students.push(Student { name, draft, colours: group.colours.clone() });
            }
        }
        let kits = Kits::of(&students);
        Ok(PlannedClass { file, drafts, kits })
    }
}
