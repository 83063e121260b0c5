//! Cells and ranges, and their reading from JSON.

use super::Empties;
use crate::failure::{Code, Failure, Result};
use serde_json::Value as Json;

/// One cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// Nothing in it.
    Empty,
    /// A number.
    Number(f64),
    /// A text.
    Text(String),
    /// A truth value, where the sheet tells it from a number.
    Truth(bool),
}

/// A rectangle of cells.
pub type Cells = Vec<Vec<Cell>>;

/// What was passed for one argument.
#[derive(Clone, Debug, PartialEq)]
pub struct Range {
    /// Its cells.
    pub rows: Cells,
    /// Whether it was a cell by itself, not a range of one. Some sheets hand a lone empty cell over as a zero.
    pub alone: bool,
}

impl Cell {
    /// Whether there is nothing in it.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        matches!(self, Self::Empty)
    }

    /// The cell as it would be written, for messages.
    #[must_use]
    pub fn written(&self) -> String {
        match self {
            Self::Empty => "nothing".to_owned(),
            Self::Number(number) => crate::quantity::write::shortest(*number),
            Self::Text(text) => format!("\"{}\"", text.trim()),
            Self::Truth(truth) => truth.to_string(),
        }
    }

    fn from_json(json: &Json) -> Option<Self> {
        match json {
            Json::Null => Some(Self::Empty),
            Json::Bool(truth) => Some(Self::Truth(*truth)),
            Json::Number(number) => number.as_f64().map(Self::Number),
            Json::String(text) if text.trim().is_empty() => Some(Self::Empty),
            Json::String(text) => Some(Self::Text(text.clone())),
            Json::Object(map) if map.len() == 1 => map.get("exact").and_then(exact).map(Self::Number),
            _ => None,
        }
    }
}

impl Range {
    /// One cell by itself.
    #[must_use]
    pub fn alone(cell: Cell) -> Self {
        Self { rows: vec![vec![cell]], alone: true }
    }

    /// Reads a range from JSON: null, number, text or truth value by itself, a list of them, or rows of them. A number may
    /// also be written `{"exact": [sign, high, low, power]}`, which is `sign (high 2^26 + low) 2^power`.
    ///
    /// # Errors
    /// `KIND_MISMATCH` for anything else.
    pub fn from_json(json: &Json) -> Result<Self> {
        let wrong = || {
            Failure::new(Code::KindMismatch, "")
                .allowed("a cell or rows of cells: null, numbers, texts, truth values")
                .remedy("pass a range")
        };
        let row = |row: &Json| match row {
            Json::Array(cells) => cells.iter().map(Cell::from_json).collect::<Option<Vec<_>>>(),
            cell => Cell::from_json(cell).map(|cell| vec![cell]),
        };
        match json {
            Json::Array(rows) => {
                let rows = rows.iter().map(row).collect::<Option<Cells>>().ok_or_else(wrong)?;
                Ok(Self { rows, alone: false })
            }
            cell => Cell::from_json(cell).map(Self::alone).ok_or_else(wrong),
        }
    }

    /// Whether nothing stands in it.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.rows.iter().flatten().all(Cell::is_empty)
    }

    /// Its rows and columns.
    #[must_use]
    pub fn size(&self) -> (usize, usize) {
        (self.rows.len(), self.rows.iter().map(Vec::len).max().unwrap_or(0))
    }

    /// The place of an answer in it: its only row or column stretches.
    pub(super) fn within(&self, row: usize, column: usize) -> (usize, usize) {
        let (rows, columns) = self.size();
        (if rows == 1 { 0 } else { row }, if columns == 1 { 0 } else { column })
    }

    /// The cell at that row and column, the first being 0; outside there is nothing.
    pub(super) fn cell(&self, row: usize, column: usize) -> &Cell {
        self.rows.get(row).and_then(|cells| cells.get(column)).unwrap_or(&Cell::Empty)
    }

    /// Whether it is a lone zero that may be an empty cell.
    pub(super) fn bare_zero(&self, empties: Empties) -> bool {
        let zero = || matches!(self.rows.as_slice(), [row] if matches!(row.as_slice(), [Cell::Number(0.0)]));
        self.alone && empties == Empties::AsZero && zero()
    }
}

/// Reads the ranges of all arguments.
///
/// # Errors
/// As [`Range::from_json`], naming the argument by its number.
pub fn ranges(arguments: &[Json]) -> Result<Vec<Range>> {
    let read = |(index, json): (usize, &Json)| {
        Range::from_json(json).map_err(|failure| failure.under(&format!("arguments[{index}]")))
    };
    arguments.iter().enumerate().map(read).collect()
}

/// `[sign, high, low, power]` as `sign (high 2^26 + low) 2^power`: a number from a caller that cannot write all its digits.
fn exact(parts: &Json) -> Option<f64> {
    const HALF: i64 = 1 << 26;
    let [sign, high, low, power] = parts.as_array()?.as_slice() else { return None };
    let (high, low) = (high.as_i64()?, low.as_i64()?);
    let power = i32::try_from(power.as_i64()?).ok()?;
    let sign = match sign.as_i64()? {
        1 => 1.0,
        -1 => -1.0,
        _ => return None,
    };
    let fits = (0..=HALF << 1).contains(&high) && (0..HALF).contains(&low) && (-1100..=1000).contains(&power);
    // In two steps, since the power alone may be no double though the number is.
    let half = power / 2;
    let number = ((high * HALF + low) as f64) * 2.0_f64.powi(half) * 2.0_f64.powi(power - half);
    (fits && number.is_finite()).then_some(sign * number)
}
