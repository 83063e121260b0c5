//! One surface under way: its points by their numbers, its faces.

use super::numbers;
use crate::failure::Result;
use crate::survey::read::faces::Faces;
use crate::survey::read::refusal::broken;
use std::collections::HashMap;

/// A surface as the file has it; coordinates in the file's unit.
#[derive(Debug, Default)]
pub(super) struct Surface {
    pub(super) name: Option<String>,
    pub(super) points: Vec<[f64; 3]>,
    pub(super) faces: Faces,
    pub(super) invisible: u64,
    /// Breaklines, boundaries and other source data.
    pub(super) sources: u64,
    places: HashMap<u64, u32>,
}

impl Surface {
    pub(super) fn new(name: Option<String>) -> Self {
        Self { name, ..Self::default() }
    }

    /// A point with its number.
    pub(super) fn point(&mut self, id: Option<&str>, text: &str) -> Result<()> {
        let id = id
            .and_then(|id| id.trim().parse().ok())
            .ok_or_else(|| broken("a point of a surface without its number"))?;
        let place = numbers::place(text)?
            .ok_or_else(|| broken(format!("point {id} of a surface without elevation")))?;
        let next =
            u32::try_from(self.points.len()).map_err(|_| broken("more points than can be numbered"))?;
        if self.places.insert(id, next).is_some() {
            return Err(broken(format!("two points of the number {id}")));
        }
        self.points.push(place);
        Ok(())
    }

    /// A face by the numbers of its points.
    pub(super) fn face(&mut self, invisible: bool, text: &str) -> Result<()> {
        let mut corners = Vec::with_capacity(3);
        for id in numbers::ids(text)? {
            let place = self
                .places
                .get(&id)
                .ok_or_else(|| broken(format!("a face with the point {id}, which is not there")))?;
            corners.push(f64::from(*place));
        }
        if invisible {
            self.invisible += 1;
            return Ok(());
        }
        self.faces.push(&corners)
    }
}
