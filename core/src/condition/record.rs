//! The findings as a record over the borders.

use super::findings::{Finding, FindingsInput};
use crate::failure::Result;
use crate::operation::record::{self, Record};
use crate::operation::{Column, Columns, Kind, RecordType, TableType, Value};
use crate::port;

/// The words given.
static WORDS: TableType = TableType {
    name: "words",
    meaning: "a finding given as a word",
    columns: &[
        port!(finding: Kind::Choice(Finding::NAMES), "which finding"),
        port!(word: Kind::Text, "its word"),
    ],
    least_rows: 0,
};

/// The record type of the findings.
pub static FINDINGS: RecordType = RecordType {
    name: "findings",
    class: "Findings",
    meaning: "What was found on the old slab and what is wanted of it; all of it may be left out.",
    fields: &[port!(words: Kind::Table(&WORDS), "the findings given as words")],
    get: record::get::<FindingsInput>,
    to_json: record::to_json::<FindingsInput>,
    from_json: record::from_json::<FindingsInput>,
    is: record::is::<FindingsInput>,
    example: include_str!("example.json"),
};

impl Record for FindingsInput {
    const TYPE: &'static RecordType = &FINDINGS;

    fn fields(&self) -> Vec<Value> {
        let words = self.words();
        let given: Vec<(Finding, usize)> =
            Finding::ALL.iter().filter_map(|&finding| Some((finding, words.get(finding)?))).collect();
        let word =
            |&(finding, word): &(Finding, usize)| finding.words().get(word).map(|word| (*word).to_owned());
        vec![Value::Table(Columns {
            rows: given.len(),
            columns: vec![
                Column::Choices(given.iter().map(|&(finding, _)| Some(finding as usize)).collect()),
                Column::Texts(given.iter().map(word).collect()),
            ],
        })]
    }

    fn to_json(&self) -> serde_json::Value {
        serde_json::to_value(self).unwrap_or_default()
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        record::parse(json)
    }
}
