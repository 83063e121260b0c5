//! Where the overlay is thinner, or thicker, than a depth.

use super::field::Field;
use super::parts::{Finder, Part};
use super::rings::Shape;
use super::sheet::Sheet;
use super::strip::Strip;
use crate::choice;
use crate::failure::{Result, check};
use crate::geometry::Sum;
use crate::geometry::zero_line;
use crate::grade::thickness::DEPTH;
use crate::grade::thickness_field::settled;
use crate::quantity::{Area, Length, Typed, Volume};
use crate::survey::surface::Tied;

choice! {
    /// Which side of a depth.
    pub enum Side {
        /// Less than the depth.
        Thinner = "thinner",
        /// The depth and more.
        Thicker = "thicker",
    }
}

/// Where the overlay is thinner or thicker than a depth.
#[derive(Clone, Debug, PartialEq)]
pub struct ThicknessAreas {
    /// The depth.
    pub depth: Length,
    /// Which side of it.
    pub side: Side,
    /// The area of all parts.
    pub area: Area,
    /// The volume between the finish and the surface that lies the depth over the old slab: missing where thinner, over where
    /// thicker.
    pub volume: Volume,
    /// The connected parts, the largest first.
    pub parts: Vec<AreaPart>,
}

/// One connected part.
#[derive(Clone, Debug, PartialEq)]
pub struct AreaPart {
    /// Its polygon.
    pub shape: Shape,
    /// Its area.
    pub area: Area,
    /// What it lacks to the depth, or has over it.
    pub volume: Volume,
    /// Where it is thinnest, or thickest.
    pub extreme: PartExtreme,
}

/// The thinnest or thickest place of a part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartExtreme {
    /// The thickness.
    pub thickness: Length,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// The number of the shot it is at, if it is at one; the survey has its name.
    pub shot: Option<usize>,
}

impl Field<Length> {
    /// Where the overlay is thinner or thicker than a depth. What is exactly as thick counts as thicker, so that both sides
    /// together are the whole.
    ///
    /// # Errors
    /// `NOT_FINITE`, `OUT_OF_RANGE`: the depth. Path: `depth`.
    pub fn areas(&self, depth: Length, side: Side) -> Result<ThicknessAreas> {
        let level = check("depth", depth, DEPTH)?.base();
        let sheet = &self.sheet;
        let strip = match side {
            Side::Thinner => Strip::below(level, sheet.hair),
            Side::Thicker => Strip::from(level, sheet.hair),
        };
        let reaching = (0..sheet.len() as u32).filter(|&triangle| strip.reaches(sheet.values(triangle)));
        let found = Finder::new(sheet).parts(&strip, &reaching.collect::<Vec<_>>());
        let (mut area, mut volume) = (Sum::new(), Sum::new());
        let mut parts = Vec::with_capacity(found.len());
        for part in found {
            let of_part = between(sheet, &part, level, side);
            area.add(part.area);
            volume.add(of_part);
            parts.extend(told(sheet, part, of_part, side));
        }
        let (area, volume) = (Area::from_base(area.value()), Volume::from_base(volume.value()));
        Ok(ThicknessAreas { depth, side, area, volume, parts })
    }
}

/// A part as it is told; nothing where rounding left no polygon of it.
pub(super) fn told(sheet: &Sheet, part: Part, volume: f64, side: Side) -> Option<AreaPart> {
    let extreme = extreme(sheet, &part, side)?;
    let (area, volume) = (Area::from_base(part.area), Volume::from_base(volume));
    Some(AreaPart { shape: part.shape?, area, volume, extreme })
}

/// The volume between the thickness and a depth over a part.
pub(super) fn between(sheet: &Sheet, part: &Part, depth: f64, side: Side) -> f64 {
    let volume = part.triangles.iter().map(|&triangle| {
        let over = sheet.values(triangle).map(|value| settled(value, depth, sheet.hair) - depth);
        let (above, below) = zero_line::volumes(sheet.area(triangle), over);
        if side == Side::Thinner { below } else { above }
    });
    volume.collect::<Sum>().value()
}

/// The thinnest or the thickest place of a part: always a corner of a triangle.
fn extreme(sheet: &Sheet, part: &Part, side: Side) -> Option<PartExtreme> {
    let sense = if side == Side::Thinner { 1.0 } else { -1.0 };
    let corners = || part.triangles.iter().flat_map(|&triangle| sheet.triangle(triangle));
    let value = |corner: u32| sense * sheet.value(corner);
    let mut tied = Tied::at(corners().map(value).fold(f64::INFINITY, f64::min));
    for corner in corners() {
        if tied.includes(value(corner)) {
            tied.look_at(sheet.at(corner), sheet.shot(corner));
        }
    }
    tied.extreme().map(|found| PartExtreme {
        thickness: Length::from_base(sense * found.value),
        x: Length::from_base(found.at.x),
        y: Length::from_base(found.at.y),
        shot: found.shot,
    })
}
