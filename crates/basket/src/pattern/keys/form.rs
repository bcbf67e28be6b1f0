//! Keys as fields of a form, and by their names.

use super::declared::{Declared, Takes};
use super::group::Group;

/// A key with a field of its own.
#[derive(Clone, Copy)]
pub struct Field {
    /// The key.
    pub key: &'static dyn Declared,
    /// Where it belongs.
    pub group: Group,
}

/// The fields of all keys but those within lists, which are edited by other means, in the order of
/// the file.
pub fn fields() -> Vec<Field> {
    let mut fields = Vec::new();
    for key in super::ALL {
        if let Some(group) = key.group() {
            add(*key, group, &mut fields);
        }
    }
    fields
}

fn add(key: &'static dyn Declared, group: Group, fields: &mut Vec<Field>) {
    let takes = key.takes();
    let within = match takes {
        Takes::Sections(_) | Takes::Named(_) | Takes::OwnColours(_) | Takes::Pairs(_) => return,
        Takes::Section(contents) => contents.keys,
        Takes::Part(contents, _) => {
            fields.push(Field { key, group });
            contents.keys
        }
        _ => {
            fields.push(Field { key, group });
            return;
        }
    };
    for inner in within {
        add(*inner, group, fields);
    }
}

/// Every key, each section before the keys within it.
pub fn every() -> Vec<&'static dyn Declared> {
    fn gather(keys: &'static [&'static dyn Declared], every: &mut Vec<&'static dyn Declared>) {
        for key in keys {
            every.push(*key);
            gather(key.takes().contents().keys, every);
        }
    }
    let mut every_key = Vec::new();
    gather(super::ALL, &mut every_key);
    every_key
}

/// The key at the end of a way such as `base.groove.depth` or `weave.courses[2].rows`.
pub fn find(path: &str) -> Option<&'static dyn Declared> {
    let names = path.split('.').map(|part| part.split_once('[').map_or(part, |(name, _)| name));
    let path = names.collect::<Vec<_>>().join(".");
    every().into_iter().find(|key| key.path() == path)
}
