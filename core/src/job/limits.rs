//! What a limit demands: heights that are not passed, reached, or had.

use super::heights::Heights;
use super::input::{Job, LimitInput};
use crate::failure::{Code, Failure, Result, together};
use crate::geometry::Point;
use crate::quantity::{Elevation, Length, Typed, feet_and_inches};
use crate::survey::Survey;
use crate::survey::surface::Rules;

/// Which way a limit holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Bound {
    /// The finish stays at or below.
    AtMost,
    /// The finish stays at or above.
    AtLeast,
    /// The finish has the height.
    Exactly,
}

impl Bound {
    /// In words.
    pub(super) const fn word(self) -> &'static str {
        match self {
            Self::AtMost => "at most",
            Self::AtLeast => "at least",
            Self::Exactly => "exactly",
        }
    }
}

impl LimitInput {
    /// Which way it holds, and at what height.
    pub(super) fn bound(&self, heights: Heights) -> Result<(Bound, Elevation)> {
        let most = self.at_most.is_some() || self.at_most_rod.is_some();
        let least = self.at_least.is_some() || self.at_least_rod.is_some();
        let exactly = self.exactly.is_some() || self.exactly_rod.is_some();
        if u8::from(most) + u8::from(least) + u8::from(exactly) > 1 {
            let path = if most && least { "at_least" } else { "exactly" };
            return Err(Failure::new(Code::Contradiction, path)
                .written(together(&[("at_most", most), ("at_least", least), ("exactly", exactly)]))
                .allowed("one of at_most, at_least, exactly")
                .remedy("keep one; write a second limit for the other"));
        }
        let (bound, elevation, rod, paths) = if least {
            (Bound::AtLeast, &self.at_least, &self.at_least_rod, ["at_least", "at_least_rod"])
        } else if exactly {
            (Bound::Exactly, &self.exactly, &self.exactly_rod, ["exactly", "exactly_rod"])
        } else {
            (Bound::AtMost, &self.at_most, &self.at_most_rod, ["at_most", "at_most_rod"])
        };
        Ok((bound, heights.given(elevation, rod, paths)?))
    }
}

impl LimitInput {
    /// Refuses a limit without a place, or farther from the work than the old slab is extended to: the finish is not there.
    pub(super) fn placed(&self, survey: &Survey) -> Result<()> {
        if self.at.is_empty() {
            return Err(Failure::new(Code::EmptyList, "at")
                .written("no places")
                .allowed("at least one place")
                .remedy("say where it is"));
        }
        let farthest = Rules::DEFAULT.beyond_farthest;
        for (index, place) in self.at.iter().enumerate() {
            let at = Point::new(place.x.value.base(), place.y.value.base());
            let outside = survey.outline().region().distance_outside(at);
            if outside.is_nan() || outside > farthest {
                let say = |metres: f64| feet_and_inches(Length::from_base(metres), 8);
                return Err(Failure::new(Code::OutOfRange, format!("at[{index}]"))
                    .written(format!("{}, {}", place.x.written, place.y.written))
                    .allowed(format!("inside the outline, or up to {} outside", say(farthest)))
                    .remedy("check the place: x from the left, y from the front"));
            }
        }
        Ok(())
    }
}

impl Job {
    /// Whether a limit is demanded, firmly or by weight, counts only where the finish is solved for; the last two only where it is
    /// demanded.
    pub(super) fn no_idle_limits(&self) -> Result<()> {
        let solved = self.finish.solve.is_some();
        for (index, limit) in self.limits.iter().enumerate() {
            let demanded = solved && !limit.judged_only;
            let idle = [
                ("judged_only", limit.judged_only && !solved, "true".to_owned()),
                ("firm", limit.firm && !demanded, "true".to_owned()),
                ("weight", limit.weight.is_some() && !demanded, limit.weight.unwrap_or_default().to_string()),
            ];
            if let Some((key, _, written)) = idle.into_iter().find(|(_, idle, _)| *idle) {
                return Err(Failure::new(Code::Contradiction, format!("limits[{index}].{key}"))
                    .written(written)
                    .allowed("for a limit that is demanded: where the finish is solved for")
                    .remedy("remove it, or let the finish be solved for"));
            }
        }
        Ok(())
    }
}
