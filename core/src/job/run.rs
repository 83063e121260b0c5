//! From the job to its report.

use super::finish::{Datum, Made, height};
use super::input::{ExtraInput, Job, LimitInput};
use super::locate::line_of;
use super::report::{
    EdgeHeights, FallReport, FinishReport, FitReport, LevelReport, OldFloor, OrderLine, OrderReport, Report,
    RoundingReport, SaidBasis, SaidNote, ThicknessReport,
};
use super::say;
use super::taken::taken;
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::Point;
use crate::grade::finish::{Facing, Finish};
use crate::grade::thickness::{At, Thickness};
use crate::note::{Note, NoteCode};
use crate::order::list::{Allowance, Order, Part, Request, order};
use crate::quantity::{Elevation, Length, Ratio, Share, Slope, Typed, Volume, inches};
use crate::survey::Survey;
use crate::survey::input::SurveyInput;
use crate::survey::old_slab::{Facts, SlabPlace};

/// What an allowance for waste is where none is given: 3 %.
const WASTE: f64 = 0.03;
/// What a plant's step is where none is given: 1/4 yd3.
const STEP: f64 = 0.25 * crate::quantity::units::CUBIC_YARD;
/// What a truck carries where it is not given: 10 yd3.
const TRUCK: f64 = 10.0 * crate::quantity::units::CUBIC_YARD;
/// Guidance for a well-finished floor: 1/8 in/ft.
const GUIDANCE: f64 = 0.125 / 12.0;

impl Job {
    /// Reads a job and reports on it; a failure found on the way names the line of the text too.
    ///
    /// # Errors
    /// As [`Job::read`] and [`Job::report`].
    pub fn report_text(text: &str) -> Result<Report> {
        Self::read(text)?.report().map_err(|failure| match line_of(text, &failure.path) {
            Some(line) if failure.place == Place::Unknown => failure.at(Place::Line(line)),
            // An element of a list is named in the path, so that the line can be told as well.
            Some(line) => failure.at(Place::Line(line)),
            None => failure,
        })
    }

    /// Reports on the job.
    ///
    /// # Errors
    /// Whatever the outline, the survey, the finish or the order is refused for, with its path in the job.
    pub fn report(&self) -> Result<Report> {
        let survey = self.survey()?;
        let datum = datum(&survey)?;
        let made = self.finish.make(&survey, datum).map_err(|failure| failure.under("finish"))?;
        let depth = self.finish.thinner_than.as_ref().map(|given| given.value);
        let thickness =
            Thickness::of(&survey, &made.finish, depth).map_err(|failure| failure.under("finish"))?;
        let fits = self.fits(&made.finish, datum)?;
        let order = self.order_for(thickness.fill)?;
        let facts = survey.facts();
        let fall = self.fall_report(&survey, &made.finish)?;
        let mut notes: Vec<Note> = survey.notes().to_vec();
        notes.extend(thickness.notes());
        notes.extend(self.own_notes(&fall, &made, &order));
        Ok(Report {
            schema_version: super::input::SCHEMA_VERSION,
            name: self.job.name.clone(),
            old_floor: old_floor(&survey, &facts),
            level: level_report(&survey, datum)?,
            finish: self.finish_report(&survey, &made, datum, fall),
            thickness: self.thickness_report(&survey, &thickness),
            fits,
            order: self.order_report(&order, thickness.fill),
            rounding: self.rounding_report(&survey, &made, datum, thickness.net)?,
            taken: taken(self, &survey, &facts, order.net),
            notes: notes.iter().map(SaidNote::from).collect(),
            basis: self.bases(),
            not_answered: ["whether the old slab may stay", "joints", "the day", "the price"]
                .map(str::to_owned)
                .to_vec(),
            cautions: [Caution::Silica, Caution::Caustic, Caution::LocalCode]
                .map(|c| c.text().to_owned())
                .to_vec(),
        })
    }

