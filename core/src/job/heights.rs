//! How a job says heights: as rods from the first set-up where a level was used, as elevations always.

use crate::failure::{Code, Failure, Result, check};
use crate::grade::finish::HEIGHT;
use crate::quantity::{Elevation, Given, Length, Typed};
use crate::survey::Survey;
use crate::survey::level_book::ROD;

/// What heights of a job are told against.
#[derive(Clone, Copy, Debug)]
pub(super) struct Heights {
    /// The line of sight of the first set-up; none where elevations were given.
    sight: Option<Elevation>,
    /// Steps of rounding are counted from here: the first benchmark, or the job datum.
    pub(super) datum: Elevation,
}

impl Heights {
    /// The heights of a surveyed slab.
    pub(super) fn of(survey: &Survey) -> Self {
        let book = survey.book();
        let sight = book.and_then(|book| book.setups.first()).map(|setup| setup.height);
        let benchmark = book.and_then(|book| book.lines.first()).map(|line| line.start_elevation);
        Self { sight, datum: benchmark.unwrap_or_else(|| Elevation::from_base(0.0)) }
    }

    /// The rod on that height, where there is a level.
    pub(super) fn rod(self, elevation: Elevation) -> Option<Length> {
        self.sight.map(|sight| sight - elevation)
    }

    /// A height given as an elevation or as a rod reading from the first set-up, but not as both.
    pub(super) fn given(
        self,
        elevation: &Option<Given<Elevation>>,
        rod: &Option<Given<Length>>,
        [path, rod_path]: [&str; 2],
    ) -> Result<Elevation> {
        match (elevation, rod) {
            (Some(elevation), None) => check(path, elevation.value, HEIGHT),
            (None, Some(rod)) => {
                let sight = self.sight.ok_or_else(|| no_level(rod_path, &rod.written))?;
                Ok(sight - check(rod_path, rod.value, ROD)?)
            }
            (None, None) => Err(Failure::new(Code::FinishUndetermined, path)
                .written("nothing")
                .allowed("an elevation or a rod reading")
                .remedy("give the height one way")),
            (Some(elevation), Some(rod)) => Err(Failure::new(Code::Contradiction, path)
                .written(format!("elevation {} and rod {}", elevation.written, rod.written))
                .allowed("an elevation or a rod reading")
                .remedy("keep one of the two")),
        }
    }
}

fn no_level(path: &str, written: &str) -> Box<Failure> {
    Failure::new(Code::Contradiction, path)
        .written(format!("rod {written}"))
        .allowed("an elevation: this job has no level that a rod could be read by")
        .remedy("give the elevation")
}
