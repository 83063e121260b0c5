//! Names are equal both ways: table, interface, configuration, component, module, list of frozen names. Units stand in the
//! descriptions.

use overslab::operation::{Kind, Operation, Port};
use overslab::quantity::System;
use overslab_tests::generate::calc::{AddIn, SHIPPED, SPECIMEN, frozen, names};
use overslab_tests::generate::{root, words};
use std::fs;

fn file(add_in: &AddIn, name: &str) -> String {
    fs::read_to_string(root().join(add_in.directory).join(name)).unwrap()
}

fn both(check: impl Fn(&AddIn)) {
    check(&SHIPPED);
    check(&SPECIMEN);
}

/// What every function should be: method, name typed in a cell, arguments.
fn wanted(add_in: &AddIn) -> Vec<(String, String, Vec<String>)> {
    let mut list = vec![("ovsVersion".to_owned(), add_in.version.to_owned(), Vec::new())];
    for row in add_in.rows {
        for (system, want) in names::functions() {
            let result = (want == names::Want::Get).then(|| "argResult".to_owned());
            let arguments = result.into_iter().chain(row.ports.iter().map(|port| names::argument(port.name)));
            let method = names::method(row.name, system, want);
            list.push((method, names::typed(row.name, system, want), arguments.collect()));
        }
    }
    list.sort();
    list
}

fn without_names(list: Vec<(String, String, Vec<String>)>) -> Vec<(String, Vec<String>)> {
    list.into_iter().map(|(method, _, arguments)| (method, arguments)).collect()
}

#[test]
fn the_interface_has_the_methods_of_the_table() {
    both(|add_in| {
        let text = file(add_in, "XOverslab.idl");
        assert!(text.contains(&format!("module org {{ module overslab {{ module {} {{", add_in.module)));
        let method = |line: &str| {
            let line = line.trim().strip_prefix("sequence< sequence< any > > ")?.strip_suffix(");")?;
            let (name, arguments) = line.split_once('(')?;
            let arguments = arguments.split(", ").filter(|argument| !argument.is_empty());
            let arguments = arguments.map(|argument| argument.strip_prefix("[in] any ").unwrap().to_owned());
            Some((name.to_owned(), arguments.collect::<Vec<_>>()))
        };
        let mut found: Vec<_> = text.lines().filter_map(method).collect();
        found.sort();
        assert_eq!(found, without_names(wanted(add_in)));
    });
}

/// The text between two marks.
fn between<'a>(text: &'a str, before: &str, after: &str) -> &'a str {
    let (_, text) = text.split_once(before).unwrap_or_else(|| panic!("no {before} in {text}"));
    text.split_once(after).map_or(text, |(text, _)| text)
}

/// The parts of a text that each begin with a mark.
fn parts<'a>(text: &'a str, mark: &'a str) -> impl Iterator<Item = &'a str> {
    text.split(mark).skip(1)
}

const NODE: &str = "<node oor:name=\"";
const SHOWN: &str = "<prop oor:name=\"DisplayName\"><value xml:lang=\"en\">";
const ABOUT: &str = "<prop oor:name=\"Description\"><value xml:lang=\"en\">";

/// The functions of the configuration: method, name typed, arguments as (name, shown, about).
fn configured(add_in: &AddIn) -> Vec<(String, String, Vec<[String; 3]>)> {
    let text = file(add_in, "CalcAddIn.xcu");
    let mut functions: Vec<(String, String, Vec<[String; 3]>)> = Vec::new();
    for part in parts(&text, NODE) {
        let (name, rest) = part.split_once('"').unwrap();
        if name.starts_with("ovs") {
            functions.push((name.to_owned(), between(rest, SHOWN, "<").to_owned(), Vec::new()));
        } else if name.starts_with("arg") {
            let [shown, about] = [SHOWN, ABOUT].map(|mark| between(rest, mark, "<").to_owned());
            functions.last_mut().unwrap().2.push([name.to_owned(), shown, about]);
        }
    }
    functions
}

#[test]
fn the_configuration_shows_the_functions_of_the_table() {
    both(|add_in| {
        let functions = configured(add_in);
        let names =
            |arguments: &[[String; 3]]| arguments.iter().map(|[name, ..]| name.clone()).collect::<Vec<_>>();
        let mut found: Vec<_> = functions
            .iter()
            .map(|(method, typed, list)| (method.clone(), typed.clone(), names(list)))
            .collect();
        found.sort();
        assert_eq!(found, wanted(add_in));
        let implementation = format!("<node oor:name=\"{}\" oor:op=\"replace\">", add_in.implementation());
        assert!(file(add_in, "CalcAddIn.xcu").contains(&implementation));
    });
}

fn find<'a>(functions: &'a [(String, String, Vec<[String; 3]>)], method: &str) -> &'a [[String; 3]] {
    &functions.iter().find(|(name, ..)| name == method).unwrap().2
}

fn unit(port: &Port, system: System) -> Option<&'static str> {
    match &port.kind {
        Kind::Number(kind) => Some(kind.unit(system).symbol),
        _ => None,
    }
}

