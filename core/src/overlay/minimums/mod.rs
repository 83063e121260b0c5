//! How thin an overlay may be in practice, as data: the rules of the trade beside those of the books.

use super::Bond;
use crate::basis::BasisId;
use crate::failure::{Result, check};
use crate::least_thickness;
use crate::quantity::units::INCH;
use crate::quantity::{Length, Range, Typed};

/// A stone size: 1/8 to 3 in.
pub const STONE: Range = Range::closed(0.125 * INCH, 3.0 * INCH);
/// The thinnest part over the largest stone in it.
const STONES: f64 = 3.0;

crate::choice! {
    /// What the floor is used for.
    pub enum Use {
        /// People, benches, light tools.
        Foot = "people",
        /// Cars and pickups.
        Cars = "cars",
        /// Loaded trucks, tractors, skid machines.
        Trucks = "trucks",
        /// Washing: water, hot water, pressure.
        WashBay = "wash bay",
        /// Vehicles on jacks and stands.
        Jacks = "jacks",
        /// Heavier than all these.
        Heavy = "heavier",
    }
}

/// One rule.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Which overlays it is about.
    pub bond: Bond,
    /// Which uses it is about; all where none stands.
    pub uses: &'static [Use],
    /// The least thickness, in inches.
    pub least: f64,
    /// Whether it decides here; what does not is shown beside.
    pub decides: bool,
    /// What it says.
    pub said: &'static str,
    /// Where it comes from.
    pub basis: BasisId,
}

use Bond::{Bonded, PartlyBonded, Unbonded};

const fn rule(
    bond: Bond,
    uses: &'static [Use],
    (least, decides): (f64, bool),
    said: &'static str,
    basis: BasisId,
) -> Rule {
    Rule { bond, uses, least, decides, said, basis }
}

const LIGHT: &[Use] = &[Use::Foot, Use::Cars];
const LOADED: &[Use] = &[Use::Trucks, Use::WashBay, Use::Jacks];
const ALL: &[Use] = &[];

/// Every rule.
pub static RULES: &[Rule] = &[
    rule(
        Bonded,
        &[Use::Foot],
        (least_thickness::BONDED, true),
        "bonded floor topping",
        BasisId::BondedToppingMinimum,
    ),
    rule(
        Bonded,
        &[Use::Cars, Use::WashBay],
        (least_thickness::BONDED_UNDER_CARS, true),
        "bonded, poured 1 1/2 to 2 in over a bonding agent",
        BasisId::PouredWithBond,
    ),
    rule(
        Bonded,
        &[Use::Trucks, Use::Jacks, Use::Heavy],
        (least_thickness::BONDED_UNDER_TRUCKS, true),
        "bonded overlay of a road, 2 to 5 in; jacks press as hard as trucks",
        BasisId::BondedRoadMinimum,
    ),
    rule(Bonded, ALL, (3.0, false), "bonded overlay of an airfield", BasisId::AirfieldMinimum),
    rule(
        Unbonded,
        LIGHT,
        (least_thickness::LOOSE, true),
        "unbonded floor topping, later editions",
        BasisId::UnbondedToppingMinimum,
    ),
    rule(
        Unbonded,
        LIGHT,
        (2.5, false),
        "unbonded floor topping, edition of 1980",
        BasisId::UnbondedToppingEarlier,
    ),
    rule(
        Unbonded,
        LOADED,
        (least_thickness::LOOSE_LOADED, true),
        "trucks, wash bays, jacks",
        BasisId::UnbondedByUse,
    ),
    rule(
        Unbonded,
        &[Use::Heavy],
        (least_thickness::LOOSE_HEAVY, true),
        "heavier: 5 in and more, by stress",
        BasisId::UnbondedByUse,
    ),
    rule(Unbonded, ALL, (5.0, false), "unbonded overlay of an airfield, 5 to 6 in", BasisId::AirfieldMinimum),
    rule(
        PartlyBonded,
        LIGHT,
        (least_thickness::LOOSE, true),
        "a sound old slab is poured over without bond at 3 in and more",
        BasisId::PouredWithoutBond,
    ),
    rule(
        PartlyBonded,
        LOADED,
        (least_thickness::LOOSE_LOADED, true),
        "trucks, wash bays, jacks",
        BasisId::UnbondedByUse,
    ),
    rule(
        PartlyBonded,
        &[Use::Heavy],
        (least_thickness::LOOSE_HEAVY, true),
        "heavier: 5 in and more, by stress",
        BasisId::UnbondedByUse,
    ),
    rule(
        PartlyBonded,
        ALL,
        (5.0, false),
        "partly bonded overlay of an airfield, 5 to 6 in",
        BasisId::AirfieldMinimum,
    ),
];

