//! The list of frozen names. Saved sheets hold the names of functions and the order of their arguments, so a line that stands
//! is never changed: a new operation comes at the end, and an operation may only gain optional ports behind its others.

use overslab::operation::{Need, Operation};

const HEAD: &str = "\
# Names of operations and the order of their arguments, as saved sheets hold them. Each line stands for the functions
# OVS_<NAME>_US and _SI, with _WHY and with _GET(result; ...). A line never changes, save that optional arguments may be
# added at its end; new lines come last. The generator adds them; it changes none.
";

/// The line of an operation: `fall(drop; run)`.
fn line(row: &Operation) -> String {
    let ports: Vec<&str> = row.ports.iter().map(|port| port.name).collect();
    format!("{}({})", row.name, ports.join("; "))
}

/// A line as name and arguments.
fn apart(line: &str) -> Option<(&str, Vec<&str>)> {
    let (name, arguments) = line.trim().strip_suffix(')')?.split_once('(')?;
    Some((name, arguments.split("; ").filter(|argument| !argument.is_empty()).collect()))
}

fn lines(list: &str) -> impl Iterator<Item = &str> {
    list.lines().filter(|line| !line.is_empty() && !line.starts_with('#'))
}

/// The list with optional arguments and new operations added.
#[must_use]
pub fn grown(list: &str, rows: &[&'static Operation]) -> String {
    let mut text = String::from(HEAD);
    let mut known = Vec::new();
    for old in lines(list) {
        let row = apart(old).and_then(|(name, _)| rows.iter().find(|row| row.name == name));
        match row {
            Some(row) if faults_of(old, row).is_empty() => text.push_str(&line(row)),
            _ => text.push_str(old),
        }
        text.push('\n');
        known.extend(apart(old).map(|(name, _)| name));
    }
    for row in rows.iter().filter(|row| !known.contains(&row.name)) {
        text.push_str(&line(row));
        text.push('\n');
    }
    text
}

/// The operations in the order of the list.
pub(super) fn order(list: &str, rows: &[&'static Operation]) -> Vec<&'static Operation> {
    let named = lines(list).filter_map(apart);
    named.filter_map(|(name, _)| rows.iter().copied().find(|row| row.name == name)).collect()
}

/// What the table has changed of what is frozen.
#[must_use]
pub fn faults(list: &str, rows: &[&'static Operation]) -> Vec<String> {
    let mut faults = Vec::new();
    let mut seen = Vec::new();
    for old in lines(list) {
        let Some((name, _)) = apart(old) else {
            faults.push(format!("cannot be read: {old}"));
            continue;
        };
        if seen.contains(&name) {
            faults.push(format!("stands twice: {old}"));
        }
        seen.push(name);
        match rows.iter().find(|row| row.name == name) {
            Some(row) => faults.extend(faults_of(old, row)),
            None => faults.push(format!("is gone from the table: {old}")),
        }
    }
    faults
}

fn faults_of(old: &str, row: &Operation) -> Vec<String> {
    let Some((_, arguments)) = apart(old) else { return vec![format!("cannot be read: {old}")] };
    let now: Vec<&str> = row.ports.iter().map(|port| port.name).collect();
    if !now.starts_with(&arguments) {
        return vec![format!("was {old}, is now {}", line(row))];
    }
    let added = row.ports.iter().skip(arguments.len()).filter(|port| port.need == Need::Required);
    added.map(|port| format!("{}: the added port {} must be optional", row.name, port.name)).collect()
}
