//! Planes from a level perimeter to a drain: one from each run.

use super::rim::ring;
use super::{WIDTH, facet, sight, told_apart};
use crate::choice;
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{FARTHEST, Plane, Point, RingId, Run};
use crate::grade::fall::FALL;
use crate::grade::finish::even::{self, High};
use crate::grade::finish::{Facet, Finish, HEIGHT};
use crate::quantity::{Elevation, Length, Slope, Typed, feet_and_inches};
use crate::survey::outline::Outline;

choice! {
    /// Along which way of the water to a drain a fall is meant.
    pub enum Reach {
        /// From the farthest corner of the perimeter: the fall is met there and exceeded elsewhere.
        Longest = "longest",
        /// From the nearest place of the perimeter: no facet is steeper.
        Shortest = "shortest",
    }
}

/// How low a drain lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DrainSet {
    /// At this elevation.
    At(Elevation),
    /// Below the perimeter by this fall along a way of the water.
    By(Slope, Reach),
}

/// A drain inside a level perimeter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ToDrain {
    /// The middle of the drain, from the left.
    pub x: Length,
    /// The middle of the drain, from the front.
    pub y: Length,
    /// Height of the finish all along the outer edges.
    pub elevation: Elevation,
    /// How low the drain lies.
    pub set: DrainSet,
    /// Size of its level rim along x and along y; none for a point.
    pub rim: Option<[Length; 2]>,
}

impl Finish {
    /// Planes that fall from a level perimeter to a drain, one from each run; with a rim of two sizes also triangles between that
    /// keep the rim level. Columns and other holes take nothing away from that.
    ///
    /// # Errors
    /// - `OFF_WORK`: a drain outside the work or in a hole.
    /// - `CORNER_UNSEEN`: a corner that cannot be seen from the drain, where no plane from each run falls to it.
    /// - `CONTRADICTION`: a drain that is not below the perimeter.
    pub fn to_drain(outline: &Outline, asked: &ToDrain) -> Result<Self> {
        let middle = asked.middle()?;
        let high = check("elevation", asked.elevation, HEIGHT)?.base();
        let rim = asked.rim_around(middle)?;
        let region = outline.region();
        for place in std::iter::once(middle).chain(rim.into_iter().flatten()) {
            sight::refuse_hidden(region, place, if place == middle { "x" } else { "rim_x" })?;
        }
        let around: Vec<Point> = rim.map_or_else(|| vec![middle], |rim| rim.to_vec());
        let low = asked.low(high, region.outer().runs(), &around)?;
        let mut runs: Vec<Run> = region.outer().runs().collect();
        if !region.outer().is_counter_clockwise() {
            runs.reverse();
        }
        let names = run_names(outline, &runs);
        let name = |run: usize| names.get(run % runs.len()).map_or("", String::as_str);
        let mut facets = Vec::new();
        let Some(rim) = rim else {
            for (number, run) in runs.iter().enumerate() {
                let corners = vec![run.from, run.to, middle];
                facets.push(falling(
                    corners,
                    name(number),
                    |place| if place == middle { low } else { high },
                )?);
            }
            return Self::faceted(told_apart(facets));
        };
        let corners: Vec<Point> = runs.iter().map(|run| run.from).collect();
        for piece in ring(&corners, rim) {
            let name = match piece.whole_run {
                true => name(piece.from).to_owned(),
                false => format!("{} to {}", name(piece.from + runs.len() - 1), name(piece.from)),
            };
            let height = |place: Point| if rim.contains(&place) { low } else { high };
            facets.push(falling(piece.corners, &name, height)?);
        }
        facets.push(facet(rim.to_vec(), Plane::about(middle, low, 0.0, 0.0), "drain")?);
        Self::faceted(told_apart(facets))
    }
}

impl ToDrain {
    fn middle(&self) -> Result<Point> {
        let middle = Point::new(self.x.base(), self.y.base());
        if middle.x.abs() <= FARTHEST && middle.y.abs() <= FARTHEST {
            return Ok(middle);
        }
        Err(Failure::new(Code::NotFinite, "x")
            .written(format!("x {} m, y {} m", middle.x, middle.y))
            .allowed("finite numbers near the work")
            .remedy("measure from a corner of the work"))
    }

