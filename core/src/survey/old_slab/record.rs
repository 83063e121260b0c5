//! The survey as a record over the borders.

use super::{Shots, Survey};
use crate::failure::Result;
use crate::operation::record::{self, Record};
use crate::operation::{Column, Columns, Kind, RecordType, TableType, Value};
use crate::quantity::{Given, Length, Range, Typed};
use crate::survey::clean_up::{CHANGES, changes_table};
use crate::survey::input::{ElevationInput, GridInput, RodInput, SurveyInput};
use crate::{number, port};

static SHOTS: TableType = TableType {
    name: "shots",
    meaning: "a shot of the old slab",
    columns: &[
        port!(name: Kind::Text, "its name"),
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(elevation: elevation in foot | meter, Range::ANY, "height above the job datum"),
    ],
    least_rows: 0,
};

/// The record type of the surveyed old slab.
pub static SURVEY: RecordType = RecordType {
    name: "survey",
    class: "Survey",
    meaning: "The surveyed old slab: outline, shots and the surface through them.",
    fields: &[
        number!(area: area in square_foot | square_meter, Range::POSITIVE, "area of the work"),
        port!(shot_count: Kind::Count(0, i64::MAX), "how many places were shot"),
        number!(highest: elevation in foot | meter, Range::ANY, "height of the highest point"),
        number!(highest_x: length in foot | meter, Range::ANY, "its distance from the left"),
        number!(highest_y: length in foot | meter, Range::ANY, "its distance from the front"),
        port!(highest_shot: Kind::Text, "the shot it is at"; optional),
        number!(lowest: elevation in foot | meter, Range::ANY, "height of the lowest point"),
        number!(lowest_x: length in foot | meter, Range::ANY, "its distance from the left"),
        number!(lowest_y: length in foot | meter, Range::ANY, "its distance from the front"),
        port!(lowest_shot: Kind::Text, "the shot it is at"; optional),
        number!(out_of_level: length in inch | millimeter, Range::NOT_NEGATIVE, "highest less lowest"),
        number!(mean: elevation in foot | meter, Range::ANY, "mean height over the area"),
        number!(rise_x: slope in inch_per_foot | percent, Range::ANY, "rise of the fitted plane along x"),
        number!(rise_y: slope in inch_per_foot | percent, Range::ANY, "rise of the fitted plane along y"),
        number!(unevenness: length in inch | millimeter, Range::NOT_NEGATIVE, "root mean square of the shots about that plane"),
        number!(beyond: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area beyond the shots"),
        number!(unsurveyed: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area in triangles that leave the outline"),
        number!(ambiguity_less: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume less by other triangulations"),
        number!(ambiguity_more: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume more by other triangulations"),
        port!(shots: Kind::Table(&SHOTS), "the shots, their heights after all changes"),
        port!(changes: Kind::Table(&CHANGES), "what was done to the slab since it was shot"),
    ],
    get: record::get::<Survey>,
    to_json: record::to_json::<Survey>,
    from_json: record::from_json::<Survey>,
    is: record::is::<Survey>,
    example: r#"{
        "outline": {"sides": [
            {"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"},
            {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}]},
        "grid": {"columns": ["1 ft", "19 ft"], "rows": ["1 ft", "31 ft"],
            "elevations": ["99.2 ft", "99.1 ft", "99.4 ft", "99.3 ft"]}}"#,
};

impl Record for Survey {
    const TYPE: &'static RecordType = &SURVEY;

    fn fields(&self) -> Vec<Value> {
        let facts = self.facts();
        let text = |shot: Option<String>| shot.map_or(Value::Absent, Value::Text);
        vec![
            Value::Number(facts.area.base()),
            Value::Count(facts.shots as i64),
            Value::Number(facts.highest.elevation.base()),
            Value::Number(facts.highest.x.base()),
            Value::Number(facts.highest.y.base()),
            text(facts.highest.shot),
            Value::Number(facts.lowest.elevation.base()),
            Value::Number(facts.lowest.x.base()),
            Value::Number(facts.lowest.y.base()),
            text(facts.lowest.shot),
            Value::Number(facts.out_of_level.base()),
            Value::Number(facts.mean.base()),
            Value::Number(facts.rise[0].base()),
            Value::Number(facts.rise[1].base()),
            Value::Number(facts.unevenness.base()),
            Value::Number(facts.beyond.base()),
            Value::Number(facts.unsurveyed.base()),
            Value::Number(facts.ambiguity[0].base()),
            Value::Number(facts.ambiguity[1].base()),
            Value::Table(self.shot_table()),
            Value::Table(changes_table(self.changes())),
        ]
    }

    fn to_json(&self) -> serde_json::Value {
        serde_json::to_value(SurveyInput::from(self)).unwrap_or_default()
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        Self::from_input(&record::parse::<SurveyInput>(json)?)
    }
}

impl Survey {
    fn shot_table(&self) -> Columns {
        let mut columns = [Vec::new(), Vec::new(), Vec::new()];
        let mut names = Vec::new();
        for (shot, [x, y], elevation) in self.heights() {
            names.push(Some(self.shots().name(shot)));
            columns[0].push(x.base());
            columns[1].push(y.base());
            columns[2].push(elevation.base());
        }
        let rows = names.len();
        let numbers = columns.into_iter().map(Column::Numbers);
        Columns { rows, columns: std::iter::once(Column::Texts(names)).chain(numbers).collect() }
    }
}

impl From<&Survey> for SurveyInput {
    /// The canonical form: corners, and elevations by grid, by shots or by triangles.
    fn from(survey: &Survey) -> Self {
        let length = |metres: f64| Given::computed(Length::from_base(metres));
        let (mut grid, mut shots, mut faces) = (None, None, None);
        match survey.shots() {
            Shots::Grid(rows) => {
                let height =
                    |height: &Option<f64>| RodInput(height.map(|z| Given::computed(Typed::from_base(z))));
                grid = Some(GridInput {
                    columns: rows.columns.iter().map(|&x| length(x)).collect(),
                    rows: rows.rows.iter().map(|&y| length(y)).collect(),
                    elevations: rows.heights.iter().map(height).collect(),
                    steps: rows.steps,
                });
            }
            Shots::Scattered(marks) => {
                let one = |(index, shot): (usize, &crate::survey::surface::Shot)| ElevationInput {
                    name: marks.names.get(index).cloned().flatten(),
                    x: length(shot.x),
                    y: length(shot.y),
                    elevation: Given::computed(Typed::from_base(shot.z)),
                    outside: shot.outside_allowed,
                    step: shot.step,
                };
                shots = Some(marks.shots.iter().enumerate().map(one).collect());
            }
            Shots::Faces(tin) => faces = Some(tin.into()),
        }
        let settings = survey.settings();
        Self {
            outline: survey.outline().into(),
            level: None,
            grid,
            shots,
            faces,
            instrument: settings.instrument,
            texture: settings.texture,
            beyond_allowed: settings.beyond_allowed,
            leave_out: Vec::new(),
            changes: survey.changes().iter().map(|changed| (&changed.change).into()).collect(),
        }
    }
}
