//! How the new floor relates to the old slab, and what it carries.

use super::taken::Taken;
use crate::assumption::{CONCRETE_STRENGTH, CONCRETE_WEIGHT, OLD_STRENGTH, SAFETY};
use crate::basis::BasisId;
use crate::condition::Verdict;
use crate::condition::rule::{Standing, Way};
use crate::failure::{Code, Failure, Result, check};
use crate::job::input::{Job, OverlayInput, StandsInput};
use crate::job::report::{CarriedReport, Measure, OverlayReport, SaidBasis, TakenReport};
use crate::job::say;
use crate::operation::scalar::Word;
use crate::overlay::Bond;
use crate::overlay::carries::{Carried, Floor, Layer, OldSlab, THINNEST};
use crate::overlay::minimums::{Minimum, Use, largest_stone, minimum};
use crate::overlay::preparation::{Covering, ways};
use crate::overlay::strength::contact;
use crate::overlay::strength::loads::{Thing, in_a_row};
use crate::overlay::strength::several::{Forms, Load, Position};
use crate::overlay::strength::subgrade::{Soil, of_soil};
use crate::overlay::strength::westergaard::{CornerForm, EdgeForm};
use crate::overlay::weight::{Support, added};
use crate::quantity::units::INCH;
use crate::quantity::{Force, Given, Length, Pressure, Range, Share, SubgradeReaction, Typed, inches};

/// What the floor is thinnest and on average.
#[derive(Clone, Copy)]
pub(super) struct Thick {
    pub(super) least: Length,
    pub(super) mean: Length,
}

/// The overlay of a job, and what was taken for it.
pub(super) struct Overlay {
    pub(super) report: OverlayReport,
    pub(super) taken: Vec<TakenReport>,
    pub(super) bases: Vec<SaidBasis>,
}

impl Job {
    /// The overlay's part of the report, where the job asks for it; none over a slab that spans free, where only its weight is told.
    pub(super) fn overlay(&self, thick: Thick, verdict: Option<&Verdict>) -> Result<Option<Overlay>> {
        let Some(asked) = self.overlay.as_ref().filter(|_| !verdict.is_some_and(Verdict::spans)) else {
            return Ok(None);
        };
        self.overlay_of(asked, thick, verdict).map(Some).map_err(|failure| failure.under("overlay"))
    }

    fn overlay_of(&self, asked: &OverlayInput, thick: Thick, verdict: Option<&Verdict>) -> Result<Overlay> {
        let stone = asked.stone.as_ref().map(|stone| stone.value);
        let found = minimum(asked.bond, asked.used, stone)?;
        let mut taken = Taken::default();
        let floor = asked.floor(self.old_thickness(), &mut taken)?;
        if asked.loads.is_empty() {
            // Without loads nothing of it is used.
            taken = Taken::default();
        }
        let loads = asked.carried(&floor, thick.least, &mut taken)?;
        let weight = weight(thick.mean, Support::Ground)?;
        taken.assumed("weight of concrete", &CONCRETE_WEIGHT);
        let thick_enough = thick.least.base() >= found.least.base() - HAIR;
        let largest = largest_stone(thick.least);
        let bonded = asked.bond == Bond::Bonded;
        let profile = Covering::Topping.profile();
        let report = OverlayReport {
            bond: asked.bond.word().to_owned(),
            used: asked.used.word().to_owned(),
            least: say::thickness(found.least),
            thick_enough,
            rule: found.basis().line(),
            basis: found.basis().name().to_owned(),
            largest_stone: say::at_least(largest),
            stone_too_large: stone.map(|stone| stone.base() > largest.base() + HAIR),
            between: asked.bond.between().to_owned(),
            means: asked.bond.means().to_owned(),
            profile: bonded.then_some([profile.least, profile.greatest]),
            ways: if bonded { ways(profile).map(|way| way.way.to_owned()).collect() } else { Vec::new() },
            added_weight: weight,
            verdict: verdict.and_then(|verdict| verdict_on(asked.bond, verdict)),
            loads,
            text: first_sentence(asked.bond, asked.used, &found, thick.least, thick_enough),
        };
        let bases = asked.bases(&found).into_iter().map(said).collect();
        Ok(Overlay { report, taken: taken.0, bases })
    }
}

