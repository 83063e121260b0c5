//! The reduction itself.

use super::chain::{chains, hangs_in_the_air};
use super::closure::{Disagreement, ToleranceFor};
use super::entries::{LevelBook, Sight};
use super::names::{Names, Role, key};
use super::readings::check_values;
use super::reduced::{Closure, Line, PageCheck, PointKind, Recheck, ReducedBook, ReducedPoint, ReducedSetUp};
use crate::failure::{Failure, Result};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::tolerance::Tolerance;
use std::collections::{HashMap, HashSet};

/// Reduces a level book: heights of instrument, elevations, checks, and the misclosure shared out.
///
/// HI = elevation + BS; elevation = HI - FS; sum of BS - sum of FS = last - first; misclosure = found - known.
///
/// ```
/// use overslab::quantity::{Elevation, Length, elevation, length::foot, read};
/// use overslab::survey::level_book::{Benchmark, LevelBook, Sight, reduce};
///
/// let nail = Benchmark::new("nail", Elevation::new::<elevation::foot>(100.0));
/// let shots = vec![Sight::shot("A1", read("5' 0 5/8\"")?)];
/// let rod: Length = read("4' 2 1/2\"")?;
/// let book = reduce(&LevelBook::single(nail, rod, shots, Some(rod)))?;
/// let a1 = book.elevation_of("A1").map(|e| e.get::<elevation::foot>());
/// assert!((a1.unwrap_or_default() - (100.0 - 10.125 / 12.0)).abs() < 1e-12);
/// # Ok::<(), Box<overslab::failure::Failure>>(())
/// ```
///
/// # Errors
/// - `EMPTY_LIST`: no benchmark or no set-up.
/// - `NOT_FINITE`, `NEGATIVE`, `OUT_OF_RANGE`: a reading, elevation or tolerance that cannot be.
/// - `BOOK_INCOMPLETE`: a named point without its reading; a backsight on a point that has no elevation yet.
/// - `KEY_MISSING`, `KEY_REPEATED`: a point without a name, or read twice.
/// - `CLOSURE_EXCEEDED`: a set-up or a line that does not close within its tolerance.
pub fn reduce(book: &LevelBook) -> Result<ReducedBook> {
    check_values(book)?;
    book.tolerances.check()?;
    let names = Names::of(book)?;
    let mut work = Work::new(book, &names);
    for chain in chains(book, &names)? {
        work.line(chain)?;
    }
    Ok(work.finish())
}

/// One set-up, worked out but not yet corrected.
struct Worked {
    setup: ReducedSetUp,
    sights: Vec<ReducedPoint>,
    foresight: Option<ReducedPoint>,
}

/// The reduction on its way through the lines.
struct Work<'a> {
    book: &'a LevelBook,
    names: &'a Names,
    /// Elevations of the points that a backsight may stand on, by the key of their name.
    known: HashMap<String, Elevation>,
    /// The set-ups worked out, with their index.
    done: Vec<(usize, Worked)>,
    lines: Vec<Line>,
    tolerances: Vec<Tolerance>,
}

impl<'a> Work<'a> {
    fn new(book: &'a LevelBook, names: &'a Names) -> Self {
        let known = book.benchmarks.iter().map(|benchmark| (key(&benchmark.name), benchmark.elevation));
        let known = known.collect();
        Self { book, names, known, done: Vec::new(), lines: Vec::new(), tolerances: Vec::new() }
    }

    /// Works out one line from its start to its end, then shares out what it is off.
    fn line(&mut self, chain: Vec<usize>) -> Result<()> {
        let Some(&first) = chain.first() else { return Ok(()) };
        let start = &self.book.setups[first].backsight.point;
        let Some(&start_elevation) = self.known.get(&key(start)) else {
            return Err(hangs_in_the_air(self.book, first, self.names.role(start)));
        };
        let (mut elevation, mut line) = (start_elevation, Vec::with_capacity(chain.len()));
        for (place, &index) in chain.iter().enumerate() {
            let worked = self.setup(index, place + 1, elevation)?;
            if let Some(foresight) = &worked.foresight {
                elevation = foresight.booked;
            }
            line.push(worked);
        }
        let page = page_check(&line, start_elevation);
        let closure = self.closure(&line)?;
        if let Some(closure) = &closure {
            share_out(&mut line, closure);
        }
        let ends = line.iter().filter_map(|worked| worked.foresight.as_ref());
        self.known.extend(ends.map(|point| (key(&point.name), point.elevation)));
        let start = start.clone();
        self.done.extend(chain.iter().copied().zip(line));
        self.lines.push(Line { start, start_elevation, setups: chain, page, closure });
        Ok(())
    }

    /// One set-up on a point of this elevation.
    fn setup(&mut self, index: usize, number_in_line: usize, elevation: Elevation) -> Result<Worked> {
        let entry = &self.book.setups[index];
        let under = |failure: Box<Failure>| failure.under(&format!("setups[{index}]"));
        let first = entry.backsight.reading(index, "backsight").map_err(under)?;
        let recheck = self.recheck(index, elevation, first)?;
        let backsight = match recheck {
            Some(recheck) => recheck.first + recheck.difference * 0.5,
            None => first,
        };
        let height = elevation + backsight;
        let read = |sight: &Sight, path: String, kind| {
            let rod = sight.reading(index, &path).map_err(under)?;
            Ok(point(sight, index, kind, rod, height))
        };
        let sights = entry.sights.iter().enumerate();
        let sights =
            sights.map(|(number, sight)| read(sight, format!("sights[{number}]"), PointKind::Intermediate));
        let sights = sights.collect::<Result<Vec<_>>>()?;
        let foresight = entry.foresight.as_ref().map(|sight| {
            let kind = match self.names.role(&sight.point) {
                Some(Role::Benchmark(_)) => PointKind::Benchmark,
                _ => PointKind::TurningPoint,
            };
            read(sight, "foresight".to_owned(), kind)
        });
        let setup = ReducedSetUp {
            backsight_point: entry.backsight.point.clone(),
            backsight,
            height_booked: height,
            height,
            recheck,
            line: self.lines.len(),
            number_in_line,
        };
        Ok(Worked { setup, sights, foresight: foresight.transpose()? })
    }

