//! On top of a subbase, by the tables of the Portland Cement Association.

use super::super::PCI;
use crate::failure::{Code, Failure, Result, check};
use crate::operation::scalar::Word;
use crate::quantity::units::INCH;
use crate::quantity::{Length, Range, SubgradeReaction, Typed, inches};

/// The subgrade reaction under the subbase: 50 to 300 pci, the span of the tables.
pub const UNDER: Range = Range::closed(50.0 * PCI, 300.0 * PCI);
/// The thickness of a subbase: 4 to 12 in, the span of the tables.
pub const SUBBASE: Range = Range::closed(4.0 * INCH, 12.0 * INCH);

crate::choice! {
    /// Kinds of subbase.
    pub enum Subbase {
        /// Crushed stone or gravel, untreated.
        Granular = "granular",
        /// Treated with cement.
        Treated = "cement-treated",
    }
}

/// One of the tables: thickness in inches across, subgrade reaction in pci down.
struct Table {
    across: [f64; 4],
    down: [f64; 4],
    rows: [[Option<f64>; 4]; 4],
}

const fn row(numbers: [f64; 4]) -> [Option<f64>; 4] {
    [Some(numbers[0]), Some(numbers[1]), Some(numbers[2]), Some(numbers[3])]
}

static GRANULAR: Table = Table {
    across: [4.0, 6.0, 9.0, 12.0],
    down: [50.0, 100.0, 200.0, 300.0],
    rows: [
        row([65.0, 75.0, 85.0, 110.0]),
        row([130.0, 140.0, 160.0, 190.0]),
        row([220.0, 230.0, 270.0, 320.0]),
        row([320.0, 330.0, 370.0, 430.0]),
    ],
};

static TREATED: Table = Table {
    across: [4.0, 6.0, 8.0, 10.0],
    down: [50.0, 100.0, 200.0, 300.0],
    rows: [
        row([170.0, 230.0, 310.0, 390.0]),
        row([280.0, 400.0, 520.0, 640.0]),
        [Some(470.0), Some(640.0), Some(830.0), None],
        [None; 4],
    ],
};

/// The subgrade reaction on top of a subbase, straight between the rows and columns of the table.
///
/// # Errors
/// A value outside its range; a place where the table has no number.
pub fn with_subbase(
    subgrade: SubgradeReaction,
    thickness: Length,
    kind: Word<Subbase>,
) -> Result<SubgradeReaction> {
    let under = check("subgrade", subgrade, UNDER)?.base() / PCI;
    let thick = check("thickness", thickness, SUBBASE)?;
    let table = match kind.0 {
        Subbase::Granular => &GRANULAR,
        Subbase::Treated => &TREATED,
    };
    let top = table.at(under, thick.base() / INCH).ok_or_else(|| {
        Failure::new(Code::OutsideTable, "thickness")
            .written(format!("{} over {under:.0} pci", inches(thick, 8)))
            .allowed("a place inside the table of this kind of subbase")
            .remedy("take a thinner subbase or a weaker subgrade: the table is not drawn out")
    })?;
    Ok(SubgradeReaction::from_base(top * PCI))
}

/// The place of a number between two neighbours of a rising list: the lower one and the part of the way. A hair outside is an end.
fn between(list: &[f64; 4], number: f64) -> Option<(usize, f64)> {
    const HAIR: f64 = 1.0e-9;
    if number < list[0] * (1.0 - HAIR) || number > list[3] * (1.0 + HAIR) {
        return None;
    }
    let lower = (0..3).find(|&place| number <= list[place + 1]).unwrap_or(2);
    let part = (number - list[lower]) / (list[lower + 1] - list[lower]);
    Some((lower, part.clamp(0.0, 1.0)))
}

impl Table {
    fn at(&self, down: f64, across: f64) -> Option<f64> {
        let (row, down) = between(&self.down, down)?;
        let (column, across) = between(&self.across, across)?;
        let mut sum = 0.0;
        for (row, share) in [(row, 1.0 - down), (row + 1, down)] {
            for (column, share) in [(column, share * (1.0 - across)), (column + 1, share * across)] {
                // A number that is not there only counts where it would weigh.
                if share > 1.0e-12 {
                    sum += share * self.rows[row][column]?;
                }
            }
        }
        Some(sum)
    }
}
