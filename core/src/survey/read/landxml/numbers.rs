//! Numbers in the text of an element.

use crate::failure::{Code, Failure, Result};
use crate::survey::read::gather::fault;
use crate::survey::read::refusal::broken;

/// Northing, easting and elevation as x, y, z; none where there is no elevation.
pub(super) fn place(text: &str) -> Result<Option<[f64; 3]>> {
    let mut words = text.split_ascii_whitespace();
    let (Some(northing), Some(easting)) = (words.next(), words.next()) else { return Err(wrong(text)) };
    let (y, x) = (number(northing)?, number(easting)?);
    let z = words.next().map(number).transpose()?;
    if words.next().is_some() {
        return Err(wrong(text));
    }
    Ok(z.map(|z| [x, y, z]))
}

/// The numbers of points.
pub(super) fn ids(text: &str) -> Result<Vec<u64>> {
    text.split_ascii_whitespace().map(|word| word.parse().map_err(|_| wrong(text))).collect()
}

fn number(word: &str) -> Result<f64> {
    let (code, remedy) = match word.parse::<f64>() {
        Ok(number) => match fault([number, 0.0, 0.0]) {
            None => return Ok(number),
            Some(_) => (Code::NotFinite, "correct the file: the points of a survey have finite coordinates"),
        },
        Err(_) if word.contains(',') => (Code::DecimalComma, "write decimals with a point"),
        Err(_) => (Code::NotReadable, "correct the file"),
    };
    let written = format!("\"{}\"", word.chars().take(40).collect::<String>());
    Err(Failure::new(code, "file").written(written).allowed("a number").remedy(remedy))
}

fn wrong(text: &str) -> Box<Failure> {
    broken(format!(
        "\"{}\" where northing, easting and elevation or the numbers of points stand",
        text.chars().take(60).collect::<String>()
    ))
}
