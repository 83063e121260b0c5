//! Tables of results, column by column.

use crate::grade::thickness_shapes::Shape;
use crate::operation::{Column, Columns, Value};
use crate::quantity::Typed;

/// A column of numbers, one for each row.
pub(crate) fn numbers<T>(rows: &[T], number: impl Fn(&T) -> f64) -> Column {
    Column::Numbers(rows.iter().map(number).collect())
}

/// A column of numbers that some rows lack.
pub(crate) fn some_numbers<T, Q: Typed>(rows: &[T], number: impl Fn(&T) -> Option<Q>) -> Column {
    numbers(rows, |row| number(row).map_or(f64::NAN, Typed::base))
}

/// A column of whole numbers.
pub(crate) fn counts<T>(rows: &[T], count: impl Fn(&T) -> usize) -> Column {
    Column::Counts(rows.iter().map(|row| Some(count(row) as i64)).collect())
}

/// A table of these columns.
pub(crate) fn table(rows: usize, columns: impl IntoIterator<Item = Column>) -> Value {
    Value::Table(Columns { rows, columns: columns.into_iter().collect() })
}

/// A corner of a ring of a part.
#[derive(Clone, Copy, Debug)]
pub(super) struct RingCorner {
    /// The number of the band, where there are several.
    pub(super) band: usize,
    /// The number of the part, the first being 1.
    pub(super) part: usize,
    /// The number of the ring: 1 is the outer one, others are holes.
    pub(super) ring: usize,
    /// Its place.
    pub(super) at: crate::survey::outline::Corner,
}

/// The corners of parts, ring by ring.
pub(super) fn ring_corners<'a>(band: usize, shapes: impl Iterator<Item = &'a Shape>) -> Vec<RingCorner> {
    let mut corners = Vec::new();
    for (part, shape) in shapes.enumerate() {
        for (ring, of_ring) in shape.rings().enumerate() {
            let corner = |&at| RingCorner { band, part: part + 1, ring: ring + 1, at };
            corners.extend(of_ring.iter().map(corner));
        }
    }
    corners
}
