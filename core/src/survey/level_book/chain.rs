//! Which set-ups make one line of levels.

use super::entries::LevelBook;
use super::names::{Names, Role};
use crate::failure::{Code, Failure, Result, nearest};

/// Sorts the set-ups into lines, each a list of their indices: a backsight on a benchmark starts one, a backsight on the
/// turning point where a line ends continues it, and one on any turning point left behind starts a branch.
pub(super) fn chains(book: &LevelBook, names: &Names) -> Result<Vec<Vec<usize>>> {
    let mut chains: Vec<Vec<usize>> = Vec::new();
    for (index, setup) in book.setups.iter().enumerate() {
        match names.role(&setup.backsight.point) {
            Some(Role::Benchmark(_)) => chains.push(vec![index]),
            Some(Role::TurningPoint(from)) if from < index => {
                match chains.iter_mut().find(|chain| chain.last() == Some(&from)) {
                    Some(chain) => chain.push(index),
                    None => chains.push(vec![index]),
                }
            }
            role => return Err(hangs_in_the_air(book, index, role)),
        }
    }
    Ok(chains)
}

/// A backsight on a point that has no elevation when it is read.
pub(super) fn hangs_in_the_air(book: &LevelBook, index: usize, role: Option<Role>) -> Box<Failure> {
    let point = book.setups[index].backsight.point.trim();
    let before = index.checked_sub(1).and_then(|before| book.setups.get(before).map(|setup| (before, setup)));
    let number = index + 1;
    let near = near(book, index, point).map(|name| format!("did you mean `{name}`?"));
    match (role, before) {
        (None, Some((before, setup))) if setup.foresight.is_none() => {
            let remedy = format!("book the foresight on `{point}`");
            Failure::new(Code::BookIncomplete, format!("setups[{before}].foresight"))
                .written(format!(
                    "no foresight in set-up {}, yet set-up {number} has its backsight on `{point}`",
                    before + 1
                ))
                .allowed("a foresight on the point that the next set-up starts from")
                .remedy(
                    near.map_or_else(
                        || remedy.clone(),
                        |near| format!("{remedy}, or correct its name: {near}"),
                    ),
                )
        }
        _ => {
            let why = match role {
                Some(Role::TurningPoint(at)) => format!("its foresight is only in set-up {}", at + 1),
                Some(Role::Intermediate(at)) => {
                    format!("set-up {} read it as a sight, not as its foresight", at + 1)
                }
                _ => "no earlier set-up read it and no benchmark has this name".to_owned(),
            };
            let remedy = format!("read `{point}` as a foresight first, or give its elevation as a benchmark");
            Failure::new(Code::BookIncomplete, format!("setups[{index}].backsight.point"))
                .written(format!("`{point}` in set-up {number}: {why}"))
                .allowed("a benchmark, or the foresight of an earlier set-up")
                .remedy(near.filter(|_| role.is_none()).unwrap_or(remedy))
        }
    }
}

/// The earlier turning point, the last first, or the benchmark whose name is nearest.
fn near<'a>(book: &'a LevelBook, index: usize, point: &str) -> Option<&'a str> {
    let benchmarks = book.benchmarks.iter().map(|benchmark| benchmark.name.trim());
    let earlier = book.setups.iter().take(index).rev().filter_map(|setup| setup.foresight.as_ref());
    nearest(point, earlier.map(|sight| sight.point.trim()).chain(benchmarks))
}
