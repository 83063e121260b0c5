//! All that a job demands of the finish, in the order in which conflicts name it.

use super::{Listed, Origin};
use crate::failure::{Code, Failure, Result, nearest};
use crate::geometry::{Point, Region};
use crate::grade::finish::with_margin;
use crate::grade::solve::{Demand, Heights as At, Line, Said, Wants};
use crate::job::finish::{Plan, Way};
use crate::job::heights::Heights;
use crate::job::input::{ApproachInput, DemandInput, Job, LimitInput, LimitPlaceInput, SolveInput};
use crate::job::limits::Bound;
use crate::job::run::places::zone;
use crate::job::say;
use crate::quantity::{Length, Typed, inches};
use crate::survey::Survey;

impl Job {
    /// The demands of a job that solves for its finish.
    pub(super) fn demands(
        &self,
        solve: &SolveInput,
        plan: &Plan,
        survey: &Survey,
        heights: Heights,
    ) -> Result<Vec<Listed>> {
        let mut list = Vec::new();
        self.list_thickness(&mut list)?;
        list_falls(&mut list, solve, plan);
        let demanded = self.limits.iter().enumerate().filter(|(_, limit)| !limit.judged_only);
        for (index, limit) in demanded {
            let path = format!("limits[{index}]");
            let listed = limit.placed(survey).and_then(|()| limit.listed(&path, heights));
            list.push(listed.map_err(|failure| failure.under(&path))?);
        }
        for (index, approach) in self.approaches.iter().enumerate().filter(|(_, of)| of.demanded) {
            let path = format!("approaches[{index}]");
            list.push(approach.listed(&path, heights).map_err(|failure| failure.under(&path))?);
        }
        let demanded = self.clearance_demands(survey, heights)?;
        list.extend(demanded.into_iter().map(|(demand, path)| {
            let origin =
                Origin::at(path.clone()).with("x", format!("{path}.at")).with("name", format!("{path}.name"));
            Listed { demand, origin }
        }));
        for (index, demand) in solve.demands.iter().enumerate() {
            let path = format!("finish.solve.demands[{index}]");
            list.push(self.listed(demand, &path, heights)?);
        }
        for (index, edge) in solve.level.iter().enumerate() {
            let (along, tolerance) = (Line::Edge(edge.clone()), Length::from_base(0.0));
            let demand = Demand::new(format!("{edge} level"), Wants::Level { along, tolerance }).firmly();
            list.push(Listed { demand, origin: Origin::at(format!("finish.solve.level[{index}]")) });
        }
        for (name, wants, origin) in &plan.level {
            let demand = Demand::new(*name, wants.clone()).firmly();
            list.push(Listed { demand, origin: origin.clone() });
        }
        Ok(list)
    }

    fn list_thickness(&self, list: &mut Vec<Listed>) -> Result<()> {
        let Some(least) = &self.finish.least else { return Ok(()) };
        with_margin(least.value, self.finish.margin().0).map_err(|failure| failure.under("finish"))?;
        let wants = Wants::LeastThickness { least: least.value, zone: None };
        let demand = Demand::new(format!("least {}", inches(least.value, 16)), wants);
        list.push(Listed { demand, origin: Origin::at("finish.least") });
        Ok(())
    }

    /// A demand of the general list.
    fn listed(&self, input: &DemandInput, path: &str, heights: Heights) -> Result<Listed> {
        let demand = self.said(input, heights).and_then(|said| said.demand()).map_err(|mut failure| {
            if failure.path == "x" {
                "at".clone_into(&mut failure.path);
            }
            failure.under(path)
        })?;
        let mut origin = Origin::at(path).with("x", format!("{path}.at"));
        for key in ["name", "thickness", "fall", "tolerance", "edge", "facet", "zone", "weight"] {
            origin = origin.with(key, format!("{path}.{key}"));
        }
        let height = if input.rod.is_some() { "rod" } else { "elevation" };
        Ok(Listed { demand, origin: origin.with("elevation", format!("{path}.{height}")) })
    }

    fn said(&self, input: &DemandInput, heights: Heights) -> Result<Said> {
        firm_or_weighed(input.firm, input.weight)?;
        let elevation = match (&input.elevation, &input.rod) {
            (None, None) => None,
            (elevation, rod) => Some(heights.given(elevation, rod, ["elevation", "rod"])?),
        };
        Ok(Said {
            name: input.name.clone(),
            kind: input.kind,
            thickness: input.thickness.as_ref().map(|given| given.value),
            fall: input.fall.as_ref().map(|given| given.value),
            elevation,
            tolerance: input.tolerance.as_ref().map(|given| given.value),
            edge: input.edge.clone(),
            places: places(&input.at),
            on: input.facet.clone(),
            zone: input.zone.as_ref().map(|name| self.zone_named(name)).transpose()?,
            firm: input.firm,
            weight: input.weight,
        })
    }

