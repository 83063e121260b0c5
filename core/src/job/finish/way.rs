//! Exactly one way of saying where the finish lies, and nothing given to no effect.

use super::FinishDemand;
use crate::failure::{Code, Failure, Result, together};
use crate::quantity::{Given, Slope};

/// What a finish may be said by.
const ALLOWED: &str = "one of: least; an edge height with falls_to and fall; level; points; \
                       one of valley, crown, drain, trench, facets, with or without least";

impl FinishDemand {
    /// Nothing given that the way of saying where the finish lies has no use for.
    pub(super) fn nothing_idle(&self) -> Result<()> {
        let idle = |path: &str, written: &str| {
            Err(Failure::new(Code::Contradiction, path)
                .written(written)
                .allowed("with `least` only: other heights stay as given")
                .remedy("remove it, or give the least thickness"))
        };
        match (&self.least, &self.margin, &self.round, &self.fall) {
            (None, Some(margin), ..) => idle("margin", &margin.written),
            (None, _, Some(round), _) => idle("round", &round.written),
            (Some(_), .., Some(fall)) if self.falls_to.is_none() => Err(Self::to_no_edge(fall)),
            _ => Ok(()),
        }
    }

    pub(super) fn to_no_edge(fall: &Given<Slope>) -> Box<Failure> {
        Failure::new(Code::FinishUndetermined, "falls_to")
            .written(format!("a fall of {} to no edge", fall.written))
            .allowed("the edge")
            .remedy("name the edge, or remove the fall for a level finish")
    }

    /// Exactly one way of saying where the finish lies.
    pub(super) fn one_way(&self) -> Result<()> {
        if self.shapes().iter().any(|(_, given)| *given) {
            return self.one_shape();
        }
        let edge_height = self.has_edge_height();
        let level = self.level.is_some() || self.level_rod.is_some();
        let ways = [self.least.is_some(), edge_height, level, self.points.is_some()];
        match ways.iter().filter(|&&way| way).count() {
            0 => Err(Failure::new(Code::FinishUndetermined, "")
                .written(self.given())
                .allowed(ALLOWED)
                .remedy("say where the finish lies: least thickness is the usual way")),
            1 if edge_height && self.falls_to.is_none() => {
                Err(Failure::new(Code::FinishUndetermined, "falls_to")
                    .written(self.given())
                    .allowed("the edge")
                    .remedy("name the edge"))
            }
            1 if (level || self.points.is_some()) && (self.falls_to.is_some() || self.fall.is_some()) => {
                Err(self.twice("falls_to"))
            }
            1 => Ok(()),
            _ => Err(self.twice("")),
        }
    }

    /// One shape of several planes, and beside it nothing but a least thickness.
    fn one_shape(&self) -> Result<()> {
        let shapes = self.shapes();
        let mut given = shapes.iter().filter(|(_, given)| *given);
        let others = [
            self.has_edge_height(),
            self.level.is_some(),
            self.level_rod.is_some(),
            self.points.is_some(),
            self.falls_to.is_some(),
            self.fall.is_some(),
        ];
        match (given.next(), given.next()) {
            (Some((first, _)), None) if others.contains(&true) => Err(self.twice(first)),
            (_, Some((second, _))) => Err(self.twice(second)),
            _ => Ok(()),
        }
    }

    pub(super) fn twice(&self, path: &str) -> Box<Failure> {
        Failure::new(Code::FinishTwice, path)
            .written(self.given())
            .allowed(ALLOWED)
            .remedy("keep one of the ways")
    }

    fn has_edge_height(&self) -> bool {
        self.edge_elevation.is_some() || self.edge_rod.is_some()
    }

    pub(super) fn shapes(&self) -> [(&'static str, bool); 5] {
        [
            ("valley", self.valley.is_some()),
            ("crown", self.crown.is_some()),
            ("drain", self.drain.is_some()),
            ("trench", self.trench.is_some()),
            ("facets", self.facets.is_some()),
        ]
    }

    fn given(&self) -> String {
        let mut all = vec![
            ("least", self.least.is_some()),
            ("edge_elevation", self.edge_elevation.is_some()),
            ("edge_rod", self.edge_rod.is_some()),
            ("level", self.level.is_some()),
            ("level_rod", self.level_rod.is_some()),
            ("points", self.points.is_some()),
            ("falls_to", self.falls_to.is_some()),
            ("fall", self.fall.is_some()),
        ];
        all.extend(self.shapes());
        together(&all)
    }
}
