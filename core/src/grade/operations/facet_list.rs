//! The row that lists the facets of a finish.

use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::geometry::Sum;
use crate::grade::finish::{Beyond, FINISH, Facet, Finish, HEIGHT};
use crate::operation::{Answer, Args, Call, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

static FACETS: TableType = TableType {
    name: "facets",
    meaning: "a facet",
    columns: &[
        port!(name: Kind::Text, "its name, or its number from 1 on"),
        number!(fall: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "its steepest fall"),
        number!(rise_x: slope in inch_per_foot | percent, Range::ANY, "rise along x"),
        number!(rise_y: slope in inch_per_foot | percent, Range::ANY, "rise along y"),
        port!(downhill: Kind::Text, "which way water runs on it: right is along x, back is along y"),
        port!(falls_to: Kind::Text, "what it is said to fall to"; optional),
        port!(drains_over: Kind::Text, "the facets it drains over to, commas between; edge where none lies beyond"; optional),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "its area in plan, of the work where that is given"),
    ],
    least_rows: 0,
};

static CORNERS: TableType = TableType {
    name: "corners",
    meaning: "a corner of a facet, in order round it",
    columns: &[
        port!(facet: Kind::Text, "the facet it is of"),
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height of the finish there"),
    ],
    least_rows: 0,
};

/// The facets of a finish.
pub static FINISH_FACETS: Operation = Operation {
    name: "finish_facets",
    module: "grade",
    since: "0.1.0",
    meaning: "The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.",
    equation: "fall = sqrt(rise_x^2 + rise_y^2); water runs against the rise",
    assumes: "one plane has no facets to list",
    ports: &[
        port!(finish: Kind::Record(&FINISH), "the finish"),
        port!(survey: Kind::Record(&SURVEY), "the work: areas are then of the part inside it"; optional),
    ],
    results: &[
        port!(facets: Kind::Table(&FACETS), "the facets"),
        port!(corners: Kind::Table(&CORNERS), "their corners"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"finish": {"corners": [{"name": "A", "x": "0 ft", "y": "0 ft", "elevation": "100 ft"},
        {"name": "B", "x": "20 ft", "y": "0 ft", "elevation": "99.9 ft"}, {"name": "C", "x": "20 ft", "y": "16 ft", "elevation": "99.9 ft"},
        {"name": "D", "x": "0 ft", "y": "16 ft", "elevation": "100 ft"}], "facets": [{"name": "floor", "corners": ["A", "B", "C", "D"]}]}}"#,
    refusals: &[
        (r#"{"finish": {"facets": [{"corners": ["A"], "level": "1 ft"}]}}"#, Code::FinishTwice),
        (r#"{"finish": {"facets": []}}"#, Code::EmptyList),
        (
            r#"{"finish": {"facets": [{"level": "1 ft", "outline": [{"x": "0 ft", "y": "0 ft"}]}]}}"#,
            Code::FacetShape,
        ),
    ],
    call: Call::Record(facets),
};

fn facets(args: &Args<'_>) -> Result<Answer> {
    let finish: &Finish = args.required_record(0)?;
    let areas = areas(finish, args.record(1)?)?;
    let list = finish.facets();
    let numbers = |of: &dyn Fn(&Facet) -> f64| Column::Numbers(list.iter().map(of).collect());
    let texts = |of: &dyn Fn(usize, &Facet) -> Option<String>| {
        Column::Texts(list.iter().enumerate().map(|(number, facet)| of(number, facet)).collect())
    };
    let facets = Columns {
        rows: list.len(),
        columns: vec![
            texts(&|number, _| Some(finish.facet_name(number))),
            numbers(&|facet| facet.fall().base()),
            numbers(&|facet| facet.plane().b()),
            numbers(&|facet| facet.plane().c()),
            texts(&|_, facet| Some(direction(facet).to_owned())),
            texts(&|_, facet| facet.falls_to().map(str::to_owned)),
            texts(&|number, _| drains_over(finish, number)),
            Column::Numbers(areas),
        ],
    };
    Ok(Answer::of([Value::Table(facets), Value::Table(corners(finish))]))
}

/// The area of each facet: of the polygon, or of its part in the work.
fn areas(finish: &Finish, survey: Option<&Survey>) -> Result<Vec<f64>> {
    let Some(survey) = survey else {
        return Ok(finish.facets().iter().map(|facet| facet.region().area()).collect());
    };
    let laid = finish.laid_over(survey.surface())?;
    let of = |number: usize| {
        let own = laid.parts().iter().filter(|part| part.facet == Some(number));
        own.map(|part| part.ground.area()).collect::<Sum>().value()
    };
    Ok((0..finish.facets().len()).map(of).collect())
}

/// The eight ways, from along x on, counter-clockwise.
const WAYS: [&str; 8] =
    ["right", "back right", "back", "back left", "left", "front left", "front", "front right"];

fn direction(facet: &Facet) -> &'static str {
    let Some([x, y]) = facet.downhill() else { return "level" };
    let eighths = (y.atan2(x) / std::f64::consts::FRAC_PI_4).round().rem_euclid(8.0);
    WAYS.get(eighths as usize).copied().unwrap_or("right")
}

fn drains_over(finish: &Finish, facet: usize) -> Option<String> {
    let name = |beyond: &Beyond| match beyond {
        Beyond::Facet(number) => finish.facet_name(*number),
        Beyond::Edge => "edge".to_owned(),
    };
    let over = finish.drains_over(facet);
    (!over.is_empty()).then(|| over.iter().map(name).collect::<Vec<_>>().join(", "))
}

fn corners(finish: &Finish) -> Columns {
    let (mut names, mut numbers) = (Vec::new(), [Vec::new(), Vec::new(), Vec::new()]);
    for (number, facet) in finish.facets().iter().enumerate() {
        for &corner in facet.region().outer().corners() {
            names.push(Some(finish.facet_name(number)));
            for (column, value) in
                numbers.iter_mut().zip([corner.x, corner.y, facet.height_at(corner).base()])
            {
                column.push(value);
            }
        }
    }
    let rows = names.len();
    let columns =
        std::iter::once(Column::Texts(names)).chain(numbers.into_iter().map(Column::Numbers)).collect();
    Columns { rows, columns }
}
