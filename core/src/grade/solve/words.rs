//! Conflicts and prices in the words of the site.

use super::conflicts::{ConflictSet, Conflicts, Relaxed};
use super::demand::{Demand, Measured, Wants};
use super::kept::Kept;
use crate::failure::{Code, Failure};
use crate::quantity::{Length, Slope, Typed, VolumePrice, inches, number_in, slope, volume};

/// The refusal of demands that contradict one another: the smallest set and what mends it.
pub(super) fn refusal(demands: &[Demand], conflicts: &Conflicts) -> Box<Failure> {
    let failure = Failure::new(Code::DemandsConflict, "demands");
    let Some(first) = conflicts.sets.first() else { return failure };
    let more = match conflicts.sets.len() {
        1 => String::new(),
        many => format!(" ({} more such sets)", many - 1),
    };
    failure
        .written(format!("{}{more}", first.names(demands)))
        .allowed("demands that can all be kept")
        .remedy(first.mends(demands))
}

impl Conflicts {
    /// All of it in sentences.
    #[must_use]
    pub fn said(&self, demands: &[Demand]) -> String {
        let mut said: Vec<String> = self.sets.iter().map(|set| set.said(demands)).collect();
        if !self.complete {
            said.push("There are more such sets.".to_owned());
        }
        let each = |list: &[Relaxed]| -> Vec<String> {
            list.iter().filter_map(|relaxed| relaxed.said(demands)).collect()
        };
        said.push(match each(&self.alone).as_slice() {
            [] => "No single change mends it all.".to_owned(),
            alone => format!("Alone mends it all: {}.", alone.join("; or ")),
        });
        let together = each(&self.together);
        if together.len() > 1 {
            said.push(format!("Least change of all together: {}.", together.join("; and ")));
        }
        said.join(" ")
    }
}

impl ConflictSet {
    /// Its demands by name.
    #[must_use]
    pub fn names(&self, demands: &[Demand]) -> String {
        let names: Vec<&str> =
            self.demands.iter().filter_map(|&number| Some(demands.get(number)?.name.as_str())).collect();
        match names.as_slice() {
            [] => String::new(),
            [one] => (*one).to_owned(),
            [rest @ .., last] => format!("{} and {last}", rest.join(", ")),
        }
    }

    /// What mends it, each alone.
    #[must_use]
    pub fn mends(&self, demands: &[Demand]) -> String {
        let each: Vec<String> =
            self.by.iter().flatten().filter_map(|relaxed| relaxed.said(demands)).collect();
        if each.is_empty() { "no one of them can mend it alone".to_owned() } else { each.join("; or ") }
    }

    /// The whole in a sentence.
    #[must_use]
    pub fn said(&self, demands: &[Demand]) -> String {
        let how = match self.demands.len() {
            1 => "cannot be kept on this slab",
            2 => "cannot both be kept",
            _ => "cannot all be kept",
        };
        format!("{} {how}. To mend it: {}.", self.names(demands), self.mends(demands))
    }
}

impl Relaxed {
    /// What gives way, by how much and to what.
    #[must_use]
    pub fn said(&self, demands: &[Demand]) -> Option<String> {
        let demand = demands.get(self.demand)?;
        let name = &demand.name;
        // Who gives way by what is told must have given way enough: changes are told up, what is left of a thickness down.
        let by = inches(sixteenths(self.by, f64::ceil), 16);
        let down = |figure: Length| inches(sixteenths((figure.base() - self.by).max(0.0), f64::floor), 16);
        let to = |figure: Length, by: f64| inches(Length::from_base((figure.base() + by).max(0.0)), 16);
        let fall_to = |figure: Slope, by: f64| fall(Slope::from_base((figure.base() + by).max(0.0)));
        Some(match &demand.wants {
            Wants::LeastThickness { least, .. } => format!("{name}: {by} less, {}", down(*least)),
            Wants::GreatestThickness { most, .. } => format!("{name}: {by} more, {}", to(*most, self.by)),
            Wants::LeastFall { fall: figure, .. } => {
                format!("{name}: no more than {}", fall_to(*figure, -self.by))
            }
            Wants::GreatestFall { fall: figure, .. }
            | Wants::Steepest { fall: figure, .. }
            | Wants::CrossFall { fall: figure, .. } => format!("{name}: up to {}", fall_to(*figure, self.by)),
            Wants::Level { .. } => format!("{name}: let it be {by} out of level"),
            Wants::AtMost(_) => format!("{name}: let the floor be {by} higher there"),
            Wants::AtLeast(_) => format!("{name}: let the floor be {by} lower there"),
            Wants::Exactly(_) if self.down => format!("{name}: let the floor be {by} lower there"),
            Wants::Exactly(_) => format!("{name}: let the floor be {by} higher there"),
        })
    }
}

