//! Edges by their names.

use super::{Corner, Hole, Outline, Run};
use crate::failure::{Code, Failure, Result, nearest};
use crate::geometry::{RingId, RunId};
use std::collections::HashMap;

impl Outline {
    /// The runs of an edge in order: one run, neighbours of one name, or all sides of a hole.
    ///
    /// # Errors
    /// `EDGE_UNKNOWN`: no run and no hole has this name. The path is empty: the caller knows where the name stands.
    pub fn edge(&self, name: &str) -> Result<Vec<&Run>> {
        let wanted = key(name);
        let hole = self.holes().iter().position(|hole| key(&hole.name) == wanted).map(RingId::Hole);
        let runs = self.runs().iter();
        let mut found: Vec<&Run> =
            runs.filter(|run| key(run.name()) == wanted || Some(run.id().ring) == hole).collect();
        if found.is_empty() {
            return Err(self.unknown(name));
        }
        // An edge that passes the first corner starts where it starts, not where the list does.
        if let Some(gap) = found.windows(2).position(|pair| pair[0].id().index + 1 != pair[1].id().index) {
            found.rotate_left(gap + 1);
        }
        Ok(found)
    }

    /// The names of all edges, in order, each once.
    #[must_use]
    pub fn edge_names(&self) -> Vec<&str> {
        let mut names: Vec<&str> = Vec::new();
        let holes = self.holes().iter().map(|hole| hole.name.trim());
        for name in self.runs().iter().map(Run::name).chain(holes) {
            if !names.iter().any(|known| key(known) == key(name)) {
                names.push(name);
            }
        }
        names
    }

    /// The run of this place in the region.
    #[must_use]
    pub fn run(&self, id: RunId) -> Option<&Run> {
        self.runs().iter().find(|run| run.id() == id)
    }

    fn unknown(&self, name: &str) -> Box<Failure> {
        let names = self.edge_names();
        let remedy = match nearest(name.trim(), names.iter().copied()) {
            Some(near) => format!("did you mean `{near}`?"),
            None => "use a name of the outline, or name the run so".to_owned(),
        };
        Failure::new(Code::EdgeUnknown, "")
            .written(format!("\"{}\"", name.trim()))
            .allowed(names.join(", "))
            .remedy(remedy)
    }
}

/// The form of a name that is compared.
fn key(name: &str) -> String {
    name.trim().to_lowercase()
}

/// Every run with its name, outer ring first.
pub(super) fn named_runs(corners: &[Corner], given: &[Option<String>], holes: &[Hole]) -> Result<Vec<Run>> {
    let names: Vec<String> = (0..corners.len()).map(|index| name_of(given.get(index), index)).collect();
    let mut taken = Taken(HashMap::new());
    taken.edges(&names, given)?;
    let mut runs = ring(RingId::Outer, corners, names);
    for (index, hole) in holes.iter().enumerate() {
        let path = format!("holes[{index}].name");
        taken.add(&hole.name, &path, &path)?;
        for side in side_names(hole) {
            taken.add(&side, &path, &format!("a side of holes[{index}]"))?;
        }
        runs.extend(ring(RingId::Hole(index), &hole.corners, side_names(hole).collect()));
    }
    Ok(runs)
}

fn name_of(given: Option<&Option<String>>, index: usize) -> String {
    match given {
        Some(Some(name)) => name.trim().to_owned(),
        _ => format!("side {}", index + 1),
    }
}

fn side_names(hole: &Hole) -> impl Iterator<Item = String> + '_ {
    (1..=hole.corners.len()).map(|side| format!("{} side {side}", hole.name.trim()))
}

fn ring(ring: RingId, corners: &[Corner], names: Vec<String>) -> Vec<Run> {
    let ends = corners.iter().cycle().skip(1);
    let runs = corners.iter().zip(ends).zip(names).enumerate();
    runs.map(|(index, ((&from, &to), name))| Run::new(name, RunId { ring, index }, from, to)).collect()
}

/// The names that stand for something already, and where they were given.
struct Taken(HashMap<String, String>);

impl Taken {
    /// Takes the names of the outline's runs, refusing blank ones and those that stand for two edges.
    fn edges(&mut self, names: &[String], given: &[Option<String>]) -> Result<()> {
        let count = names.len();
        let keys: Vec<String> = names.iter().map(|name| key(name)).collect();
        // A number that was counted, not given, is no edge's name by intent: such a run joins no neighbour.
        let counted = |index: usize| matches!(given.get(index), None | Some(None));
        // The list may start amid an edge, so the run before the first is the last.
        let starts_edge = |index: usize| {
            let before = (index + count - 1) % count;
            keys[before] != keys[index] || counted(before) || counted(index)
        };
        let mut starts: Vec<usize> = (0..count).filter(|&index| starts_edge(index)).collect();
        if starts.is_empty() && count > 0 {
            // The whole ring under one name.
            starts.push(0);
        }
        for index in starts {
            let path = format!("names[{index}]");
            self.add(&names[index], &path, &path)?;
        }
        Ok(())
    }

    /// Takes a name given at `path`.
    fn add(&mut self, name: &str, path: &str, place: &str) -> Result<()> {
        let key = key(name);
        if key.is_empty() {
            return Err(blank(path));
        }
        match self.0.insert(key, place.to_owned()) {
            None => Ok(()),
            Some(first) => Err(repeated(path, name, &first)),
        }
    }
}

fn blank(path: &str) -> Box<Failure> {
    Failure::new(Code::KeyMissing, path)
        .written("a blank name")
        .allowed("a name, or none at all")
        .remedy("leave the name out, or say what the crew calls it")
}

fn repeated(path: &str, name: &str, first: &str) -> Box<Failure> {
    Failure::new(Code::KeyRepeated, path)
        .written(format!("`{}`, already {first}", name.trim()))
        .allowed("a name for each edge; only neighbouring runs may share one")
        .remedy("give the other edge a name of its own")
}
