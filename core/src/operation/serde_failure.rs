//! What serde refuses, as a failure: its messages are read for the key and the words in them.

use crate::failure::{Code, Failure, nearest};
use crate::quantity::given::unmark;

/// The failure behind a message of serde, at this path.
#[must_use]
pub fn from_message(message: &str, path: &str) -> Box<Failure> {
    if let Some(failure) = unmark(message) {
        return failure.under(path);
    }
    let quoted: Vec<&str> = message.split('`').skip(1).step_by(2).collect();
    let (first, others) = (quoted.first().copied().unwrap_or(""), quoted.get(1..).unwrap_or_default());
    if message.starts_with("unknown field") {
        return unknown(Code::KeyUnknown, &last_key_replaced(path, first), first, others);
    }
    if message.starts_with("unknown variant") {
        return unknown(Code::WordUnknown, path, first, others);
    }
    if message.starts_with("missing field") {
        return Failure::new(Code::KeyMissing, first)
            .written("nothing")
            .allowed(format!("the key {first}"))
            .remedy(format!("give {first}"))
            .under(path);
    }
    if message.starts_with("duplicate field") {
        return Failure::new(Code::KeyRepeated, first)
            .written(first)
            .allowed("each key once")
            .remedy("give it once")
            .under(path);
    }
    let (found, expected) = message
        .strip_prefix("invalid type: ")
        .or_else(|| message.strip_prefix("invalid value: "))
        .and_then(|rest| rest.split_once(", expected "))
        .unwrap_or((message, ""));
    let expected = expected.split(" at line ").next().unwrap_or(expected);
    Failure::new(Code::KindMismatch, path)
        .written(plain(found))
        .allowed(plain(expected))
        .remedy("give the kind of value named")
}

/// The words of serde in those of a caller: its names of machine types say nothing on a site.
fn plain(words: &str) -> String {
    let known = match words {
        "u8" | "u16" | "u32" | "u64" | "usize" | "i8" | "i16" | "i32" | "i64" | "isize" => "a whole number",
        "f32" | "f64" => "a number",
        "a sequence" => "a list",
        "sequence" => "a list",
        "map" | "a map" => "a table",
        "null" | "unit value" => "nothing",
        "a string" => "a text",
        "a boolean" => "true or false",
        other => other.strip_prefix("struct ").map_or(other, |_| "a table"),
    };
    match known.split_once('`').or_else(|| known.split_once('"')) {
        // `floating point `1.0``, `string "x"`: what was found stands in its marks.
        Some(("integer " | "floating point " | "boolean " | "string ", marked)) => {
            marked.trim_end_matches(['`', '"']).to_owned()
        }
        _ => known.to_owned(),
    }
}

fn unknown(code: Code, path: &str, given: &str, known: &[&str]) -> Box<Failure> {
    let remedy = match nearest(given, known.iter().copied()) {
        Some(near) => format!("did you mean {near}?"),
        None if known.is_empty() => "nothing may stand here".to_owned(),
        None => "use one of the known names".to_owned(),
    };
    Failure::new(code, path).written(given).allowed(known.join(", ")).remedy(remedy)
}

/// The path to an unknown key: some formats report the parent, some the key itself.
fn last_key_replaced(path: &str, key: &str) -> String {
    match path.rsplit(['.', ']']).next() {
        Some(last) if last == key => path.to_owned(),
        _ if path.is_empty() => key.to_owned(),
        _ => format!("{path}.{key}"),
    }
}
