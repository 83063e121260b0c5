//! The tolerances by which shots become a surface.

use super::SurfaceError;

/// Length of one inch, in metres.
const INCH: f64 = 0.0254;

/// The tolerances by which shots become a surface; lengths in metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rules {
    /// A shot this near to an outline run lies on it (1/2 in).
    pub on_run: f64,
    /// Shots this near to one another in plan are one place (1/2 in).
    pub same_place: f64,
    /// Heights at one place that differ by no more become their mean (1/8 in).
    pub reading_error: f64,
    /// An unmarked shot up to this far outside the outline is used with a note (6 in); farther it is refused.
    pub outside_noted: f64,
    /// Triangles whose circles agree within this share of the radius are one polygon (1e-7).
    pub cocircular: f64,
    /// A triangle that leaves the outline by more than this spans ground that was not surveyed (1 ft).
    pub spanning: f64,
    /// The farthest the outline may reach beyond the shots (4 ft).
    pub beyond_farthest: f64,
    /// The caller allows the outline to reach farther.
    pub beyond_allowed: bool,
    /// Share of the area beyond the shots from which a note is made (0.10).
    pub beyond_noted: f64,
    /// Share of the area beyond the shots from which a warning is made (0.30).
    pub beyond_warned: f64,
}

impl Rules {
    /// The rules as they hold unless a caller has reasons.
    pub const DEFAULT: Self = Self {
        on_run: 0.5 * INCH,
        same_place: 0.5 * INCH,
        reading_error: 0.125 * INCH,
        outside_noted: 6.0 * INCH,
        cocircular: 1e-7,
        spanning: 12.0 * INCH,
        beyond_farthest: 48.0 * INCH,
        beyond_allowed: false,
        beyond_noted: 0.10,
        beyond_warned: 0.30,
    };
}

impl Default for Rules {
    fn default() -> Self {
        Self::DEFAULT
    }
}

impl Rules {
    /// Refuses rules that are no numbers from 0 up.
    pub(super) fn check(&self) -> Result<(), SurfaceError> {
        let rules = [
            ("on_run", self.on_run),
            ("same_place", self.same_place),
            ("reading_error", self.reading_error),
            ("outside_noted", self.outside_noted),
            ("cocircular", self.cocircular),
            ("spanning", self.spanning),
            ("beyond_farthest", self.beyond_farthest),
            ("beyond_noted", self.beyond_noted),
            ("beyond_warned", self.beyond_warned),
        ];
        match rules.into_iter().find(|(_, value)| !(*value >= 0.0 && value.is_finite())) {
            Some((name, value)) => Err(SurfaceError::Rule { name, value }),
            None => Ok(()),
        }
    }
}

/// Whether a distance is within a limit, with a nanometre of room: six inches given as six inches must not fail for
/// their last binary digit.
pub(super) fn within(distance: f64, limit: f64) -> bool {
    distance <= limit + 1e-9
}
