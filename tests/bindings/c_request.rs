//! The inputs of a record row as C hands them over: arguments for what is required, options for the rest.

use super::c_library::{Arg, Arguments, library};
use super::c_values::{Buffer, Owned, bytes, named, text};
use overslab::failure::Result;
use overslab::operation::{
    Answer, Bytes, Column, Columns, Kind, Need, Operation, Port, TableType, Value, call, decode, encode,
};
use overslab::quantity::System;
use serde_json::{Map, Value as Json, json};
use std::ffi::c_int;

/// One port as arguments, with what they point to.
enum Argued {
    Number(f64),
    Int(c_int),
    Text(String),
    Bytes(Bytes),
    Table(usize, Vec<(usize, Cells)>),
    Record(Option<Owned>),
}

enum Cells {
    Numbers(Vec<f64>),
    Ints(Vec<c_int>),
    /// An optional column that was not given.
    Null,
}

/// A call that is ready to be made.
pub(super) struct Prepared {
    pub(super) row: &'static Operation,
    pub(super) system: System,
    /// What C does not take as arguments.
    pub(super) options: Map<String, Json>,
    /// Everything as one object, numbers in the units of the system.
    pub(super) full: Map<String, Json>,
    argued: Vec<(usize, Argued)>,
    written: String,
}

/// Prepares a call; nothing where C has no way to say these inputs. With `pointers` optional records go as pointers, else
/// by the options.
pub(super) fn prepare(
    row: &'static Operation,
    system: System,
    inputs: &Map<String, Json>,
    pointers: bool,
) -> Option<Prepared> {
    let (options, full) = (Map::new(), Map::new());
    let mut prepared = Prepared { row, system, options, full, argued: Vec::new(), written: String::new() };
    for (name, json) in inputs {
        // A port that is none can be said in the options only.
        let Some(place) = row.port(name) else {
            prepared.options.insert(name.clone(), json.clone());
            prepared.full.insert(name.clone(), json.clone());
            continue;
        };
        let port = &row.ports[place];
        let record = pointers && matches!(port.kind, Kind::Record(_));
        if by_argument(port) || record && decode::value(port, json, None).is_ok() {
            let value = decode::value(port, json, None).ok()?;
            prepared.argue(place, value)?;
        } else {
            prepared.options.insert(name.clone(), json.clone());
            prepared.full.insert(name.clone(), json.clone());
        }
    }
    for (place, port) in row.ports.iter().enumerate() {
        let argued = prepared.argued.iter().any(|(known, _)| *known == place);
        match (&port.kind, port.need) {
            _ if argued => {}
            (Kind::Record(_), _) => prepared.argued.push((place, Argued::Record(None))),
            _ if by_argument(port) => return None,
            _ => {}
        }
    }
    // In the order of the header: what is required, then records that are not.
    prepared.argued.sort_by_key(|(place, _)| (row.ports[*place].need != Need::Required, *place));
    Some(prepared)
}

/// Whether what is required goes by arguments: all but a table without a column that is an array.
pub(super) fn by_argument(port: &Port) -> bool {
    let table = |kind: &Kind| match kind {
        Kind::Table(table) => table.columns.iter().any(|column| is_array(table, column)),
        _ => true,
    };
    port.need == Need::Required && table(&port.kind)
}

/// Whether a column of a required table is an array: what is required and no text; where there is no such column, optional
/// numbers.
pub(super) fn is_array(table: &TableType, column: &Port) -> bool {
    let must = |column: &Port| column.need == Need::Required && !matches!(column.kind, Kind::Text);
    if table.columns.iter().any(must) { must(column) } else { matches!(column.kind, Kind::Number(_)) }
}

impl Prepared {
    /// What the core answers to the same numbers in the same units.
    pub(super) fn expected(&self) -> Result<Answer> {
        decode::decode(self.row, &self.full, Some(self.system))
            .and_then(|values| call::invoke(self.row, values))
    }

    fn argue(&mut self, place: usize, value: Value) -> Option<()> {
        let port = &self.row.ports[place];
        let (argued, json) = match value {
            Value::Number(base) => {
                let number = call::from_base(port, self.system, base);
                (Argued::Number(number), json!(number))
            }
            Value::Count(count) => (Argued::Int(c_int::try_from(count).ok()?), json!(count)),
            Value::Choice(word) => (
                Argued::Int(c_int::try_from(word).ok()?),
                encode::value(port, &Value::Choice(word), self.system),
            ),
            Value::Text(text) => (Argued::Text(text.clone()), json!(text)),
            Value::Bytes(bytes) => (Argued::Bytes(bytes.clone()), json!(bytes.to_text())),
            // Arrays of C have one length.
            Value::Table(columns)
                if columns
                    .columns
                    .iter()
                    .any(|column| !column.is_empty() && column.len() != columns.rows) =>
            {
                return None;
            }
            Value::Table(columns) => self.table(port, &columns),
            Value::Record(record) => {
                let Kind::Record(kind) = port.kind else { panic!("{} is no record", port.name) };
                let canonical = (kind.to_json)(record.as_ref()).unwrap();
                let written = canonical.to_string();
                let ends = [vec![named("status", Arg::NULL)], Buffer::of(0).arguments("msg")].concat();
                let arguments = [text("json", &written), ends].concat();
                let made = library().call(&format!("ovs_{}_from_json", kind.name), &arguments);
                (Argued::Record(Some(Owned::of(made, kind.name))), canonical)
            }
            Value::Absent => return None,
        };
        self.argued.push((place, argued));
        self.full.insert(port.name.to_owned(), json);
        Some(())
    }

