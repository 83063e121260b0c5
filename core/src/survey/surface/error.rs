//! Why shots do not make a surface.

use super::StepFlaw;
use crate::geometry::{Point, RunId};

/// Why shots do not make a surface. Shots are named by their number in the caller's list.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum SurfaceError {
    /// A coordinate or height is not a finite number, or absurdly large.
    #[error("shot {shot} is at ({x}, {y}, {z}); values must be within {limit} m of the origin")]
    NotFinite {
        /// Which shot.
        shot: usize,
        /// Its first plan coordinate.
        x: f64,
        /// Its second plan coordinate.
        y: f64,
        /// Its height.
        z: f64,
        /// The greatest magnitude allowed.
        limit: f64,
    },
    /// A rule is negative or not a number.
    #[error("the rule {name} is {value}; it must be a number from 0 up")]
    Rule {
        /// Which field of the rules.
        name: &'static str,
        /// Its value.
        value: f64,
    },
    /// The table of heights does not fit its rows and columns.
    #[error("{rows} rows of {columns} columns need {} heights, {heights} given", rows * columns)]
    TableSize {
        /// How many rows.
        rows: usize,
        /// How many columns.
        columns: usize,
        /// How many heights.
        heights: usize,
    },
    /// Fewer than three distinct places.
    #[error("{shots} shots at {places} places; at least 3 places are needed")]
    TooFewPlaces {
        /// How many shots.
        shots: usize,
        /// At how many distinct places.
        places: usize,
    },
    /// All places lie on one line.
    #[error("all {places} places lie within {width} m of the line from shot {from} to shot {to}")]
    Collinear {
        /// How many places.
        places: usize,
        /// The shot at one end.
        from: usize,
        /// The shot at the other.
        to: usize,
        /// How far the places are from the line at most.
        width: f64,
    },
    /// Two heights at one place.
    #[error(
        "shots {low_shot} and {high_shot} are at one place ({distance} m apart) with heights {low} and {high}"
    )]
    TwoHeights {
        /// The lower shot.
        low_shot: usize,
        /// Its height.
        low: f64,
        /// The higher shot.
        high_shot: usize,
        /// Its height.
        high: f64,
        /// How far apart they are in plan.
        distance: f64,
        /// The difference allowed.
        allowed: f64,
    },
    /// A chain of shots, each at the place of the next, that is too long to be one place.
    #[error(
        "{shots} shots from {first} to {last} are each within {allowed} m of the next yet spread {spread} m"
    )]
    Crowded {
        /// How many shots.
        shots: usize,
        /// One end of the spread.
        first: usize,
        /// The other end.
        last: usize,
        /// How far apart those are.
        spread: f64,
        /// Within how much shots are one place.
        allowed: f64,
    },
    /// A step that is not described well enough.
    #[error("the step at shot {shot} (and {other}): {flaw:?}")]
    Step {
        /// A shot of the step.
        shot: usize,
        /// The other shot it is about, or the same one.
        other: usize,
        /// What is wrong.
        flaw: StepFlaw,
    },
    /// An unmarked shot too far outside the outline.
    #[error(
        "shot {shot} lies {distance} m outside the outline (nearest: {run:?}); up to {allowed} m is taken"
    )]
    Outside {
        /// Which shot.
        shot: usize,
        /// How far outside.
        distance: f64,
        /// The nearest run.
        run: RunId,
        /// The distance allowed.
        allowed: f64,
    },
    /// The region reaches too far beyond the shots.
    #[error("the region reaches {distance} m beyond the shots at ({}, {}); up to {allowed} m is taken", at.x, at.y)]
    TooFarBeyond {
        /// The farthest corner of the region.
        at: Point,
        /// How far it is from the ground inside the shots.
        distance: f64,
        /// The shot nearest to it.
        nearest_shot: usize,
        /// The distance allowed.
        allowed: f64,
    },
    /// A surface of given faces has none.
    #[error("there is no face")]
    NoFaces,
    /// A face has a corner that is none of the points.
    #[error("face {face} has point {point} as a corner; there are {points} points, the first is 0")]
    FacePoint {
        /// Which face.
        face: usize,
        /// The number of its corner.
        point: usize,
        /// How many points there are.
        points: usize,
    },
    /// A face has a point twice.
    #[error("face {face} has point {point} twice")]
    FaceRepeats {
        /// Which face.
        face: usize,
        /// Which point.
        point: usize,
    },
    /// A face has no area in plan.
    #[error("face {face} has no area in plan")]
    FaceFlat {
        /// Which face.
        face: usize,
    },
    /// Two faces have ground in common.
    #[error("faces {first} and {second} overlap")]
    FacesOverlap {
        /// The one face.
        first: usize,
        /// The other.
        second: usize,
    },
    /// A corner of one face lies inside another, or on its side.
    #[error("point {point} lies in face {face} or on its side")]
    PointInFace {
        /// Which point.
        point: usize,
        /// Which face.
        face: usize,
    },
    /// Three faces have one side in common.
    #[error("faces {faces:?} share the side from point {} to point {}", points[0], points[1])]
    EdgeOfThree {
        /// The ends of the side.
        points: [usize; 2],
        /// Three faces that have it.
        faces: [usize; 3],
    },
    /// A part has no area in common with the surface.
    #[error("the part has no area in common with the surface")]
    Apart,
}