/// What a kind of overlay needs for a use.
#[derive(Clone, Debug)]
pub struct Minimum {
    /// The least thickness anywhere.
    pub least: Length,
    /// The largest stone for that thickness, or for the thickness that the given stone asks.
    pub largest_stone: Length,
    /// What is usual at most; none where only stress decides.
    pub greatest_usual: Option<Length>,
    /// Whether the stone given decides the thickness.
    pub by_stone: bool,
    /// The rule that decides.
    pub rule: Rule,
    /// All rules about this kind and use.
    pub rules: Vec<Rule>,
}

impl Minimum {
    /// What decides: the rule, or the stone.
    #[must_use]
    pub const fn basis(&self) -> BasisId {
        if self.by_stone { BasisId::StoneThird } else { self.rule.basis }
    }
}

/// The least thickness of an overlay: the largest rule that decides for its bond and use, and three times the largest stone. No edge runs out to
/// nothing: it ends at a cut and chipped key at least as deep.
///
/// # Errors
/// A stone outside its range.
pub fn minimum(bond: Bond, used: Use, stone: Option<Length>) -> Result<Minimum> {
    let stone = stone.map(|stone| check("stone", stone, STONE)).transpose()?;
    let about = |rule: &&Rule| rule.bond == bond && (rule.uses.is_empty() || rule.uses.contains(&used));
    let rules: Vec<Rule> = RULES.iter().filter(about).copied().collect();
    let deciding = rules.iter().filter(|rule| rule.decides);
    let rule = deciding.fold(None, |most: Option<Rule>, rule| match most {
        Some(most) if most.least >= rule.least => Some(most),
        _ => Some(*rule),
    });
    // A test holds that every bond and use has a rule that decides.
    let rule = rule.unwrap_or(RULES[0]);
    let by_rule = rule.least * INCH;
    let by_stone = stone.map_or(0.0, |stone| STONES * stone.base());
    let least = by_rule.max(by_stone);
    Ok(Minimum {
        least: Length::from_base(least),
        largest_stone: largest_stone(Length::from_base(least)),
        greatest_usual: (bond == Bonded).then(|| Length::from_base(usual_most(used))),
        by_stone: by_stone > by_rule,
        rule,
        rules,
    })
}

/// The largest stone for a thinnest part; none at all where old concrete stands above the floor.
#[must_use]
pub fn largest_stone(thinnest: Length) -> Length {
    Length::from_base(thinnest.base().max(0.0) / STONES)
}

/// Bonded overlays are usually no thicker: 2 in on floors, 5 in on roads.
fn usual_most(used: Use) -> f64 {
    match used {
        Use::Trucks | Use::Jacks | Use::Heavy => 5.0 * INCH,
        _ => 2.0 * INCH,
    }
}

impl Bond {
    /// What goes between old and new.
    #[must_use]
    pub const fn between(self) -> &'static str {
        match self {
            Self::Bonded => {
                "the prepared old concrete, wetted the day before and dry on top, with a bonding grout or agent that is still wet when the concrete comes; a grout that has dried comes off again"
            }
            Self::PartlyBonded => "nothing, on a swept old slab",
            Self::Unbonded => {
                "a breaker over a slab patched even: plastic sheet, roofing felt, waterproof paper or wax curing compound; or a compacted sand layer over the high spots"
            }
        }
    }

    /// What it means for the floor.
    #[must_use]
    pub const fn means(self) -> &'static str {
        match self {
            Self::Bonded => {
                "old and new act as one; every crack and joint that moves below comes through; joints lie over the old ones"
            }
            Self::PartlyBonded => {
                "common practice, and called partly bonded in the books, which warn of it on floors: it holds in places, and old cracks will show; not recommended here"
            }
            Self::Unbonded => {
                "the new slab moves by itself and carries by its own thickness; old cracks stay below"
            }
        }
    }
}

#[cfg(test)]
mod tests;
