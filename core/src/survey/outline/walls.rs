//! The outline from wall lengths in order, every corner square.

use super::{Corner, Outline};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Length, Range, Typed};
use crate::survey::fixed::inches;
use crate::survey::tolerance::Tolerance;
use crate::survey::words::both;

/// What a wall may measure: more than nothing, at most 10 km.
pub const WALL: Range = Range::positive_to(10_000.0);

/// How far the walls may miss the first corner: 1/2 in. Common practice, no source.
pub const CLOSING_TOLERANCE: Length = inches(0.5);

/// A wall as it was measured, walking with the work on the left.
#[derive(Clone, Debug, PartialEq)]
pub struct Wall {
    /// Its name; without one it is `side 1`, `side 2` and so on.
    pub name: Option<String>,
    /// Its length.
    pub length: Length,
    /// Which way the next wall turns off.
    pub turn: Turn,
}

crate::choice! {
    /// Which way the next wall turns off, seen along the walk.
    #[derive(Default)]
    pub enum Turn {
        /// Round an ordinary corner of the work.
        #[default]
        Left = "left",
        /// Round a corner that juts into the work, as in an L.
        Right = "right",
    }
}

/// A wall as measured and as laid.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredWall {
    /// Its name.
    pub name: String,
    /// The length measured.
    pub measured: Length,
    /// The length laid.
    pub laid: Length,
}

/// An outline laid from walls with square corners.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredWalls {
    /// The outline.
    pub outline: Outline,
    /// How far the walls as measured end past the first corner along the first wall.
    pub gap_x: Length,
    /// And across it.
    pub gap_y: Length,
    /// What the gap was judged by.
    pub tolerance: Tolerance,
    /// Every wall with what the gap did to it.
    pub walls: Vec<MeasuredWall>,
}

impl Wall {
    /// A wall with a name, the next one turning left.
    #[must_use]
    pub fn named(name: impl Into<String>, length: Length) -> Self {
        Self { name: Some(name.into()), length, turn: Turn::Left }
    }

    /// A wall without a name, the next one turning left.
    #[must_use]
    pub const fn of(length: Length) -> Self {
        Self { name: None, length, turn: Turn::Left }
    }

    /// The same wall, the next one turning right.
    #[must_use]
    pub fn then_right(self) -> Self {
        Self { turn: Turn::Right, ..self }
    }
}

impl MeasuredWall {
    /// The length laid less the length measured.
    #[must_use]
    pub fn residual(&self) -> Length {
        self.laid - self.measured
    }
}

/// Lays an outline from walls in order, every corner square.
///
/// The gap at the end is shared out so that the corners stay square: what is missing along x over the walls along x, in
/// proportion to their lengths, and along y likewise.
///
/// # Errors
/// - `OUT_OF_RANGE`, `NOT_FINITE`: a length that no wall has.
/// - `OUTLINE_TOO_FEW`: fewer than four walls.
/// - `OUTLINE_OPEN`: the turns do not come round, or the walls miss the first corner by more than the tolerance
///   (none given: [`CLOSING_TOLERANCE`]).
/// - `CONTRADICTION`: the walls were walked with the work on the right.
/// - `OUTLINE_CROSSES`: walls that run into one another.
/// - `KEY_REPEATED`: two walls of one name that are no neighbours.
pub fn from_walls(walls: &[Wall], tolerance: Option<Length>) -> Result<MeasuredWalls> {
    check_lengths(walls)?;
    check_turns(walls)?;
    let tolerance =
        Tolerance::given_or("tolerance", tolerance, CLOSING_TOLERANCE, BasisId::OutlineTolerance)?;
    let headings = headings(walls);
    let gap =
        walk(&headings, walls.iter().map(|wall| wall.length.base())).last().copied().unwrap_or_default();
    let (gap_x, gap_y) = (Length::from_base(gap[0]), Length::from_base(gap[1]));
    if tolerance.exceeded_by(Length::from_base(gap[0].hypot(gap[1]))) {
        return Err(open(walls, gap_x, gap_y, tolerance));
    }
    let laid = share_out(walls, &headings, gap);
    let ends = walk(&headings, laid.iter().copied());
    let corners = corners(&ends);
    let names: Vec<Option<String>> = walls.iter().map(|wall| wall.name.clone()).collect();
    let outline = Outline::from_corners(&corners, &names).map_err(in_walls)?;
    let measured = outline.runs().iter().zip(walls).zip(&laid);
    let measured = measured.map(|((run, wall), &laid)| MeasuredWall {
        name: run.name().to_owned(),
        measured: wall.length,
        laid: Length::from_base(laid),
    });
    let walls = measured.collect();
    Ok(MeasuredWalls { outline, gap_x, gap_y, tolerance, walls })
}

