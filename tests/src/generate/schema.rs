//! The published schemas of the job description and of the report, beside the engine that they describe.

use super::Generated;
use overslab::job::{job_schema, report_schema};
use serde_json::Value as Json;

/// The schema files.
#[must_use]
pub fn files() -> Vec<Generated> {
    [("job", job_schema()), ("report", report_schema())].map(|(name, schema)| file(name, &schema)).to_vec()
}

fn file(name: &str, schema: &Json) -> Generated {
    Generated::new(format!("core/schema/{name}.schema.json"), format!("{schema:#}\n"))
}
