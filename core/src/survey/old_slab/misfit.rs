//! Shots that do not fit the outline as given, but would with x and y swapped or in another unit: the likeliest slips.

use super::build::surface_of;
use super::{Grid, Shots};
use crate::geometry::boxes::Extent;
use crate::geometry::{Point, Region};
use crate::quantity::Typed;
use crate::survey::surface::{Rules, SurfaceError};

/// A slip that may have been made with the plan coordinates.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Slip {
    /// x stands for y.
    Swapped,
    /// The numbers were meant in a unit that is so much of the one they were read in.
    Unit(f64),
}

/// Slips and what to do about each, the likeliest first.
const SLIPS: [(Slip, &str); 5] = [
    (Slip::Swapped, "the shots fit the outline with x and y swapped"),
    (Slip::Unit(0.3048), "the shots fit the outline with x and y in feet in place of meters"),
    (Slip::Unit(1.0 / 0.3048), "the shots fit the outline with x and y in meters in place of feet"),
    (Slip::Unit(1.0 / 12.0), "the shots fit the outline with x and y in inches in place of feet"),
    (Slip::Unit(0.001), "the shots fit the outline with x and y in millimeters in place of meters"),
];

/// What to do about shots that lie outside the outline or far from parts of it; nothing where no slip would explain it.
pub(super) fn remedy(
    error: &SurfaceError,
    shots: &Shots,
    region: &Region,
    rules: &Rules,
) -> Option<&'static str> {
    if !matches!(error, SurfaceError::Outside { .. } | SurfaceError::TooFarBeyond { .. }) {
        return None;
    }
    // However far the work may reach beyond the shots, a slip must explain all of it.
    let strict = Rules { beyond_allowed: false, ..*rules };
    let fits = |slip: Slip| {
        may_fit(extent(shots).map(|place| slip.of(place)), region, &strict)
            && surface_of(&slip.of_all(shots), region, &strict).is_ok()
    };
    SLIPS.iter().find(|(slip, _)| fits(*slip)).map(|(_, remedy)| *remedy)
}

/// The places between which all shots lie.
fn extent(shots: &Shots) -> [Point; 2] {
    let places = shots.each().map(|(_, [x, y], _)| Point::new(x.base(), y.base()));
    let Extent { low, high } = Extent::around(places);
    [low, high]
}

/// Whether shots between two places can lie in the region, and come near to all its sides.
fn may_fit([low, high]: [Point; 2], region: &Region, rules: &Rules) -> bool {
    let (from, to) = region.bounds();
    let near = rules.beyond_farthest;
    let fits = |low: f64, high: f64, from: f64, to: f64| {
        low >= from - near && low <= from + near && high <= to + near && high >= to - near
    };
    fits(low.x, high.x, from.x, to.x) && fits(low.y, high.y, from.y, to.y)
}

impl Slip {
    fn of(self, place: Point) -> Point {
        match self {
            Self::Swapped => Point::new(place.y, place.x),
            Self::Unit(share) => Point::new(place.x * share, place.y * share),
        }
    }

    /// The shots without the slip.
    fn of_all(self, shots: &Shots) -> Shots {
        let mut mended = shots.clone();
        match &mut mended {
            Shots::Grid(grid) => self.of_grid(grid),
            Shots::Scattered(marks) => {
                for shot in &mut marks.shots {
                    let place = self.of(Point::new(shot.x, shot.y));
                    (shot.x, shot.y) = (place.x, place.y);
                }
            }
            Shots::Faces(tin) => {
                for (x, y) in tin.points.x.iter_mut().zip(&mut tin.points.y) {
                    let place = self.of(Point::new(*x, *y));
                    (*x, *y) = (place.x, place.y);
                }
            }
        }
        mended
    }

    fn of_grid(self, grid: &mut Grid) {
        match self {
            Self::Swapped => {
                let (rows, columns) = (grid.rows.len(), grid.columns.len());
                let across = (0..columns).flat_map(|column| (0..rows).map(move |row| row * columns + column));
                grid.heights = across.map(|number| grid.heights.get(number).copied().flatten()).collect();
                std::mem::swap(&mut grid.rows, &mut grid.columns);
            }
            Self::Unit(share) => {
                grid.rows.iter_mut().chain(&mut grid.columns).for_each(|distance| *distance *= share);
            }
        }
    }
}
