//! The boat store (invented): from the job file to the report. `cargo run --example boat_store [-- job.toml] [--json]`

use overslab::failure::Failure;
use overslab::job::Job;
use std::process::ExitCode;

/// The job file beside this program.
const BOAT_STORE: &str = include_str!("boat_store.toml");

fn main() -> ExitCode {
    let mut text = BOAT_STORE.to_owned();
    let mut json = false;
    for argument in std::env::args().skip(1) {
        if argument == "--json" {
            json = true;
            continue;
        }
        match std::fs::read_to_string(&argument) {
            Ok(read) => text = read,
            Err(error) => {
                eprintln!("{argument}: {error}");
                return ExitCode::FAILURE;
            }
        }
    }
    match report(&text, json) {
        Ok(report) => {
            print!("{report}");
            ExitCode::SUCCESS
        }
        Err(failure) => {
            eprintln!("{failure}");
            ExitCode::FAILURE
        }
    }
}

/// The report as text, or as JSON.
fn report(text: &str, json: bool) -> Result<String, Box<Failure>> {
    let report = Job::report_text(text)?;
    if json {
        return Ok(serde_json::to_string_pretty(&report).unwrap_or_default() + "\n");
    }
    Ok(report.to_text())
}
