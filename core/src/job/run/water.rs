//! Where water stands before and after, and what is done to the old slab first.

use crate::failure::Result;
use crate::grade::finish::Finish;
use crate::grade::standing_water::{Cure, Fate};
use crate::job::input::Job;
use crate::job::report::{CleanUpReport, PlaceReport, PondReport, StandingWater};
use crate::job::say;
use crate::note::Note;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;
use crate::survey::clean_up::{ChangeInput, Changed};
use crate::survey::low_spots::{Drain, EdgeState, EdgeStated, Edges, Pond, Ponds, SHALLOWEST_TAKEN};
use crate::survey::old_slab::SlabPlace;
use crate::survey::outline::Corner;

impl Job {
    /// Standing water, and what must be known of it.
    pub(super) fn standing_water(
        &self,
        survey: &Survey,
        finish: &Finish,
    ) -> Result<(StandingWater, Vec<Note>)> {
        let shallowest = Length::from_base(SHALLOWEST_TAKEN);
        let cure =
            Cure::of(survey, finish, &self.edges(), shallowest).map_err(|failure| failure.under("water"))?;
        let old = cure
            .old
            .list
            .iter()
            .zip(&cure.outcomes)
            .map(|(pond, outcome)| pond_report(pond, Some(outcome.fate.word())));
        let new = cure
            .finish
            .list
            .iter()
            .zip(&cure.new)
            .map(|(pond, new)| pond_report(pond, Some(if *new { "new" } else { "left" })));
        let water = StandingWater {
            old_floor: old.collect(),
            new_floor: Some(new.collect()),
            cured: Some(cure.count(Fate::Cured)),
            shallowest: say::fine_thickness(shallowest),
        };
        Ok((water, cure.notes()))
    }

    /// What stands on the old slab, where no new floor is told, and what must be known of it.
    pub(super) fn standing_on_old(&self, survey: &Survey) -> Result<(StandingWater, Vec<Note>)> {
        let shallowest = Length::from_base(SHALLOWEST_TAKEN);
        let ponds =
            Ponds::of_survey(survey, &self.edges(), shallowest).map_err(|failure| failure.under("water"))?;
        let water = StandingWater {
            old_floor: ponds.list.iter().map(|pond| pond_report(pond, None)).collect(),
            new_floor: None,
            cured: None,
            shallowest: say::fine_thickness(shallowest),
        };
        Ok((water, ponds.notes()))
    }

    /// Where water may leave: what the job states, and the drains that the finish falls to.
    pub(super) fn edges(&self) -> Edges {
        let mut edges = self.water.as_ref().map_or_else(Edges::default, Edges::from);
        if let Some(drain) = &self.finish.drain {
            let at = vec![Corner::new(drain.x.value, drain.y.value)];
            edges.drains.push(Drain { name: drain.name.clone(), at });
        }
        if let Some(trench) = &self.finish.trench {
            if let Some(points) = &trench.points {
                let at = points.iter().map(|point| Corner::new(point.x.value, point.y.value)).collect();
                edges.drains.push(Drain { name: Some("trench".to_owned()), at });
            }
            if let Some(edge) =
                trench.edge.as_ref().filter(|edge| edges.stated.iter().all(|s| s.edge != **edge))
            {
                edges.stated.push(EdgeStated { edge: edge.clone(), state: EdgeState::Drained });
            }
        }
        edges
    }
}

pub(super) fn pond_report(pond: &Pond, fate: Option<&str>) -> PondReport {
    PondReport {
        area: say::surface(pond.area),
        volume: say::water(pond.volume),
        depth: say::fine_thickness(pond.depth),
        deepest: said_place(pond.deepest),
        spill: said_place(pond.spill),
        fate: fate.map(str::to_owned),
    }
}

pub(super) fn said_place(corner: Corner) -> PlaceReport {
    say::place(&SlabPlace { x: corner.x, y: corner.y, elevation: Elevation::from_base(0.0), shot: None })
}

/// What is done to the old slab first.
pub(super) fn clean_up(survey: &Survey) -> Vec<CleanUpReport> {
    let one = |changed: &Changed| CleanUpReport {
        work: ChangeInput::from(&changed.change).work.word().to_owned(),
        area: say::surface(changed.area),
        volume: say::water(changed.volume),
        deepest: changed.deepest.map(|(depth, _)| say::fine_thickness(depth)),
        deepest_at: changed.deepest.map(|(_, at)| said_place(at)),
    };
    survey.changes().iter().map(one).collect()
}
