//! The outline from four walls and one or two diagonals.

use super::quadrilateral::Quadrilateral;
use super::walls::{check_lengths, in_walls};
use super::{Corner, MeasuredWall, Outline, Turn, Wall, from_walls};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Length, Range, Slope, Typed};
use crate::survey::fixed::inches;
use crate::survey::tolerance::Tolerance;
use crate::survey::words::{both, both_fine};

/// By how much the diagonals of a floor taken as square may differ: 1/2 in. Common practice, no source.
pub const SQUARE_TOLERANCE: Length = inches(0.5);

/// How far the second diagonal may lie from the one that the walls and the first diagonal give: 1 in.
///
/// Six lengths taped to 1/8 in make that difference uncertain by 1/4 in (it moves by as much as all of them together);
/// four times that is a length misread. Common practice, no source.
pub const MISFIT_TOLERANCE: Length = inches(1.0);

/// What a diagonal may measure: more than nothing, at most 20 km.
const DIAGONAL: Range = Range::positive_to(20_000.0);

/// The diagonals of four walls, one or both measured.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Diagonals {
    /// From the first corner (where the first wall starts) to the third.
    pub first: Option<Length>,
    /// From the second corner to the fourth.
    pub second: Option<Length>,
    /// By how much the diagonals may differ for the corners to be taken as square; none: [`SQUARE_TOLERANCE`].
    pub square_tolerance: Option<Length>,
    /// How far six lengths may contradict one another; none: [`MISFIT_TOLERANCE`].
    pub misfit_tolerance: Option<Length>,
}

/// A diagonal as measured and as laid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeasuredDiagonal {
    /// The length measured, if it was.
    pub measured: Option<Length>,
    /// The length in the outline as laid.
    pub laid: Length,
}

/// An outline laid from four walls and their diagonals.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredQuadrilateral {
    /// The outline.
    pub outline: Outline,
    /// Whether the corners were taken as square.
    pub square: bool,
    /// The four walls, as measured and as laid.
    pub walls: Vec<MeasuredWall>,
    /// The first and the second diagonal, as measured and as laid.
    pub diagonals: [MeasuredDiagonal; 2],
    /// First less second diagonal of the figure that the measurements make, taken as square or not.
    pub difference: Length,
    /// How far each corner of that figure is out of square: the offset over the length of a wall, positive where the corner
    /// is open.
    pub out_of_square: [Slope; 4],
    /// Second diagonal as measured less the one that the walls and the first diagonal give, where both were measured.
    pub misfit: Option<Length>,
    /// What it was judged by.
    pub tolerances: Vec<Tolerance>,
}

/// Lays an outline from four walls and one or two diagonals.
///
/// One diagonal solves the figure exactly. Two give one length too many: the six lengths are adjusted by least squares, all
/// measured equally well, and what that does to each of them is reported. If the diagonals then differ by no more than the
/// tolerance, and facing walls agree as well, the corners are taken as square. A single diagonal is compared with that of
/// the square-cornered floor, at half the tolerance: skewing lengthens one diagonal by as much as it shortens the other.
///
/// The figure is taken to be convex: four walls with a corner that juts into the work do not follow from their lengths,
/// since two figures have the same ones. Such a floor needs corners by x and y.
///
/// # Errors
/// - `LENGTH_MISMATCH`: not four walls. `KEY_MISSING`: no diagonal.
/// - `CONTRADICTION`: a wall that turns right.
/// - `OUT_OF_RANGE`, `NOT_FINITE`: a length or tolerance that cannot be.
/// - `DIAGONAL_IMPOSSIBLE`: no figure, or none that is convex, has these lengths; or the two diagonals contradict each other.
/// - `KEY_REPEATED`: two walls of one name that are no neighbours.
pub fn from_diagonals(walls: &[Wall], diagonals: Diagonals) -> Result<MeasuredQuadrilateral> {
    let survey = Survey::of(walls, diagonals)?;
    let (figure, misfit) = survey.figure()?;
    if let Some(corner) = figure.bends_inward() {
        return Err(survey.bent(corner));
    }
    let square = survey.is_square(&figure);
    let outline = if square {
        from_walls(walls, Some(survey.square.value))?.outline
    } else {
        let corners = figure.corners.map(|[x, y]| Corner::new(Length::from_base(x), Length::from_base(y)));
        let names: Vec<Option<String>> = walls.iter().map(|wall| wall.name.clone()).collect();
        Outline::from_corners(&corners, &names).map_err(in_walls)?
    };
    Ok(survey.report(outline, square, &figure, misfit))
}

