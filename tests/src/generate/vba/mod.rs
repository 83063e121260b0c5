//! The VBA module: a declaration for each function of the library that it calls, and three worksheet functions per operation and
//! system of units.

mod functions;
mod names;

use super::calc::{self, AddIn};
use super::{Generated, header};
use crate::c_header::{Header, Prototype, Type};
use functions::functions;
use overslab::failure::Code;
use std::fmt::Write;

/// The module but for declarations and functions.
const TEMPLATE: &str = include_str!("template.bas");

/// The library's name on Windows, with the number of its ABI.
const LIBRARY: &str = "overslab-0.dll";

/// Functions of the library that belong to no operation, and the names by which the module calls them.
const FIXED: [(&str, &str); 3] = [
    ("ovs_abi_version", "dll_abi_version"),
    ("ovs_version", "dll_version"),
    ("ovs_sheet_values", "dll_sheet_values"),
];

/// The shipped module, and the one of the test-only operations.
#[must_use]
pub fn files(headers: &[Generated]) -> Vec<Generated> {
    let header =
        |path: &str| headers.iter().find(|file| file.path == path).map_or("", |file| file.text.as_str());
    vec![
        Generated::new("ffi/vba/Overslab.bas", module(&calc::SHIPPED, "Overslab", header(header::SHIPPED))),
        Generated::new(
            "tests/specimen/OverslabSpecimen.bas",
            module(&calc::SPECIMEN, "OverslabSpecimen", header(header::SPECIMEN)),
        ),
    ]
}

fn module(add_in: &AddIn, name: &str, header: &str) -> String {
    let header = Header::read(header);
    let constant = |name: &str| header.constants.get(name).map_or_else(String::new, i64::to_string);
    let text = TEMPLATE
        .replace("VERSION_FUNCTION", add_in.version)
        .replace("MODULE", name)
        .replace("CELL_NUMBER_KIND", &constant("OVS_CELL_NUMBER"))
        .replace("CELL_TEXT_KIND", &constant("OVS_CELL_TEXT"))
        .replace("CELL_REFUSED_KIND", &constant("OVS_CELL_REFUSED"))
        .replace("ABI_NUMBER", &constant("OVS_ABI_VERSION"))
        .replace("BUFFER_SHORT_CODE", &Code::BufferShort.number().to_string())
        .replace("NOT_FINITE_CODE", &Code::NotFinite.number().to_string())
        .replace("NEGATIVE_CODE", &Code::Negative.number().to_string())
        .replace("OUT_OF_RANGE_CODE", &Code::OutOfRange.number().to_string())
        .replace("DECLARES\n", &declares(add_in, &header))
        .replace("\nFUNCTIONS\n", &functions(add_in.rows));
    // The VBA editor writes and reads lines that end so.
    text.replace('\n', "\r\n")
}

/// The declarations, once for each generation of Office: the older one knows neither `PtrSafe` nor `LongPtr`.
fn declares(add_in: &AddIn, header: &Header) -> String {
    let fixed = FIXED.iter().map(|(name, called)| ((*name).to_owned(), (*called).to_owned()));
    let of_rows = add_in.rows.iter().filter(|row| row.is_scalar()).flat_map(|row| names::systems(row.name));
    let wanted: Vec<(String, String)> = fixed.chain(of_rows).collect();
    let mut text = String::new();
    for (open, safe, pointer) in [("#If VBA7 Then", " PtrSafe", "LongPtr"), ("#Else", "", "Long")] {
        let _ = writeln!(text, "{open}");
        let _ = writeln!(
            text,
            "Private Declare{safe} Function dll_load Lib \"kernel32\" Alias \"LoadLibraryW\" (ByVal file As {pointer}) As {pointer}"
        );
        for (name, called) in &wanted {
            if let Some(prototype) = header.functions.iter().find(|prototype| prototype.name == *name) {
                text.push_str(&declare(safe, called, prototype));
            }
        }
    }
    text + "#End If\n"
}

fn declare(safe: &str, called: &str, prototype: &Prototype) -> String {
    let arguments: Vec<String> = prototype
        .arguments
        .iter()
        .map(|argument| {
            let (how, kind) = in_basic(&argument.kind);
            format!("{how} {} As {kind}", names::plain(&argument.name))
        })
        .collect();
    // A macro may call the functions of operations; what the module itself needs is not offered.
    let scope = if FIXED.iter().any(|(_, fixed)| *fixed == called) { "Private" } else { "Public" };
    format!(
        "{scope} Declare{safe} Function {called} Lib \"{LIBRARY}\" Alias \"{}\" ({}) As Long\n",
        prototype.name,
        arguments.join(", ")
    )
}

/// How a type of the header is declared. A text that goes in is ASCII only, and VBA hands it over as such.
#[must_use]
pub fn in_basic(kind: &Type) -> (&'static str, &'static str) {
    match kind {
        Type::Double => ("ByVal", "Double"),
        Type::Int => ("ByVal", "Long"),
        Type::In(word) if word == "char" => ("ByVal", "String"),
        Type::Out(word) if word == "char" => ("ByRef", "Byte"),
        Type::In(word) | Type::Out(word) if word == "double" => ("ByRef", "Double"),
        Type::In(word) | Type::Out(word) if word == "int" => ("ByRef", "Long"),
        _ => ("ByVal", "LongPtr"),
    }
}
