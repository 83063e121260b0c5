//! The turn and the shift in plan.

use super::{Known, refusal};
use crate::failure::Result;
use crate::geometry::Point;

/// Known points nearer than this to one another fix no direction, in metres.
pub(super) const NEAREST: f64 = 0.1;

/// Within so much of the tolerance rounding decides.
const ROUNDING: f64 = 1e-9;

/// A turn about the middles of the known points.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fit {
    pub(super) from: Point,
    pub(super) to: Point,
    pub(super) cos: f64,
    pub(super) sin: f64,
}

/// Sums over known points about their middles.
struct Sums {
    from: Point,
    to: Point,
    /// Squares of the distances from the middle in both systems.
    squares: [f64; 2],
    /// Products along and across, for the turn; and the same with y of the points turned round.
    turned: [f64; 2],
    mirrored: [f64; 2],
}

impl Sums {
    fn of(known: &[Known]) -> Self {
        let count = known.len().max(1) as f64;
        let middle = |place: fn(&Known) -> Point| {
            // About the first, so that coordinates far from the origin cost no digits.
            let first = known.first().map(place).unwrap_or_default();
            let sum = known.iter().map(place).fold(Point::default(), |sum, at| {
                Point::new(sum.x + (at.x - first.x), sum.y + (at.y - first.y))
            });
            Point::new(first.x + sum.x / count, first.y + sum.y / count)
        };
        let (from, to) = (middle(|known| known.from), middle(|known| known.to));
        let mut sums = Self { from, to, squares: [0.0; 2], turned: [0.0; 2], mirrored: [0.0; 2] };
        for known in known {
            let (ax, ay) = (known.from.x - from.x, known.from.y - from.y);
            let (bx, by) = (known.to.x - to.x, known.to.y - to.y);
            sums.squares[0] += ax * ax + ay * ay;
            sums.squares[1] += bx * bx + by * by;
            sums.turned[0] += ax * bx + ay * by;
            sums.turned[1] += ax * by - ay * bx;
            sums.mirrored[0] += ax * bx - ay * by;
            sums.mirrored[1] += ax * by + ay * bx;
        }
        sums
    }

    /// Root of the mean squared residual of the best turn, and of the best turn of the mirrored points; in the
    /// length of the system they go to, the other stretched by `scale`.
    fn rms(&self, scale: f64, count: usize) -> [f64; 2] {
        [self.turned, self.mirrored].map(|[along, across]| {
            let left = scale * scale * self.squares[0] + self.squares[1] - 2.0 * scale * along.hypot(across);
            (left.max(0.0) / count as f64).sqrt()
        })
    }
}

impl Fit {
    /// The turn of least squares; refused where it leaves more than the tolerance.
    pub(super) fn of(known: &[Known], tolerance: f64) -> Result<Self> {
        let sums = Sums::of(known);
        let spread = sums.squares.map(|square| (square / known.len().max(1) as f64).sqrt());
        refusal::check_apart(known, spread)?;
        let [along, across] = sums.turned;
        let size = along.hypot(across);
        // Where both products are nothing every turn is as good: the points do not lie alike in any way.
        let (cos, sin) = if size > 0.0 { (along / size, across / size) } else { (1.0, 0.0) };
        let fit = Self { from: sums.from, to: sums.to, cos, sin };
        let allowed = tolerance + ROUNDING;
        if known.len() == 2 {
            return if (spread[0] - spread[1]).abs() * 2.0 <= allowed {
                Ok(fit)
            } else {
                Err(refusal::distances(known, tolerance))
            };
        }
        let worst = known
            .iter()
            .map(|known| (fit.off(known), known))
            .reduce(|best, next| if next.0 > best.0 { next } else { best });
        match worst {
            Some((off, _)) if off <= allowed => Ok(fit),
            Some((off, worst)) => {
                let scale = spread[1] / spread[0];
                let [turned, mirrored] = sums.rms(scale, known.len());
                // A mirror leaves a small part of what the turn leaves, whatever the scale.
                if mirrored <= allowed && mirrored * 4.0 < turned {
                    return Err(refusal::mirrored(known, scale));
                }
                Err(refusal::places(worst, off, tolerance, scale, without_worst(known, allowed)))
            }
            None => Ok(fit),
        }
    }

    /// How far a known point is from where it is brought to.
    fn off(&self, known: &Known) -> f64 {
        let (x, y) = (known.from.x - self.from.x, known.from.y - self.from.y);
        let brought =
            Point::new(self.to.x + self.cos * x - self.sin * y, self.to.y + self.sin * x + self.cos * y);
        brought.distance(known.to)
    }
}

/// The one point without which the others agree, if there is exactly one. Of three it cannot be told.
fn without_worst(known: &[Known], allowed: f64) -> Option<&str> {
    if known.len() < 4 {
        return None;
    }
    let mut mended = known.iter().enumerate().filter(|(left_out, _)| {
        let others: Vec<Known> = known
            .iter()
            .enumerate()
            .filter(|(at, _)| at != left_out)
            .map(|(_, known)| known.clone())
            .collect();
        let sums = Sums::of(&others);
        let [along, across] = sums.turned;
        let size = along.hypot(across);
        let fit = Fit { from: sums.from, to: sums.to, cos: along / size, sin: across / size };
        size > 0.0 && others.iter().all(|known| fit.off(known) <= allowed)
    });
    let (_, only) = mended.next()?;
    mended.next().is_none().then_some(only.name.as_str())
}
