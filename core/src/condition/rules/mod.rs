//! The rules of the verdict, as data, in the order of precedence.

mod belongs;
mod below;
mod movement;
mod place;
mod soundness;
mod surface;
mod wanted;

use super::rule::{Rule, Way};

/// The ways over the whole old slab.
const OVER: &[Way] = &[Way::Unbonded, Way::Bonded, Way::PartlyBonded];
/// The ways that keep at least some of the old slab.
const KEEP: &[Way] = &[Way::Unbonded, Way::Bonded, Way::PartlyBonded, Way::BreakOutPart];
/// Every way.
const ALL: &[Way] = &Way::ALL;
/// The ways without a bond that was made.
const LOOSE: &[Way] = &[Way::Unbonded, Way::PartlyBonded];
/// The ways that grip the old slab.
const GRIP: &[Way] = &[Way::Bonded, Way::PartlyBonded];
/// The ways that break it.
const BREAK: &[Way] = &[Way::BreakOutPart, Way::BreakOutWhole];
const UNBONDED: &[Way] = &[Way::Unbonded];
const BONDED: &[Way] = &[Way::Bonded];
const PARTLY: &[Way] = &[Way::PartlyBonded];
const PART: &[Way] = &[Way::BreakOutPart];
const WHOLE: &[Way] = &[Way::BreakOutWhole];
/// What makes room for a bonded overlay. One text: several of its rules may hold at once, and their work stands once in the list.
const MAKE_ROOM: &str = "mill the old slab down, or key the edges, until the least is left everywhere: 3/4 in under people, 1 1/2 in under cars and in wash bays, 2 in under trucks and jacks; confirm locally";

/// Every rule, by theme; the first of all that do the same to a way governs it.
static RULES: &[&[Rule]] = &[
    below::RULES,
    movement::RULES,
    soundness::RULES,
    place::RULES,
    wanted::RULES,
    surface::RULES,
    belongs::RULES,
];

/// Every rule in the order of precedence.
pub fn rules() -> impl Iterator<Item = &'static Rule> {
    RULES.iter().flat_map(|group| group.iter())
}