/// A hair over a bound is the bound.
const HAIR: f64 = 1.0e-6;
/// Middle to middle of loads in a row: 2 in to 100 ft.
const SPACING: Range = Range::closed(2.0 * INCH, 1200.0 * INCH);
/// Each place that is looked at where the job names none.
const PLACES: [Position; 2] = [Position::Interior, Position::Edge];

/// What new concrete of that mean thickness weighs on each unit of area.
pub(super) fn weight(mean: Length, support: Support) -> Result<Measure> {
    let mean = Length::from_base(mean.base().max(f64::MIN_POSITIVE));
    Ok(say::area_weight(added(mean, CONCRETE_WEIGHT.value(), Word(support))?.weight))
}

/// Where the old slab's verdict does not allow what is asked, what it says of it.
fn verdict_on(bond: Bond, verdict: &Verdict) -> Option<String> {
    let way = match bond {
        Bond::Bonded => Way::Bonded,
        Bond::PartlyBonded => Way::PartlyBonded,
        Bond::Unbonded => Way::Unbonded,
    };
    let judged = verdict.ways.iter().find(|judged| judged.way == way)?;
    (judged.standing != Standing::Allowed).then(|| verdict.way_said(judged))
}

fn first_sentence(bond: Bond, used: Use, found: &Minimum, least: Length, enough: bool) -> String {
    let needs = inches(found.least, 8);
    let thin = say::at_least(least).text;
    let stands = if enough {
        format!("the thinnest part has {thin}: thick enough")
    } else {
        format!("the thinnest part has {thin}: TOO THIN, confirm locally")
    };
    format!("{}, for {}: at least {needs} everywhere; {stands}", bond.word(), used.word())
}

fn said((about, basis): (&str, BasisId)) -> SaidBasis {
    SaidBasis { about: about.to_owned(), basis: basis.name().to_owned(), says: basis.line() }
}

impl OverlayInput {
    /// Where the limits and the equations come from that are used here.
    fn bases(&self, found: &Minimum) -> Vec<(&'static str, BasisId)> {
        let mut bases = vec![("overlay", found.basis()), ("largest stone", BasisId::StoneThird)];
        if self.bond == Bond::Bonded {
            bases.push(("surface profile", Covering::Topping.profile().basis));
        }
        let mut add = |basis| {
            if !bases.iter().any(|(_, known)| *known == basis) {
                bases.push(("loads", basis));
            }
        };
        self.loads.iter().filter_map(|stands| stands.thing).for_each(|thing| add(thing.basis()));
        if !self.loads.is_empty() {
            add(BasisId::SafetyFactors);
            add(if self.bond == Bond::Bonded {
                BasisId::SubgradeHeelAndBar
            } else {
                BasisId::SubgradeOverOldSlab
            });
        }
        for position in self.loads.iter().flat_map(StandsInput::places) {
            add(match position {
                Position::Interior => BasisId::Westergaard1926,
                Position::Edge => BasisId::Westergaard1948,
                Position::Corner => BasisId::Westergaard1926,
            });
        }
        bases
    }

    fn floor(&self, old_thickness: Option<Length>, taken: &mut Taken) -> Result<Floor> {
        let strength = taken.or(self.strength.as_ref(), "strength of the new concrete", &CONCRETE_STRENGTH);
        let safety = taken.or(self.safety.as_ref(), "safety factor", &SAFETY);
        let bonded = self.bond == Bond::Bonded;
        self.no_idle_ground(bonded)?;
        let old = old_thickness.filter(|_| bonded).map(|thickness| OldSlab {
            thickness,
            strength: taken.or(self.old_strength.as_ref(), "strength of the old slab", &OLD_STRENGTH),
        });
        let subgrade = self.reaction(bonded, taken)?;
        Floor { bond: self.bond, strength, old, subgrade, safety }.checked()
    }

