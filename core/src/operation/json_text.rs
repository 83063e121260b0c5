//! JSON from a text, strictly: a name that is given twice in one object is refused, where most readers keep the last.

use crate::failure::{Code, Failure, Place, Result};
use serde::de::{Deserialize, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Number, Value as Json};
use std::fmt;

/// The JSON in a text.
///
/// # Errors
/// `SYNTAX` or `KEY_REPEATED`, with the line; the caller knows where the text came from.
pub fn read(text: &str) -> Result<Json> {
    serde_json::from_str(text).map(|Unique(json)| json).map_err(|error| {
        let place = Place::Line(error.line());
        let message = error.to_string();
        // Without serde_json's ` at line 3 column 5`.
        let message = message.rsplit_once(" at line ").map_or(message.as_str(), |(message, _)| message);
        match message.strip_prefix(TWICE) {
            Some(key) => repeated(key).at(place),
            None => syntax(message, place),
        }
    })
}

/// The failure for a name that is given twice.
#[must_use]
pub fn repeated(key: &str) -> Box<Failure> {
    Failure::new(Code::KeyRepeated, key).written(key).allowed("each key once").remedy("give it once")
}

/// The failure for a text that is neither TOML nor JSON.
#[must_use]
pub fn syntax(message: &str, place: Place) -> Box<Failure> {
    let first = message.lines().next().unwrap_or_default();
    Failure::new(Code::Syntax, "")
        .written(first)
        .allowed("TOML or JSON")
        .remedy("mend the text at this line")
        .at(place)
}

/// What the message of a repeated name starts with.
const TWICE: &str = "given twice: ";

/// JSON whose objects have every name once.
struct Unique(Json);

impl<'de> Deserialize<'de> for Unique {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> std::result::Result<Self, D::Error> {
        deserializer.deserialize_any(Strict).map(Self)
    }
}

struct Strict;

impl<'de> Visitor<'de> for Strict {
    type Value = Json;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E>(self) -> std::result::Result<Json, E> {
        Ok(Json::Null)
    }

    fn visit_bool<E>(self, truth: bool) -> std::result::Result<Json, E> {
        Ok(Json::Bool(truth))
    }

    fn visit_i64<E>(self, number: i64) -> std::result::Result<Json, E> {
        Ok(Json::Number(number.into()))
    }

    fn visit_u64<E>(self, number: u64) -> std::result::Result<Json, E> {
        Ok(Json::Number(number.into()))
    }

    fn visit_f64<E>(self, number: f64) -> std::result::Result<Json, E> {
        Ok(Number::from_f64(number).map_or(Json::Null, Json::Number))
    }

    fn visit_str<E>(self, text: &str) -> std::result::Result<Json, E> {
        Ok(Json::String(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> std::result::Result<Json, A::Error> {
        let mut whole = Vec::new();
        while let Some(Unique(element)) = list.next_element()? {
            whole.push(element);
        }
        Ok(Json::Array(whole))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut object: A) -> std::result::Result<Json, A::Error> {
        let mut whole = Map::new();
        while let Some(key) = object.next_key::<String>()? {
            if whole.contains_key(&key) {
                return Err(A::Error::custom(format!("{TWICE}{key}")));
            }
            let Unique(value) = object.next_value()?;
            whole.insert(key, value);
        }
        Ok(Json::Object(whole))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_what_serde_json_reads() {
        let text =
            r#"{"a": [1, -2, 0.1, 1e300, true, null, "x\ny"], "b": {"c": {}}, "": 18446744073709551615}"#;
        assert_eq!(read(text).unwrap(), serde_json::from_str::<Json>(text).unwrap());
    }

    #[test]
    fn refuses_a_name_twice_and_says_where() {
        let failure = read("{\"a\": 1,\n \"b\": {\"a\": 1,\n \"a\": 2}}").unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (Code::KeyRepeated, "a"));
        assert_eq!((failure.place, failure.written.as_str()), (Place::Line(3), "a"));
        let failure = read("{\"a\": 1,\n").unwrap_err();
        assert_eq!((failure.code, failure.place), (Code::Syntax, Place::Line(2)));
    }
}
