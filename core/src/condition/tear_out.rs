//! Breaking out: what is hauled away, the new base, the new slab, and what it costs at the caller's prices.

use crate::failure::{Result, check};
use crate::note::{Note, NoteCode};
use crate::quantity::{
    Area, AreaPrice, Density, Length, Mass, MassPrice, Money, Range, Ratio, Typed, Volume, VolumePrice,
    inches,
};

const INCH: f64 = 0.0254;

/// The area that is broken out: more than none, up to a square kilometre.
pub const AREA: Range = Range::positive_to(1.0e6);
/// The thickness of a slab: 1/4 in to 60 in.
pub const THICKNESS: Range = Range::closed(0.25 * INCH, 60.0 * INCH);
/// The thickness of a base: more than none, up to 120 in.
pub const BASE: Range = Range::positive_to(120.0 * INCH);
/// How much higher the new floor is than the old one, lower where negative.
pub const RISE: Range = Range::closed(-60.0 * INCH, 60.0 * INCH);
/// The mass of concrete in place.
pub const DENSITY: Range = Range::closed(1000.0, 4000.0);
/// How much more room broken concrete, or base before it is compacted, takes.
pub const BULKING: Range = Range::closed(1.0, 3.0);
/// What one box or truck may carry.
pub const BOX_WEIGHT: Range = Range::closed(100.0, 50_000.0);
/// What goes into one box or truck.
pub const BOX_VOLUME: Range = Range::closed(0.1, 100.0);
/// A price, by the load, area, mass or volume.
pub const PRICE: Range = Range::closed(0.0, 1.0e9);

/// What is broken out, and what comes in its place.
#[derive(Clone, Copy, Debug)]
pub struct TearOutRequest {
    /// The area broken out.
    pub area: Area,
    /// The thickness of the old slab.
    pub old_thickness: Length,
    /// The mass of the old concrete in place.
    pub density: Density,
    /// Volume broken up over volume in place.
    pub bulking: Ratio,
    /// What one box may carry.
    pub box_weight: Mass,
    /// What goes into one box, where that can run out first.
    pub box_volume: Option<Volume>,
    /// The thickness of the new base, compacted; none where the ground below serves.
    pub base: Option<Length>,
    /// Volume of base loose over compacted.
    pub base_loose: Ratio,
    /// The thickness of the new slab, on the mean; none where nothing is poured.
    pub new_thickness: Option<Length>,
    /// How much higher the new floor is than the old one, on the mean.
    pub rise: Length,
    /// The caller's prices.
    pub prices: TearOutPrices,
}

/// The caller's prices; one that is missing stays missing.
#[derive(Clone, Copy, Debug, Default)]
pub struct TearOutPrices {
    /// Breaking and loading, by area.
    pub breaking: Option<AreaPrice>,
    /// Hauling, by the load.
    pub load: Option<Money>,
    /// Dumping, by mass.
    pub dumping: Option<MassPrice>,
    /// Base, by the loose volume.
    pub base: Option<VolumePrice>,
    /// Concrete, placed.
    pub concrete: Option<VolumePrice>,
}

/// One part of the cost.
#[derive(Clone, Debug, PartialEq)]
pub struct TearOutCost {
    /// What for.
    pub what: &'static str,
    /// How much; none where its price is missing.
    pub money: Option<Money>,
}

/// What breaking out takes.
#[derive(Clone, Debug, PartialEq)]
pub struct TearOut {
    /// Old concrete in place.
    pub in_place: Volume,
    /// Its mass.
    pub mass: Mass,
    /// Its volume broken up.
    pub loose: Volume,
    /// Loads to the dump.
    pub loads: u32,
    /// How deep the ground is dug below the old slab for base and new slab.
    pub dig_depth: Length,
    /// The ground dug, in place. It is not in the loads.
    pub dig: Volume,
    /// New base, compacted.
    pub base: Volume,
    /// New base, loose, as it is bought.
    pub base_loose: Volume,
    /// The new slab.
    pub concrete: Option<Volume>,
    /// The cost of each part that there is.
    pub costs: Vec<TearOutCost>,
    /// All of it, where no price is missing.
    pub total: Option<Money>,
}

