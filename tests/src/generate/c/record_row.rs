//! The functions of a record row: the call and the reason in full, each in both systems of units.

use super::doc;
use super::function::{Argument, Function, Type, argument};
use super::names;
use super::scalar::{message, why_arguments, why_lines};
use overslab::operation::{Kind, Need, Operation, Port, RecordType, TableType};
use overslab::quantity::System;

/// What the call gives.
#[derive(Clone, Copy)]
enum Shape {
    /// One record: a pointer to it.
    Record(&'static RecordType),
    /// Numbers, counts and words only: an array.
    Numbers,
    /// Anything else: a pointer to an answer.
    Answer,
}

fn shape(row: &Operation) -> Shape {
    let plain = |port: &Port| match port.kind {
        Kind::Number(_) | Kind::Count(..) | Kind::Choice(_) => true,
        Kind::Text | Kind::Bytes | Kind::Table(_) | Kind::Record(_) => false,
    };
    match row.makes() {
        Some(record) => Shape::Record(record),
        None if row.results.iter().all(plain) => Shape::Numbers,
        None => Shape::Answer,
    }
}

/// Whether the results of the row are read by their numbers.
pub(super) fn numbers_its_results(row: &Operation) -> bool {
    !matches!(shape(row), Shape::Record(_))
}

/// Every function of the row, in the order of the header.
pub(super) fn functions(row: &'static Operation) -> Vec<Function> {
    let calls = System::ALL.map(|system| call(row, system));
    let whys = System::ALL.map(|system| why(row, system));
    calls.into_iter().chain(whys).collect()
}

fn name(row: &Operation, system: System) -> String {
    format!("ovs_{}_{}", row.name, system.word())
}

/// One port as arguments: what it is in C, how it is handed to the border, what is said of it.
struct Part {
    arguments: Vec<Argument>,
    given: String,
    lines: Vec<String>,
}

fn required(port: &Port) -> bool {
    port.need == Need::Required
}

/// Whether the port is an argument: what is required, and records, for which null stands where none is given. A table none of
/// whose columns is an array goes by the options.
fn is_argument(port: &Port) -> bool {
    match port.kind {
        Kind::Record(_) => true,
        Kind::Table(table) => required(port) && table.columns.iter().any(|column| is_array(table, column)),
        Kind::Number(_) | Kind::Count(..) | Kind::Choice(_) | Kind::Text | Kind::Bytes => required(port),
    }
}

/// The arguments of a row: required ports in the order of the row, then optional records.
fn parts(row: &Operation, system: System) -> Vec<Part> {
    let places = || row.ports.iter().enumerate();
    let first = places().filter(|(_, port)| required(port) && is_argument(port));
    let then = places().filter(|(_, port)| !required(port) && is_argument(port));
    first.chain(then).map(|(place, port)| part(row, place, port, system)).collect()
}

fn part(row: &Operation, place: usize, port: &Port, system: System) -> Part {
    let name = names::port(port, system);
    let line = doc::input(&name, port, system);
    let single = |kind: Type, given: String| Part {
        arguments: vec![argument(name.clone(), kind)],
        given: format!("({place}, {given})"),
        lines: vec![line.clone()],
    };
    match &port.kind {
        Kind::Number(_) => single(Type::Double, format!("Given::Number({name})")),
        Kind::Count(..) => {
            doc::fits_int(row, port);
            single(Type::Int, format!("Given::Whole({name})"))
        }
        Kind::Choice(_) => single(Type::Int, format!("Given::Whole({name})")),
        Kind::Text => Part {
            arguments: vec![argument(name.clone(), Type::Text), argument(format!("{name}_len"), Type::Int)],
            given: format!("({place}, Given::Text(TextIn::new(\"{}\", {name}, {name}_len)))", port.name),
            lines: vec![format!("- `{name}`, `{name}_len`: {}.", port.meaning)],
        },
        Kind::Bytes => Part {
            arguments: vec![argument(name.clone(), Type::Bytes), argument(format!("{name}_len"), Type::Int)],
            given: format!("({place}, Given::Bytes(BytesIn::new(\"{}\", {name}, {name}_len)))", port.name),
            lines: vec![format!("- `{name}`, `{name}_len`: {}, as they are.", port.meaning)],
        },
        Kind::Table(table) => table_part(row, place, port, table, system),
        Kind::Record(record) => {
            let null = if required(port) { "" } else { "; may be null" };
            Part {
                arguments: vec![argument(name.clone(), Type::Opaque(record_name(record)))],
                given: format!("({place}, Given::Record(Passed::new(\"{}\", {name})))", port.name),
                lines: vec![format!("- `{name}`: {}{null}.", port.meaning)],
            }
        }
    }
}

/// Whether a column of a required table is an array: a required one that ints or doubles can hold. Where a table has none of
/// these its optional numbers are arrays, which may be null and hold NaN for an empty cell; else all that is read would have
/// to be written as JSON.
fn is_array(table: &TableType, column: &Port) -> bool {
    let plain = |column: &Port| match column.kind {
        Kind::Number(_) | Kind::Count(..) | Kind::Choice(_) => true,
        Kind::Text => false,
        Kind::Bytes | Kind::Table(_) | Kind::Record(_) => panic!("{}: no kind of column", column.name),
    };
    if table.columns.iter().any(|column| required(column) && plain(column)) {
        return required(column) && plain(column);
    }
    matches!(column.kind, Kind::Number(_))
}

fn table_part(row: &Operation, place: usize, port: &Port, table: &TableType, system: System) -> Part {
    let rows = names::argument(&format!("{}_rows", port.name));
    let mut part = Part { arguments: Vec::new(), given: String::new(), lines: Vec::new() };
    let mut given = Vec::new();
    for (at, column) in table.columns.iter().enumerate().filter(|(_, column)| is_array(table, column)) {
        let name = names::argument(&format!("{}_{}", port.name, column.unit_name(system)));
        let (kind, wrap) = match column.kind {
            Kind::Number(_) => (Type::Doubles, "Numbers"),
            _ => {
                doc::fits_int(row, column);
                (Type::Ints, "Whole")
            }
        };
        given.push(format!("({at}, Input::{wrap}({name}))"));
        part.lines.push(column_line(&name, column, system));
        part.arguments.push(argument(name, kind));
    }
    let least = if table.least_rows > 0 { format!("; at least {}", table.least_rows) } else { String::new() };
    part.lines.push(format!("- `{rows}`: {}: how many rows, each {}{least}.", port.meaning, table.meaning));
    part.given = format!("({place}, Given::Table({rows}, &[{}]))", given.join(", "));
    part.arguments.push(argument(rows, Type::Int));
    part
}

fn column_line(name: &str, column: &Port, system: System) -> String {
    let line = doc::input(name, column, system);
    if required(column) {
        return line;
    }
    format!("{}; NaN for an empty cell, may be null.", line.trim_end_matches('.'))
}

/// What goes by `options_json`: ports and columns that are no arguments.
fn option_lines(row: &Operation, system: System) -> Vec<String> {
    let mut lines = Vec::new();
    for port in row.ports {
        match &port.kind {
            Kind::Table(table) => {
                if !is_argument(port) {
                    lines.push(option_line(port, "", system));
                }
                let columns =
                    table.columns.iter().filter(|column| !is_argument(port) || !is_array(table, column));
                lines.extend(
                    columns.map(|column| option_line(column, &format!(" of `{}`", port.name), system)),
                );
            }
            Kind::Number(_)
            | Kind::Count(..)
            | Kind::Choice(_)
            | Kind::Text
            | Kind::Bytes
            | Kind::Record(_) => {
                if !required(port) {
                    lines.push(option_line(port, "", system));
                }
            }
        }
    }
    lines
}

fn option_line(port: &Port, of: &str, system: System) -> String {
    let (unit, range) = (doc::unit(port, system), doc::may_be(port, system));
    let must = if required(port) { "; required" } else { "" };
    format!("  - `{}`{of}{unit}: {}{range}{must}.", port.name, port.meaning)
}

fn options_arguments() -> [Argument; 2] {
    [argument("options_json", Type::Text), argument("options_len", Type::Int)]
}

fn input_lines(row: &Operation, system: System, parts: &[Part]) -> Vec<String> {
    let mut lines: Vec<String> = parts.iter().flat_map(|part| part.lines.clone()).collect();
    let options = option_lines(row, system);
    if options.is_empty() {
        lines.push("- `options_json`, `options_len`: none yet; may be null.".to_owned());
    } else {
        lines.push(
            "- `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:"
                .to_owned(),
        );
        lines.extend(options);
    }
    lines
}

fn request(row: &Operation, system: System, parts: &[Part]) -> String {
    let given: String = parts.iter().map(|part| format!("    {},\n", part.given)).collect();
    format!(
        "let given = [\n{given}];\nlet request = Request::new({}, {}, &given, options_json, options_len);\n",
        names::row(row.name),
        names::system(system)
    )
}

fn call(row: &'static Operation, system: System) -> Function {
    let parts = parts(row, system);
    let mut lines = doc::head(row);
    lines.extend(input_lines(row, system, &parts));
    let (outs, gives, call) = match shape(row) {
        Shape::Record(record) => {
            lines.push("- `status`, out: the status of the call; may be null.".to_owned());
            let call = format!(
                "record::make(request, {}, status, Notes::new(notes, notes_len), Message::new(msg, msg_len))",
                names::record(record.name)
            );
            (vec![argument("status", Type::IntsOut)], Type::OpaqueOut(record_name(record)), call)
        }
        Shape::Numbers => {
            lines.push(
                "- `results`, `results_len`, out: as many as there is room for, by their constants:"
                    .to_owned(),
            );
            lines.extend(result_lines(row, system));
            let call = "record::numbers(request, Numbers::new(\"results\", results, results_len), \
                        Notes::new(notes, notes_len), Message::new(msg, msg_len))";
            let outs = vec![argument("results", Type::DoublesOut), argument("results_len", Type::Int)];
            (outs, Type::Int, call.to_owned())
        }
        Shape::Answer => {
            lines.push("- `status`, out: the status of the call; may be null.".to_owned());
            let call =
                "record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len))";
            (
                vec![argument("status", Type::IntsOut)],
                Type::OpaqueOut("ovs_answer".to_owned()),
                call.to_owned(),
            )
        }
    };
    lines.push(
        "- `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null."
            .to_owned(),
    );
    if let Shape::Record(record) = shape(row) {
        lines.extend([String::new(), format!("Returns the record, or null: {}", record.meaning)]);
    }
    if matches!(shape(row), Shape::Answer) {
        lines.extend([
            String::new(),
            "Returns an answer, or null; its results by their constants:".to_owned(),
        ]);
        lines.extend(result_lines(row, system));
    }
    lines.extend(doc::foot(row));
    lines.push(format!("Example, as JSON: {}", one_line(row)));
    let ends = [argument("notes", Type::IntsOut), argument("notes_len", Type::Int)];
    let body = format!("{}unsafe {{ {call} }}", request(row, system, &parts));
    let arguments = inputs(parts).chain(outs).chain(ends).chain(message()).collect();
    Function { name: name(row, system), doc: lines, arguments, gives: Some(gives), body }
}

fn inputs(parts: Vec<Part>) -> impl Iterator<Item = Argument> {
    parts.into_iter().flat_map(|part| part.arguments).chain(options_arguments())
}

fn result_lines(row: &Operation, system: System) -> Vec<String> {
    let line = |port: &Port| {
        let constant = names::constant(&[row.name, port.name]);
        format!("  {}", doc::field(&constant, port, system))
    };
    row.results.iter().map(line).collect()
}

fn why(row: &'static Operation, system: System) -> Function {
    let parts = parts(row, system);
    let called = name(row, system);
    let mut lines = vec![
        format!("Why {called} refuses these inputs, in full; else its notes and what was taken, one a line."),
        String::new(),
    ];
    lines.extend(why_lines());
    let body = format!(
        "{}unsafe {{ record::why(request, TextOut::new(\"text\", text, text_len, needed)) }}",
        request(row, system, &parts)
    );
    let arguments = inputs(parts).chain(why_arguments()).collect();
    Function { name: format!("{called}_why"), doc: lines, arguments, gives: Some(Type::Int), body }
}

/// The name of a record type in C.
pub(super) fn record_name(record: &RecordType) -> String {
    format!("ovs_{}", record.name)
}

fn one_line(row: &Operation) -> String {
    serde_json::Value::Object(doc::example(row)).to_string()
}
