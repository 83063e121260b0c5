//! Checks from outside: numbers that stand in print, see `published/README.md`.

mod expected;
mod key;
mod steps;
mod units;

use overslab_tests::generate::root;
use serde_json::Value as Json;
use std::fmt::Write;

/// The files whose cases run through the table of operations: all of the folder but the factors of units, which need no table.
fn files() -> Vec<String> {
    let folder = std::fs::read_dir(root().join("tests/published")).unwrap();
    let paths = folder.map(|entry| entry.unwrap().path());
    let of_cases = |path: &std::path::Path| path.extension().is_some_and(|end| end == "toml");
    let names =
        paths.filter(|path| of_cases(path)).filter_map(|path| Some(path.file_stem()?.to_str()?.to_owned()));
    let mut names: Vec<String> = names.filter(|name| name != "units").collect();
    names.sort_unstable();
    names
}

/// A file of this folder.
fn read(name: &str) -> Json {
    let path = root().join(format!("tests/published/{name}.toml"));
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    toml::from_str(&text).unwrap_or_else(|error| panic!("{name}.toml: {error}"))
}

fn cases(name: &str) -> Vec<Json> {
    read(name)["case"].as_array().unwrap_or_else(|| panic!("{name}.toml has no case")).clone()
}

fn check_file(name: &str) {
    let mut wrong = String::new();
    let mut checked = 0;
    for case in cases(name) {
        let id = case["id"].as_str().unwrap_or("a case without id").to_owned();
        match steps::run(&case) {
            Err(problem) => writeln!(wrong, "{name}.toml: {id}: {problem}").unwrap(),
            Ok(answers) => {
                for (key, wanted) in case["expected"].as_object().into_iter().flatten() {
                    checked += 1;
                    if let Err(problem) = expected::check(&answers, key, wanted) {
                        writeln!(wrong, "{name}.toml: {id}: {key}: {problem}").unwrap();
                    }
                }
            }
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
    assert!(checked > 0, "{name}.toml expects nothing");
}

#[test]
fn every_file_holds() {
    let files = files();
    assert!(files.len() > 4, "{files:?}");
    files.iter().for_each(|name| check_file(name));
}

/// What may stand in a case, so that a slip of the pen does not switch a check off.
const KEYS: &[&str] =
    &["id", "source", "seen", "evidence", "tolerance", "slip", "steps", "expected", "not_run"];

#[test]
fn every_case_says_where_it_comes_from_and_expects_something() {
    let mut ids = std::collections::HashSet::new();
    let files = files();
    for (file, case) in files.iter().flat_map(|file| cases(file).into_iter().map(move |case| (file, case))) {
        let id = case["id"].as_str().unwrap_or_else(|| panic!("{file}.toml: a case without id"));
        assert!(ids.insert(id.to_owned()), "{file}.toml: {id} stands twice");
        for key in ["source", "tolerance"] {
            assert!(case[key].as_str().is_some_and(|text| !text.is_empty()), "{file}.toml: {id}: no {key}");
        }
        assert!(matches!(case["seen"].as_str(), Some("read" | "memory")), "{file}.toml: {id}: seen");
        let evidence = case["evidence"].as_str();
        assert!(matches!(evidence, Some("printed" | "mixed" | "derived")), "{file}.toml: {id}: evidence");
        let strange = case.as_object().unwrap().keys().find(|key| !KEYS.contains(&key.as_str()));
        assert_eq!(strange, None, "{file}.toml: {id}");
        let left = case["not_run"].as_array().into_iter().flatten();
        for out in left.clone() {
            let told =
                ["key", "why"].iter().all(|key| out[key].as_str().is_some()) && !out["value"].is_null();
            assert!(told, "{file}.toml: {id}: {out}");
        }
        let runs = case["expected"].as_object().is_some_and(|expected| !expected.is_empty());
        assert!(runs || left.count() > 0, "{file}.toml: {id} expects nothing");
    }
}
