//! The type of a record and the functions that read, write and free it.

use super::doc;
use super::function::{self, Argument, Function, Type, argument};
use super::names;
use super::record_row::record_name;
use super::scalar::message;
use overslab::operation::{Kind, Port, RecordType};
use overslab::quantity::System;

/// The opaque type in C.
pub(super) fn declaration(record: &RecordType) -> String {
    let name = record_name(record);
    format!(
        "{}#[expect(non_camel_case_types, reason = \"its name in C\")]\npub struct {name} {{\n    _private: [u8; 0],\n}}\n",
        function::doc(&[record.meaning.to_owned()])
    )
}

/// Every function of the type, in the order of the header.
pub(super) fn functions(record: &'static RecordType) -> Vec<Function> {
    let has = |wanted: fn(&Kind) -> bool| record.fields.iter().any(|field| wanted(&field.kind));
    let mut functions: Vec<Function> = System::ALL.map(|system| values(record, system)).into();
    if has(|kind| matches!(kind, Kind::Text | Kind::Choice(_))) {
        functions.push(field_text(record));
    }
    if has(|kind| matches!(kind, Kind::Table(_))) {
        functions.push(field_rows(record));
        functions.extend(System::ALL.map(|system| field_column(record, system)));
        functions.push(field_column_text(record));
    }
    functions.extend([to_json(record), from_json(record), from_answer(record), free(record)]);
    functions
}

fn itself(record: &RecordType) -> Argument {
    argument(names::itself(record.name), Type::Opaque(record_name(record)))
}

/// The record as what the border reads from.
fn holder(record: &RecordType) -> String {
    format!("Holder::Record({}, {})", names::record(record.name), passed(record))
}

fn passed(record: &RecordType) -> String {
    format!("Passed::new(\"{}\", {})", record.name, names::itself(record.name))
}

fn with_message(arguments: Vec<Argument>) -> Vec<Argument> {
    arguments.into_iter().chain(message()).collect()
}

fn text_out(name: &str) -> [Argument; 3] {
    [
        argument(name, Type::TextOut),
        argument(format!("{name}_len"), Type::Int),
        argument("needed", Type::IntsOut),
    ]
}

fn field_lines(record: &RecordType, system: System, wanted: fn(&Port) -> bool) -> Vec<String> {
    let line = |port: &Port| doc::field(&names::constant(&[record.name, port.name]), port, system);
    record.fields.iter().filter(|port| wanted(port)).map(line).collect()
}

fn values(record: &'static RecordType, system: System) -> Function {
    let mut lines = vec![
        "Every field that is a number, a count or a word, by its place; NaN for the others.".to_owned(),
        String::new(),
        "- `values`, `values_len`, out: as many as there is room for.".to_owned(),
    ];
    lines.extend(field_lines(record, system, |port| match port.kind {
        Kind::Number(_) | Kind::Count(..) | Kind::Choice(_) => true,
        Kind::Text | Kind::Table(_) => false,
        Kind::Bytes | Kind::Record(_) => panic!("{}: no kind of field of a record", port.name),
    }));
    let arguments =
        vec![itself(record), argument("values", Type::DoublesOut), argument("values_len", Type::Int)];
    Function {
        name: format!("{}_values_{}", record_name(record), system.word()),
        doc: lines,
        arguments: with_message(arguments),
        gives: Some(Type::Int),
        body: format!(
            "let values = Numbers::new(\"values\", values, values_len);\n\
             unsafe {{ read::values({}, {}, values, Message::new(msg, msg_len)) }}",
            holder(record),
            names::system(system)
        ),
    }
}

fn field_text(record: &'static RecordType) -> Function {
    let [text, text_len, needed] = text_out("text");
    let mut lines = vec!["A field that is a text, or a word.".to_owned(), String::new()];
    lines.extend(field_lines(record, System::Us, |port| matches!(port.kind, Kind::Text | Kind::Choice(_))));
    Function {
        name: format!("{}_field_text", record_name(record)),
        doc: lines,
        arguments: with_message(vec![itself(record), argument("field", Type::Int), text, text_len, needed]),
        gives: Some(Type::Int),
        body: format!(
            "let out = TextOut::new(\"text\", text, text_len, needed);\n\
             unsafe {{ read::text({}, field, out, Message::new(msg, msg_len)) }}",
            holder(record)
        ),
    }
}

fn field_rows(record: &'static RecordType) -> Function {
    let mut lines = vec!["How many rows a field that is a table has.".to_owned(), String::new()];
    lines.extend(field_lines(record, System::Us, |port| matches!(port.kind, Kind::Table(_))));
    Function {
        name: format!("{}_field_rows", record_name(record)),
        doc: lines,
        arguments: with_message(vec![
            itself(record),
            argument("field", Type::Int),
            argument("rows", Type::IntsOut),
        ]),
        gives: Some(Type::Int),
        body: format!("unsafe {{ read::rows({}, field, rows, Message::new(msg, msg_len)) }}", holder(record)),
    }
}

