//! The rows of the overlay.

mod carried;
mod concrete;
mod curling;
mod edge_key;
mod layers;
mod load_table;
mod minimum;
mod moisture;
mod needed;
mod plate;
mod preparation;
mod stress;
mod subgrade;
mod thickness;
mod usual;
mod weight;
mod westergaard;

pub use carried::{
    ALLOWABLE_LOAD, ALLOWABLE_STRESS, REPETITIONS_ALLOWED, SAFETY_FACTORS, UNIFORM_LOAD, WALL_LOAD,
};
pub use concrete::{CONCRETE_MODULUS, CONCRETE_MODULUS_BY_DENSITY, CONCRETE_RUPTURE};
pub use curling::{CURLING_COEFFICIENT, CURLING_STRESS};
pub use edge_key::{EDGE_KEY, KEY_CUTS};
pub use layers::TWO_LAYERS;
pub use minimum::OVERLAY_MINIMUM;
pub use moisture::{DRYING_TIME, DRYING_TIME_BY_WATER, MOISTURE_TESTS, MOISTURE_VERDICT, VAPOUR_EMISSION};
pub use needed::THICKNESS_NEEDED;
pub use plate::{CONTACT_RADIUS, CONTACT_RADIUS_DUAL, EQUIVALENT_RADIUS, LOAD_INFLUENCE, STIFFNESS_RADIUS};
pub use preparation::{PULL_OFF, SURFACE_PROFILE};
pub use stress::SLAB_STRESS;
pub use subgrade::{
    SUBGRADE_FROM_BEARING_RATIO, SUBGRADE_FROM_RESILIENT, SUBGRADE_FROM_SOIL, SUBGRADE_WITH_SUBBASE,
};
pub use thickness::{
    CONDITION_FACTOR, OVERLAY_EFFECTIVE_BONDED, OVERLAY_EFFECTIVE_UNBONDED, OVERLAY_REQUIRED, SLAB_EQUIVALENT,
};
pub use usual::USUAL_LOAD;
pub use weight::ADDED_WEIGHT;
pub use westergaard::{CORNER_CRACK, CORNER_LOAD, EDGE_LOAD, EDGE_LOAD_1926, INTERIOR_LOAD};
