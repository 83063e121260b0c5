//! The cost where high spots may be ground: concrete = area x least + integral of (t - least)+, ground = integral of (t - least)-,
//! with t = finish - old slab and the least thickness over the whole work. Both are convex in the unknowns, and their gradient
//! is exact: the area thicker than the least thickness and its first moments.

use super::layout::Layout;
use crate::failure::Result;
use crate::grade::finish::Finish;

/// What grinding does to the cost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Grinding {
    /// The least thickness that grinding restores, margin with it, in metres.
    pub(super) least: f64,
    /// The price of a ground volume over that of the same volume of concrete.
    pub(super) price: f64,
}

/// The plane that touches the cost at some unknowns: `cost >= at_none + slope . u`.
pub(super) struct Touch {
    pub(super) slope: Vec<f64>,
    pub(super) at_none: f64,
    /// The cost there.
    pub(super) value: f64,
    /// What the cost rises by for every metre of least thickness: the area that is thinner, paid as concrete and as ground.
    pub(super) by_least: f64,
}

/// The volumes of a finish with grinding.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Volumes {
    pub(super) concrete: f64,
    pub(super) ground: f64,
}

impl Grinding {
    /// The touching plane.
    pub(super) fn touching(&self, layout: &Layout<'_>, x: &[f64]) -> Result<Touch> {
        let finish = layout.finish(x)?;
        let laid = finish.laid_over(layout.survey.surface())?;
        let field = laid.thickness()?;
        let (mut over, mut area, mut thicker) = (0.0, 0.0, 0.0);
        let mut gradient = vec![0.0; layout.width()];
        for (part, above) in laid.parts().iter().zip(field.over(self.least)) {
            let [_, at_x, at_y] = layout.local(above.origin);
            let size = layout.size();
            let form = [
                above.area,
                above.area * at_x + above.moment_x / size,
                above.area * at_y + above.moment_y / size,
            ];
            let row = layout.row(part.facet.unwrap_or(0), form);
            gradient.iter_mut().zip(row).for_each(|(sum, share)| *sum += share);
            over += above.volume;
            thicker += above.area;
            area += part.ground.area();
        }
        let net = field.net() - area * self.least;
        let value = area * self.least + over + self.price * (over - net);
        // d(cost) = (1 + price) d(over) - price d(net).
        let slope: Vec<f64> = (gradient.iter().zip(layout.volume()))
            .map(|(over, net)| (1.0 + self.price) * over - self.price * net)
            .collect();
        let at: f64 = slope.iter().zip(x).map(|(slope, x)| slope * x).sum();
        let by_least = (1.0 + self.price) * (area - thicker);
        Ok(Touch { at_none: value - at, slope, value, by_least })
    }

    /// The volumes under a finish.
    pub(super) fn volumes(&self, layout: &Layout<'_>, finish: &Finish) -> Result<Volumes> {
        let laid = finish.laid_over(layout.survey.surface())?;
        let field = laid.thickness()?;
        let over: f64 = field.over(self.least).map(|above| above.volume).sum();
        let whole = laid.area() * self.least;
        Ok(Volumes { concrete: whole + over, ground: over - (field.net() - whole) })
    }
}
