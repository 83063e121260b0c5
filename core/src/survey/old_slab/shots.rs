//! The shots of the old slab: by rows and columns, as a crew shoots them, one by one, or with the faces between them.

use crate::quantity::{Elevation, Length, Typed};
use crate::survey::names::grid_shot;
use crate::survey::points::Tin;
use crate::survey::surface;

/// Shots with their elevations.
#[derive(Clone, Debug, PartialEq)]
pub enum Shots {
    /// Rows and columns spaced from two walls.
    Grid(Grid),
    /// Places one by one.
    Scattered(Marks),
    /// Points and the faces between them, which are kept as they are.
    Faces(Tin),
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
    /// Whether a row or column given twice is the two sides of a step.
    pub steps: bool,
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
            Self::Faces(tin) => tin.points.len(),
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
            Self::Faces(tin) => match tin.points.names.get(shot) {
                Some(Some(name)) => name.clone(),
                _ => format!("point {}", shot + 1),
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
            Self::Faces(tin) => Box::new((0..tin.points.len()).filter_map(|point| {
                let [x, y, z] = tin.points.get(point)?;
                Some((point, x, y, z))
            })),
        };
        places.map(|(shot, x, y, z)| {
            (shot, [Length::from_base(x), Length::from_base(y)], Elevation::from_base(z))
        })
    }
}

impl Grid {
    /// Whether a shot is in a row or column given twice: one side of a step.
    pub(crate) fn is_on_step(&self, shot: usize) -> bool {
        let columns = self.columns.len().max(1);
        let twice = |list: &[f64], index: usize| {
            list.get(index).is_some_and(|value| list.iter().filter(|other| *other == value).count() > 1)
        };
        self.steps && (twice(&self.columns, shot % columns) || twice(&self.rows, shot / columns))
    }

    fn each(&self) -> impl Iterator<Item = (usize, f64, f64, f64)> + '_ {
        let columns = self.columns.len().max(1);
        self.heights.iter().enumerate().filter_map(move |(shot, height)| {
            let (x, y) = (self.columns.get(shot % columns)?, self.rows.get(shot / columns)?);
            Some((shot, *x, *y, (*height)?))
        })
    }
}
