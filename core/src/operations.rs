//! The table: every public operation, gathered from beside its module.

use crate::operation::{Kind, Operation, RecordType};
use crate::{asbuilt, clearance, condition, grade, job, marks, order, overlay, survey};

/// Every operation, in the order of the job.
pub static OPERATIONS: &[&Operation] = &[
    &survey::operations::ROD_ELEVATION,
    &survey::operations::LEVEL_BOOK,
    &survey::operations::OUTLINE_FROM_CORNERS,
    &survey::operations::OUTLINE_FROM_SIDES,
    &survey::operations::SURVEY_FROM_SHOTS,
    &survey::operations::SURVEY_FROM_FACES,
    &survey::operations::SURVEY_FROM_GRID,
    &survey::operations::SURVEY_FROM_RODS,
    &survey::operations::SURVEY_TRIANGLES,
    &survey::operations::SURVEY_SUSPECTS,
    &survey::operations::SURVEY_WITHOUT,
    &survey::operations::SURVEY_COVERAGE,
    &survey::operations::TWO_PEG_TEST,
    &survey::operations::BENCHMARK_RECHECK,
    &survey::operations::POINTS_FROM_TABLE,
    &survey::operations::READ_POINTS,
    &survey::operations::READ_SURFACE,
    &survey::operations::POINTS_TO_AXES,
    &survey::operations::POINTS_ALONG_WALL,
    &survey::operations::PART_STRAYS,
    &survey::operations::THIN_POINTS,
    &survey::operations::SURVEY_FROM_POINTS,
    &survey::operations::SURVEY_FROM_TIN,
    &survey::operations::STANDING_WATER,
    &condition::operations::CONDITION,
    &condition::operations::CONDITION_QUICK,
    &condition::operations::TEAR_OUT,
    &grade::operations::FALL,
    &grade::operations::DROP,
    &grade::operations::TRIANGULAR_PRISM,
    &grade::operations::FINISH_LEVEL,
    &grade::operations::FINISH_FROM_POINTS,
    &grade::operations::FINISH_TO_EDGE,
    &grade::operations::FINISH_AT_LEAST,
    &grade::operations::FINISH_FROM_FACETS,
    &grade::operations::FINISH_FROM_PLANES,
    &grade::operations::FINISH_TO_VALLEY,
    &grade::operations::FINISH_CROWN,
    &grade::operations::FINISH_TO_TRENCH,
    &grade::operations::FINISH_TO_DRAIN,
    &grade::operations::FINISH_WITH_STRIP,
    &grade::operations::FINISH_RAISED,
    &grade::operations::FINISH_FACETS,
    &grade::operations::FINISH_SOLVED,
    &grade::operations::FINISH_CONFLICTS,
    &grade::operations::FINISH_SWEEP,
    &grade::operations::THICKNESS,
    &grade::operations::SECOND_LOOK,
    &grade::operations::FINISH_STANDING_WATER,
    &grade::operations::GRIND_HIGH_SPOTS,
    &grade::operations::FILL_LOW_SPOTS,
    &grade::operations::FILL_PONDS,
    &grade::operations::THICKNESS_AREAS,
    &grade::operations::THICKNESS_CONTOURS,
    &grade::operations::SURVEY_CONTOURS,
    &grade::operations::FINISH_CONTOURS,
    &grade::operations::THICKNESS_BANDS,
    &grade::operations::THICKNESS_HISTOGRAM,
    &grade::operations::THICKNESS_ZONES,
    &grade::operations::THIN_ZONES,
    &grade::operations::SECTION,
    &grade::operations::DRAIN_PLACE,
    &marks::operations::MARKS,
    &marks::operations::MORNING_CHECK,
    &overlay::operations::CONDITION_FACTOR,
    &overlay::operations::OVERLAY_MINIMUM,
    &overlay::operations::SURFACE_PROFILE,
    &overlay::operations::PULL_OFF,
    &overlay::operations::OVERLAY_REQUIRED,
    &overlay::operations::SLAB_EQUIVALENT,
    &overlay::operations::OVERLAY_EFFECTIVE_BONDED,
    &overlay::operations::OVERLAY_EFFECTIVE_UNBONDED,
    &overlay::operations::CONCRETE_MODULUS,
    &overlay::operations::CONCRETE_MODULUS_BY_DENSITY,
    &overlay::operations::CONCRETE_RUPTURE,
    &overlay::operations::SUBGRADE_FROM_BEARING_RATIO,
    &overlay::operations::SUBGRADE_FROM_RESILIENT,
    &overlay::operations::SUBGRADE_FROM_SOIL,
    &overlay::operations::SUBGRADE_WITH_SUBBASE,
    &overlay::operations::STIFFNESS_RADIUS,
    &overlay::operations::CONTACT_RADIUS,
    &overlay::operations::CONTACT_RADIUS_DUAL,
    &overlay::operations::EQUIVALENT_RADIUS,
    &overlay::operations::INTERIOR_LOAD,
    &overlay::operations::EDGE_LOAD,
    &overlay::operations::EDGE_LOAD_1926,
    &overlay::operations::CORNER_LOAD,
    &overlay::operations::CORNER_CRACK,
    &overlay::operations::LOAD_INFLUENCE,
    &overlay::operations::USUAL_LOAD,
    &overlay::operations::SLAB_STRESS,
    &overlay::operations::SAFETY_FACTORS,
    &overlay::operations::ALLOWABLE_STRESS,
    &overlay::operations::ALLOWABLE_LOAD,
    &overlay::operations::REPETITIONS_ALLOWED,
    &overlay::operations::THICKNESS_NEEDED,
    &overlay::operations::UNIFORM_LOAD,
    &overlay::operations::WALL_LOAD,
    &overlay::operations::CURLING_COEFFICIENT,
    &overlay::operations::CURLING_STRESS,
    &overlay::operations::TWO_LAYERS,
    &overlay::operations::EDGE_KEY,
    &overlay::operations::KEY_CUTS,
    &overlay::operations::MOISTURE_TESTS,
    &overlay::operations::MOISTURE_VERDICT,
    &overlay::operations::DRYING_TIME,
    &overlay::operations::DRYING_TIME_BY_WATER,
    &overlay::operations::VAPOUR_EMISSION,
    &overlay::operations::ADDED_WEIGHT,
    &grade::operations::DRAINAGE,
    &grade::operations::PUDDLE_FALL,
    &grade::operations::PUDDLE_DEPTH,
    &grade::operations::RUNOFF,
    &clearance::operations::APPROACH,
    &clearance::operations::CREST_CLEARANCE,
    &clearance::operations::SAG_BREAK,
    &clearance::operations::CLEARANCES,
    &order::operations::BLOCK,
    &order::operations::PRISMOID,
    &order::operations::TRUCKS,
    &order::operations::ORDER,
    &asbuilt::operations::FLATNESS_LINE,
    &asbuilt::operations::FLATNESS,
    &asbuilt::operations::FLATNESS_COMBINED,
    &asbuilt::operations::STRAIGHTEDGE,
    &asbuilt::operations::AS_BUILT,
    &job::operations::JOB_FROM_TEXT,
    &job::operations::REPORT,
];

/// The table with the test-only operations behind it, where they are built in.
#[must_use]
pub fn all() -> Vec<&'static Operation> {
    #[cfg(feature = "specimen")]
    let more = crate::specimen::OPERATIONS;
    #[cfg(not(feature = "specimen"))]
    let more: &[&Operation] = &[];
    OPERATIONS.iter().chain(more).copied().collect()
}

/// The operation of that name.
#[must_use]
pub fn find(name: &str) -> Option<&'static Operation> {
    #[cfg(feature = "specimen")]
    if let Some(found) = crate::specimen::OPERATIONS.iter().find(|operation| operation.name == name) {
        return Some(found);
    }
    OPERATIONS.iter().find(|operation| operation.name == name).copied()
}

/// Every record type that the given operations take or make, each once, in the order met.
#[must_use]
pub fn records(operations: &[&'static Operation]) -> Vec<&'static RecordType> {
    let mut found: Vec<&'static RecordType> = Vec::new();
    for port in operations.iter().flat_map(|operation| operation.ports.iter().chain(operation.results)) {
        if let Kind::Record(record) = port.kind
            && !found.iter().any(|known| known.name == record.name)
        {
            found.push(record);
        }
    }
    found
}
