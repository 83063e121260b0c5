//! A reading that may be missing: `none` stands where a bench or a stack hid the place.

use crate::quantity::{Given, Typed};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::borrow::Cow;

/// A reading, or `none`.
#[derive(Clone, Debug, PartialEq)]
pub struct RodInput<Q>(pub Option<Given<Q>>);

/// The word for a place that was not shot.
const NONE: &str = "none";

impl<Q> Serialize for RodInput<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match &self.0 {
            Some(given) => given.serialize(serializer),
            None => serializer.serialize_str(NONE),
        }
    }
}

impl<'de, Q: Typed> Deserialize<'de> for RodInput<Q> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Visit(std::marker::PhantomData))
    }
}

struct Visit<Q>(std::marker::PhantomData<Q>);

impl<Q: Typed> serde::de::Visitor<'_> for Visit<Q> {
    type Value = RodInput<Q>;

    fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "a {} as text with its unit, or none", Q::TYPE.name)
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Self::Value, E> {
        if text.trim().eq_ignore_ascii_case(NONE) {
            return Ok(RodInput(None));
        }
        let reading: Given<Q> = Given::deserialize(serde::de::value::StrDeserializer::<E>::new(text))?;
        Ok(RodInput(Some(reading)))
    }

    fn visit_f64<E: serde::de::Error>(self, number: f64) -> Result<Self::Value, E> {
        Given::<Q>::deserialize(serde::de::value::F64Deserializer::<E>::new(number))
            .map(|given| RodInput(Some(given)))
    }

    fn visit_i64<E: serde::de::Error>(self, number: i64) -> Result<Self::Value, E> {
        Given::<Q>::deserialize(serde::de::value::I64Deserializer::<E>::new(number))
            .map(|given| RodInput(Some(given)))
    }

    fn visit_u64<E: serde::de::Error>(self, number: u64) -> Result<Self::Value, E> {
        Given::<Q>::deserialize(serde::de::value::U64Deserializer::<E>::new(number))
            .map(|given| RodInput(Some(given)))
    }
}

impl<Q: Typed> JsonSchema for RodInput<Q> {
    fn schema_name() -> Cow<'static, str> {
        Cow::Owned(format!("{}_or_none", Q::TYPE.name.replace([' ', '-'], "_")))
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        let text = format!(
            "A {} as text with its unit ({}), or \"none\" for a place not shot.",
            Q::TYPE.name,
            Q::TYPE.symbols()
        );
        json_schema!({ "type": "string", "description": text, "minLength": 1 })
    }
}
