//! The stubs: what an editor and a type checker see.

use super::names::{self, python};
use super::{Generated, Module, SPECIMEN, docs};
use overslab::operation::{Kind, Need, Operation, Port, RecordType};
use std::fmt::Write;

/// The stub of one module.
pub(super) fn file(module: &Module) -> Generated {
    let mut body = String::new();
    for record in &module.records {
        body.push_str(&record_class(record));
    }
    for operation in &module.operations {
        body.push_str(&function(module, operation));
        body.push_str(&classes(operation));
    }
    let title = format!(
        "\"\"\"The operations of `{}`: made from the table of operations; do not edit.\"\"\"\n",
        module.name
    );
    let path = match module.name {
        SPECIMEN => "tests/specimen/specimen.pyi".to_owned(),
        name => format!("python/overslab/{name}.pyi"),
    };
    Generated::new(path, title + &head(module, &body) + &body)
}

/// The records of other modules that this one names.
fn foreign(module: &Module) -> Vec<(&'static str, &'static str)> {
    let known = overslab::operations::records(&module.operations);
    let foreign = known.into_iter().filter(|record| module.records.iter().all(|own| own.name != record.name));
    let every = super::by_module(&overslab::operations::all());
    foreign
        .filter_map(|record| {
            let home = every.iter().find(|other| other.records.iter().any(|own| own.name == record.name))?;
            Some((home.name, record.class))
        })
        .collect()
}

/// What stubs name, by the module that has it.
const NAMES: &[(&str, &[&str])] = &[
    ("typing", &["Any", "Literal", "final", "overload"]),
    ("overslab.results", &["AnswerResult", "ArrayResult", "Record", "ScalarResult"]),
    (
        "overslab.typing",
        &[
            "Column",
            "Count",
            "Counts",
            "Errors",
            "File",
            "Quantities",
            "Quantity",
            "RecordLike",
            "Table",
            "Units",
            "Words",
        ],
    ),
];

fn head(module: &Module, body: &str) -> String {
    let mut text = String::new();
    for (place, (home, known)) in NAMES.iter().enumerate() {
        let used: Vec<&str> = known.iter().copied().filter(|name| names_word(body, name)).collect();
        if !used.is_empty() {
            let _ = writeln!(text, "\nfrom {home} import {}", used.join(", "));
        }
        if place == 0 && body.contains("np.") {
            text.push_str("\nimport numpy as np\nimport numpy.typing as npt\n");
        }
    }
    for (home, class) in foreign(module) {
        let _ = writeln!(text, "from overslab.{home} import {class}");
    }
    text.push_str("\n__all__ = [\n");
    for name in super::modules::public(module) {
        let _ = writeln!(text, "    \"{name}\",");
    }
    text.push_str("]\n");
    text
}

/// Whether the text names that word, on its own.
fn names_word(text: &str, word: &str) -> bool {
    let letter = |c: char| c.is_alphanumeric() || c == '_';
    text.match_indices(word).any(|(at, _)| {
        let (before, after) = (&text[..at], &text[at + word.len()..]);
        !before.ends_with(letter) && !after.starts_with(letter)
    })
}

fn function(module: &Module, operation: &Operation) -> String {
    let doc = docs::function(module, operation);
    let class = names::class(operation);
    let name = python(operation.name);
    if !operation.is_scalar() {
        return format!(
            "\ndef {name}(\n{}) -> {class}:\n{}",
            arguments(operation, taken),
            docstring(&doc, 4)
        );
    }
    let one = arguments(operation, taken);
    let many = arguments(operation, taken_many);
    // One value is also taken where several may stand, so the two overlap; the first that fits is meant.
    format!(
        "\n@overload\ndef {name}(  # type: ignore[overload-overlap]\n{one}) -> {class}:\n{}\n\
         @overload\ndef {name}(\n{many}) -> {class}Array: ...\n",
        docstring(&doc, 4)
    )
}

fn docstring(doc: &str, deep: usize) -> String {
    let deep = " ".repeat(deep);
    let mut text = format!("{deep}r\"\"\"");
    for (at, line) in doc.lines().enumerate() {
        let line = if at == 0 || line.is_empty() { line.to_owned() } else { format!("{deep}{line}") };
        text.push_str(&line);
        text.push('\n');
    }
    let _ = writeln!(text, "{deep}\"\"\"");
    text
}

