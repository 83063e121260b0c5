//! All zones under the minimum.

use super::asked::AskedOfThinZones;
use super::choice::Choice;
use super::overlay::Overlay;
use super::raise::Raising;
use super::zone::{Basics, ThinZone};
use super::{notes, say};
use crate::failure::Result;
use crate::grade::finish::Finish;
use crate::grade::thickness_shapes::ThinParts;
use crate::note::Note;
use crate::quantity::{Area, Length, Money, Typed, Volume};
use crate::survey::Survey;

/// The zones thinner than the unbonded minimum.
#[derive(Clone, Debug, PartialEq)]
pub struct ThinZones {
    /// What was asked.
    pub asked: AskedOfThinZones,
    /// The area of all that is thinner.
    pub area: Area,
    /// What all of it lacks to the minimum.
    pub lacking: Volume,
    /// The zones, the largest first.
    pub zones: Vec<ThinZone>,
    /// The area of zones under a square millimetre, which are not listed.
    pub left_out: Area,
    /// Raising the whole finish until nothing is thinner; none where nothing is.
    pub raise_all: Option<Choice>,
}

/// Zones smaller than this are crumbs: they count, but nobody could mark them.
const CRUMB: f64 = 1e-6;

impl ThinZones {
    /// The zones under a minimum, and what may be done about each.
    ///
    /// ```
    /// use overslab::grade::finish::Finish;
    /// use overslab::grade::thin_zones::{AskedOfThinZones, Cure, ThinZones};
    /// use overslab::operation::record::Record;
    /// use overslab::quantity::read;
    /// use overslab::survey::Survey;
    ///
    /// // Invented: a shed floor that rises 2 in towards its right, under a level finish.
    /// let survey = Survey::from_json(serde_json::json!({
    ///     "outline": {"sides": [{"length": "20 ft"}, {"length": "10 ft"}, {"length": "20 ft"}, {"length": "10 ft"}]},
    ///     "grid": {"columns": ["0 ft", "20 ft"], "rows": ["0 ft", "10 ft"],
    ///         "elevations": ["8 ft", "8 ft 2 in", "8 ft", "8 ft 2 in"]}
    /// }))?;
    /// let finish = Finish::level(read("8 ft 4 in")?)?;
    /// let mut asked = AskedOfThinZones::of(read("3 in")?);
    /// asked.grind_at_most = Some(read("1 in")?);
    /// asked.prices.concrete = Some(read("162 /yd3")?);
    /// asked.prices.grinding = Some(read("4 /ft2")?);
    /// let found = ThinZones::of(&survey, &finish, &asked)?;
    /// // The right half is thinner: 100 ft2 that lack 1 in at most, 1/2 in on average.
    /// let [zone] = found.zones.as_slice() else { panic!("one zone") };
    /// let grinding = zone.choice(Cure::Grind).and_then(|choice| choice.money).map(|money| money.value);
    /// assert!((grinding.unwrap_or(0.0) - (400.0 + 162.0 * 100.0 / 24.0 / 27.0)).abs() < 1e-6);
    /// // Raising by 1 in takes four times the concrete and no work on the old slab.
    /// assert_eq!(zone.cheapest().map(|choice| choice.cure), Some(Cure::Raise));
    /// # Ok::<(), Box<overslab::failure::Failure>>(())
    /// ```
    ///
    /// # Errors
    /// - `NOT_FINITE`, `OUT_OF_RANGE`, `NEGATIVE`: a thickness, a depth or a price; a bonded minimum over the unbonded one. Paths:
    ///   `minimum`, `bonded_minimum`, `grind_at_most`, `new_thickness`, `concrete_price`, `bonding_price`, `grinding_price`,
    ///   `breaking_out_price`.
    /// - `FACETS_LEAVE_HOLE`: a finish that does not cover the work.
    pub fn of(survey: &Survey, finish: &Finish, asked: &AskedOfThinZones) -> Result<Self> {
        asked.check()?;
        let laid = finish.laid_over(survey.surface())?;
        let whole = laid.thickness()?;
        let found = ThinParts::of(&laid, asked.minimum)?;
        let parts: Vec<_> = found.parts.into_iter().filter(|part| part.part.area.base() >= CRUMB).collect();
        let lacking = |thickness: Length| asked.minimum - thickness;
        let deficits: Vec<Length> = parts.iter().map(|part| lacking(part.part.extreme.thickness)).collect();
        let raising = Raising::of(&whole, &deficits);
        let basics = Basics { asked, raising, overlay: Overlay::of(&laid) };
        let zones: Vec<ThinZone> =
            parts.into_iter().enumerate().map(|part| ThinZone::of(survey, part, &basics)).collect();
        let listed = zones.iter().map(|zone| zone.area.base()).collect::<crate::geometry::Sum>().value();
        let left_out = (found.area.base() - listed).max(0.0);
        // What the order of summing leaves is no zone.
        let left_out = if left_out > 1e-14 * whole.area() { left_out } else { 0.0 };
        let raise_all = (found.area.base() > 0.0).then(|| basics.raising.for_all(found.deficit, asked));
        let left_out = Area::from_base(left_out);
        Ok(Self { asked: *asked, area: found.area, lacking: found.volume, zones, left_out, raise_all })
    }

    /// The zones that a rise of the whole finish cures.
    pub fn cured_by(&self, rise: Length) -> impl Iterator<Item = &ThinZone> + '_ {
        self.zones.iter().filter(move |zone| zone.deficit.base() <= rise.base() + 1e-9)
    }

    /// What the zones cost together, each cured in the cheapest way that leaves the finish as it is; none where one of them has no
    /// such way with a price. Where boxes overlap it is less.
    #[must_use]
    pub fn zone_by_zone(&self) -> Option<Money> {
        if self.zones.is_empty() {
            return None;
        }
        let sum = |sum: Money, zone: &ThinZone| Some(sum + zone.cheapest_here()?);
        self.zones.iter().try_fold(Money::from_base(0.0), sum)
    }

    /// All of it in a few sentences.
    #[must_use]
    pub fn said(&self) -> String {
        let minimum = say::given(self.asked.minimum);
        let Some(raise) = &self.raise_all else { return format!("nowhere thinner than {minimum}") };
        let count = match self.zones.len() {
            1 => "1 zone is".to_owned(),
            count => format!("{count} zones are"),
        };
        let (area, lacking) = (say::square_feet(self.area), say::yards(self.lacking));
        let zone_by_zone = self.zone_by_zone().map_or_else(String::new, |money| {
            format!(" Zone by zone, each in the cheapest way without raising: {}.", say::amount(money))
        });
        format!(
            "{count} thinner than {minimum}: {area} that lack {lacking}. All at once: {}.{zone_by_zone}",
            raise.said
        )
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        notes::of(self)
    }
}
