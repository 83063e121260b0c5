//! How many trucks an order takes.

use crate::failure::{Result, check};
use crate::note::NoteCode;
use crate::quantity::{Range, Typed, Volume};

/// A volume to be ordered: more than none, up to 100 000 m3.
pub const ORDERED: Range = Range::positive_to(1.0e5);
/// What one truck carries: 0.1 m3 to 20 m3.
pub const CAPACITY: Range = Range::closed(0.1, 20.0);

/// Trucks for one order.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trucks {
    /// How many loads.
    pub loads: u32,
    /// What the last one carries.
    pub last: Volume,
    /// Whether the last load is less than half a truck.
    pub note: Option<NoteCode>,
}

/// The loads for `ordered` with trucks of `capacity`, all full but the last.
///
/// # Errors
/// A volume outside its range.
pub fn trucks(ordered: Volume, capacity: Volume) -> Result<Trucks> {
    let ordered = check("ordered", ordered, ORDERED)?.base();
    let capacity = check("capacity", capacity, CAPACITY)?.base();
    // A hair over a full truck is rounding, not another truck.
    let loads = (ordered / capacity * (1.0 - 1.0e-12)).ceil().max(1.0);
    let last = (ordered - (loads - 1.0) * capacity).min(capacity);
    let note = (loads > 1.0 && last < 0.5 * capacity).then_some(NoteCode::ShortLoad);
    Ok(Trucks { loads: loads as u32, last: Volume::from_base(last), note })
}