    /// The surveyed old slab of the job.
    ///
    /// # Errors
    /// Whatever the outline or the survey is refused for.
    pub fn survey(&self) -> Result<Survey> {
        Survey::from_input(&SurveyInput {
            outline: self.outline.clone(),
            level: Some(self.level.clone()),
            grid: None,
            shots: None,
            instrument: None,
            texture: None,
            beyond_allowed: false,
        })
    }

    /// The finish of the job.
    ///
    /// # Errors
    /// Whatever the survey or the finish is refused for.
    pub fn made_finish(&self) -> Result<Finish> {
        let survey = self.survey()?;
        let made = self.finish.make(&survey, datum(&survey)?).map_err(|failure| failure.under("finish"))?;
        Ok(made.finish)
    }

    fn fits(&self, finish: &Finish, datum: Datum) -> Result<Vec<FitReport>> {
        let fits = self.limits.iter().enumerate();
        fits.map(|(index, limit)| {
            fit(limit, finish, datum).map_err(|failure| failure.under(&format!("limits[{index}]")))
        })
        .collect()
    }

    fn order_for(&self, floor: Volume) -> Result<Order> {
        let mut parts = vec![Part { name: "floor".to_owned(), volume: floor }];
        for (index, extra) in self.order.extras.iter().enumerate() {
            let volume =
                extra.volume().map_err(|failure| failure.under(&format!("order.extras[{index}]")))?;
            parts.push(Part { name: extra.name.clone(), volume });
        }
        let allowances = match &self.order.allowances {
            Some(list) => {
                list.iter().map(|a| Allowance { name: a.name.clone(), share: a.share.value }).collect()
            }
            None => vec![Allowance { name: "waste".to_owned(), share: Share::from_base(WASTE) }],
        };
        let step = self.order.step.as_ref().map_or(Volume::from_base(STEP), |given| given.value);
        let capacity = self.order.truck.as_ref().map_or(Volume::from_base(TRUCK), |given| given.value);
        order(&Request { parts, allowances, step, capacity })
            .map_err(|failure| in_job(failure).under("order"))
    }

    fn order_report(&self, order: &Order, floor: Volume) -> OrderReport {
        let line = |name: &str, volume: Volume, taken: bool| OrderLine {
            name: name.to_owned(),
            volume: say::body(volume),
            taken,
        };
        let mut lines = vec![line("floor", floor, false)];
        lines.extend(
            self.order.extras.iter().filter_map(|extra| Some(line(&extra.name, extra.volume().ok()?, false))),
        );
        let taken = self.order.allowances.is_none();
        lines.extend(order.allowances.iter().map(|part| line(&part.name, part.volume, taken)));
        let capacity = self.order.truck.as_ref().map_or(Volume::from_base(TRUCK), |given| given.value);
        OrderReport {
            lines,
            net: say::body(order.net),
            figured: say::body(order.figured),
            ordered: say::sold(order.ordered),
            spare: say::body(order.spare),
            trucks: order.trucks.loads,
            capacity: say::sold(capacity),
            last: say::sold(order.trucks.last),
        }
    }

    fn fall_report(&self, survey: &Survey, finish: &Finish) -> Result<FallReport> {
        let corners = survey.outline().corners().iter().map(|corner| corner.place());
        let depths = match &self.finish.falls_to {
            Some(edge) => {
                let facing = Facing::edge(survey.outline(), edge)?;
                corners.map(|place| facing.inward(place)).collect::<Vec<_>>()
            }
            None => along_the_fall(finish, corners),
        };
        let run = depths.iter().copied().fold(f64::NEG_INFINITY, f64::max)
            - depths.iter().copied().fold(f64::INFINITY, f64::min);
        let run = if finish.fall().base() > 0.0 { run } else { 0.0 };
        let drop = Length::from_base(run * finish.fall().base());
        let meets = finish.fall().base() >= GUIDANCE * (1.0 - 1.0e-9);
        Ok(FallReport {
            fall: say::fall(finish.fall()),
            drop: say::thickness(drop),
            run: say::distance(Length::from_base(run)),
            guidance: say::fall(Slope::from_base(GUIDANCE)),
            meets_guidance: meets,
            text: fall_words(finish.fall(), meets),
        })
    }

