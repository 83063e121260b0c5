//! Names are equal both ways: what the library exports, what the header declares, what the table holds.

use super::c_library::{library, library_path};
use super::c_values::{name, rows};
use overslab::failure::Code;
use overslab::note::NoteCode;
use overslab::operation::{Kind, Operation, RecordType};
use overslab::operations::{OPERATIONS, all, records};
use overslab::quantity::System;
use overslab_tests::c_header::Header;
use overslab_tests::generate::{header, root};
use std::collections::BTreeSet;
use std::process::Command;

/// Exports that belong to no row: each says what it is for.
const FIXED: &[(&str, &str)] = &[
    ("ovs_abi_version", "compared once after loading"),
    ("ovs_version", "the version in words"),
    ("ovs_status_text", "a status in words"),
    ("ovs_note_text", "a note in words"),
    ("ovs_call_us", "any operation by its name"),
    ("ovs_call_si", "any operation by its name"),
    ("ovs_sheet", "any operation from cells"),
    ("ovs_sheet_values", "any operation from cells"),
    ("ovs_answer_values_us", "reads an answer"),
    ("ovs_answer_values_si", "reads an answer"),
    ("ovs_answer_number_us", "reads an answer"),
    ("ovs_answer_number_si", "reads an answer"),
    ("ovs_answer_count", "reads an answer"),
    ("ovs_answer_text", "reads an answer"),
    ("ovs_answer_rows", "reads an answer"),
    ("ovs_answer_column_us", "reads an answer"),
    ("ovs_answer_column_si", "reads an answer"),
    ("ovs_answer_column_text", "reads an answer"),
    ("ovs_answer_notes", "reads an answer"),
    ("ovs_answer_note_text", "reads an answer"),
    ("ovs_answer_to_json_us", "reads an answer"),
    ("ovs_answer_to_json_si", "reads an answer"),
    ("ovs_answer_free", "frees an answer"),
];

/// The functions that a table of rows leads to.
fn expected(rows: &[&'static Operation]) -> BTreeSet<String> {
    let mut names: BTreeSet<String> = FIXED.iter().map(|(name, _)| (*name).to_owned()).collect();
    for row in rows {
        for system in System::ALL {
            let suffixes: &[&str] = if row.is_scalar() { &["", "_array", "_why"] } else { &["", "_why"] };
            names.extend(suffixes.iter().map(|suffix| format!("{}{suffix}", name(row, system))));
        }
    }
    for record in records(rows) {
        names.extend(of_record(record));
    }
    names
}

fn of_record(record: &RecordType) -> Vec<String> {
    let has = |wanted: fn(&Kind) -> bool| record.fields.iter().any(|field| wanted(&field.kind));
    let mut ends = vec!["values_us", "values_si", "to_json", "from_json", "free"];
    if has(|kind| matches!(kind, Kind::Text | Kind::Choice(_))) {
        ends.push("field_text");
    }
    if has(|kind| matches!(kind, Kind::Table(_))) {
        ends.extend(["field_rows", "field_column_us", "field_column_si", "field_column_text"]);
    }
    let mut names: Vec<String> = ends.iter().map(|end| format!("ovs_{}_{end}", record.name)).collect();
    names.push(format!("ovs_answer_record_{}", record.name));
    names
}

fn declared(header: &Header) -> BTreeSet<String> {
    header.functions.iter().map(|function| function.name.clone()).collect()
}

fn shipped() -> Header {
    Header::read(&std::fs::read_to_string(root().join(header::SHIPPED)).unwrap())
}

#[test]
fn the_headers_declare_what_the_table_holds() {
    assert_eq!(declared(&library().header), expected(&all()));
    assert_eq!(declared(&shipped()), expected(OPERATIONS));
}

#[cfg(target_os = "linux")]
#[test]
fn the_library_exports_what_the_header_declares_and_nothing_else() {
    let output =
        Command::new("nm").args(["-D", "--defined-only"]).arg(library_path()).output().expect("binutils");
    assert!(output.status.success());
    let listing = String::from_utf8(output.stdout).unwrap();
    let exports: BTreeSet<String> =
        listing.lines().filter_map(|line| line.split_whitespace().nth(2)).map(str::to_owned).collect();
    assert_eq!(exports, declared(&library().header), "a stale library: `cargo clean -p overslab-ffi`");
}

#[test]
fn opaque_types_are_the_records_and_the_answer() {
    let expected = |rows: &[&'static Operation]| -> BTreeSet<String> {
        let records = records(rows).into_iter().map(|record| format!("ovs_{}", record.name));
        records.chain(["ovs_answer".to_owned()]).collect()
    };
    assert_eq!(library().header.types.iter().cloned().collect::<BTreeSet<_>>(), expected(&all()));
    assert_eq!(shipped().types.into_iter().collect::<BTreeSet<_>>(), expected(OPERATIONS));
}

#[test]
fn codes_are_constants() {
    for header in [&library().header, &shipped()] {
        let constant = |name: String| header.constants.get(&name).copied();
        for code in Code::ALL {
            assert_eq!(constant(format!("OVS_{}", code.name())), Some(i64::from(code.number())));
        }
        for note in NoteCode::ALL {
            assert_eq!(constant(format!("OVS_NOTE_{}", note.name())), Some(i64::from(note.number())));
        }
        assert_eq!(constant("OVS_OK".to_owned()), Some(0));
        let notes = header.constants.keys().filter(|name| name.starts_with("OVS_NOTE_")).count();
        assert_eq!(notes, NoteCode::ALL.len(), "a note that the table does not have");
        assert!(header.constants.keys().all(|name| name == "OVERSLAB_H" || name.starts_with("OVS_")));
    }
}

/// The words of ports with their constants: `OVS_ROW_PORT_WORD`.
#[test]
fn words_are_constants() {
    let upper = |text: &str| text.replace(|sign: char| !sign.is_ascii_alphanumeric(), "_").to_uppercase();
    let mut met = 0;
    for row in all() {
        for port in row.ports.iter().chain(row.results) {
            let Kind::Choice(words) = port.kind else { continue };
            for (place, word) in words.iter().enumerate() {
                let name = format!("OVS_{}_{}_{}", upper(row.name), upper(port.name), upper(word));
                assert_eq!(
                    library().header.constants.get(&name).copied(),
                    i64::try_from(place).ok(),
                    "{name}"
                );
                met += 1;
            }
        }
    }
    assert!(met > 0);
}

#[test]
fn comments_say_units_ranges_and_basis() {
    for (row, system) in rows() {
        let comment = &library().header.function(&name(row, system)).unwrap().comment;
        // A line that goes on is set in; the words are compared without their breaks.
        let one_line = comment.replace("\n *", " ").split_whitespace().collect::<Vec<_>>().join(" ");
        let says = |words: &str| {
            let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
            assert!(one_line.contains(&words), "{}: the comment lacks {words}", name(row, system));
        };
        says(row.meaning);
        says(row.equation);
        for basis in row.basis {
            says(&basis.line());
        }
        for port in row.ports {
            says(port.meaning);
            if let Kind::Number(kind) = port.kind {
                says(&format!("({})", kind.unit(system).symbol));
            }
        }
        for result in row.results.iter().filter(|_| row.makes().is_none()) {
            says(result.meaning);
            if let Kind::Number(kind) = result.kind {
                says(&format!("({})", kind.unit(system).symbol));
            }
        }
    }
}
