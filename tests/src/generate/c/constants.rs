//! Constants: statuses, notes, the places of results, fields and columns, the numbers of words.

use super::doc;
use super::function;
use super::names;
use super::record_row::numbers_its_results;
use overslab::failure::Code;
use overslab::note::NoteCode;
use overslab::operation::{Kind, Operation, Port, RecordType};
use std::collections::BTreeMap;
use std::fmt::Write;

/// The constants of one header: a name stands for one number.
#[derive(Default)]
pub(super) struct Constants(BTreeMap<String, i64>);

/// One constant: its name, its number, what is said of it.
struct Constant {
    name: String,
    number: i64,
    says: String,
}

impl Constants {
    /// The statuses and notes as Rust text.
    pub(super) fn codes(&mut self) -> String {
        let statuses = Code::ALL.iter().map(|code| Constant {
            name: names::constant(&[code.name()]),
            number: i64::from(code.number()),
            says: format!("Status: {}.", code.meaning()),
        });
        let notes = NoteCode::ALL.iter().map(|code| Constant {
            name: names::constant(&["NOTE", code.name()]),
            number: i64::from(code.number()),
            says: format!("Note: {}.", code.meaning()),
        });
        self.text(statuses.chain(notes))
    }

    /// The constants of a row.
    pub(super) fn row(&mut self, row: &Operation) -> String {
        let mut list = Vec::new();
        if !row.is_scalar() && numbers_its_results(row) {
            list.extend(places(row.name, row.results, "result"));
        }
        list.extend(row.ports.iter().chain(row.results).flat_map(|port| words(row.name, port)));
        self.text(list.into_iter())
    }

    /// The constants of a record type.
    pub(super) fn record(&mut self, record: &RecordType) -> String {
        let fields = places(record.name, record.fields, "field");
        let words = record.fields.iter().flat_map(|port| words(record.name, port));
        self.text(fields.into_iter().chain(words))
    }

    fn text(&mut self, list: impl Iterator<Item = Constant>) -> String {
        let mut text = String::new();
        for Constant { name, number, says } in list {
            match self.0.insert(name.clone(), number) {
                None => {}
                // An input and a result of the same words.
                Some(known) if known == number => continue,
                Some(known) => panic!("{name} would stand for {known} and {number}: rename one of the two"),
            }
            let _ = writeln!(text, "\n{}pub const {name}: c_int = {number};", function::doc(&[says]));
        }
        text
    }
}

/// The places of ports, of the columns of those that are tables, and how many ports there are.
fn places(of: &str, ports: &[Port], word: &str) -> Vec<Constant> {
    let mut list = Vec::new();
    for (place, port) in ports.iter().enumerate() {
        list.push(Constant {
            name: names::constant(&[of, port.name]),
            number: place as i64,
            says: format!("The {word} `{}`{}: {}.", port.name, doc::units(port), port.meaning),
        });
        if let Kind::Table(table) = port.kind {
            list.extend(table.columns.iter().enumerate().map(|(at, column)| Constant {
                name: names::constant(&[of, port.name, column.name]),
                number: at as i64,
                says: format!(
                    "The column `{}` of `{}`{}: {}.",
                    column.name,
                    port.name,
                    doc::units(column),
                    column.meaning
                ),
            }));
        }
    }
    list.push(Constant {
        name: names::constant(&[of, word]) + "S",
        number: ports.len() as i64,
        says: format!("How many {word}s there are."),
    });
    list
}

/// The numbers of the words of a port, or of the columns of a table.
fn words(of: &str, port: &Port) -> Vec<Constant> {
    match &port.kind {
        Kind::Choice(words) => numbered(&[of, port.name], words),
        Kind::Table(table) => table
            .columns
            .iter()
            .flat_map(|column| match &column.kind {
                Kind::Choice(words) => numbered(&[of, port.name, column.name], words),
                Kind::Number(_) | Kind::Count(..) | Kind::Text => Vec::new(),
                Kind::Bytes | Kind::Table(_) | Kind::Record(_) => {
                    panic!("{}: no kind of column", column.name)
                }
            })
            .collect(),
        Kind::Number(_) | Kind::Count(..) | Kind::Text | Kind::Bytes | Kind::Record(_) => Vec::new(),
    }
}

fn numbered(parts: &[&str], words: &[&str]) -> Vec<Constant> {
    let one = |(place, word): (usize, &&str)| Constant {
        name: names::constant(&[parts, &[word]].concat()),
        number: place as i64,
        says: format!("The word `{word}`."),
    };
    words.iter().enumerate().map(one).collect()
}
