//! How much of the work is how thick.

use super::bands::{level, reached, strips};
use super::field::Field;
use super::levels::Levels;
use crate::failure::Result;
use crate::geometry::Sum;
use crate::quantity::{Area, Length, Share, Typed, Volume};

/// How much area and volume lies in each bin of thickness.
#[derive(Clone, Debug, PartialEq)]
pub struct Histogram {
    /// The whole area.
    pub area: Area,
    /// The whole volume, high spots taken off.
    pub volume: Volume,
    /// The bins, rising.
    pub bins: Vec<Bin>,
}

/// One bin.
#[derive(Clone, Debug, PartialEq)]
pub struct Bin {
    /// The lower edge, itself in the bin; none for what is thinner than all edges.
    pub from: Option<Length>,
    /// The upper edge, itself in the next bin; none for what is thicker than all edges.
    pub to: Option<Length>,
    /// The area.
    pub area: Area,
    /// Its share of the whole.
    pub share: Share,
    /// The volume over it, high spots taken off.
    pub volume: Volume,
    /// The share of the whole that is thinner than the upper edge.
    pub thinner: Share,
}

impl Field<Length> {
    /// Area and volume by bins of thickness, exactly. What is outside all edges makes a bin of its own, where there is any.
    ///
    /// # Errors
    /// What the edges are refused for.
    pub fn histogram(&self, edges: &Levels<Length>) -> Result<Histogram> {
        let sheet = &self.sheet;
        let (least, greatest) = sheet.reach();
        let edges = edges.around(least, greatest, sheet.hair)?;
        let strips = strips(&edges, sheet.hair);
        let mut sums = vec![(Sum::new(), Sum::new(), false); strips.len()];
        for (area, values) in sheet.pieces() {
            for number in reached(&edges, &strips, values) {
                let (of_area, of_volume) = strips[number].integrals(area, values);
                let (areas, volumes, any) = &mut sums[number];
                areas.add(of_area);
                volumes.add(of_volume);
                *any = true;
            }
        }
        let area = sheet.whole();
        let (mut bins, mut thinner, mut volume) = (Vec::new(), Sum::new(), Sum::new());
        for (strip, (of_area, of_volume, any)) in strips.iter().zip(&sums) {
            thinner.add(of_area.value());
            volume.add(of_volume.value());
            let is_open = !(strip.from.is_finite() && strip.to.is_finite());
            if is_open && !any {
                continue;
            }
            bins.push(Bin {
                from: level(strip.from),
                to: level(strip.to),
                area: Area::from_base(of_area.value()),
                share: Share::from_base((of_area.value() / area).max(0.0)),
                volume: Volume::from_base(of_volume.value()),
                thinner: Share::from_base((thinner.value() / area).max(0.0)),
            });
        }
        Ok(Histogram { area: Area::from_base(area), volume: Volume::from_base(volume.value()), bins })
    }
}
