//! The facets in plan, and what is unknown of them.
//!
//! Over facet f the finish is z = z0 + h + b (x - x0) + c (y - y0) with (h, L b, L c) = M_f u: z0 is the mean height of the old
//! slab, (x0, y0) the middle of the work and L half its size, so that all unknowns u are metres over the work. That facets meet
//! along their shared edges are equations; what they leave free is u.

use crate::failure::{Code, Failure, Result};
use crate::geometry::{Plane, Point, Sum};
use crate::grade::finish::convex::common;
use crate::grade::finish::meeting::shared_edges;
use crate::grade::finish::{Facet, Finish, Laid};
use crate::linear::NullSpace;
use crate::survey::Survey;
use crate::survey::surface::Integrals;

/// The facets with the old slab under each, and the unknowns.
pub(super) struct Layout<'a> {
    pub(super) survey: &'a Survey,
    pub(super) template: Finish,
    pub(super) laid: Laid<'a>,
    origin: Point,
    size: f64,
    base: f64,
    /// Area, moments and height of the old slab under each part.
    sums: Vec<Integrals>,
    /// For one plane there is nothing to map.
    maps: Option<Vec<[Vec<f64>; 3]>>,
    width: usize,
}

impl<'a> Layout<'a> {
    /// The layout of a finish, whose heights do not count; of one plane where there is none.
    pub(super) fn of(survey: &'a Survey, layout: Option<&Finish>) -> Result<Self> {
        let template = match layout {
            Some(finish) if !finish.facets().is_empty() => finish.clone(),
            _ => Finish::of(Plane::new(0.0, 0.0, 0.0))?,
        };
        let laid = template.laid_over(survey.surface())?;
        if let Some(inside) = without_idle(&template, &laid)? {
            return Self::of(survey, Some(&inside));
        }
        let (low, high) = survey.surface().region().bounds();
        let origin = Point::new(0.5 * (low.x + high.x), 0.5 * (low.y + high.y));
        let size = 0.5 * low.distance(high);
        let sums: Vec<Integrals> = laid.parts().iter().map(|part| part.ground.integrals()).collect();
        let all = |of: fn(&Integrals) -> f64| sums.iter().map(of).sum::<f64>();
        let base = all(|sums| sums.height) / all(|sums| sums.area);
        let mut layout = Self { survey, template, laid, origin, size, base, sums, maps: None, width: 3 };
        layout.meet()?;
        Ok(layout)
    }

    /// Lets the facets meet.
    fn meet(&mut self) -> Result<()> {
        let facets = self.template.facets();
        if facets.is_empty() {
            return Ok(());
        }
        let unknowns = 3 * facets.len();
        let mut equations = Vec::new();
        for (second, facet) in facets.iter().enumerate() {
            for (first, other) in facets.iter().enumerate().take(second) {
                for end in shared_edges(facet, other).flat_map(|shared| shared.ends) {
                    let mut equation = vec![0.0; unknowns];
                    let [one, x, y] = self.local(end);
                    equation[3 * second..3 * second + 3].copy_from_slice(&[one, x, y]);
                    equation[3 * first..3 * first + 3].copy_from_slice(&[-one, -x, -y]);
                    equations.push(equation);
                }
            }
        }
        let space = NullSpace::of(unknowns, equations);
        if space.width() == 0 {
            return Err(Failure::new(Code::Internal, "layout").written("facets that leave nothing free"));
        }
        self.width = space.width();
        let maps = space.map.chunks_exact(3).map(|rows| [rows[0].clone(), rows[1].clone(), rows[2].clone()]);
        self.maps = Some(maps.collect());
        Ok(())
    }

    /// How many unknowns there are.
    pub(super) const fn width(&self) -> usize {
        self.width
    }

    /// How many facets; one plane is one.
    pub(super) fn facets(&self) -> usize {
        self.template.facets().len().max(1)
    }

    /// Half the size of the work: what slopes are scaled by.
    pub(super) const fn size(&self) -> f64 {
        self.size
    }

    /// The height that heights are counted from.
    pub(super) const fn base(&self) -> f64 {
        self.base
    }

    /// A place as its facet's plane sees it.
    #[inline]
    pub(super) fn local(&self, at: Point) -> [f64; 3] {
        [1.0, (at.x - self.origin.x) / self.size, (at.y - self.origin.y) / self.size]
    }

    /// A form of a facet's plane, (h, L b, L c), as a row of the unknowns.
    pub(super) fn row(&self, facet: usize, form: [f64; 3]) -> Vec<f64> {
        let Some(maps) = &self.maps else { return form.to_vec() };
        let mut row = vec![0.0; self.width];
        for (share, map) in form.iter().zip(&maps[facet]) {
            row.iter_mut().zip(map).for_each(|(entry, of_map)| *entry += share * of_map);
        }
        row
    }

    /// The height over a place, from the base.
    pub(super) fn height(&self, facet: usize, at: Point) -> Vec<f64> {
        self.row(facet, self.local(at))
    }

    /// The rise in a direction, times the size.
    pub(super) fn rise(&self, facet: usize, direction: [f64; 2]) -> Vec<f64> {
        self.row(facet, [0.0, direction[0], direction[1]])
    }

    /// The facet under a place: the first that holds it. One plane goes on for ever.
    pub(super) fn facet_at(&self, at: Point) -> Option<usize> {
        use crate::quantity::{Length, Typed};
        if self.template.facets().is_empty() {
            return Some(0);
        }
        self.template.facet_at(Length::from_base(at.x), Length::from_base(at.y))
    }

