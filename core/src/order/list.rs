//! The order: what is net, what is allowed for, what the plant sells, how many trucks.

use super::trucks::{CAPACITY, Trucks, trucks};
use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Range, Share, Typed, Volume};

/// A volume that goes into the order: none, up to 100 000 m3.
pub const PART: Range = Range::closed(0.0, 1.0e5);
/// An allowance: none, up to half of the net volume.
pub const ALLOWANCE: Range = Range::closed(0.0, 0.5);
/// The step the plant sells by: 1 L to 5 m3.
pub const STEP: Range = Range::closed(0.001, 5.0);

/// A named volume.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// What it is for.
    pub name: String,
    /// How much.
    pub volume: Volume,
}

/// A named share of the net volume.
#[derive(Clone, Debug, PartialEq)]
pub struct Allowance {
    /// What it is for.
    pub name: String,
    /// The share of the net volume.
    pub share: Share,
}

/// What an order is made from.
#[derive(Clone, Debug, PartialEq)]
pub struct Request {
    /// What is poured: the floor, a ramp, a step.
    pub parts: Vec<Part>,
    /// What is allowed for on top.
    pub allowances: Vec<Allowance>,
    /// The step the plant sells by.
    pub step: Volume,
    /// What one truck carries.
    pub capacity: Volume,
}

/// An order.
#[derive(Clone, Debug, PartialEq)]
pub struct Order {
    /// The sum of the parts.
    pub net: Volume,
    /// Each allowance as a volume.
    pub allowances: Vec<Part>,
    /// Net and allowances.
    pub figured: Volume,
    /// The figured volume rounded up to the plant's step.
    pub ordered: Volume,
    /// What is ordered over what is figured.
    pub spare: Volume,
    /// The trucks.
    pub trucks: Trucks,
}

/// Figures an order: net, each allowance a share of the net, the sum rounded up to the step.
///
/// # Errors
/// No part, a part or an allowance outside its range, a sum of zero.
pub fn order(request: &Request) -> Result<Order> {
    if request.parts.is_empty() {
        return Err(Failure::new(Code::EmptyList, "parts")
            .allowed("at least one volume")
            .remedy("give what is poured"));
    }
    let step = check("step", request.step, STEP)?.base();
    check("capacity", request.capacity, CAPACITY)?;
    let net = request.parts.iter().enumerate().try_fold(0.0, |sum, (index, part)| {
        check(&format!("parts[{index}].volume"), part.volume, PART).map(|volume| sum + volume.base())
    })?;
    let allowances = request.allowances.iter().enumerate().map(|(index, allowance)| {
        let share = check(&format!("allowances[{index}].share"), allowance.share, ALLOWANCE)?;
        Ok(Part { name: allowance.name.clone(), volume: Volume::from_base(net * share.base()) })
    });
    let allowances = allowances.collect::<Result<Vec<_>>>()?;
    let figured = net + allowances.iter().map(|part| part.volume.base()).sum::<f64>();
    if figured <= 0.0 {
        let remedy = "give what is poured";
        return Err(Failure::new(Code::OutOfRange, "parts")
            .written("0 yd3 in all")
            .allowed("more than 0")
            .remedy(remedy));
    }
    let ordered = round_up(figured, step);
    Ok(Order {
        net: Volume::from_base(net),
        allowances,
        figured: Volume::from_base(figured),
        ordered: Volume::from_base(ordered),
        // A hair above a whole step is not another step, nor is it less than nothing to spare.
        spare: Volume::from_base((ordered - figured).max(0.0)),
        trucks: trucks(Volume::from_base(ordered), request.capacity)?,
    })
}

/// The next multiple of the step; a hair above one is rounding, not another step.
fn round_up(volume: f64, step: f64) -> f64 {
    (volume / step * (1.0 - 1.0e-12)).ceil() * step
}
