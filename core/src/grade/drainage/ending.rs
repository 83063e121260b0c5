//! Where water ends.

use crate::choice;
use crate::quantity::{Length, feet_and_inches};
use crate::survey::outline::Corner;

choice! {
    /// What becomes of water at the end of its way.
    pub enum End {
        /// It runs off over an open edge.
        Edge = "edge",
        /// A drain takes it.
        Drain = "drain",
        /// It stands along a level wall.
        Wall = "wall",
        /// It stands in a low spot.
        LowSpot = "low spot",
        /// It stands on level ground, or along a level valley.
        Level = "level",
    }
}

impl End {
    /// Whether water leaves there.
    #[must_use]
    pub const fn is_outlet(self) -> bool {
        matches!(self, Self::Edge | Self::Drain)
    }
}

/// A place, an edge or a drain where water ends.
#[derive(Clone, Debug, PartialEq)]
pub struct Ending {
    /// What becomes of the water.
    pub end: End,
    /// The edge, the drain or the wall; of level ground its facet, of a level valley both facets.
    pub name: Option<String>,
    /// The place of a low spot.
    pub at: Option<Corner>,
}

impl Ending {
    pub(super) fn named(end: End, name: &str) -> Self {
        Self { end, name: Some(name.to_owned()), at: None }
    }

    /// What it is, in words.
    #[must_use]
    pub fn words(&self) -> String {
        let say = |length: Length| feet_and_inches(length, 8);
        let name = self.name.as_deref().unwrap_or("the floor");
        match (self.end, self.at) {
            (End::Edge, _) => format!("over {name}"),
            (End::Drain, _) => format!("to {name}"),
            (End::Wall, _) => format!("stands along {name}"),
            (End::LowSpot, Some(at)) => format!("stands at {} from left, {} in", say(at.x), say(at.y)),
            (End::LowSpot, None) => "stands in a low spot".to_owned(),
            (End::Level, _) => format!("stands on {name}, which is level"),
        }
    }
}
