//! The C library's functions and constants, as plain Rust files: the header's maker reads them, and it expands no macros.
//!
//! One file per module of the table, one for the constants, one for the record types; everything of the test-only rows lies
//! in a file of its own.
#![expect(clippy::panic, reason = "a generator stops at what it does not know rather than pass it over")]

mod doc;
mod function;
mod names;
mod scalar;

use super::Generated;
use function::Function;
use overslab::operation::{Call, Operation};
use overslab::operations::OPERATIONS;
use overslab::specimen;
use std::fmt::Write;

const DIRECTORY: &str = "ffi/src/generated";

/// Every file, the public ones first.
#[must_use]
pub fn files() -> Vec<Generated> {
    let mut modules: Vec<&str> = Vec::new();
    for row in OPERATIONS {
        if !modules.contains(&row.module) {
            modules.push(row.module);
        }
    }
    let mut files = vec![Generated::new(format!("{DIRECTORY}/mod.rs"), index(&modules))];
    for module in &modules {
        let rows: Vec<&'static Operation> =
            OPERATIONS.iter().copied().filter(|row| row.module == *module).collect();
        let text = file(&rows, "overslab::operations::OPERATIONS", &format!("The operations of `{module}`."));
        files.push(Generated::new(format!("{DIRECTORY}/{module}.rs"), text));
    }
    let text = file(specimen::OPERATIONS, "overslab::specimen::OPERATIONS", "The test-only operations.");
    files.push(Generated::new(format!("{DIRECTORY}/specimen.rs"), text));
    files
}

/// What stands at the head of every generated file.
fn head(about: &str) -> String {
    format!(
        "//! {about}\n//!\n//! Made from the table of operations; change the table and run \
         `BLESS=1 cargo test -p overslab-tests fresh`.\n"
    )
}

fn index(modules: &[&str]) -> String {
    let mut text = head("One short function per operation and system of units.");
    text.push_str("#![expect(unsafe_code, reason = \"exported names, and the caller's promise handed on to the border\")]\n");
    text.push_str(
        "#![expect(clippy::missing_safety_doc, reason = \"the promise stands once, at the head of the header\")]\n\n",
    );
    for module in modules {
        let _ = writeln!(text, "#[rustfmt::skip]\npub mod {module};");
    }
    text.push_str("#[cfg(feature = \"specimen\")]\n#[rustfmt::skip]\npub mod specimen;\n");
    text
}

/// One file of operations.
fn file(rows: &[&'static Operation], table: &str, about: &str) -> String {
    let mut text = head(about);
    text.push_str(
        "\nuse crate::border::scalar::{self, Arrays};\nuse crate::border::{Input, Message, Output, TextOut, row};\n",
    );
    let _ =
        writeln!(text, "use {table};\nuse overslab::operation::Operation;\nuse overslab::quantity::System;");
    text.push_str("use std::ffi::{c_char, c_int};\n");
    for row in rows {
        let name = names::row(row.name);
        let _ = writeln!(text, "\nstatic {name}: &Operation = row(OPERATIONS, \"{}\");", row.name);
        for function in functions(row) {
            let _ = write!(text, "\n{}", function.text());
        }
    }
    text
}

fn functions(row: &'static Operation) -> Vec<Function> {
    match row.call {
        Call::Scalar(_) => scalar::functions(row),
        Call::Record(_) => Vec::new(),
    }
}
