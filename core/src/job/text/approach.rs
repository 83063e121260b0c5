//! The ground outside a door, in words.

use super::Page;
use crate::job::{ApproachReport, NewFloor};

pub(super) fn approaches(page: &mut Page, floor: &NewFloor) {
    for (index, of) in floor.approaches.iter().enumerate() {
        page.list(if index == 0 { "APPROACH" } else { "" }, lines(of).into_iter());
    }
}

fn lines(of: &ApproachReport) -> Vec<String> {
    let verdict = match of.judged.as_str() {
        "pass" => "ok",
        "fail" => "NOT OK",
        _ => "CONFIRM LOCALLY",
    };
    let mut lines = vec![format!("{}: floor {}   {verdict}", of.name, of.floor.text)];
    lines.push(height(of));
    lines.push(format!(
        "Step at the door {}, at most {}{}.",
        of.step.text,
        of.step_limit.text,
        behind(&of.step_judged)
    ));
    for stretch in &of.stretches {
        let falls = match stretch.drop.us {
            drop if drop > 0.0 => format!("falls {}", stretch.drop.text),
            drop if drop < 0.0 => format!("RISES {}", stretch.drop.text.trim_start_matches('-')),
            _ => "level".to_owned(),
        };
        lines.push(format!("- {} to {} out: {falls}", stretch.from.text, stretch.to.text));
    }
    lines.extend(of.rules.iter().filter(|rule| rule.judged != "pass").map(|rule| {
        let kind = if rule.weight == "advice" { "advice" } else { "limit" };
        let wanted = if rule.matter.starts_with("fall") { "at least" } else { "at most" };
        format!(
            "- {} at {} out: {}; {kind} {wanted} {}{}",
            rule.matter,
            rule.at.text,
            rule.found.text,
            rule.limit.text,
            behind(&rule.judged)
        )
    }));
    if let Some(dig) = of.dig.as_ref().filter(|dig| dig.us > 0.0) {
        lines.push(format!("Dig out up to {} for the new approach.", dig.text));
    }
    if !of.high_enough {
        lines.push(trench(of));
    }
    lines
}

fn height(of: &ApproachReport) -> String {
    let (fall, over) = (&of.fall.text, &of.over.text);
    let spare = of.spare.text.trim_start_matches('-');
    match of.high_enough {
        true => format!("{spare} above {}, from which water falls away {fall} over {over}.", of.needed.text),
        false => format!("{spare} TOO LOW: water falls away {fall} over {over} from {} up.", of.needed.text),
    }
}

fn trench(of: &ApproachReport) -> String {
    let takes = match (&of.trench_area, &of.trench_flow) {
        (Some(area), Some(flow)) => format!("; it takes the water of {}, {}", area.text, flow.text),
        (Some(area), None) => format!("; it takes the water of {}", area.text),
        _ => String::new(),
    };
    format!("Or a drain along the door: then the floor may be as low as {}{takes}.", of.trench_floor.text)
}

fn behind(judged: &str) -> &'static str {
    match judged {
        "confirm locally" => " (from memory: confirm locally)",
        _ => "",
    }
}
