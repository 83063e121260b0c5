//! The published schemas of the job and of its report.

use super::{Job, Report};

/// The JSON Schema of the job description.
#[must_use]
pub fn job_schema() -> serde_json::Value {
    titled(schemars::schema_for!(Job), "Job")
}

/// The JSON Schema of the report.
#[must_use]
pub fn report_schema() -> serde_json::Value {
    titled(schemars::schema_for!(Report), "Report")
}

fn titled(schema: schemars::Schema, title: &str) -> serde_json::Value {
    let mut schema = schema.to_value();
    if let Some(map) = schema.as_object_mut() {
        map.insert("title".to_owned(), title.into());
    }
    schema
}
