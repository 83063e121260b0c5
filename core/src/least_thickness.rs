//! How thick an overlay is at least, in inches: each number once, for the verdict on the old slab and for the overlay's own rules.
//!
//! Where each comes from stands with the rules that use it.

/// Bonded, under people.
pub(crate) const BONDED: f64 = 0.75;
/// Bonded, under cars and in wash bays.
pub(crate) const BONDED_UNDER_CARS: f64 = 1.5;
/// Bonded, under trucks, jacks and what is heavier.
pub(crate) const BONDED_UNDER_TRUCKS: f64 = 2.0;
/// Not bonded, under people and cars.
pub(crate) const LOOSE: f64 = 3.0;
/// Not bonded, under trucks and jacks and in wash bays.
pub(crate) const LOOSE_LOADED: f64 = 4.0;
/// Not bonded, where water that freezes may get under it.
pub(crate) const LOOSE_IN_FROST: f64 = 4.0;
/// Not bonded, under what is heavier than trucks.
pub(crate) const LOOSE_HEAVY: f64 = 5.0;
