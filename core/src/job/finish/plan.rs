//! What a shape asks of a finish that is solved for: the facets in plan, and the outlets that they fall to.

use super::FinishDemand;
use super::shape::{AreaDrainInput, Footing, LineInput, StripInput, TrenchInput};
use crate::failure::Result;
use crate::geometry::Point;
use crate::grade::finish::patterns::Toward;
use crate::grade::finish::{Facet, Facing, Finish};
use crate::grade::solve::{Line, Outlet, Wants};
use crate::job::heights::Heights;
use crate::job::solve::Origin;
use crate::quantity::{Given, Slope, Typed};
use crate::survey::outline::Outline;

/// The facets in plan and what they fall to.
#[derive(Debug, Default)]
pub(in crate::job) struct Plan {
    /// The facets; one plane where there is none.
    pub(in crate::job) layout: Option<Finish>,
    /// The ways that water is led.
    pub(in crate::job) ways: Vec<Way>,
    /// What keeps a channel level, under its name.
    pub(in crate::job) level: Vec<(&'static str, Wants, Origin)>,
}

/// One way that water is led.
#[derive(Debug)]
pub(in crate::job) struct Way {
    /// Where to, in words: `to the front`.
    pub(in crate::job) words: String,
    /// Where it leaves.
    pub(in crate::job) toward: Outlet,
    /// Over which facets.
    pub(in crate::job) on: Option<String>,
    /// The fall asked for.
    pub(in crate::job) fall: Option<Given<Slope>>,
    /// Where it stands in the job.
    pub(in crate::job) origin: Origin,
}

/// What the level facet at an outlet is called, so that it is not taken for one that falls there.
const RIM: &str = "rim";
const CHANNEL: &str = "channel";

impl FinishDemand {
    /// The same, refused where something given has no effect.
    pub(in crate::job) fn solvable_plan(&self, outline: &Outline, heights: Heights) -> Result<Plan> {
        let plan = self.solvable().and_then(|()| self.plan(outline, heights));
        plan.map_err(|failure| failure.under("finish"))
    }

    /// The facets in plan, and what they fall to.
    fn plan(&self, outline: &Outline, heights: Heights) -> Result<Plan> {
        let mut plan = Plan::default();
        let shaped = self.shape(outline, Footing { heights, by_least: true })?;
        if let Some(finish) = shaped {
            let name = if self.drain.is_some() { RIM } else { CHANNEL };
            let apart = self.drain.is_some() || self.trench.is_some();
            plan.layout = Some(if apart { level_apart(&finish, name)? } else { finish });
        }
        if !self.strips.is_empty() {
            let floor = plan.layout.take().map_or_else(|| Finish::level(heights.datum), Ok)?;
            plan.layout = Some(self.with_strips(floor, outline)?);
        }
        self.lead(&mut plan, outline)?;
        for (index, strip) in self.strips.iter().enumerate() {
            strip.lead(&mut plan, index, outline)?;
        }
        Ok(plan)
    }

    /// The ways of the floor itself.
    fn lead(&self, plan: &mut Plan, outline: &Outline) -> Result<()> {
        let beside = |label: &str| (!self.strips.is_empty()).then(|| label.to_owned());
        if let Some(edge) = &self.falls_to {
            plan.ways.push(Way {
                words: format!("to the {edge}"),
                toward: Outlet::Edge(edge.clone()),
                on: beside("floor"),
                fall: self.fall.clone(),
                origin: Origin::at("finish.fall").with("edge", "finish.falls_to"),
            });
        }
        if let Some(valley) = &self.valley {
            let line = ends(&valley.points);
            valley.lead(plan, "to the valley", "finish.valley", [line, line], beside("valley"));
        }
        if let Some(crown) = &self.crown {
            let [from, to] = ends(&crown.points);
            let aside = |sense: f64| aside([from, to], sense, outline);
            crown.lead_apart(plan, "from the ridge", "finish.crown", [aside(1.0), aside(-1.0)]);
        }
        if let Some(drain) = &self.drain {
            drain.lead(plan, beside("drain"));
        }
        if let Some(trench) = &self.trench {
            trench.lead(plan, beside("trench"), outline)?;
        }
        Ok(())
    }
}

impl LineInput {
    fn lead(&self, plan: &mut Plan, words: &str, path: &str, lines: [[Point; 2]; 2], on: Option<String>) {
        if self.right_fall.is_some() {
            return self.lead_apart(plan, words, path, lines);
        }
        plan.ways.push(Way {
            words: words.to_owned(),
            toward: Outlet::Line(lines[0]),
            on,
            fall: Some(self.fall.clone()),
            origin: Origin::at(format!("{path}.fall")).with("x", format!("{path}.points")),
        });
    }

