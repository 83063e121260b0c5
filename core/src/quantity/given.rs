//! A quantity together with the words it was given in.

use super::read::read_kind;
use super::{Typed, si_text};
use crate::failure::Result;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::de::{Error, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;
use std::marker::PhantomData;

/// A quantity and its text as written, for printing back. In files it is text with its unit: `"5' 3 1/2\""`.
#[derive(Clone, Debug, PartialEq)]
pub struct Given<Q> {
    /// The quantity.
    pub value: Q,
    /// The text as written.
    pub written: String,
}

impl<Q: Typed> Given<Q> {
    /// Reads the text and keeps it.
    ///
    /// # Errors
    /// As [`read`](super::read()).
    pub fn read(text: &str) -> Result<Self> {
        let reading = read_kind(text, Q::TYPE, None)?;
        Ok(Self { value: Q::from_base(reading.base), written: text.trim().to_owned() })
    }

    /// A computed value, its text being the exact SI text.
    #[must_use]
    pub fn computed(value: Q) -> Self {
        Self { value, written: si_text(value) }
    }
}

impl<Q> Serialize for Given<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> std::result::Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.written)
    }
}

impl<'de, Q: Typed> Deserialize<'de> for Given<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> std::result::Result<Self, D::Error> {
        deserializer.deserialize_any(TextWithUnit(PhantomData))
    }
}

/// Deserializes a typed quantity from text with its unit.
///
/// # Errors
/// Whatever [`read`](super::read()) refuses, and a bare number.
pub fn deserialize_typed<'de, Q: Typed, D: Deserializer<'de>>(
    deserializer: D,
) -> std::result::Result<Q, D::Error> {
    deserializer.deserialize_any(TextWithUnit(PhantomData)).map(|given: Given<Q>| given.value)
}

struct TextWithUnit<Q>(PhantomData<Q>);

impl<Q: Typed> TextWithUnit<Q> {
    fn bare<E: Error>(number: &dyn fmt::Display) -> E {
        // The number itself is read without a unit, so that the failure says which units are wanted.
        match read_kind(&number.to_string(), Q::TYPE, None) {
            Err(failure) => E::custom(Marked(&failure)),
            Ok(_) => E::custom("a number stands without its unit"),
        }
    }
}

impl<Q: Typed> Visitor<'_> for TextWithUnit<Q> {
    type Value = Given<Q>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "a {} as text with its unit ({})", Q::TYPE.name, Q::TYPE.symbols())
    }

    fn visit_str<E: Error>(self, text: &str) -> std::result::Result<Self::Value, E> {
        Given::read(text).map_err(|failure| E::custom(Marked(&failure)))
    }

    fn visit_f64<E: Error>(self, number: f64) -> std::result::Result<Self::Value, E> {
        Err(Self::bare(&number))
    }

    fn visit_i64<E: Error>(self, number: i64) -> std::result::Result<Self::Value, E> {
        Err(Self::bare(&number))
    }

    fn visit_u64<E: Error>(self, number: u64) -> std::result::Result<Self::Value, E> {
        Err(Self::bare(&number))
    }
}

/// A failure carried through serde's error text; [`unmark`] takes it apart again.
struct Marked<'a>(&'a crate::failure::Failure);

const MARK: char = '\u{1f}';

impl fmt::Display for Marked<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(failure) = self;
        write!(f, "{MARK}{}{MARK}{}{MARK}", failure.code.number(), failure.written)?;
        write!(f, "{}{MARK}{}{MARK}", failure.allowed, failure.remedy)
    }
}

/// The failure that a serde error text carries, if it carries one.
#[must_use]
pub fn unmark(message: &str) -> Option<Box<crate::failure::Failure>> {
    let mut parts = message.split(MARK).skip(1);
    let code = crate::failure::Code::from_number(parts.next()?.parse().ok()?)?;
    let (written, allowed, remedy) = (parts.next()?, parts.next()?, parts.next()?);
    Some(crate::failure::Failure::new(code, "").written(written).allowed(allowed).remedy(remedy))
}

impl<Q: Typed> JsonSchema for Given<Q> {
    fn schema_name() -> Cow<'static, str> {
        Cow::Owned(Q::TYPE.name.replace([' ', '-'], "_"))
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        let text = format!("A {} as text with its unit: {}.", Q::TYPE.name, Q::TYPE.symbols());
        json_schema!({ "type": "string", "description": text, "minLength": 1 })
    }
}
