//! What holds of every limit.

use crate::basis::{BasisId, Kind, Seen};
use crate::clearance::{Verdict, broken};

#[test]
fn only_what_was_read_or_derived_or_given_fails() {
    for &basis in BasisId::ALL {
        let fails = match basis.kind() {
            Kind::Published { seen, .. } => seen != Seen::Memory,
            Kind::Derived | Kind::ProjectSpecification => true,
            Kind::CommonPractice => false,
        };
        assert_eq!(broken(basis) == Verdict::Fail, fails, "{}", basis.name());
    }
}
