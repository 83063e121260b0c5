//! Edges by their names.

use super::{Corner, Hole, Outline, Run};
use crate::failure::{Code, Failure, Result, nearest};
use crate::geometry::{RingId, RunId};

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
            Some(near) => format!("perhaps `{near}` is meant"),
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
    check_names(&names, given)?;
    let mut runs = ring(RingId::Outer, corners, names);
    for (index, hole) in holes.iter().enumerate() {
        check_hole(index, hole, &runs, holes)?;
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

/// Refuses blank names and names that stand for two edges.
fn check_names(names: &[String], given: &[Option<String>]) -> Result<()> {
    let keys: Vec<String> = names.iter().map(|name| key(name)).collect();
    for (index, name) in keys.iter().enumerate() {
        if name.is_empty() {
            return Err(blank(format!("names[{index}]")));
        }
        let Some(first) = keys.iter().take(index).position(|other| other == name) else { continue };
        // A number that was counted, not given, is no edge's name by intent.
        let counted = |index: usize| matches!(given.get(index), None | Some(None));
        if !one_edge(&keys, name) || counted(first) || counted(index) {
            return Err(repeated(format!("names[{index}]"), &names[index], &format!("names[{first}]")));
        }
    }
    Ok(())
}

/// Refuses a hole whose name, or the name of one of its sides, is blank or stands for something else.
fn check_hole(index: usize, hole: &Hole, runs: &[Run], holes: &[Hole]) -> Result<()> {
    let path = format!("holes[{index}].name");
    if key(&hole.name).is_empty() {
        return Err(blank(path));
    }
    for name in side_names(hole).chain([hole.name.clone()]) {
        let wanted = key(&name);
        if runs.iter().any(|run| key(run.name()) == wanted) {
            return Err(repeated(path, &name, "a run of the outline or of an earlier hole"));
        }
        if let Some(before) = holes.iter().take(index).position(|other| key(&other.name) == wanted) {
            return Err(repeated(path, &name, &format!("holes[{before}].name")));
        }
    }
    Ok(())
}

/// Whether all runs of this name follow one another round the ring.
fn one_edge(keys: &[String], name: &str) -> bool {
    let ends = keys.iter().zip(keys.iter().cycle().skip(1));
    ends.filter(|(this, next)| *this == name && *next != name).count() <= 1
}

fn blank(path: String) -> Box<Failure> {
    Failure::new(Code::KeyMissing, path)
        .written("a blank name")
        .allowed("a name, or none at all")
        .remedy("leave the name out, or say what the crew calls it")
}

fn repeated(path: String, name: &str, first: &str) -> Box<Failure> {
    Failure::new(Code::KeyRepeated, path)
        .written(format!("`{}`, already {first}", name.trim()))
        .allowed("a name for each edge; only neighbouring runs may share one")
        .remedy("give the other edge a name of its own")
}
