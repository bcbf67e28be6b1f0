//! What a class may be asked while it works (common practice).

use super::{ALWAYS, When};
use crate::basket::Basket;
use crate::message::Message;
use crate::pattern::{Finish, WeaveKind};

/// A question, and of which baskets.
const QUESTIONS: &[(&str, When)] = &[
    ("question-taper", ALWAYS),
    ("question-odd", is_plain_on_odd),
    ("question-twill", climbs),
    ("question-band", ALWAYS),
    ("question-dry", ALWAYS),
    ("question-base", ALWAYS),
    ("question-ears", has_ears_on_odd),
    ("question-ear-pins", |basket| basket.ears.is_some()),
    ("question-scarfs", ALWAYS),
    ("question-lashing", |basket| basket.body.lashing().is_some()),
    ("question-oil", |basket| basket.finish == Finish::Oil),
    ("question-next", ALWAYS),
];

/// Questions for a class about this basket, in the order of its making. The answer is the attribute `answer` of
/// the message; both may mention the `count` of the staves and `more`, the next one; the `base` and how many `wraps` the
/// rim takes.
pub fn questions(basket: &Basket) -> Vec<Message> {
    let count = basket.body.uprights().count;
    let asked = QUESTIONS.iter().filter(|(_, when)| when(basket));
    asked
        .map(|(id, _)| {
            Message::new(id)
                .with("count", count)
                .with("more", count.saturating_add(1))
                .with("base", basket.body.base().across())
                .with("wraps", basket.body.lashing().map_or(0, |lashing| lashing.wraps))
        })
        .collect()
}

fn is_plain_on_odd(basket: &Basket) -> bool {
    let plain = |weave: WeaveKind| weave == WeaveKind::Plain;
    basket.body.uprights().count % 2 == 1
        && basket.body.weave.courses.iter().any(|course| course.rows > 0 && plain(course.weave))
}

fn climbs(basket: &Basket) -> bool {
    let twill = |weave| matches!(weave, WeaveKind::Twill(_) | WeaveKind::ReversedTwill(_));
    basket.body.weave.courses.iter().any(|course| course.rows > 0 && twill(course.weave))
}

fn has_ears_on_odd(basket: &Basket) -> bool {
    basket.body.uprights().count % 2 == 1 && basket.ears.is_some()
}
