//! The finish that takes the least concrete under everything a site demands, with its proof and what each demand costs.
//!
//! Over facets f that meet, with the planes z = a + b x + c y unknown, the concrete is linear in them, and so is every demand at
//! finitely many places: the finish is a linear program. [`solve`] answers it three times: bare; planned, with the margin and as a
//! crew sets floors out (door lines level, falls square to their edge, a level perimeter about a drain); and built, in whole steps
//! of height and fall. The planned answer carries the proof and the prices. [`conflicts`] names what contradicts where there is no
//! answer, and [`sweep`] tells the concrete for a range of one demand.
//!
//! ```
//! use overslab::grade::solve::{self, Asked, Demand, Outlet, Steps, Wants};
//! use overslab::quantity::read;
//! # use overslab::operation::record::Record;
//! # let input = r#"{"outline": {"corners": [{"x": "0 ft", "y": "0 ft"}, {"x": "20 ft", "y": "0 ft"},
//! #   {"x": "20 ft", "y": "16 ft"}, {"x": "0 ft", "y": "16 ft"}], "edges": ["door", "right", "back", "left"]},
//! #   "shots": [{"x": "0 ft", "y": "0 ft", "elevation": "100 ft"}, {"x": "20 ft", "y": "0 ft", "elevation": "100 ft"},
//! #   {"x": "20 ft", "y": "16 ft", "elevation": "100.1 ft"}, {"x": "0 ft", "y": "16 ft", "elevation": "100.05 ft"}]}"#;
//! # let survey = overslab::survey::Survey::from_json(serde_json::from_str(input).unwrap())?;
//! let demands = [
//!     Demand::new("least 3 in", Wants::LeastThickness { least: read("3 in")?, zone: None }),
//!     Demand::new("fall to the door", Wants::LeastFall {
//!         fall: read("1/8 in/ft")?, toward: Outlet::Edge("door".into()), on: None,
//!     }),
//! ];
//! let steps = Steps { heights: read("1/8 in")?, datum: read("100 ft")?, falls: read("1/16 in/ft")? };
//! let asked = Asked {
//!     layout: None, demands: &demands, margin: read("3/8 in")?, edges_bind: false,
//!     concrete_price: None, grinding: None, steps: Some(steps),
//! };
//! let solved = solve::solve(&survey, &asked)?;
//! assert!(solved.bare.concrete <= solved.planned.concrete && solved.planned.concrete <= solved.built.concrete);
//! assert!(solved.proof.gap() < 1e-8);
//! # Ok::<(), Box<overslab::failure::Failure>>(())
//! ```

mod asked;
mod buildable;
mod conflicts;
mod demand;
mod drain_place;
mod grinding;
mod kept;
mod lattice;
mod layout;
mod lines;
mod prices;
mod problem;
mod proof;
mod relax;
mod rows;
mod said;
mod solved;
mod sweep;
#[cfg(test)]
mod tests;
mod words;

pub use asked::{Asked, MayGrind};
pub use buildable::Steps;
pub use conflicts::{ConflictSet, Conflicts, MOST_SETS, Relaxed};
pub use demand::{Demand, Heights, Line, Measured, Outlet, Wants};
pub use drain_place::{CLOSE, DrainAsked, DrainBounds, Ended, MOST_PLACES, PlacedDrain};
pub use kept::Kept;
pub use prices::{Price, Prices};
pub use proof::Proof;
pub use said::{Kind, Said};
pub use solved::{Rounding, Solved, Stage};
pub use sweep::{Sweep, SweepPoint};

use crate::failure::Result;
use crate::linear::DualSimplex;
use crate::survey::Survey;

/// The finish of least concrete, or of least cost where grinding has a price.
///
/// # Errors
/// - `DEMANDS_CONFLICT`: demands that cannot all be kept, with the smallest set and what would mend it; [`conflicts`] tells all.
/// - `FINISH_UNDETERMINED`: nothing holds the finish.
/// - `KEY_REPEATED`, `KEY_MISSING`, `OUT_OF_RANGE`, `EDGE_UNKNOWN`, `FACET_UNKNOWN`, `REGION_OUTSIDE`: a demand that cannot be meant.
/// - `PROOF_FAILED`: an answer that its own check refuses: a fault of the library.
pub fn solve(survey: &Survey, asked: &Asked<'_>) -> Result<Solved> {
    solved::solve(survey, asked, &DualSimplex)
}

