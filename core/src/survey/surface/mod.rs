//! The triangulated surface of the old slab.
//!
//! Between the shots it is made of Delaunay triangles; those on one circle form polygons that are filled from their
//! mean, so that neither the order of the shots nor a turn of the axes can change it. Faces that were given are kept as
//! they are. Beyond the shots it goes on from
//! the nearest place between them by the slope of the fitted plane. Everything is cut exactly at the region's edge.

mod ambiguity;
mod assemble;
mod beyond;
mod border;
mod build;
mod changed;
mod cut;
mod error;
mod extreme;
mod faces;
mod frame;
mod hull;
mod lines;
mod locator;
mod mesh;
mod note;
mod part;
mod parted;
mod places;
mod polygons;
mod rows;
mod rules;
mod runs;
mod shot;
mod slivers;
mod spanning;
mod standing;
mod steps;
#[cfg(test)]
mod tests;
mod tiling;
mod tributary;
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
pub use steps::StepFlaw;

pub(crate) use changed::{Toward, Way};
pub(crate) use extreme::Tied;
pub(crate) use tiling::{BETWEEN, BEYOND, IN_REGION, Node};
pub(crate) use welded::weld;

use crate::geometry::{Fit, Plane, Point, Region, Scatter};
use crate::survey::points::Points;
use beyond::Farthest;
use frame::Frame;
use mesh::Mesh;
use rows::Table;
use shot::Shots;
use std::sync::Arc;

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
    /// The surface as it was measured, where it was changed since.
    before: Option<Arc<Cut>>,
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
        Self::tabled(Table { xs, ys, heights, stepped: false }, region, rules)
    }

    /// The same where rows (or columns) given twice, one after the other, are the two sides of a step: each belongs to the
    /// rows on its own side.
    ///
    /// # Errors
    /// As for [`Surface::from_rows`], and when a step ends inside the slab.
    pub fn from_stepped_rows(
        xs: &[f64],
        ys: &[f64],
        heights: &[Option<f64>],
        region: &Region,
        rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        Self::tabled(Table { xs, ys, heights, stepped: true }, region, rules)
    }

    fn tabled(table: Table<'_>, region: &Region, rules: &Rules) -> Result<Self, SurfaceError> {
        rules.check()?;
        table.check_size()?;
        let frame = Frame::new(region, region.bounds().0);
        let shots = Shots::Tabled(table);
        match table.mesh(&frame, region, rules)? {
            Some(built) => Self::over(built, shots.len(), &frame, region, rules),
            None => Self::scattered(&shots, frame, region, rules),
        }
    }

    /// The surface of given faces: triangles by the numbers of their points (the first is 0), kept as they are. Between
    /// faces and their hull the ground counts as not surveyed ([`Ground::Spanning`]); a point that no face has as a
    /// corner is left out and noted. Faces may go either way round, and on beyond the region. Of several points at
    /// exactly one place the mean height is taken where they agree within the reading error.
    ///
    /// # Errors
    /// When a number is unreal, a face has an unknown or repeated point or no area in plan, faces overlap, a point lies
    /// in a face or on its side, three faces have one side, two heights are at one place, or the region reaches too far
    /// beyond the hull of the faces.
    pub fn from_faces(
        points: &Points,
        faces: &[[u32; 3]],
        region: &Region,
        rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        rules.check()?;
        let frame = Frame::new(region, region.bounds().0);
        let built = faces::mesh_of(points, faces, &frame, region, rules)?;
        Self::over(built, points.len(), &frame, region, rules)
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
        note_ground(&whole, &farthest, mesh.given.is_some(), rules, &mut notes);
        Ok(Self { whole, mesh, region: region.clone(), on_run: rules.on_run, shots, notes, before: None })
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
        let plane = self.fitted().moved_by(self.whole.origin());
        Fit::of(plane, self.residuals())
    }

    /// How far each shot of the slab is above (or, negative, below) the fitted plane. Shots at one place are told by
    /// the first of them.
    pub fn residuals(&self) -> impl Iterator<Item = (usize, f64)> + '_ {
        let plane = self.fitted();
        self.fitted_nodes().filter_map(move |node| {
            Some((node.shot()?, node.z - plane.height_at(Point::new(node.x, node.y))))
        })
    }

    /// The fitted plane in local coordinates. Beyond the shots the surface goes on by the slope it had before any change.
    fn fitted(&self) -> Plane {
        let measured = self.mesh.fitted.plane;
        match self.before {
            None => measured,
            Some(_) => {
                let places = self.fitted_nodes().map(|node| [node.x, node.y, node.z]);
                Scatter::of(places).plane().unwrap_or(measured)
            }
        }
    }

    fn fitted_nodes(&self) -> impl Iterator<Item = &Node> + Clone + '_ {
        self.whole.nodes()[..self.mesh.places].iter().filter(|node| self.mesh.is_fitted(node))
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
fn note_ground(whole: &Cut, farthest: &Farthest, faces: bool, rules: &Rules, notes: &mut Vec<Note>) {
    let total = whole.area();
    let area = whole.area_of(Ground::Beyond);
    let share = area / total;
    if share > rules.beyond_noted {
        let warning = share > rules.beyond_warned;
        notes.push(Note::Beyond { share, area, farthest: farthest.distance(), warning });
    }
    let area = whole.area_of(Ground::Spanning);
    if area > 0.0 {
        let share = area / total;
        notes.push(if faces { Note::BetweenFaces { share, area } } else { Note::Spanning { share, area } });
    }
}
