//! From the text of a kits file to the class with its kits.

use std::collections::BTreeMap;

use basket::pattern::{AllReady, Pattern, Ready, Word};
use basket::{Catalogue, Colour, Draft, Hand};
use planning::kits::{Kits, Student};
use words::Words;
use workshop::Order;

use crate::failure::Failure;
use crate::kits_file::{self, Group, KitsFile, PriceTable};
use crate::source::Text;

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
    let kits = Kits::of(&vec![student; order.count as usize], &Hand::USUAL);
    PlannedClass { file: KitsFile::of_order(order, price), drafts: vec![draft], kits }
}

/// How a kits file is read: with which materials, in whose words, and where its patterns are.
pub(crate) struct Reading<'r> {
    pub(crate) catalogue: &'r Catalogue,
    pub(crate) words: &'r Words,
    /// Reads the pattern that the file names.
    pub(crate) pattern: &'r dyn Fn(&str) -> Result<Pattern, Failure>,
}

impl Reading<'_> {
    /// The class of a kits file.
    pub(crate) fn class(&self, text: &Text) -> Result<PlannedClass, Failure> {
        let file = kits_file::parse(text)?;
        let drafts: Vec<Draft> =
            file.students.iter().map(|group| self.draft(group, text)).collect::<Result<_, _>>()?;
        let mut students: Vec<Student> = Vec::new();
        for (group, draft) in file.students.iter().zip(&drafts) {
            let colours = group
                .colours
                .iter()
                .map(|(from, to)| Ok((from.clone(), colour(to, text)?)))
                .collect::<Result<BTreeMap<_, _>, Failure>>()?;
            for _ in 0..group.count {
                let number = students.len() as u32 + 1;
                let name = group.name.clone().filter(|_| group.count == 1);
                let name =
                    name.unwrap_or_else(|| self.words.with("workshop-student", &[("number", number.into())]));
                students.push(Student { name, draft, colours: colours.clone() });
            }
        }
        let kits = Kits::of(&students, &Hand::USUAL);
        Ok(PlannedClass { file, drafts, kits })
    }

    fn draft(&self, group: &Group, text: &Text) -> Result<Draft, Failure> {
        let mut pattern = (self.pattern)(&group.pattern)?;
        if let Some(ready) = &group.ready {
            pattern.ready =
                AllReady::of(ready.iter().map(|word| prepared(word, text)).collect::<Result<_, _>>()?);
        }
        Ok(Draft::of(pattern, self.catalogue, &Hand::USUAL))
    }
}

fn colour(name: &str, text: &Text) -> Result<Colour, Failure> {
    let found = Colour::built_in(name).or_else(|| Colour::hex(name, name));
    found.ok_or_else(|| {
        let known: Vec<&str> = basket::colour::BUILT_IN.iter().map(|(name, _)| *name).collect();
        let what = format!("there is no colour `{name}`");
        Failure::of_file(&text.origin, what, format!("Colours are {}, or #rrggbb.", known.join(", ")))
    })
}

fn prepared(word: &str, text: &Text) -> Result<Ready, Failure> {
    let found = Ready::ALL.iter().copied().find(|ready| ready.word() == word);
    found.ok_or_else(|| {
        let known: Vec<&str> = Ready::ALL.iter().map(|ready| ready.word()).collect();
        let what = format!("ready: there is no `{word}`");
        Failure::of_file(&text.origin, what, format!("What can be ready: {}.", known.join(", ")))
    })
}
