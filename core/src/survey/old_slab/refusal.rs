//! Why shots do not make a surface, and what must be known of it, in the words of the crew.

use super::{Grid, Shots, faces, steps};
use crate::failure::{Code, Failure, Place, Result};
use crate::note::{Note, NoteCode};
use crate::quantity::{Elevation, Length, Typed, area, number_in};
use crate::survey::outline::Outline;
use crate::survey::surface::{self, SurfaceError};
use crate::survey::words::{both, both_elevation, both_fine};

fn say(metres: f64) -> String {
    both(Length::from_base(metres))
}

fn fine(metres: f64) -> String {
    both_fine(Length::from_base(metres))
}

fn height(metres: f64) -> String {
    both_elevation(Elevation::from_base(metres))
}

/// A grid whose lists do not fit.
pub(super) fn grid_refused(grid: &Grid) -> Result<()> {
    for (name, list) in [("columns", &grid.columns), ("rows", &grid.rows)] {
        if list.is_empty() {
            return Err(Failure::new(Code::EmptyList, name)
                .allowed("at least 2")
                .remedy("give the distances"));
        }
        let falls = |pair: &[f64]| pair[1] < pair[0] || pair[1] == pair[0] && !grid.steps;
        if let Some(index) = list.windows(2).position(falls) {
            return Err(Failure::new(Code::OutOfRange, name)
                .at(Place::Index(index + 1))
                .written(format!("{} after {}", say(list[index + 1]), say(list[index])))
                .allowed("distances that grow from the wall")
                .remedy("give rows from the front and columns from the left, each once; a step's twice, with steps said"));
        }
    }
    let wanted = grid.columns.len() * grid.rows.len();
    if grid.heights.len() == wanted {
        return Ok(());
    }
    Err(Failure::new(Code::LengthMismatch, "elevations")
        .written(format!("{} elevations", grid.heights.len()))
        .allowed(format!("{} rows of {}: {wanted}", grid.rows.len(), grid.columns.len()))
        .remedy("give one per row and column, none for a place not shot"))
}

/// The failure for shots that make no surface. Its path is empty or an index: the caller knows where the shots stand.
pub(super) fn refused(error: &SurfaceError, shots: &Shots, outline: &Outline) -> Box<Failure> {
    if let Some(failure) = faces::refused(error, shots) {
        return failure;
    }
    let mut failure = refused_shots(error, shots, outline);
    if matches!(shots, Shots::Faces(_)) && matches!(failure.place, Place::Index(_)) {
        failure.path = "points".to_owned();
    }
    failure
}

fn refused_shots(error: &SurfaceError, shots: &Shots, outline: &Outline) -> Box<Failure> {
    let name = |shot: usize| shots.name(shot);
    match *error {
        SurfaceError::NotFinite { shot, x, y, z, limit } => Failure::new(Code::NotFinite, "")
            .at(Place::Index(shot))
            .written(format!("{} at {x}, {y}, {z} m", name(shot)))
            .allowed(format!("numbers within {limit} m"))
            .remedy("check this shot"),
        SurfaceError::TwoHeights { low_shot, low, high_shot, high, distance, allowed } => {
            Failure::new(Code::TwoHeights, "")
                .at(Place::Index(low_shot.max(high_shot)))
                .written(format!(
                    "{} at {} and {} at {}, {} apart in plan",
                    name(low_shot),
                    height(low),
                    name(high_shot),
                    height(high),
                    fine(distance)
                ))
                .allowed(format!("heights within {} at one place", fine(allowed)))
                .remedy("strike one out, or shoot it again")
        }
        SurfaceError::Crowded { shots, first, last, spread, allowed } => Failure::new(Code::TwoHeights, "")
            .at(Place::Index(first))
            .written(format!("{shots} shots from {} to {} over {}", name(first), name(last), fine(spread)))
            .allowed(format!("shots more than {} apart", fine(allowed)))
            .remedy("thin the shots"),
        SurfaceError::Step { shot, other, flaw } => steps::refused(shot, other, flaw, shots),
        SurfaceError::Outside { shot, distance, run, allowed } => Failure::new(Code::ShotOutside, "")
            .at(Place::Index(shot))
            .written(format!("{} lies {} outside {}", name(shot), say(distance), run_name(outline, run)))
            .allowed(format!("inside, or up to {} outside", say(allowed)))
            .remedy("check its place, or mark it as outside on purpose"),
        SurfaceError::TooFarBeyond { at, distance, nearest_shot, allowed } => {
            Failure::new(Code::BeyondShots, "")
                .written(format!(
                    "{} from the shots at {}, {}, nearest {}",
                    say(distance),
                    say(at.x),
                    say(at.y),
                    name(nearest_shot)
                ))
                .allowed(format!("at most {} beyond the shots", say(allowed)))
                .remedy("shoot nearer to the edge there, or set beyond_allowed")
        }
        _ => few_or_on_a_line(error, shots),
    }
}