fn arguments(operation: &Operation, taken: fn(&Port) -> String) -> String {
    let mut text = String::new();
    for port in names::required(operation) {
        let _ = writeln!(text, "    {}: {},", python(port.name), taken(port));
    }
    text.push_str("    *,\n");
    for port in names::optional(operation) {
        let _ = writeln!(text, "    {}: {} | None = None,", python(port.name), taken(port));
    }
    text.push_str("    units: Units | None = None,\n");
    if operation.is_scalar() {
        text.push_str("    errors: Errors = \"raise\",\n");
    }
    text
}

/// What a port takes: one value.
fn taken(port: &Port) -> String {
    match port.kind {
        Kind::Number(_) => "Quantity".to_owned(),
        Kind::Count(..) => "Count".to_owned(),
        Kind::Choice(words) => literal(words),
        Kind::Text => "str".to_owned(),
        Kind::Bytes => "File".to_owned(),
        Kind::Table(_) => "Table".to_owned(),
        Kind::Record(record) => format!("{} | RecordLike", record.class),
    }
}

/// What a port of a scalar row takes where some argument holds several values.
fn taken_many(port: &Port) -> String {
    match port.kind {
        Kind::Count(..) => "Count | Counts".to_owned(),
        Kind::Choice(words) => format!("{} | Words", literal(words)),
        _ => "Quantity | Quantities".to_owned(),
    }
}

fn literal(words: &[&str]) -> String {
    let words: Vec<String> = words.iter().map(|word| names::quoted(word)).collect();
    format!("Literal[{}]", words.join(", "))
}

fn classes(operation: &Operation) -> String {
    let class = names::class(operation);
    let doc = format!("What `{}` gives.", operation.name);
    match (operation.is_scalar(), operation.makes()) {
        (true, _) => {
            let arrays = format!("What `{}` gives for arrays.", operation.name);
            let many =
                self::class(&format!("{class}Array"), "ArrayResult", &arrays, operation.results, given_many);
            self::class(&class, "ScalarResult", &doc, operation.results, given) + &many
        }
        (false, None) => self::class(&class, "AnswerResult", &doc, operation.results, field),
        (false, Some(_)) => String::new(),
    }
}

fn record_class(record: &RecordType) -> String {
    class(record.class, "Record", record.meaning, record.fields, field)
}

fn class(class: &str, base: &str, doc: &str, ports: &[Port], gives: fn(&Port) -> String) -> String {
    let mut text = format!("\n@final\nclass {class}({base}):\n    r\"\"\"{doc}\"\"\"\n");
    for port in ports {
        for (name, _, symbol) in names::attributes(port) {
            let unit = if symbol.is_empty() { String::new() } else { format!(" [{symbol}]") };
            let _ = write!(text, "\n    @property\n    def {name}(self) -> {}:\n", gives(port));
            let _ = writeln!(text, "        r\"\"\"{}{unit}.\"\"\"", port.meaning);
        }
    }
    text
}

fn given(port: &Port) -> String {
    match port.kind {
        Kind::Count(..) => "int".to_owned(),
        Kind::Choice(words) => literal(words),
        Kind::Text => "str".to_owned(),
        Kind::Bytes => "bytes".to_owned(),
        Kind::Table(_) => "dict[str, Column]".to_owned(),
        Kind::Record(record) => record.class.to_owned(),
        Kind::Number(_) => "float".to_owned(),
    }
}

/// A field of a record or a result of a record row, which may be missing.
fn field(port: &Port) -> String {
    match port.need {
        Need::Required => given(port),
        _ => format!("{} | None", given(port)),
    }
}

fn given_many(port: &Port) -> String {
    match port.kind {
        Kind::Count(..) => "npt.NDArray[np.int64] | npt.NDArray[np.float64]".to_owned(),
        Kind::Choice(_) => "npt.NDArray[Any]".to_owned(),
        _ => "npt.NDArray[np.float64]".to_owned(),
    }
}
