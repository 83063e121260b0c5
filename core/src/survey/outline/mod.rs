//! The outline: the plan edge of the work, with holes, every run under the name the crew gives it.
//!
//! | what was measured | how it is laid |
//! |---|---|
//! | corners by x and y | [`Outline::from_corners`] |
//! | wall lengths in order, corners square | [`from_walls`]: an L or any other shape of right angles |
//! | four walls and one or two diagonals | [`from_diagonals`]: square if the diagonals say so, else the figure they make |
//!
//! Measured walls are laid from the first corner at the origin, the first wall along +x, the work on the left of the
//! walking direction (counter-clockwise seen from above).
//!
//! An edge is what a name stands for: one run, several runs in a row under one name (a house wall with a bay), or all
//! sides of a hole. Names are compared without regard to capitals and outer blanks.

mod corners;
mod diagonals;
mod edges;
mod quadrilateral;
mod refusal;
#[cfg(test)]
mod tests;
mod walls;

pub use corners::{Corner, Hole, Outline, Run};
pub use diagonals::{
    Diagonals, MISFIT_TOLERANCE, MeasuredDiagonal, MeasuredQuadrilateral, SQUARE_TOLERANCE, from_diagonals,
};
pub use walls::{CLOSING_TOLERANCE, MeasuredWall, MeasuredWalls, Turn, WALL, Wall, from_walls};
