//! The row of the flatness of a floor.

use super::line::SPACING;
use super::{FACTOR, f_number};
use crate::asbuilt::flatness::{
    ASKED, Class, FNumber, Factor, Floor, FloorLine, Judged, Judging, Limits, LineInput, LinePlace, Profile,
    READING, SectionFlatness, SectionInput, Spacing, Verdict,
};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Place, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::operations::columns::{counts, numbers, some_numbers, table};
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Area, Length, Range, Ratio, Typed};
use crate::survey::input::BuiltOutline;
use crate::survey::operations::{OUTLINE, PLACE};
use crate::survey::outline::Corner;
use crate::{number, port};
use std::collections::HashMap;

static READINGS: TableType = TableType {
    name: "readings",
    meaning: "a reading; those of one line stand together, in order along it",
    columns: &[
        port!(line: Kind::Text, "name of the line"),
        number!(elevation: elevation in inch | millimeter, READING, "height of the floor"),
        port!(section: Kind::Text, "part of the floor the line lies in; needed once a line"; optional),
    ],
    least_rows: 1,
};

static SECTIONS: TableType = TableType {
    name: "sections",
    meaning: "a part of the floor",
    columns: &[
        port!(section: Kind::Text, "its name"),
        number!(area: area in square_foot | square_meter, Range::POSITIVE, "its area"),
    ],
    least_rows: 1,
};

static PLACES: TableType = TableType {
    name: "places",
    meaning: "where a line runs",
    columns: &[
        port!(line: Kind::Text, "the line's name"),
        number!(x: length in foot | meter, PLACE, "its first reading, from the left"),
        number!(y: length in foot | meter, PLACE, "its first reading, from the front"),
        number!(toward_x: length in foot | meter, PLACE, "a place it runs towards, from the left"),
        number!(toward_y: length in foot | meter, PLACE, "a place it runs towards, from the front"),
    ],
    least_rows: 1,
};

static LINES: TableType = TableType {
    name: "lines",
    meaning: "a line",
    columns: &[
        port!(line: Kind::Text, "its name"),
        port!(section: Kind::Text, "the part of the floor it lies in"; optional),
        port!(readings: Kind::Count(0, i64::MAX), "how many readings"),
        port!(q_count: Kind::Count(0, i64::MAX), "how many bends count"),
        port!(z_count: Kind::Count(0, i64::MAX), "how many rises over ten spacings"),
        number!(ff: ratio in one | one, Range::POSITIVE, "flatness; none for a perfect line"; optional),
        number!(fl: ratio in one | one, Range::POSITIVE, "levelness; none of few readings, and on a floor that falls"; optional),
        port!(left_out: Kind::Count(0, i64::MAX), "bends left out because the plan bends there"),
    ],
    least_rows: 0,
};

static OF_SECTIONS: TableType = TableType {
    name: "of_sections",
    meaning: "a part of the floor",
    columns: &[
        port!(section: Kind::Text, "its name; none where the floor is one part"; optional),
        number!(area: area in square_foot | square_meter, Range::POSITIVE, "its area"; optional),
        port!(lines: Kind::Count(0, i64::MAX), "how many lines"),
        port!(z_count: Kind::Count(0, i64::MAX), "how many rises over ten spacings"),
        port!(z_least: Kind::Count(0, i64::MAX), "the fewest of them the standard judges by"; optional),
        number!(ff: ratio in one | one, Range::POSITIVE, "flatness"; optional),
        number!(fl: ratio in one | one, Range::POSITIVE, "levelness"; optional),
        port!(ff_verdict: Kind::Choice(Verdict::WORDS), "flatness against 3/5 of what is asked over all"; optional),
        port!(fl_verdict: Kind::Choice(Verdict::WORDS), "levelness against 3/5 of what is asked over all"; optional),
    ],
    least_rows: 0,
};

