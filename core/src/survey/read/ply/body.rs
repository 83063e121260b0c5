//! The body of a PLY file: vertices and faces out of the stream of numbers.

use super::header::{Element, Kind, Scalar};
use super::source::Source;
use crate::failure::{Code, Failure, Result};
use crate::survey::read::faces::{Faces, NOT_KEPT};
use crate::survey::read::gather::Gather;
use crate::survey::read::refusal::{broken, short};
use crate::survey::read::unit::FileUnit;

/// What was read so far.
pub(super) struct Body {
    pub(super) gather: Gather,
    /// The number of each vertex among the points that were kept.
    pub(super) kept: Vec<u32>,
    pub(super) faces: Faces,
    pub(super) unit: FileUnit,
    /// Elements that are neither vertices nor faces.
    pub(super) strange: Vec<String>,
}

impl Body {
    /// Reads all elements, in the order of the header.
    pub(super) fn read<S: Source>(&mut self, elements: &[Element], source: &mut S) -> Result<()> {
        let mut vertices = false;
        for element in elements {
            let room = source.room(element);
            if element.count > room {
                return Err(fewer(element, format!("room for {room} at most")));
            }
            match element.name.as_str() {
                "vertex" if vertices => return Err(broken("element vertex twice")),
                "vertex" => {
                    vertices = true;
                    self.vertices(element, source)?;
                }
                "face" => self.faces(element, source)?,
                name => {
                    self.strange.push(name.to_owned());
                    each(element, source, |_, _| Ok(()))?;
                }
            }
        }
        if vertices { Ok(()) } else { Err(broken("no element vertex")) }
    }

    fn vertices<S: Source>(&mut self, element: &Element, source: &mut S) -> Result<()> {
        let axes = axes(element)?;
        let room = usize::try_from(element.count).map_err(|_| fewer(element, "fewer"))?;
        self.gather = Gather::with_room(room);
        self.kept.reserve(room);
        each(element, source, |numbers, _| {
            let number = |place: usize| numbers.get(place).copied().unwrap_or(f64::NAN);
            let next = u32::try_from(self.gather.points.len()).unwrap_or(NOT_KEPT);
            if next == NOT_KEPT {
                return Err(broken("more vertices than can be numbered"));
            }
            let used = self.gather.push(axes.map(number), self.unit);
            self.kept.push(if used { next } else { NOT_KEPT });
            Ok(())
        })
    }

    fn faces<S: Source>(&mut self, element: &Element, source: &mut S) -> Result<()> {
        let list = element.place("vertex_indices").or_else(|| element.place("vertex_index"));
        let is_list = |place: &usize| matches!(element.properties[*place].kind, Kind::List { .. });
        let list = list.filter(is_list).ok_or_else(|| broken("faces without a list vertex_indices"))?;
        each(element, source, |_, lists| self.faces.push(lists.get(list).map_or(&[][..], Vec::as_slice)))
    }
}

/// Where x, y and z stand among the properties of a vertex.
fn axes(element: &Element) -> Result<[usize; 3]> {
    let place = |name: &str| {
        let place = element.place(name);
        place.filter(|&place| matches!(element.properties[place].kind, Kind::One(_))).ok_or_else(|| {
            Failure::new(Code::ColumnMissing, name)
                .written("the vertices have none")
                .remedy("write x, y and z of each vertex")
        })
    };
    Ok([place("x")?, place("y")?, place("z")?])
}

/// Runs over the instances of an element: the numbers by property, then the lists by property.
fn each<S: Source>(
    element: &Element,
    source: &mut S,
    mut take: impl FnMut(&[f64], &[Vec<f64>]) -> Result<()>,
) -> Result<()> {
    let mut numbers = vec![0.0; element.properties.len()];
    let mut lists = vec![Vec::new(); element.properties.len()];
    if element.properties.is_empty() {
        return Ok(());
    }
    for found in 0..element.count {
        let cut = || fewer(element, found.to_string());
        if !source.open() {
            return Err(cut());
        }
        for (place, property) in element.properties.iter().enumerate() {
            match property.kind {
                Kind::One(scalar) => numbers[place] = source.number(scalar)?.ok_or_else(cut)?,
                Kind::List { length, item } => {
                    let length = source.number(length)?.ok_or_else(cut)?;
                    list(length, item, source, &mut lists[place])?.ok_or_else(cut)?;
                }
            }
        }
        source.close()?;
        take(&numbers, &lists)?;
    }
    Ok(())
}

/// A list of so many numbers; none where the file ends first.
fn list<S: Source>(length: f64, item: Scalar, source: &mut S, items: &mut Vec<f64>) -> Result<Option<()>> {
    items.clear();
    if !(length >= 0.0 && length.fract() == 0.0 && length <= f64::from(u32::MAX)) {
        return Err(broken(format!("a list of {length} numbers")));
    }
    // Grows with what is there, not with what is stated.
    for _ in 0..length as u64 {
        match source.number(item)? {
            Some(number) => items.push(number),
            None => return Ok(None),
        }
    }
    Ok(Some(()))
}

fn fewer(element: &Element, found: impl Into<String>) -> Box<Failure> {
    short(
        format!("element {}: {}", element.name, found.into()),
        format!("{} as the header states", element.count),
    )
}