/// All that contradicts in demands; nothing where all can be kept. The margin counts, rounding does not.
///
/// # Errors
/// As [`solve`], `DEMANDS_CONFLICT` excepted.
pub fn conflicts(survey: &Survey, asked: &Asked<'_>) -> Result<Option<Conflicts>> {
    solved::conflicts(survey, asked, &DualSimplex)
}

/// The least concrete for several values of one demand, unrounded.
///
/// # Errors
/// As [`solve`]; `KEY_UNKNOWN` where no demand has the name. Values that cannot be kept have no answer, which is no error.
pub fn sweep(survey: &Survey, asked: &Asked<'_>, demand: &str, values: &[f64]) -> Result<Sweep> {
    sweep::sweep(survey, asked, demand, values, &DualSimplex)
}

/// Where a drain goes so that the floor takes the least concrete, over a level perimeter: the place, the finish there, and a bound that
/// the concrete goes under at no allowed place.
///
/// On the facet from run i of the outline to the drain d the finish is z = h - D dist(p, line i) / dist(d, line i), with the level
/// perimeter at h and the drain D lower. The search splits the allowed places where the bound is lowest and ends when the concrete
/// of the best place is above the bound by no more than `close`, or at the cap. It is over planned, unrounded finishes, and so is
/// the bound: with `steps` the finish at the place found is rounded afterwards, and another place may round to less. Derived;
/// branch and bound after Land and Doig 1960 (from memory).
///
/// ```
/// use overslab::grade::solve::{Demand, DrainAsked, DrainBounds, Wants, place_drain};
/// use overslab::quantity::read;
/// # use overslab::operation::record::Record;
/// # let input = r#"{"outline": {"corners": [{"x": "0 ft", "y": "0 ft"}, {"x": "20 ft", "y": "0 ft"},
/// #   {"x": "20 ft", "y": "16 ft"}, {"x": "0 ft", "y": "16 ft"}], "edges": ["door", "right", "back", "left"]},
/// #   "shots": [{"x": "0 ft", "y": "0 ft", "elevation": "100 ft"}, {"x": "20 ft", "y": "0 ft", "elevation": "100 ft"},
/// #   {"x": "20 ft", "y": "16 ft", "elevation": "100.1 ft"}, {"x": "0 ft", "y": "16 ft", "elevation": "100.05 ft"}]}"#;
/// # let survey = overslab::survey::Survey::from_json(serde_json::from_str(input).unwrap())?;
/// let least = Wants::LeastThickness { least: read("3 in")?, zone: None };
/// let demands = [Demand::new("least 3 in", least)];
/// let within = DrainBounds { x: [read("4 ft")?, read("16 ft")?], y: [read("4 ft")?, read("12 ft")?] };
/// let asked = DrainAsked {
///     within, fall: read("1/8 in/ft")?, greatest_fall: None, demands: &demands, margin: read("3/8 in")?,
///     edges_bind: false, concrete_price: None, close: read("0.1 %")?, most_places: 2000, steps: None,
/// };
/// let placed = place_drain(&survey, &asked)?;
/// assert!(placed.bound <= placed.concrete && placed.gap <= read("0.1 %")?);
/// # Ok::<(), Box<overslab::failure::Failure>>(())
/// ```
///
/// # Errors
/// - `OUT_OF_RANGE`: bounds out of order or far from the work, falls, `close` or `most_places` out of range.
/// - `DRAIN_UNPLACED`: from no place of the rectangle all corners of the outline can be seen.
/// - `DRAIN_NOWHERE`: no allowed place keeps the demands, with what contradicts at one of them.
/// - `DRAIN_NOT_FOUND`: the cap was reached before a place was found that keeps them.
/// - As [`solve`], `DEMANDS_CONFLICT` excepted.
pub fn place_drain(survey: &Survey, asked: &DrainAsked<'_>) -> Result<PlacedDrain> {
    drain_place::place(survey, asked, &DualSimplex)
}
