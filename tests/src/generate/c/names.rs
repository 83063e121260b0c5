//! Names in C: of arguments, functions and constants.

use overslab::operation::Port;
use overslab::quantity::System;

/// Words that an argument may not be called by: keywords of C and C++, keywords of Rust, macros of system headers, and the
/// arguments and variables that every function of a shape has.
const TAKEN: &str = "\
    alignas alignof and asm auto bitand bitor bool break case catch char class compl concept const constexpr continue \
    decltype default delete do double else enum explicit export extern false float for friend goto if inline int long \
    mutable namespace new noexcept not nullptr operator or private protected public register requires restrict return \
    short signed sizeof static struct switch template this throw true try typedef typeid typename typeof union unsigned \
    using virtual void volatile wchar_t while xor \
    abstract as async await become box crate dyn final fn gen impl in let loop macro match mod move mut override priv pub \
    ref self super trait type unsafe unsized use where yield \
    far linux max min near small stderr stdin stdout unix \
    arrays bad_index given msg msg_len n needed notes notes_len options_json options_len request results results_len \
    status text text_len";

/// An argument's name, out of the way of what is taken.
pub(super) fn argument(name: &str) -> String {
    if TAKEN.split_whitespace().any(|taken| taken == name) {
        format!("{name}_value")
    } else {
        name.to_owned()
    }
}

/// The name of a port as an argument, with its unit.
pub(super) fn port(port: &Port, system: System) -> String {
    argument(&port.unit_name(system))
}

/// The names of a row's results as arguments; one that an input has already gets `_out`.
pub(super) fn results(ports: &[Port], results: &[Port], system: System) -> Vec<String> {
    let inputs: Vec<String> = ports.iter().map(|port| self::port(port, system)).collect();
    let name = |result: &Port| {
        let name = port(result, system);
        if inputs.contains(&name) { format!("{name}_out") } else { name }
    };
    results.iter().map(name).collect()
}

/// A constant of these parts: `OVS_ORDER_LOADS`.
pub(super) fn constant(parts: &[&str]) -> String {
    let plain = |c: char| if c.is_ascii_alphanumeric() { c.to_ascii_uppercase() } else { '_' };
    let part = |part: &&str| part.chars().map(plain).collect::<String>();
    format!("OVS_{}", parts.iter().map(part).collect::<Vec<_>>().join("_"))
}

/// The Rust constant of a row.
pub(super) fn row(operation: &str) -> String {
    operation.to_ascii_uppercase()
}

/// A record as the argument of its own functions, out of the way of their other arguments.
pub(super) fn itself(record: &str) -> String {
    match record {
        "cells" | "column" | "field" | "json" | "out" | "row" | "rows" | "values" => {
            format!("{record}_value")
        }
        _ => argument(record),
    }
}

/// The Rust constant of a record type.
pub(super) fn record(record: &str) -> String {
    format!("{}_TYPE", record.to_ascii_uppercase())
}

/// The variant of a system in Rust.
pub(super) const fn system(system: System) -> &'static str {
    match system {
        System::Us => "System::Us",
        System::Si => "System::Si",
    }
}
