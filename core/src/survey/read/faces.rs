//! Faces: polygons by the numbers of their vertices, cut into triangles.

use crate::failure::Result;
use crate::note::{Note, NoteCode};
use crate::survey::points::Points;
use crate::survey::read::refusal::broken;

/// The number of a point that was left out.
pub(super) const NOT_KEPT: u32 = u32::MAX;

/// Polygons as the file has them.
#[derive(Debug, Default)]
pub(super) struct Faces {
    corners: Vec<u32>,
    ends: Vec<usize>,
}

impl Faces {
    /// One polygon.
    pub(super) fn push(&mut self, corners: &[f64]) -> Result<()> {
        if corners.len() < 3 {
            return Err(broken(format!("face {} of {} corners", self.ends.len(), corners.len())));
        }
        for &corner in corners {
            if !(corner >= 0.0 && corner.fract() == 0.0 && corner < f64::from(NOT_KEPT)) {
                return Err(broken(format!("face {} with the vertex {corner}", self.ends.len())));
            }
            self.corners.push(corner as u32);
        }
        self.ends.push(self.corners.len());
        Ok(())
    }

    pub(super) fn len(&self) -> usize {
        self.ends.len()
    }

    /// The triangles, by the numbers of the points that were kept.
    pub(super) fn triangles(
        &self,
        points: &Points,
        kept: &[u32],
        notes: &mut Vec<Note>,
    ) -> Result<Vec<[u32; 3]>> {
        let mut triangles = Vec::with_capacity(self.ends.len());
        let (mut start, mut fans, mut lost, mut flat) = (0, 0, 0, 0);
        for (face, &end) in self.ends.iter().enumerate() {
            let corners = self.corners.get(start..end).unwrap_or_default();
            start = end;
            let corners: Option<Vec<u32>> =
                corners.iter().map(|&corner| kept.get(corner as usize).copied()).collect();
            let corners =
                corners.ok_or_else(|| broken(format!("face {face} with a vertex that is not there")))?;
            if corners.contains(&NOT_KEPT) {
                lost += 1;
            } else if repeated(&corners) {
                flat += 1;
            } else {
                fans += usize::from(corners.len() > 3);
                fan(&corners, points, &mut triangles).ok_or_else(|| {
                    broken(format!("face {face} of {} corners is not convex", corners.len()))
                        .remedy("write the surface as triangles")
                })?;
            }
        }
        for (count, what) in [
            (
                fans,
                "faces of more than three corners were cut into triangles by a fan from their first corner",
            ),
            (lost, "faces were left out with a vertex"),
            (flat, "faces that name a vertex twice were left out"),
        ] {
            if count > 0 {
                notes.push(Note::new(NoteCode::FileParts, format!("{count} {what}")));
            }
        }
        Ok(triangles)
    }
}

fn repeated(corners: &[u32]) -> bool {
    let mut sorted = corners.to_vec();
    sorted.sort_unstable();
    sorted.windows(2).any(|pair| pair[0] == pair[1])
}

/// Adds the triangles of a fan from the first corner; none where the polygon is not convex in its own plane.
fn fan(corners: &[u32], points: &Points, triangles: &mut Vec<[u32; 3]>) -> Option<()> {
    let (&first, rest) = corners.split_first()?;
    let triangle = |one: u32, two: u32, three: u32| -> Option<[f64; 3]> {
        let place = |corner: u32| points.get(corner as usize);
        Some(cross(place(one)?, place(two)?, place(three)?))
    };
    let fans: Vec<[f64; 3]> =
        rest.windows(2).map(|pair| triangle(first, pair[0], pair[1])).collect::<Option<_>>()?;
    if fans.len() > 1 {
        let normal = fans.iter().fold([0.0; 3], |sum, n| [sum[0] + n[0], sum[1] + n[1], sum[2] + n[2]]);
        let around: Vec<u32> = corners.iter().chain(corners.iter().take(2)).copied().collect();
        let turns = around.windows(3).map(|w| triangle(w[0], w[1], w[2])).collect::<Option<Vec<_>>>()?;
        if dot(normal, normal) <= 0.0 {
            return None;
        }
        // Corners on one line turn by rounding alone.
        let least = -1.0e-9 * dot(normal, normal);
        if !fans.iter().chain(&turns).all(|&part| dot(part, normal) >= least) {
            return None;
        }
    }
    triangles.extend(rest.windows(2).map(|pair| [first, pair[0], pair[1]]));
    Some(())
}

/// Twice the area of a triangle, as a vector.
fn cross(a: [f64; 3], b: [f64; 3], c: [f64; 3]) -> [f64; 3] {
    let [u, v] = [b, c].map(|p| [p[0] - a[0], p[1] - a[1], p[2] - a[2]]);
    [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]]
}

fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}
