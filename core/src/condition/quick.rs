//! Five questions that a foreman answers standing on the slab, and the findings that each answer stands for.

use super::findings::{
    Below, Contamination, Covering, CrackMovement, CrackPattern, CrackWidth, Drainage, Drum, Findings, Heave,
    Hollow, Joints, Paint, Place, Popouts, RestsOn, Rocking, Scaling, Sealer, Settlement, SettlementSigns,
    Spalling, Step, Strength, Suspended,
};
use crate::choice;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

choice! {
    /// Does it move or rock, or has it sunk?
    pub enum Moves {
        /// No.
        No = "no",
        /// It sank once, long ago, and lies still.
        SankOnce = "sank_once",
        /// A panel rocks.
        Rocks = "rocks",
        /// It still moves: fresh edges, patches cracked again.
        Moves = "moves",
    }
}

choice! {
    /// What cracks are there?
    pub enum Cracks {
        /// None.
        Clear = "none",
        /// Hairline ones that lie still.
        HairlineStill = "hairline_still",
        /// Wide or stepped ones.
        WideOrStepped = "wide_or_stepped",
        /// Many in every panel.
        Many = "many",
    }
}

choice! {
    /// What does the hammer say?
    pub enum Hammer {
        /// It rings everywhere.
        Rings = "rings",
        /// It sounds hollow in spots.
        Spots = "spots",
        /// A lot of it sounds hollow.
        ALot = "a_lot",
    }
}

choice! {
    /// What is the surface like?
    pub enum Surface {
        /// Bare and clean.
        Clean = "clean",
        /// Oil, paint or a sealer is on it.
        OilOrPaint = "oil_or_paint",
        /// It is scaled.
        Scaled = "scaled",
        /// Tile, sheet or old glue is on it.
        Covered = "covered",
    }
}

choice! {
    /// What is under it, and does it freeze there?
    pub enum Under {
        /// Ground, under a roof.
        GroundIndoors = "ground_indoors",
        /// Ground, outdoors without frost.
        GroundOutdoors = "ground_outdoors",
        /// Ground, outdoors, and it freezes.
        GroundFrost = "ground_frost",
        /// Air: framing, a cellar, a tank.
        Air = "air",
        /// Nobody knows.
        Unknown = "unknown",
    }
}

/// The five short answers.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct QuickInput {
    /// Does it move or rock, or has it sunk?
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub moves: Option<Moves>,
    /// What cracks are there?
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cracks: Option<Cracks>,
    /// What does the hammer say?
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hammer: Option<Hammer>,
    /// What is the surface like?
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<Surface>,
    /// What is under it, and does it freeze there?
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub under: Option<Under>,
}

impl QuickInput {
    /// The findings that each answer stands for, with the answer.
    pub(super) fn answers(&self) -> Vec<(String, Findings)> {
        let answered = |question: &str, word: &str| format!("the short answer {question}: {word}");
        let mut list = Vec::new();
        list.extend(self.moves.map(|word| (answered("moves", word.word()), word.findings())));
        list.extend(self.cracks.map(|word| (answered("cracks", word.word()), word.findings())));
        list.extend(self.hammer.map(|word| (answered("hammer", word.word()), word.findings())));
        list.extend(self.surface.map(|word| (answered("surface", word.word()), word.findings())));
        list.extend(self.under.map(|word| (answered("under", word.word()), word.findings())));
        list
    }
}

impl Moves {
    /// What it stands for.
    #[must_use]
    pub fn findings(self) -> Findings {
        let still = Findings {
            settlement: Some(Settlement::Clear),
            settlement_signs: Some(SettlementSigns::Clear),
            heave: Some(Heave::Clear),
            rocking: Some(Rocking::Clear),
            joints: Some(Joints::Still),
            ..Findings::default()
        };
        match self {
            Self::No => still,
            Self::SankOnce => Findings { settlement: Some(Settlement::Dormant), ..still },
            Self::Rocks => {
                Findings { rocking: Some(Rocking::OnePlace), joints: Some(Joints::Working), ..still }
            }
            Self::Moves => Findings {
                settlement: Some(Settlement::Live),
                settlement_signs: Some(SettlementSigns::Seen),
                joints: Some(Joints::Working),
                ..Findings::default()
            },
        }
    }
}

impl Cracks {
    /// What it stands for: the worse of what the words may mean.
    #[must_use]
    pub fn findings(self) -> Findings {
        let (width, movement, pattern, step) = match self {
            Self::Clear => (CrackWidth::Clear, CrackMovement::Still, CrackPattern::Few, Step::Clear),
            Self::HairlineStill => {
                (CrackWidth::Hairline, CrackMovement::Still, CrackPattern::Few, Step::Clear)
            }
            Self::WideOrStepped => {
                (CrackWidth::Wide, CrackMovement::Working, CrackPattern::Few, Step::HalfInch)
            }
            Self::Many => (CrackWidth::Coin, CrackMovement::Working, CrackPattern::Many, Step::Coin),
        };
        Findings {
            crack_width: Some(width),
            crack_movement: Some(movement),
            crack_pattern: Some(pattern),
            step: Some(step),
            ..Findings::default()
        }
    }
}

impl Hammer {
    /// What it stands for.
    #[must_use]
    pub fn findings(self) -> Findings {
        let (hollow, drum, strength) = match self {
            Self::Rings => (Hollow::Clear, Drum::No, Strength::Rings),
            Self::Spots => (Hollow::Spots, Drum::No, Strength::Rings),
            Self::ALot => (Hollow::ALot, Drum::Yes, Strength::Dull),
        };
        Findings { hollow: Some(hollow), drum: Some(drum), strength: Some(strength), ..Findings::default() }
    }
}

impl Surface {
    /// What it stands for: the worse of what the words may mean.
    #[must_use]
    pub fn findings(self) -> Findings {
        let clean = Findings {
            scaling: Some(Scaling::Clear),
            spalling: Some(Spalling::Clear),
            popouts: Some(Popouts::Clear),
            contamination: Some(Contamination::Clear),
            sealer: Some(Sealer::Clear),
            paint: Some(Paint::Clear),
            covering: Some(Covering::Clear),
            ..Findings::default()
        };
        match self {
            Self::Clean => clean,
            Self::OilOrPaint => Findings {
                contamination: Some(Contamination::InDepth),
                sealer: Some(Sealer::Present),
                paint: Some(Paint::Present),
                ..clean
            },
            Self::Scaled => Findings { scaling: Some(Scaling::QuarterInch), ..clean },
            // What lies under a covering has not been seen.
            Self::Covered => Findings { covering: Some(Covering::Untested), ..Findings::default() },
        }
    }
}

impl Under {
    /// What it stands for.
    #[must_use]
    pub fn findings(self) -> Findings {
        let ground = |place: Place| Findings {
            rests_on: Some(RestsOn::Ground),
            suspended: Some(Suspended::No),
            below: Some(Below::Nothing),
            place: Some(place),
            ..Findings::default()
        };
        match self {
            Self::GroundIndoors => ground(Place::Indoors),
            Self::GroundOutdoors => ground(Place::Outdoors),
            Self::GroundFrost => {
                Findings { drainage: Some(Drainage::NotDrained), ..ground(Place::OutdoorsFrost) }
            }
            Self::Air => Findings { suspended: Some(Suspended::Yes), ..Findings::default() },
            Self::Unknown => Findings { below: Some(Below::Unknown), ..Findings::default() },
        }
    }
}
