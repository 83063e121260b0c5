//! One number of a table, in metres.

use super::layout::Numbers;
use crate::failure::{Code, Failure, Result};
use crate::quantity::{kinds, length, read_kind};
use crate::survey::read::gather::fault;
use crate::survey::read::unit::FileUnit;

/// A cell in metres: a plain number in the unit of its column, or a length with its own unit.
pub(super) fn metres(cell: &str, numbers: &Numbers) -> Result<f64> {
    let cell = cell.trim();
    let path = numbers.role.word();
    if cell.contains(',') {
        return Err(Failure::new(Code::DecimalComma, path)
            .written(format!("\"{cell}\""))
            .remedy("write decimals with a point, and thousands without commas"));
    }
    let metres = match (cell.parse::<f64>(), numbers.unit) {
        (Ok(number), Some(unit)) => unit.metres(number),
        (Ok(_), None) => return Err(unit_missing(cell, path)),
        (Err(_), _) => written(cell, numbers).map_err(|failure| failure.under(path))?,
    };
    match fault([metres, 0.0, 0.0]) {
        None => Ok(metres),
        Some(reason) => Err(Failure::new(Code::NotFinite, path)
            .written(format!("\"{cell}\""))
            .allowed("a finite number, less than a million kilometres")
            .remedy(format!("correct the cell: {}", reason.meaning()))),
    }
}

fn unit_missing(cell: &str, path: &str) -> Box<Failure> {
    Failure::new(Code::UnitMissing, path)
        .written(format!("\"{cell}\""))
        .allowed(FileUnit::words())
        .remedy("write the unit into the heading, as in x [ft], or give the unit of the file")
}

/// `4' 3 1/2"`, `3 1/2`, `1.25 m`.
fn written(cell: &str, numbers: &Numbers) -> Result<f64> {
    match read_kind(cell, &kinds::length, None) {
        Ok(reading) => {
            let metric = reading.unit.symbol.ends_with('m');
            match numbers.unit {
                Some(unit) if unit.is_metric() != metric => Err(Failure::new(Code::Contradiction, "")
                    .written(format!("\"{cell}\" in a column in {}", unit.word()))
                    .remedy("correct the cell or the heading")),
                _ => Ok(reading.base),
            }
        }
        Err(failure) if failure.code == Code::UnitMissing => match numbers.unit {
            // Read in metres for the bare number alone.
            Some(unit) => read_kind(cell, &kinds::length, Some(&length::unit::meter))
                .map(|reading| unit.metres(reading.number)),
            None => Err(unit_missing(cell, "")),
        },
        Err(failure) => Err(failure),
    }
}
