//! Measures in place of words: the word of a measure is the one whose bound it does not pass.

use super::findings::{
    CrackWidth, Finding, FindingsInput, Hollow, OldThickness, Room, Scaling, Step, Strength,
};
use super::rule::When;
use crate::failure::{Code, Failure, Result, check};
use crate::least_thickness;
use crate::operation::terms::as_written;
use crate::quantity::{Given, Range, Typed};

const INCH: f64 = 0.0254;
const PSI: f64 = 4.448_221_615_260_5 / (INCH * INCH);
/// A hair over a bound is the bound: 0.03 in written in millimetres is still a card.
const HAIR: f64 = 1.0e-6;

/// A crack, a step, a depth.
pub(super) const SMALL: Range = Range::closed(0.0, 24.0 * INCH);
/// A share of the slab.
pub(super) const SHARE: Range = Range::closed(0.0, 1.0);
/// The thickness of an old slab, or of an overlay.
pub(super) const THICKNESS: Range = Range::closed(0.0, 60.0 * INCH);
/// The strength of concrete.
pub(super) const STRENGTH: Range = Range::positive_to(30_000.0 * PSI);

/// The greatest measure of each word but the last, in inches.
const CRACKS: [(f64, usize); 4] = [
    (0.0, CrackWidth::Clear as usize),
    (0.01, CrackWidth::Hairline as usize),
    (0.03, CrackWidth::Card as usize),
    (0.06, CrackWidth::Coin as usize),
];
const STEPS: [(f64, usize); 4] = [
    (0.0, Step::Clear as usize),
    (0.0625, Step::Coin as usize),
    (0.25, Step::Pencil as usize),
    (0.5, Step::HalfInch as usize),
];
const SHARES: [(f64, usize); 2] = [(0.0, Hollow::Clear as usize), (0.05, Hollow::Spots as usize)];
/// Paste alone is about 1/8 in deep.
const SCALINGS: [(f64, usize); 3] =
    [(0.0, Scaling::Clear as usize), (0.125, Scaling::Light as usize), (0.25, Scaling::QuarterInch as usize)];
/// The least measure of each word but the worst.
const THICKNESSES: [(f64, usize); 2] =
    [(3.5, OldThickness::Full as usize), (2.0, OldThickness::Thin as usize)];
const ROOMS: [(f64, usize); 5] = [
    (least_thickness::LOOSE_LOADED, Room::FourInches as usize),
    (least_thickness::LOOSE, Room::ThreeInches as usize),
    (least_thickness::BONDED_UNDER_TRUCKS, Room::TwoInches as usize),
    (least_thickness::BONDED_UNDER_CARS, Room::OneAndAHalf as usize),
    (least_thickness::BONDED, Room::ThreeQuarters as usize),
];

/// A condition of a rule: there is no room for so many inches.
pub(super) const fn no_room_for(inches: f64) -> When {
    let mut rest = ROOMS.as_slice();
    while let [(least, word), more @ ..] = rest {
        if *least < inches {
            return When::AtLeast(Finding::Room, *word);
        }
        rest = more;
    }
    When::AtLeast(Finding::Room, Room::Less as usize)
}

/// What a hammer that rings stands for.
const RINGS: [(f64, usize); 1] = [(3000.0, Strength::Rings as usize)];

/// One measure: its key, its finding, the word's place.
pub(super) struct Measured {
    pub(super) key: &'static str,
    pub(super) finding: Finding,
    pub(super) word: usize,
    pub(super) written: String,
}

impl FindingsInput {
    /// What was measured, as words.
    pub(super) fn measured(&self) -> Result<Vec<Measured>> {
        let list = [
            one("measured_crack", Finding::CrackWidth, &self.measured_crack, SMALL, |base| {
                up_to(base / INCH, &CRACKS, CrackWidth::Wide as usize)
            })?,
            one("measured_step", Finding::Step, &self.measured_step, SMALL, |base| {
                up_to(base / INCH, &STEPS, Step::More as usize)
            })?,
            one("measured_hollow", Finding::Hollow, &self.measured_hollow, SHARE, |base| {
                up_to(base, &SHARES, Hollow::ALot as usize)
            })?,
            one("measured_scaling", Finding::Scaling, &self.measured_scaling, SMALL, |base| {
                up_to(base / INCH, &SCALINGS, Scaling::Deep as usize)
            })?,
            one("measured_thickness", Finding::OldThickness, &self.measured_thickness, THICKNESS, |base| {
                from(base / INCH, &THICKNESSES, OldThickness::Shell as usize)
            })?,
            // A test cannot tell dull from gouged: that takes a screwdriver.
            one("measured_strength", Finding::Strength, &self.measured_strength, STRENGTH, |base| {
                from(base / PSI, &RINGS, Strength::Dull as usize)
            })?,
            one("measured_room", Finding::Room, &self.measured_room, THICKNESS, |base| {
                from(base / INCH, &ROOMS, Room::Less as usize)
            })?,
        ];
        Ok(list.into_iter().flatten().collect())
    }
}

fn one<Q: Typed>(
    key: &'static str,
    finding: Finding,
    given: &Option<Given<Q>>,
    range: Range,
    word: impl Fn(f64) -> usize,
) -> Result<Option<Measured>> {
    let Some(given) = given else { return Ok(None) };
    // Refused in the number and the unit it was given in.
    let own = |failure| as_written(failure, &serde_json::json!({ key: given.written }));
    let base = check(key, given.value, range).map_err(own)?.base();
    Ok(Some(Measured { key, finding, word: word(base), written: given.written.clone() }))
}

/// The first word whose greatest measure is not passed.
fn up_to(measure: f64, bounds: &[(f64, usize)], worst: usize) -> usize {
    bounds.iter().find(|(greatest, _)| measure <= greatest + HAIR).map_or(worst, |&(_, word)| word)
}

/// The first word whose least measure is reached.
fn from(measure: f64, bounds: &[(f64, usize)], worst: usize) -> usize {
    bounds.iter().find(|(least, _)| measure >= least - HAIR).map_or(worst, |&(_, word)| word)
}

impl Measured {
    /// Refuses a measure beside another word.
    pub(super) fn agrees_with(&self, word: Option<usize>) -> Result<()> {
        let Some(word) = word.filter(|&word| word != self.word && Some(word) != self.finding.unknown())
        else {
            return Ok(());
        };
        let words = self.finding.words();
        let said = |place: usize| words.get(place).copied().unwrap_or_default();
        Err(Failure::new(Code::Contradiction, self.key)
            .written(self.written.clone())
            .allowed(format!("{} = {}, as the word beside it says", self.finding.name(), said(word)))
            .remedy(format!("the measure says {}: give one of the two", said(self.word))))
    }
}
