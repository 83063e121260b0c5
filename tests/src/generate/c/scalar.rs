//! The functions of a scalar row: one call, a call on arrays, the reason in full, each in both systems of units.

use super::doc;
use super::function::{Argument, Function, Type, argument};
use super::names;
use overslab::operation::call::{flat_number, from_base};
use overslab::operation::{Kind, Operation, Port, decode};
use overslab::quantity::System;
use overslab::quantity::write::shortest;

/// Every function of the row, in the order of the header.
pub(super) fn functions(row: &'static Operation) -> Vec<Function> {
    let one = System::ALL.map(|system| one(row, system));
    let array = System::ALL.map(|system| array(row, system));
    let why = System::ALL.map(|system| why(row, system));
    one.into_iter().chain(array).chain(why).collect()
}

/// What a scalar port is in C.
#[derive(Clone, Copy)]
enum Plain {
    Double,
    Int,
}

fn plain(row: &Operation, port: &Port) -> Plain {
    match port.kind {
        Kind::Number(_) => Plain::Double,
        Kind::Count(..) => {
            doc::fits_int(row, port);
            Plain::Int
        }
        Kind::Choice(_) => Plain::Int,
        Kind::Text | Kind::Bytes | Kind::Table(_) | Kind::Record(_) => {
            panic!("{}: {} is no port of a scalar row", row.name, port.name)
        }
    }
}

fn name(row: &Operation, system: System) -> String {
    format!("ovs_{}_{}", row.name, system.word())
}

fn inputs(row: &Operation, system: System, double: &Type, int: &Type) -> Vec<Argument> {
    let input = |port: &Port| {
        let kind = match plain(row, port) {
            Plain::Double => double.clone(),
            Plain::Int => int.clone(),
        };
        argument(names::port(port, system), kind)
    };
    row.ports.iter().map(input).collect()
}

fn results(row: &Operation, system: System) -> Vec<Argument> {
    let names = names::results(row.ports, row.results, system);
    let kind = |port: &Port| match plain(row, port) {
        Plain::Double => Type::DoublesOut,
        Plain::Int => Type::IntsOut,
    };
    names.into_iter().zip(row.results).map(|(name, port)| argument(name, kind(port))).collect()
}

/// The inputs as doubles, in a list.
fn by_value(inputs: &[Argument]) -> String {
    let one = |input: &Argument| match input.kind {
        Type::Int => format!("f64::from({})", input.name),
        _ => input.name.clone(),
    };
    format!("[{}]", inputs.iter().map(one).collect::<Vec<_>>().join(", "))
}

/// Pointers in a list, wrapped by what they point to.
fn wrapped(arguments: &[Argument], wrap: &str) -> String {
    let one = |argument: &Argument| {
        let kind = match argument.kind {
            Type::Doubles | Type::DoublesOut => "Numbers",
            _ => "Whole",
        };
        format!("{wrap}::{kind}({})", argument.name)
    };
    format!("[{}]", arguments.iter().map(one).collect::<Vec<_>>().join(", "))
}

pub(super) fn message() -> [Argument; 2] {
    [argument("msg", Type::TextOut), argument("msg_len", Type::Int)]
}

fn port_lines(row: &Operation, system: System, inputs: &[Argument], results: &[Argument]) -> Vec<String> {
    let ins = inputs.iter().zip(row.ports).map(|(input, port)| doc::input(&input.name, port, system));
    let outs = results.iter().zip(row.results).map(|(result, port)| doc::result(&result.name, port, system));
    ins.chain(outs).collect()
}

