//! Moisture and vapour before a floor is covered: tests, what they say, and how long concrete dries.
//!
//! Vapour from below does no harm to a cement overlay: what is laid or brushed on it suffers, coverings, sealers and coatings. A sheet
//! under an unbonded overlay, lapped and taped, stops the vapour of the old slab; the water of the new concrete itself still has to dry out.

use super::thickness::SLAB;
use crate::failure::{Code, Failure, Place, Result, check};
use crate::operation::scalar::Word;
use crate::quantity::units::{FOOT, INCH};
use crate::quantity::{Area, Humidity, Length, Mass, Range, Time, Typed, VapourEmission, WaterCementRatio};

/// The area of a floor: up to 100 hectares.
pub const AREA: Range = Range::positive_to(1.0e6);
/// A relative humidity that is read, and a limit to it.
pub const HUMIDITY: Range = Range::positive_to(1.0);
/// The water-cement ratios of the published drying times.
pub const WATER_CEMENT: Range = Range::closed(0.4, 1.0);
/// What a dish gains: up to 10 kg.
pub const GAIN: Range = Range::closed(0.0, 10.0);
/// The area under a dish: up to 10 m2.
pub const DISH: Range = Range::positive_to(10.0);
/// How long a dish stands: up to 100 days.
pub const STANDS: Range = Range::positive_to(100.0 * DAY);

const DAY: f64 = 86_400.0;
/// Three probes for the first 1,000 ft2, one for each further 1,000 ft2.
const FIRST: i64 = 3;
const FOR_EACH: f64 = 1000.0 * FOOT * FOOT;
/// Days for each inch, from one side, to about 85 %.
const DAYS_PER_INCH: [f64; 2] = [28.0, 30.0];
/// Days to 3 lb in 24 h over 1,000 ft2, of a slab 4 in thick, by its water-cement ratio.
const DAYS_BY_WATER: [(f64, f64); 7] =
    [(0.4, 46.0), (0.5, 82.0), (0.6, 117.0), (0.7, 130.0), (0.8, 148.0), (0.9, 166.0), (1.0, 190.0)];

crate::choice! {
    /// Which sides a slab dries from.
    pub enum Drying {
        /// From its top: on the ground, on a sheet, on an old slab.
        OneSide = "one side",
        /// From top and bottom: a slab with air under it.
        TwoSides = "two sides",
    }
}

crate::choice! {
    /// What readings say.
    pub enum Dryness {
        /// Every reading is within the maker's limit, and there are enough of them.
        Enough = "dry enough",
        /// One reading is over the limit.
        TooDamp = "too damp",
        /// Within the limit, but fewer readings than the area asks for.
        TestMore = "test more",
        /// No limit was given: it is the maker's of what goes on the floor.
        AskTheMaker = "ask the maker",
    }
}

/// Probes for an area.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Probes {
    /// How many.
    pub count: i64,
    /// How deep each hole is.
    pub depth: Length,
}

/// Humidity probes: `3` for the first 1,000 ft2 and one for each further 1,000 ft2 or part of it; at 40 % of the thickness where a slab dries
/// from one side, at 20 % where from two.
///
/// # Errors
/// A value outside its range.
pub fn probes(area: Area, thickness: Length, drying: Word<Drying>) -> Result<Probes> {
    let count = count(area)?;
    let thickness = check("thickness", thickness, SLAB)?.base();
    let share = match drying.0 {
        Drying::OneSide => 0.4,
        Drying::TwoSides => 0.2,
    };
    Ok(Probes { count, depth: Length::from_base(share * thickness) })
}

/// How many probes an area takes.
fn count(area: Area) -> Result<i64> {
    let area = check("area", area, AREA)?.base();
    // A hair over a whole thousand is rounding.
    let further = (area / FOR_EACH - 1.0 - 1e-9).ceil().max(0.0);
    Ok(FIRST + further as i64)
}