/// The columns of the tables of a record, by their constants.
fn column_lines(record: &RecordType, system: System) -> Vec<String> {
    let mut lines = Vec::new();
    for field in record.fields {
        if let Kind::Table(table) = field.kind {
            lines.extend(table.columns.iter().map(|column| {
                doc::field(&names::constant(&[record.name, field.name, column.name]), column, system)
            }));
        }
    }
    lines
}

fn field_column(record: &'static RecordType, system: System) -> Function {
    let mut lines = vec![
        "A column of numbers, counts or words of a field that is a table; NaN for an empty cell.".to_owned(),
        String::new(),
        "- `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT."
            .to_owned(),
    ];
    lines.extend(column_lines(record, system));
    Function {
        name: format!("{}_field_column_{}", record_name(record), system.word()),
        doc: lines,
        arguments: with_message(vec![
            itself(record),
            argument("field", Type::Int),
            argument("column", Type::Int),
            argument("cells", Type::DoublesOut),
            argument("cells_len", Type::Int),
        ]),
        gives: Some(Type::Int),
        body: format!(
            "let cells = Numbers::new(\"cells\", cells, cells_len);\n\
             unsafe {{ read::column({}, field, column, {}, cells, Message::new(msg, msg_len)) }}",
            holder(record),
            names::system(system)
        ),
    }
}

fn field_column_text(record: &'static RecordType) -> Function {
    let [text, text_len, needed] = text_out("text");
    Function {
        name: format!("{}_field_column_text", record_name(record)),
        doc: vec![
            "A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none."
                .to_owned(),
        ],
        arguments: with_message(vec![
            itself(record),
            argument("field", Type::Int),
            argument("column", Type::Int),
            argument("row", Type::Int),
            text,
            text_len,
            needed,
        ]),
        gives: Some(Type::Int),
        body: format!(
            "let out = TextOut::new(\"text\", text, text_len, needed);\n\
             unsafe {{ read::column_text({}, [field, column, row], out, Message::new(msg, msg_len)) }}",
            holder(record)
        ),
    }
}

fn to_json(record: &'static RecordType) -> Function {
    let [json, json_len, needed] = text_out("json");
    Function {
        name: format!("{}_to_json", record_name(record)),
        doc: vec!["Writes the record as JSON, from which it comes back the same to the bit.".to_owned()],
        arguments: with_message(vec![itself(record), json, json_len, needed]),
        gives: Some(Type::Int),
        body: format!(
            "let out = TextOut::new(\"json\", json, json_len, needed);\n\
             unsafe {{ read::to_json({}, {}, out, Message::new(msg, msg_len)) }}",
            names::record(record.name),
            passed(record)
        ),
    }
}

fn from_json(record: &'static RecordType) -> Function {
    let example = record.example.split_whitespace().collect::<Vec<_>>().join(" ");
    Function {
        name: format!("{}_from_json", record_name(record)),
        doc: vec![
            "Makes the record from its JSON; every quantity in it is a text with its unit.".to_owned(),
            String::new(),
            "- `status`, out: the status of the call; may be null.".to_owned(),
            String::new(),
            "Returns the record, or null.".to_owned(),
            format!("Example: {example}"),
        ],
        arguments: with_message(vec![
            argument("json", Type::Text),
            argument("json_len", Type::Int),
            argument("status", Type::IntsOut),
        ]),
        gives: Some(Type::OpaqueOut(record_name(record))),
        body: format!(
            "let text = TextIn::new(\"json\", json, json_len);\n\
             unsafe {{ read::from_json({}, text, status, Message::new(msg, msg_len)) }}",
            names::record(record.name)
        ),
    }
}

fn from_answer(record: &'static RecordType) -> Function {
    Function {
        name: format!("ovs_answer_record_{}", record.name),
        doc: vec![
            "A result of an answer that is such a record, as a pointer of its own.".to_owned(),
            String::new(),
            "- `status`, out: the status of the call; may be null.".to_owned(),
        ],
        arguments: with_message(vec![
            argument("answer", Type::Opaque("ovs_answer".to_owned())),
            argument("result", Type::Int),
            argument("status", Type::IntsOut),
        ]),
        gives: Some(Type::OpaqueOut(record_name(record))),
        body: format!(
            "let answer = Passed::new(\"answer\", answer);\n\
             unsafe {{ read::record({}, answer, result, status, Message::new(msg, msg_len)) }}",
            names::record(record.name)
        ),
    }
}

fn free(record: &'static RecordType) -> Function {
    let name = names::itself(record.name);
    Function {
        name: format!("{}_free", record_name(record)),
        doc: vec!["Frees the record; null is nothing.".to_owned()],
        arguments: vec![argument(name.clone(), Type::OpaqueOut(record_name(record)))],
        gives: None,
        body: format!("unsafe {{ free({name}) }}"),
    }
}
