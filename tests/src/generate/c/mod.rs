//! The C library's functions and constants, as plain Rust files: the header's maker reads them, and it expands no macros.
//!
//! One file for the statuses and notes, one for the record types, one per module of the table; everything of the test-only
//! rows lies in a file of its own.
#![expect(clippy::panic, reason = "a generator stops at what it does not know rather than pass it over")]

mod constants;
pub(super) mod doc;
mod function;
mod imports;
mod names;
mod record_row;
mod record_type;
mod scalar;

use super::Generated;
use constants::Constants;
use function::Function;
use overslab::operation::{Call, Operation, RecordType};
use overslab::operations::{OPERATIONS, records};
use overslab::specimen;
use std::fmt::Write;

const DIRECTORY: &str = "ffi/src/generated";
/// The file of the test-only rows.
pub(super) const SPECIMEN: &str = "ffi/src/generated/specimen.rs";

/// Every file, the public ones first.
#[must_use]
pub fn files() -> Vec<Generated> {
    let mut constants = Constants::default();
    let modules = modules();
    let types = records(OPERATIONS);
    let named = |record: &RecordType| [record_row::record_name(record), names::record(record.name)];
    let others: Vec<String> = types.iter().flat_map(|record| named(record)).collect();
    let mut files = vec![
        Generated::new(format!("{DIRECTORY}/mod.rs"), index(&modules)),
        Generated::new(format!("{DIRECTORY}/codes.rs"), codes(&mut constants)),
        Generated::new(
            format!("{DIRECTORY}/records.rs"),
            Part { rows: &[], types: &types, others: &[], table: PUBLIC, about: "The record types." }
                .text(&mut constants),
        ),
    ];
    for module in modules {
        let rows: Vec<&'static Operation> =
            OPERATIONS.iter().copied().filter(|row| row.module == module).collect();
        let about = format!("The operations of `{module}`.");
        let part = Part { rows: &rows, types: &[], others: &others, table: PUBLIC, about: &about };
        files.push(Generated::new(format!("{DIRECTORY}/{module}.rs"), part.text(&mut constants)));
    }
    let known = |record: &&'static RecordType| !types.iter().any(|public| public.name == record.name);
    let types: Vec<_> = records(specimen::OPERATIONS).into_iter().filter(known).collect();
    let part = Part {
        rows: specimen::OPERATIONS,
        types: &types,
        others: &others,
        table: "overslab::specimen::OPERATIONS",
        about: "The test-only operations.",
    };
    files.push(Generated::new(SPECIMEN, part.text(&mut constants)));
    unique(&files);
    files
}

const PUBLIC: &str = "overslab::operations::OPERATIONS";

/// The modules of the table, in its order.
fn modules() -> Vec<&'static str> {
    let mut modules: Vec<&str> = Vec::new();
    for row in OPERATIONS {
        if !modules.contains(&row.module) {
            modules.push(row.module);
        }
    }
    let taken = ["codes", "mod", "records", "specimen"];
    assert!(!modules.iter().any(|module| taken.contains(module)), "a module is called as a file of ours");
    modules
}

/// What stands at the head of every generated file.
fn head(about: &str) -> String {
    format!(
        "//! {about}\n//!\n//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.\n"
    )
}

fn index(modules: &[&str]) -> String {
    let mut text = head("One short function per operation and system of units.");
    text.push_str(
        "#![expect(unsafe_code, reason = \"exported names, and the caller's promise handed on to the border\")]\n\
         #![expect(clippy::missing_safety_doc, reason = \"the promise stands once, at the head of the header\")]\n\
         #![allow(rustdoc::broken_intra_doc_links, rustdoc::invalid_html_tags, reason = \"the comments are for C\")]\n\
         #![allow(clippy::too_many_arguments, reason = \"C has no other way to take them\")]\n\n",
    );
    for module in ["codes", "records"].iter().chain(modules) {
        let _ = writeln!(text, "#[rustfmt::skip]\npub mod {module};");
    }
    text.push_str("#[cfg(feature = \"specimen\")]\n#[rustfmt::skip]\npub mod specimen;\n");
    text
}

fn codes(constants: &mut Constants) -> String {
    format!("{}\nuse std::ffi::c_int;\n{}", head("The statuses and the notes."), constants.codes())
}

/// The content of one file.
struct Part<'a> {
    rows: &'a [&'static Operation],
    types: &'a [&'static RecordType],
    /// The names of the record types of another file.
    others: &'a [String],
    /// The table in Rust.
    table: &'a str,
    about: &'a str,
}

impl Part<'_> {
    fn text(&self, constants: &mut Constants) -> String {
        let mut body = String::new();
        for record in self.types {
            body.push_str(&constants.record(record));
            let _ = write!(body, "\n{}", record_type::declaration(record));
        }
        for row in self.rows {
            body.push_str(&constants.row(row));
        }
        for record in self.types {
            let _ = writeln!(
                body,
                "\npub(crate) static {}: &RecordType = record_type(OPERATIONS, \"{}\");",
                names::record(record.name),
                record.name
            );
            push(&mut body, &record_type::functions(record));
        }
        for row in self.rows {
            let name = names::row(row.name);
            let _ = writeln!(body, "\nstatic {name}: &Operation = row(OPERATIONS, \"{}\");", row.name);
            push(&mut body, &functions(row));
        }
        let imports = imports::imports(&body, self.table, self.others);
        format!("{}\n{imports}{body}", head(self.about))
    }
}

fn push(body: &mut String, functions: &[Function]) {
    for function in functions {
        let _ = write!(body, "\n{}", function.text());
    }
}

fn functions(row: &'static Operation) -> Vec<Function> {
    match row.call {
        Call::Scalar(_) => scalar::functions(row),
        Call::Record(_) => record_row::functions(row),
    }
}

/// No name is exported twice.
fn unique(files: &[Generated]) {
    let mut names: Vec<&str> = files
        .iter()
        .flat_map(|file| file.text.lines())
        .filter_map(|line| line.split_once("extern \"C\" fn "))
        .map(|(_, name)| name)
        .collect();
    names.sort_unstable();
    if let Some(pair) = names.windows(2).find(|pair| pair[0] == pair[1]) {
        panic!("two functions would be called {}", pair[0].trim_end_matches('('));
    }
}
