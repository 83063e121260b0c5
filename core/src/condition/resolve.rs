//! From what a crew writes to the findings that are judged: measures, short answers, what one finding says of another.

use super::findings::{
    CrackMovement, CrackPattern, CrackWidth, Drum, Finding, Findings, FindingsInput, Hollow, RestsOn,
    Settlement, SettlementSigns, Suspended,
};
use crate::failure::{Code, Failure, Result};

/// A finding that nobody gave.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TakenFinding {
    /// Which.
    pub finding: Finding,
    /// The place of the word taken.
    pub word: usize,
    /// Why.
    pub why: String,
}

/// Findings ready to be judged.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Resolved {
    /// The findings given, and those that follow from them.
    pub findings: Findings,
    /// What followed and was not given.
    pub taken: Vec<TakenFinding>,
    /// Whether pouring straight on is judged too.
    pub partly: bool,
}

/// One finding that says another.
struct Implied {
    of: Finding,
    /// The words up to this one say it.
    up_to: usize,
    finding: Finding,
    word: usize,
    why: &'static str,
}

const IMPLIED: [Implied; 5] = [
    Implied {
        of: Finding::CrackWidth,
        up_to: CrackWidth::Clear as usize,
        finding: Finding::CrackMovement,
        word: CrackMovement::Still as usize,
        why: "there are no cracks",
    },
    Implied {
        of: Finding::CrackWidth,
        up_to: CrackWidth::Clear as usize,
        finding: Finding::CrackPattern,
        word: CrackPattern::Few as usize,
        why: "there are no cracks",
    },
    Implied {
        of: Finding::Hollow,
        up_to: Hollow::Clear as usize,
        finding: Finding::Drum,
        word: Drum::No as usize,
        why: "the hammer rings everywhere",
    },
    Implied {
        of: Finding::RestsOn,
        up_to: RestsOn::Fill as usize,
        finding: Finding::Suspended,
        word: Suspended::No as usize,
        why: "it rests on the ground",
    },
    Implied {
        of: Finding::Settlement,
        up_to: Settlement::Clear as usize,
        finding: Finding::SettlementSigns,
        word: SettlementSigns::Clear as usize,
        why: "it has not settled",
    },
];

/// Two findings that cannot both be so: the first up to this word, the second from this word on.
const DISAGREE: [(Finding, usize, Finding, usize); 6] = [
    (
        Finding::CrackWidth,
        CrackWidth::Clear as usize,
        Finding::CrackMovement,
        CrackMovement::Working as usize,
    ),
    (Finding::CrackWidth, CrackWidth::Clear as usize, Finding::CrackPattern, CrackPattern::Many as usize),
    (Finding::Hollow, Hollow::Clear as usize, Finding::Drum, Drum::Yes as usize),
    (Finding::RestsOn, RestsOn::Fill as usize, Finding::Suspended, Suspended::Yes as usize),
    (Finding::Suspended, Suspended::No as usize, Finding::RestsOn, RestsOn::Framing as usize),
    (
        Finding::Settlement,
        Settlement::Clear as usize,
        Finding::SettlementSigns,
        SettlementSigns::Seen as usize,
    ),
];

impl FindingsInput {
    /// The findings to judge.
    ///
    /// # Errors
    /// A measure outside its range, a measure beside another word, findings that cannot both be so.
    pub fn resolve(&self) -> Result<Resolved> {
        let mut findings = self.words();
        for measured in self.measured()? {
            measured.agrees_with(findings.get(measured.finding))?;
            findings.set(measured.finding, Some(measured.word));
        }
        let mut taken = Vec::new();
        for (answer, stands_for) in self.quick.iter().flat_map(super::quick::QuickInput::answers) {
            for &finding in Finding::ALL {
                let word = stands_for.get(finding).filter(|_| findings.get(finding).is_none());
                take(&mut findings, &mut taken, finding, word, &answer);
            }
        }
        agree(&findings)?;
        for implied in &IMPLIED {
            let says = findings.get(implied.of).is_some_and(|word| word <= implied.up_to);
            let word = Some(implied.word).filter(|_| says && findings.get(implied.finding).is_none());
            take(&mut findings, &mut taken, implied.finding, word, implied.why);
        }
        Ok(Resolved { findings, taken, partly: self.judge_partly_bonded })
    }
}

fn take(
    findings: &mut Findings,
    taken: &mut Vec<TakenFinding>,
    finding: Finding,
    word: Option<usize>,
    why: &str,
) {
    let Some(word) = word else { return };
    findings.set(finding, Some(word));
    taken.push(TakenFinding { finding, word, why: why.to_owned() });
}

fn agree(findings: &Findings) -> Result<()> {
    for (one, up_to, other, from) in DISAGREE {
        let (Some(word), Some(beside)) = (findings.get(one), findings.get(other)) else { continue };
        if word <= up_to && (from..=other.worst()).contains(&beside) {
            return Err(Failure::new(Code::FindingsDisagree, other.name())
                .written(other.words().get(beside).copied().unwrap_or_default())
                .allowed(format!("what goes with {}: {}", one.name(), one.says(word)))
                .remedy("look again, and correct one of the two"));
        }
    }
    Ok(())
}
