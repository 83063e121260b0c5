//! The codes of failures and notes.

use super::grid;
use overslab::failure::Code;
use overslab::note::NoteCode;

pub(super) fn sections() -> String {
    let failures: Vec<Vec<String>> = Code::ALL
        .iter()
        .map(|code| {
            vec![
                code.number().to_string(),
                format!("`OVS_{}`", code.name()),
                format!("`overslab.{}Error`", code.family().word()),
                code.meaning().to_owned(),
            ]
        })
        .collect();
    let notes: Vec<Vec<String>> = NoteCode::ALL
        .iter()
        .map(|note| {
            vec![note.number().to_string(), format!("`OVS_NOTE_{}`", note.name()), note.meaning().to_owned()]
        })
        .collect();
    format!(
        "\n## Failures\n\n{}\n## Notes\n\n{}",
        grid(&["Status", "In C", "Raised in Python", "Meaning"], &failures),
        grid(&["Number", "In C", "Meaning"], &notes)
    )
}
