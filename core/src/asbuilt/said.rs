//! The floor as built in a few sentences, for who takes it over.

use super::mends::{Mend, Mending};
use super::whole::AsBuilt;
use super::words::at_most;
use crate::judged::Judged;
use crate::quantity::{area, feet_and_inches, number_in};

impl AsBuilt {
    /// What holds, what does not, what has to be confirmed, what to mend: one paragraph each, only those that have something to say.
    #[must_use]
    pub fn said(&self) -> Vec<String> {
        let checks = |judged: Judged| {
            let of = self.checks.iter().filter(move |check| check.judged == judged);
            of.map(|check| format!("{}: {}", check.about, check.said)).collect::<Vec<_>>().join("; ")
        };
        let parts = [
            ("Holds: ", checks(Judged::Pass)),
            ("Does not hold: ", checks(Judged::Fail)),
            ("Confirm locally: ", checks(Judged::ConfirmLocally)),
            ("Mend: ", self.mends.iter().map(Mend::said).collect::<Vec<_>>().join("; ")),
        ];
        let said = parts.into_iter().filter(|(_, text)| !text.is_empty());
        let said = said.map(|(label, text)| format!("{label}{text}."));
        said.chain(["This is arithmetic on the shots, not an approval.".to_owned()]).collect()
    }
}

impl Mend {
    /// One line for the crew: `grind 3/8 in at P4, 6' 0" from left, 4' 0" in`.
    #[must_use]
    pub fn said(&self) -> String {
        let place =
            format!("{} from left, {} in", feet_and_inches(self.at.x, 8), feet_and_inches(self.at.y, 8));
        let at = self.shot.as_ref().map_or_else(|| place.clone(), |shot| format!("{shot}, {place}"));
        let depth = at_most(self.depth);
        let what = match (self.work, self.area) {
            (Mending::Fill, Some(of)) => {
                let of = number_in(of, &area::unit::square_foot, 0);
                format!("fill the puddle, {of} and up to {depth} deep,")
            }
            (work, _) => format!("{} {depth}", work.word()),
        };
        format!("{what} at {at}")
    }
}
