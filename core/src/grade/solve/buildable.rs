//! The finish as a crew can set it out: level door lines, falls square to the edge they go to, a level perimeter about a drain,
//! falls and heights in whole steps.

use super::demand::{Demand, Line, Outlet, Wants};
use super::lattice::Form;
use super::layout::Layout;
use super::problem::Problem;
use super::rows::Block;
use crate::failure::Result;
use crate::geometry::Point;
use crate::grade::finish::Facing;
use crate::quantity::{Elevation, Length, Slope, Typed};
use crate::survey::Survey;

/// What heights and falls are rounded to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Steps {
    /// Heights are whole steps of this from the datum; none leaves them.
    pub heights: Length,
    /// What steps of height are counted from.
    pub datum: Elevation,
    /// Falls are whole steps of this; none leaves them.
    pub falls: Slope,
}

/// What a crew adds to the demands so that the floor can be set out. It stands firm.
pub(super) fn habits(layout: &Layout<'_>, demands: &[Demand]) -> Vec<Demand> {
    let mut habits = Vec::new();
    let falls = || demands.iter().filter_map(|demand| falls(&demand.wants));
    for facet in 0..layout.facets() {
        let mut edges: Vec<&str> = Vec::new();
        for (outlet, on) in falls() {
            let of_facet = layout.facets_of(on).is_ok_and(|facets| facets.contains(&facet));
            if let (true, Outlet::Edge(edge)) = (of_facet, outlet)
                && !edges.iter().any(|known| known.eq_ignore_ascii_case(edge))
            {
                edges.push(edge);
            }
        }
        // A plane that falls to two edges can be level along neither.
        let &[edge] = edges.as_slice() else { continue };
        let of_all = layout.facets() == 1;
        let on = (!of_all).then(|| layout.template.facet_name(facet));
        let name = match &on {
            None => format!("level along {edge}"),
            Some(facet) => format!("{facet} level along {edge}"),
        };
        let wants = Wants::CrossFall { fall: Slope::from_base(0.0), along: Line::Edge(edge.to_owned()), on };
        habits.push(Demand::new(name, wants).firmly());
    }
    if falls().any(|(outlet, _)| matches!(outlet, Outlet::Place(_))) && layout.facets() > 2 {
        let along = Line::Places(perimeter(layout.survey));
        let wants = Wants::Level { along, tolerance: Length::from_base(0.0) };
        // It may have been demanded already.
        if demands.iter().all(|demand| demand.wants != wants) {
            habits.push(Demand::new("level perimeter", wants).firmly());
        }
    }
    for (outlet, _) in falls() {
        let Outlet::Place(drain) = outlet else { continue };
        let Some(rim) = layout.rim_about(*drain) else { continue };
        let name = format!("level {}", layout.template.facet_name(rim));
        if habits.iter().all(|habit| habit.name != name) {
            let along = Line::Places(layout.corners(rim));
            let wants = Wants::Level { along, tolerance: Length::from_base(0.0) };
            habits.push(Demand::new(name, wants).firmly());
        }
    }
    habits
}

fn falls(wants: &Wants) -> Option<(&Outlet, Option<&str>)> {
    match wants {
        Wants::LeastFall { toward, on, .. } => Some((toward, on.as_deref())),
        _ => None,
    }
}

/// The outer corners of the work, round to the first.
pub(super) fn perimeter(survey: &Survey) -> Vec<Point> {
    let mut corners = survey.surface().region().outer().corners().to_vec();
    corners.extend(corners.first().copied());
    corners
}

/// What is rounded: heights along the outlets, the falls to them, then heights of other corners, as long as they are free of
/// what was given and of one another.
pub(super) fn forms(problem: &Problem<'_, '_>, steps: &Steps) -> Result<Vec<Form>> {
    let layout = problem.layout;
    let mut span = Span::default();
    for block in problem.blocks.iter().filter(|block| is_exact(problem, block)) {
        for row in block.rows.clone() {
            span.takes(&problem.rows.row(row)[..layout.width()]);
        }
    }
    let base = (steps.datum.base() - layout.base(), steps.heights.base());
    let falls = (0.0, layout.size() * steps.falls.base());
    let mut forms = Vec::new();
    let mut add = |row: Vec<f64>, (base, step): (f64, f64)| {
        if span.takes(&row) && step > 0.0 {
            forms.push(Form { row, base, step });
        }
    };
    for demand in problem.demands {
        let Some((outlet, on)) = falls_of(&demand.wants) else { continue };
        let facets = layout.facets_of(on)?;
        match outlet {
            Outlet::Edge(edge) => {
                let facing = Facing::edge(layout.survey.outline(), edge)?;
                for &facet in &facets {
                    add(layout.height(facet, facing.at), base);
                    add(layout.rise(facet, [-facing.along[1], facing.along[0]]), falls);
                }
            }
            Outlet::Line(ends) => {
                for &facet in &facets {
                    ends.iter().for_each(|&end| add(layout.height(facet, end), base));
                    let length = ends[0].distance(ends[1]).max(1e-9);
                    let across = [-(ends[1].y - ends[0].y) / length, (ends[1].x - ends[0].x) / length];
                    add(layout.rise(facet, across), falls);
                }
            }
            Outlet::Place(drain) => {
                if let Some(facet) = layout.facet_at(*drain) {
                    add(layout.height(facet, *drain), base);
                }
            }
        }
    }
    for facet in 0..layout.facets() {
        for corner in layout.corners(facet) {
            add(layout.height(facet, corner), base);
        }
    }
    Ok(forms)
}

fn falls_of(wants: &Wants) -> Option<(&Outlet, Option<&str>)> {
    match wants {
        Wants::LeastFall { toward, on, .. } | Wants::GreatestFall { toward, on, .. } => {
            Some((toward, on.as_deref()))
        }
        _ => None,
    }
}

/// Whether a block holds heights or falls exactly, so that nothing is left to round.
fn is_exact(problem: &Problem<'_, '_>, block: &Block) -> bool {
    let Some(demand) = block.demand.and_then(|demand| problem.demands.get(demand)) else { return false };
    match &demand.wants {
        Wants::Exactly(_) => true,
        Wants::Level { tolerance, .. } => tolerance.base() == 0.0,
        Wants::CrossFall { fall, .. } => fall.base() == 0.0,
        _ => false,
    }
}

/// Directions met so far, each square to the others.
#[derive(Default)]
struct Span(Vec<Vec<f64>>);

impl Span {
    /// Takes a row in, unless it follows from those before.
    fn takes(&mut self, row: &[f64]) -> bool {
        let norm = |row: &[f64]| row.iter().map(|entry| entry * entry).sum::<f64>().sqrt();
        let whole = norm(row);
        let mut left = row.to_vec();
        // Twice, because once leaves rounding in.
        for _ in 0..2 {
            for known in &self.0 {
                let share: f64 = left.iter().zip(known).map(|(a, b)| a * b).sum();
                left.iter_mut().zip(known).for_each(|(entry, of_known)| *entry -= share * of_known);
            }
        }
        let rest = norm(&left);
        if rest <= 1e-7 * whole || whole == 0.0 {
            return false;
        }
        left.iter_mut().for_each(|entry| *entry /= rest);
        self.0.push(left);
        true
    }
}
