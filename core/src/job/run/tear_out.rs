//! Breaking the old slab out, as the third way beside pouring over it.

use super::taken::Taken;
use crate::assumption::{BASE_LOOSE, BOX_WEIGHT, BULKING, NEW_SLAB, OLD_CONCRETE, OLD_SLAB};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::condition::Verdict;
use crate::condition::rule::{Standing, Way};
use crate::condition::tear_out::{TearOut, TearOutPrices, TearOutRequest, tear_out};
use crate::failure::{Code, Failure, Result};
use crate::job::input::{Job, TearOutInput};
use crate::job::report::{Measure, SaidBasis, TakenReport, TearOutCostReport, TearOutReport};
use crate::job::say;
use crate::note::Note;
use crate::quantity::{Area, Given, Length, Money, Typed, Volume, area, inches, number_in};

/// What breaking out is held against: the floor over the old slab.
#[derive(Clone, Copy)]
pub(super) struct Over {
    /// The area of the work.
    pub(super) area: Area,
    /// The mean thickness over the old slab.
    pub(super) mean: Length,
    /// Its concrete.
    pub(super) fill: Volume,
}

/// Breaking out, what was taken for it, and what must be said beside it.
pub(super) struct BrokenOut {
    pub(super) report: TearOutReport,
    pub(super) taken: Vec<TakenReport>,
    pub(super) notes: Vec<Note>,
    pub(super) bases: Vec<SaidBasis>,
}

/// What can hurt while a slab is broken out, beside the dust.
pub(super) const CAUTIONS: [Caution; 3] =
    [Caution::BuriedServices, Caution::PipesAndTendons, Caution::SpacesBelow];

/// An area is told to a hundredth: nearer to the whole it is the whole.
const NEAR: f64 = 0.01;

impl Job {
    /// Breaking out, where the job or the verdict asks for it; none over a slab that spans free.
    pub(super) fn tear_out(&self, over: Over, verdict: Option<&Verdict>) -> Result<Option<BrokenOut>> {
        let way = verdict.and_then(Verdict::taken_way).filter(|way| BREAKING.contains(way));
        let part = way == Some(Way::BreakOutPart);
        match &self.tear_out {
            _ if verdict.is_some_and(Verdict::spans) => Ok(None),
            // How much of it comes out only the caller can say.
            None if way.is_none() || part => Ok(None),
            asked => {
                let asked = asked.clone().unwrap_or_default();
                self.broken_out(&asked, over, verdict, way).map(Some)
            }
        }
    }

    /// Whether the verdict breaks out parts of which nobody said how large they are.
    pub(super) fn lacks_area(&self, verdict: Option<&Verdict>) -> bool {
        self.tear_out.is_none() && verdict.and_then(Verdict::taken_way) == Some(Way::BreakOutPart)
    }

    fn broken_out(
        &self,
        asked: &TearOutInput,
        over: Over,
        verdict: Option<&Verdict>,
        way: Option<Way>,
    ) -> Result<BrokenOut> {
        let mut taken = Taken::default();
        let area = asked.area(over.area, way, &mut taken).map_err(|failure| failure.under("tear_out"))?;
        let whole = area.base() > over.area.base() * (1.0 - NEAR);
        if !whole {
            let why = "the mean over the whole floor, not over the part";
            taken.word("how much higher the new slab is than what it replaces", &inches(over.mean, 8), why);
        }
        let (old_thickness, key) = self.broken_thickness(asked, &mut taken);
        let slab = Slab { area, old_thickness, rise: over.mean };
        let request = asked.request(slab, self.breaking_prices(asked)?, &mut taken);
        let out = tear_out(&request).map_err(|failure| in_job(failure, key.unwrap_or(OWN_KEY)))?;
        let judged = if whole { Way::BreakOutWhole } else { Way::BreakOutPart };
        let stands = Stands {
            taken: way == Some(judged),
            verdict: verdict.and_then(|verdict| against(judged, verdict)),
            concrete_over: whole.then_some(over.fill),
        };
        let nominal = key.is_none().then_some(BasisId::SiteWords);
        Ok(BrokenOut {
            report: self.said_tear_out(&request, &out, stands),
            taken: taken.0,
            notes: out.notes(),
            bases: std::iter::once(BasisId::RubbleFigures).chain(nominal).map(said).collect(),
        })
    }

    /// The old slab's thickness, and the key of the job that says it; none where nobody does.
    fn broken_thickness(&self, asked: &TearOutInput, taken: &mut Taken) -> (Length, Option<&'static str>) {
        let of_overlay = self.overlay.as_ref().and_then(|overlay| overlay.old_thickness.as_ref());
        let of_slab = self.old_slab.as_ref().and_then(|slab| slab.measured_thickness.as_ref());
        let given = [
            (asked.old_thickness.as_ref(), OWN_KEY),
            (of_overlay, "overlay.old_thickness"),
            (of_slab, "old_slab.measured_thickness"),
        ];
        match given.into_iter().find_map(|(given, key)| Some((given?.value, Some(key)))) {
            Some(given) => given,
            None => (taken.assumed("thickness of the old slab broken out", &OLD_SLAB), None),
        }
    }

    fn breaking_prices(&self, asked: &TearOutInput) -> Result<TearOutPrices> {
        // Without the section nothing is priced: one price of several would tell no cost.
        let concrete = match &asked.concrete_price {
            Some(given) => Some(given.value),
            None if self.tear_out.is_some() => self.concrete_price()?,
            None => None,
        };
        Ok(TearOutPrices {
            breaking: value(&asked.breaking_price),
            load: value(&asked.load_price),
            dumping: value(&asked.dump_price),
            base: value(&asked.base_price),
            concrete,
        })
    }