/// The flatness and levelness of a floor.
pub static FLATNESS: Operation = Operation {
    name: "flatness",
    module: "asbuilt",
    since: "0.1.0",
    meaning: "Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is asked.",
    equation: "lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area; every section reaches 3/5 of the least over all",
    assumes: "readings of all lines equally far apart; on a floor that falls levelness is not used",
    ports: &[
        port!(readings: Kind::Table(&READINGS), "the readings of all lines"),
        SPACING,
        FACTOR,
        port!(sections: Kind::Table(&SECTIONS), "the areas of the sections, or of the floor"; optional),
        port!(flatness_class: Kind::Choice(Class::WORDS), "the class asked"; optional),
        number!(least_ff: ratio in one | one, ASKED, "flatness asked over all, in place of a class"; optional),
        number!(least_fl: ratio in one | one, ASKED, "levelness asked over all, in place of a class"; optional),
        port!(falls: Kind::Choice(bool::WORDS), "whether the floor is to fall"; or "no" because "a finish that is given tells by itself"),
        port!(places: Kind::Table(&PLACES), "where the lines run"; optional),
        port!(finish: Kind::Record(&FINISH), "the plan: where it bends, readings of lines with a place are left out"; optional),
        port!(outline: Kind::Record(&OUTLINE), "the plan edge, which lines keep 2 ft from"; optional),
    ],
    results: &[
        number!(ff: ratio in one | one, Range::POSITIVE, "flatness over all"; optional),
        number!(fl: ratio in one | one, Range::POSITIVE, "levelness over all"; optional),
        number!(asked_ff: ratio in one | one, Range::POSITIVE, "flatness asked over all"; optional),
        number!(asked_fl: ratio in one | one, Range::POSITIVE, "levelness asked over all"; optional),
        number!(local_ff: ratio in one | one, Range::POSITIVE, "flatness asked of every section"; optional),
        number!(local_fl: ratio in one | one, Range::POSITIVE, "levelness asked of every section"; optional),
        port!(ff_verdict: Kind::Choice(Verdict::WORDS), "flatness over all against what is asked"; optional),
        port!(fl_verdict: Kind::Choice(Verdict::WORDS), "levelness over all against what is asked"; optional),
        port!(lines: Kind::Table(&LINES), "the lines"),
        port!(of_sections: Kind::Table(&OF_SECTIONS), "the parts of the floor"),
    ],
    basis: &[
        BasisId::FlatnessNumbers,
        BasisId::FlatnessConstants,
        BasisId::FlatnessLayout,
        BasisId::FlatnessReadings,
        BasisId::FlatnessClasses,
        BasisId::FlatnessOnSlope,
    ],
    example: r#"{"readings": {"line": ["A", "A", "A", "A", "A", "A", "A", "A", "A", "A", "A", "A", "A", "B", "B", "B", "B", "B", "B", "B",
            "B", "B", "B", "B", "B", "B"],
        "elevation": ["100.02 in", "100.10 in", "100.13 in", "100.11 in", "100.05 in", "100.09 in", "100.08 in", "100.12 in",
            "100.13 in", "100.11 in", "100.10 in", "100.13 in", "100.05 in", "100.06 in", "99.98 in", "99.99 in", "100.04 in",
            "100.08 in", "100.06 in", "100.11 in", "100.15 in", "100.12 in", "100.16 in", "100.13 in", "100.09 in", "100.12 in"]},
        "sections": {"section": ["floor"], "area": ["300 ft2"]}, "flatness_class": "conventional",
        "places": {"line": ["A", "B"], "x": ["2 ft", "2 ft"], "y": ["3 ft", "8 ft"], "toward_x": ["15 ft", "15 ft"], "toward_y": ["3 ft", "8 ft"]}}"#,
    refusals: &[
        (r#"{"readings": []}"#, Code::EmptyList),
        (
            r#"{"readings": {"line": ["A", "A", "A"], "elevation": ["1 in", "2 in", "1 in"]}, "places": null}"#,
            Code::ProfileShort,
        ),
        (
            r#"{"readings": {"line": ["A", "A", "A", "A", "B", "B", "B", "B", "A"],
                "elevation": ["1 in", "2 in", "1 in", "2 in", "1 in", "2 in", "1 in", "2 in", "1 in"]}, "places": null}"#,
            Code::KeyRepeated,
        ),
        (
            r#"{"sections": {"section": ["floor", "porch"], "area": ["300 ft2", "30 ft2"]}}"#,
            Code::FlatnessSection,
        ),
        (r#"{"least_ff": "25 1", "least_fl": "20 1"}"#, Code::Contradiction),
        (r#"{"flatness_class": null, "least_ff": "25 1"}"#, Code::KeyMissing),
        (r#"{"spacing": "305 mm"}"#, Code::ProfileSpacing),
        (
            r#"{"places": {"line": ["C"], "x": ["2 ft"], "y": ["3 ft"], "toward_x": ["15 ft"], "toward_y": ["3 ft"]}}"#,
            Code::ProfileLineUnknown,
        ),
        (
            r#"{"places": {"line": ["A"], "x": ["2 ft"], "y": ["3 ft"], "toward_x": ["2 ft"], "toward_y": ["3 ft"]}}"#,
            Code::LineTooShort,
        ),
    ],
    call: Call::Record(flatness),
};

fn flatness(args: &Args<'_>) -> Result<Answer> {
    let spacing = Spacing::of(args.required(1)?)?;
    let mut lines = lines(args.required_table(0)?, spacing)?;
    if let Some(table) = args.table(8)? {
        place(&mut lines, table)?;
    }
    let finish: Option<&Finish> = args.record(9)?;
    let outline: Option<&BuiltOutline> = args.record(10)?;
    let judging = Judging {
        factor: args.choice(2)?.unwrap_or(Factor::Inches),
        limits: Limits::asked(args.choice(4)?, args.quantity(5)?, args.quantity(6)?)?,
        falls: args.choice(7)?.unwrap_or(false),
        finish,
    };
    let floor = Floor::of(spacing, &lines, &areas(args.table(3)?), &judging)?;
    let asked = |number: fn(&Limits) -> f64| {
        floor.limits.map_or(Value::Absent, |limits| Value::Number(number(&limits)))
    };
    let verdict =
        |verdict: Option<Verdict>| verdict.map_or(Value::Absent, |verdict| Value::Choice(verdict as usize));
    let answer = Answer::of([
        f_number(floor.ff),
        f_number(floor.fl),
        asked(|limits| limits.ff),
        asked(|limits| limits.fl),
        asked(Limits::local_ff),
        asked(Limits::local_fl),
        verdict(floor.judged.map(|judged| judged.ff)),
        verdict(floor.judged.and_then(|judged| judged.fl)),
        of_lines(&floor),
        of_sections(&floor.sections),
    ]);
    Ok(answer.with_notes(floor.notes(outline.map(|outline| outline.outline.region()))))
}

/// The lines of a table of readings, in the order they stand.
fn lines(table: &Columns, spacing: Spacing) -> Result<Vec<LineInput<'_>>> {
    let name = |row: usize| table.text(0, row).unwrap_or_default().trim();
    let mut starts: Vec<usize> = Vec::new();
    for row in 0..table.rows {
        if row == 0 || name(row) != name(row - 1) {
            starts.push(row);
        }
    }
    let mut met: HashMap<&str, usize> = HashMap::with_capacity(starts.len());
    let ends = starts.iter().skip(1).copied().chain([table.rows]);
    let line = |(&from, to): (&usize, usize)| {
        if met.insert(name(from), from).is_some() {
            return Err(Failure::new(Code::KeyRepeated, "readings.line")
                .written(name(from))
                .allowed("the readings of one line together, in order")
                .remedy("bring the line's readings together, or give the second line another name")
                .at(Place::Index(from)));
        }
        let heights = table.numbers(1).get(from..to).unwrap_or_default();
        let profile = Profile::new(spacing, heights).map_err(|failure| of_line(failure, name(from), from))?;
        let section = one_section(table, from..to)?;
        Ok(LineInput { name: name(from).to_owned(), section, profile, place: None })
    };
    starts.iter().zip(ends).map(line).collect()
}

