//! How the new floor drains, in words.

use crate::job::{DrainageReport, NewFloor};

/// So many parts that drain badly are told one by one.
const TOLD: usize = 3;

/// The lines on how the new floor drains, where the job asks.
pub(super) fn lines(floor: &NewFloor) -> Vec<String> {
    floor.drainage.as_ref().map_or_else(Vec::new, told)
}

fn told(of: &DrainageReport) -> Vec<String> {
    let mut lines = Vec::new();
    let areas: Vec<String> =
        of.catchments.iter().map(|one| format!("{} {}", one.area.text, one.text)).collect();
    lines.push(format!("Runs off: {}.", areas.join("; ")));
    for fault in of.faults.iter().take(TOLD) {
        let facet = fault.facet.as_ref().map(|facet| format!(" of {facet}")).unwrap_or_default();
        lines.push(format!("- {}{facet}: {}", fault.area.text, why(&fault.fault)));
    }
    let surface =
        of.surface.as_deref().map_or_else(|| "as asked".to_owned(), |surface| format!("{surface} floor"));
    let verdict = match of.judged.as_str() {
        "pass" => "ok",
        "fail" => "NOT OK",
        _ => "CONFIRM LOCALLY",
    };
    lines.push(format!("Least fall {}; {surface}: {}.   {verdict}", of.least_found.text, of.least.text));
    let wave = format!("Waves of {} over {}", of.wave_height.text, of.wave_length.text);
    lines.push(match &of.puddle {
        Some(depth) => format!("{wave} can hold {} of water: strike off truer.", depth.text),
        None => format!("{wave} drain."),
    });
    lines.extend(flows(of));
    lines
}

fn why(fault: &str) -> &'static str {
    match fault {
        "too little" => "falls too little",
        "wrong way" => "FALLS THE WRONG WAY",
        "level" => "LEVEL",
        _ => "WATER FINDS NO WAY OUT",
    }
}

/// What each outlet has to take.
fn flows(of: &DrainageReport) -> Option<String> {
    let from = match (&of.rain, &of.hose) {
        (Some(rain), Some(hose)) => format!("rain {} and a hose {}", rain.text, hose.text),
        (Some(rain), None) => format!("rain {}", rain.text),
        (None, Some(hose)) => format!("a hose {}", hose.text),
        (None, None) => return None,
    };
    let takes = |one: &crate::job::CatchmentReport| Some(format!("{} {}", one.text, one.flow.as_ref()?.text));
    let outlets = of.catchments.iter().filter(|one| ["edge", "drain"].contains(&one.end.as_str()));
    let takes: Vec<String> = outlets.filter_map(takes).collect();
    Some(format!("Water with {from}: {}.", takes.join("; ")))
}
