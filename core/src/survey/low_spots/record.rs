//! Edges, drains and ponds as tables over the borders.

use super::{Drain, EdgeState, EdgeStated, Edges, Pond};
use crate::failure::Failure;
use crate::operation::{Choice, Column, Columns, Kind, TableType};
use crate::quantity::{Length, Range, Typed};
use crate::survey::operations::{HEIGHT, PLACE};
use crate::survey::outline::Corner;
use crate::{number, port};

/// What is stated of edges.
pub(crate) static EDGES: TableType = TableType {
    name: "edges",
    meaning: "an edge and what it does to water",
    columns: &[
        port!(edge: Kind::Text, "name of the edge, or of a hole"),
        port!(state: Kind::Choice(EdgeState::WORDS), "open: water runs off over it; walled: it is held; drained: a drain along it takes it"),
    ],
    least_rows: 0,
};

/// Drains.
pub(crate) static DRAINS: TableType = TableType {
    name: "drains",
    meaning: "a place of a drain; rows of one name are a drain along the line through them",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        port!(name: Kind::Text, "name of the drain"; optional),
    ],
    least_rows: 0,
};

/// The columns of ponds, and more behind them.
macro_rules! pond_columns {
    ($($more:expr),* $(,)?) => {
        &[
            number!(level: elevation in foot | meter, HEIGHT, "level of the water"),
            number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area under water"),
            number!(volume: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "water in it"),
            number!(depth: length in inch | millimeter, Range::NOT_NEGATIVE, "greatest depth"),
            number!(deepest_x: length in foot | meter, PLACE, "where it is deepest, from the left"),
            number!(deepest_y: length in foot | meter, PLACE, "where it is deepest, from the front"),
            number!(spill_x: length in foot | meter, PLACE, "where the water spills, from the left"),
            number!(spill_y: length in foot | meter, PLACE, "where the water spills, from the front"),
            port!(outlet: Kind::Text, "edge or drain that takes the water there; none where it runs on over a saddle"; optional),
            $($more),*
        ]
    };
}
pub(crate) use pond_columns;

/// Ponds.
pub(crate) static PONDS: TableType = TableType {
    name: "ponds",
    meaning: "a pond, the one with the most water first",
    columns: pond_columns!(),
    least_rows: 0,
};

/// Edges and drains as a row was given them.
pub(crate) struct GivenEdges {
    /// What they say.
    pub(crate) edges: Edges,
    /// In which row of the table each place of each drain stands.
    rows: Vec<Vec<usize>>,
}

impl GivenEdges {
    pub(crate) fn of(edges: Option<&Columns>, drains: Option<&Columns>) -> Self {
        let mut given = Self { edges: Edges::default(), rows: Vec::new() };
        if let Some(table) = edges {
            let row = |row: usize| {
                let edge = table.text(0, row).unwrap_or_default().to_owned();
                Some(EdgeStated { edge, state: EdgeState::at(table.choice(1, row)?)? })
            };
            given.edges.stated = (0..table.rows).filter_map(row).collect();
        }
        let Some(table) = drains else { return given };
        for row in 0..table.rows {
            let place = |column: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
            let (at, name) = (Corner::new(place(0), place(1)), table.text(2, row).map(str::to_owned));
            let drains = &mut given.edges.drains;
            match drains.iter().position(|drain| name.is_some() && drain.name == name) {
                Some(line) => {
                    drains[line].at.push(at);
                    given.rows[line].push(row);
                }
                None => {
                    drains.push(Drain { name, at: vec![at] });
                    given.rows.push(vec![row]);
                }
            }
        }
        given
    }

    /// A failure told of the table: `drains[0].at[2]` is some `drains[5]`.
    pub(crate) fn told(&self, mut failure: Box<Failure>) -> Box<Failure> {
        let row = |path: &str| {
            let (drain, rest) = path.strip_prefix("drains[")?.split_once("].at[")?;
            let (drain, at): (usize, usize) = (drain.parse().ok()?, rest.strip_suffix(']')?.parse().ok()?);
            self.rows.get(drain)?.get(at).copied()
        };
        if let Some(row) = row(&failure.path) {
            failure.path = format!("drains[{row}]");
        }
        failure
    }
}

/// Ponds as columns, in the order of [`PONDS`], with more behind them.
pub(crate) fn ponds_table(ponds: &[Pond], more: impl IntoIterator<Item = Column>) -> Columns {
    let mut numbers: [Vec<f64>; 8] = Default::default();
    let mut outlets = Vec::new();
    for pond in ponds {
        let row = [
            pond.level.base(),
            pond.area.base(),
            pond.volume.base(),
            pond.depth.base(),
            pond.deepest.x.base(),
            pond.deepest.y.base(),
            pond.spill.x.base(),
            pond.spill.y.base(),
        ];
        for (column, number) in numbers.iter_mut().zip(row) {
            column.push(number);
        }
        outlets.push(pond.outlet.clone());
    }
    let rows = outlets.len();
    Columns {
        rows,
        columns: numbers
            .into_iter()
            .map(Column::Numbers)
            .chain([Column::Texts(outlets)])
            .chain(more)
            .collect(),
    }
}
