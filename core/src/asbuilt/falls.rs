//! The slope that each plane of the plan got.

use super::words::in_ten_feet;
use crate::geometry::{Fit, Plane, Point, Region};
use crate::grade::finish::Finish;
use crate::quantity::{Length, Slope, Typed};
use crate::survey::Survey;

/// A slope below this is none: a hair in a hundred metres.
const LEVEL: f64 = 1e-9;

/// A plane of the plan with the slope that was built.
#[derive(Clone, Debug, PartialEq)]
pub struct FacetFall {
    /// The name of the facet; none under one plane.
    pub name: Option<String>,
    /// How many shots lie on it.
    pub shots: usize,
    /// The planned fall.
    pub planned: Slope,
    /// The fall got the way water was to run, of the plane of least squares through its shots; negative where it rises. On a level
    /// plan the steepest fall. None of shots that span no plane.
    pub got: Option<Slope>,
    /// The steepest fall got, any way.
    pub steepest: Option<Slope>,
    /// Root of the mean squared distance of the shots from their plane.
    pub unevenness: Option<Length>,
}

impl FacetFall {
    /// The planes of a finish as the shots of a new floor have them.
    #[must_use]
    pub fn of(new: &Survey, finish: &Finish) -> Vec<Self> {
        let shots: Vec<[f64; 3]> =
            new.shots().each().map(|(_, [x, y], z)| [x.base(), y.base(), z.base()]).collect();
        if let Some(plane) = finish.plane() {
            return vec![Self::on(None, new.outline().region(), plane, &shots)];
        }
        let facets = finish.facets().iter().enumerate();
        facets
            .map(|(number, facet)| {
                Self::on(Some(finish.facet_name(number)), facet.region(), facet.plane(), &shots)
            })
            .collect()
    }

    fn on(name: Option<String>, region: &Region, plan: &Plane, shots: &[[f64; 3]]) -> Self {
        let on = |shot: &&[f64; 3]| region.contains(Point::new(shot[0], shot[1]));
        let shots: Vec<[f64; 3]> = shots.iter().filter(on).copied().collect();
        let fit = Fit::to(&shots).ok();
        let steepest = plan.steepest();
        let along = |got: &Plane| {
            if steepest > LEVEL {
                (got.b() * plan.b() + got.c() * plan.c()) / steepest
            } else {
                got.steepest()
            }
        };
        Self {
            name,
            shots: shots.len(),
            planned: Slope::from_base(steepest),
            got: fit.map(|fit| Slope::from_base(along(&fit.plane))),
            steepest: fit.map(|fit| Slope::from_base(fit.plane.steepest())),
            unevenness: fit.map(|fit| Length::from_base(fit.rms)),
        }
    }

    /// In words: `falls 1 1/8 in over 10 ft, planned 1 1/4 in over 10 ft`.
    #[must_use]
    pub fn said(&self) -> String {
        let planned = if self.planned.base() > LEVEL {
            format!("planned {}", in_ten_feet(self.planned))
        } else {
            "planned level".to_owned()
        };
        match self.got {
            None => format!("fall untold, {} shots span no plane; {planned}", self.shots),
            Some(got) if got.base() < 0.0 => {
                format!(
                    "rises {} the way it was to fall, {planned}",
                    in_ten_feet(Slope::from_base(-got.base()))
                )
            }
            Some(got) => format!("falls {}, {planned}", in_ten_feet(got)),
        }
    }

    /// Whether water was to run one way and runs another.
    #[must_use]
    pub fn runs_back(&self) -> bool {
        self.planned.base() > LEVEL && self.got.is_some_and(|got| got.base() <= 0.0)
    }
}
