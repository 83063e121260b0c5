//! The old floor, the new floor, and what lies between.

use super::Page;
use crate::job::{EdgeHeights, FinishReport, LevelReport, NewFloor, Report};

pub(super) fn old_floor(page: &mut Page, report: &Report) {
    let floor = &report.old_floor;
    let shots = match (&report.level, floor.setups) {
        (Some(level), 1) => format!("{} shots, one set-up, {}.", floor.shots, level.closure),
        (Some(level), many) => format!("{} shots, {many} set-ups, {}.", floor.shots, level.closure),
        (None, _) => format!("{} shots, elevations as given.", floor.shots),
    };
    page.section("OLD FLOOR", &shots);
    page.line(&format!(
        "High: {}. Low: {}, {} lower.",
        floor.highest.text, floor.lowest.text, floor.out_of_level.text
    ));
    if floor.beyond_percent >= 0.5 {
        page.line(&format!("{:.0} % of the floor lies beyond the last shots.", floor.beyond_percent));
    }
    if floor.unsurveyed.us >= 0.5 {
        page.line(&format!(
            "{} was not surveyed: no shot at the corners of a notch or a hole.",
            floor.unsurveyed.text
        ));
    }
    if let Some(squareness) = &floor.squareness {
        page.line(&format!("Outline: {squareness}."));
    }
}

pub(super) fn new_floor(page: &mut Page, level: Option<&LevelReport>, floor: &NewFloor) {
    let finish = &floor.finish;
    let mut words = Vec::new();
    if floor.conflict.is_some() {
        words.push("NOT AS ASKED, see above.".to_owned());
    } else if let (Some(least), Some(margin)) = (&finish.least, &finish.margin) {
        words.push(format!("Least {} + {} margin.", least.text, margin.text));
    }
    words.push(falls(finish));
    page.section("NEW FLOOR", &words.join(" "));
    for edge in &finish.edges {
        page.line(&edge_line(edge));
    }
    for place in &finish.places {
        let (kind, height) = place.rod.as_ref().map_or(("elevation", &place.elevation), |rod| ("rod", rod));
        page.line(&format!("{:<12} {kind} {}, {}", place.name, height.text, place.at.text));
    }
    if let Some(level) = level {
        page.line(&format!(
            "Check first: {}, rod {}. Add any difference to every rod.",
            level.benchmark, level.rod.text
        ));
    }
    // A shot that fixes the height is named under what to look at again.
    if let Some(at) = finish.fixed_at.as_ref().filter(|at| at.shot.is_none()) {
        page.line(&format!("The height is fixed at {}.", at.text));
    }
}

/// How the floor falls, in a sentence.
fn falls(finish: &FinishReport) -> String {
    let fall = &finish.fall;
    if fall.drop.us <= 0.0 {
        return "Level: water may stand.".to_owned();
    }
    let (drop, each) = (&fall.drop.text, &fall.fall.text);
    let planes = finish.facets.iter().filter(|facet| facet.fall.us > 0.0).count();
    let to = finish.falls_to.as_ref().map(|edge| format!(" to the {edge}")).unwrap_or_default();
    match (&fall.run, &fall.steepest) {
        (Some(run), _) => format!("Falls {drop} in {} ({each}){to}.", run.text),
        (None, Some(steepest)) => {
            format!("Falls {drop} in {planes} planes, {each} to {}.", steepest.text)
        }
        (None, None) => format!("Falls {drop} in {planes} planes, each {each}."),
    }
}

fn edge_line(edge: &EdgeHeights) -> String {
    let (kind, from, to) = match (&edge.rod_from, &edge.rod_to) {
        (Some(from), Some(to)) => ("rod", from, to),
        _ => ("elevation", &edge.elevation_from, &edge.elevation_to),
    };
    match edge.level {
        true => format!("{:<12} LEVEL   {kind} {}", edge.edge, from.text),
        false => format!("{:<12} {kind} {} to {}", edge.edge, from.text, to.text),
    }
}

pub(super) fn thickness(page: &mut Page, floor: &NewFloor) {
    let thickness = &floor.thickness;
    page.section("THICKNESS", &format!("Thinnest  {}  at {}", thickness.least.text, thickness.least_at.text));
    page.line(&format!("Thickest  {}  at {}", thickness.greatest.text, thickness.greatest_at.text));
    let high = match thickness.high.us > 0.0 {
        true => format!("High spots above the new floor: {}.", thickness.high.text),
        false => "No high spot stands above the new floor.".to_owned(),
    };
    page.line(&format!("Mean      {}  {high}", thickness.mean.text));
    if thickness.least_with_edges.us + 1.0 / 32.0 < thickness.least.us {
        page.line(&format!(
            "Past the last shots it may get down to {}: look at the edges.",
            thickness.least_with_edges.text
        ));
    }
    if let (Some(depth), Some(area)) = (&thickness.thinner_than, &thickness.thinner) {
        page.line(&format!("Thinner than {}: {}", depth.text, area.text));
    }
}

pub(super) fn fits(page: &mut Page, floor: &NewFloor) {
    for (index, fit) in floor.fits.iter().enumerate() {
        let label = if index == 0 { "FITS" } else { "" };
        let verdict = match (fit.kept, &fit.below) {
            (true, _) => "ok",
            (false, Some(_)) => "DOES NOT FIT",
            (false, None) => "NOT KEPT",
        };
        let name = if fit.below.is_some() { fit.name.clone() } else { format!("{}:", fit.name) };
        page.section(label, &format!("{name:<12} {}   {verdict}", fit.text));
    }
}
