//! Raising the whole finish.

use super::asked::AskedOfThinZones;
use super::choice::{Choice, Cure, Enough};
use super::say;
use super::zone::ThinZone;
use crate::grade::thickness_field::ThicknessField;
use crate::quantity::{Area, Length, Typed, Volume};

/// Lacks within this of one another are cured together, in metres.
const SAME: f64 = 1e-9;

/// Raising the finish over a whole work.
pub(super) struct Raising<'a> {
    overlay: &'a ThicknessField<'a>,
    /// The least thickness of the overlay.
    least: f64,
    /// What every zone lacks at its thinnest place, in their order.
    deficits: &'a [Length],
    /// The same, rising.
    rising: Vec<f64>,
}

impl<'a> Raising<'a> {
    /// Of zones that lack so much.
    pub(super) fn of(overlay: &'a ThicknessField<'a>, deficits: &'a [Length]) -> Self {
        let mut rising: Vec<f64> = deficits.iter().map(|deficit| deficit.base()).collect();
        rising.sort_unstable_by(f64::total_cmp);
        Self { overlay, least: overlay.least().value, deficits, rising }
    }

    /// Raising by what a zone lacks at its thinnest place: it cures every zone that lacks no more.
    pub(super) fn for_zone(&self, zone: &ThinZone, asked: &AskedOfThinZones) -> Choice {
        self.by(zone.deficit, &format!("{}{}", self.cures(zone.deficit), measured(zone)), asked)
    }

    /// Raising until no zone is left.
    pub(super) fn for_all(&self, rise: Length, asked: &AskedOfThinZones) -> Choice {
        self.by(rise, "no thin zone is left", asked)
    }

    /// Which zones a rise cures, by number.
    fn cures(&self, rise: Length) -> String {
        let enough = |deficit: f64| deficit <= rise.base() + SAME;
        let all = self.rising.len();
        match self.rising.partition_point(|&deficit| enough(deficit)) {
            1 if all == 1 => "cures it".to_owned(),
            cured if cured == all => format!("cures all {all} zones"),
            cured if cured > NAMED => format!("cures {cured} of {all} zones"),
            cured => {
                let numbers = (1..).zip(self.deficits).filter(|(_, deficit)| enough(deficit.base()));
                let numbers: Vec<String> =
                    numbers.map(|(number, _): (usize, _)| number.to_string()).collect();
                let (zones, only) = if cured == 1 { ("zone", " only") } else { ("zones", "") };
                format!("cures {zones} {}{only}", numbers.join(", "))
            }
        }
    }

    /// The concrete a rise takes: all of the area by the rise, less what of it stays under the old slab that stands above the finish.
    fn concrete(&self, rise: f64) -> Volume {
        let high = self.overlay.high_spots();
        // What still stands above the risen finish: nothing, but where the finish cuts deep into the old slab.
        let still = if self.least < -rise { self.overlay.volume_missing_to(-rise) } else { 0.0 };
        Volume::from_base(self.overlay.area() * rise - (high - still))
    }

    fn by(&self, rise: Length, cures: &str, asked: &AskedOfThinZones) -> Choice {
        let concrete = self.concrete(rise.base());
        let money = asked.prices.of_concrete(concrete);
        let said = format!(
            "raise the whole finish by {}: {cures}; {} more concrete; {}; enough where sills, doors and steps allow it",
            say::up(rise),
            say::yards(concrete),
            say::cost(money),
        );
        Choice {
            cure: Cure::Raise,
            depth: Some(rise),
            area: Area::from_base(self.overlay.area()),
            concrete: Some(concrete),
            joint: None,
            money,
            enough: Enough::Yes,
            said,
        }
    }
}

/// So many zones are named.
const NAMED: usize = 6;

/// What would do if the ground beyond the shots did not count.
fn measured(zone: &ThinZone) -> String {
    match zone.deficit_measured {
        None => " (all of it beyond the shots)".to_owned(),
        Some(measured) if measured.base() < zone.deficit.base() - SAME => {
            format!(" ({} would do between the shots)", say::up(measured))
        }
        Some(_) => String::new(),
    }
}
