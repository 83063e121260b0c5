//! From an outline and shots to the surveyed slab.

use super::refusal::{grid_refused, note, refused};
use super::without::LeftOut;
use super::{Grid, Instrument, Marks, Shots, Survey, Texture, misfit};
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::Region;
use crate::note::Note;
use crate::quantity::Typed;
use crate::survey::input::{ElevationInput, GridInput, LevelInput, Placed, SurveyInput};
use crate::survey::level_book::{ReducedBook, reduce};
use crate::survey::outline::Outline;
use crate::survey::surface::{Rules, Shot, Surface, SurfaceError};

/// How the shots are to be taken.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Settings {
    /// What the readings were taken with.
    pub instrument: Option<Instrument>,
    /// What the old floor feels like.
    pub texture: Option<Texture>,
    /// Whether the work may reach more than 4 ft beyond the shots.
    pub beyond_allowed: bool,
}

impl Settings {
    fn rules(self) -> Rules {
        let reading = self.instrument.unwrap_or(Instrument::TAKEN).reading_deviation().base();
        Rules { beyond_allowed: self.beyond_allowed, reading_error: reading, ..Rules::DEFAULT }
    }
}

impl Survey {
    /// The old slab under an outline through these shots.
    ///
    /// # Errors
    /// Shots that do not make a surface: see the codes of the survey family.
    pub fn new(outline: Outline, shots: Shots, settings: Settings) -> Result<Self> {
        let rules = settings.rules();
        if let Shots::Grid(grid) = &shots {
            grid_refused(grid)?;
        }
        let surface = surface_of(&shots, outline.region(), &rules).map_err(|error| {
            let mut failure = refused(&error, &shots, &outline);
            if let Some(slip) = misfit::remedy(&error, &shots, outline.region(), &rules) {
                failure.remedy = format!("{slip}; else {}", failure.remedy);
            }
            failure
        })?;
        let notes = surface.notes().iter().map(|about| note(about, &shots, &outline)).collect();
        Ok(Self {
            outline,
            shots,
            surface,
            settings,
            book: None,
            squareness: None,
            notes,
            changes: Vec::new(),
        })
    }

    /// The old slab as an input says it.
    ///
    /// # Errors
    /// Whatever the outline, the book or the shots are refused for.
    pub fn from_input(input: &SurveyInput) -> Result<Self> {
        let built = input.outline.build().map_err(|failure| failure.under("outline"))?;
        let settings = Settings {
            instrument: input.instrument,
            texture: input.texture,
            beyond_allowed: input.beyond_allowed,
        };
        let elevations = |shots: Shots, key: &str| {
            let left = LeftOut::of(shots, &input.leave_out)?;
            left.survey(built.outline.clone(), settings).map_err(|failure| failure.under(key))
        };
        let mut survey = match (&input.level, &input.grid, &input.shots, &input.faces) {
            (Some(level), None, None, None) => {
                Self::from_level(built.outline.clone(), level, settings, &input.leave_out)?
            }
            (None, Some(grid), None, None) => elevations(Shots::Grid(grid.into()), "grid")?,
            (None, None, Some(shots), None) => elevations(Shots::Scattered(marks(shots)), "shots")?,
            (None, None, None, Some(faces)) => {
                let tin = faces.tin().map_err(|failure| failure.under("faces"))?;
                elevations(Shots::Faces(tin), "faces")?
            }
            (None, None, None, None) => {
                let remedy = "give rods under level, or elevations under grid, shots or faces";
                return Err(Failure::new(Code::KeyMissing, "level")
                    .allowed("level, grid, shots or faces")
                    .remedy(remedy));
            }
            _ => {
                let remedy = "keep one of level, grid, shots and faces";
                return Err(Failure::new(Code::Contradiction, "level").allowed("one of them").remedy(remedy));
            }
        };
        survey.squareness = built.squareness;
        survey.notes.splice(0..0, built.notes);
        for (index, change) in input.changes.iter().enumerate() {
            let changed = change.build().and_then(|change| survey.after(change));
            survey = changed.map_err(|failure| failure.under(&format!("changes[{index}]")))?;
        }
        Ok(survey)
    }

    /// The old slab from rods. Shots that fill a grid are triangulated by rows and columns.
    fn from_level(
        outline: Outline,
        level: &LevelInput,
        settings: Settings,
        leave_out: &[String],
    ) -> Result<Self> {
        let settings = Settings {
            instrument: settings.instrument.or(level.instrument),
            texture: settings.texture.or(level.texture),
            beyond_allowed: settings.beyond_allowed || level.beyond_allowed,
        };
        let filed = level.book().map_err(|failure| failure.under("level"))?;
        let book = reduce(&filed.book).map_err(|failure| filed.in_file(failure).under("level"))?;
        let shots = shots_of(level, &filed.placed, &book);
        let left = LeftOut::of(shots, leave_out)?;
        let left = left.and(&level.leave_out).map_err(|failure| failure.under("level"))?;
        let mut survey =
            left.survey(outline, settings).map_err(|f| in_rows(level, &filed.placed, f).under("level"))?;
        survey.notes.extend(closure_notes(&book));
        survey.book = Some(book);
        Ok(survey)
    }
}

