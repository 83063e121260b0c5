//! Why known points do not give a change of axes, with the slip that is likely behind it.

use super::fit::NEAREST;
use super::{Known, Levelling};
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::{FARTHEST, Point};
use crate::quantity::{Length, Typed};
use crate::survey::words::{both, both_fine};

fn say(metres: f64) -> String {
    both(Length::from_base(metres))
}

fn fine(metres: f64) -> String {
    both_fine(Length::from_base(metres))
}

/// Ratios of lengths that come from a unit taken for another, and what was taken for what.
const SLIPS: [(f64, &str); 12] = [
    (0.3048, "feet taken for metres"),
    (1.0 / 0.3048, "metres taken for feet"),
    (1.0 / 12.0, "inches taken for feet"),
    (12.0, "feet taken for inches"),
    (0.0254, "inches taken for metres"),
    (1.0 / 0.0254, "metres taken for inches"),
    (25.4, "inches taken for millimetres"),
    (1.0 / 25.4, "millimetres taken for inches"),
    (0.001, "millimetres taken for metres"),
    (1000.0, "metres taken for millimetres"),
    (304.8, "feet taken for millimetres"),
    (1.0 / 304.8, "millimetres taken for feet"),
];

/// The slip that is behind a ratio of lengths, known place over place of the points, if it is within 1 % of one.
fn slip(ratio: f64) -> Option<&'static str> {
    SLIPS.iter().find(|(of, _)| (ratio / of - 1.0).abs() < 0.01).map(|&(_, words)| words)
}

fn remedy(ratio: f64, otherwise: &str) -> String {
    match slip(ratio) {
        Some(words) => format!(
            "the lengths are as {ratio:.4} to 1: likely {words} in the points; read them again in their own unit"
        ),
        None => otherwise.to_owned(),
    }
}

pub(super) fn check_place(path: &str, at: Point) -> Result<()> {
    if at.x.abs() <= FARTHEST && at.y.abs() <= FARTHEST {
        return Ok(());
    }
    Err(Failure::new(Code::NotFinite, path)
        .written(format!("{}, {} m", at.x, at.y))
        .allowed(format!("numbers within {FARTHEST} m"))
        .remedy("check this place"))
}

/// Refuses known points whose numbers are unreal, and fewer than two.
pub(super) fn check_known(known: &[Known]) -> Result<()> {
    for (index, one) in known.iter().enumerate() {
        let heights = [one.from_height, one.to_height];
        let real = heights.iter().flatten().all(|height| height.abs() <= FARTHEST);
        let places = check_place("known", one.from).and_then(|()| check_place("known", one.to));
        places.map_err(|failure| failure.at(Place::Index(index)))?;
        if !real {
            return Err(Failure::new(Code::NotFinite, "known")
                .at(Place::Index(index))
                .written(format!("{}: heights {heights:?} m", one.name))
                .allowed(format!("numbers within {FARTHEST} m"))
                .remedy("check this point"));
        }
    }
    if known.len() >= 2 {
        return Ok(());
    }
    Err(Failure::new(Code::KnownPoints, "known")
        .written(format!("{} known points", known.len()))
        .allowed("two points or more")
        .remedy("give a second point that is known in both systems"))
}

/// Refuses known points at one place, in either system.
pub(super) fn check_apart(known: &[Known], spread: [f64; 2]) -> Result<()> {
    for (spread, system) in spread.into_iter().zip(["the points", "the job"]) {
        if 2.0 * spread < NEAREST {
            return Err(Failure::new(Code::KnownPoints, "known")
                .written(format!(
                    "{} known points within {} in the axes of {system}",
                    known.len(),
                    fine(spread)
                ))
                .allowed(format!("points more than {} apart", fine(NEAREST)))
                .remedy("take points far from one another, at the ends of the work"));
        }
    }
    Ok(())
}

/// Two points whose distance differs.
pub(super) fn distances(known: &[Known], tolerance: f64) -> Box<Failure> {
    let [first, second] = known else { return Failure::new(Code::AxesDisagree, "known") };
    let (from, to) = (first.from.distance(second.from), first.to.distance(second.to));
    Failure::new(Code::AxesDisagree, "known")
        .written(format!(
            "{} to {}: {} by the points, {} as known",
            first.name,
            second.name,
            say(from),
            say(to)
        ))
        .allowed(format!("distances within {}", fine(tolerance)))
        .remedy(remedy(to / from, "check both points in both systems"))
}

/// Three points or more that do not lie alike.
pub(super) fn places(
    worst: &Known,
    off: f64,
    tolerance: f64,
    scale: f64,
    without: Option<&str>,
) -> Box<Failure> {
    let otherwise = match without {
        Some(name) => format!("without {name} the others agree: check it in both systems"),
        None => "check the points in both systems, and that their names are not exchanged".to_owned(),
    };
    Failure::new(Code::AxesDisagree, "known")
        .written(format!("{} is {} from where the others put it", worst.name, say(off)))
        .allowed(format!("places within {}", fine(tolerance)))
        .remedy(remedy(scale, &otherwise))
}

/// Points that lie alike in a mirror.
pub(super) fn mirrored(known: &[Known], scale: f64) -> Box<Failure> {
    Failure::new(Code::AxesMirrored, "known")
        .written(format!("{} points that agree only as in a mirror", known.len()))
        .allowed("axes with y a quarter turn counter-clockwise from x in both systems")
        .remedy(remedy(scale, "exchange x and y of one system, or turn the sign of one axis"))
}

/// Heights that differ.
pub(super) fn heights(
    worst: &Known,
    off: f64,
    tolerance: f64,
    levelling: Levelling,
    count: usize,
) -> Box<Failure> {
    let remedy = match levelling {
        Levelling::Rise if count > 2 => "check the heights; ask for a tilt if the scan was not levelled",
        _ => "check the heights in both systems and their units",
    };
    Failure::new(Code::AxesDisagree, "known")
        .written(format!("the height of {} is {} from where the others put it", worst.name, fine(off.abs())))
        .allowed(format!("heights within {}", fine(tolerance)))
        .remedy(remedy)
}

/// A point that comes to lie too far out.
pub(super) fn too_far(index: usize, [x, y, z]: [f64; 3]) -> Box<Failure> {
    Failure::new(Code::OutOfRange, "points")
        .at(Place::Index(index))
        .written(format!("{x}, {y}, {z} m in the new axes"))
        .allowed(format!("numbers within {FARTHEST} m"))
        .remedy("check the known points and this point")
}