/// What readings of humidity say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Damp {
    /// The highest reading: it governs.
    pub highest: Humidity,
    /// What it says.
    pub verdict: Dryness,
    /// How many probes the area takes; none where it is not given.
    pub wanted: Option<i64>,
}

/// Readings of relative humidity against the limit of the maker of what goes on the floor: each has to be within it.
///
/// # Errors
/// - `EMPTY_LIST`: no reading. Path: `readings`.
/// - A value outside its range.
pub fn judged(readings: &[Humidity], limit: Option<Humidity>, area: Option<Area>) -> Result<Damp> {
    let mut highest: f64 = 0.0;
    for (index, reading) in readings.iter().enumerate() {
        let reading = check("readings.humidity", *reading, HUMIDITY);
        highest = highest.max(reading.map_err(|failure| failure.at(Place::Index(index)))?.base());
    }
    if readings.is_empty() {
        return Err(Failure::new(Code::EmptyList, "readings")
            .written("no readings")
            .allowed("at least one reading")
            .remedy("give what the probes read"));
    }
    let limit = limit.map(|limit| check("limit", limit, HUMIDITY)).transpose()?;
    let wanted = area.map(count).transpose()?;
    let few = wanted.is_some_and(|wanted| wanted > readings.len() as i64);
    let verdict = match limit {
        None => Dryness::AskTheMaker,
        Some(limit) if highest > limit.base() + 1e-9 => Dryness::TooDamp,
        Some(_) if few => Dryness::TestMore,
        Some(_) => Dryness::Enough,
    };
    Ok(Damp { highest: Humidity::from_base(highest), verdict, wanted })
}

/// How long concrete dries from one side in good air, after curing ends, to about 85 % of relative humidity: 28 to 30 days for each inch.
///
/// # Errors
/// A thickness outside its range.
pub fn drying_time(thickness: Length) -> Result<[Time; 2]> {
    let inches = check("thickness", thickness, SLAB)?.base() / INCH;
    Ok(DAYS_PER_INCH.map(|days| Time::from_base(days * inches * DAY)))
}

/// How long a slab 4 in thick dries from one side until it gives off 3 lb of vapour in 24 h over 1,000 ft2, straight between the published
/// ratios.
///
/// # Errors
/// A ratio outside its range.
pub fn drying_time_by_water(water_cement: WaterCementRatio) -> Result<Time> {
    let ratio = check("water_cement", water_cement, WATER_CEMENT)?.base();
    let span = DAYS_BY_WATER.windows(2).find(|pair| ratio <= pair[1].0);
    let days = span.map_or(DAYS_BY_WATER[6].1, |pair| {
        let ((from, least), (to, most)) = (pair[0], pair[1]);
        least + (most - least) * (ratio - from) / (to - from)
    });
    Ok(Time::from_base(days * DAY))
}

