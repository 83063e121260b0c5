//! Things that the floor meets, as a job gives them: made into things, judged, and demanded of a finish.

#[cfg(test)]
mod tests;

use super::heights::Heights;
use super::input::{ClearanceInput, Job};
use crate::clearance::{Clearance, JudgedThing, Kind, Measure, Measures, clearances};
use crate::failure::{Code, Failure, Place, Result};
use crate::grade::finish::Finish;
use crate::grade::solve::{Demand, Heights as At, Line, Wants};
use crate::quantity::{Elevation, Given, Length};
use crate::survey::Survey;
use crate::survey::outline::Corner;

impl Job {
    /// Everything that the floor meets, judged.
    pub(super) fn judged(
        &self,
        survey: &Survey,
        finish: &Finish,
        heights: Heights,
    ) -> Result<Vec<JudgedThing>> {
        let things = self.clearances.iter().enumerate();
        let things = things.map(|(index, input)| {
            input.clearance(heights).map_err(|failure| failure.under(&format!("clearances[{index}]")))
        });
        let things = things.collect::<Result<Vec<_>>>()?;
        if things.is_empty() {
            return Ok(Vec::new());
        }
        clearances(survey, finish, &things).map_err(|failure| self.of_thing(failure))
    }

    /// A failure of a thing under the job's keys.
    fn of_thing(&self, mut failure: Box<Failure>) -> Box<Failure> {
        let Place::Index(index) = failure.place else { return failure };
        failure.place = Place::Unknown;
        failure.path = match failure.path.as_str() {
            "ground" if self.clearances.get(index).is_some_and(|input| !input.ground_rods.is_empty()) => {
                "ground_rods".to_owned()
            }
            "ground" => "ground".to_owned(),
            _ => "at".to_owned(),
        };
        failure.under(&format!("clearances[{index}]"))
    }

    /// The heights that things demand of a finish that is solved for, with their keys in the job.
    pub(super) fn clearance_demands(
        &self,
        survey: &Survey,
        heights: Heights,
    ) -> Result<Vec<(Demand, String)>> {
        if !self.clearances.iter().any(|input| input.demanded) {
            return Ok(Vec::new());
        }
        // What bounds the floor from above does not depend on where it is.
        let any = Finish::level(survey.facts().lowest.elevation)?;
        let judged = self.judged(survey, &any, heights)?;
        let each = self.clearances.iter().zip(&judged).enumerate();
        each.filter(|(_, (input, _))| input.demanded)
            .map(|(index, (input, judged))| {
                let path = format!("clearances[{index}]");
                let most =
                    judged.judgement.bounds_floor().ok_or_else(|| unbounded(input.kind, judged, &path))?;
                let along = Line::Places(judged.floor.places().to_vec());
                let wants = Wants::AtMost(At { along, elevation: most });
                Ok((Demand::new(input.name.clone(), wants), path))
            })
            .collect()
    }

    /// Whether a thing is demanded counts only where the finish is solved for.
    pub(super) fn no_idle_clearances(&self) -> Result<()> {
        let idle = self.clearances.iter().position(|input| input.demanded && self.finish.solve.is_none());
        match idle {
            None => Ok(()),
            Some(index) => Err(Failure::new(Code::Contradiction, format!("clearances[{index}].demanded"))
                .written("true")
                .allowed("where the finish is solved for")
                .remedy("remove it, or let the finish be solved for")),
        }
    }
}

/// A thing that no floor is too high for, or of which that cannot be told.
fn unbounded(kind: Kind, judged: &JudgedThing, path: &str) -> Box<Failure> {
    let asks: Vec<&str> =
        judged.judgement.checks.iter().filter_map(|check| check.asks).map(Measure::name).collect();
    let failure = Failure::new(Code::Contradiction, format!("{path}.demanded"))
        .written(format!("true, of a {}", kind.word()))
        .allowed("a thing that the floor can be too high for, with its heights");
    if asks.is_empty() {
        failure.remedy("remove it: no height of the floor alone makes this thing work")
    } else {
        failure.remedy(format!("give {}", asks.join(", ")))
    }
}

impl ClearanceInput {
    /// The thing with its place.
    fn clearance(&self, heights: Heights) -> Result<Clearance> {
        let line = self.at.iter().map(|place| Corner::new(place.x.value, place.y.value)).collect();
        let measures = self.measures(heights)?;
        let thing = measures.thing(self.kind).map_err(|mut failure| {
            let as_rod = [
                ("elevation", self.rod.is_some(), "rod"),
                ("ground", !self.ground_rods.is_empty(), "ground_rods"),
            ];
            if let Some((_, _, key)) = as_rod.iter().find(|(path, rods, _)| *rods && failure.path == *path) {
                (*key).clone_into(&mut failure.path);
            }
            failure
        })?;
        Ok(Clearance { name: self.name.clone(), kind: self.kind, line, thing })
    }

    fn measures(&self, heights: Heights) -> Result<Measures> {
        let length = |given: &Option<Given<Length>>| given.as_ref().map(|given| given.value);
        Ok(Measures {
            elevation: self.height(heights)?,
            above_slab: length(&self.above_slab),
            needed: length(&self.needed),
            seal_takes: length(&self.seal_takes),
            eyes_now: length(&self.eyes_now),
            gap_now: length(&self.gap_now),
            gap: length(&self.gap),
            covering: length(&self.covering),
            may_lose: length(&self.may_lose),
            swing: self.swing,
            runs_outside: self.runs_outside,
            fire_rated: self.fire_rated,
            exit: self.exit,
            risers: self.risers.iter().map(|given| given.value).collect(),
            riser_count: self.riser_count.map(|count| count as usize),
            flight: length(&self.flight),
            end: self.end,
            ground: self.ground_heights(heights)?,
            free: length(&self.free),
            exposed: self.exposed,
            vehicles: self.vehicles,
            listed: self.listed,
            kept_free: self.kept_free,
            located: self.located,
            route: self.route,
        })
    }

    fn height(&self, heights: Heights) -> Result<Option<Elevation>> {
        match (&self.elevation, &self.rod) {
            (None, None) => Ok(None),
            (elevation, rod) => heights.given(elevation, rod, ["elevation", "rod"]).map(Some),
        }
    }

    fn ground_heights(&self, heights: Heights) -> Result<Vec<Elevation>> {
        if !self.ground.is_empty() && !self.ground_rods.is_empty() {
            return Err(Failure::new(Code::Contradiction, "ground_rods")
                .written("ground and ground_rods")
                .allowed("one of the two")
                .remedy("keep one of them"));
        }
        let elevations = self.ground.iter().map(|given| Ok(given.value));
        let rods = self.ground_rods.iter().enumerate().map(|(index, rod)| {
            let path = format!("ground_rods[{index}]");
            heights.given(&None, &Some(rod.clone()), [&path, &path])
        });
        elevations.chain(rods).collect()
    }
}
