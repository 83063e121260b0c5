//! Facets over shared corners with heights: they meet by construction.

use super::even::{self, High};
use super::{Facet, Finish, shape};
use crate::failure::{Code, Failure, Result, nearest};
use crate::geometry::Point;
use crate::quantity::{Elevation, Length, Typed};

/// A corner of facets with its height.
#[derive(Clone, Debug, PartialEq)]
pub struct FinishCorner {
    /// Its name, if it has one.
    pub name: Option<String>,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// Height there.
    pub elevation: Elevation,
}

/// A facet by the names or numbers of its corners.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FacetByCorners {
    /// Its name, if it has one.
    pub name: Option<String>,
    /// The names of its corners in order, or their numbers from 1 on.
    pub corners: Vec<String>,
    /// What it falls to, if that is said.
    pub falls_to: Option<String>,
}

impl Finish {
    /// Facets over shared corners with heights.
    ///
    /// # Errors
    /// - `KEY_REPEATED`, `CORNER_UNKNOWN`: two corners or facets of one name; a corner that is not there.
    /// - `FACET_SHAPE`, `FACET_WARPED`: corners that bound no facet, or are not in one plane, with the gap.
    /// - As [`Finish::faceted`].
    pub fn from_corners(corners: &[FinishCorner], facets: &[FacetByCorners]) -> Result<Self> {
        let book = Corners::new(corners)?;
        let each = facets.iter().enumerate();
        let each = each.map(|(index, facet)| book.facet(facet, &format!("facets[{index}]")));
        Self::faceted(each.collect::<Result<Vec<_>>>()?)
    }
}

/// Corners that can be looked up.
pub(super) struct Corners<'a>(&'a [FinishCorner]);

impl<'a> Corners<'a> {
    /// Corners, each name once.
    pub(super) fn new(corners: &'a [FinishCorner]) -> Result<Self> {
        let keys: Vec<Option<String>> =
            corners.iter().map(|corner| corner.name.as_deref().map(key)).collect();
        for (index, own) in keys.iter().enumerate() {
            let before = keys.iter().take(index).position(|other| own.is_some() && other == own);
            if let (Some(first), Some(name)) = (before, own) {
                return Err(Failure::new(Code::KeyRepeated, format!("corners[{index}].name"))
                    .written(format!("`{name}`, already corner {}", first + 1))
                    .allowed("a name for each corner, or none")
                    .remedy("give the other corner a name of its own"));
            }
        }
        Ok(Self(corners))
    }

    /// The facet over some of the corners.
    pub(super) fn facet(&self, asked: &FacetByCorners, path: &str) -> Result<Facet> {
        let path = format!("{path}.corners");
        let each = asked.corners.iter().enumerate();
        let found = each.map(|(place, word)| self.find(word, &format!("{path}[{place}]")));
        let found = found.collect::<Result<Vec<usize>>>()?;
        let called = |place: usize| found.get(place).map_or_else(String::new, |&corner| self.called(corner));
        let high: Vec<High> =
            found.iter().filter_map(|&corner| self.0.get(corner)).map(FinishCorner::high).collect();
        let plan: Vec<Point> = high.iter().map(|corner| corner.at).collect();
        let region = shape::region(&plan, &path, &called)?;
        shape::refuse_needle(&region, &path)?;
        let facet = Facet::new(region, even::plane(&high, &path, &called)?);
        Ok(facet
            .named(asked.name.as_deref().unwrap_or_default())
            .falling_to(asked.falls_to.as_deref().unwrap_or_default()))
    }

    /// The corner of that name, or else of that number.
    fn find(&self, word: &str, path: &str) -> Result<usize> {
        let wanted = key(word);
        let named =
            self.0.iter().position(|corner| corner.name.as_deref().map(key).as_ref() == Some(&wanted));
        let numbered =
            || wanted.parse::<usize>().ok()?.checked_sub(1).filter(|&number| number < self.0.len());
        named.or_else(numbered).ok_or_else(|| self.unknown(word, path))
    }

    fn unknown(&self, word: &str, path: &str) -> Box<Failure> {
        let names: Vec<&str> = self.0.iter().filter_map(|corner| corner.name.as_deref()).collect();
        let remedy = match nearest(word.trim(), names.iter().copied()) {
            Some(near) => format!("did you mean {near}?"),
            None => "use the name of a corner, or its number in the list".to_owned(),
        };
        let allowed = match names.is_empty() {
            true => format!("a number from 1 to {}", self.0.len()),
            false => format!("{}, or a number from 1 to {}", names.join(", "), self.0.len()),
        };
        Failure::new(Code::CornerUnknown, path)
            .written(format!("\"{}\"", word.trim()))
            .allowed(allowed)
            .remedy(remedy)
    }

    fn called(&self, corner: usize) -> String {
        let name = self.0.get(corner).and_then(|corner| corner.name.as_deref());
        name.map_or_else(|| format!("corner {}", corner + 1), |name| format!("`{}`", name.trim()))
    }
}

impl FinishCorner {
    fn high(&self) -> High {
        High { at: Point::new(self.x.base(), self.y.base()), height: self.elevation.base() }
    }
}

/// The form of a name that is compared.
fn key(name: &str) -> String {
    name.trim().to_lowercase()
}
