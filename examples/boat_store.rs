//! The boat store (invented): from the job file to the report.
//!
//! `cargo run -p overslab-examples --example boat_store [-- JOB.toml] [-- --json | --figures]`

use overslab::failure::Failure;
use overslab::job::{JobFile, Report};
use std::process::ExitCode;

/// The job file beside this program.
const BOAT_STORE: &str = include_str!("boat_store.toml");

fn main() -> ExitCode {
    let mut text = BOAT_STORE.to_owned();
    let mut form: fn(&Report) -> String = Report::to_text;
    for argument in std::env::args().skip(1) {
        match argument.as_str() {
            "--json" => form = json,
            "--figures" => form = figures,
            file => match std::fs::read_to_string(file) {
                Ok(read) => text = read,
                Err(error) => {
                    eprintln!("{file}: {error}");
                    return ExitCode::FAILURE;
                }
            },
        }
    }
    match report(&text) {
        Ok(report) => {
            print!("{}", form(&report));
            ExitCode::SUCCESS
        }
        Err(failure) => {
            eprintln!("{failure}");
            ExitCode::FAILURE
        }
    }
}

fn report(text: &str) -> Result<Report, Box<Failure>> {
    JobFile::read(text)?.report()
}

/// The whole report for a program.
fn json(report: &Report) -> String {
    serde_json::to_string_pretty(report).unwrap_or_default() + "\n"
}

/// The main figures, one a line, as every caller of this job prints them.
fn figures(report: &Report) -> String {
    let Some(floor) = &report.new_floor else { return "no figures: the old slab spans free\n".to_owned() };
    let (order, thickness) = (&floor.order, &floor.thickness);
    [
        ("ordered_yd3", order.ordered.us),
        ("figured_yd3", order.figured.us),
        ("loads", f64::from(order.trucks)),
        ("net_yd3", thickness.net.us),
        ("least_in", thickness.least.us),
        ("greatest_in", thickness.greatest.us),
        ("mean_in", thickness.mean.us),
    ]
    .iter()
    .map(|(name, number)| format!("{name} {number:.9}\n"))
    .collect()
}