/// What was measured, checked on its own.
struct Survey<'a> {
    walls: &'a [Wall],
    sides: [f64; 4],
    diagonals: [Option<Length>; 2],
    square: Tolerance,
    misfit: Tolerance,
}

impl<'a> Survey<'a> {
    fn of(walls: &'a [Wall], diagonals: Diagonals) -> Result<Self> {
        check_lengths(walls)?;
        let Ok(sides) = <[f64; 4]>::try_from(walls.iter().map(|wall| wall.length.base()).collect::<Vec<_>>())
        else {
            return Err(Failure::new(Code::LengthMismatch, "walls")
                .written(format!("{} walls", walls.len()))
                .allowed("4 walls where diagonals are given")
                .remedy("leave the diagonals out, or give the corners by x and y"));
        };
        if let Some(index) = walls.iter().position(|wall| wall.turn == Turn::Right) {
            return Err(Failure::new(Code::Contradiction, format!("walls[{index}].turn"))
                .written(Turn::Right.word())
                .allowed("left: four walls with diagonals turn left at every corner")
                .remedy("walk with the work on your left, or give the corners by x and y"));
        }
        let given = [diagonals.first, diagonals.second];
        for (path, diagonal) in DIAGONAL_PATHS.into_iter().zip(given) {
            diagonal.map(|diagonal| check(path, diagonal, DIAGONAL)).transpose()?;
        }
        let square = Tolerance::given_or(
            "square_tolerance",
            diagonals.square_tolerance,
            SQUARE_TOLERANCE,
            BasisId::OutlineTolerance,
        )?;
        let misfit = Tolerance::given_or(
            "misfit_tolerance",
            diagonals.misfit_tolerance,
            MISFIT_TOLERANCE,
            BasisId::OutlineTolerance,
        )?;
        Ok(Self { walls, sides, diagonals: given, square, misfit })
    }

    /// The figure that the lengths make, and the misfit where there is one length too many.
    fn figure(&self) -> Result<(Quadrilateral, Option<Length>)> {
        let on_first = |diagonal: Length| {
            Quadrilateral::on_first(self.sides, diagonal.base()).ok_or_else(|| self.no_triangle(0, diagonal))
        };
        let on_second = |diagonal: Length| {
            Quadrilateral::on_second(self.sides, diagonal.base()).ok_or_else(|| self.no_triangle(1, diagonal))
        };
        match self.diagonals {
            [Some(first), None] => Ok((on_first(first)?, None)),
            [None, Some(second)] => Ok((on_second(second)?, None)),
            [Some(first), Some(second)] => {
                let start = on_first(first)?;
                on_second(second)?;
                let implied = Length::from_base(start.diagonals()[1]);
                let misfit = second - implied;
                if self.misfit.exceeded_by(misfit) {
                    return Err(self.contradicted(second, implied));
                }
                let adjusted = start.adjusted(self.sides, [first.base(), second.base()]);
                Ok((adjusted.ok_or_else(|| self.contradicted(second, implied))?, Some(misfit)))
            }
            [None, None] => Err(Failure::new(Code::KeyMissing, "diagonals")
                .written("nothing")
                .allowed("the diagonal from the first corner to the third, the one from the second to the fourth, or both")
                .remedy("measure a diagonal, or lay the walls with square corners")),
        }
    }