    /// The old slab and its soil carry only with a bonded overlay: beside any other they would not count.
    fn no_idle_ground(&self, bonded: bool) -> Result<()> {
        let given = [
            ("old_thickness", self.old_thickness.as_ref().map(|given| given.written.clone())),
            ("old_strength", self.old_strength.as_ref().map(|given| given.written.clone())),
            ("soil", self.soil.map(|soil| soil.word().to_owned())),
        ];
        match given.into_iter().find_map(|(key, written)| Some((key, written?))) {
            Some((key, written)) if !bonded => Err(Failure::new(Code::Contradiction, key)
                .written(written)
                .allowed("beside a bonded overlay: any other is figured by itself on the old slab")
                .remedy("remove it, or give the reaction under the overlay as subgrade")),
            _ => Ok(()),
        }
    }

    /// The reaction of what the plate lies on: bonded on the soil, else on the old slab.
    fn reaction(&self, bonded: bool, taken: &mut Taken) -> Result<SubgradeReaction> {
        if let Some(given) = &self.subgrade {
            if self.soil.is_some() {
                return Err(Failure::new(Code::Contradiction, "subgrade")
                    .written(format!("{} and a soil", given.written))
                    .allowed("a reaction or a soil")
                    .remedy("keep one of the two"));
            }
            return Ok(given.value);
        }
        let soil = match (bonded, self.soil) {
            (true, Some(soil)) => soil,
            (true, None) => {
                taken.word("soil", "medium, 100 pci", "nobody said; heel and bar tell");
                Soil::Medium
            }
            (false, _) => {
                taken.word(
                    "under the overlay",
                    "an old slab, 200 pci",
                    "common practice, no source: not exceeded without a reason",
                );
                Soil::OldSlab
            }
        };
        Ok(of_soil(Word(soil))?.least)
    }

    fn carried(&self, floor: &Floor, least: Length, taken: &mut Taken) -> Result<Vec<CarriedReport>> {
        let mut reports = Vec::new();
        for (index, stands) in self.loads.iter().enumerate() {
            let one = stands.carried(floor, least, taken);
            reports.extend(one.map_err(|failure| failure.under(&format!("loads[{index}]")))?);
        }
        Ok(reports)
    }
}

impl StandsInput {
    fn carried(&self, floor: &Floor, least: Length, taken: &mut Taken) -> Result<Vec<CarriedReport>> {
        let Some(row) = self.row()? else { return Ok(vec![self.ask_its_maker()]) };
        if let Some(thing) = self.thing {
            taken.word(&self.name, &row.said, &thing.basis().source());
        }
        self.places().into_iter().map(|position| self.carried_at(&row, position, floor, least)).collect()
    }

    fn places(&self) -> Vec<Position> {
        self.position.map_or_else(|| PLACES.to_vec(), |position| vec![position])
    }

    fn carried_at(
        &self,
        row: &Row,
        position: Position,
        floor: &Floor,
        least: Length,
    ) -> Result<CarriedReport> {
        let forms = Forms {
            edge: EdgeForm::Circle,
            corner: CornerForm::Westergaard,
            transfer: Share::from_base(0.0),
        };
        let loads = row.loads(position);
        let needed = floor.needs(&loads, &forms)?;
        let there = if least.base() > 0.0 { floor.carries(least, &loads, &forms).ok() } else { None };
        let enough = needed.is_some_and(|needed| least.base() >= needed.base() - HAIR);
        let whose = there.map(|carried| match carried.layer {
            Layer::Overlay => "overlay",
            Layer::Old => "old slab",
        });
        Ok(CarriedReport {
            name: self.name.clone(),
            said: row.said.clone(),
            position: position.word().to_owned(),
            layer: whose.map(str::to_owned),
            stress: there.map(|carried: Carried| say::stress(carried.stress)),
            allowed: there.map(|carried| say::stress(carried.allowed)),
            needed: needed.map(say::at_most),
            enough: Some(enough),
            text: carried_words(&self.name, position, needed, enough),
        })
    }

    /// What only its maker and an engineer can say.
    fn ask_its_maker(&self) -> CarriedReport {
        let said = self.thing.map(|thing| thing.usual().said.to_owned()).unwrap_or_default();
        CarriedReport {
            name: self.name.clone(),
            position: self.position.unwrap_or(Position::Interior).word().to_owned(),
            layer: None,
            stress: None,
            allowed: None,
            needed: None,
            enough: None,
            text: format!("{}: no figure here; {said}", self.name),
            said,
        }
    }

