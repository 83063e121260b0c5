//! What the crew sets out, as a list to carry.

use super::Page;
use super::water::capital;
use crate::assumption::BENCHMARK_OFF;
use crate::job::{LevelReport, NewFloor};

pub(super) fn marks(page: &mut Page, level: Option<&LevelReport>, floor: &NewFloor) {
    let Some(marks) = &floor.marks else { return };
    match (&marks.morning, level) {
        (Some(morning), _) => page.section("ROD CHECK", &format!("{}.", capital(&morning.text))),
        (None, Some(level)) => page.section(
            "ROD CHECK",
            &format!(
                "Rod on {}: {}. Today it reads ______. Add the difference to every rod below. More than {} off, \
                 and the level not moved: DO NOT POUR, read again.",
                level.benchmark,
                level.rod.text,
                BENCHMARK_OFF.words
            ),
        ),
        (None, None) => {}
    }
    for part in &marks.sheet {
        for (index, line) in part.lines.iter().enumerate() {
            page.labelled(if index == 0 { &part.label } else { "" }, line);
        }
    }
}
