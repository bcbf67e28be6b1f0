//! What a workshop plans, as sections that are printed and shown alike: kits, shopping list, cutting plan,
//! prices, one basket in several sizes, the papers of an order, what students check, and the labels of the bags.

mod amount;
mod checks;
mod cutting;
mod kits;
mod labels;
mod leaf;
mod orders;
mod price;
mod shopping;
mod sizes;

pub use checks::check_card;
pub use cutting::cutting_plan;
pub use kits::kits;
pub use labels::{LabelSize, Labels, labels};
pub use leaf::{Leaf, Section, Strip, Table};
pub use orders::OrderPaper;
pub use price::{Priced, Prices, prices};
pub use shopping::{Shopping, shopping_csv, shopping_list};
pub use sizes::{Size, Sizes, Standing, sizes};
