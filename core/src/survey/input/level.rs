//! The level book and the shots as a job file says them.

use super::RodInput;
use crate::failure::{Code, Failure, Result};
use crate::quantity::{Elevation, Given, Length};
use crate::survey::level_book::{Backsight, Benchmark, LevelBook, SetUp, Sight, Tolerances};
use crate::survey::names::grid_shot;
use crate::survey::old_slab::{Instrument, Texture};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Rod readings: benchmarks, set-ups, and the shots by grid or by place.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LevelInput {
    /// What the readings were taken with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instrument: Option<Instrument>,
    /// What the old floor feels like.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub texture: Option<Texture>,
    /// Points of known elevation.
    pub benchmarks: Vec<BenchmarkInput>,
    /// Distance of each grid column from the left wall.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub columns: Vec<Given<Length>>,
    /// Whether a grid row or column given twice, one after the other, is the two sides of a step.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub steps: bool,
    /// The set-ups in order.
    pub setups: Vec<SetUpInput>,
    /// How far a benchmark read again in one set-up may be off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub recheck_tolerance: Option<Given<Length>>,
    /// How far a line of several set-ups may be off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub closure_tolerance: Option<Given<Length>>,
    /// Whether the work may reach more than 4 ft beyond the shots.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub beyond_allowed: bool,
    /// Shots that are not used, by name: booked wrong and not shot again.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub leave_out: Vec<String>,
}

/// A point of known elevation.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BenchmarkInput {
    /// Its name.
    pub name: String,
    /// Its elevation in the job datum.
    pub elevation: Given<Elevation>,
}

/// One set-up of the instrument.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SetUpInput {
    /// The benchmark or turning point of the backsight.
    pub on: String,
    /// The rod on it.
    pub rod: Given<Length>,
    /// The rod on it again, before the instrument is moved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub close: Option<Given<Length>>,
    /// Shots of the old slab by grid row.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rows: Vec<RowInput>,
    /// Shots of the old slab by place.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub shots: Vec<ShotInput>,
    /// Other points: sills, walks, drains.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sights: Vec<SightInput>,
    /// The rod on the turning point, or on the benchmark the line closes on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub foresight: Option<SightInput>,
}

/// One grid row.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RowInput {
    /// Its distance from the front wall.
    pub y: Given<Length>,
    /// One reading per column; `none` for a place that was not shot.
    pub rods: Vec<RodInput<Length>>,
}

/// One shot of the old slab.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ShotInput {
    /// Its name in the report.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
    /// The reading.
    pub rod: Given<Length>,
    /// Outside the outline on purpose: approach, walk.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub outside: bool,
    /// One side of a step.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub step: bool,
}

/// A reading on a named point.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SightInput {
    /// The point.
    pub point: String,
    /// The reading.
    pub rod: Given<Length>,
}

/// Where a slab shot lies, under its name in the book.
#[derive(Clone, Debug, PartialEq)]
pub struct Placed {
    /// Its name.
    pub name: String,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// Outside the outline on purpose.
    pub outside: bool,
    /// One side of a step.
    pub step: bool,
    /// Row and column, where it is part of the grid.
    pub grid: Option<(usize, usize)>,
    /// Where its reading stands in the file.
    pub path: String,
}

/// A level book made from a file, and the way back to the file.
#[derive(Clone, Debug, PartialEq)]
pub struct FiledBook {
    /// The book.
    pub book: LevelBook,
    /// Where each slab shot lies, in the order of the sights.
    pub placed: Vec<Placed>,
    /// Where each sight of each set-up stands in the file.
    paths: Vec<Vec<String>>,
}

impl FiledBook {
    /// A failure of the book with the path of the file: `setups[0].sights[5]` is some `rows[1].rods[1]`.
    #[must_use]
    pub fn in_file(&self, mut failure: Box<Failure>) -> Box<Failure> {
        let path = failure.path.replace("backsight.point", "on").replace("backsight", "rod");
        let path = match path.strip_prefix("tolerances.") {
            Some(which) => format!("{which}_tolerance"),
            None => path,
        };
        let place = |path: &str| -> Option<(usize, usize, usize)> {
            let (setup, rest) = path.strip_prefix("setups[")?.split_once("].sights[")?;
            let (sight, tail) = rest.split_once(']')?;
            Some((setup.parse().ok()?, sight.parse().ok()?, tail.len()))
        };
        failure.path = match place(&path) {
            Some((setup, sight, _)) => match self.paths.get(setup).and_then(|paths| paths.get(sight)) {
                Some(filed) => filed.clone(),
                None => path,
            },
            None => path,
        };
        failure
    }
}

