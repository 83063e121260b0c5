//! The reference page: every operation with all that the table knows of it, every record, every code.

mod numbers;
mod records;
mod rows;

use super::Generated;
use overslab::operation::Operation;
use overslab::operations;
use overslab::specimen;
use std::fmt::Write;

/// The shipped page, and the one of the test-only operations.
#[must_use]
pub fn files() -> Vec<Generated> {
    vec![
        Generated::new("ffi/reference.md", page(operations::OPERATIONS)),
        Generated::new("tests/specimen/reference.md", page(specimen::OPERATIONS)),
    ]
}

/// What holds for all of them.
const HEAD: &str = include_str!("head.md");

fn page(table: &[&'static Operation]) -> String {
    let mut text = format!("{HEAD}\n");
    let mut modules: Vec<&str> = Vec::new();
    for row in table {
        if !modules.contains(&row.module) {
            modules.push(row.module);
        }
    }
    for module in &modules {
        let links = of_module(table, module).map(|row| format!("[{0}](#{0})", row.name));
        let _ = writeln!(text, "- {module}: {}", links.collect::<Vec<_>>().join(", "));
    }
    text.push_str("- [Records](#records)\n- [Failures](#failures)\n- [Notes](#notes)\n");
    for module in &modules {
        let _ = writeln!(text, "\n## {module}");
        for row in of_module(table, module) {
            text.push_str(&rows::section(row));
        }
    }
    text.push_str(&records::section(table));
    text.push_str(&numbers::sections());
    text
}

fn of_module<'a>(
    table: &'a [&'static Operation],
    module: &'a str,
) -> impl Iterator<Item = &'static Operation> {
    table.iter().copied().filter(move |row| row.module == module)
}

/// A table in Markdown.
fn grid(titles: &[&str], lines: &[Vec<String>]) -> String {
    let line = |cells: Vec<String>| format!("| {} |\n", cells.join(" | "));
    let mut text = line(titles.iter().map(|title| (*title).to_owned()).collect());
    text.push_str(&format!("|{}\n", " --- |".repeat(titles.len())));
    for cells in lines {
        text.push_str(&line(cells.iter().map(|cell| cell.replace('|', "\\|")).collect()));
    }
    text
}
