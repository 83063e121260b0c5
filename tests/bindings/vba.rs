//! The VBA module against the header: VBA itself checks neither names nor arguments of what it declares.

use overslab::operation::{Kind, Need};
use overslab_tests::c_header::{Header, Prototype, Type};
use overslab_tests::generate::calc::{AddIn, SHIPPED, SPECIMEN, names};
use overslab_tests::generate::{header, root};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;

fn both(check: impl Fn(&AddIn, &str, &Header)) {
    for (add_in, module, header) in [
        (&SHIPPED, "ffi/vba/Overslab.bas", header::SHIPPED),
        (&SPECIMEN, "tests/specimen/OverslabSpecimen.bas", header::SPECIMEN),
    ] {
        let read = |path: &str| fs::read_to_string(root().join(path)).unwrap();
        check(add_in, &read(module), &Header::read(&read(header)));
    }
}

/// A declaration of the module.
#[derive(Debug, PartialEq)]
struct Declare {
    safe: bool,
    called: String,
    library: String,
    alias: String,
    /// `ByVal` or `ByRef`, name, type.
    arguments: Vec<[String; 3]>,
    gives: String,
}

fn declare(line: &str) -> Option<Declare> {
    let line =
        line.strip_prefix("Private ").or_else(|| line.strip_prefix("Public "))?.strip_prefix("Declare ")?;
    let (safe, line) = line.strip_prefix("PtrSafe ").map_or((false, line), |line| (true, line));
    let words: Vec<&str> = line.split('(').next()?.split_whitespace().collect();
    let ["Function", called, "Lib", library, "Alias", alias] = words.as_slice() else { panic!("{line}") };
    let (arguments, gives) = line.split_once('(')?.1.rsplit_once(") As ")?;
    let argument = |text: &str| {
        let words: Vec<String> = text.split_whitespace().map(str::to_owned).collect();
        let [how, name, word, kind] = <[String; 4]>::try_from(words).unwrap();
        assert_eq!(word, "As");
        [how, name, kind]
    };
    let bare = |text: &str| text.trim_matches('"').to_owned();
    Some(Declare {
        safe,
        called: (*called).to_owned(),
        library: bare(library),
        alias: bare(alias),
        arguments: arguments.split(", ").filter(|text| !text.is_empty()).map(argument).collect(),
        gives: gives.to_owned(),
    })
}

/// The declarations in the two branches: for Office that knows `PtrSafe`, and for older.
fn branches(module: &str) -> (Vec<Declare>, Vec<Declare>) {
    let (_, rest) = module.split_once("#If VBA7 Then\r\n").unwrap();
    let (new, rest) = rest.split_once("#Else\r\n").unwrap();
    let (old, _) = rest.split_once("#End If\r\n").unwrap();
    let read = |text: &str| text.lines().map(|line| declare(line).unwrap()).collect();
    (read(new), read(old))
}

/// How a type of the header must be declared: written here anew, not taken from the generator.
fn in_basic(kind: &Type) -> [&'static str; 2] {
    match kind {
        Type::Double => ["ByVal", "Double"],
        Type::Int => ["ByVal", "Long"],
        Type::In(word) if word == "char" => ["ByVal", "String"],
        Type::Out(word) if word == "char" => ["ByRef", "Byte"],
        Type::Out(word) if word == "double" => ["ByRef", "Double"],
        Type::Out(word) if word == "int" => ["ByRef", "Long"],
        other => panic!("{other:?} is not declared in the module"),
    }
}

fn compare(declare: &Declare, prototype: &Prototype) {
    assert_eq!((declare.gives.as_str(), &prototype.gives), ("Long", &Type::Int), "{}", prototype.name);
    assert_eq!(declare.arguments.len(), prototype.arguments.len(), "{}", prototype.name);
    for ([how, name, kind], argument) in declare.arguments.iter().zip(&prototype.arguments) {
        assert_eq!([how.as_str(), kind.as_str()], in_basic(&argument.kind), "{}: {name}", prototype.name);
        assert!(
            name == &argument.name || *name == format!("{}_value", argument.name),
            "{}: {name}",
            prototype.name
        );
    }
}

#[test]
fn every_declaration_is_that_of_the_header() {
    both(|_, module, header| {
        let (new, old) = branches(module);
        for declare in new.iter().filter(|declare| declare.library != "kernel32") {
            assert_eq!(declare.library, "overslab-0.dll");
            let prototype = header.function(&declare.alias).unwrap_or_else(|| panic!("no {}", declare.alias));
            compare(declare, prototype);
        }
        assert!(new.iter().all(|declare| declare.safe) && old.iter().all(|declare| !declare.safe));
        assert_eq!(new.len(), old.len());
        for (new, old) in new.iter().zip(&old) {
            assert_eq!((&new.called, &new.library, &new.alias), (&old.called, &old.library, &old.alias));
            let plain = |text: &String| text.replace("LongPtr", "Long");
            let types =
                |list: &[[String; 3]]| list.iter().map(|list| list.each_ref().map(plain)).collect::<Vec<_>>();
            assert_eq!(types(&new.arguments), types(&old.arguments), "{}", new.called);
        }
        assert_eq!(
            module.matches("Declare ").count(),
            new.len() + old.len(),
            "a declaration stands elsewhere"
        );
    });
}

