//! Contour lines.

use super::field::Field;
use super::levels::Levels;
use super::rings::{Chain, Chains, by_first, from_left, in_axes};
use super::sheet::Sheet;
use super::strip::{Corner, Edge, Strip};
use crate::failure::Result;
use crate::geometry::{Point, Sum};
use crate::quantity::{Length, Typed};
use crate::survey::outline;

/// A contour line: between the ground below its level, on its left, and the ground at the level or above.
#[derive(Clone, Debug, PartialEq)]
pub struct Contour<Q> {
    /// The level.
    pub level: Q,
    /// Whether it closes. A closed line ends on the place it starts from; an open one starts and ends on the edge of the work.
    pub closed: bool,
    /// Its places, on sides of triangles.
    pub places: Vec<outline::Corner>,
    /// Its length.
    pub length: Length,
}

impl<Q: Typed> Field<Q> {
    /// The contour lines at levels, level by level, the longest first. A level that the field does not pass through has none.
    ///
    /// # Errors
    /// What the levels are refused for.
    pub fn contours(&self, levels: &Levels<Q>) -> Result<Vec<Contour<Q>>> {
        let sheet = &self.sheet;
        let (least, greatest) = sheet.reach();
        let levels = levels.around(least, greatest, sheet.hair)?;
        let mut crossed = vec![Vec::new(); levels.len()];
        for triangle in 0..sheet.len() as u32 {
            let values = sheet.values(triangle);
            let (low, high) = spread(values, sheet.hair);
            let first = levels.partition_point(|&level| level < low);
            let past = levels.partition_point(|&level| level <= high);
            for at in &mut crossed[first..past] {
                at.push(triangle);
            }
        }
        let mut lines = Vec::new();
        for (&level, triangles) in levels.iter().zip(&crossed) {
            let mut of_level: Vec<Contour<Q>> =
                chains(sheet, level, triangles).into_iter().map(|chain| contour(level, chain)).collect();
            of_level.sort_by(|a, b| {
                let size = |line: &Contour<Q>| (line.length.base() * 1e6).round();
                size(b).total_cmp(&size(a)).then_with(|| by_first(&a.places, &b.places))
            });
            lines.append(&mut of_level);
        }
        Ok(lines)
    }
}

/// The least and the greatest of three values, a hair beyond them.
pub(super) fn spread([a, b, c]: [f64; 3], hair: f64) -> (f64, f64) {
    (a.min(b).min(c) - hair, a.max(b).max(c) + hair)
}

/// The edges between what is below a level and what is not, chained.
fn chains(sheet: &Sheet, level: f64, triangles: &[u32]) -> Vec<Chain> {
    let (below, above) = (Strip::below(level, sheet.hair), Strip::from(level, sheet.hair));
    let mut chains = Chains::default();
    let mut edges: Vec<Edge> = Vec::new();
    for &triangle in triangles.iter().filter(|&&triangle| below.reaches(sheet.values(triangle))) {
        below.edges(sheet.triangle(triangle), sheet.values(triangle), &mut edges);
        for edge in &edges {
            let at_level = [edge.from, edge.to].iter().all(|&corner| match corner {
                Corner::Crossing { .. } => true,
                Corner::Whole(corner) => sheet.is_at(corner, level),
            });
            // A side at the level parts two triangles only where the other one is above it.
            let parts = edge.side.is_none_or(|side| {
                let other = sheet.across(triangle, side);
                other.is_some_and(|other| above.reaches(sheet.values(other)))
            });
            if at_level && parts {
                chains.add(edge.from, edge.to);
            }
        }
    }
    chains.follow(|corner| sheet.place(corner, &below))
}

fn contour<Q: Typed>(level: f64, chain: Chain) -> Contour<Q> {
    let Chain { mut places, closed } = chain;
    if closed {
        places = from_left(places);
        places.extend(places.first().copied());
    }
    let length = |pair: &[Point]| pair[0].distance(pair[1]);
    let length = places.windows(2).map(length).collect::<Sum>().value();
    Contour {
        level: Q::from_base(level),
        closed,
        places: in_axes(&places),
        length: Length::from_base(length),
    }
}