    fn finish_report(&self, survey: &Survey, made: &Made, datum: Datum, fall: FallReport) -> FinishReport {
        let by_least = self.finish.least.as_ref();
        FinishReport {
            least: by_least.map(|least| say::thickness(least.value)),
            margin: by_least.map(|_| say::thickness(self.finish.margin().0)),
            fixed_at: made.governing.as_ref().map(|governing| say::place(&governing.at)),
            falls_to: self.finish.falls_to.clone(),
            fall,
            edges: edges(survey, &made.finish, datum, say::distance),
        }
    }

    fn thickness_report(&self, survey: &Survey, thickness: &Thickness) -> ThicknessReport {
        let least = thickness.least_measured.as_ref().unwrap_or(&thickness.least);
        ThicknessReport {
            least: say::thickness(least.thickness),
            least_at: say::place(&slab_place(survey, least)),
            least_with_edges: say::thickness(thickness.least.thickness),
            greatest: say::thickness(thickness.greatest.thickness),
            greatest_at: say::place(&slab_place(survey, &thickness.greatest)),
            mean: say::thickness(thickness.mean),
            net: say::body(thickness.net),
            fill: say::body(thickness.fill),
            high: say::body(thickness.high),
            thinner_than: self.finish.thinner_than.as_ref().map(|given| say::thickness(given.value)),
            thinner: thickness.thinner.map(say::surface),
        }
    }

    fn rounding_report(
        &self,
        survey: &Survey,
        made: &Made,
        datum: Datum,
        net: Volume,
    ) -> Result<Option<RoundingReport>> {
        let (Some(governing), Some(unrounded), Some(bare)) =
            (&made.governing, &made.unrounded, &made.without_margin)
        else {
            return Ok(None);
        };
        let with_margin = Thickness::of(survey, unrounded, None)?.net;
        let without = Thickness::of(survey, bare, None)?.net;
        Ok(Some(RoundingReport {
            step: say::thickness(self.finish.round().0),
            raised: say::fine_thickness(governing.rounded_by),
            rounding: say::body(net - with_margin),
            margin: say::body(with_margin - without),
            unrounded: say::body(with_margin),
            without_margin: say::body(without),
            edges: edges(survey, unrounded, datum, say::fine_distance),
        }))
    }

    fn own_notes(&self, fall: &FallReport, made: &Made, order: &Order) -> Vec<Note> {
        let mut notes = Vec::new();
        if !fall.meets_guidance {
            notes.push(Note::new(NoteCode::BelowGuidance, fall.text.clone()));
        }
        notes.push(Note::new(
            NoteCode::ConfirmLocally,
            "the guidance on falls is from memory: confirm locally",
        ));
        if let Some(governing) = made.governing.as_ref().filter(|governing| governing.rounded_by.base() > 0.0)
        {
            let (by, step) = (inches(governing.rounded_by, 16), inches(self.finish.round().0, 8));
            notes.push(Note::new(
                NoteCode::Rounded,
                format!("heights are rounded up by {by} to whole {step}"),
            ));
        }
        if let Some(code) = order.trucks.note {
            notes.push(Note::new(code, code.meaning()));
        }
        notes
    }

    fn bases(&self) -> Vec<SaidBasis> {
        let mut about = vec![
            ("heights", BasisId::Levelling),
            ("thickness and volume", BasisId::Geometry),
            ("fall", BasisId::FallFinishedFloor),
            ("fall as often given", BasisId::FallInPractice),
        ];
        if self.finish.least.is_some() {
            about.push(("margin", BasisId::ThicknessMargin));
        }
        about.extend([
            ("waste", BasisId::WasteAllowance),
            ("step", BasisId::PlantStep),
            ("truck", BasisId::TruckLoad),
        ]);
        let said = |(about, basis): (&str, BasisId)| SaidBasis {
            about: about.to_owned(),
            basis: basis.name().to_owned(),
            says: basis.line(),
        };
        about.into_iter().map(said).collect()
    }
}

