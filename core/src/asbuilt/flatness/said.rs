//! A floor's flatness in a few sentences.

use super::class::{Judged, Limits};
use super::floor::{Floor, SectionFlatness};
use super::number::FNumber;
use crate::quantity::Typed;

impl Floor {
    /// Flatness and levelness over all and of sections that are judged, against what is asked.
    #[must_use]
    pub fn said(&self) -> Vec<String> {
        let whole = numbers(self.ff, self.fl, self.falls);
        let asked = self.limits.as_ref().map(asked).unwrap_or_default();
        let mut said = vec![format!("Flatness {whole}{asked}{}.", verdicts(self.judged))];
        let several = self.sections.len() > 1;
        said.extend(self.sections.iter().filter(|_| several).map(|section| self.of_section(section)));
        said
    }

    fn of_section(&self, section: &SectionFlatness) -> String {
        let name = section.name.as_deref().unwrap_or("floor");
        let whole = numbers(section.ff, section.fl, self.falls);
        let asked = self.limits.map(|limits| {
            let level = if self.falls { String::new() } else { format!(", FL {}", limits.local_fl()) };
            format!("; every part needs FF {}{level}", limits.local_ff())
        });
        format!("- {name}: {whole}{}{}.", asked.unwrap_or_default(), verdicts(section.judged))
    }
}

fn numbers(ff: Option<FNumber>, fl: Option<FNumber>, falls: bool) -> String {
    let number = |number: FNumber| {
        number
            .number()
            .map_or_else(|| "beyond any number".to_owned(), |number| format!("{:.1}", number.base()))
    };
    let flat = ff.map_or_else(|| "untold, too few readings".to_owned(), number);
    match (fl, falls) {
        (_, true) => format!("FF {flat} (levelness is not used on a floor that falls)"),
        (Some(level), false) => format!("FF {flat}, levelness FL {}", number(level)),
        (None, false) => format!("FF {flat}, levelness untold, too few readings"),
    }
}

fn asked(limits: &Limits) -> String {
    let class = limits.class.map(|class| format!(" ({})", class.word())).unwrap_or_default();
    format!("; asked FF {}, FL {}{class}", limits.ff, limits.fl)
}

fn verdicts(judged: Option<Judged>) -> String {
    let Some(judged) = judged else { return String::new() };
    let level = judged.fl.map(|level| format!(", levelness {}", level.word())).unwrap_or_default();
    format!(": flatness {}{level}", judged.ff.word())
}
