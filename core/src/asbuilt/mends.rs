//! What to mend, and where.

use super::deviations::Deviations;
use crate::choice;
use crate::quantity::{Area, Length, Typed};
use crate::survey::low_spots::Ponds;
use crate::survey::outline::Corner;

choice! {
    /// What is done to a place.
    pub enum Mending {
        /// Ground down.
        Grind = "grind",
        /// Filled up.
        Fill = "fill",
    }
}

/// A place to mend.
#[derive(Clone, Debug, PartialEq)]
pub struct Mend {
    /// What is done.
    pub work: Mending,
    /// Where.
    pub at: Corner,
    /// The shot it is at; none for a pond.
    pub shot: Option<String>,
    /// How much: down or up to the plan, or to where water runs off.
    pub depth: Length,
    /// The area, of a pond.
    pub area: Option<Area>,
}

/// Marks that were missed, and ponds. A low mark in a pond stands twice: filled up to the plan, or at least until water runs off.
pub(super) fn mends(deviations: &Deviations, ponds: &Ponds) -> Vec<Mend> {
    let missed = deviations.missed().into_iter().map(|shot| {
        let high = shot.deviation > Length::from_base(0.0);
        Mend {
            work: if high { Mending::Grind } else { Mending::Fill },
            at: Corner::new(shot.x, shot.y),
            shot: Some(shot.name.clone()),
            depth: shot.deviation.abs(),
            area: None,
        }
    });
    let filled = ponds.list.iter().map(|pond| Mend {
        work: Mending::Fill,
        at: pond.deepest,
        shot: None,
        depth: pond.depth,
        area: Some(pond.area),
    });
    missed.chain(filled).collect()
}
