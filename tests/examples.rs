//! The jobs of `examples/` are read, reported on, and the same in every form. `python/test_schemas.py` holds them against the
//! published schemas.

use overslab::job::{Job, JobFile, SCHEMA_VERSION};
use overslab_tests::generate::root;
use std::path::PathBuf;

fn example_jobs() -> Vec<(PathBuf, String)> {
    let files = std::fs::read_dir(root().join("examples")).unwrap().map(|entry| entry.unwrap().path());
    let jobs = files.filter(|path| {
        path.extension().is_some_and(|ending| ending == "toml") && !path.ends_with("Cargo.toml")
    });
    jobs.map(|path| (path.clone(), std::fs::read_to_string(path).unwrap())).collect()
}

fn report(text: &str) -> serde_json::Value {
    let report =
        JobFile::read(text).and_then(|job| job.report()).unwrap_or_else(|failure| panic!("{failure}"));
    serde_json::to_value(report).unwrap()
}

#[test]
fn every_example_is_reported_on() {
    let jobs = example_jobs();
    assert!(!jobs.is_empty());
    for (path, text) in jobs {
        let report = report(&text);
        assert_eq!(report["schema_version"], SCHEMA_VERSION, "{}", path.display());
        assert!(text.contains("invented"), "{} does not say that it is invented", path.display());
    }
}

#[test]
fn an_example_as_json_gives_the_same_report() {
    for (path, text) in example_jobs() {
        let job = Job::read(&text).unwrap();
        let json = serde_json::to_string_pretty(&job).unwrap();
        assert_eq!(Job::read(&json).unwrap(), job, "{}", path.display());
        assert_eq!(report(&json), report(&text), "{}", path.display());
    }
}
