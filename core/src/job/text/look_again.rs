//! What to look at again, in words.

use super::Page;
use crate::job::{GoverningReport, Report};

/// Less than this share of the floor without a shot near is not worth a line.
const WORTH_A_LINE: f64 = 0.02;

pub(super) fn look_again(page: &mut Page, report: &Report) {
    let again = &report.look_again;
    let governing: Vec<&str> = again.governing.iter().map(|shot| shot.shot.as_str()).collect();
    let suspects = again.suspects.iter().filter(|suspect| !governing.contains(&suspect.shot.as_str()));
    let mut lines = Vec::new();
    if let Some((first, others)) = again.governing.split_first() {
        let beside = match others.is_empty() {
            true => String::new(),
            false => format!(" Within 1/8 in of it: {}.", governing[1..].join(", ")),
        };
        lines.push(format!("- {}{beside}", ended(&first.text)));
        let doubted =
            |shot: &&GoverningReport| again.suspects.iter().any(|suspect| suspect.shot == shot.shot);
        lines.extend(others.iter().filter(doubted).map(|shot| format!("- {}", ended(&shot.text))));
    }
    lines.extend(suspects.map(|suspect| format!("- {}", suspect.text)));
    if again.uncovered.us > WORTH_A_LINE * report.old_floor.area.us {
        let places: Vec<&str> = again.next_shots.iter().map(|place| place.text.as_str()).collect();
        lines.push(format!(
            "- {} is farther than {} from every shot: shoot {}.",
            again.uncovered.text,
            again.near_enough.text,
            places.join("; ")
        ));
    }
    page.list("LOOK AGAIN", lines.into_iter());
}

/// A sentence with its stop, where it does not end in a question.
fn ended(sentence: &str) -> String {
    if sentence.ends_with('?') { sentence.to_owned() } else { format!("{sentence}.") }
}
