//! Zones thinner than an unbonded overlay may be, under the finish of the job.

use crate::failure::{Failure, Result};
use crate::grade::finish::Finish;
use crate::grade::thin_zones::{AskedOfThinZones, Choice, Cure, Prices, ThinZone, ThinZones};
use crate::job::input::{Job, ThinZonesInput};
use crate::job::limits::Bound;
use crate::job::report::{FitReport, ThinZoneReport, ThinZonesReport, ZoneChoiceReport};
use crate::job::say;
use crate::note::Note;
use crate::quantity::{Elevation, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;

impl Job {
    /// The zones, and what must be known of them.
    pub(super) fn thin_zones_report(
        &self,
        survey: &Survey,
        finish: &Finish,
        fits: &[FitReport],
    ) -> Result<(Option<ThinZonesReport>, Vec<Note>)> {
        let Some(input) = &self.thin_zones else { return Ok((None, Vec::new())) };
        let found = ThinZones::of(survey, finish, &self.asked_of(input)).map_err(in_job)?;
        let report = ThinZonesReport {
            minimum: say::thickness(input.minimum.value),
            area: say::surface(found.area),
            lacking: say::body(found.lacking),
            zones: found.zones.iter().map(|zone| self.zone_report(zone, fits)).collect(),
            raising_breaks: found.raise_all.as_ref().map(|raise| breaks(raise, fits)).unwrap_or_default(),
            text: found.said(),
        };
        Ok((Some(report), found.notes()))
    }

    fn asked_of(&self, input: &ThinZonesInput) -> AskedOfThinZones {
        let mut asked = AskedOfThinZones::of(input.minimum.value);
        asked.bonded_minimum = input.bonded_minimum.as_ref().map(|given| given.value);
        asked.grind_at_most = input.grind_at_most.as_ref().map(|given| given.value);
        asked.new_thickness = input.new_thickness.as_ref().map(|given| given.value);
        if let Some(prices) = &self.prices {
            asked.prices = Prices {
                concrete: prices.concrete.as_ref().map(|given| given.value),
                bonding: prices.bonding.as_ref().map(|given| given.value),
                grinding: prices.grinding_area.as_ref().map(|given| given.value),
                breaking_out: prices.breaking_out.as_ref().map(|given| given.value),
            };
        }
        asked
    }

    fn zone_report(&self, zone: &ThinZone, fits: &[FitReport]) -> ThinZoneReport {
        let elevation = Elevation::from_base(0.0);
        let thinnest =
            SlabPlace { x: zone.thinnest.x, y: zone.thinnest.y, elevation, shot: zone.shot.clone() };
        let open = zone.choices.iter().filter(|choice| breaks(choice, fits).is_empty());
        let priced = open.filter_map(|choice| Some((choice.cure, choice.price_if_enough()?)));
        let cheapest = priced.min_by(|(_, a), (_, b)| a.base().total_cmp(&b.base())).map(|(cure, _)| cure);
        let choice = |choice: &Choice| ZoneChoiceReport {
            cure: choice.cure.word().to_owned(),
            verdict: choice.enough.verdict().word().to_owned(),
            concrete: choice.concrete.map(say::body),
            money: choice.money.map(|money| say::money(money, self.currency())),
            breaks: breaks(choice, fits),
            cheapest: cheapest == Some(choice.cure),
            text: choice.said.clone(),
        };
        ThinZoneReport {
            name: zone.name.clone(),
            area: say::surface(zone.area),
            lacking: say::body(zone.lacking),
            deficit: say::fine_at_most(zone.deficit),
            thinnest_at: say::place(&thinnest),
            beyond_shots: zone.deficit_measured.is_none(),
            choices: zone.choices.iter().map(choice).collect(),
        }
    }
}

/// The heights that raising the whole finish would pass.
fn breaks(choice: &Choice, fits: &[FitReport]) -> Vec<String> {
    let (Cure::Raise, Some(rise)) = (choice.cure, choice.depth) else { return Vec::new() };
    let room = |fit: &FitReport| fit.below.as_ref().map_or(f64::INFINITY, |below| 1e-3 * below.si);
    let passed = |fit: &&FitReport| fit.bound != Bound::AtLeast.word() && room(fit) < rise.base() - 1e-9;
    fits.iter().filter(passed).map(|fit| fit.name.clone()).collect()
}

/// The paths of the zones in the words of the job.
fn in_job(mut failure: Box<Failure>) -> Box<Failure> {
    failure.path = match failure.path.as_str() {
        "concrete_price" => "prices.concrete".to_owned(),
        "bonding_price" => "prices.bonding".to_owned(),
        "grinding_price" => "prices.grinding_area".to_owned(),
        "breaking_out_price" => "prices.breaking_out".to_owned(),
        path => format!("thin_zones.{path}"),
    };
    failure
}
