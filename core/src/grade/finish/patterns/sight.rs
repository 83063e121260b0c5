//! What of an outline can be seen from a place in it.

use crate::failure::{Code, Failure, Result};
use crate::geometry::predicates::turn;
use crate::geometry::{Point, Region};
use crate::grade::finish::say;

/// A drain stands at least so far inside the line of every run, in metres: 1/2 in.
pub(in crate::grade) const INSIDE: f64 = 0.5 * 0.0254;

/// Refuses a place from which a corner of the outline cannot be seen: no plane falls from every run to it.
pub(super) fn refuse_hidden(region: &Region, from: Point, path: &str) -> Result<()> {
    if !region.contains(from) {
        return Err(Failure::new(Code::OffWork, path)
            .written(say::place(from))
            .allowed("a place inside the work and outside its holes")
            .remedy("check the place: x from the left, y from the front"));
    }
    for run in region.outer().runs() {
        let (dx, dy) = (run.to.x - run.from.x, run.to.y - run.from.y);
        let inward = (dx * (from.y - run.from.y) - dy * (from.x - run.from.x)) / run.length();
        if inward >= INSIDE {
            continue;
        }
        let hidden = [run.from, run.to].into_iter().find(|corner| is_hidden(region, from, *corner));
        let far = if from.distance(run.from) > from.distance(run.to) { run.from } else { run.to };
        return Err(Failure::new(Code::CornerUnseen, path)
            .written(format!(
                "the corner at {}, from {}",
                say::place(hidden.unwrap_or(far)),
                say::place(from)
            ))
            .allowed("a drain at least 1/2 in inside the line of every run")
            .remedy("move the drain, or give the facets by their corners"));
    }
    Ok(())
}

/// Whether a run crosses the line of sight.
fn is_hidden(region: &Region, from: Point, corner: Point) -> bool {
    region.outer().runs().any(|run| {
        let (a, b) = (turn(from, corner, run.from), turn(from, corner, run.to));
        let (c, d) = (turn(run.from, run.to, from), turn(run.from, run.to, corner));
        a * b < 0.0 && c * d < 0.0
    })
}
