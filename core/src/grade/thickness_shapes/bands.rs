//! Bands between successive levels.

use super::contours::spread;
use super::field::Field;
use super::levels::Levels;
use super::parts::Finder;
use super::rings::Shape;
use super::strip::Strip;
use crate::failure::Result;
use crate::geometry::Sum;
use crate::quantity::{Area, Share, Typed, Volume};

/// What lies between two successive levels.
#[derive(Clone, Debug, PartialEq)]
pub struct Band<Q> {
    /// The lower level, itself in the band; none for what is below all levels.
    pub from: Option<Q>,
    /// The upper level, itself in the next band; none for what is above all levels.
    pub to: Option<Q>,
    /// The area.
    pub area: Area,
    /// Its share of the whole.
    pub share: Share,
    /// The integral of the field over it: of a thickness the volume between old slab and finish, high spots taken off.
    pub volume: Volume,
    /// The connected parts, the largest first.
    pub parts: Vec<BandPart>,
}

/// One connected part of a band.
#[derive(Clone, Debug, PartialEq)]
pub struct BandPart {
    /// Its polygon.
    pub shape: Shape,
    /// Its area.
    pub area: Area,
    /// The integral of the field over it.
    pub volume: Volume,
}

impl<Q: Typed> Field<Q> {
    /// The bands between levels, rising. What is below the first or above the last level makes a band of its own, where there
    /// is any: together they are the whole.
    ///
    /// # Errors
    /// What the levels are refused for.
    pub fn bands(&self, levels: &Levels<Q>) -> Result<Vec<Band<Q>>> {
        let sheet = &self.sheet;
        let (least, greatest) = sheet.reach();
        let levels = levels.around(least, greatest, sheet.hair)?;
        let strips = strips(&levels, sheet.hair);
        let mut reaching = vec![Vec::new(); strips.len()];
        for triangle in 0..sheet.len() as u32 {
            for number in reached(&levels, &strips, sheet.values(triangle)) {
                reaching[number].push(triangle);
            }
        }
        let total = sheet.whole();
        let mut finder = Finder::new(sheet);
        let mut bands = Vec::new();
        for (strip, triangles) in strips.iter().zip(&reaching) {
            let is_open = !(strip.from.is_finite() && strip.to.is_finite());
            if is_open && triangles.is_empty() {
                continue;
            }
            let found = finder.parts(strip, triangles);
            let area = found.iter().map(|part| part.area).collect::<Sum>().value();
            let volume = found.iter().map(|part| part.integral).collect::<Sum>().value();
            let parts = found.into_iter().filter_map(|part| {
                let (area, volume) = (Area::from_base(part.area), Volume::from_base(part.integral));
                part.shape.map(|shape| BandPart { shape, area, volume })
            });
            bands.push(Band {
                from: level(strip.from),
                to: level(strip.to),
                area: Area::from_base(area),
                share: Share::from_base((area / total).max(0.0)),
                volume: Volume::from_base(volume),
                parts: parts.collect(),
            });
        }
        Ok(bands)
    }
}

/// A level where it is one, not an open end.
pub(super) fn level<Q: Typed>(level: f64) -> Option<Q> {
    level.is_finite().then(|| Q::from_base(level))
}

/// The strips below, between and above levels.
pub(super) fn strips(levels: &[f64], hair: f64) -> Vec<Strip> {
    let from = std::iter::once(f64::NEG_INFINITY).chain(levels.iter().copied());
    let to = levels.iter().copied().chain(std::iter::once(f64::INFINITY));
    from.zip(to).map(|(from, to)| Strip { from, to, hair }).collect()
}

/// The strips that a triangle with these values reaches into.
pub(super) fn reached<'a>(
    levels: &[f64],
    strips: &'a [Strip],
    values: [f64; 3],
) -> impl Iterator<Item = usize> + use<'a> {
    let hair = strips.first().map_or(0.0, |strip| strip.hair);
    let (low, high) = spread(values, hair);
    let first = levels.partition_point(|&level| level < low);
    let last = levels.partition_point(|&level| level <= high);
    (first..=last.min(strips.len().saturating_sub(1))).filter(move |&number| strips[number].reaches(values))
}
