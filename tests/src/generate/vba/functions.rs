//! The worksheet functions.

use super::names;
use crate::generate::calc::names::{self as shown, Want};
use crate::generate::words;
use overslab::operation::{Kind, Need, Operation, Port};
use overslab::quantity::System;
use std::fmt::Write;

pub(super) fn functions(rows: &[&'static Operation]) -> String {
    let mut text = String::new();
    for row in rows {
        for (system, want) in shown::functions() {
            text.push('\n');
            if want == Want::Value {
                text.push_str(&comment(row, system));
            }
            text.push_str(&function(row, system, want));
        }
    }
    text
}

fn comment(row: &Operation, system: System) -> String {
    let mut text = format!("' {}\n", row.meaning);
    for port in row.ports {
        let _ = writeln!(text, "' {}: {}", names::argument(port, system), words::argument_told(port, system));
    }
    let results: Vec<String> = row.results.iter().map(|port| words::result(port, system)).collect();
    text.push_str(&gives(&results));
    text
}

/// The editor takes lines of 1000 characters and a few: what is longer goes on in the next comment.
const LONGEST: usize = 950;

fn gives(results: &[String]) -> String {
    let mut text = "' Gives ".to_owned();
    let mut started = text.len();
    for (place, result) in results.iter().enumerate() {
        if text.len() - started + result.len() > LONGEST {
            text.truncate(text.trim_end().len());
            text.push_str("\n'   ");
            started = text.len();
        }
        text.push_str(result);
        text.push_str(if place + 1 == results.len() { ".\n" } else { ", " });
    }
    text
}

fn function(row: &Operation, system: System, want: Want) -> String {
    let name = shown::typed(row.name, system, want);
    let result = (want == Want::Get).then(|| "ByVal result As Variant".to_owned());
    let arguments: Vec<String> = result.into_iter().chain(declared(row, system)).collect();
    let mut text = format!("Public Function {name}({}) As Variant\n", arguments.join(", "));
    if want == Want::Value
        && row.is_scalar()
        && !row.ports.iter().any(|port| matches!(port.kind, Kind::Choice(_)))
    {
        text.push_str(&direct(row, system, &name));
    }
    let word = match want {
        Want::Value => "value",
        Want::Why => "why",
        Want::Get => "get",
    };
    let named = if want == Want::Get { "result" } else { "\"\"" };
    let _ = writeln!(
        text,
        "    {name} = Called(\"{}\", \"{}\", \"{word}\", {named}, {})\nEnd Function",
        row.name,
        system.word(),
        list(row, system)
    );
    text
}

/// The arguments as declared: from the first that may be left out on, all may.
fn declared(row: &Operation, system: System) -> Vec<String> {
    let mut optional = "";
    let declare = |port: &Port| {
        if port.need != Need::Required {
            optional = "Optional ";
        }
        format!("{optional}ByVal {} As Variant", names::argument(port, system))
    };
    row.ports.iter().map(declare).collect()
}

fn list(row: &Operation, system: System) -> String {
    let arguments: Vec<String> = row.ports.iter().map(|port| names::argument(port, system)).collect();
    format!("Array({})", arguments.join(", "))
}

/// Plain numbers go to the library's own function, which saves the detour over text.
fn direct(row: &Operation, system: System, name: &str) -> String {
    let whole = |port: &Port| matches!(port.kind, Kind::Count(..) | Kind::Choice(_));
    let kinds: String = row.ports.iter().map(|port| if whole(port) { 'w' } else { 'd' }).collect();
    let inputs =
        row.ports.iter().enumerate().map(|(place, port)| {
            if whole(port) { format!("CLng(x({place}))") } else { format!("x({place})") }
        });
    let outputs: Vec<String> = (1..=row.results.len()).map(|place| format!("y{place}")).collect();
    let types = row
        .results
        .iter()
        .zip(&outputs)
        .map(|(port, output)| format!("{output} As {}", if whole(port) { "Long" } else { "Double" }));
    let arguments: Vec<String> =
        inputs.chain(outputs.iter().cloned()).chain(["notes", "msg", "0"].map(str::to_owned)).collect();
    let given = match outputs.as_slice() {
        [only] => only.clone(),
        several => format!("SideBySide(Array({}))", several.join(", ")),
    };
    let mut text = format!(
        "    Dim x(0 To {}) As Double, {}, notes As Long, msg As Byte, status As Long\n",
        row.ports.len().saturating_sub(1),
        types.collect::<Vec<_>>().join(", ")
    );
    let _ = writeln!(text, "    If Flat({}, \"{kinds}\", x) Then", list(row, system));
    let _ = writeln!(text, "        status = {}({})", names::called(row.name, system), arguments.join(", "));
    let _ = writeln!(text, "        If status = 0 Then {name} = {given} Else {name} = ErrorFor(status)");
    text + "        Exit Function\n    End If\n"
}