/// What breaking out takes, and what comes in its place.
///
/// The new underside lies `rise + old thickness - new thickness` above the old one: where that leaves room beyond the base the base gets
/// thicker, where it does not the ground is dug. Weight = volume in place x density; loads by weight, or by loose volume where that is more.
///
/// # Errors
/// A quantity outside its range.
pub fn tear_out(request: &TearOutRequest) -> Result<TearOut> {
    let area = check("area", request.area, AREA)?;
    let old = check("old_thickness", request.old_thickness, THICKNESS)?;
    let density = check("density", request.density, DENSITY)?;
    let bulking = check("bulking", request.bulking, BULKING)?.base();
    let base_loose = check("base_loose", request.base_loose, BULKING)?.base();
    let rise = check("rise", request.rise, RISE)?.base();
    let base = request.base.map(|base| check("base", base, BASE)).transpose()?.map_or(0.0, Typed::base);
    let new = request.new_thickness.map(|new| check("new_thickness", new, THICKNESS)).transpose()?;
    let in_place = area * old;
    let mass = in_place * density;
    let loose = Volume::from_base(in_place.base() * bulking);
    let loads = loads(mass, loose, request)?;
    // Room under the new slab down to the old underside; without a new slab the hole stays as it is.
    let room = new.map_or(base, |new| rise + old.base() - new.base());
    let dig_depth = Length::from_base((base - room).max(0.0));
    let base = area * Length::from_base(base.max(room));
    let (base_bought, concrete) = (Volume::from_base(base.base() * base_loose), new.map(|new| area * new));
    let costs = costs(area, mass, loads, base_bought, concrete, &request.prices)?;
    let total = costs.iter().map(|cost| cost.money.map(Typed::base)).sum::<Option<f64>>();
    Ok(TearOut {
        in_place,
        mass,
        loose,
        loads,
        dig_depth,
        dig: area * dig_depth,
        base,
        base_loose: base_bought,
        concrete,
        total: total.map(Money::from_base),
        costs,
    })
}

fn loads(mass: Mass, loose: Volume, request: &TearOutRequest) -> Result<u32> {
    let by_weight = mass.base() / check("box_weight", request.box_weight, BOX_WEIGHT)?.base();
    let by_volume = match request.box_volume {
        Some(volume) => loose.base() / check("box_volume", volume, BOX_VOLUME)?.base(),
        None => 0.0,
    };
    // A hair over a full box is rounding, not another box.
    Ok((by_weight.max(by_volume) * (1.0 - 1.0e-12)).ceil().max(1.0) as u32)
}

fn costs(
    area: Area,
    mass: Mass,
    loads: u32,
    base: Volume,
    concrete: Option<Volume>,
    prices: &TearOutPrices,
) -> Result<Vec<TearOutCost>> {
    let breaking = prices.breaking.map(|price| check("breaking_price", price, PRICE)).transpose()?;
    let load = prices.load.map(|price| check("load_price", price, PRICE)).transpose()?;
    let dumping = prices.dumping.map(|price| check("dump_price", price, PRICE)).transpose()?;
    let of_base = prices.base.map(|price| check("base_price", price, PRICE)).transpose()?;
    let of_concrete = prices.concrete.map(|price| check("concrete_price", price, PRICE)).transpose()?;
    let cost = |what: &'static str, money: Option<Money>| TearOutCost { what, money };
    let mut list = vec![
        cost("breaking and loading", breaking.map(|price| area * price)),
        cost("hauling", load.map(|load| Money::from_base(load.base() * f64::from(loads)))),
        cost("dumping", dumping.map(|price| mass * price)),
    ];
    if base.base() > 0.0 {
        list.push(cost("base", of_base.map(|price| base * price)));
    }
    if let Some(concrete) = concrete {
        list.push(cost("concrete", of_concrete.map(|price| concrete * price)));
    }
    Ok(list)
}

impl TearOut {
    /// What must be known of it.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes = Vec::new();
        let some = self.costs.iter().any(|cost| cost.money.is_some());
        let missing: Vec<&str> =
            self.costs.iter().filter(|cost| cost.money.is_none()).map(|cost| cost.what).collect();
        if some && !missing.is_empty() {
            let text = format!("no total: the price of {} is missing", missing.join(", "));
            notes.push(Note::new(NoteCode::PriceMissing, text));
        }
        if self.dig_depth.base() > 0.0 {
            let text = format!(
                "{} of ground is dug below the old slab; it is not in the loads",
                inches(self.dig_depth, 8)
            );
            notes.push(Note::new(NoteCode::GroundDug, text));
        }
        notes
    }
}