/// The paths of the order in the words of the job: the floor is the first part, the extras follow it.
fn in_job(mut failure: Box<Failure>) -> Box<Failure> {
    if failure.path == "capacity" {
        "truck".clone_into(&mut failure.path);
    }
    if let Some(rest) = failure.path.strip_prefix("parts[").map(str::to_owned)
        && let Some((index, tail)) = rest.split_once(']')
        && let Some(extra) = index.parse::<usize>().ok().and_then(|index| index.checked_sub(1))
    {
        failure.path = format!("extras[{extra}]{tail}");
    }
    failure
}

impl ExtraInput {
    /// Its volume, or length x width x mean depth.
    pub(super) fn volume(&self) -> Result<Volume> {
        use crate::order::list::PART;
        let volume = match (&self.volume, &self.length, &self.width, &self.mean) {
            (Some(volume), None, None, None) => volume.value,
            (None, Some(length), Some(width), Some(mean)) => {
                for (name, given) in [("length", length), ("width", width), ("mean", mean)] {
                    crate::failure::check(name, given.value, crate::order::volume::LENGTH)?;
                }
                length.value * width.value * mean.value
            }
            _ => {
                return Err(Failure::new(Code::Contradiction, "")
                    .allowed("volume; or length, width and mean")
                    .remedy("give one of the two, whole"));
            }
        };
        crate::failure::check("volume", volume, PART)
    }
}

/// Places measured along the direction of the fall.
fn along_the_fall(finish: &Finish, corners: impl Iterator<Item = Point>) -> Vec<f64> {
    let [x, y] = finish.rise().map(Typed::base);
    let steepest = finish.fall().base().max(f64::MIN_POSITIVE);
    corners.map(|place| (place.x * x + place.y * y) / steepest).collect()
}

fn fall_words(fall: Slope, meets: bool) -> String {
    let said = say::fall(fall).text;
    let guidance = "1/8 in per ft, guidance for a well-finished floor, from memory: confirm locally";
    let just = (fall.base() - GUIDANCE).abs() <= GUIDANCE * 1.0e-6;
    match (meets, just) {
        (true, true) => format!("{said}, just meets {guidance}"),
        (true, false) => format!("{said}, over {guidance}"),
        (false, _) => {
            let practice =
                "floors are often given 2 in over 20 to 24 ft (common practice, no source): 0.7 to 0.8 %";
            format!("{said}, under {guidance}; {practice}; expect puddles")
        }
    }
}

fn datum(survey: &Survey) -> Result<Datum> {
    let missing = || {
        Failure::new(Code::BookIncomplete, "level.setups").allowed("at least one").remedy("give the set-up")
    };
    let book = survey.book().ok_or_else(missing)?;
    let setup = book.setups.first().ok_or_else(missing)?;
    let benchmark = book.lines.first().map(|line| line.start_elevation).ok_or_else(missing)?;
    Ok(Datum { sight: setup.height, benchmark })
}

fn level_report(survey: &Survey, datum: Datum) -> Result<LevelReport> {
    let missing = || {
        Failure::new(Code::BookIncomplete, "level.setups").allowed("at least one").remedy("give the set-up")
    };
    let book = survey.book().ok_or_else(missing)?;
    let setup = book.setups.first().ok_or_else(missing)?;
    let again = book.setups.iter().filter_map(|setup| setup.recheck.as_ref());
    let lines = book.lines.iter().filter_map(|line| line.closure.as_ref());
    let worst = again
        .map(|recheck| recheck.difference.base().abs())
        .chain(lines.map(|closure| closure.misclosure.base().abs()))
        .fold(None, |worst: Option<f64>, off| Some(worst.map_or(off, |worst| worst.max(off))));
    let closure = match worst {
        None => "not closed: the benchmark was not read again".to_owned(),
        Some(0.0) => "closes exactly".to_owned(),
        Some(off) => format!("closes within {}", inches(Length::from_base(off), 32)),
    };
    Ok(LevelReport {
        benchmark: setup.backsight_point.clone(),
        elevation: say::height(datum.benchmark),
        rod: say::distance(datum.sight - datum.benchmark),
        closure,
    })
}

