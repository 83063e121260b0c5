//! Docstrings: everything that the row of an operation says.

use super::{Module, example, names};
use overslab::failure::Code;
use overslab::operation::{Kind, Need, NumberKind, Operation, Port, TableType};
use overslab::quantity::System;

/// The width of a line.
const WIDTH: usize = 100;

/// The docstring of a function.
pub(super) fn function(module: &Module, operation: &Operation) -> String {
    let mut lines = vec![operation.meaning.to_owned(), String::new()];
    lines.extend(wrapped("Rule: ", operation.equation));
    lines.extend(wrapped("Takes for granted: ", operation.assumes));
    lines.extend([String::new(), "Args:".to_owned()]);
    for port in names::required(operation).chain(names::optional(operation)) {
        lines.extend(argument(port));
    }
    lines.push(
        "    units: the units of bare numbers, the first (\"us\") or the second (\"si\") in brackets."
            .to_owned(),
    );
    if operation.is_scalar() {
        lines.push(
            "    errors: what becomes of a refused element of an array: \"raise\", or \"mark\" it NaN."
                .to_owned(),
        );
    }
    lines.extend([String::new(), "Returns:".to_owned()]);
    lines.extend(returns(operation));
    lines.extend([String::new(), "Raises:".to_owned()]);
    lines.extend(raises(operation));
    if !operation.basis.is_empty() {
        lines.extend([String::new(), "Basis:".to_owned()]);
        lines.extend(operation.basis.iter().flat_map(|basis| indented(&basis.line())));
    }
    lines.extend([String::new(), "Example:".to_owned()]);
    lines.extend(example::lines(module, operation).into_iter().map(|line| format!("    {line}")));
    lines.push(String::new());
    lines.push(format!("Since {}.", operation.since));
    lines.join("\n")
}

/// The lines of one argument.
fn argument(port: &Port) -> Vec<String> {
    let mut text = format!("{}{}; {}", port.meaning, units(&port.kind), holds(&port.kind));
    match port.need {
        Need::Required => {}
        Need::Optional => text.push_str("; may be left out"),
        Need::Fallback { value, why } => {
            text.push_str(&format!("; where it is not given {value} is taken: {why}"));
        }
    }
    let mut lines = hanging(&format!("    {}: ", names::python(port.name)), &text);
    if let Kind::Table(table) = port.kind {
        lines.extend(columns(table));
    }
    lines
}

fn columns(table: &TableType) -> Vec<String> {
    let column = |port: &Port| {
        let may = if port.need == Need::Required { "" } else { "; may be left out" };
        let text = format!("{}{}; {}{may}", port.meaning, units(&port.kind), holds(&port.kind));
        hanging(&format!("        {}: ", port.name), &text)
    };
    table.columns.iter().flat_map(column).collect()
}

/// What a port holds, with its range.
pub(super) fn holds(kind: &Kind) -> String {
    match kind {
        Kind::Number(kind) => number(kind),
        Kind::Count(least, greatest) => format!("a whole number from {least} to {greatest}"),
        Kind::Choice(words) => {
            let words: Vec<String> = words.iter().map(|word| names::quoted(word)).collect();
            format!("one of {}", words.join(", "))
        }
        Kind::Text => "a text".to_owned(),
        Kind::Bytes => "bytes, or a text: its UTF-8, or base64: and the bytes in base64".to_owned(),
        Kind::Table(table) => {
            let rows = if table.least_rows == 1 { "row" } else { "rows" };
            format!(
                "a table of at least {} {rows}, each {}, with the columns",
                table.least_rows, table.meaning
            )
        }
        Kind::Record(record) if record.class.starts_with(['A', 'E', 'I', 'O']) => {
            format!("an {}", record.class)
        }
        Kind::Record(record) => format!("a {}", record.class),
    }
}

fn number(kind: &NumberKind) -> String {
    let range = |system| kind.range.words(kind.unit(system));
    let (us, si) = (range(System::Us), range(System::Si));
    if us == si { us } else { format!("{us} ({si})") }
}

/// The units of a port in brackets: `[in | mm]`.
pub(super) fn units(kind: &Kind) -> String {
    match kind {
        Kind::Number(kind) if kind.us.symbol == kind.si.symbol => format!(" [{}]", kind.us.symbol),
        Kind::Number(kind) => format!(" [{} | {}]", kind.us.symbol, kind.si.symbol),
        _ => String::new(),
    }
}

fn returns(operation: &Operation) -> Vec<String> {
    let class = names::class(operation);
    if let Some(record) = operation.makes() {
        return hanging(
            "    ",
            &format!("{class}: {} It has notes, basis and taken besides.", record.meaning),
        );
    }
    let mut lines = vec![format!("    {class}, with the attributes")];
    for port in operation.results {
        let attributes: Vec<String> = names::attributes(port).into_iter().map(|(name, ..)| name).collect();
        lines.extend(hanging(&format!("        {}: ", attributes.join(", ")), &result(port)));
    }
    let more = if operation.is_scalar() {
        format!(
            "    and notes; for arrays {class}Array, with arrays of that shape, and note_codes, bad, reasons."
        )
    } else {
        "    and notes, basis and taken.".to_owned()
    };
    lines.push(more);
    lines
}

/// What a result means, with its units.
pub(super) fn result(port: &Port) -> String {
    match &port.kind {
        Kind::Number(_) => format!("{}{}", port.meaning, units(&port.kind)),
        Kind::Table(table) => format!("{}, a table of {}", port.meaning, table.name),
        Kind::Choice(words) => format!("{}: {}", port.meaning, words.join(", ")),
        _ => port.meaning.to_owned(),
    }
}

/// The exceptions that the stated refusals raise, each with its codes.
fn raises(operation: &Operation) -> Vec<String> {
    let mut families: Vec<(&str, Vec<&str>)> = Vec::new();
    for code in operation.refusals.iter().map(|(_, code)| code) {
        let family = code.family().word();
        match families.iter_mut().find(|(known, _)| *known == family) {
            Some((_, codes)) if codes.contains(&code.name()) => {}
            Some((_, codes)) => codes.push(code.name()),
            None => families.push((family, vec![code.name()])),
        }
    }
    families
        .iter()
        .flat_map(|(family, codes)| hanging(&format!("    {family}Error: "), &meanings(codes)))
        .collect()
}

fn meanings(codes: &[&str]) -> String {
    let meaning = |name: &&str| {
        let code = Code::ALL.iter().find(|code| code.name() == *name);
        format!("{} ({name})", code.map_or("", |code| code.meaning()))
    };
    codes.iter().map(meaning).collect::<Vec<_>>().join("; ")
}

fn wrapped(front: &str, text: &str) -> Vec<String> {
    hanging(front, &format!("{text}."))
}

fn indented(text: &str) -> Vec<String> {
    hanging("    ", text)
}

/// The text behind a front, broken at spaces; further lines stand four deeper than the front begins.
pub(super) fn hanging(front: &str, text: &str) -> Vec<String> {
    let deep = front.len() - front.trim_start().len() + 4;
    let (mut lines, mut line) = (Vec::new(), front.trim_end().to_owned());
    let mut fresh = line.trim().is_empty();
    if fresh {
        line = " ".repeat(front.len());
    }
    for word in text.split_whitespace() {
        if !fresh && line.chars().count() + 1 + word.chars().count() > WIDTH {
            lines.push(std::mem::replace(&mut line, " ".repeat(deep)));
            fresh = true;
        }
        if !fresh {
            line.push(' ');
        }
        line.push_str(word);
        fresh = false;
    }
    lines.push(line);
    lines
}
