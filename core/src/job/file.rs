//! A job as a record over the borders: from a text, which it keeps so that failures can name a line, or from a sheet.

use super::input::Job;
use super::locate::line_of;
use super::report::Report;
use crate::failure::{Failure, Place, Result};
use crate::operation::record::{self, Record};
use crate::operation::{Kind, RecordType, Value};
use crate::port;
use crate::survey::Survey;

/// A job, and the text it was read from.
#[derive(Clone, Debug, PartialEq)]
pub struct JobFile {
    job: Job,
    text: Option<String>,
}

impl JobFile {
    /// Reads a job from TOML or JSON and keeps the text.
    ///
    /// # Errors
    /// As [`Job::read`].
    pub fn read(text: &str) -> Result<Self> {
        Ok(Self { job: Job::read(text)?, text: Some(text.to_owned()) })
    }

    /// The job.
    #[must_use]
    pub const fn job(&self) -> &Job {
        &self.job
    }

    /// The report of the job. A failure found on the way names the line of the text, where there is one.
    ///
    /// # Errors
    /// As [`Job::report`].
    pub fn report(&self) -> Result<Report> {
        self.job.report().map_err(|failure| self.with_line(failure))
    }

    /// The report of the job over a survey that was made elsewhere.
    ///
    /// # Errors
    /// As [`Job::report_on`].
    pub fn report_on(&self, survey: &Survey) -> Result<Report> {
        self.job.report_on(survey).map_err(|failure| self.with_line(failure))
    }

    fn with_line(&self, failure: Box<Failure>) -> Box<Failure> {
        match self.line(&failure.path) {
            // An element of a list is named in the path or in the words: the line says more.
            Some(line) => failure.at(Place::Line(line)),
            None => failure,
        }
    }

    fn line(&self, path: &str) -> Option<usize> {
        line_of(self.text.as_deref()?, path)
    }
}

/// The record type of the job.
pub static JOB: RecordType = RecordType {
    name: "job",
    class: "Job",
    meaning: "A whole job description.",
    fields: &[port!(name: Kind::Text, "what the job is called")],
    get: record::get::<JobFile>,
    to_json: record::to_json::<JobFile>,
    from_json: record::from_json::<JobFile>,
    is: record::is::<JobFile>,
    example: include_str!("example.json"),
};

impl Record for JobFile {
    const TYPE: &'static RecordType = &JOB;

    fn fields(&self) -> Vec<Value> {
        vec![Value::Text(self.job.job.name.clone())]
    }

    fn to_json(&self) -> serde_json::Value {
        serde_json::to_value(&self.job).unwrap_or_default()
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        let job: Job = record::parse(json)?;
        Ok(Self { job: job.known_version()?, text: None })
    }
}
