//! What a generated file uses of the border and the engine, and no more.

use std::fmt::Write;

/// What may be used: where it is, its name, and what follows the name where it is used.
const KNOWN: &[(&str, &str, &str)] = &[
    ("crate::answer", "ovs_answer", ","),
    ("crate::answer", "ovs_answer", " {"),
    ("crate::border", "BytesIn", "::"),
    ("crate::border", "Given", "::"),
    ("crate::border", "Input", "::"),
    ("crate::border", "Message", "::"),
    ("crate::border", "Notes", "::"),
    ("crate::border", "Numbers", "::new("),
    ("crate::border", "Output", "::"),
    ("crate::border", "Passed", "::"),
    ("crate::border", "Request", "::"),
    ("crate::border", "TextIn", "::"),
    ("crate::border", "TextOut", "::"),
    ("crate::border", "free", "("),
    ("crate::border", "read", "::"),
    ("crate::border", "record", "::"),
    ("crate::border", "record_type", "("),
    ("crate::border", "row", "("),
    ("crate::border", "scalar", "::"),
    ("crate::border::read", "Holder", "::"),
    ("crate::border::scalar", "Arrays", " {"),
    ("overslab::operation", "Operation", " ="),
    ("overslab::operation", "RecordType", " ="),
    ("overslab::quantity", "System", "::"),
    ("std::ffi", "c_char", ","),
    ("std::ffi", "c_int", ""),
    ("std::ffi", "c_uchar", ","),
];

/// The imports of a file with that body; `table` is the path of its rows, `records` are the types of another file.
pub(super) fn imports(body: &str, table: &str, records: &[String]) -> String {
    let mut paths: Vec<(String, &str)> = Vec::new();
    for (path, name, after) in KNOWN {
        if uses(body, name, after) {
            paths.push(((*path).to_owned(), name));
        }
    }
    for record in records {
        if uses(body, record, ",") || uses(body, record, " {") {
            paths.push(("super::records".to_owned(), record));
        }
    }
    let (table, rows) = table.rsplit_once("::").unwrap_or(("", table));
    if uses(body, rows, ",") {
        paths.push((table.to_owned(), rows));
    }
    paths.sort();
    paths.dedup();
    let mut text = String::new();
    for group in paths.chunk_by(|one, other| one.0 == other.0) {
        let names: Vec<&str> = group.iter().map(|(_, name)| *name).collect();
        let _ = match names.as_slice() {
            [name] => writeln!(text, "use {}::{name};", group[0].0),
            _ => writeln!(text, "use {}::{{{}}};", group[0].0, names.join(", ")),
        };
    }
    text
}

/// Whether the code, comments aside, has the name as a whole word with this behind it.
fn uses(body: &str, name: &str, after: &str) -> bool {
    let wanted = format!("{name}{after}");
    let whole = |line: &str, at: usize| {
        let before = line[..at].chars().next_back();
        // A path such as `border::row` has its own import.
        !before.is_some_and(|sign| sign.is_ascii_alphanumeric() || sign == '_' || sign == ':')
    };
    body.lines()
        .filter(|line| !line.trim_start().starts_with("///"))
        .any(|line| line.match_indices(&wanted).any(|(at, _)| whole(line, at)))
}