    fn said_tear_out(&self, request: &TearOutRequest, out: &TearOut, stands: Stands) -> TearOutReport {
        let amount = |money: Money| say::money(money, self.currency());
        let priced = out.costs.iter().any(|cost| cost.money.is_some());
        let costs = out
            .costs
            .iter()
            .filter(|_| priced)
            .map(|cost| TearOutCostReport { what: cost.what.to_owned(), money: cost.money.map(amount) });
        let missing = out.costs.iter().filter(|cost| priced && cost.money.is_none());
        let concrete = out.concrete.map(say::body);
        let concrete_over = stands.concrete_over.map(say::body);
        TearOutReport {
            taken: stands.taken,
            whole: concrete_over.is_some(),
            verdict: stands.verdict,
            area: say::surface(request.area),
            old_thickness: say::thickness(request.old_thickness),
            in_place: say::body(out.in_place),
            mass: say::mass(out.mass),
            loose: say::body(out.loose),
            loads: out.loads,
            box_weight: say::mass(request.box_weight),
            rise: say::thickness(request.rise),
            dig_depth: say::at_most(out.dig_depth),
            dig: say::body(out.dig),
            base: say::body(out.base),
            base_bought: say::body(out.base_loose),
            new_thickness: request.new_thickness.map(say::thickness),
            text: both_ways(concrete_over.as_ref(), concrete.as_ref(), out.loads),
            concrete,
            concrete_over,
            costs: costs.collect(),
            total: out.total.map(amount),
            missing: missing.map(|cost| cost.what.to_owned()).collect(),
        }
    }
}

/// What is broken out, and how much higher the new slab is.
struct Slab {
    area: Area,
    old_thickness: Length,
    rise: Length,
}

/// Where breaking out stands beside the other ways.
struct Stands {
    taken: bool,
    verdict: Option<String>,
    /// The concrete of the floor over the old slab, where all of it is broken out.
    concrete_over: Option<Volume>,
}

/// The ways that break out.
const BREAKING: [Way; 2] = [Way::BreakOutPart, Way::BreakOutWhole];
/// The old slab's thickness as this part says it.
const OWN_KEY: &str = "tear_out.old_thickness";

impl TearOutInput {
    /// The area: as given, or all of the work; a part must be given.
    fn area(&self, work: Area, way: Option<Way>, taken: &mut Taken) -> Result<Area> {
        let said = number_in(work, &area::unit::square_foot, 0);
        let Some(given) = &self.area else {
            if way == Some(Way::BreakOutPart) {
                return Err(Failure::new(Code::KeyMissing, "area")
                    .written("nothing")
                    .allowed(format!("the area of the parts that come out, at most the {said} of the work"))
                    .remedy("measure the parts that come out, and give their area"));
            }
            taken.word("area broken out", &said, "all of the work");
            return Ok(work);
        };
        if given.value.base() > work.base() * (1.0 + NEAR) {
            return Err(Failure::new(Code::OutOfRange, "area")
                .written(given.written.clone())
                .allowed(format!("at most the {said} of the work"))
                .remedy("widen the outline, or give what comes out of it"));
        }
        Ok(given.value)
    }

    fn request(&self, slab: Slab, prices: TearOutPrices, taken: &mut Taken) -> TearOutRequest {
        let base = value(&self.base);
        if base.is_none() {
            taken.word("new base where the old slab was", "none", "nothing is said of it: the ground serves");
        }
        TearOutRequest {
            area: slab.area,
            old_thickness: slab.old_thickness,
            density: taken.or(self.density.as_ref(), "mass of the old concrete", &OLD_CONCRETE),
            bulking: taken.or(self.bulking.as_ref(), "room of broken concrete", &BULKING),
            box_weight: taken.or(self.box_weight.as_ref(), "what a box carries", &BOX_WEIGHT),
            box_volume: value(&self.box_volume),
            base,
            base_loose: taken.or(self.base_loose.as_ref(), "base as bought over compacted", &BASE_LOOSE),
            new_thickness: Some(taken.or(self.new_thickness.as_ref(), "thickness of a new slab", &NEW_SLAB)),
            rise: slab.rise,
            prices,
        }
    }
}

fn value<Q: Copy>(given: &Option<Given<Q>>) -> Option<Q> {
    given.as_ref().map(|given| given.value)
}

/// What the verdict has against breaking out.
fn against(way: Way, verdict: &Verdict) -> Option<String> {
    let judged = verdict.ways.iter().find(|judged| judged.way == way)?;
    (judged.standing > Standing::AllowedAfterWork).then(|| verdict.way_said(judged))
}

/// A refusal at the key of the job that gave what is refused.
fn in_job(mut failure: Box<Failure>, old_thickness: &str) -> Box<Failure> {
    match failure.path.as_str() {
        "old_thickness" => old_thickness.clone_into(&mut failure.path),
        // The rise follows from the finish.
        "rise" => "finish".clone_into(&mut failure.path),
        _ => return failure.under("tear_out"),
    }
    failure
}

fn said(basis: BasisId) -> SaidBasis {
    SaidBasis { about: "breaking out".to_owned(), basis: basis.name().to_owned(), says: basis.line() }
}

fn both_ways(over: Option<&Measure>, out: Option<&Measure>, loads: u32) -> String {
    let out = out.map_or("no concrete", |concrete| &concrete.text);
    let loads = if loads == 1 { "one load".to_owned() } else { format!("{loads} loads") };
    match over {
        Some(over) => format!(
            "Over the old slab: {} of concrete. Broken out: {out} of concrete, {loads} to the dump. Both without waste",
            over.text
        ),
        None => format!(
            "Where it is broken out: {out} of concrete, {loads} to the dump, in place of the floor over the old slab"
        ),
    }
}
