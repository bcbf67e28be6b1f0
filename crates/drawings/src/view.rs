//! A picture of the finished basket.

use basket::Basket;
use basket::message::Value;
use words::Words;

use crate::bail::Front;
use crate::drawing::Drawing;
use crate::elevation::Elevation;

/// Width of the picture in mm.
const WIDTH: f64 = 100.0;
/// Most height of the picture in mm.
const HEIGHT: f64 = 130.0;

/// The finished basket from the front, handle up, about 100 mm wide.
pub fn view(basket: &Basket, words: &Words) -> Drawing {
    let front = Front::of(basket, 1.0);
    let bottom = basket.base.thickness.to_mm();
    let rim_top = basket.mould.profile.at(basket.rim.along + basket.rim.height).height.to_mm();
    let height = bottom + front.map_or(rim_top, |front| front.top());
    let width = 2.0 * basket.rim.outer_radius(&basket.staves).to_mm();
    let scale = (WIDTH / width.max(1.0)).min(HEIGHT / height.max(1.0));
    let args = [
        ("title", Value::Name(basket.title.clone())),
        ("count", basket.staves.count.into()),
        ("rows", basket.weave.rows.into()),
    ];
    let mut drawing =
        Drawing::new("view", basket.title.clone(), words.with("drawing-view-description", &args));
    let elevation = Elevation::of(basket, scale);
    let front = Front::of(basket, scale);
    elevation.body(&mut drawing);
    if let Some(front) = &front {
        front.ears(&mut drawing);
    }
    elevation.rim(&mut drawing);
    if let Some(front) = &front {
        front.bail(&mut drawing);
    }
    drawing.fitted(1.0)
}