    /// Refuses figures for what is anchored to the floor: no capacity is told for it.
    fn no_figure(&self) -> Result<()> {
        let given = [
            ("load", self.load.as_ref().map(|given| given.written.clone())),
            ("pressure", self.pressure.as_ref().map(|given| given.written.clone())),
            ("count", self.count.map(|count| count.to_string())),
            ("spacing", self.spacing.as_ref().map(|given| given.written.clone())),
        ];
        match given.into_iter().find_map(|(key, written)| Some((key, written?))) {
            None => Ok(()),
            Some((key, written)) => Err(Failure::new(Code::Contradiction, key)
                .written(written)
                .allowed(
                    "nothing beside an anchored lift: what it needs is its maker's and an engineer's to say",
                )
                .remedy("remove it")),
        }
    }

    /// The loads in a row; none where only the maker knows.
    fn row(&self) -> Result<Option<Row>> {
        if self.thing == Some(Thing::AnchoredLift) {
            return self.no_figure().map(|()| None);
        }
        let usual = self.thing.map(Thing::usual);
        let of_thing = usual.as_ref().and_then(|usual| Some((usual.design_load()?, usual.pressure?)));
        let given = |given: &Option<Given<Pressure>>| given.as_ref().map(|given| given.value);
        let load = self.load.as_ref().map(|given| given.value).or(of_thing.map(|(load, _)| load));
        let pressure = given(&self.pressure).or(of_thing.map(|(_, pressure)| pressure));
        let (load, pressure) = match (load, pressure) {
            (Some(load), Some(pressure)) => (load, pressure),
            (load, _) => return Err(missing(if load.is_some() { "pressure" } else { "load" })),
        };
        let count = self.count.or(usual.map(|usual| usual.count)).unwrap_or(1);
        if !(1..=8).contains(&count) {
            return Err(Failure::new(Code::OutOfRange, "count")
                .written(count.to_string())
                .allowed("from 1 to 8")
                .remedy("give the wheels or legs that stand near one another"));
        }
        let spacing = self.spacing.as_ref().map(|given| given.value).or(usual.map(|usual| usual.spacing));
        let spacing = match (spacing, count) {
            (Some(spacing), _) => check("spacing", spacing, SPACING)?,
            (None, 1) => Length::from_base(1.0),
            (None, _) => return Err(missing("spacing")),
        };
        let said = match usual.filter(|_| self.load.is_none()) {
            Some(usual) => usual.said.to_owned(),
            None => "as given".to_owned(),
        };
        Ok(Some(Row { load, radius: contact::radius(load, pressure)?, count, spacing, said }))
    }
}

/// Alike loads in a row.
struct Row {
    load: Force,
    radius: Length,
    count: u32,
    spacing: Length,
    said: String,
}

impl Row {
    fn loads(&self, position: Position) -> Vec<Load> {
        in_a_row(self.load, self.radius, self.count, self.spacing, position)
    }
}

fn missing(key: &str) -> Box<Failure> {
    Failure::new(Code::KeyMissing, key)
        .written("nothing")
        .allowed("a thing by its word, or load and contact pressure, and the spacing of several")
        .remedy("name the thing, or give what is missing")
}

fn carried_words(name: &str, position: Position, needed: Option<Length>, enough: bool) -> String {
    let place = match position {
        Position::Interior => "away from edges",
        Position::Edge => "at a free edge or open joint",
        Position::Corner => "in a corner",
    };
    match (needed, enough) {
        (Some(needed), true) if needed.base() <= THINNEST => format!("{name} {place}: 1 in carries it: ok"),
        (Some(needed), true) => format!("{name} {place}: needs {}: ok", say::at_most(needed).text),
        (Some(needed), false) => {
            format!(
                "{name} {place}: needs {}, the thinnest part has less: confirm locally",
                say::at_most(needed).text
            )
        }
        (None, _) => format!("{name} {place}: no floor up to 24 in carries it: ask an engineer"),
    }
}
