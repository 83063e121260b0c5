//! A line over the facets: the places where its height can bind, each with its facet.

use super::demand::Line;
use super::layout::Layout;
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::quantity::{Length, Typed, feet_and_inches};
use crate::survey::surface::Rules;

/// A place of the finish.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct On {
    pub(super) at: Point,
    pub(super) facet: usize,
}

/// Two places of a line that are nearer than this, in metres, are one.
const ONE: f64 = 1e-7;

/// The places of a line: its own, and where it passes from one facet to another.
pub(super) fn places(layout: &Layout<'_>, line: &Line) -> Result<Vec<On>> {
    let corners = corners(layout, line)?;
    near_the_work(layout, &corners)?;
    let mut found: Vec<On> = Vec::new();
    let mut add = |at: Point| -> Result<()> {
        if found.iter().any(|on| on.at.distance(at) <= ONE) {
            return Ok(());
        }
        let facet = layout.facet_at(at).ok_or_else(|| {
            Failure::new(Code::OutOfRange, "x")
                .written(say(at))
                .allowed("a place on a facet")
                .remedy("move the place onto the floor, or let the facet reach to it")
        })?;
        found.push(On { at, facet });
        Ok(())
    };
    for (number, &corner) in corners.iter().enumerate() {
        add(corner)?;
        if let Some(&next) = corners.get(number + 1) {
            for share in crossings(layout, corner, next) {
                add(between(corner, next, share))?;
            }
        }
    }
    Ok(found)
}

/// Where the segment crosses edges of facets, as shares of its length, in order.
fn crossings(layout: &Layout<'_>, from: Point, to: Point) -> Vec<f64> {
    let side = |a: Point, b: Point, at: Point| (b.x - a.x) * (at.y - a.y) - (b.y - a.y) * (at.x - a.x);
    let mut shares = Vec::new();
    for run in layout.template.facets().iter().flat_map(|facet| facet.region().runs()) {
        let (start, end) = (side(run.from, run.to, from), side(run.from, run.to, to));
        let (low, high) = (side(from, to, run.from), side(from, to, run.to));
        if (start > 0.0) != (end > 0.0) && low.min(high) <= 0.0 && low.max(high) >= 0.0 {
            shares.push(start / (start - end));
        }
    }
    shares.sort_by(f64::total_cmp);
    shares
}

fn between(from: Point, to: Point, share: f64) -> Point {
    Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))
}

/// The corners of a line.
pub(super) fn corners(layout: &Layout<'_>, line: &Line) -> Result<Vec<Point>> {
    match line {
        Line::Places(places) if places.is_empty() => Err(Failure::new(Code::EmptyList, "x")
            .written("no place")
            .allowed("a place, a line or an edge")
            .remedy("say where it is")),
        Line::Places(places) => Ok(places.clone()),
        Line::Edge(name) => {
            let outline = layout.survey.outline();
            let runs = outline.edge(name).map_err(|failure| failure.under("edge"))?;
            let mut corners: Vec<Point> = runs.iter().map(|run| run.from().place()).collect();
            corners.extend(runs.last().map(|run| run.to().place()));
            Ok(corners)
        }
    }
}

/// The direction of a straight line.
pub(super) fn direction(layout: &Layout<'_>, line: &Line) -> Result<[f64; 2]> {
    let corners = corners(layout, line)?;
    let (Some(&from), Some(&to)) = (corners.first(), corners.last()) else {
        return Err(no_direction("no place"));
    };
    let length = from.distance(to);
    if length <= 1e-3 {
        return Err(no_direction("two places at one spot"));
    }
    Ok([(to.x - from.x) / length, (to.y - from.y) / length])
}

fn no_direction(written: &str) -> Box<Failure> {
    Failure::new(Code::FinishUndetermined, "x")
        .written(written)
        .allowed("an edge, or two places apart from one another")
        .remedy("give the line by two places")
}

/// Refuses places farther from the work than the old slab is extended to: the finish is not there.
fn near_the_work(layout: &Layout<'_>, corners: &[Point]) -> Result<()> {
    let farthest = Rules::DEFAULT.beyond_farthest;
    for &at in corners {
        let outside = layout.survey.outline().region().distance_outside(at);
        if !at.is_finite() || outside > farthest {
            return Err(Failure::new(Code::OutOfRange, "x")
                .written(say(at))
                .allowed(format!(
                    "inside the outline, or up to {} outside",
                    feet_and_inches(Length::from_base(farthest), 8)
                ))
                .remedy("check the place: x from the left, y from the front"));
        }
    }
    Ok(())
}

fn say(at: Point) -> String {
    let [x, y] = [at.x, at.y].map(|at| feet_and_inches(Length::from_base(at), 8));
    format!("{x}, {y}")
}
