//! How much each shot counts.
//!
//! With the triangulation as it is, the volume under the surface is linear in the heights of the shots. What one unit of
//! height at one shot adds to the volume is an area: the shot's tributary area. All of them together are the area of
//! the cut; on ground beyond the shots some may be negative, for a fitted plane that is lifted at one end drops beyond
//! the other.

use super::mesh::{Mesh, NO_MEAN};
use super::note::{Note, SharedPlace};
use super::tiling::{Piece, Source};
use super::{Cut, Node, Surface};
use crate::geometry::Point;
use crate::geometry::predicates::cross;

impl Surface {
    /// The tributary area of every shot in a cut of this surface, by the shots' numbers; zero for a shot that does not
    /// count there.
    ///
    /// An error of `e[i]` in the height of shot `i` changes the volume under the surface by the sum of `a[i] e[i]`.
    #[must_use]
    pub fn tributary_areas(&self, cut: &Cut) -> Vec<f64> {
        let places = self.place_areas(cut);
        let mut areas = vec![0.0; self.shots];
        for (node, area) in self.measured().nodes().iter().zip(&places) {
            if let Some(shot) = node.shot() {
                areas[shot] = *area;
            }
        }
        self.share_out(&mut areas);
        areas
    }

    /// The area of every place, in the order of the nodes.
    fn place_areas(&self, cut: &Cut) -> Vec<f64> {
        let nodes = self.measured().nodes();
        let mut areas = vec![0.0; self.mesh.places];
        // What falls to the mean of each polygon is shared out at the end.
        let mut means = vec![0.0; self.mesh.faces.len()];
        let mut offset = Point::default();
        let middle_of = |piece: &Piece| {
            let [a, b, c] = piece.corners.map(|corner| cut.nodes()[corner as usize].at());
            Point::new((a.x + b.x + c.x) / 3.0, (a.y + b.y + c.y) / 3.0)
        };
        for piece in cut.pieces() {
            let middle = middle_of(piece);
            let beyond = match piece.source {
                Source::Loop { face, at } => {
                    let of_mean =
                        between_shots(&self.mesh, nodes, (face, at), middle, piece.area, &mut areas);
                    means[face as usize] += of_mean;
                    continue;
                }
                // Ground and filled ground is where the plane is, whatever was read.
                Source::Changed => continue,
                Source::Strip { at } => beyond_side(&self.mesh, nodes, at, middle, piece.area, &mut areas),
                Source::Wedge { at } => {
                    let corner = self.mesh.hull.chain[at as usize];
                    areas[corner as usize] += piece.area;
                    nodes[corner as usize].at()
                }
            };
            offset.x += piece.area * (middle.x - beyond.x);
            offset.y += piece.area * (middle.y - beyond.y);
        }
        for (face, &of_mean) in means.iter().enumerate().filter(|(_, of_mean)| **of_mean != 0.0) {
            let corners = &self.mesh.loops[self.mesh.range(face)];
            let each = of_mean / corners.len() as f64;
            corners.iter().for_each(|&corner| areas[corner as usize] += each);
        }
        let fitted = nodes.iter().zip(&mut areas).enumerate();
        for (place, (node, area)) in fitted.filter(|(_, (node, _))| self.mesh.is_fitted(node)) {
            let (x, y) = self.mesh.slopes_per_height(place, node);
            *area += x * offset.x + y * offset.y;
        }
        // Where lines cross, the height is the mean of both; a later crossing may be on the line to an earlier one.
        for made in self.mesh.made.iter().rev() {
            let area = std::mem::take(&mut areas[made.node as usize]);
            for ([from, to], share) in made.ends.into_iter().zip(made.shares) {
                areas[from as usize] += 0.5 * (1.0 - share) * area;
                areas[to as usize] += 0.5 * share * area;
            }
        }
        areas
    }

    /// Shares the area of a place out over all shots it was made from.
    fn share_out(&self, areas: &mut [f64]) {
        for note in &self.notes {
            if let Note::Shared(SharedPlace { shots, .. }) = note {
                let whole: f64 = shots.iter().map(|&shot| areas[shot]).sum();
                shots.iter().for_each(|&shot| areas[shot] = whole / shots.len() as f64);
            }
        }
    }
}

/// Adds the area of a piece of a polygon to the two or three corners it lies at; gives what falls to the mean.
fn between_shots(
    mesh: &Mesh,
    nodes: &[Node],
    (face, at): (u32, u32),
    middle: Point,
    area: f64,
    areas: &mut [f64],
) -> f64 {
    let range = mesh.range(face as usize);
    let corners = &mesh.loops[range.clone()];
    let mean = mesh.faces[face as usize].mean;
    let mut add = |corner: u32, area: f64| areas[corner as usize] += area;
    if mean == NO_MEAN {
        let triangle = [corners[0], corners[1], corners[2]];
        for (corner, share) in triangle.into_iter().zip(shares(nodes, triangle, middle)) {
            add(corner, share * area);
        }
        return 0.0;
    }
    let index = at as usize - range.start;
    let triangle = [mean, corners[index], corners[(index + 1) % corners.len()]];
    let [of_mean, of_first, of_second] = shares(nodes, triangle, middle);
    add(triangle[1], of_first * area);
    add(triangle[2], of_second * area);
    of_mean * area
}

/// The shares of a triangle's corners in the height at a place (its barycentric coordinates).
fn shares(nodes: &[Node], triangle: [u32; 3], place: Point) -> [f64; 3] {
    let [a, b, c] = triangle.map(|corner| nodes[corner as usize].at());
    let doubled = cross(a, b, c);
    if doubled <= 0.0 {
        // A piece of nothing: whatever its shares, they count for nothing.
        return [1.0 / 3.0; 3];
    }
    let (of_a, of_b) = (cross(place, b, c) / doubled, cross(a, place, c) / doubled);
    [of_a, of_b, 1.0 - of_a - of_b]
}

/// Adds the area of a piece of a strip to both ends of its piece of hull; gives the place of the hull nearest to the
/// piece's middle.
fn beyond_side(mesh: &Mesh, nodes: &[Node], at: u32, middle: Point, area: f64, areas: &mut [f64]) -> Point {
    let side = mesh.hull.sides.partition_point(|side| side.to <= at).min(mesh.hull.sides.len() - 1);
    let along = mesh.hull.sides[side].along;
    let [from, to] = [at, at + 1].map(|index| mesh.hull.chain[index as usize]);
    let (start, end) = (nodes[from as usize].at(), nodes[to as usize].at());
    let length = (end.x - start.x) * along.x + (end.y - start.y) * along.y;
    let share = ((middle.x - start.x) * along.x + (middle.y - start.y) * along.y) / length;
    areas[from as usize] += (1.0 - share) * area;
    areas[to as usize] += share * area;
    Point::new(start.x + share * (end.x - start.x), start.y + share * (end.y - start.y))
}
