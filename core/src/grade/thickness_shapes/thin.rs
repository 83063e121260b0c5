//! The parts thinner than a depth, with the old slab that stands above the finish in them and what is known of their ground.

use super::areas::{AreaPart, Side, between, told};
use super::field::Field;
use super::parts::{Finder, Part};
use super::sheet::Sheet;
use super::strip::Strip;
use crate::failure::Result;
use crate::geometry::{Sum, zero_line};
use crate::grade::finish::Laid;
use crate::grade::thickness_field::settled;
use crate::quantity::{Area, Length, Typed, Volume};
use crate::survey::surface::Ground;

/// All that is thinner than a depth.
#[derive(Clone, Debug)]
pub(in crate::grade) struct ThinParts {
    /// The area of all parts.
    pub(in crate::grade) area: Area,
    /// What all parts lack to the depth.
    pub(in crate::grade) volume: Volume,
    /// What the thinnest place of all lacks to the depth; nothing where no part is thinner.
    pub(in crate::grade) deficit: Length,
    /// The connected parts, the largest first; without those of which rounding left no polygon.
    pub(in crate::grade) parts: Vec<ThinPart>,
}

/// One connected part thinner than a depth.
#[derive(Clone, Debug)]
pub(in crate::grade) struct ThinPart {
    /// The part.
    pub(in crate::grade) part: AreaPart,
    /// The volume of old slab above the finish in it.
    pub(in crate::grade) high: Volume,
    /// The area of it beyond the shots.
    pub(in crate::grade) beyond: Area,
    /// The least thickness of it between the shots; none where it lies wholly beyond them.
    pub(in crate::grade) least_measured: Option<Length>,
}

impl ThinParts {
    /// The parts thinner than a depth above nothing, under a finish laid over a work.
    ///
    /// # Errors
    /// `NOT_FINITE`: a finish that is not finite.
    pub(in crate::grade) fn of(laid: &Laid<'_>, depth: Length) -> Result<Self> {
        let field = Field::thickness_of(laid)?;
        let (sheet, level) = (&field.sheet, depth.base());
        let strip = Strip::below(level, sheet.hair);
        let reaching = (0..sheet.len() as u32).filter(|&triangle| strip.reaches(sheet.values(triangle)));
        let found = Finder::new(sheet).parts(&strip, &reaching.collect::<Vec<_>>());
        let beyond: Vec<bool> =
            laid.parts().iter().flat_map(|part| part.ground.triangles()).map(is_beyond).collect();
        let deficit = if found.is_empty() { 0.0 } else { level - sheet.reach().0 };
        let (mut area, mut volume) = (Sum::new(), Sum::new());
        let mut parts = Vec::with_capacity(found.len());
        for part in found {
            let lacking = between(sheet, &part, level, Side::Thinner);
            area.add(part.area);
            volume.add(lacking);
            let high = Volume::from_base(above_finish(sheet, &part));
            let [extended, measured] = by_ground(sheet, &part, &beyond);
            let beyond = Area::from_base(area_of(sheet, &extended, &strip));
            let least_measured = least(sheet, &measured);
            let told = told(sheet, part, lacking, Side::Thinner);
            parts.extend(told.map(|part| ThinPart { part, high, beyond, least_measured }));
        }
        Ok(Self {
            area: Area::from_base(area.value()),
            volume: Volume::from_base(volume.value()),
            deficit: Length::from_base(deficit),
            parts,
        })
    }
}

fn is_beyond(triangle: crate::survey::surface::Triangle) -> bool {
    triangle.ground == Ground::Beyond
}

/// The volume of old slab above the finish in a part: all of what is below nothing in its triangles, for that is thin.
fn above_finish(sheet: &Sheet, part: &Part) -> f64 {
    let below = part.triangles.iter().map(|&triangle| {
        let values = sheet.values(triangle).map(|value| settled(value, 0.0, sheet.hair));
        zero_line::volumes(sheet.area(triangle), values).1
    });
    below.collect::<Sum>().value()
}

/// The triangles of a part: those beyond the shots and those between them.
fn by_ground(sheet: &Sheet, part: &Part, beyond: &[bool]) -> [Vec<u32>; 2] {
    let is_beyond = |&triangle: &u32| beyond.get(sheet.parent(triangle) as usize).copied().unwrap_or(false);
    let (extended, measured) = part.triangles.iter().copied().partition(is_beyond);
    [extended, measured]
}

/// The area that some triangles have in a strip.
fn area_of(sheet: &Sheet, triangles: &[u32], strip: &Strip) -> f64 {
    let areas =
        triangles.iter().map(|&triangle| strip.integrals(sheet.area(triangle), sheet.values(triangle)).0);
    areas.collect::<Sum>().value()
}

/// The least value at the corners of triangles; none where there are none.
fn least(sheet: &Sheet, triangles: &[u32]) -> Option<Length> {
    let values = triangles.iter().flat_map(|&triangle| sheet.values(triangle));
    values.min_by(f64::total_cmp).map(Length::from_base)
}