    /// The corners of the rim, counter-clockwise.
    fn rim_around(&self, middle: Point) -> Result<Option<[Point; 4]>> {
        let Some([x, y]) = self.rim else { return Ok(None) };
        let (x, y) = (0.5 * check("rim_x", x, WIDTH)?.base(), 0.5 * check("rim_y", y, WIDTH)?.base());
        if x <= 0.0 && y <= 0.0 {
            return Ok(None);
        }
        if x <= 0.0 || y <= 0.0 {
            return Err(Failure::new(Code::OutOfRange, if x <= 0.0 { "rim_x" } else { "rim_y" })
                .written("0 in")
                .allowed("a size along x and along y, or none")
                .remedy("give both sizes of the rim"));
        }
        let corner = |dx: f64, dy: f64| Point::new(middle.x + dx, middle.y + dy);
        Ok(Some([corner(-x, -y), corner(x, -y), corner(x, y), corner(-x, y)]))
    }

    /// The height of the drain.
    fn low(&self, high: f64, runs: impl Iterator<Item = Run>, rim: &[Point]) -> Result<f64> {
        let (path, low) = match self.set {
            DrainSet::At(elevation) => {
                ("drain_elevation", check("drain_elevation", elevation, HEIGHT)?.base())
            }
            DrainSet::By(fall, reach) => {
                ("fall", high - check("fall", fall, FALL)?.base() * run_of_water(runs, rim, reach))
            }
        };
        if low < high {
            return Ok(low);
        }
        let above = feet_and_inches(Length::from_base(low - high), 8);
        Err(Failure::new(Code::Contradiction, path)
            .written(format!("a drain {above} above the perimeter"))
            .allowed("a drain below the perimeter")
            .remedy("check both heights"))
    }
}

/// The longest or the shortest way from the perimeter to a rim.
fn run_of_water(runs: impl Iterator<Item = Run>, rim: &[Point], reach: Reach) -> f64 {
    let ways = runs.map(|run| {
        let corner = to_rim(run.from, rim);
        let to_run = |place: &Point| place.distance(run.at(run.share_nearest(*place)));
        (corner, rim.iter().map(to_run).fold(corner, f64::min))
    });
    match reach {
        Reach::Longest => ways.map(|(corner, _)| corner).fold(0.0, f64::max),
        Reach::Shortest => ways.map(|(_, nearest)| nearest).fold(f64::INFINITY, f64::min),
    }
}

/// How far a place outside is from a rim parallel to the axes, or from a single place.
fn to_rim(place: Point, rim: &[Point]) -> f64 {
    let reach = |of: fn(&Point) -> f64| {
        let (low, high) =
            rim.iter().map(of).fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), at| (a.min(at), b.max(at)));
        (low - of(&place)).max(of(&place) - high).max(0.0)
    };
    reach(|at| at.x).hypot(reach(|at| at.y))
}

/// A facet from the perimeter to the drain.
fn falling(corners: Vec<Point>, name: &str, height: impl Fn(Point) -> f64) -> Result<Facet> {
    let high: Vec<High> = corners.iter().map(|&at| High { at, height: height(at) }).collect();
    let called = |corner: usize| format!("corner {}", corner + 1);
    let plane = even::plane(&high, "x", &called)?;
    Ok(facet(corners, plane, name)?.falling_to("drain"))
}

/// The names of runs; those of several runs under one name get a number.
fn run_names(outline: &Outline, runs: &[Run]) -> Vec<String> {
    let plain: Vec<&str> =
        runs.iter().map(|run| outline.run(run.id).map_or("", |run| run.name().trim())).collect();
    let numbered = runs.iter().zip(&plain).map(|(run, name)| {
        debug_assert_eq!(run.id.ring, RingId::Outer);
        let same = plain.iter().filter(|other| other.eq_ignore_ascii_case(name)).count();
        if same > 1 { format!("{name} {}", run.id.index + 1) } else { (*name).to_owned() }
    });
    numbered.collect()
}