    /// Each side on its own.
    fn lead_apart(&self, plan: &mut Plan, words: &str, path: &str, [left, right]: [[Point; 2]; 2]) {
        let fall_right = self.right_fall.as_ref().map_or((&self.fall, "fall"), |fall| (fall, "right_fall"));
        for (side, line, (fall, key)) in [("left", left, (&self.fall, "fall")), ("right", right, fall_right)]
        {
            plan.ways.push(Way {
                words: format!("{words} on its {side}"),
                toward: Outlet::Line(line),
                on: Some(side.to_owned()),
                fall: Some(fall.clone()),
                origin: Origin::at(format!("{path}.{key}")).with("x", format!("{path}.points")),
            });
        }
    }
}

impl AreaDrainInput {
    fn lead(&self, plan: &mut Plan, beside: Option<String>) {
        let name = self.name.clone().unwrap_or_else(|| "drain".to_owned());
        let rim = has_facet(plan.layout.as_ref(), RIM);
        plan.ways.push(Way {
            words: format!("to the {name}"),
            toward: Outlet::Place(Point::new(self.x.value.base(), self.y.value.base())),
            on: beside.or_else(|| rim.then(|| "drain".to_owned())),
            fall: Some(self.fall.clone()),
            origin: Origin::at("finish.drain.fall").with("x", "finish.drain.x"),
        });
    }
}

impl TrenchInput {
    fn lead(&self, plan: &mut Plan, beside: Option<String>, outline: &Outline) -> Result<()> {
        let channel = has_facet(plan.layout.as_ref(), CHANNEL);
        let on = beside.or_else(|| channel.then(|| "trench".to_owned()));
        let across = if let Some(points) = &self.points {
            let line = ends(points);
            let input = LineInput {
                points: points.clone(),
                fall: self.fall.clone(),
                right_fall: self.right_fall.clone(),
            };
            input.lead(plan, "to the trench", "finish.trench", [line, line], on);
            let [from, to] = line;
            [from, Point::new(from.x - (to.y - from.y), from.y + (to.x - from.x))]
        } else if let Some(edge) = &self.edge {
            let facing = Facing::edge(outline, edge)?;
            plan.ways.push(Way {
                words: "to the trench".to_owned(),
                toward: Outlet::Edge(edge.clone()),
                on: Some("trench".to_owned()),
                fall: Some(self.fall.clone()),
                origin: Origin::at("finish.trench.fall").with("edge", "finish.trench.edge"),
            });
            [facing.at, inward(&facing, facing.at, 1.0)]
        } else {
            return Ok(());
        };
        if channel {
            let (fall, along) = (Slope::from_base(0.0), Line::Places(across.to_vec()));
            let level = Wants::CrossFall { fall, along, on: Some(CHANNEL.to_owned()) };
            plan.level.push(("channel level across", level, Origin::at("finish.trench.width")));
        }
        Ok(())
    }
}

impl StripInput {
    fn lead(&self, plan: &mut Plan, index: usize, outline: &Outline) -> Result<()> {
        let path = format!("finish.strips[{index}]");
        let facing = Facing::edge(outline, &self.edge)?;
        let inner = inward(&facing, facing.at, self.width.value.base());
        let end = Point::new(inner.x + facing.along[0], inner.y + facing.along[1]);
        let own = format!("{} strip", self.edge).to_lowercase();
        let facets = plan.layout.iter().flat_map(Finish::facets);
        let names: Vec<String> = facets
            .filter_map(Facet::name)
            .filter(|name| name.to_lowercase().starts_with(&own))
            .map(str::to_owned)
            .collect();
        for name in names {
            plan.ways.push(Way {
                words: format!("on the {name}"),
                toward: match self.toward {
                    Toward::Edge => Outlet::Edge(self.edge.clone()),
                    Toward::Floor => Outlet::Line([inner, end]),
                },
                on: Some(name),
                fall: Some(self.fall.clone()),
                origin: Origin::at(format!("{path}.fall")).with("edge", format!("{path}.edge")),
            });
        }
        Ok(())
    }
}

fn inward(facing: &Facing, from: Point, by: f64) -> Point {
    Point::new(from.x - by * facing.along[1], from.y + by * facing.along[0])
}

/// The places of a line: its first two points.
fn ends(points: &[super::FinishPointInput]) -> [Point; 2] {
    let place = |index: usize| {
        points
            .get(index)
            .map_or_else(Point::default, |point| Point::new(point.x.value.base(), point.y.value.base()))
    };
    [place(0), place(1)]
}

/// The line beside another, through the farthest corner of the work on its left (1) or right (-1): what falls to it falls away from
/// the other.
fn aside([from, to]: [Point; 2], sense: f64, outline: &Outline) -> [Point; 2] {
    let length = from.distance(to).max(f64::MIN_POSITIVE);
    let left = [-sense * (to.y - from.y) / length, sense * (to.x - from.x) / length];
    let out = |at: Point| (at.x - from.x) * left[0] + (at.y - from.y) * left[1];
    let farthest = outline.corners().iter().map(|corner| out(corner.place())).fold(0.0, f64::max);
    [from, to].map(|at| Point::new(at.x + farthest * left[0], at.y + farthest * left[1]))
}

/// The same finish, the facet that falls to nothing under another name.
fn level_apart(finish: &Finish, name: &str) -> Result<Finish> {
    let facets = finish.facets().iter().map(|facet| match facet.falls_to() {
        None => facet.clone().named(name),
        Some(_) => facet.clone(),
    });
    Finish::faceted(facets.collect())
}

fn has_facet(layout: Option<&Finish>, name: &str) -> bool {
    layout.into_iter().flat_map(Finish::facets).any(|facet| facet.name() == Some(name))
}
