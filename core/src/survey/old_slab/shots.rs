//! The shots of the old slab: by rows and columns, as a crew shoots them, or one by one.

use crate::quantity::{Elevation, Length, Typed};
use crate::survey::names::grid_shot;
use crate::survey::surface;

/// Shots with their elevations.
#[derive(Clone, Debug, PartialEq)]
pub enum Shots {
    /// Rows and columns spaced from two walls.
    Grid(Grid),
    /// Places one by one.
    Scattered(Marks),
}

/// Rows and columns, lengths in metres.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Grid {
    /// Distance of each column from the left.
    pub columns: Vec<f64>,
    /// Distance of each row from the front.
    pub rows: Vec<f64>,
    /// Row by row; `None` for a place not shot.
    pub heights: Vec<Option<f64>>,
}

/// Places one by one.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Marks {
    /// The shots.
    pub shots: Vec<surface::Shot>,
    /// Their names, where they have any: empty, or one per shot.
    pub names: Vec<Option<String>>,
}

impl Shots {
    /// How many places were shot.
    #[must_use]
    pub fn count(&self) -> usize {
        match self {
            Self::Grid(grid) => grid.heights.iter().flatten().count(),
            Self::Scattered(marks) => marks.shots.len(),
        }
    }

    /// The name of a shot by its number in the surface: `C2`, a name of its own, or `shot 3`.
    #[must_use]
    pub fn name(&self, shot: usize) -> String {
        match self {
            Self::Grid(grid) => match grid.columns.len() {
                0 => format!("shot {}", shot + 1),
                columns => grid_shot(shot / columns, shot % columns),
            },
            Self::Scattered(marks) => match marks.names.get(shot) {
                Some(Some(name)) => name.clone(),
                _ => format!("shot {}", shot + 1),
            },
        }
    }

    /// Every shot: its number in the surface, place and elevation.
    pub fn each(&self) -> impl Iterator<Item = (usize, [Length; 2], Elevation)> + '_ {
        let places: Box<dyn Iterator<Item = (usize, f64, f64, f64)>> = match self {
            Self::Grid(grid) => Box::new(grid.each()),
            Self::Scattered(marks) => {
                Box::new(marks.shots.iter().enumerate().map(|(i, shot)| (i, shot.x, shot.y, shot.z)))
            }
        };
        places.map(|(shot, x, y, z)| {
            (shot, [Length::from_base(x), Length::from_base(y)], Elevation::from_base(z))
        })
    }
}

impl Grid {
    fn each(&self) -> impl Iterator<Item = (usize, f64, f64, f64)> + '_ {
        let columns = self.columns.len().max(1);
        self.heights.iter().enumerate().filter_map(move |(shot, height)| {
            let (x, y) = (self.columns.get(shot % columns)?, self.rows.get(shot / columns)?);
            Some((shot, *x, *y, (*height)?))
        })
    }
}