    /// The backsight point read again, if it was.
    fn recheck(&mut self, index: usize, elevation: Elevation, first: Length) -> Result<Option<Recheck>> {
        let entry = &self.book.setups[index];
        let Some(close) = entry.close else { return Ok(None) };
        let tolerance = self.tolerance(ToleranceFor::Recheck)?;
        let disagreement = Disagreement {
            path: format!("setups[{index}].close"),
            point: entry.backsight.point.trim(),
            known: elevation,
            found: elevation + first - close,
            remedy: "read the point again; if it stays off, the instrument moved: read the whole set-up again",
        };
        disagreement.within(tolerance)?;
        Ok(Some(Recheck { first, close, difference: close - first }))
    }

    /// How the line closes, if it ends on a benchmark.
    fn closure(&mut self, line: &[Worked]) -> Result<Option<Closure>> {
        let Some(end) = line.last().and_then(|worked| worked.foresight.as_ref()) else { return Ok(None) };
        let Some(Role::Benchmark(benchmark)) = self.names.role(&end.name) else { return Ok(None) };
        let of = if line.len() == 1 { ToleranceFor::Recheck } else { ToleranceFor::Closure };
        let tolerance = self.tolerance(of)?;
        let benchmark = &self.book.benchmarks[benchmark];
        let (known, found) = (benchmark.elevation, end.booked);
        let disagreement = Disagreement {
            path: format!("setups[{}].foresight", end.setup),
            point: end.name.trim(),
            known,
            found,
            remedy: "check both elevations, then read the line again",
        };
        disagreement.within(tolerance)?;
        let (on, tolerance) = (benchmark.name.clone(), tolerance.value);
        Ok(Some(Closure { on, known, found, misclosure: found - known, tolerance }))
    }

    /// The tolerance, remembered as one that judged the book.
    fn tolerance(&mut self, of: ToleranceFor) -> Result<Tolerance> {
        let tolerance = self.book.tolerances.of(of)?;
        if !self.tolerances.contains(&tolerance) {
            self.tolerances.push(tolerance);
        }
        Ok(tolerance)
    }

    /// Everything in the order of the book.
    fn finish(mut self) -> ReducedBook {
        self.done.sort_by_key(|(index, _)| *index);
        let (mut setups, mut points) = (Vec::new(), Vec::new());
        for (_, worked) in self.done {
            setups.push(worked.setup);
            points.extend(worked.sights);
            points.extend(worked.foresight);
        }
        let backsights = self.book.setups.iter().map(|setup| &setup.backsight.point);
        let foresights = self.book.setups.iter().filter_map(|setup| setup.foresight.as_ref());
        let read: HashSet<String> =
            backsights.chain(foresights.map(|sight| &sight.point)).map(|n| key(n)).collect();
        let benchmarks = self.book.benchmarks.clone();
        let unread = benchmarks.iter().filter(|benchmark| !read.contains(&key(&benchmark.name)));
        let unread = unread.map(|benchmark| benchmark.name.clone()).collect();
        ReducedBook { benchmarks, setups, points, lines: self.lines, tolerances: self.tolerances, unread }
    }
}

fn point(sight: &Sight, setup: usize, kind: PointKind, rod: Length, height: Elevation) -> ReducedPoint {
    let booked = height - rod;
    ReducedPoint {
        name: sight.point.clone(),
        kind,
        slab_shot: sight.slab_shot,
        setup,
        rod,
        booked,
        correction: Length::from_base(0.0),
        elevation: booked,
    }
}

/// Sums over a line whose last set-up has a foresight.
fn page_check(line: &[Worked], start: Elevation) -> Option<PageCheck> {
    let last = line.last()?.foresight.as_ref()?;
    let zero = Length::from_base(0.0);
    let backsights = line.iter().fold(zero, |sum, worked| sum + worked.setup.backsight);
    let foresights = line.iter().filter_map(|worked| worked.foresight.as_ref());
    let foresights = foresights.fold(zero, |sum, point| sum + point.rod);
    Some(PageCheck { backsights, foresights, rise: last.booked - start })
}

/// Shares the misclosure out over the set-ups: all of it at the end, none at the start, half a set-up's share to its sights.
fn share_out(line: &mut [Worked], closure: &Closure) {
    let each = closure.misclosure * (-1.0 / line.len() as f64);
    for worked in line {
        let passed = worked.setup.number_in_line as f64;
        let half_way = each * (passed - 0.5);
        worked.setup.height = worked.setup.height_booked + half_way;
        worked.sights.iter_mut().for_each(|sight| correct(sight, half_way));
        let Some(foresight) = &mut worked.foresight else { continue };
        correct(foresight, each * passed);
        if foresight.kind == PointKind::Benchmark {
            // The known elevation itself, free of the rounding of the shares.
            foresight.elevation = closure.known;
            foresight.correction = closure.known - foresight.booked;
        }
    }
}

fn correct(point: &mut ReducedPoint, correction: Length) {
    point.correction = correction;
    point.elevation = point.booked + correction;
}
