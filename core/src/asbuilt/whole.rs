//! The floor as built, held against its plan.

use super::checks::{Check, checks};
use super::concrete::{Concrete, Delivered};
use super::deviations::Deviations;
use super::falls::FacetFall;
use super::mends::{Mend, mends};
use super::puddles::{Puddle, SeenPuddle};
use crate::assumption;
use crate::basis::BasisId;
use crate::failure::{Result, check};
use crate::grade::finish::{Finish, LEAST};
use crate::grade::thickness::Thickness;
use crate::quantity::{Length, Slope, Typed};
use crate::survey::Survey;
use crate::survey::low_spots::{Edges, Ponds, SHALLOWEST_TAKEN};

/// What is held against the floor.
#[derive(Clone, Debug)]
pub struct Asked<'a> {
    /// How far a shot may be off its plan.
    pub tolerance: Length,
    /// Whether the tolerance was given, not taken.
    pub tolerance_given: bool,
    /// The thickness that is specified.
    pub specified: Option<Length>,
    /// The least thickness allowed anywhere.
    pub least: Option<Length>,
    /// The least fall, and where it comes from.
    pub least_fall: Option<(Slope, BasisId)>,
    /// Where water may leave.
    pub edges: &'a Edges,
    /// Ponds shallower than this are left out.
    pub shallowest: Length,
    /// What came and what was left of it.
    pub delivered: Option<Delivered>,
    /// Puddles seen when the hose was let run.
    pub puddles: &'a [SeenPuddle],
}

impl<'a> Asked<'a> {
    /// Only what is always asked, with these ways out for water.
    #[must_use]
    pub fn with_edges(edges: &'a Edges) -> Self {
        Self {
            tolerance: assumption::MARK_TOLERANCE.value(),
            tolerance_given: false,
            specified: None,
            least: None,
            least_fall: None,
            edges,
            shallowest: Length::from_base(SHALLOWEST_TAKEN),
            delivered: None,
            puddles: &[],
        }
    }
}

/// The floor as built.
#[derive(Clone, Debug)]
pub struct AsBuilt {
    /// The shots beside the plan.
    pub deviations: Deviations,
    /// The thickness that was planned.
    pub planned: Thickness,
    /// The thickness that was got: the surveyed new floor over the surveyed old slab, exactly.
    pub thickness: Thickness,
    /// The slopes of the planes of the plan.
    pub falls: Vec<FacetFall>,
    /// Where water stands on the new floor.
    pub ponds: Ponds,
    /// The puddles that were seen.
    pub puddles: Vec<Puddle>,
    /// Concrete used, where it is known what came.
    pub concrete: Option<Concrete>,
    /// What was asked, and whether it was kept.
    pub checks: Vec<Check>,
    /// What to mend.
    pub mends: Vec<Mend>,
}

impl AsBuilt {
    /// Holds a new floor against the old slab and the plan. Both surveys have one plan edge.
    ///
    /// # Errors
    /// `AS_BUILT_OUTLINE`: another plan edge; `OUT_OF_RANGE`; `CONTRADICTION`: more left over than came; `OFF_WORK`, `FACETS_LEAVE_HOLE`,
    /// `NO_OUTLET` and what else finishes and ponds are refused for.
    pub fn of(old: &Survey, finish: &Finish, new: &Survey, asked: &Asked<'_>) -> Result<Self> {
        let least = asked.least.map(|least| check("least", least, LEAST)).transpose()?;
        let specified = asked.specified.map(|given| check("specified", given, LEAST)).transpose()?;
        let planned = Thickness::of(old, finish, least.or(specified))?;
        let thickness = Thickness::between(new, old, finish, least.or(specified))?;
        let deviations = Deviations::of(new, finish, asked.tolerance)?;
        let ponds = Ponds::of_survey(new, asked.edges, asked.shallowest)?;
        let delivered = asked.delivered;
        let concrete = delivered.map(|came| Concrete::of(came, planned.fill, thickness.fill)).transpose()?;
        let mut found = Self {
            falls: FacetFall::of(new, finish),
            puddles: asked.puddles.iter().map(|seen| Puddle::beside(seen, &ponds)).collect(),
            mends: mends(&deviations, &ponds),
            deviations,
            planned,
            thickness,
            ponds,
            concrete,
            checks: Vec::new(),
        };
        found.checks = checks(&found, asked);
        Ok(found)
    }

    /// The thinnest place between shots of the old slab; of all where none lies between them.
    #[must_use]
    pub fn least_thickness(&self) -> Length {
        let measured = self.thickness.least_measured.as_ref();
        measured.unwrap_or(&self.thickness.least).thickness
    }

    /// How much higher the floor came out than planned, mean over its area.
    #[must_use]
    pub fn mean_over_area(&self) -> Length {
        self.thickness.mean - self.planned.mean
    }
}
