//! One language's messages.

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::LanguageIdentifier;

use crate::Language;

/// All messages of a language.
pub(crate) struct Messages {
    bundle: FluentBundle<FluentResource>,
    /// What is wrong with the files; empty for the ones shipped, as a test asserts.
    #[cfg_attr(not(test), expect(dead_code, reason = "read by the tests"))]
    pub(crate) faults: Vec<String>,
}

impl Messages {
    /// Reads message files. A broken entry is left out and noted; the rest is used.
    pub(crate) fn read(language: Language, files: &[&str]) -> Self {
        let tag: LanguageIdentifier = language.tag().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        // Isolation marks are invisible characters that spoil copied text and narrow tables.
        bundle.set_use_isolating(false);
        let mut faults = Vec::new();
        for text in files {
            let resource = FluentResource::try_new((*text).to_owned()).unwrap_or_else(|(rest, errors)| {
                faults.extend(errors.iter().map(ToString::to_string));
                rest
            });
            if let Err(errors) = bundle.add_resource(resource) {
                faults.extend(errors.iter().map(ToString::to_string));
            }
        }
        Self { bundle, faults }
    }

    /// The text of a message, or of one of its attributes after a dot; none if there is none.
    pub(crate) fn format(&self, id: &str, args: &FluentArgs<'_>) -> Option<String> {
        let (name, attribute) = split(id);
        let message = self.bundle.get_message(name)?;
        let pattern = match attribute {
            None => message.value()?,
            Some(attribute) => message.get_attribute(attribute)?.value(),
        };
        let mut errors = Vec::new();
        Some(self.bundle.format_pattern(pattern, Some(args), &mut errors).into_owned())
    }

    pub(crate) fn contains(&self, id: &str) -> bool {
        let (name, attribute) = split(id);
        self.bundle.get_message(name).is_some_and(|message| match attribute {
            None => message.value().is_some(),
            Some(attribute) => message.get_attribute(attribute).is_some(),
        })
    }
}

fn split(id: &str) -> (&str, Option<&str>) {
    match id.split_once('.') {
        Some((name, attribute)) => (name, Some(attribute)),
        None => (id, None),
    }
}

#[cfg(test)]
mod tests {
    use crate::Language;
    use crate::language::messages;

    #[test]
    fn shipped_files_have_no_faults() {
        for language in Language::ALL {
            assert_eq!(messages(*language).faults, Vec::<String>::new(), "{language:?}");
        }
    }
}
