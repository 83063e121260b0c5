//! Points with heights as a file brings them, before they are shots of a job.

pub mod axes;
mod checked;
mod json;
mod record;
mod shots;
pub mod stray;
pub mod thin;
mod tin;

pub use record::{COORDINATE, POINT_TABLE, POINTS};
pub use shots::{AsShots, HEIGHT, Outside, PLACE, shots};
pub use tin::TIN;

use checked::{check_points, pick};

/// Points with heights, in metres, in the axes of where they came from.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Points {
    /// Along the first plan axis.
    pub x: Vec<f64>,
    /// Along the second.
    pub y: Vec<f64>,
    /// Up.
    pub z: Vec<f64>,
    /// Their names: empty, or one for each point.
    pub names: Vec<Option<String>>,
}

impl Points {
    /// How many there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.x.len()
    }

    /// Whether there are none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.x.is_empty()
    }

    /// One point: along the first plan axis, along the second, up.
    #[must_use]
    pub fn get(&self, index: usize) -> Option<[f64; 3]> {
        Some([*self.x.get(index)?, *self.y.get(index)?, *self.z.get(index)?])
    }

    /// Adds a point without a name.
    pub fn push(&mut self, [x, y, z]: [f64; 3]) {
        self.x.push(x);
        self.y.push(y);
        self.z.push(z);
        if !self.names.is_empty() {
            self.names.push(None);
        }
    }
}

/// Points and the faces between them, as a file of a triangulated surface brings them.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tin {
    /// The name of the surface, where it has one.
    pub name: Option<String>,
    /// The points.
    pub points: Points,
    /// Each face by the numbers of its points.
    pub faces: Vec<[u32; 3]>,
}

/// The least and the greatest of numbers.
fn ends(numbers: &[f64]) -> (f64, f64) {
    numbers.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(least, greatest), &number| {
        (least.min(number), greatest.max(number))
    })
}