/// A refusal of a line's readings, told with its name and by the row of the whole table.
fn of_line(failure: Box<Failure>, line: &str, from: usize) -> Box<Failure> {
    let mut failure = failure.under("readings");
    if let Place::Index(reading) = failure.place {
        failure.place = Place::Index(from + reading);
    } else {
        failure.written = format!("line {line}: {}", failure.written);
    }
    failure
}

/// The section that the rows of a line name, one for all.
fn one_section(table: &Columns, rows: std::ops::Range<usize>) -> Result<Option<String>> {
    let mut found: Option<&str> = None;
    for row in rows {
        let Some(section) = table.text(2, row).map(str::trim).filter(|name| !name.is_empty()) else {
            continue;
        };
        if found.is_some_and(|known| !known.eq_ignore_ascii_case(section)) {
            return Err(Failure::new(Code::FlatnessSection, "readings.section")
                .written(section)
                .allowed("one section for all readings of a line")
                .remedy("part the line where it leaves the section, under two names")
                .at(Place::Index(row)));
        }
        found = found.or(Some(section));
    }
    Ok(found.map(str::to_owned))
}

fn areas(table: Option<&Columns>) -> Vec<SectionInput> {
    let Some(table) = table else { return Vec::new() };
    let area = |row: usize| Some(Area::from_base(table.number(1, row)?));
    let name = |row: usize| table.text(0, row).unwrap_or_default().to_owned();
    (0..table.rows).filter_map(|row| Some(SectionInput { name: name(row), area: area(row)? })).collect()
}

