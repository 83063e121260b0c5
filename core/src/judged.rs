//! What comes out where a limit is held against a number.

use crate::basis::{BasisId, Kind, Seen};
use crate::choice;

choice! {
    /// Whether a limit is kept.
    pub enum Judged {
        /// It is.
        Pass = "pass",
        /// It is not.
        Fail = "fail",
        /// It is not, and the number of the limit could not be read in its source.
        ConfirmLocally = "confirm locally",
    }
}

impl Judged {
    /// What a limit of this basis says of a number that keeps it or does not: one whose number is remembered never fails anything.
    #[must_use]
    pub const fn by(basis: BasisId, kept: bool) -> Self {
        match (kept, basis.kind()) {
            (true, _) => Self::Pass,
            (false, Kind::Published { seen: Seen::Memory, .. } | Kind::CommonPractice) => {
                Self::ConfirmLocally
            }
            (false, _) => Self::Fail,
        }
    }

    /// The worse of two: failing is worse than what has to be confirmed.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::Fail, _) | (_, Self::Fail) => Self::Fail,
            (Self::ConfirmLocally, _) | (_, Self::ConfirmLocally) => Self::ConfirmLocally,
            _ => Self::Pass,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_from_memory_never_fails_anything() {
        assert_eq!(Judged::by(BasisId::FallBroomed, false), Judged::ConfirmLocally);
        assert_eq!(Judged::by(BasisId::FallOutdoors, false), Judged::Fail);
        assert_eq!(Judged::by(BasisId::FallBroomed, true), Judged::Pass);
        assert_eq!(Judged::Pass.and(Judged::ConfirmLocally).and(Judged::Fail), Judged::Fail);
    }
}