    /// Whether the corners may be taken as square.
    fn is_square(&self, figure: &Quadrilateral) -> bool {
        let [a, b, c, d] = self.sides;
        let facing = Length::from_base((a - c).hypot(b - d));
        let skew = match self.diagonals {
            [Some(first), Some(second)] => first - second,
            [one, other] => {
                let own = Length::from_base((0.5 * (a + c)).hypot(0.5 * (b + d)));
                let measured = one.or(other).unwrap_or(own);
                (measured - own) * 2.0
            }
        };
        figure.bends_inward().is_none() && !self.square.exceeded_by(facing) && !self.square.exceeded_by(skew)
    }

    fn report(
        &self,
        outline: Outline,
        square: bool,
        figure: &Quadrilateral,
        misfit: Option<Length>,
    ) -> MeasuredQuadrilateral {
        let walls = outline.runs().iter().zip(self.walls).map(|(run, wall)| MeasuredWall {
            name: run.name().to_owned(),
            measured: wall.length,
            laid: run.length(),
        });
        let corner = |index: usize| outline.corners()[index];
        let laid = [corner(0).distance(corner(2)), corner(1).distance(corner(3))];
        let [first, second] = figure.diagonals();
        let diagonals = [0, 1].map(|i| MeasuredDiagonal { measured: self.diagonals[i], laid: laid[i] });
        let tolerances = match misfit {
            Some(_) => vec![self.square, self.misfit],
            None => vec![self.square],
        };
        MeasuredQuadrilateral {
            walls: walls.collect(),
            square,
            diagonals,
            difference: Length::from_base(first - second),
            out_of_square: figure.out_of_square().map(Slope::from_base),
            misfit,
            tolerances,
            outline,
        }
    }

    /// One of the two triangles over this diagonal cannot be.
    fn no_triangle(&self, which: usize, diagonal: Length) -> Box<Failure> {
        let sides = |i: usize, j: usize| [(i, self.sides[i]), (j, self.sides[j])];
        let triangles = if which == 0 { [sides(0, 1), sides(2, 3)] } else { [sides(1, 2), sides(3, 0)] };
        let least = triangles.iter().map(|[(_, a), (_, b)]| (a - b).abs()).fold(0.0, f64::max);
        let greatest = triangles.iter().map(|[(_, a), (_, b)]| a + b).fold(f64::INFINITY, f64::min);
        let walls: Vec<String> =
            (0..4).map(|index| format!("{} {}", self.name(index), both(self.walls[index].length))).collect();
        let allowed = if least < greatest {
            let [least, greatest] = [least, greatest].map(|metres| both(Length::from_base(metres)));
            format!("more than {least} and less than {greatest}")
        } else {
            "none: these walls make no figure".to_owned()
        };
        Failure::new(Code::DiagonalImpossible, DIAGONAL_PATHS[which])
            .written(format!("{} with {}", both(diagonal), walls.join(", ")))
            .allowed(allowed)
            .remedy(REMEDY)
    }

    /// The walls and the first diagonal give another second diagonal.
    fn contradicted(&self, second: Length, implied: Length) -> Box<Failure> {
        let written = format!(
            "{}, where the walls and the first diagonal give {}: off by {}",
            both(second),
            both(implied),
            both_fine(second - implied),
        );
        Failure::new(Code::DiagonalImpossible, DIAGONAL_PATHS[1])
            .written(written)
            .allowed(format!("off by at most {}", self.misfit.words()))
            .remedy("one of the six lengths is misread, not necessarily this one: measure them again")
    }

    fn bent(&self, corner: usize) -> Box<Failure> {
        let before = self.name((corner + 3) % 4);
        let written = format!(
            "the corner between `{before}` and `{}` is straight or juts into the work",
            self.name(corner)
        );
        Failure::new(Code::DiagonalImpossible, "diagonals")
            .written(written)
            .allowed("four corners that all turn left")
            .remedy("measure the diagonals again; a floor of this form needs its corners by x and y")
    }

    fn name(&self, index: usize) -> String {
        let given = self.walls.get(index).and_then(|wall| wall.name.as_deref());
        given.map_or_else(|| format!("side {}", index + 1), |name| name.trim().to_owned())
    }
}

const DIAGONAL_PATHS: [&str; 2] = ["diagonals.first", "diagonals.second"];

const REMEDY: &str =
    "measure again; the first diagonal runs from where the first wall starts to the corner opposite";
