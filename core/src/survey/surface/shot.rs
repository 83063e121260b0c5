//! One surveyed point of the old slab.

/// One surveyed point, in metres in the job's axes and datum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shot {
    /// First plan coordinate.
    pub x: f64,
    /// Second plan coordinate.
    pub y: f64,
    /// Height.
    pub z: f64,
    /// Marked as lying outside the outline on purpose (approach, walk).
    pub outside_allowed: bool,
    /// Marked as one side of a step: another height at the same place is meant.
    pub step: bool,
}

impl Shot {
    /// An unmarked shot.
    #[must_use]
    pub const fn new(x: f64, y: f64, z: f64) -> Self {
        Self { x, y, z, outside_allowed: false, step: false }
    }
}
