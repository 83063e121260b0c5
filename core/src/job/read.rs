//! Reading a job from TOML or JSON, with the line of whatever is wrong.

use super::input::{Job, SCHEMA_VERSION};
use super::locate::line_of;
use crate::failure::{Code, Failure, Place, Result};
use crate::operation::json_text;
use crate::operation::record::parse;
use serde_json::Value as Json;

impl Job {
    /// Reads a job from TOML or JSON: a text whose first sign is a brace is JSON.
    ///
    /// # Errors
    /// Text that is neither, an unknown key with the nearest known one, a quantity that cannot be read: each with its line.
    pub fn read(text: &str) -> Result<Self> {
        // Both forms become one tree first; the line of a failure is then found by its path.
        let tree = if is_json(text) { json_text::read(text)? } else { from_toml(text)? };
        let job: Result<Self> = parse(tree).and_then(Self::known_version);
        job.map_err(|failure| match line_of(text, &failure.path) {
            Some(line) => failure.at(Place::Line(line)),
            None => failure.at(Place::Line(1)),
        })
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

/// Whether a text is meant as JSON.
pub(super) fn is_json(text: &str) -> bool {
    text.trim_start().starts_with('{')
}

fn from_toml(text: &str) -> Result<Json> {
    toml::from_str(text).map_err(|error| {
        let span = error.span().unwrap_or_default();
        let line = 1 + text.bytes().take(span.start).filter(|&byte| byte == b'\n').count();
        let place = Place::Line(line);
        match text.get(span) {
            Some(key) if error.message() == "duplicate key" => {
                json_text::repeated(key.trim_matches(['"', '\''])).at(place)
            }
            _ => json_text::syntax(error.message(), place),
        }
    })
}
