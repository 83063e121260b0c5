//! The configuration: what the Function Wizard shows.

use super::AddIn;
use super::names::{self, Want};
use crate::generate::words;
use overslab::operation::sheet::RESERVED;
use overslab::operation::{Operation, Port};
use overslab::quantity::System;
use std::fmt::Write;

pub(super) fn text(add_in: &AddIn, rows: &[&'static Operation]) -> String {
    let mut text = String::from(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- Made from the table of operations; do not edit. -->\n\
         <oor:component-data xmlns:oor=\"http://openoffice.org/2001/registry\" \
         xmlns:xs=\"http://www.w3.org/2001/XMLSchema\" oor:name=\"CalcAddIns\" oor:package=\"org.openoffice.Office\">\n\
         <node oor:name=\"AddInInfo\">\n",
    );
    let _ = writeln!(text, "<node oor:name=\"{}\" oor:op=\"replace\">", add_in.implementation());
    text.push_str("<node oor:name=\"AddInFunctions\">\n");
    let about = "The version of the library; where it cannot be used, which file was looked for and why not.";
    text.push_str(&function("ovsVersion", add_in.version, about, &[]));
    for row in rows {
        for (system, want) in names::functions() {
            let method = names::method(row.name, system, want);
            let typed = names::typed(row.name, system, want);
            text.push_str(&function(
                &method,
                &typed,
                &about_function(row, system, want),
                &arguments(row, system, want),
            ));
        }
    }
    text.push_str("</node>\n</node>\n</node>\n</oor:component-data>\n");
    text
}

/// One argument: its name in the interface, the name shown, what it is.
struct Argument {
    name: String,
    shown: String,
    about: String,
}

fn arguments(row: &Operation, system: System, want: Want) -> Vec<Argument> {
    let result = (want == Want::Get).then(|| Argument {
        name: names::argument("result"),
        shown: "result".to_owned(),
        about: format!("the name of the result as a text: {}", known(row, system)),
    });
    let port = |port: &Port| Argument {
        name: names::argument(port.name),
        shown: port.unit_name(system),
        about: words::argument(port, system),
    };
    result.into_iter().chain(row.ports.iter().map(port)).collect()
}

fn about_function(row: &Operation, system: System, want: Want) -> String {
    let typed = names::shown(row.name, system);
    match want {
        Want::Value => format!("{} Gives {}.", row.meaning, gives(row, system)),
        Want::Why => format!(
            "Why {typed} refuses these arguments, in words; where it does not, the notes on its result, or an empty text."
        ),
        Want::Get => format!("One result of {typed} by its name. {}", row.meaning),
    }
}

fn gives(row: &Operation, system: System) -> String {
    let results: Vec<String> = row.results.iter().map(|port| words::result(port, system)).collect();
    let form = match (results.len(), row.is_scalar(), row.makes()) {
        (1, _, Some(_)) => " as rows of path and value",
        (1, ..) => "",
        (_, true, _) => " side by side",
        (_, false, _) => " as rows of value and name",
    };
    format!("{}{form}", results.join(", "))
}

fn known(row: &Operation, system: System) -> String {
    let fields = row.makes().map_or(&[][..], |record| record.fields);
    let own = row.results.iter().chain(fields).map(|port| port.unit_name(system));
    own.chain(RESERVED.map(str::to_owned)).collect::<Vec<_>>().join(", ")
}

fn function(method: &str, shown: &str, about: &str, arguments: &[Argument]) -> String {
    let mut text = format!("<node oor:name=\"{method}\" oor:op=\"replace\">\n");
    text.push_str(&property("DisplayName", shown));
    text.push_str(&property("Description", about));
    text.push_str(
        "<prop oor:name=\"Category\"><value>Add-In</value></prop>\n<node oor:name=\"Parameters\">\n",
    );
    for argument in arguments {
        let _ = writeln!(text, "<node oor:name=\"{}\" oor:op=\"replace\">", argument.name);
        text.push_str(&property("DisplayName", &argument.shown));
        text.push_str(&property("Description", &argument.about));
        text.push_str("</node>\n");
    }
    text.push_str("</node>\n</node>\n");
    text
}

fn property(name: &str, text: &str) -> String {
    format!(
        "<prop oor:name=\"{name}\"><value xml:lang=\"en\">{}</value></prop>\n",
        super::package::escaped(text)
    )
}
