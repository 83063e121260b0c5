//! The points of a book by name: each is read once, benchmarks excepted.

use super::entries::LevelBook;
use crate::failure::{Code, Failure, Result};
use std::collections::HashMap;

/// The form of a name that is compared: no outer blanks, no capitals.
pub(super) fn key(name: &str) -> String {
    name.trim().to_lowercase()
}

/// What a name stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Role {
    /// A known point: its index among the benchmarks.
    Benchmark(usize),
    /// The foresight of a set-up on a point not known before.
    TurningPoint(usize),
    /// A sight of a set-up.
    Intermediate(usize),
}

/// Every name of the book with what it stands for.
pub(super) struct Names(HashMap<String, Role>);

impl Names {
    /// Reads all names, refusing blank ones and those given twice.
    pub(super) fn of(book: &LevelBook) -> Result<Self> {
        let mut names = Self(HashMap::new());
        for (index, benchmark) in book.benchmarks.iter().enumerate() {
            names.add(&benchmark.name, Role::Benchmark(index), || format!("benchmarks[{index}].name"))?;
        }
        for (index, setup) in book.setups.iter().enumerate() {
            for (sight, entry) in setup.sights.iter().enumerate() {
                let path = || format!("setups[{index}].sights[{sight}].point");
                names.add(&entry.point, Role::Intermediate(index), path)?;
            }
            let Some(foresight) = &setup.foresight else { continue };
            // A line may close on a benchmark, so a foresight may name one again.
            if !matches!(names.role(&foresight.point), Some(Role::Benchmark(_))) {
                let path = || format!("setups[{index}].foresight.point");
                names.add(&foresight.point, Role::TurningPoint(index), path)?;
            }
        }
        Ok(names)
    }

    /// What the name stands for.
    pub(super) fn role(&self, name: &str) -> Option<Role> {
        self.0.get(&key(name)).copied()
    }

    fn add(&mut self, name: &str, role: Role, path: impl Fn() -> String) -> Result<()> {
        let key = key(name);
        if key.is_empty() {
            return Err(Failure::new(Code::KeyMissing, path())
                .written("a blank name")
                .allowed("a name for every point")
                .remedy("name the point as it is marked on site"));
        }
        match self.0.insert(key, role) {
            None => Ok(()),
            Some(before) => Err(repeated(name, before, role).under(&path())),
        }
    }
}

fn repeated(name: &str, before: Role, now: Role) -> Box<Failure> {
    let first = match before {
        Role::Benchmark(index) => format!("benchmarks[{index}]"),
        Role::TurningPoint(setup) => format!("the foresight of set-up {}", setup + 1),
        Role::Intermediate(setup) => format!("a sight of set-up {}", setup + 1),
    };
    let remedy = match (before, now) {
        (Role::Benchmark(_), Role::Intermediate(_)) => {
            "a benchmark is read as backsight or foresight; read again from the same set-up it is its `close`"
        }
        (Role::Intermediate(_), Role::TurningPoint(_)) => {
            "read the point once, as the foresight, and mark that as a slab shot if it is one"
        }
        _ => "give each point its own name",
    };
    Failure::new(Code::KeyRepeated, "")
        .written(format!("`{}`, already {first}", name.trim()))
        .allowed("each name once; only a benchmark may be sighted again")
        .remedy(remedy)
}