/// Gives lines their places.
fn place(lines: &mut [LineInput<'_>], table: &Columns) -> Result<()> {
    let numbers: HashMap<String, usize> =
        lines.iter().zip(0..).map(|(line, number)| (line.name.clone(), number)).collect();
    for row in 0..table.rows {
        let at = |column: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
        let place = LinePlace::new(Corner::new(at(1), at(2)), Corner::new(at(3), at(4)));
        let place = place.map_err(|failure| failure.at(Place::Index(row)))?;
        let name = table.text(0, row).unwrap_or_default().trim();
        let line = numbers.get(name).and_then(|&number| lines.get_mut(number));
        let line = line.ok_or_else(|| {
            Failure::new(Code::ProfileLineUnknown, "places.line")
                .written(name)
                .allowed("a line that has readings")
                .remedy("use the name in the readings")
                .at(Place::Index(row))
        })?;
        line.place = Some(place);
    }
    Ok(())
}

fn ratio(number: Option<FNumber>) -> Option<Ratio> {
    number.and_then(FNumber::number)
}

fn of_lines(floor: &Floor) -> Value {
    let rows = &floor.lines;
    let section =
        |line: &FloorLine| floor.sections.get(line.section).and_then(|section| section.name.clone());
    table(
        rows.len(),
        [
            Column::Texts(rows.iter().map(|line| Some(line.name.clone())).collect()),
            Column::Texts(rows.iter().map(section).collect()),
            counts(rows, |line| line.flatness.readings),
            counts(rows, |line| line.flatness.q.count),
            counts(rows, |line| line.flatness.z.count),
            some_numbers(rows, |line| ratio(line.flatness.ff)),
            some_numbers(rows, |line| ratio(line.flatness.fl)),
            counts(rows, |line| line.left_out),
        ],
    )
}

fn of_sections(rows: &[SectionFlatness]) -> Value {
    let verdict = |of: fn(&Judged) -> Option<Verdict>| {
        let verdict = |section: &SectionFlatness| Some(of(section.judged.as_ref()?)? as usize);
        Column::Choices(rows.iter().map(verdict).collect())
    };
    table(
        rows.len(),
        [
            Column::Texts(rows.iter().map(|section| section.name.clone()).collect()),
            numbers(rows, |section| section.area.map_or(f64::NAN, Typed::base)),
            counts(rows, |section| section.lines),
            counts(rows, |section| section.z),
            Column::Counts(rows.iter().map(|section| section.least_z.map(|least| least as i64)).collect()),
            some_numbers(rows, |section| ratio(section.ff)),
            some_numbers(rows, |section| ratio(section.fl)),
            verdict(|judged| Some(judged.ff)),
            verdict(|judged| judged.fl),
        ],
    )
}
