//! Levels as ports: listed, or at an interval.

use crate::failure::{Code, Failure, Result, together};
use crate::grade::thickness::DEPTH;
use crate::grade::thickness_shapes::{ELEVATION_LEVEL, Levels};
use crate::number;
use crate::operation::{Args, TableType};
use crate::quantity::Typed;

/// Levels of thickness.
pub(super) static THICKNESS_LEVELS: TableType = TableType {
    name: "levels",
    meaning: "a level of thickness, each more than the one before",
    columns: &[number!(level: length in inch | millimeter, DEPTH, "thickness")],
    least_rows: 1,
};

/// Levels of height.
pub(super) static HEIGHT_LEVELS: TableType = TableType {
    name: "levels",
    meaning: "a level of height, each more than the one before",
    columns: &[number!(level: elevation in foot | meter, ELEVATION_LEVEL, "height above the job datum")],
    least_rows: 1,
};

/// The levels asked for by three ports that stand together: a list, an interval, and what that is counted from.
pub(super) fn levels<Q: Typed>(
    args: &Args<'_>,
    list: usize,
    interval: usize,
    from: usize,
) -> Result<Levels<Q>> {
    match (args.table(list)?, args.quantity(interval)?) {
        (Some(levels), None) => {
            Ok(Levels::Listed(levels.numbers(0).iter().map(|&level| Q::from_base(level)).collect()))
        }
        (None, Some(interval)) => Ok(Levels::Every { interval, from: args.required(from)? }),
        (None, None) => Err(Failure::new(Code::KeyMissing, "levels")
            .written("neither levels nor an interval")
            .allowed("levels, or an interval")
            .remedy("list the levels, or give an interval")),
        (Some(_), Some(_)) => Err(Failure::new(Code::Contradiction, "interval")
            .written(together(&[("levels", true), ("interval", true)]))
            .allowed("levels or an interval")
            .remedy("keep one of the two")),
    }
}
