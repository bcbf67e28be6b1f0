//! The papers of an order: the quote, and the slip that lies in the parcel.

use basket::Draft;
use planning::price::cents;
use rust_decimal::Decimal;
use words::Words;

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Table};
use crate::data::facts;
use crate::scribe::name;

/// An order, as its papers tell it.
#[derive(Clone, Debug)]
pub struct OrderPaper<'o> {
    /// What the maker calls it.
    pub name: &'o str,
    /// For whom, as typed.
    pub buyer: &'o str,
    /// How many baskets.
    pub count: u32,
    /// Price of one.
    pub price: Decimal,
    /// What the maker calls the currency.
    pub currency: &'o str,
    /// What is asked for ahead, or was paid.
    pub deposit: Decimal,
    /// The promised day.
    pub promised: Option<String>,
}

impl OrderPaper<'_> {
    /// The quote: what it costs, what is paid ahead, and until when it is made.
    pub fn quote(&self, draft: &Draft, words: &Words) -> Leaf {
        let clerk = Clerk::new(words);
        let mut money = Table::new(clerk.head(&["line", "#amount"]));
        let lines = [
            (clerk.text("order-baskets", &self.baskets(draft, &clerk)), self.sum()),
            (clerk.label("order-deposit"), self.deposit),
            (clerk.label("order-rest"), self.rest()),
        ];
        money.rows.extend(lines.map(|(text, sum)| vec![text, clerk.money(sum, self.currency)]));
        let day = |day: &String| clerk.text("order-promised", &[("day", name(day.as_str()))]);
        let mut after: Vec<String> = self.promised.iter().map(day).collect();
        after.push(clerk.label("order-hand-made"));
        let heading = clerk.label("order-price");
        let section =
            Section { heading, notes: self.whom(&clerk), table: Some(money), after, ..Section::default() };
        Leaf {
            title: self.name.to_owned(),
            name: clerk.label("quote"),
            sections: vec![section, basket(draft, &clerk)],
        }
    }

    /// The slip in the parcel: what lies in it, to tick, and what is still to be paid.
    pub fn packing_slip(&self, draft: &Draft, words: &Words) -> Leaf {
        let clerk = Clerk::new(words);
        let mut packed = Table::new(clerk.head(&["#count", "piece"]));
        packed.ticks = true;
        let card = |id: &str| vec![self.count.to_string(), words.term(id)];
        packed.rows.push(vec![self.count.to_string(), draft.basket.title.clone()]);
        packed.rows.extend([card("card-provenance"), card("card-care")]);
        let rest = self.rest();
        let owed = [("sum", name(clerk.money(rest, self.currency)))];
        let paid =
            if rest > Decimal::ZERO { clerk.text("order-owed", &owed) } else { clerk.label("order-paid") };
        let section = Section {
            heading: clerk.label("order-packed"),
            notes: self.whom(&clerk),
            table: Some(packed),
            after: vec![paid],
            ..Section::default()
        };
        Leaf { title: self.name.to_owned(), name: clerk.label("packing-slip"), sections: vec![section] }
    }

    fn sum(&self) -> Decimal {
        cents(self.price.saturating_mul(Decimal::from(self.count)))
    }

    fn rest(&self) -> Decimal {
        self.sum().saturating_sub(self.deposit).max(Decimal::ZERO)
    }

    fn whom(&self, clerk: &Clerk) -> Vec<String> {
        let whom = || clerk.text("order-for", &[("buyer", name(self.buyer))]);
        (!self.buyer.is_empty()).then(whom).into_iter().collect()
    }

    fn baskets(&self, draft: &Draft, clerk: &Clerk) -> [(&'static str, basket::message::Value); 3] {
        let title = name(draft.basket.title.as_str());
        [
            ("count", self.count.into()),
            ("title", title),
            ("price", name(clerk.money(self.price, self.currency))),
        ]
    }
}

/// How large the basket is.
fn basket(draft: &Draft, clerk: &Clerk) -> Section {
    let mut size = Table::new(clerk.head(&["order-what", "order-size"]));
    size.rows =
        facts::size(&draft.basket, &clerk.scribe).into_iter().map(|fact| fact.pair().to_vec()).collect();
    Section {
        heading: draft.basket.title.clone(),
        notes: vec![facts::summary(&draft.basket, &clerk.scribe)],
        table: Some(size),
        ..Section::default()
    }
}