impl LevelInput {
    /// The level book, and where each slab shot lies.
    ///
    /// # Errors
    /// Rows that do not fit the columns, rows without columns.
    pub fn book(&self) -> Result<FiledBook> {
        let mut placed = Vec::new();
        let mut rows = 0;
        let (mut setups, mut paths) =
            (Vec::with_capacity(self.setups.len()), Vec::with_capacity(self.setups.len()));
        for (index, setup) in self.setups.iter().enumerate() {
            let path = format!("setups[{index}]");
            let mut page = Page::default();
            self.add_rows(setup, &path, &mut rows, &mut placed, &mut page)?;
            add_shots(setup, &path, &mut placed, &mut page);
            for (index, sight) in setup.sights.iter().enumerate() {
                page.add(
                    Sight::point(sight.point.clone(), sight.rod.value),
                    format!("{path}.sights[{index}]"),
                );
            }
            setups.push(SetUp {
                backsight: Backsight { point: setup.on.clone(), rod: Some(setup.rod.value) },
                sights: page.sights,
                foresight: setup
                    .foresight
                    .as_ref()
                    .map(|sight| Sight::point(sight.point.clone(), sight.rod.value)),
                close: setup.close.as_ref().map(|given| given.value),
            });
            paths.push(page.paths);
        }
        let benchmarks =
            self.benchmarks.iter().map(|mark| Benchmark::new(mark.name.clone(), mark.elevation.value));
        let tolerances = Tolerances {
            recheck: self.recheck_tolerance.as_ref().map(|given| given.value),
            closure: self.closure_tolerance.as_ref().map(|given| given.value),
        };
        Ok(FiledBook {
            book: LevelBook { benchmarks: benchmarks.collect(), setups, tolerances },
            placed,
            paths,
        })
    }

    fn add_rows(
        &self,
        setup: &SetUpInput,
        path: &str,
        rows: &mut usize,
        placed: &mut Vec<Placed>,
        page: &mut Page,
    ) -> Result<()> {
        for (index, row) in setup.rows.iter().enumerate() {
            let path = format!("{path}.rows[{index}]");
            if row.rods.len() != self.columns.len() {
                return Err(Failure::new(Code::LengthMismatch, format!("{path}.rods"))
                    .written(format!("{} readings", row.rods.len()))
                    .allowed(format!("{}, one per column", self.columns.len()))
                    .remedy("write \"none\" for a place that was not shot"));
            }
            for (column, (rod, x)) in row.rods.iter().zip(&self.columns).enumerate() {
                let Some(rod) = &rod.0 else { continue };
                let name = grid_shot(*rows, column);
                let path = format!("{path}.rods[{column}]");
                page.add(Sight::shot(name.clone(), rod.value), path.clone());
                let (x, y, grid) = (x.value, row.y.value, Some((*rows, column)));
                placed.push(Placed { name, x, y, outside: false, step: false, grid, path });
            }
            *rows += 1;
        }
        Ok(())
    }
}

/// The sights of one set-up, and where they stand in the file.
#[derive(Default)]
struct Page {
    sights: Vec<Sight>,
    paths: Vec<String>,
}

impl Page {
    fn add(&mut self, sight: Sight, path: String) {
        self.sights.push(sight);
        self.paths.push(path);
    }
}

fn add_shots(setup: &SetUpInput, path: &str, placed: &mut Vec<Placed>, page: &mut Page) {
    for (index, shot) in setup.shots.iter().enumerate() {
        let name = shot.name.clone().unwrap_or_else(|| format!("shot {}", placed.len() + 1));
        let path = format!("{path}.shots[{index}]");
        page.add(Sight::shot(name.clone(), shot.rod.value), format!("{path}.rod"));
        let (x, y) = (shot.x.value, shot.y.value);
        placed.push(Placed { name, x, y, outside: shot.outside, step: shot.step, grid: None, path });
    }
}
