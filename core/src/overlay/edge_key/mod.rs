//! Where the overlay meets a height that leaves it too thin: the key that is sawn and chipped into the old slab there.
//!
//! Concrete is not run out to nothing. Where a door sill, a walk or the next slab holds the new floor down, the old slab is sawn along that edge
//! and chipped out behind the cut, so that the overlay has its least thickness from the edge on.

mod along;
mod section;
#[cfg(test)]
mod tests;
mod transitions;

pub use along::{KeyCut, key_cuts, key_cuts_along};
pub use section::KeySection;
pub use transitions::{Met, Transition, transitions};

use super::thickness::SLAB;
use crate::failure::{Result, check};
use crate::quantity::units::INCH;
use crate::quantity::{Area, Length, Range, Slope, Typed, Volume};

/// The least thickness of an overlay: more than nothing, up to 60 in.
pub const LEAST: Range = Range::positive_to(60.0 * INCH);
/// The thickness at the edge: nothing where the floor is flush with the old slab, up to 60 in.
pub const AT_EDGE: Range = Range::closed(0.0, 60.0 * INCH);
/// How fast the overlay thickens away from the edge: more than level, up to 100 %.
pub const GROWTH: Range = Range::positive_to(1.0);
/// The length of an edge, and how far back there is room: up to 2 miles.
pub const REACH: Range = Range::positive_to(3200.0);

/// A key through this share of the old slab leaves too little of it.
const TOO_DEEP: f64 = 0.5;
/// A hair under the least thickness is the least thickness, in metres.
pub(super) const HAIR: f64 = 1.0e-6;

crate::choice! {
    /// What is done at an edge.
    pub enum Cut {
        /// The overlay has its least thickness there: nothing.
        None = "no key",
        /// A saw cut along the edge, and the old concrete chipped out behind it.
        Key = "saw and chip",
        /// The key would go through half of the old slab or more: the strip comes out and is poured at full depth.
        BreakOut = "break out the strip",
    }
}

/// A key along an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EdgeKey {
    /// What is done.
    pub cut: Cut,
    /// How deep the saw goes at the edge, and the key there.
    pub depth: Length,
    /// How far back the key goes.
    pub width: Length,
    /// How deep it still is at its back: nothing where it runs out by itself.
    pub depth_at_back: Length,
    /// The area that is chipped.
    pub area: Area,
    /// The old concrete that comes out; as much new concrete goes in.
    pub volume: Volume,
    /// What is left of the old slab under the key; none where its thickness is not known, or the key goes through it.
    pub left: Option<Length>,
}

/// What is known of an edge.
#[derive(Clone, Copy, Debug)]
pub struct EdgeOf {
    /// The least thickness of the overlay.
    pub least: Length,
    /// Its thickness at the edge.
    pub at_edge: Length,
    /// How fast it thickens away from the edge.
    pub growth: Slope,
    /// The length of the edge.
    pub length: Length,
    /// How far back there is room for a key: to a wall, to a joint; none where it may run out.
    pub room: Option<Length>,
    /// The thickness of the old slab.
    pub old_slab: Option<Length>,
}

/// The key along an edge: `depth = least - at edge`, `width = depth / growth`, its section a triangle; where there is less room the key ends
/// at the room's end with a square back, and its section is what the triangle has up to there.
///
/// # Errors
/// A value outside its range.
pub fn edge_key(edge: &EdgeOf) -> Result<EdgeKey> {
    let least = check("least", edge.least, LEAST)?.base();
    let at_edge = check("at_edge", edge.at_edge, AT_EDGE)?.base();
    let growth = check("growth", edge.growth, GROWTH)?.base();
    let length = check("length", edge.length, REACH)?;
    let room = edge.room.map(|room| check("room", room, REACH)).transpose()?;
    let old_slab = edge.old_slab.map(|old| check("old_slab", old, SLAB)).transpose()?;
    let runs_out = ((least - at_edge) / growth).max(0.0);
    let back = room.map_or(runs_out, |room| room.base().min(runs_out));
    let section = KeySection::under(edge.least, [(0.0, at_edge), (back, at_edge + growth * back)]);
    Ok(EdgeKey {
        cut: section.cut(old_slab),
        depth: section.depth,
        width: section.width,
        depth_at_back: section.depth_at_back,
        area: section.width * length,
        volume: section.area * length,
        left: old_slab.map(|old| old - section.deepest).filter(|left| left.base() > 0.0),
    })
}

/// What is done with a key of that depth in an old slab.
fn cut(deepest: Length, old_slab: Option<Length>) -> Cut {
    let too_deep = |old: Length| deepest.base() >= TOO_DEEP * old.base() - HAIR;
    if deepest.base() <= 0.0 {
        Cut::None
    } else if old_slab.is_some_and(too_deep) {
        Cut::BreakOut
    } else {
        Cut::Key
    }
}