    /// The zone of that name.
    fn zone_named(&self, name: &str) -> Result<Region> {
        let key = |name: &str| name.trim().to_lowercase();
        let found = self.zones.iter().enumerate().find(|(_, zone)| key(&zone.name) == key(name));
        if let Some((index, input)) = found {
            return zone(index, input).map(|zone| zone.region);
        }
        let known: Vec<&str> = self.zones.iter().map(|zone| zone.name.as_str()).collect();
        let remedy = nearest(name, known.iter().copied())
            .map_or_else(|| "name a zone of the job".to_owned(), |near| format!("did you mean `{near}`?"));
        Err(Failure::new(Code::KeyUnknown, "zone")
            .written(format!("\"{name}\""))
            .allowed(if known.is_empty() {
                "none: the job has no zones".to_owned()
            } else {
                known.join(", ")
            })
            .remedy(remedy))
    }
}

/// Falls toward what the floor falls to, then the steepest.
fn list_falls(list: &mut Vec<Listed>, solve: &SolveInput, plan: &Plan) {
    for way in &plan.ways {
        let Some(fall) = &way.fall else { continue };
        let wants = Wants::LeastFall { fall: fall.value, toward: way.toward.clone(), on: way.on.clone() };
        let demand = Demand::new(format!("fall {} {}", say::fall_named(fall.value), way.words), wants);
        list.push(Listed { demand, origin: way.origin.clone() });
    }
    if let Some(most) = &solve.greatest_fall {
        // A strip has a fall of its own.
        for way in plan.ways.iter().filter(|way| !way.of_strip()) {
            let wants =
                Wants::GreatestFall { fall: most.value, toward: way.toward.clone(), on: way.on.clone() };
            let demand =
                Demand::new(format!("fall at most {} {}", say::fall_named(most.value), way.words), wants);
            let origin = Origin::at("finish.solve.greatest_fall").with("edge", "finish.falls_to");
            list.push(Listed { demand, origin });
        }
    }
    if let Some(most) = &solve.steepest {
        let demand = Demand::new(
            format!("no steeper than {}", say::fall_named(most.value)),
            Wants::Steepest { fall: most.value, on: None },
        );
        list.push(Listed { demand, origin: Origin::at("finish.solve.steepest") });
    }
}

impl Way {
    fn of_strip(&self) -> bool {
        self.origin.of("").starts_with("finish.strips")
    }
}

impl LimitInput {
    fn listed(&self, path: &str, heights: Heights) -> Result<Listed> {
        firm_or_weighed(self.firm, self.weight)?;
        let (bound, elevation) = self.bound(heights)?;
        let at = At { along: Line::Places(places(&self.at)), elevation };
        let wants = match bound {
            Bound::AtMost => Wants::AtMost(at),
            Bound::AtLeast => Wants::AtLeast(at),
            Bound::Exactly => Wants::Exactly(at),
        };
        let (firm, weight) = (self.firm, self.weight.unwrap_or(1.0));
        let demand = Demand { name: self.name.clone(), wants, firm, weight };
        let origin = Origin::at(path)
            .with("x", format!("{path}.at"))
            .with("name", format!("{path}.name"))
            .with("weight", format!("{path}.weight"));
        Ok(Listed { demand, origin })
    }
}

impl ApproachInput {
    /// The floor at the door is high enough for the water outside to fall away.
    fn listed(&self, path: &str, heights: Heights) -> Result<Listed> {
        let at = At { along: Line::Places(places(&self.at)), elevation: self.needed(heights)? };
        let demand = Demand::new(format!("{}: water away", self.name), Wants::AtLeast(at));
        let origin = Origin::at(path)
            .with("x", format!("{path}.at"))
            .with("name", format!("{path}.name"))
            .with("elevation", format!("{path}.profile"));
        Ok(Listed { demand, origin })
    }
}

fn places(at: &[LimitPlaceInput]) -> Vec<Point> {
    at.iter().map(|place| Point::new(place.x.value.base(), place.y.value.base())).collect()
}

/// What stands firm is not weighed.
fn firm_or_weighed(firm: bool, weight: Option<f64>) -> Result<()> {
    match (firm, weight) {
        (true, Some(weight)) => Err(Failure::new(Code::Contradiction, "weight")
            .written(format!("{weight}, and it stands firm"))
            .allowed("one of the two: what stands firm does not give way")
            .remedy("keep one of them")),
        _ => Ok(()),
    }
}