fn few_or_on_a_line(error: &SurfaceError, shots: &Shots) -> Box<Failure> {
    match *error {
        SurfaceError::TooFewPlaces { shots, places } => {
            let code = if shots == 0 { Code::EmptyList } else { Code::TooFewShots };
            Failure::new(code, "")
                .written(format!("{shots} shots at {places} places"))
                .allowed("at least 3 places that are not on one line")
                .remedy("shoot more points")
        }
        SurfaceError::Collinear { places, from, to, width } => Failure::new(Code::CollinearShots, "")
            .written(format!(
                "{places} places within {} of the line from {} to {}",
                fine(width),
                shots.name(from),
                shots.name(to)
            ))
            .allowed("shots on both sides of a line")
            .remedy("shoot a second row"),
        SurfaceError::TableSize { rows, columns, heights } => {
            Failure::new(Code::LengthMismatch, "elevations")
                .written(format!("{heights} elevations"))
                .allowed(format!("{rows} rows of {columns}"))
                .remedy("give one per row and column")
        }
        SurfaceError::Apart => Failure::new(Code::RegionOutside, "")
            .allowed("a zone that shares area with the outline")
            .remedy("check the zone's corners"),
        _ => Failure::new(Code::Internal, "").written(error.to_string()).remedy("report this fault"),
    }
}

fn run_name(outline: &Outline, run: crate::geometry::RunId) -> String {
    outline.run(run).map_or_else(|| "the outline".to_owned(), |run| run.name().to_owned())
}

/// A note of the surface in words.
pub(super) fn note(about: &surface::Note, shots: &Shots, outline: &Outline) -> Note {
    let name = |shot: usize| shots.name(shot);
    let square = |square_metres: f64| {
        number_in(crate::quantity::Area::from_base(square_metres), &area::unit::square_foot, 0)
    };
    match about {
        surface::Note::Shared(place) => {
            let names: Vec<String> = place.shots.iter().map(|&shot| name(shot)).collect();
            let text = format!(
                "{} are one place: the mean {} is used, they differ by {}",
                names.join(", "),
                height(place.height),
                fine(place.difference)
            );
            Note::new(NoteCode::PlacesMerged, text)
        }
        surface::Note::OutsideUsed { shot, distance, run } => {
            let text = format!(
                "{} lies {} outside {} and is used",
                name(*shot),
                fine(*distance),
                run_name(outline, *run)
            );
            Note::new(NoteCode::ShotNearOutline, text)
        }
        surface::Note::LinesCross { first, second, at } => {
            let line = |pair: &[usize; 2]| format!("{}-{}", name(pair[0]), name(pair[1]));
            let text = format!(
                "the wall lines {} and {} cross at {}, {} and were split there",
                line(first),
                line(second),
                say(at.x),
                say(at.y)
            );
            Note::new(NoteCode::EdgeSplit, text)
        }
        surface::Note::LineThroughShot { line, shot } => {
            let text = format!(
                "the wall line {}-{} passes through {} and was split",
                name(line[0]),
                name(line[1]),
                name(*shot)
            );
            Note::new(NoteCode::EdgeSplit, text)
        }
        surface::Note::Beyond { share, area, farthest, warning } => {
            let code = if *warning { NoteCode::MuchBeyondShots } else { NoteCode::BeyondShots };
            let text = format!(
                "{:.0} % of the work ({}) lies beyond the last shots, up to {}",
                100.0 * share,
                square(*area),
                say(*farthest)
            );
            Note::new(code, text)
        }
        surface::Note::Step { ends, least, greatest, toward } => {
            steps::note(*ends, [*least, *greatest], *toward, shots)
        }
        surface::Note::PointsUnused { points, first } => faces::unused(*points, *first, shots),
        surface::Note::BetweenFaces { share, area } => {
            let text = format!(
                "{:.0} % of the work ({}) lies between the triangles that were given: unsurveyed",
                100.0 * share,
                square(*area)
            );
            Note::new(NoteCode::Unsurveyed, text)
        }
        surface::Note::Spanning { share, area } => {
            let text = format!(
                "{:.0} % of the work ({}) lies between shots across a notch or a hole: unsurveyed",
                100.0 * share,
                square(*area)
            );
            Note::new(NoteCode::Unsurveyed, text)
        }
    }
}
