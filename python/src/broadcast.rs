//! Arrays of several shapes to one shape, as numpy does it: an axis of length one is repeated.

use overslab::failure::{Code, Failure, Result};

/// The shape that all the given ones broadcast to.
///
/// # Errors
/// `LENGTH_MISMATCH`, naming the argument that does not fit those before it.
pub(crate) fn common<'a>(shapes: impl Iterator<Item = (&'a str, &'a [usize])>) -> Result<Vec<usize>> {
    let mut common: Vec<usize> = Vec::new();
    for (name, shape) in shapes {
        let axes = common.len().max(shape.len());
        let joined = (0..axes).map(|axis| join(length(&common, axis, axes), length(shape, axis, axes)));
        common = joined.collect::<Option<_>>().ok_or_else(|| {
            Failure::new(Code::LengthMismatch, name)
                .written(words(shape))
                .allowed(format!("one value, or the shape {}", words(&common)))
                .remedy("give every argument the same shape")
        })?;
    }
    Ok(common)
}

fn length(shape: &[usize], axis: usize, axes: usize) -> usize {
    (axis + shape.len()).checked_sub(axes).map_or(1, |axis| shape[axis])
}

fn join(one: usize, other: usize) -> Option<usize> {
    match (one, other) {
        (1, length) | (length, 1) => Some(length),
        _ => (one == other).then_some(one),
    }
}

fn words(shape: &[usize]) -> String {
    let lengths: Vec<String> = shape.iter().map(usize::to_string).collect();
    format!("({})", lengths.join(", "))
}

/// For each element of the common shape the place in an array of `shape`; `None` where they are the same.
pub(crate) fn places(shape: &[usize], common: &[usize]) -> Option<Vec<usize>> {
    if shape == common {
        return None;
    }
    let mut places = vec![0];
    for axis in 0..common.len() {
        let length = length(shape, axis, common.len());
        let next = places.iter().flat_map(|&place| {
            (0..common[axis]).map(move |at| place * length + if length == 1 { 0 } else { at })
        });
        places = next.collect();
    }
    Some(places)
}