/// Refuses lengths that no wall has.
pub(super) fn check_lengths(walls: &[Wall]) -> Result<()> {
    for (index, wall) in walls.iter().enumerate() {
        check(&format!("walls[{index}].length"), wall.length, WALL)?;
    }
    Ok(())
}

/// Four lefts more than rights bring the walk round once, the work on the left.
fn check_turns(walls: &[Wall]) -> Result<()> {
    if walls.len() < 4 {
        return Err(Failure::new(Code::OutlineTooFew, "walls")
            .written(format!("{} walls", walls.len()))
            .allowed("at least 4 walls with square corners")
            .remedy("give every wall in order, or give the corners by x and y"));
    }
    let rights = walls.iter().filter(|wall| wall.turn == Turn::Right).count();
    let lefts = walls.len() - rights;
    let written = format!("{lefts} left turns and {rights} right turns");
    if rights == lefts + 4 {
        return Err(Failure::new(Code::Contradiction, "walls")
            .written(written)
            .allowed("four left turns more than right turns: the work lies on the left of the walk")
            .remedy("name every turn the other way if the words were swapped, or walk the walls in the other order"));
    }
    if lefts != rights + 4 {
        return Err(Failure::new(Code::OutlineOpen, "walls")
            .written(written)
            .allowed("four left turns more than right turns")
            .remedy("check the turn at each corner, the one from the last wall to the first among them"));
    }
    Ok(())
}

/// The direction of every wall as a step in x and y.
fn headings(walls: &[Wall]) -> Vec<[f64; 2]> {
    let mut heading = [1.0, 0.0];
    let mut all = Vec::with_capacity(walls.len());
    for wall in walls {
        all.push(heading);
        let [x, y] = heading;
        heading = match wall.turn {
            Turn::Left => [-y, x],
            Turn::Right => [y, -x],
        };
    }
    all
}

/// Where every wall ends.
fn walk(headings: &[[f64; 2]], lengths: impl Iterator<Item = f64>) -> Vec<[f64; 2]> {
    let mut at = [0.0, 0.0];
    let mut ends = Vec::with_capacity(headings.len());
    for ([x, y], length) in headings.iter().zip(lengths) {
        at = [at[0] + x * length, at[1] + y * length];
        ends.push(at);
    }
    ends
}

/// Every wall with its share of the gap taken off.
fn share_out(walls: &[Wall], headings: &[[f64; 2]], gap: [f64; 2]) -> Vec<f64> {
    let along = |axis: usize| -> f64 {
        walls.iter().zip(headings).map(|(wall, heading)| wall.length.base() * heading[axis].abs()).sum()
    };
    let shares = [gap[0] / along(0), gap[1] / along(1)];
    let laid = walls.iter().zip(headings);
    laid.map(|(wall, [x, y])| wall.length.base() * (1.0 - x * shares[0] - y * shares[1])).collect()
}

/// The corners in order, the first at the origin.
fn corners(ends: &[[f64; 2]]) -> Vec<Corner> {
    let starts = std::iter::once(&[0.0, 0.0]).chain(ends).take(ends.len());
    starts.map(|&[x, y]| Corner::new(Length::from_base(x), Length::from_base(y))).collect()
}

/// A failure about names, said of the walls that carry them.
pub(super) fn in_walls(mut failure: Box<Failure>) -> Box<Failure> {
    if let Some(rest) = failure.path.strip_prefix("names") {
        failure.path = format!("walls{rest}.name");
    }
    failure
}

fn open(walls: &[Wall], gap_x: Length, gap_y: Length, tolerance: Tolerance) -> Box<Failure> {
    let remedy = match walls.len() {
        4 => "measure the walls again, and one diagonal: the corners may not be square",
        _ => {
            "measure the walls again and check the turn at each corner; where corners are not square give them by x and y"
        }
    };
    Failure::new(Code::OutlineOpen, "walls")
        .written(format!(
            "the last wall ends {} in x and {} in y from the first corner",
            both(gap_x),
            both(gap_y)
        ))
        .allowed(format!("a gap of at most {}", tolerance.words()))
        .remedy(remedy)
}
