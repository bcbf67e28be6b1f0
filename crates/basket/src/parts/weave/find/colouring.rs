//! Ways to give colours to weavers and staves.

use super::Wanted;
use crate::pattern::Rule;
use crate::weave::fabric::Fabric;
use crate::weave::look::Look;
use crate::weave::passing::Passing;
use crate::weave::weaves::Spiral;

/// Most colours that are searched for.
pub const MOST_COLOURS: u8 = 3;
/// Stands for the stave where weavers are numbered.
pub(super) const STAVE: u8 = u8::MAX;
/// Rows in which all colours come once, where bands are wanted.
const BANDS: u32 = 12;

/// Which colours go where; colours are numbered from 0, the one that most is made of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Colouring {
    /// The colour of each weaver; where rows change colour, that of the weaver in one band after another.
    pub weavers: Vec<u8>,
    /// The colours of the staves, in order round and then again.
    pub staves: Vec<u8>,
    /// Rows after which the one weaver changes to the next colour; none if each weaver keeps its own.
    pub every: Option<u32>,
}

pub(super) fn weaver(cell: u8) -> Option<u32> {
    (cell != STAVE).then_some(u32::from(cell))
}

impl Colouring {
    /// The colour seen where this weaver (none: the stave) is seen; row and stave from 0.
    pub fn seen(&self, row: u32, stave: u32, weaver: Option<u32>) -> u8 {
        let of = |list: &[u8], index: u32| list.get(index as usize % list.len().max(1)).copied().unwrap_or(0);
        match (weaver, self.every) {
            (None, _) => of(&self.staves, stave),
            (Some(_), Some(every)) => of(&self.weavers, row / every.max(1)),
            (Some(weaver), None) => of(&self.weavers, weaver),
        }
    }

    /// All colourings of a weave that show the wanted number of colours.
    pub(super) fn all(fabric: &Fabric, wanted: &Wanted) -> Vec<Self> {
        let colours = wanted.colours.clamp(1, MOST_COLOURS);
        if colours == 1 {
            // Told apart by light and shade: weaver and stave.
            return vec![Self { weavers: vec![1], staves: vec![0], every: None }];
        }
        let weavers = fabric.weavers();
        let each = assignments(weavers, colours);
        let mut all: Vec<Self> = if weavers == 1 {
            vec![Self { weavers: vec![1], staves: vec![0], every: None }]
        } else {
            each.into_iter().map(|weavers| Self { weavers, staves: vec![0], every: None }).collect()
        };
        if weavers == 1 && wanted.look == Look::Bands {
            all.push(Self {
                weavers: (0..colours).collect(),
                staves: vec![0],
                every: Some(BANDS / u32::from(colours)),
            });
        }
        let plain = fabric.passing == Passing::Spiral(Spiral { rule: Rule::PLAIN });
        if plain && wanted.look == Look::Columns && fabric.count.is_multiple_of(u32::from(colours)) {
            all.push(Self { weavers: vec![0], staves: (0..colours).collect(), every: None });
        }
        let twined = fabric.twined() > 1;
        all.retain(|colouring| colouring.shows(colours, twined));
        all
    }

    /// Whether all colours up to this number are seen, none above.
    fn shows(&self, colours: u8, twined: bool) -> bool {
        let staves = if twined { &[] } else { self.staves.as_slice() };
        (0..colours).all(|colour| self.weavers.contains(&colour) || staves.contains(&colour))
    }

    /// What it asks of the weaver, weighed in staves more or less than wanted: dyeing staves.
    pub(super) fn work(&self) -> f64 {
        f64::from(self.staves.iter().max().copied().unwrap_or(0).min(1)) * 1.5
    }
}

/// All ways to give so many colours to weavers; colours are numbered as they come.
fn assignments(weavers: u32, colours: u8) -> Vec<Vec<u8>> {
    let mut all = vec![Vec::new()];
    for _ in 0..weavers {
        let next = |given: &Vec<u8>| given.iter().max().map_or(0, |last| last + 1).min(colours - 1);
        all = all
            .into_iter()
            .flat_map(|given| (0..=next(&given)).map(move |colour| [given.as_slice(), &[colour]].concat()))
            .collect();
    }
    all
}

#[cfg(test)]
mod tests {
    use super::assignments;

    #[test]
    fn colours_come_in_order() {
        assert_eq!(assignments(3, 2), [[0, 0, 0], [0, 0, 1], [0, 1, 0], [0, 1, 1]]);
        assert_eq!(assignments(3, 3).len(), 5);
        assert_eq!(assignments(2, 1), [[0, 0]]);
    }
}