/// The surface through shots.
pub(super) fn surface_of(
    shots: &Shots,
    region: &Region,
    rules: &Rules,
) -> std::result::Result<Surface, SurfaceError> {
    match shots {
        Shots::Grid(grid) => {
            let made = if grid.steps { Surface::from_stepped_rows } else { Surface::from_rows };
            made(&grid.columns, &grid.rows, &grid.heights, region, rules)
        }
        Shots::Scattered(marks) => Surface::from_shots(&marks.shots, region, rules),
        Shots::Faces(tin) => Surface::from_faces(&tin.points, &tin.faces, region, rules),
    }
}

/// A failure of a shot or of the grid's rows, told where its reading or its row stands in the file.
fn in_rows(level: &LevelInput, placed: &[Placed], mut failure: Box<Failure>) -> Box<Failure> {
    if let ("", Place::Index(shot)) = (failure.path.as_str(), failure.place) {
        let columns = level.columns.len().max(1);
        let gridded = placed.iter().all(|place| place.grid.is_some());
        let found = match gridded {
            true => placed.iter().find(|place| place.grid == Some((shot / columns, shot % columns))),
            false => placed.get(shot),
        };
        if let Some(place) = found {
            failure.path.clone_from(&place.path);
            failure.place = Place::Unknown;
        }
        return failure;
    }
    let rows =
        level.setups.iter().enumerate().flat_map(|(setup, s)| (0..s.rows.len()).map(move |row| (setup, row)));
    if let ("rows", Place::Index(index)) = (failure.path.as_str(), failure.place)
        && let Some((setup, row)) = rows.clone().nth(index)
    {
        failure.path = format!("setups[{setup}].rows[{row}].y");
        failure.place = Place::Unknown;
    }
    failure
}

/// The placed shots with the elevations of the book.
fn shots_of(level: &LevelInput, placed: &[Placed], book: &ReducedBook) -> Shots {
    let elevations =
        placed.iter().zip(book.slab_shots()).map(|(place, point)| (place, point.elevation.base()));
    let rows: Vec<f64> =
        level.setups.iter().flat_map(|setup| &setup.rows).map(|row| row.y.value.base()).collect();
    if placed.iter().all(|place| place.grid.is_some()) && !placed.is_empty() {
        let columns: Vec<f64> = level.columns.iter().map(|given| given.value.base()).collect();
        let mut heights = vec![None; rows.len() * columns.len()];
        for (place, elevation) in elevations {
            if let Some((row, column)) = place.grid {
                heights[row * columns.len() + column] = Some(elevation);
            }
        }
        return Shots::Grid(Grid { columns, rows, heights, steps: level.steps });
    }
    let (shots, names) = elevations
        .map(|(place, z)| {
            let (x, y) = (place.x.base(), place.y.base());
            (Shot { x, y, z, outside_allowed: place.outside, step: place.step }, Some(place.name.clone()))
        })
        .unzip();
    Shots::Scattered(Marks { shots, names })
}

/// What the book leaves over and how it was shared out.
fn closure_notes(book: &ReducedBook) -> Vec<Note> {
    use crate::note::NoteCode;
    use crate::quantity::feet_and_inches;
    let off = |length: crate::quantity::Length| feet_and_inches(length, 32);
    let lines =
        book.lines.iter().filter_map(|line| line.closure.as_ref()).filter(|c| c.misclosure.base() != 0.0);
    let lines = lines.map(|closure| {
        let text = format!(
            "the line closes on {} {} off, shared out by set-ups",
            closure.on,
            off(closure.misclosure)
        );
        Note::new(NoteCode::Adjusted, text)
    });
    let again = book.setups.iter().filter_map(|setup| setup.recheck.as_ref().map(|recheck| (setup, recheck)));
    let again = again.filter(|(_, recheck)| recheck.difference.base() != 0.0).map(|(setup, recheck)| {
        let text =
            format!("{} read again {} off, the mean is used", setup.backsight_point, off(recheck.difference));
        Note::new(NoteCode::Adjusted, text)
    });
    lines.chain(again).collect()
}

impl From<&GridInput> for Grid {
    fn from(input: &GridInput) -> Self {
        Self {
            columns: input.columns.iter().map(|given| given.value.base()).collect(),
            rows: input.rows.iter().map(|given| given.value.base()).collect(),
            heights: input
                .elevations
                .iter()
                .map(|rod| rod.0.as_ref().map(|given| given.value.base()))
                .collect(),
            steps: input.steps,
        }
    }
}

fn marks(shots: &[ElevationInput]) -> Marks {
    let shot = |input: &ElevationInput| Shot {
        x: input.x.value.base(),
        y: input.y.value.base(),
        z: input.elevation.value.base(),
        outside_allowed: input.outside,
        step: input.step,
    };
    let named = shots.iter().any(|input| input.name.is_some());
    Marks {
        shots: shots.iter().map(shot).collect(),
        names: if named { shots.iter().map(|input| input.name.clone()).collect() } else { Vec::new() },
    }
}