fn old_floor(survey: &Survey, facts: &Facts) -> OldFloor {
    let corners = survey.outline().corners();
    let span = |pick: fn(&crate::survey::outline::Corner) -> f64| {
        let (low, high) = corners
            .iter()
            .map(pick)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), at| (low.min(at), high.max(at)));
        say::distance(Length::from_base(high - low))
    };
    let percent = |share: Ratio| 100.0 * share.base();
    OldFloor {
        size: [span(|corner| corner.x.base()), span(|corner| corner.y.base())],
        area: say::surface(facts.area),
        shots: facts.shots,
        setups: survey.book().map_or(0, |book| book.setups.len()),
        highest: say::place(&facts.highest),
        lowest: say::place(&facts.lowest),
        out_of_level: say::thickness(facts.out_of_level),
        beyond_percent: percent(facts.beyond_share()),
        unsurveyed: say::surface(facts.unsurveyed),
        squareness: survey.squareness().map(str::to_owned),
        ambiguity: say::body(facts.ambiguity[0] + facts.ambiguity[1]),
    }
}

/// Heights of a finish along every edge, as rods from the first set-up.
fn edges(
    survey: &Survey,
    finish: &Finish,
    datum: Datum,
    rod: impl Fn(Length) -> super::report::Measure,
) -> Vec<EdgeHeights> {
    let outline = survey.outline();
    let one = |name: &str| {
        let runs = outline.edge(name).ok()?;
        let (from, to) = (runs.first()?.from(), runs.last()?.to());
        let (low, high) = (finish.height_at(from.x, from.y), finish.height_at(to.x, to.y));
        let level = runs.iter().all(|run| {
            let (from, to) =
                (finish.height_at(run.from().x, run.from().y), finish.height_at(run.to().x, run.to().y));
            (from - to).base().abs() < 1.0e-6
        });
        Some(EdgeHeights {
            edge: name.to_owned(),
            level,
            rod_from: rod(datum.sight - low),
            rod_to: rod(datum.sight - high),
            elevation_from: say::height(low),
            elevation_to: say::height(high),
        })
    };
    outline.edge_names().into_iter().filter_map(one).collect()
}

fn fit(limit: &LimitInput, finish: &Finish, datum: Datum) -> Result<FitReport> {
    let most = height(&limit.at_most, &limit.at_most_rod, datum, "at_most")?;
    let over = |(x, y): (Length, Length)| -> Elevation { finish.height_at(x, y) };
    let highest = limit
        .at
        .iter()
        .map(|place| over((place.x.value, place.y.value)).base())
        .fold(f64::NEG_INFINITY, f64::max);
    if limit.at.is_empty() {
        return Err(Failure::new(Code::EmptyList, "at")
            .allowed("at least one place")
            .remedy("say where it is"));
    }
    let below = most - Elevation::from_base(highest);
    Ok(FitReport {
        name: limit.name.clone(),
        called: limit.called.clone().unwrap_or_else(|| "limit".to_owned()),
        below: say::fine_thickness(below),
        kept: below.base() >= -1.0e-9,
    })
}

fn slab_place(survey: &Survey, at: &At) -> SlabPlace {
    SlabPlace {
        x: at.x,
        y: at.y,
        elevation: Elevation::from_base(0.0),
        shot: at.shot.map(|shot| survey.shots().name(shot)),
    }
}
