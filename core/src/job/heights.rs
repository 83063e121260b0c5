//! How a job says heights: as rods from the first set-up where a level was used, as elevations always.

use super::report::Measure;
use super::say;
use crate::assumption::ROUNDING;
use crate::failure::{Code, Failure, Result, check};
use crate::grade::finish::HEIGHT;
use crate::quantity::length::unit::{foot, meter};
use crate::quantity::{Elevation, Given, Length, Typed, feet_and_inches};
use crate::survey::Survey;
use crate::survey::level_book::ROD;
use crate::survey::old_slab::Instrument;

/// No rod is divided finer than this, in metres: 1/64 in.
const FINEST: f64 = 0.0254 / 64.0;

/// What heights of a job are told against.
#[derive(Clone, Copy, Debug)]
pub(super) struct Heights {
    /// The line of sight of the first set-up; none where elevations were given.
    sight: Option<Elevation>,
    /// Steps of rounding are counted from here: the first benchmark, or the job datum.
    pub(super) datum: Elevation,
    /// How rods are written.
    rod: RodWords,
}

/// How the crew's rod is divided, and so how its readings are written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum RodWords {
    /// Feet, inches and eighths: `4' 9"`.
    FeetAndInches,
    /// Feet and hundredths: `4.75 ft`.
    Hundredths,
    /// Metres and millimetres: `1.448 m`.
    Millimetres,
}

impl RodWords {
    /// As the instrument's rod is divided.
    fn of(instrument: Instrument) -> Self {
        match instrument {
            Instrument::OpticalHundredths => Self::Hundredths,
            Instrument::OpticalMillimetres => Self::Millimetres,
            _ => Self::FeetAndInches,
        }
    }

    /// A reading as it can be held on the rod.
    pub(super) fn coarse(self, rod: Length) -> Measure {
        self.write(rod, 8, 2, 3)
    }

    /// A reading finer than it can be held, for heights before rounding.
    pub(super) fn fine(self, rod: Length) -> Measure {
        self.write(rod, 16, 3, 4)
    }

    fn write(self, rod: Length, parts_of_inch: u32, feet: usize, metres: usize) -> Measure {
        let text = match self {
            Self::FeetAndInches => feet_and_inches(rod, parts_of_inch),
            Self::Hundredths => format!("{:.feet$} ft", (foot.from_base)(rod.base())),
            Self::Millimetres => format!("{:.metres$} m", rod.base()),
        };
        Measure::new(rod, &foot, &meter, text)
    }
}

impl Heights {
    /// The heights of a surveyed slab.
    pub(super) fn of(survey: &Survey) -> Self {
        let book = survey.book();
        let sight = book.and_then(|book| book.setups.first()).map(|setup| setup.height);
        let benchmark = book.and_then(|book| book.lines.first()).map(|line| line.start_elevation);
        let instrument = survey.settings().instrument.unwrap_or(Instrument::TAKEN);
        let datum = benchmark.unwrap_or_else(|| Elevation::from_base(0.0));
        Self { sight, datum, rod: RodWords::of(instrument) }
    }

    /// The rod on that height, where there is a level, in the given words.
    pub(super) fn rod(self, elevation: Elevation, words: fn(RodWords, Length) -> Measure) -> Option<Measure> {
        self.sight.map(|sight| words(self.rod, sight - elevation))
    }

    /// The step that marks are held to: that of the floor, or the finest of a rod in hundredths or millimetres, which shows no
    /// eighths. A floor that is hardly rounded is marked to 1/8 in all the same.
    pub(super) fn step(self, floor: Length) -> Length {
        match self.rod {
            RodWords::FeetAndInches if floor.base() < FINEST => ROUNDING.value(),
            RodWords::FeetAndInches => floor,
            RodWords::Hundredths => Length::from_base((foot.to_base)(0.01)),
            RodWords::Millimetres => Length::from_base(0.001),
        }
    }

    /// A height as the crew reads it: the rod where there is a level, else the elevation.
    pub(super) fn say(self, elevation: Elevation) -> Measure {
        self.rod(elevation, RodWords::coarse).unwrap_or_else(|| say::height(elevation))
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
