//! What usually stands or rolls on a floor, in site words: shown, and changeable.

use super::several::{Load, Position};
use crate::basis::BasisId;
use crate::operation::Choice;
use crate::quantity::units::{INCH, POUND_FORCE};
use crate::quantity::{Force, Length, Pressure, Typed};

crate::choice! {
    /// Things that stand or roll on a floor.
    pub enum Thing {
        /// A passenger car.
        Car = "car",
        /// A pickup.
        Pickup = "pickup",
        /// A one-ton truck, loaded.
        OneTon = "loaded one-ton",
        /// A farm tractor.
        Tractor = "farm tractor",
        /// A skid-steered machine.
        Skid = "skid machine",
        /// A workbench with a vice.
        Bench = "bench",
        /// A kiln on legs.
        Kiln = "kiln",
        /// A vehicle on two jacks.
        TwoJacks = "two jacks",
        /// A post of a lift or a hoist, anchored to the floor.
        AnchoredLift = "anchored lift",
    }
}

/// What one thing puts on the floor, as alike loads in a row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Usual {
    /// Each load; none where only its maker can say.
    pub load: Option<Force>,
    /// Its contact pressure.
    pub pressure: Option<Pressure>,
    /// How many of them matter to one another.
    pub count: u32,
    /// Middle to middle.
    pub spacing: Length,
    /// What is in it for things heavier than usual, as a factor on the load.
    pub margin: f64,
    /// Where it comes from.
    pub basis: BasisId,
    /// What was taken, in words.
    pub said: &'static str,
}

/// Pounds, pounds per square inch, how many, inches between, margin.
const fn row(pounds: f64, psi: f64, count: u32, spacing: f64, margin: f64, said: &'static str) -> Row {
    Row { pounds, psi, count, spacing, margin, said }
}

struct Row {
    pounds: f64,
    psi: f64,
    count: u32,
    spacing: f64,
    margin: f64,
    said: &'static str,
}

impl Usual {
    /// Each load with its margin; none where only its maker can say.
    #[must_use]
    pub fn design_load(&self) -> Option<Force> {
        self.load.map(|load| Force::from_base(load.base() * self.margin))
    }
}

/// Alike loads in a row, the first at the origin.
#[must_use]
pub fn in_a_row(load: Force, radius: Length, count: u32, spacing: Length, position: Position) -> Vec<Load> {
    let at = |place: u32| Load {
        load,
        radius,
        x: Length::from_base(f64::from(place) * spacing.base()),
        y: Length::from_base(0.0),
        position,
    };
    (0..count).map(at).collect()
}

impl Thing {
    const fn row(self) -> Row {
        match self {
            Self::Car => {
                row(1250.0, 35.0, 2, 60.0, 1.2, "the heavier axle of a car of 4200 lb, tyres at 35 psi")
            }
            Self::Pickup => row(
                2000.0,
                50.0,
                2,
                66.0,
                1.25,
                "the rear axle of a pickup with its bed loaded, tyres at 50 psi",
            ),
            Self::OneTon => row(
                4500.0,
                75.0,
                2,
                72.0,
                1.25,
                "a rear axle of 9000 lb, each pair of dual tyres taken as one circle at 75 psi",
            ),
            Self::Tractor => {
                row(4000.0, 22.0, 2, 64.0, 1.25, "the rear axle of a tractor of 12 000 lb, soft tyres")
            }
            Self::Skid => row(
                3200.0,
                50.0,
                2,
                48.0,
                1.5,
                "the front axle with the bucket full; it turns by scrubbing, hence the margin",
            ),
            Self::Bench => row(400.0, 30.0, 4, 30.0, 1.5, "one leg of a bench with a vice, on a pad"),
            Self::Kiln => row(900.0, 60.0, 4, 24.0, 1.25, "one leg of a brick kiln, on a plate"),
            Self::TwoJacks => {
                row(3000.0, 148.148_148, 2, 60.0, 1.25, "two loads of 3000 lb, each on 4 1/2 by 4 1/2 in")
            }
            Self::AnchoredLift => row(
                f64::NAN,
                f64::NAN,
                2,
                110.0,
                1.0,
                "ask the maker for the load of each post, the slab and the concrete it must stand on; ask an engineer whether this floor is that. A topping is no hold for anchors",
            ),
        }
    }

    /// What it puts on the floor.
    #[must_use]
    pub fn usual(self) -> Usual {
        let row = self.row();
        let known = |number: f64| (!number.is_nan()).then_some(number);
        Usual {
            load: known(row.pounds).map(|pounds| Force::from_base(pounds * POUND_FORCE)),
            pressure: known(row.psi).map(|psi| Pressure::from_base(psi * super::PSI)),
            count: row.count,
            spacing: Length::from_base(row.spacing * INCH),
            margin: row.margin,
            basis: self.basis(),
            said: row.said,
        }
    }

    /// Where its numbers come from.
    #[must_use]
    pub const fn basis(self) -> BasisId {
        match self {
            Self::TwoJacks => BasisId::JackLoad,
            Self::AnchoredLift => BasisId::AnchoredLift,
            _ => BasisId::UsualLoads,
        }
    }

    /// All of them.
    #[must_use]
    pub const fn all() -> &'static [Self] {
        <Self as Choice>::MEMBERS
    }
}
