//! The height of a finish at a door.

use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::quantity::{Elevation, Typed, feet_and_inches};
use crate::survey::outline::Corner;

/// The lowest height of a finish along a door: water that gets over the floor's edge anywhere is in.
///
/// # Errors
/// `EMPTY_LIST`: no place; `OFF_WORK`: a place that the finish does not cover.
pub fn at_door(finish: &Finish, places: &[Corner]) -> Result<Elevation> {
    let mut lowest = f64::INFINITY;
    for (index, place) in places.iter().enumerate() {
        let height = finish.height_at(place.x, place.y).ok_or_else(|| off(index, *place))?;
        lowest = lowest.min(height.base());
    }
    if lowest.is_finite() {
        return Ok(Elevation::from_base(lowest));
    }
    Err(Failure::new(Code::EmptyList, "door")
        .written("no place of the door")
        .allowed("one place along the door, or several")
        .remedy("say where the door is"))
}

fn off(index: usize, place: Corner) -> Box<Failure> {
    let (x, y) = (feet_and_inches(place.x, 8), feet_and_inches(place.y, 8));
    Failure::new(Code::OffWork, format!("door[{index}]"))
        .written(format!("{x}, {y}"))
        .allowed("a place under a facet of the finish")
        .remedy("move the place onto the floor")
}