impl Kept {
    /// What loosening it would save, or how far it is from mattering.
    #[must_use]
    pub fn said(&self, demand: Option<&Demand>, price: Option<VolumePrice>) -> String {
        let step = match self.measured {
            Measured::Length => "1/4 in",
            Measured::Slope => "0.1 %",
        };
        if !self.binds && !self.is_close() {
            return format!("{} to spare", self.amount(self.slack));
        }
        let looser = self.prices.looser;
        let Some(saved) = looser.cost.map(|cost| -cost.base()).filter(|saved| *saved > 0.0) else {
            return "at its limit, and costs nothing".to_owned();
        };
        let yards = number_in(crate::quantity::Volume::from_base(saved), &volume::unit::cubic_yard, 2);
        let money = price.map(|price| format!(" ({:.0})", saved * price.base())).unwrap_or_default();
        let way = demand.map_or(self.out_of_habit(), |demand| loosened(&demand.wants));
        let holds = match looser.holds {
            Some(holds) => format!(", up to {}", self.amount(holds)),
            None => String::new(),
        };
        format!("each {step} {way} saves {yards}{money}{holds}")
    }

    /// Whether what it has to spare is less than could be read: 1/64 in, or 0.01 % of fall.
    #[must_use]
    pub fn is_close(&self) -> bool {
        self.slack
            < match self.measured {
                Measured::Length => 0.0254 / 64.0,
                Measured::Slope => 1e-4,
            }
    }

    /// Which way a habit of setting out is loosened.
    const fn out_of_habit(&self) -> &'static str {
        match self.measured {
            Measured::Length => "out of level",
            Measured::Slope => "out of square",
        }
    }

    /// An amount in what the demand is counted in.
    #[must_use]
    pub fn amount(&self, amount: f64) -> String {
        match self.measured {
            Measured::Length => small_length(amount),
            Measured::Slope => fall(Slope::from_base(amount)),
        }
    }
}

/// Which way a demand is loosened.
const fn loosened(wants: &Wants) -> &'static str {
    match wants {
        Wants::LeastThickness { .. } => "thinner",
        Wants::GreatestThickness { .. } => "thicker",
        Wants::LeastFall { .. } => "flatter",
        Wants::GreatestFall { .. } | Wants::Steepest { .. } => "steeper",
        Wants::CrossFall { .. } => "out of square",
        Wants::Level { .. } => "out of level",
        Wants::AtMost(_) => "higher",
        Wants::AtLeast(_) | Wants::Exactly(_) => "lower",
    }
}

/// Whole sixteenths of an inch below or above; a hair off a whole one is that one.
fn sixteenths(metres: f64, whole: fn(f64) -> f64) -> Length {
    const SIXTEENTH: f64 = 0.0254 / 16.0;
    let (count, near) = (metres / SIXTEENTH, (metres / SIXTEENTH).round());
    Length::from_base(SIXTEENTH * if (count - near).abs() < 1e-4 { near } else { whole(count) })
}

fn small_length(metres: f64) -> String {
    inches(Length::from_base(metres), 16)
}

fn fall(fall: Slope) -> String {
    format!(
        "{} ({})",
        number_in(fall, &slope::unit::inch_per_foot, 2).replace(" in/ft", " in per ft"),
        number_in(fall, &slope::unit::percent, 2)
    )
}
