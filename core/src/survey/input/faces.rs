//! A triangulated surface as a job file says it: points, and the triangles between them.

use crate::failure::{Code, Failure, Place, Result};
use crate::quantity::{Elevation, Given, Length, Typed};
use crate::survey::points::{Points, Tin};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Points and the triangles between them, which are kept as they are.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FacesInput {
    /// The name of the surface.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// The points.
    pub points: Vec<PointInput>,
    /// Each triangle by the numbers of its three points; the first point is number 1.
    pub triangles: Vec<[u32; 3]>,
}

/// One point of a triangulated surface.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PointInput {
    /// Its name in the report.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
    /// Height above the job datum.
    pub elevation: Given<Elevation>,
}

impl FacesInput {
    /// The points and faces, counted from 0.
    ///
    /// # Errors
    /// A triangle with the point number 0: the first is 1.
    pub fn tin(&self) -> Result<Tin> {
        let mut points = Points::default();
        for point in &self.points {
            points.push([point.x.value.base(), point.y.value.base(), point.elevation.value.base()]);
        }
        if self.points.iter().any(|point| point.name.is_some()) {
            points.names = self.points.iter().map(|point| point.name.clone()).collect();
        }
        let faces = self.triangles.iter().enumerate();
        let faces = faces.map(|(face, corners)| face_from_one(face, *corners, points.len()));
        Ok(Tin { name: self.name.clone(), faces: faces.collect::<Result<_>>()?, points })
    }
}

/// A face whose points were counted from 1, counted from 0.
///
/// # Errors
/// A point number 0.
pub fn face_from_one(face: usize, corners: [u32; 3], points: usize) -> Result<[u32; 3]> {
    if corners.contains(&0) {
        return Err(Failure::new(Code::FacePointUnknown, "triangles")
            .at(Place::Index(face))
            .written(format!("triangle {} has point 0", face + 1))
            .allowed(format!("the numbers of the points, 1 to {points}"))
            .remedy("count the points from 1"));
    }
    Ok(corners.map(|point| point - 1))
}

impl From<&Tin> for FacesInput {
    /// The canonical form.
    fn from(tin: &Tin) -> Self {
        let point = |index: usize| {
            let [x, y, z] = tin.points.get(index)?;
            Some(PointInput {
                name: tin.points.names.get(index).cloned().flatten(),
                x: Given::computed(Length::from_base(x)),
                y: Given::computed(Length::from_base(y)),
                elevation: Given::computed(Elevation::from_base(z)),
            })
        };
        Self {
            name: tin.name.clone(),
            points: (0..tin.points.len()).filter_map(point).collect(),
            triangles: tin.faces.iter().map(|face| face.map(|point| point.saturating_add(1))).collect(),
        }
    }
}
