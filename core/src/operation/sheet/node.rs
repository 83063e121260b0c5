//! A JSON value that grows path by path, in any order.

use super::path::{Step, below};
use crate::failure::{Code, Failure, Result};
use serde_json::Value as Json;
use std::collections::HashMap;

/// What stands at a path so far.
#[derive(Clone, Debug, Default)]
pub(super) enum Node {
    /// Nothing yet.
    #[default]
    Gap,
    /// A value.
    Leaf(Json),
    /// Keys in the order met, and the place of each.
    Object(Vec<(String, Self)>, HashMap<String, usize>),
    /// A list, perhaps with gaps so far.
    List(Vec<Self>),
}

/// The longest list a path may open, so that a slip in an index cannot fill the memory.
const LONGEST: usize = 100_000;

impl Node {
    /// Puts a value where the steps lead.
    pub(super) fn put(&mut self, steps: &[Step], value: Json) -> Result<()> {
        let mut here = self;
        for step in steps {
            here = match step {
                Step::Key(key) => here.under_key(key)?,
                Step::Index(index) => here.under_index(*index)?,
            };
        }
        match here {
            Self::Gap => *here = Self::Leaf(value),
            _ => return Err(twice()),
        }
        Ok(())
    }

    fn under_key(&mut self, key: &str) -> Result<&mut Self> {
        if matches!(self, Self::Gap) {
            *self = Self::Object(Vec::new(), HashMap::new());
        }
        let Self::Object(nodes, places) = self else { return Err(twice()) };
        let place = *places.entry(key.to_owned()).or_insert(nodes.len());
        if place == nodes.len() {
            nodes.push((key.to_owned(), Self::Gap));
        }
        nodes.get_mut(place).map(|(_, node)| node).ok_or_else(twice)
    }

    fn under_index(&mut self, index: usize) -> Result<&mut Self> {
        if matches!(self, Self::Gap) {
            *self = Self::List(Vec::new());
        }
        let Self::List(nodes) = self else { return Err(twice()) };
        if index >= LONGEST {
            return Err(Failure::new(Code::OutOfRange, "")
                .written(index.to_string())
                .allowed(format!("an index below {LONGEST}"))
                .remedy("check the index"));
        }
        if index >= nodes.len() {
            nodes.resize(index + 1, Self::Gap);
        }
        nodes.get_mut(index).ok_or_else(twice)
    }

    /// The JSON value; no list may have gaps left.
    pub(super) fn into_json(self, path: &str) -> Result<Json> {
        match self {
            Self::Gap => Err(Failure::new(Code::EmptyCell, path)
                .allowed("a value")
                .remedy("give this element, or number the list without gaps")),
            Self::Leaf(json) => Ok(json),
            Self::Object(nodes, _) => nodes
                .into_iter()
                .map(|(key, node)| node.into_json(&below(path, &key)).map(|json| (key, json)))
                .collect::<Result<serde_json::Map<_, _>>>()
                .map(Json::Object),
            Self::List(nodes) => {
                let each = nodes.into_iter().enumerate();
                each.map(|(index, node)| node.into_json(&format!("{path}[{index}]")))
                    .collect::<Result<_>>()
                    .map(Json::Array)
            }
        }
    }
}

fn twice() -> Box<Failure> {
    Failure::new(Code::KeyRepeated, "").allowed("each path once").remedy("remove one of the rows")
}
