//! Points as shots of a job.

use super::Points;
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::Point;
use crate::quantity::range::Range;
use crate::quantity::{QuantityType, kinds};
use crate::survey::old_slab::Marks;
use crate::survey::outline::Outline;
use crate::survey::surface::{Rules, Shot};

/// A plan coordinate of a job: within 100 km.
pub const PLACE: Range = Range::closed(-1.0e5, 1.0e5);
/// A height of a job: within 10 km of the datum.
pub const HEIGHT: Range = Range::closed(-1.0e4, 1.0e4);

crate::choice! {
    /// What becomes of points that lie more than 6 in outside the outline: a scan knows no edge of the work.
    pub enum Outside {
        /// They are refused.
        Refuse = "refuse",
        /// They are used: the surface reaches out to them.
        Use = "use",
        /// They are left out and counted.
        LeaveOut = "leave_out",
    }
}

/// Points as shots.
#[derive(Clone, Debug, PartialEq)]
pub struct AsShots {
    /// The shots, in the order of the points.
    pub marks: Marks,
    /// The number of the point behind each shot, where points were left out.
    places: Option<Vec<usize>>,
    /// How many points were left out.
    pub left_out: usize,
}

impl AsShots {
    /// The number of the point behind a shot.
    #[must_use]
    pub fn point(&self, shot: usize) -> usize {
        self.places.as_ref().map_or(shot, |places| places.get(shot).copied().unwrap_or(shot))
    }
}

/// The points as shots of the work under an outline. Points outside are refused by the surface, not here.
///
/// # Errors
/// `NOT_FINITE` or `OUT_OF_RANGE` at `points` with the number of the point, for coordinates too far for a job; `TOO_FEW_SHOTS` where no
/// point is left.
pub fn shots(points: &Points, outline: &Outline, outside: Outside) -> Result<AsShots> {
    in_job(points, "points")?;
    let shot = |index: usize| {
        let [x, y, z] = points.get(index)?;
        Some(Shot { outside_allowed: outside == Outside::Use, ..Shot::new(x, y, z) })
    };
    if outside != Outside::LeaveOut {
        let shots = (0..points.len()).filter_map(shot).collect();
        return Ok(AsShots {
            marks: Marks { shots, names: points.names.clone() },
            places: None,
            left_out: 0,
        });
    }
    let near = near(outline);
    let kept: Vec<usize> = (0..points.len())
        .filter(|&index| points.get(index).is_some_and(|[x, y, _]| near(Point::new(x, y))))
        .collect();
    if kept.is_empty() {
        return Err(Failure::new(Code::TooFewShots, "points")
            .written(format!("{} points, all outside the outline", points.len()))
            .allowed("points within the outline")
            .remedy("check the unit of the points, or move them into the axes of the job"));
    }
    let name = |&index: &usize| points.names.get(index).cloned().flatten();
    let names = if points.names.is_empty() { Vec::new() } else { kept.iter().map(name).collect() };
    let shots = kept.iter().filter_map(|&index| shot(index)).collect();
    let left_out = points.len() - kept.len();
    Ok(AsShots { marks: Marks { shots, names }, places: Some(kept), left_out })
}

/// Whether a place is inside the outline or near enough to be used as a shot of it.
fn near(outline: &Outline) -> impl Fn(Point) -> bool + '_ {
    let region = outline.region();
    let limit = Rules::DEFAULT.outside_noted;
    let (least, greatest) = region.bounds();
    move |place| {
        let in_box = place.x >= least.x - limit
            && place.x <= greatest.x + limit
            && place.y >= least.y - limit
            && place.y <= greatest.y + limit;
        in_box && region.distance_outside(place) <= limit
    }
}

/// Refuses points whose coordinates are too far for a job.
///
/// # Errors
/// `NOT_FINITE` or `OUT_OF_RANGE` at the coordinate under `path`, with the number of the point.
pub fn in_job(points: &Points, path: &str) -> Result<()> {
    let axes: [(&[f64], Range, &'static QuantityType); 3] = [
        (&points.x, PLACE, &kinds::length),
        (&points.y, PLACE, &kinds::length),
        (&points.z, HEIGHT, &kinds::elevation),
    ];
    for ((axis, range, quantity), name) in axes.into_iter().zip(["x", "y", "elevation"]) {
        if let Some(index) = axis.iter().position(|&number| !range.allows(number)) {
            let base = axis.get(index).copied().unwrap_or(f64::NAN);
            let failure = Failure::refused(&format!("{path}.{name}"), base, range, quantity);
            return Err(failure
                .at(Place::Index(index))
                .remedy("move the points into the axes of the job first"));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Length, Typed};
    use crate::survey::outline::Corner;

    fn outline() -> Outline {
        let corner = |x: f64, y: f64| Corner { x: Length::from_base(x), y: Length::from_base(y) };
        Outline::from_corners(&[corner(0.0, 0.0), corner(4.0, 0.0), corner(4.0, 3.0), corner(0.0, 3.0)], &[])
            .unwrap()
    }

    fn points() -> Points {
        Points {
            x: vec![1.0, 9.0, 4.15, 4.2, 2.0],
            y: vec![1.0, 1.0, 1.0, 1.0, -0.1],
            z: vec![0.1, 0.2, 0.3, 0.4, 0.5],
            names: vec![None, Some("far".to_owned()), Some("near".to_owned()), None, None],
        }
    }

    #[test]
    fn points_outside_are_left_out_and_the_others_keep_their_names_and_numbers() {
        let made = shots(&points(), &outline(), Outside::LeaveOut).unwrap();
        assert_eq!(made.marks.shots.iter().map(|shot| shot.x).collect::<Vec<_>>(), [1.0, 4.15, 2.0]);
        assert_eq!(made.marks.names, [None, Some("near".to_owned()), None]);
        assert_eq!((made.left_out, made.point(1), made.point(2)), (2, 2, 4));
        for outside in [Outside::Refuse, Outside::Use] {
            let made = shots(&points(), &outline(), outside).unwrap();
            assert_eq!((made.marks.shots.len(), made.left_out, made.point(3)), (5, 0, 3));
            assert_eq!(made.marks.shots[0].outside_allowed, outside == Outside::Use);
        }
    }

    #[test]
    fn coordinates_of_a_map_are_refused_with_the_point() {
        let mut far = points();
        far.y[3] = 4.5e6;
        let failure = shots(&far, &outline(), Outside::LeaveOut).unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (Code::OutOfRange, "points.y"));
        assert_eq!(failure.place, Place::Index(3));
        let away = Points { x: vec![90.0], y: vec![1.0], z: vec![1.0], names: Vec::new() };
        assert_eq!(shots(&away, &outline(), Outside::LeaveOut).unwrap_err().code, Code::TooFewShots);
    }
}
