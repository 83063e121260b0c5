//! How an overlay holds to the old slab.

crate::choice! {
    /// How an overlay holds to the old slab.
    pub enum Bond {
        /// Prepared and bonded: the two act as one plate.
        Bonded = "bonded",
        /// Cast straight on: nothing done to make or to break bond.
        PartlyBonded = "partly bonded",
        /// A breaker between: the two bend apart.
        Unbonded = "unbonded",
    }
}

impl Bond {
    /// The power of the overlay equations: thicknesses add up as 1, 1.4 or 2.
    #[must_use]
    pub const fn power(self) -> f64 {
        match self {
            Self::Bonded => 1.0,
            Self::PartlyBonded => 1.4,
            Self::Unbonded => 2.0,
        }
    }
}
