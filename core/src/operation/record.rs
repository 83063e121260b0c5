//! Records: what an operation makes and another takes.

use super::port::Port;
use super::value::Value;
use crate::failure::Result;
use std::any::Any;
use std::sync::Arc;

/// A record over the border.
type Dynamic = dyn Any + Send + Sync;

/// One kind of record. In a sheet it is written as a range of path | value | unit, which core turns into its JSON.
pub struct RecordType {
    /// Its name: `survey`; C adds `ovs_`.
    pub name: &'static str,
    /// Its class in Python: `Survey`.
    pub class: &'static str,
    /// What it is.
    pub meaning: &'static str,
    /// What can be read from it: numbers, counts, choices, texts, tables.
    pub fields: &'static [Port],
    /// Reads all its fields, in that order. `None` where the value is not such a record.
    pub get: fn(&Dynamic) -> Option<Vec<Value>>,
    /// Writes it as canonical JSON, quantities as SI text.
    pub to_json: fn(&Dynamic) -> Option<serde_json::Value>,
    /// Reads it from JSON.
    pub from_json: fn(serde_json::Value) -> Result<Arc<Dynamic>>,
    /// Whether a value is such a record.
    pub is: fn(&Dynamic) -> bool,
    /// An example in JSON.
    pub example: &'static str,
}

impl std::fmt::Debug for RecordType {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name)
    }
}

/// What a type must give to be a record over the border.
pub trait Record: Any + Send + Sync + Sized {
    /// Its row.
    const TYPE: &'static RecordType;
    /// The values of its fields, in the order of the row.
    fn fields(&self) -> Vec<Value>;
    /// Its canonical JSON.
    fn to_json(&self) -> serde_json::Value;
    /// From JSON.
    ///
    /// # Errors
    /// Whatever its parts refuse.
    fn from_json(json: serde_json::Value) -> Result<Self>;
}

/// [`RecordType::get`] for a record.
pub fn get<R: Record>(record: &Dynamic) -> Option<Vec<Value>> {
    record.downcast_ref::<R>().map(Record::fields)
}

/// [`RecordType::to_json`] for a record.
pub fn to_json<R: Record>(record: &Dynamic) -> Option<serde_json::Value> {
    record.downcast_ref::<R>().map(Record::to_json)
}

/// [`RecordType::from_json`] for a record.
///
/// # Errors
/// Whatever the record's parts refuse.
pub fn from_json<R: Record>(json: serde_json::Value) -> Result<Arc<Dynamic>> {
    R::from_json(json).map(|record| Arc::new(record) as Arc<Dynamic>)
}

/// [`RecordType::is`] for a record.
#[must_use]
pub fn is<R: Record>(record: &Dynamic) -> bool {
    record.is::<R>()
}

/// Reads a record's parts from JSON, with the path and the words of what is refused.
///
/// # Errors
/// Whatever the parts refuse, with the path to it.
pub fn parse<T: serde::de::DeserializeOwned>(json: serde_json::Value) -> Result<T> {
    serde_path_to_error::deserialize(json).map_err(|error| {
        let path = error.path().to_string();
        let path = if path == "." { String::new() } else { path };
        crate::operation::serde_failure::from_message(&error.inner().to_string(), &path)
    })
}
