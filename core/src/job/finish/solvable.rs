//! What may stand beside a finish that is solved for: nothing that says its heights, and nothing without an effect.

use super::{FinishDemand, FinishPointInput};
use crate::failure::{Code, Failure, Result};
use crate::grade::finish::patterns::Reach;
use crate::grade::solve::Kind;

impl FinishDemand {
    /// Refuses what has no effect where the finish is solved for.
    pub(super) fn solvable(&self) -> Result<()> {
        let Some(solve) = &self.solve else { return Ok(()) };
        self.no_heights()?;
        self.one_outlet()?;
        if let (Some(greatest), true) = (&solve.greatest_fall, self.facets.is_some() || self.outlets() == 0) {
            return Err(Failure::new(Code::FinishUndetermined, "solve.greatest_fall")
                .written(format!("a greatest fall of {} to no edge and no line", greatest.written))
                .allowed("with falls_to, valley, crown, drain or trench")
                .remedy(
                    "say what the floor falls to, or demand it under solve.demands or as solve.steepest",
                ));
        }
        match &self.margin {
            Some(margin) if !self.has_least() => Err(Failure::new(Code::Contradiction, "margin")
                .written(margin.written.as_str())
                .allowed("with a least thickness only")
                .remedy("remove it, or give the least thickness")),
            _ => Ok(()),
        }
    }

    /// Whether a least thickness is asked for.
    pub(in crate::job) fn has_least(&self) -> bool {
        let demands = self.solve.iter().flat_map(|solve| &solve.demands);
        self.least.is_some() || demands.into_iter().any(|demand| demand.kind == Kind::LeastThickness)
    }

    fn outlets(&self) -> usize {
        let shapes = self.shapes();
        shapes.iter().filter(|(_, given)| *given).count() + usize::from(self.falls_to.is_some())
    }

    /// One edge or one shape, with its fall.
    fn one_outlet(&self) -> Result<()> {
        let shape = self.shapes().into_iter().find(|(_, given)| *given).map(|(name, _)| name);
        if let (Some(name), true) = (shape, self.outlets() > 1 || self.fall.is_some()) {
            return Err(self.twice(name));
        }
        let greatest = self.solve.as_ref().is_some_and(|solve| solve.greatest_fall.is_some());
        match (&self.falls_to, &self.fall) {
            (None, Some(fall)) => Err(Self::to_no_edge(fall)),
            (Some(_), None) if !greatest => self.fall("fall").map(drop),
            _ => Ok(()),
        }
    }

    /// Heights are found, not given.
    fn no_heights(&self) -> Result<()> {
        fn written<Q>(given: &Option<crate::quantity::Given<Q>>) -> Option<String> {
            given.as_ref().map(|given| given.written.clone())
        }
        let mut heights = vec![
            ("edge_elevation".to_owned(), written(&self.edge_elevation)),
            ("edge_rod".to_owned(), written(&self.edge_rod)),
            ("level".to_owned(), written(&self.level)),
            ("level_rod".to_owned(), written(&self.level_rod)),
            ("points".to_owned(), self.points.as_ref().map(|_| "points".to_owned())),
        ];
        let mut of_line = |shape: &str, points: &[FinishPointInput]| {
            for (index, point) in points.iter().enumerate() {
                heights.push((format!("{shape}.points[{index}].elevation"), written(&point.elevation)));
                heights.push((format!("{shape}.points[{index}].rod"), written(&point.rod)));
            }
        };
        if let Some(line) = &self.valley {
            of_line("valley", &line.points);
        }
        if let Some(line) = &self.crown {
            of_line("crown", &line.points);
        }
        if let Some(points) = self.trench.as_ref().and_then(|trench| trench.points.as_ref()) {
            of_line("trench", points);
        }
        if let Some(trench) = &self.trench {
            heights.push(("trench.elevation".to_owned(), written(&trench.elevation)));
            heights.push(("trench.rod".to_owned(), written(&trench.rod)));
        }
        if let Some(drain) = &self.drain {
            heights.push(("drain.elevation".to_owned(), written(&drain.elevation)));
            heights.push(("drain.rod".to_owned(), written(&drain.rod)));
            if drain.along == Some(Reach::Shortest) {
                return Err(Failure::new(Code::Contradiction, "drain.along")
                    .written(Reach::Shortest.word())
                    .allowed(
                        "where the finish is not solved for: with `solve` the fall is kept along every way",
                    )
                    .remedy("remove it"));
            }
        }
        let given = heights.into_iter().find_map(|(path, written)| Some((path, written?)));
        given.map_or(Ok(()), |(path, written)| {
            Err(Failure::new(Code::FinishTwice, path)
                .written(format!("{written}, and a finish that is solved for"))
                .allowed("no height: it is found")
                .remedy("remove it, or demand the height under limits, `exactly`"))
        })
    }
}
