//! What a workshop plans, as sections that are printed and shown alike: kits, shopping list, cutting plan,
//! prices, and the labels of the bags.

mod amount;
mod cutting;
mod kits;
mod labels;
mod leaf;
mod price;
mod shopping;

pub use cutting::cutting_plan;
pub use kits::kits;
pub use labels::{LabelSize, Labels, labels};
pub use leaf::{Leaf, Section, Strip, Table};
pub use price::{Priced, Prices, prices};
pub use shopping::{shopping_csv, shopping_list};
