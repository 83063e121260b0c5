//! One request of a sheet and its reply, both as JSON, without any state between.

use super::cell::{Range, ranges};
use super::result::{Rows, answer_cells, one_result, why};
use super::{Empties, Reading, call, each};
use crate::failure::{Code, Failure, Place, Result};
use crate::operation::{Operation, decode, record};
use crate::operations;
use crate::quantity::System;
use serde::Deserialize;
use serde_json::{Value as Json, json};

/// What is wanted of an operation.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Want {
    /// Its results.
    Value,
    /// In words, why it refuses or what there is to note; nothing where all is well.
    Why,
    /// One result by name.
    Get(String),
}

/// A request.
#[derive(Clone, Debug)]
pub struct Request {
    /// The operation.
    pub operation: &'static Operation,
    /// The units of bare numbers, in and out.
    pub system: System,
    /// What is wanted.
    pub want: Want,
    /// How a lone empty cell arrives.
    pub empties: Empties,
    /// One range per port, in order.
    pub arguments: Vec<Range>,
}

/// What a request gives.
#[derive(Clone, Debug, PartialEq)]
pub enum Reply {
    /// Rows of cells, all of one length: null, number or text; an object with the `code` at a refused place of several.
    Cells(Rows),
    /// The request as a whole is refused.
    Failure(Box<Failure>),
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    operation: String,
    system: String,
    #[serde(default = "value_word")]
    want: String,
    #[serde(default)]
    result: Option<String>,
    #[serde(default = "zero_word")]
    empty: String,
    #[serde(default)]
    arguments: Vec<Json>,
}

fn value_word() -> String {
    "value".to_owned()
}

fn zero_word() -> String {
    "zero".to_owned()
}

/// Answers a request written as JSON: `{"operation", "system": "us" | "si", "want": "value" | "why" | "get", "result": a
/// name, "empty": "zero" | "null", "arguments": [a cell, or rows of cells, ...]}`. `empty` says how a lone empty cell
/// arrives; left out, as a zero.
#[must_use]
pub fn respond(request: &str) -> Reply {
    match Request::from_json(request) {
        Ok(request) => request.reply(),
        Err(failure) => Reply::Failure(failure),
    }
}

impl Request {
    /// Reads a request.
    ///
    /// # Errors
    /// `SYNTAX`, `KEY_UNKNOWN`, `KEY_MISSING`, `WORD_UNKNOWN`, `OPERATION_UNKNOWN`, `KIND_MISMATCH`.
    pub fn from_json(text: &str) -> Result<Self> {
        let json = serde_json::from_str(text).map_err(|error| {
            Failure::new(Code::Syntax, "request")
                .written(error.to_string())
                .allowed("one JSON object")
                .remedy("check the request")
        })?;
        let written: Written = record::parse(json)?;
        let system = System::from_word(&written.system)
            .ok_or_else(|| unknown_word("system", &written.system, "us, si"))?;
        let empties = Empties::from_word(&written.empty)
            .ok_or_else(|| unknown_word("empty", &written.empty, "null, zero"))?;
        Ok(Self {
            operation: operation(&written.operation)?,
            system,
            want: want(&written.want, written.result)?,
            empties,
            arguments: ranges(&written.arguments)?,
        })
    }

    /// Answers it. What is wanted in words is never a failure.
    #[must_use]
    pub fn reply(&self) -> Reply {
        let cells = match self.operation.is_scalar() {
            true => self.each(),
            false => self.once(),
        };
        match (cells, &self.want) {
            (Ok(rows), _) => Reply::Cells(rectangular(rows)),
            (Err(failure), Want::Why) => Reply::Cells(vec![vec![json!(failure.sentence())]]),
            (Err(failure), _) => Reply::Failure(failure),
        }
    }

    fn each(&self) -> Result<Rows> {
        let reading = Reading { system: self.system, empties: self.empties };
        let block = each::call(self.operation, reading, &self.arguments)?;
        match &self.want {
            Want::Value => block.all_results(self.operation, self.system),
            Want::Get(name) => block.one_result(self.operation, self.system, name),
            Want::Why => Ok(block.why()),
        }
    }

    fn once(&self) -> Result<Rows> {
        let answer = call(self.operation, self.system, self.empties, &self.arguments)?;
        match &self.want {
            Want::Value => Ok(answer_cells(self.operation, &answer, self.system)),
            Want::Get(name) => one_result(self.operation, &answer, self.system, name),
            Want::Why => Ok(vec![vec![json!(why(&answer))]]),
        }
    }
}

fn operation(name: &str) -> Result<&'static Operation> {
    operations::find(name).ok_or_else(|| {
        let all = operations::all();
        let mut failure = decode::unknown_key(name, all.iter().map(|operation| operation.name));
        failure.code = Code::OperationUnknown;
        failure.allowed = "the name of an operation".to_owned();
        failure.written(name).under("operation")
    })
}

fn want(word: &str, result: Option<String>) -> Result<Want> {
    match (word, result) {
        ("value", _) => Ok(Want::Value),
        ("why", _) => Ok(Want::Why),
        ("get", Some(name)) => Ok(Want::Get(name)),
        ("get", None) => Err(Failure::new(Code::KeyMissing, "result")
            .allowed("the name of a result")
            .remedy("name a result")),
        _ => Err(unknown_word("want", word, "value, why, get")),
    }
}

fn unknown_word(path: &str, word: &str, known: &str) -> Box<Failure> {
    Failure::new(Code::WordUnknown, path)
        .written(format!("\"{word}\""))
        .allowed(known)
        .remedy("use one of the words")
}

/// Every row as long as the longest, and at least one cell.
fn rectangular(mut rows: Rows) -> Rows {
    let width = rows.iter().map(Vec::len).max().unwrap_or(0).max(1);
    if rows.is_empty() {
        rows.push(Vec::new());
    }
    for row in &mut rows {
        row.resize(width, Json::Null);
    }
    rows
}

impl Reply {
    /// `{"cells": rows}` or `{"failure": {"code", "name", "path", "line", "sentence"}}`, with `row` and `column` where known.
    #[must_use]
    pub fn to_json(&self) -> Json {
        match self {
            Self::Cells(rows) => json!({ "cells": rows }),
            Self::Failure(failure) => {
                let mut json = json!({
                    "code": failure.code.number(),
                    "name": failure.code.name(),
                    "path": failure.path,
                    "line": failure.line(),
                    "sentence": failure.sentence(),
                });
                if let Place::Cell(row, column) = failure.place {
                    json["row"] = json!(row);
                    json["column"] = json!(column);
                }
                json!({ "failure": json })
            }
        }
    }
}