    /// Arrays for the columns that are arrays; the others go by the options.
    fn table(&mut self, port: &Port, columns: &Columns) -> (Argued, Json) {
        let Kind::Table(table) = port.kind else { panic!("{} is no table", port.name) };
        let (mut cells, mut full, mut options) = (Vec::new(), Map::new(), Map::new());
        for (at, (column, values)) in table.columns.iter().zip(&columns.columns).enumerate() {
            if matches!(values, Column::Absent) && columns.rows > 0 {
                if is_array(table, column) {
                    cells.push((at, Cells::Null));
                }
                continue;
            }
            let written: Json =
                (0..columns.rows).map(|row| encode::cell(column, values, row, self.system)).collect();
            if is_array(table, column) {
                cells.push((at, array(column, values, self.system)));
            } else {
                options.insert(column.name.to_owned(), written.clone());
            }
            full.insert(column.name.to_owned(), written);
        }
        if !options.is_empty() {
            self.options.insert(port.name.to_owned(), Json::Object(options));
        }
        (Argued::Table(columns.rows, cells), Json::Object(full))
    }

    /// Puts another number into an argument.
    pub(super) fn replace_number(&mut self, place: usize, number: f64) {
        let argued = self.argued.iter_mut().find(|(known, _)| *known == place).unwrap();
        argued.1 = Argued::Number(number);
    }

    /// Puts another int into an argument.
    pub(super) fn replace_int(&mut self, place: usize, int: c_int) {
        let argued = self.argued.iter_mut().find(|(known, _)| *known == place).unwrap();
        argued.1 = Argued::Int(int);
    }

    /// Puts another number into the last row of a column; gives the place of the row.
    pub(super) fn replace_last_cell(&mut self, place: usize, column: usize, number: f64) -> usize {
        let argued = self.argued.iter_mut().find(|(known, _)| *known == place).unwrap();
        let Argued::Table(rows, cells) = &mut argued.1 else { panic!("no table") };
        let Some((_, Cells::Numbers(list))) = cells.iter_mut().find(|(at, _)| *at == column) else {
            panic!("no such column")
        };
        *list.last_mut().unwrap() = number;
        *rows - 1
    }

    /// The arguments up to the options; what they point to lives as long as this and must not be changed meanwhile.
    pub(super) fn arguments(&mut self) -> Arguments {
        let mut arguments = Arguments::new();
        for (place, argued) in &mut self.argued {
            let port = &self.row.ports[*place];
            let name = port.unit_name(self.system);
            match argued {
                Argued::Number(number) => arguments.push((name, Arg::Double(*number))),
                Argued::Int(int) => arguments.push((name, Arg::Int(*int))),
                Argued::Text(given) => arguments.extend(text(&name, given)),
                Argued::Bytes(given) => arguments.extend(bytes(&name, given.as_slice())),
                Argued::Record(owned) => {
                    arguments.push((name, owned.as_ref().map_or(Arg::NULL, Owned::arg)));
                }
                Argued::Table(rows, columns) => {
                    let Kind::Table(table) = port.kind else { panic!("{name} is no table") };
                    for (at, cells) in columns {
                        let column = table.columns[*at].unit_name(self.system);
                        let list = match cells {
                            Cells::Numbers(list) => Arg::list(list),
                            Cells::Ints(list) => Arg::list(list),
                            Cells::Null => Arg::NULL,
                        };
                        arguments.push((format!("{name}_{column}"), list));
                    }
                    arguments.push((format!("{name}_rows"), Arg::Int(c_int::try_from(*rows).unwrap())));
                }
            }
        }
        self.written = if self.options.is_empty() {
            String::new()
        } else {
            Json::Object(self.options.clone()).to_string()
        };
        let [json, length] = text("options", &self.written).try_into().expect("a text and its length");
        arguments.extend([named("options_json", json.1), named("options_len", length.1)]);
        arguments
    }
}

fn array(column: &Port, values: &Column, system: System) -> Cells {
    match values {
        Column::Numbers(list) => {
            Cells::Numbers(list.iter().map(|base| call::from_base(column, system, *base)).collect())
        }
        Column::Counts(list) => {
            Cells::Ints(list.iter().map(|count| c_int::try_from(count.unwrap()).unwrap()).collect())
        }
        Column::Choices(list) => {
            Cells::Ints(list.iter().map(|place| c_int::try_from(place.unwrap()).unwrap()).collect())
        }
        Column::Absent => match column.kind {
            Kind::Number(_) => Cells::Numbers(Vec::new()),
            _ => Cells::Ints(Vec::new()),
        },
        Column::Texts(_) => panic!("{} is no array", column.name),
    }
}
