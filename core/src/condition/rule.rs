//! A rule of the verdict: what it looks at, which ways it touches, what it does to them, and why.

use super::findings::{Finding, Findings};
use crate::basis::{BasisId, Kind, Seen};
use crate::caution::Caution;
use crate::choice;

choice! {
    /// What may be done with the old slab.
    pub enum Way {
        /// The new slab slides on a breaker over the old one.
        Unbonded = "unbonded",
        /// The new slab is bonded to the old one.
        Bonded = "bonded",
        /// The new slab is poured straight on, nothing done to make or break bond.
        PartlyBonded = "partly_bonded",
        /// The bad parts come out, the rest stays under an overlay.
        BreakOutPart = "break_out_part",
        /// The old slab comes out.
        BreakOutWhole = "break_out_whole",
    }
}

impl Way {
    /// Every way.
    pub const ALL: [Self; 5] =
        [Self::Unbonded, Self::Bonded, Self::PartlyBonded, Self::BreakOutPart, Self::BreakOutWhole];

    /// The words of the site for it.
    #[must_use]
    pub const fn said(self) -> &'static str {
        match self {
            Self::Unbonded => "pour over, unbonded",
            Self::Bonded => "bond to it",
            Self::PartlyBonded => "pour straight on",
            Self::BreakOutPart => "break out in part",
            Self::BreakOutWhole => "break it all out",
        }
    }
}

choice! {
    /// What a way may: each is worse than the one before.
    pub enum Standing {
        /// It may be done.
        Allowed = "allowed",
        /// It may be done after the work named.
        AllowedAfterWork = "allowed_after_work",
        /// It hangs on something that is not known yet.
        Asks = "asks",
        /// It may not be done.
        Refused = "refused",
        /// Nothing is done before an engineer, or whoever is named, has looked.
        Stop = "stop",
    }
}

impl PartialOrd for Standing {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Standing {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        (*self as usize).cmp(&(*other as usize))
    }
}

impl Standing {
    /// The words of the site for it.
    #[must_use]
    pub const fn said(self) -> &'static str {
        match self {
            Self::Allowed => "may be done",
            Self::AllowedAfterWork => "may be done after work",
            Self::Asks => "hangs on what is to be found out",
            Self::Refused => "no",
            Self::Stop => "STOP",
        }
    }
}

/// What a rule does to a way, the mildest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Effect {
    /// Work that belongs to the way in any case.
    BelongsTo,
    /// The way is allowed after work.
    AfterWork,
    /// The way is refused.
    Refuses,
    /// Nothing is done before somebody who may say so has looked.
    Stops,
}

impl Effect {
    /// What it comes to.
    #[must_use]
    pub const fn standing(self) -> Standing {
        match self {
            Self::BelongsTo => Standing::Allowed,
            Self::AfterWork => Standing::AllowedAfterWork,
            Self::Refuses => Standing::Refused,
            Self::Stops => Standing::Stop,
        }
    }
}

/// One condition on a finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// The finding is this word or a worse one.
    AtLeast(Finding, usize),
    /// It was asked, and nobody knows.
    Unknown(Finding),
}

impl When {
    /// Which finding.
    #[must_use]
    pub const fn finding(self) -> Finding {
        match self {
            Self::AtLeast(finding, _) | Self::Unknown(finding) => finding,
        }
    }

    /// Whether it holds.
    #[must_use]
    pub fn holds(self, findings: &Findings) -> bool {
        let given = findings.get(self.finding());
        match self {
            Self::AtLeast(finding, word) => {
                given.is_some_and(|given| given >= word && given <= finding.worst())
            }
            Self::Unknown(finding) => given.is_some() && given == finding.unknown(),
        }
    }
}

/// What a rule does to some ways.
#[derive(Clone, Copy, Debug)]
pub struct Then {
    /// Which ways.
    pub ways: &'static [Way],
    /// What it does to them.
    pub effect: Effect,
    /// The work that follows for them; in a stop or a refusal, what would lift it.
    pub work: Option<&'static str>,
}

/// One rule. Rules stand in the order of precedence: among equals the first governs.
#[derive(Clone, Copy, Debug)]
pub struct Rule {
    /// Its name.
    pub id: &'static str,
    /// What must hold, all of it; nothing where it belongs to its ways in any case.
    pub when: &'static [When],
    /// What follows.
    pub then: &'static [Then],
    /// The reason, in plain words.
    pub says: &'static str,
    /// Where it comes from.
    pub basis: BasisId,
    /// What can hurt.
    pub caution: Option<Caution>,
    /// Whether it is a stop by name, printed first.
    pub named_stop: bool,
    /// Whether breaking out the bad part takes it away.
    pub local: bool,
}

impl Rule {
    pub(super) const fn new(
        id: &'static str,
        when: &'static [When],
        then: &'static [Then],
        says: &'static str,
        basis: BasisId,
    ) -> Self {
        Self { id, when, then, says, basis, caution: None, named_stop: false, local: false }
    }

    pub(super) const fn caution(mut self, caution: Caution) -> Self {
        self.caution = Some(caution);
        self
    }

    pub(super) const fn named_stop(mut self) -> Self {
        self.named_stop = true;
        self
    }

    pub(super) const fn local(mut self) -> Self {
        self.local = true;
        self
    }

    /// Whether all its conditions hold.
    #[must_use]
    pub fn holds(&self, findings: &Findings) -> bool {
        self.when.iter().all(|when| when.holds(findings))
    }

    /// The reason; one that we know from memory only says so.
    #[must_use]
    pub fn said(&self) -> String {
        match self.basis.kind() {
            Kind::Published { seen: Seen::Memory, .. } => {
                format!("{} (guidance from memory: confirm locally)", self.says)
            }
            _ => self.says.to_owned(),
        }
    }

    /// What it does to a way.
    #[must_use]
    pub fn on(&self, way: Way) -> Option<&'static Then> {
        self.then.iter().find(|then| then.ways.contains(&way))
    }
}

/// A rule does this to these ways, and this work follows.
pub(super) const fn then(ways: &'static [Way], effect: Effect, work: &'static str) -> Then {
    Then { ways, effect, work: Some(work) }
}

/// A condition: `at!(Step >= Pencil)`, `at!(Below unknown)`.
macro_rules! at {
    ($Type:ident >= $Member:ident) => {
        $crate::condition::rule::When::AtLeast(
            $crate::condition::findings::Finding::$Type,
            $crate::condition::findings::$Type::$Member as usize,
        )
    };
    ($Type:ident unknown) => {
        $crate::condition::rule::When::Unknown($crate::condition::findings::Finding::$Type)
    };
}
pub(super) use at;
