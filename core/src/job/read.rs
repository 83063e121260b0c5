//! Reading a job from TOML or JSON, with the line of whatever is wrong.

use super::input::{Job, SCHEMA_VERSION};
use crate::failure::{Code, Failure, Place, Result};
use crate::operation::serde_failure::from_message;

impl Job {
    /// Reads a job from TOML.
    ///
    /// # Errors
    /// Text that is no TOML, an unknown key with the nearest known one, a quantity that cannot be read: each with its line.
    pub fn from_toml(text: &str) -> Result<Self> {
        let deserializer = toml::Deserializer::parse(text)
            .map_err(|error| syntax(error.message(), line(text, error.span())))?;
        let job: Self = serde_path_to_error::deserialize(deserializer).map_err(|error| {
            let path = plain(&error.path().to_string());
            let place = line(text, error.inner().span());
            from_message(error.inner().message(), &path).at(place)
        })?;
        job.known_version()
    }

    /// Reads a job from JSON.
    ///
    /// # Errors
    /// As [`Job::from_toml`].
    pub fn from_json(text: &str) -> Result<Self> {
        let mut deserializer = serde_json::Deserializer::from_str(text);
        let job: Self = serde_path_to_error::deserialize(&mut deserializer).map_err(|error| {
            let path = plain(&error.path().to_string());
            let inner = error.inner();
            let place = Place::Line(inner.line());
            match inner.classify() {
                serde_json::error::Category::Data => {
                    from_message(&without_place(&inner.to_string()), &path).at(place)
                }
                _ => syntax(&without_place(&inner.to_string()), place),
            }
        })?;
        deserializer
            .end()
            .map_err(|error| syntax(&without_place(&error.to_string()), Place::Line(error.line())))?;
        job.known_version()
    }

    /// Reads a job from TOML or JSON: a text whose first sign is a brace is JSON.
    ///
    /// # Errors
    /// As [`Job::from_toml`].
    pub fn read(text: &str) -> Result<Self> {
        if text.trim_start().starts_with('{') { Self::from_json(text) } else { Self::from_toml(text) }
    }

    /// The job, if its schema version is known.
    pub(super) fn known_version(self) -> Result<Self> {
        if self.schema_version == SCHEMA_VERSION {
            return Ok(self);
        }
        Err(Failure::new(Code::VersionUnknown, "schema_version")
            .written(self.schema_version.to_string())
            .allowed(SCHEMA_VERSION.to_string())
            .remedy("write the job for this version"))
    }
}

fn syntax(message: &str, place: Place) -> Box<Failure> {
    let first = message.lines().next().unwrap_or_default();
    Failure::new(Code::Syntax, "")
        .written(first)
        .allowed("TOML or JSON")
        .remedy("mend the text at this line")
        .at(place)
}

fn line(text: &str, span: Option<std::ops::Range<usize>>) -> Place {
    match span {
        Some(span) => Place::Line(1 + text.bytes().take(span.start).filter(|&byte| byte == b'\n').count()),
        None => Place::Unknown,
    }
}

/// The path of serde without its sign for "the whole".
fn plain(path: &str) -> String {
    if path == "." { String::new() } else { path.to_owned() }
}

/// The message without serde_json's ` at line 3 column 5`.
fn without_place(message: &str) -> String {
    message.rsplit_once(" at line ").map_or(message, |(message, _)| message).to_owned()
}
