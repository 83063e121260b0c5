//! Records and their fields.

use super::{grid, rows};
use overslab::operation::{Operation, RecordType};
use overslab::operations::records;
use std::fmt::Write;

pub(super) fn section(table: &[&'static Operation]) -> String {
    let mut text = String::from("\n## Records\n");
    for record in records(table) {
        text.push_str(&of_record(record, table));
    }
    text
}

fn of_record(record: &RecordType, table: &[&'static Operation]) -> String {
    let mut text = format!("\n### record {}\n\n{}\n\n", record.name, record.meaning);
    let _ = writeln!(text, "- Names: `ovs_{}` in C, `overslab.{}` in Python", record.name, record.class);
    let makers: Vec<String> = table
        .iter()
        .filter(|row| row.makes().is_some_and(|made| made.name == record.name))
        .map(|row| format!("[{0}](#{0})", row.name))
        .collect();
    if !makers.is_empty() {
        let _ = writeln!(text, "- Made by: {}", makers.join(", "));
    }
    let fields: Vec<Vec<String>> = record.fields.iter().map(rows::result).collect();
    text.push('\n');
    if !fields.is_empty() {
        text.push_str(&grid(&["Field", "Unit", "Meaning"], &fields));
    }
    text
}
