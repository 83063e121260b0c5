//! The triangulated surface of the old slab.
//!
//! Between the shots it is made of Delaunay triangles; those on one circle form polygons that are filled from their
//! mean, so that neither the order of the shots nor a turn of the axes can change it. Beyond the shots it goes on from
//! the nearest place between them by the slope of the fitted plane. Everything is cut exactly at the region's edge.

mod ambiguity;
mod assemble;
mod beyond;
mod border;
mod build;
mod cut;
mod error;
mod extreme;
mod frame;
mod hull;
mod lines;
mod locator;
mod mesh;
mod note;
mod part;
mod places;
mod polygons;
mod rows;
mod rules;
mod runs;
mod shot;
mod slivers;
mod spanning;
mod standing;
#[cfg(test)]
mod tests;
mod tiling;
mod tributary;
#[allow(dead_code)]
mod welded;
mod without;

pub use ambiguity::Ambiguity;
pub use cut::{Corner, Cut, Ground, Integrals, Relief, Triangle};
pub use error::SurfaceError;
pub use extreme::Extreme;
pub use locator::{Locator, Spot, Stretch};
pub use note::{Note, SharedPlace};
pub use rules::Rules;
pub use shot::Shot;

pub(crate) use extreme::Tied;
pub(crate) use tiling::{BETWEEN, BEYOND, IN_REGION, Node};
#[allow(unused_imports)]
pub(crate) use welded::{Welded, weld};

use crate::geometry::{Fit, Point, Region};
use beyond::Farthest;
use frame::Frame;
use mesh::Mesh;
use rows::Table;
use shot::Shots;

/// A mesh, its nodes, and what is to be said of it.
type Built = (Mesh, Vec<Node>, Vec<Note>);

/// The surface of the old slab over a region.
#[derive(Clone, Debug)]
pub struct Surface {
    whole: Cut,
    mesh: Mesh,
    region: Region,
    on_run: f64,
    /// How many numbers the caller had for shots.
    shots: usize,
    notes: Vec<Note>,
}

impl Surface {
    /// The surface through shots in any order.
    ///
    /// # Errors
    /// When a number is unreal, the shots are at fewer than three places or on one line, two heights are at one place,
    /// a shot is outside the region unmarked, or the region reaches too far beyond the shots.
    pub fn from_shots(shots: &[Shot], region: &Region, rules: &Rules) -> Result<Self, SurfaceError> {
        rules.check()?;
        let frame = Frame::new(region, region.bounds().0);
        Self::scattered(&Shots::Listed(shots), frame, region, rules)
    }

    /// The surface through a table of heights: row `r` and column `c` at `(xs[c], ys[r])` have
    /// `heights[r * xs.len() + c]`, which is also the shot's number. A missing height is a place that was not shot.
    ///
    /// # Errors
    /// As for [`Surface::from_shots`], and when the table has more or fewer heights than places.
    pub fn from_rows(
        xs: &[f64],
        ys: &[f64],
        heights: &[Option<f64>],
        region: &Region,
        rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        rules.check()?;
        let table = Table { xs, ys, heights };
        table.check_size()?;
        let frame = Frame::new(region, region.bounds().0);
        let shots = Shots::Tabled(table);
        match table.mesh(&frame, region, rules)? {
            Some(built) => Self::over(built, shots.len(), &frame, region, rules),
            None => Self::scattered(&shots, frame, region, rules),
        }
    }

    fn scattered(shots: &Shots, frame: Frame, region: &Region, rules: &Rules) -> Result<Self, SurfaceError> {
        let built = build::mesh_of(shots, &frame, region, rules)?;
        Self::over(built, shots.len(), &frame, region, rules)
    }

    fn over(
        (mesh, nodes, mut notes): Built,
        shots: usize,
        frame: &Frame,
        region: &Region,
        rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        let (tiling, farthest) = assemble::tile(&mesh, nodes, frame, region, rules);
        let whole = Cut::new(frame.origin, tiling);
        check_beyond(&whole, &farthest, frame, &mesh, rules)?;
        note_ground(&whole, &farthest, rules, &mut notes);
        Ok(Self { whole, mesh, region: region.clone(), on_run: rules.on_run, shots, notes })
    }

    /// The region it was built over.
    #[must_use]
    pub fn region(&self) -> &Region {
        &self.region
    }

    /// The surface over its whole region.
    #[must_use]
    pub fn whole(&self) -> &Cut {
        &self.whole
    }

    /// What the reader must know of this surface.
    #[must_use]
    pub fn notes(&self) -> &[Note] {
        &self.notes
    }

    /// The plane of least squares through the shots of the slab, and how far they are from it.
    #[must_use]
    pub fn fit(&self) -> Fit {
        let plane = self.mesh.fitted.plane.moved_by(self.whole.origin());
        Fit::of(plane, self.residuals())
    }

    /// How far each shot of the slab is above (or, negative, below) the fitted plane. Shots at one place are told by
    /// the first of them.
    pub fn residuals(&self) -> impl Iterator<Item = (usize, f64)> + '_ {
        let places = &self.whole.nodes()[..self.mesh.places];
        places.iter().filter(|node| self.mesh.is_fitted(node)).filter_map(|node| {
            Some((node.shot()?, node.z - self.mesh.fitted.plane.height_at(Point::new(node.x, node.y))))
        })
    }
}

/// Refuses a region that reaches too far beyond the shots.
fn check_beyond(
    whole: &Cut,
    farthest: &Farthest,
    frame: &Frame,
    mesh: &Mesh,
    rules: &Rules,
) -> Result<(), SurfaceError> {
    if rules.beyond_allowed || rules::within(farthest.distance(), rules.beyond_farthest) {
        return Ok(());
    }
    let places = &whole.nodes()[..mesh.places];
    let nearest = places.iter().filter_map(|node| Some((farthest.at.distance(node.at()), node.shot()?)));
    let (_, nearest_shot) =
        nearest.fold((f64::INFINITY, 0), |best, next| if next.0 < best.0 { next } else { best });
    Err(SurfaceError::TooFarBeyond {
        at: frame.given(farthest.at),
        distance: farthest.distance(),
        nearest_shot,
        allowed: rules.beyond_farthest,
    })
}

/// Notes how much of the area was not surveyed.
fn note_ground(whole: &Cut, farthest: &Farthest, rules: &Rules, notes: &mut Vec<Note>) {
    let total = whole.area();
    let area = whole.area_of(Ground::Beyond);
    let share = area / total;
    if share > rules.beyond_noted {
        let warning = share > rules.beyond_warned;
        notes.push(Note::Beyond { share, area, farthest: farthest.distance(), warning });
    }
    let area = whole.area_of(Ground::Spanning);
    if area > 0.0 {
        notes.push(Note::Spanning { share: area / total, area });
    }
}
