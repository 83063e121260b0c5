//! Doors, sills and other heights that the finish must keep to.

use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::job::finish::{Datum, height};
use crate::job::input::{Job, LimitInput};
use crate::job::report::FitReport;
use crate::job::say;
use crate::quantity::{Elevation, Length, Typed};

impl Job {
    pub(super) fn fits(&self, finish: &Finish, datum: Datum) -> Result<Vec<FitReport>> {
        let fits = self.limits.iter().enumerate();
        fits.map(|(index, limit)| {
            fit(limit, finish, datum).map_err(|failure| failure.under(&format!("limits[{index}]")))
        })
        .collect()
    }
}

fn fit(limit: &LimitInput, finish: &Finish, datum: Datum) -> Result<FitReport> {
    let most = height(&limit.at_most, &limit.at_most_rod, datum, "at_most")?;
    let over = |(x, y): (Length, Length)| -> Elevation { finish.height_at(x, y) };
    let highest = limit
        .at
        .iter()
        .map(|place| over((place.x.value, place.y.value)).base())
        .fold(f64::NEG_INFINITY, f64::max);
    if limit.at.is_empty() {
        return Err(Failure::new(Code::EmptyList, "at")
            .written("no places")
            .allowed("at least one place")
            .remedy("say where it is"));
    }
    let below = most - Elevation::from_base(highest);
    Ok(FitReport {
        name: limit.name.clone(),
        called: limit.called.clone().unwrap_or_else(|| "limit".to_owned()),
        below: say::fine_thickness(below),
        kept: below.base() >= -1.0e-9,
    })
}