    /// The corners of the part of a facet that lies in the work; of one plane those of the work.
    pub(super) fn corners(&self, facet: usize) -> Vec<Point> {
        let region = self.survey.surface().region();
        let Some(own) = self.template.facets().get(facet) else {
            return region.runs().map(|run| run.from).collect();
        };
        let mut corners: Vec<Point> = Vec::new();
        for part in own.region().parts().iter() {
            for of_work in region.parts().iter() {
                for corner in common(part, of_work) {
                    if corners.iter().all(|known| known.distance(corner) > 1e-7) {
                        corners.push(corner);
                    }
                }
            }
        }
        corners
    }

    /// The facet that a drain lies well within: its rim.
    pub(super) fn rim_about(&self, drain: Point) -> Option<usize> {
        let facets = self.template.facets();
        facets.iter().position(|facet| {
            let region = facet.region();
            region.contains(drain) && region.nearest_run(drain).distance > 1e-3
        })
    }

    /// The facets of a name: their own, or what they fall to.
    pub(super) fn facets_of(&self, name: Option<&str>) -> Result<Vec<usize>> {
        let Some(name) = name else { return Ok((0..self.facets()).collect()) };
        let wanted = name.trim().to_lowercase();
        let is = |said: Option<&str>| said.is_some_and(|said| said.trim().to_lowercase() == wanted);
        let facets = self.template.facets();
        let found: Vec<usize> = (facets.iter().enumerate())
            .filter(|(_, facet)| is(facet.name()) || is(facet.falls_to()))
            .map(|(number, _)| number)
            .collect();
        if !found.is_empty() {
            return Ok(found);
        }
        let names = |of: fn(&Facet) -> Option<&str>| facets.iter().filter_map(of);
        let mut known: Vec<&str> = names(Facet::name).chain(names(Facet::falls_to)).collect();
        known.dedup();
        Err(Failure::new(Code::FacetUnknown, "facet")
            .written(format!("\"{}\"", name.trim()))
            .allowed(if known.is_empty() {
                "none: the finish is one plane".to_owned()
            } else {
                known.join(", ")
            })
            .remedy("name a facet, or what facets fall to; leave it out for all"))
    }

    /// The plane of a facet.
    pub(super) fn plane(&self, facet: usize, unknowns: &[f64]) -> Plane {
        let of =
            |form: [f64; 3]| -> f64 { self.row(facet, form).iter().zip(unknowns).map(|(a, b)| a * b).sum() };
        let [height, x, y] = [of([1.0, 0.0, 0.0]), of([0.0, 1.0, 0.0]), of([0.0, 0.0, 1.0])];
        Plane::about(self.origin, self.base + height, x / self.size, y / self.size)
    }

    /// The finish.
    pub(super) fn finish(&self, unknowns: &[f64]) -> Result<Finish> {
        let facets = self.template.facets();
        if facets.is_empty() {
            return Finish::of(self.plane(0, unknowns));
        }
        let with_plane = |(number, facet): (usize, &Facet)| {
            let mut made = Facet::new(facet.region().clone(), self.plane(number, unknowns));
            if let Some(name) = facet.name() {
                made = made.named(name);
            }
            facet.falls_to().map_or_else(|| made.clone(), |outlet| made.clone().falling_to(outlet))
        };
        Finish::faceted(facets.iter().enumerate().map(with_plane).collect())
    }

    /// The place of a row that holds the height of one plane there, from below or from above.
    pub(super) fn place_of(&self, row: &[f64]) -> Option<Point> {
        let &[sense, x, y, ..] = row else { return None };
        Some(Point::new(self.origin.x + self.size * x / sense, self.origin.y + self.size * y / sense))
    }

    /// The volume between a finish of this layout and the old slab, high spots taken off.
    pub(super) fn net_under(&self, finish: &Finish) -> f64 {
        let plane = |facet: Option<usize>| match facet {
            Some(facet) => finish.facets().get(facet).map(Facet::plane),
            None => finish.plane(),
        };
        let parts = self.laid.parts().iter().zip(&self.sums);
        let volumes = parts.filter_map(|(part, sums)| Some(sums.net_under(plane(part.facet)?)));
        volumes.collect::<Sum>().value()
    }

    /// A place on a facet, to say where it is: the middle of its first part.
    pub(super) fn middle(&self, facet: usize) -> Point {
        let parts = self.laid.parts().iter().zip(&self.sums);
        let of_facet = parts.filter(|(part, _)| part.facet.unwrap_or(0) == facet).map(|(_, sums)| sums);
        let middle = |sums: &Integrals| {
            Point::new(sums.origin.x + sums.x / sums.area, sums.origin.y + sums.y / sums.area)
        };
        of_facet.map(middle).next().unwrap_or_default()
    }

    /// The volume between finish and old slab, high spots taken off, by the unknowns: their share of the height over the work.
    pub(super) fn volume(&self) -> Vec<f64> {
        let mut volume = vec![0.0; self.width];
        for (part, sums) in self.laid.parts().iter().zip(&self.sums) {
            let [_, x, y] = self.local(sums.origin);
            let form = [sums.area, sums.area * x + sums.x / self.size, sums.area * y + sums.y / self.size];
            let row = self.row(part.facet.unwrap_or(0), form);
            volume.iter_mut().zip(row).for_each(|(sum, share)| *sum += share);
        }
        volume
    }
}

/// The finish without the facets that have no part in the work: nothing would hold them. None where all have.
fn without_idle(template: &Finish, laid: &Laid<'_>) -> Result<Option<Finish>> {
    let facets = template.facets();
    let counts = |number: usize| laid.parts().iter().any(|part| part.facet == Some(number));
    let kept: Vec<Facet> = facets
        .iter()
        .enumerate()
        .filter(|(number, _)| counts(*number))
        .map(|(_, facet)| facet.clone())
        .collect();
    if kept.len() == facets.len() { Ok(None) } else { Finish::faceted(kept).map(Some) }
}
