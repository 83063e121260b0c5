//! The interface: one method per function. Every argument is `any`, since only so Calc hands over numbers, texts and ranges
//! alike; every result is rows of cells, the only form in which a component in Python can give several.

use super::AddIn;
use super::names::{self, Want};
use overslab::operation::Operation;
use std::fmt::Write;

const RESULT: &str = "sequence< sequence< any > >";

pub(super) fn text(add_in: &AddIn, rows: &[&'static Operation]) -> String {
    let mut text = format!(
        "/* Made from the table of operations; do not edit. New methods come at the end. */\n\
         module org {{ module overslab {{ module {} {{\n\ninterface XOverslab {{\n    {RESULT} ovsVersion();\n",
        add_in.module
    );
    for row in rows {
        text.push('\n');
        for (system, want) in names::functions() {
            let result = (want == Want::Get).then_some("result");
            let ports = result.into_iter().chain(row.ports.iter().map(|port| port.name));
            let arguments: Vec<String> =
                ports.map(|port| format!("[in] any {}", names::argument(port))).collect();
            let method = names::method(row.name, system, want);
            let _ = writeln!(text, "    {RESULT} {method}({});", arguments.join(", "));
        }
    }
    text.push_str("};\n\n}; }; };\n");
    text
}