#[test]
fn each_argument_says_its_unit_and_what_becomes_of_a_zero() {
    both(|add_in| {
        let functions = configured(add_in);
        for row in add_in.rows {
            for (system, want) in names::functions() {
                let mut arguments = find(&functions, &names::method(row.name, system, want)).iter();
                if want == names::Want::Get {
                    assert_eq!(arguments.next().unwrap()[1], "result");
                }
                for (port, [_, shown, about]) in row.ports.iter().zip(arguments) {
                    assert_eq!(*shown, port.unit_name(system), "{}", row.name);
                    if let Some(unit) = unit(port, system) {
                        assert!(about.contains(&format!("({unit})")), "{}: {about}", row.name);
                    }
                    let zero = about.contains("a zero is refused");
                    assert_eq!(zero, words::zero(port, system).is_some(), "{}: {about}", row.name);
                }
            }
        }
    });
}

#[test]
fn each_function_says_what_it_gives_with_its_unit() {
    both(|add_in| {
        let text = file(add_in, "CalcAddIn.xcu");
        for row in add_in.rows {
            for system in System::ALL {
                let typed = format!("{SHOWN}{}<", names::shown(row.name, system));
                let about = between(between(&text, &typed, "</node>"), ABOUT, "<").to_owned();
                for port in row.results {
                    assert!(about.contains(&port.unit_name(system)), "{}: {about}", row.name);
                }
            }
        }
    });
}

#[test]
fn the_component_has_the_operations_of_the_table() {
    both(|add_in| {
        let text = file(add_in, "overslab_addin.py");
        let listed = between(&text, "OPERATIONS = (\n", "\n)");
        let mut found: Vec<String> = listed.lines().map(|line| line.trim().to_owned()).collect();
        let line = |row: &&Operation| format!("(\"{}\", \"{}\"),", names::stem(row.name), row.name);
        let mut wanted: Vec<String> = add_in.rows.iter().map(line).collect();
        found.sort();
        wanted.sort();
        assert_eq!(found, wanted);
        assert!(text.contains(&format!("IMPLEMENTATION = \"{}\"", add_in.implementation())));
    });
}

#[test]
fn frozen_names_stand() {
    both(|add_in| {
        let faults = frozen::faults(&add_in.frozen(), add_in.rows);
        let cure = "saved sheets hold these names: bring the table back to them. Where a name was never published, \
                    mend its line in frozen.txt by hand";
        assert!(faults.is_empty(), "{faults:#?}: {cure}");
        assert_eq!(
            frozen::grown(&add_in.frozen(), add_in.rows),
            add_in.frozen(),
            "the list lacks operations"
        );
    });
    assert_eq!(SHIPPED.implementation(), "org.overslab.calc.Functions");
}

#[test]
fn a_changed_name_or_order_is_noticed_and_never_written() {
    let rows = SPECIMEN.rows;
    let list = frozen::grown("", rows);
    assert!(frozen::faults(&list, rows).is_empty());
    let first = list.lines().find(|line| !line.starts_with('#')).unwrap();
    for wrong in [
        "specimen_scalar(times; step; colour)",
        "specimen_scalar(step; times; hue)",
        "specimen_gone(a)",
        "specimen_scalar",
    ] {
        let changed = list.replace(first, wrong);
        assert_eq!(frozen::faults(&changed, rows).len(), 1, "{wrong}");
        assert!(frozen::grown(&changed, rows).contains(wrong), "a frozen line was written over");
    }
    let twice = format!("{list}{first}\n");
    assert_eq!(frozen::faults(&twice, rows).len(), 1);
    // An operation that has gained an optional argument keeps its place; a required one may not be added.
    let grown = rows.iter().find(|row| row.name == "specimen_from_table").unwrap();
    let shorter = list.replace("specimen_from_table(rows; label)", "specimen_from_table(rows)");
    assert!(frozen::faults(&shorter, &[grown]).iter().all(|fault| fault.contains("gone")));
    assert_eq!(frozen::grown(&shorter, rows), list);
    let scalar = list.replace(first, "specimen_scalar(step; times)");
    assert_eq!(frozen::faults(&scalar, rows).len(), 1);
}

#[test]
fn methods_stay_apart_without_capitals() {
    // A saved sheet holds the method's name in capitals.
    let mut methods: Vec<String> = [&SHIPPED, &SPECIMEN]
        .into_iter()
        .flat_map(|add_in| wanted(add_in).into_iter().skip(1))
        .map(|(method, ..)| method.to_ascii_uppercase())
        .filter(|method| method != "OVSVERSION")
        .collect();
    let count = methods.len();
    methods.sort();
    methods.dedup();
    assert_eq!(methods.len(), count);
}

#[test]
fn the_version_of_the_package_is_that_of_the_engine() {
    both(|add_in| {
        let version = format!("<version value=\"{}\"/>", env!("CARGO_PKG_VERSION"));
        assert!(file(add_in, "description.xml").contains(&version));
    });
}