/// The vapour that a dish of calcium chloride took up: `emission = gain / (area x time)`.
///
/// # Errors
/// A value outside its range.
pub fn vapour_emission(gain: Mass, area: Area, time: Time) -> Result<VapourEmission> {
    let gain = check("gain", gain, GAIN)?.base();
    let area = check("area", area, DISH)?.base();
    let time = check("time", time, STANDS)?.base();
    Ok(VapourEmission::from_base(gain / (area * time)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::read;

    #[test]
    fn probes_by_area() {
        let of =
            |area: &str| probes(read(area).unwrap(), read("4 in").unwrap(), Word(Drying::OneSide)).unwrap();
        let wanted = [
            ("10 ft2", 3),
            ("1000 ft2", 3),
            ("1001 ft2", 4),
            ("2000 ft2", 4),
            ("2000.5 ft2", 5),
            ("185.80608 m2", 4),
        ];
        for (area, count) in wanted {
            assert_eq!(of(area).count, count, "{area}");
        }
        assert!((of("9 ft2").depth.base() - 1.6 * INCH).abs() < 1e-12);
        let two = probes(read("9 ft2").unwrap(), read("6 in").unwrap(), Word(Drying::TwoSides)).unwrap();
        assert!((two.depth.base() - 1.2 * INCH).abs() < 1e-12);
        assert_eq!(
            probes(read("0 ft2").unwrap(), read("6 in").unwrap(), Word(Drying::OneSide)).unwrap_err().path,
            "area"
        );
    }

    #[test]
    fn the_wettest_probe_governs() {
        let say = |readings: &[f64], limit: Option<f64>, area: Option<&str>| {
            let readings: Vec<Humidity> =
                readings.iter().map(|reading| Humidity::from_base(*reading)).collect();
            judged(&readings, limit.map(Humidity::from_base), area.map(|area| read(area).unwrap())).unwrap()
        };
        assert_eq!(say(&[0.7, 0.8, 0.75], Some(0.8), Some("900 ft2")).verdict, Dryness::Enough);
        assert_eq!(say(&[0.7, 0.81, 0.75], Some(0.8), Some("900 ft2")).verdict, Dryness::TooDamp);
        assert_eq!(say(&[0.7, 0.8, 0.75], Some(0.8), Some("1500 ft2")).verdict, Dryness::TestMore);
        // Too damp is too damp, however few were read.
        assert_eq!(say(&[0.9], Some(0.8), Some("1500 ft2")).verdict, Dryness::TooDamp);
        let open = say(&[0.9, 0.6], None, None);
        assert_eq!((open.verdict, open.wanted), (Dryness::AskTheMaker, None));
        assert!((open.highest.base() - 0.9).abs() < 1e-15);
        let wrong = [Humidity::from_base(0.8), Humidity::from_base(1.2)];
        let failure = judged(&wrong, None, None).unwrap_err();
        assert_eq!((failure.path.as_str(), failure.place), ("readings.humidity", Place::Index(1)));
        assert_eq!(judged(&[], None, None).unwrap_err().code, Code::EmptyList);
    }

    #[test]
    fn drying_grows_with_thickness_and_water() {
        let days =
            |thickness: &str| drying_time(read(thickness).unwrap()).unwrap().map(|time| time.base() / DAY);
        let [least, greatest] = days("4 in");
        assert!((least - 112.0).abs() < 1e-9 && (greatest - 120.0).abs() < 1e-9);
        let by = |ratio: f64| drying_time_by_water(WaterCementRatio::from_base(ratio)).unwrap().base() / DAY;
        for (ratio, days) in DAYS_BY_WATER {
            assert!((by(ratio) - days).abs() < 1e-9);
        }
        assert!((by(0.45) - 64.0).abs() < 1e-9);
        let mut before = 0.0;
        for hundredths in 40..=100 {
            let now = by(f64::from(hundredths) / 100.0);
            assert!(now > before);
            before = now;
        }
        assert!(drying_time_by_water(WaterCementRatio::from_base(0.39)).is_err());
        assert!(drying_time_by_water(WaterCementRatio::from_base(1.01)).is_err());
    }

    #[test]
    fn a_dish_is_mass_over_area_and_time() {
        let rate =
            vapour_emission(read("3 lb").unwrap(), read("10 ft2").unwrap(), read("2400 h").unwrap()).unwrap();
        let wanted: VapourEmission = read("3 lb/1000 ft2/24 h").unwrap();
        assert!((rate.base() - wanted.base()).abs() < 1e-12 * wanted.base());
        let metric: VapourEmission = read("14.647282909 g/m2/24 h").unwrap();
        assert!((rate.base() - metric.base()).abs() < 1e-7 * metric.base());
        assert_eq!(
            vapour_emission(read("1 g").unwrap(), read("1 ft2").unwrap(), read("0 h").unwrap())
                .unwrap_err()
                .path,
            "time"
        );
    }
}