fn one(row: &'static Operation, system: System) -> Function {
    let (inputs, results) = (inputs(row, system, &Type::Double, &Type::Int), results(row, system));
    let body = format!(
        "let results = {};\nunsafe {{ scalar::one({}, {}, {}, results, notes, Message::new(msg, msg_len)) }}",
        wrapped(&results, "Output"),
        names::row(row.name),
        names::system(system),
        by_value(&inputs)
    );
    let mut lines = doc::head(row);
    lines.extend(port_lines(row, system, &inputs, &results));
    lines.push("- `notes`, out: the number of the result's note, or 0; may be null.".to_owned());
    lines.extend(doc::foot(row));
    lines.push(example(row, system));
    let arguments =
        inputs.into_iter().chain(results).chain([argument("notes", Type::IntsOut)]).chain(message());
    Function {
        name: name(row, system),
        doc: lines,
        arguments: arguments.collect(),
        gives: Some(Type::Int),
        body,
    }
}

fn array(row: &'static Operation, system: System) -> Function {
    let (inputs, results) = (inputs(row, system, &Type::Doubles, &Type::Ints), results(row, system));
    let body = format!(
        "let arrays = Arrays {{ inputs: {}, results: {}, notes, n, bad_index }};\n\
         unsafe {{ scalar::array({}, {}, arrays, Message::new(msg, msg_len)) }}",
        wrapped(&inputs, "Input"),
        wrapped(&results, "Output"),
        names::row(row.name),
        names::system(system)
    );
    let mut lines = vec![
        format!("{} for each of `n` elements; an array may be input and result at once.", name(row, system)),
        String::new(),
    ];
    lines.push("- `notes`, out: the number of each element's note, or 0; may be null.".to_owned());
    lines.push("- `n`: how many elements each array has; with 0 the arrays may be null.".to_owned());
    lines.push("- `bad_index`, out: the place of the first bad element, or -1; may be null.".to_owned());
    let ends =
        [argument("notes", Type::IntsOut), argument("n", Type::Int), argument("bad_index", Type::IntsOut)];
    let arguments = inputs.into_iter().chain(results).chain(ends).chain(message());
    Function {
        name: format!("{}_array", name(row, system)),
        doc: lines,
        arguments: arguments.collect(),
        gives: Some(Type::Int),
        body,
    }
}

fn why(row: &'static Operation, system: System) -> Function {
    let inputs = inputs(row, system, &Type::Double, &Type::Int);
    let body = format!(
        "let text = TextOut::new(\"text\", text, text_len, needed);\nunsafe {{ scalar::why({}, {}, {}, text) }}",
        names::row(row.name),
        names::system(system),
        by_value(&inputs)
    );
    let mut lines = vec![
        format!(
            "Why {} refuses these inputs, in full; else the meaning of its note, or nothing.",
            name(row, system)
        ),
        String::new(),
    ];
    lines.extend(why_lines());
    let arguments = inputs.into_iter().chain(why_arguments()).collect();
    Function {
        name: format!("{}_why", name(row, system)),
        doc: lines,
        arguments,
        gives: Some(Type::Int),
        body,
    }
}

pub(super) fn why_arguments() -> [Argument; 3] {
    [argument("text", Type::TextOut), argument("text_len", Type::Int), argument("needed", Type::IntsOut)]
}

pub(super) fn why_lines() -> [String; 3] {
    [
        "- `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.".to_owned(),
        String::new(),
        "Returns the status of the call itself.".to_owned(),
    ]
}

/// The example with its numbers, results to six digits.
fn example(row: &'static Operation, system: System) -> String {
    let answer = doc::answer(row).unwrap_or_else(|failure| panic!("{}: {failure}", row.name));
    let values = decode::decode(row, &doc::example(row), None).unwrap_or_default();
    let inputs = row.ports.iter().zip(&values);
    let inputs: Vec<String> =
        inputs.map(|(port, value)| shortest(six(from_base(port, system, flat_number(value))))).collect();
    let names = names::results(row.ports, row.results, system);
    let results: Vec<String> = names
        .iter()
        .zip(row.results.iter().zip(&answer.results))
        .map(|(name, (port, value))| {
            format!("{name} = {}", shortest(six(from_base(port, system, flat_number(value)))))
        })
        .collect();
    format!("Example: {}({}, ...) gives {}.", name(row, system), inputs.join(", "), results.join(", "))
}

fn six(number: f64) -> f64 {
    format!("{number:.5e}").parse().unwrap_or(number)
}