#[test]
fn every_scalar_operation_is_declared_and_nothing_else() {
    both(|add_in, module, _| {
        let rows = add_in.rows.iter().filter(|row| row.is_scalar());
        let mut wanted: BTreeSet<String> =
            rows.flat_map(|row| ["us", "si"].map(|system| format!("ovs_{}_{system}", row.name))).collect();
        wanted.extend(
            ["LoadLibraryW", "ovs_abi_version", "ovs_version", "ovs_sheet_values"].map(str::to_owned),
        );
        let found: BTreeSet<String> = branches(module).0.into_iter().map(|declare| declare.alias).collect();
        assert_eq!(found, wanted);
    });
}

/// The public functions: name, and arguments as (optional, name).
fn public(module: &str) -> BTreeMap<String, Vec<(bool, String)>> {
    let function = |line: &str| {
        let line = line.strip_prefix("Public Function ")?;
        let (name, rest) = line.split_once('(')?;
        let arguments = rest.strip_suffix(") As Variant").unwrap();
        let argument = |text: &str| {
            let (optional, text) = text.strip_prefix("Optional ").map_or((false, text), |text| (true, text));
            let name = text.strip_prefix("ByVal ").unwrap().strip_suffix(" As Variant").unwrap();
            (optional, name.to_owned())
        };
        let arguments = arguments.split(", ").filter(|text| !text.is_empty()).map(argument).collect();
        Some((name.to_owned(), arguments))
    };
    module.lines().filter_map(function).collect()
}

#[test]
fn the_worksheet_functions_are_those_of_the_table() {
    both(|add_in, module, _| {
        let found = public(module);
        let mut wanted = BTreeSet::from([add_in.version.to_owned()]);
        for row in add_in.rows {
            for (system, want) in names::functions() {
                let name = names::typed(row.name, system, want);
                let mut arguments = found[&name].iter();
                if want == names::Want::Get {
                    assert_eq!(arguments.next().unwrap().1, "result");
                }
                let mut optional = false;
                for (port, (may_be_left_out, argument)) in row.ports.iter().zip(arguments) {
                    optional |= port.need != Need::Required;
                    let unit_name = port.unit_name(system);
                    assert!(
                        *argument == unit_name || *argument == format!("{unit_name}_value"),
                        "{name}: {argument}"
                    );
                    assert_eq!(*may_be_left_out, optional, "{name}: {argument}");
                }
                wanted.insert(name);
            }
        }
        assert_eq!(found.keys().cloned().collect::<BTreeSet<_>>(), wanted);
    });
}

/// The number of arguments in the brackets that open at the front.
fn counted(text: &str) -> usize {
    let (mut depth, mut commas) = (0, 0);
    for letter in text.chars() {
        match letter {
            '(' => depth += 1,
            ')' => depth -= 1,
            ',' if depth == 1 => commas += 1,
            _ => {}
        }
        if depth == 0 {
            break;
        }
    }
    commas + usize::from(!text.starts_with("()"))
}

#[test]
fn every_call_of_the_library_passes_what_is_declared() {
    both(|add_in, module, _| {
        let (declared, _) = branches(module);
        let (_, body) = module.split_once("#End If\r\n").unwrap();
        let mut called = BTreeSet::new();
        for declare in &declared {
            for (at, _) in body.match_indices(&format!("{}(", declare.called)) {
                let passed = counted(&body[at + declare.called.len()..]);
                assert_eq!(passed, declare.arguments.len(), "{}", declare.called);
                called.insert(declare.called.clone());
            }
        }
        // A word goes to the library as a number only after the engine has read it: by the way of all cells.
        let word = |name: &str| {
            add_in.rows.iter().any(|row| {
                name.contains(row.name) && row.ports.iter().any(|port| matches!(port.kind, Kind::Choice(_)))
            })
        };
        for declare in declared.iter().filter(|declare| !word(&declare.called)) {
            assert!(called.contains(&declare.called), "{} is never called", declare.called);
        }
    });
}

#[test]
fn names_stay_apart_without_capitals_and_lines_are_what_the_editor_takes() {
    both(|_, module, _| {
        let (declared, _) = branches(module);
        let mut names: Vec<String> =
            declared.iter().map(|declare| declare.called.to_ascii_lowercase()).collect();
        let function = |line: &str| {
            let line =
                line.strip_prefix("Public Function ").or_else(|| line.strip_prefix("Private Function "))?;
            line.split_once('(').map(|(name, _)| name.to_ascii_lowercase())
        };
        names.extend(module.lines().filter_map(function));
        let count = names.len();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), count);
        assert!(module.is_ascii() && module.matches('\n').count() == module.matches("\r\n").count());
        // The editor cuts a line at 1023 characters.
        assert!(module.lines().all(|line| line.len() <= 1000));
    });
}
