//! What is wrong in the file of a class, as identifiers and values: the sentences are in the message files.

use std::ops::Range;

use basket::message::{Message, Value};
use basket::pattern::Problem;

/// Something that is wrong in the file of a class.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// What is wrong. How to mend it says the attribute `help` of the same message.
    pub says: Message,
    /// Where it stands in the text.
    pub span: Option<Range<usize>>,
}

impl Fault {
    /// The fault in sentences. `say` is asked for those of an identifier with values.
    pub fn told(self, say: impl Fn(&str, &[(&str, Value)]) -> String) -> Problem {
        let Message { id, args } = self.says;
        Problem {
            message: say(id, &args),
            span: self.span,
            help: Some(say(&format!("{id}.help"), &args)),
            fault: None,
        }
    }
}

pub(super) fn name(text: impl Into<String>) -> Value {
    Value::Name(text.into())
}
