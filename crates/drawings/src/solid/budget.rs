//! How finely a basket can be cut into triangles before they are too many.

use basket::Basket;
use basket::limits::{CROSSINGS, TRIANGLES};
use basket::steps::Stage;
use basket::weave::Row;

use super::detail::{Detail, Simplified};
use super::laid::Laid;
use super::lane::Lane;
use super::maker::Maker;
use super::stage;
use super::surface::Surface;

impl<'a> Maker<'a> {
    /// What makes a basket in a detail, or in one so much coarser that its triangles are not too many.
    pub(super) fn of(basket: &'a Basket, wanted: Detail) -> Self {
        let mut maker = Self { basket, surface: Surface::of(basket), detail: wanted, simplified: None };
        while maker.triangles() > TRIANGLES {
            let Some(coarser) = maker.detail.coarser() else { break };
            maker.detail = coarser;
            maker.simplified = Some(Simplified::Coarser);
        }
        if basket.body.crossings() > CROSSINGS || maker.triangles() > TRIANGLES {
            maker.simplified = Some(Simplified::Bands);
        }
        maker
    }

    /// How many triangles staves, rows and lashing come to, by the first of each.
    fn triangles(&self) -> usize {
        let count = self.basket.body.uprights().count as usize;
        let stave = self
            .strip(self.basket.body.uprights().width, stage::tips(self.basket, Stage::Finished), None)
            .mesh
            .triangles
            .len();
        let wraps = self.basket.body.lashing().map_or(0, |lashing| lashing.wraps) as usize;
        count * stave + wraps * self.wrap_triangles() + self.row_triangles()
    }

    fn row_triangles(&self) -> usize {
        let of_course = |first: &Row, rows: usize| -> usize {
            let Some(course) = self.course_of(first) else { return 0 };
            let of_lane = |lane: &Lane<'_>| -> usize {
                let pieces = Laid::of(self, course, first, lane).strands();
                pieces.iter().map(|(_, shape)| shape.mesh.triangles.len()).sum()
            };
            Lane::of(course, 0).iter().map(of_lane).sum::<usize>() * rows
        };
        let rows = &self.basket.body.weave.each_row;
        rows.chunk_by(|a, b| a.course == b.course).map(|rows| of_course(&rows[0], rows.len())).sum()
    }
}
