//! Concrete used against what was ordered and figured.

use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Range, Ratio, Typed, Volume, number_in, volume};

/// Concrete ordered or left over: up to 10 000 m³.
pub const POURED: Range = Range::closed(0.0, 1.0e4);

/// What came, and what of it was left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Delivered {
    /// What was ordered and came.
    pub ordered: Volume,
    /// What was left over.
    pub left_over: Volume,
}

/// Concrete used against what was ordered and figured.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Concrete {
    /// What came.
    pub ordered: Volume,
    /// What of it was left over.
    pub left_over: Volume,
    /// What was used: the one less the other.
    pub used: Volume,
    /// What the plan takes.
    pub planned: Volume,
    /// What lies between the old slab and the new floor as surveyed.
    pub in_place: Volume,
    /// Used over planned: what the next order is multiplied by. None where the plan takes none.
    pub used_over_planned: Option<Ratio>,
}

impl Concrete {
    /// What was used of what came.
    ///
    /// # Errors
    /// `OUT_OF_RANGE`; `CONTRADICTION`: more left over than came.
    pub fn of(delivered: Delivered, planned: Volume, in_place: Volume) -> Result<Self> {
        let ordered = check("ordered", delivered.ordered, POURED)?;
        let left_over = check("left_over", delivered.left_over, POURED)?;
        if left_over > ordered {
            let say = |volume: Volume| number_in(volume, &volume::unit::cubic_yard, 2);
            return Err(Failure::new(Code::Contradiction, "left_over")
                .written(format!("{} left over of {}", say(left_over), say(ordered)))
                .allowed("at most what came")
                .remedy("check both volumes"));
        }
        let used = ordered - left_over;
        let factor = (planned.base() > 0.0).then(|| Ratio::from_base(used.base() / planned.base()));
        Ok(Self { ordered, left_over, used, planned, in_place, used_over_planned: factor })
    }

    /// Used less what lies in place: lost, or the floor is thicker between the shots than they show. Negative where the shots show more
    /// than was used.
    #[must_use]
    pub fn unaccounted(&self) -> Volume {
        self.used - self.in_place
    }
}
