//! The outline as a job file says it: corners, or sides in order with a diagonal or two.

use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::quantity::{Given, Length, Typed, feet_and_inches};
use crate::survey::outline::{
    Corner, Diagonals, Hole, MeasuredQuadrilateral, MeasuredWalls, Outline, Turn, Wall, from_diagonals,
    from_walls,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The plan edge of the work: `corners`, or `sides` in order.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OutlineInput {
    /// Corners in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub corners: Vec<CornerInput>,
    /// The name of the edge behind each corner.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub edges: Vec<String>,
    /// Wall lengths in order; the first runs along x from the first corner, the work on its left.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sides: Vec<SideInput>,
    /// From the first corner to the third, of four sides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub diagonal: Option<Given<Length>>,
    /// From the second corner to the fourth, of four sides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub second_diagonal: Option<Given<Length>>,
    /// Columns, pits and the like.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub holes: Vec<HoleInput>,
}

/// A corner in plan.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CornerInput {
    /// Distance along the first wall.
    pub x: Given<Length>,
    /// Distance from the first wall.
    pub y: Given<Length>,
}

/// One wall.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SideInput {
    /// Its name: front, right, back, left.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Its length.
    pub length: Given<Length>,
    /// The square turn at its end: `left` (taken where it is not given) or `right`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub turn: Option<Turn>,
}

/// A hole in the outline.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct HoleInput {
    /// Its name.
    pub name: String,
    /// Its corners in order.
    pub corners: Vec<CornerInput>,
}

/// An outline as built, with what the tape said about it.
#[derive(Clone, Debug)]
pub struct BuiltOutline {
    /// The outline.
    pub outline: Outline,
    /// What the reader must know.
    pub notes: Vec<Note>,
    /// One sentence on how well the measurements agree, where there is something to compare.
    pub squareness: Option<String>,
}

impl OutlineInput {
    /// Builds the outline.
    ///
    /// # Errors
    /// Corners and sides together, neither, a figure that does not close or crosses itself.
    pub fn build(&self) -> Result<BuiltOutline> {
        let built = match (self.corners.is_empty(), self.sides.is_empty()) {
            (false, true) => self.corners_laid()?,
            (true, false) => self.sides_laid()?,
            (true, true) => {
                let remedy = "give corners, or sides in order";
                return Err(Failure::new(Code::EmptyList, "corners")
                    .written("neither corners nor sides")
                    .allowed("at least 3 corners or 4 sides")
                    .remedy(remedy));
            }
            (false, false) => {
                let remedy = "keep one of the two";
                return Err(Failure::new(Code::Contradiction, "sides")
                    .written("corners and sides")
                    .allowed("corners or sides")
                    .remedy(remedy));
            }
        };
        if self.holes.is_empty() {
            return Ok(built);
        }
        let holes =
            self.holes.iter().map(|hole| Hole { name: hole.name.clone(), corners: places(&hole.corners) });
        Ok(BuiltOutline { outline: built.outline.with_holes(holes.collect())?, ..built })
    }

    fn corners_laid(&self) -> Result<BuiltOutline> {
        if self.diagonal.is_some() || self.second_diagonal.is_some() {
            let remedy = "corners already fix the diagonals: remove them";
            return Err(Failure::new(Code::Contradiction, "diagonal")
                .written("corners and a diagonal")
                .allowed("sides with diagonals")
                .remedy(remedy));
        }
        let names: Vec<Option<String>> = self.edges.iter().map(|name| Some(name.clone())).collect();
        let outline =
            Outline::from_corners(&places(&self.corners), &names).map_err(named("corners", "edges"))?;
        Ok(BuiltOutline { outline, notes: Vec::new(), squareness: None })
    }

    fn sides_laid(&self) -> Result<BuiltOutline> {
        if !self.edges.is_empty() {
            let remedy = "name the sides where they stand";
            return Err(Failure::new(Code::Contradiction, "edges")
                .written("sides and edges")
                .allowed("names in sides")
                .remedy(remedy));
        }
        let walls: Vec<Wall> = self.sides.iter().map(SideInput::wall).collect();
        let first = self.diagonal.as_ref().map(|given| given.value);
        let second = self.second_diagonal.as_ref().map(|given| given.value);
        if first.is_none() && second.is_none() {
            return from_walls(&walls, None).map(closed).map_err(named("sides", "sides"));
        }
        let diagonals = Diagonals { first, second, ..Diagonals::default() };
        from_diagonals(&walls, diagonals).map(solved).map_err(named("sides", "sides"))
    }
}

impl SideInput {
    fn wall(&self) -> Wall {
        Wall { name: self.name.clone(), length: self.length.value, turn: self.turn.unwrap_or_default() }
    }
}

/// The paths of the outline's failures in the words of the file.
fn named(corners: &'static str, names: &'static str) -> impl Fn(Box<Failure>) -> Box<Failure> {
    move |mut failure| {
        let path = failure.path.clone();
        failure.path = match path.as_str() {
            "" => corners.to_owned(),
            "names" => names.to_owned(),
            "diagonal" | "diagonals" | "diagonals.first" => "diagonal".to_owned(),
            "diagonals.second" => "second_diagonal".to_owned(),
            other => other.replacen("walls", "sides", 1),
        };
        failure
    }
}

fn places(corners: &[CornerInput]) -> Vec<Corner> {
    corners.iter().map(|corner| Corner::new(corner.x.value, corner.y.value)).collect()
}

/// Below this a difference is not worth a word: 1/16 in.
const SMALL: f64 = 0.0254 / 16.0;

fn closed(walls: MeasuredWalls) -> BuiltOutline {
    let gap = walls.gap_x.base().hypot(walls.gap_y.base());
    let text = match gap <= SMALL {
        true => "wall lengths close".to_owned(),
        false => {
            let say = feet_and_inches(Length::from_base(gap), 16);
            format!("wall lengths leave a gap of {say}, shared out among the walls")
        }
    };
    let notes = if gap <= SMALL { vec![] } else { vec![Note::new(NoteCode::Adjusted, text.clone())] };
    BuiltOutline { outline: walls.outline, notes, squareness: Some(format!("corners taken square; {text}")) }
}

fn solved(figure: MeasuredQuadrilateral) -> BuiltOutline {
    let difference = feet_and_inches(Length::from_base(figure.difference.base().abs()), 16);
    let text = if figure.square {
        format!("diagonals agree within {difference}: square")
    } else {
        format!("diagonals differ by {difference}: laid out of square as measured")
    };
    let notes = if figure.square { vec![] } else { vec![Note::new(NoteCode::Adjusted, text.clone())] };
    BuiltOutline { outline: figure.outline, notes, squareness: Some(text) }
}

impl From<&Outline> for OutlineInput {
    /// The canonical form: corners and names.
    fn from(outline: &Outline) -> Self {
        let corners = |list: &[Corner]| {
            let one =
                |corner: &Corner| CornerInput { x: Given::computed(corner.x), y: Given::computed(corner.y) };
            list.iter().map(one).collect::<Vec<_>>()
        };
        let count = outline.corners().len();
        Self {
            corners: corners(outline.corners()),
            edges: outline.runs().iter().take(count).map(|run| run.name().to_owned()).collect(),
            holes: outline
                .holes()
                .iter()
                .map(|hole| HoleInput { name: hole.name.clone(), corners: corners(&hole.corners) })
                .collect(),
            ..Self::default()
        }
    }
}
