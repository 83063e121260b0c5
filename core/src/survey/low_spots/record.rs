//! Edges, drains and ponds as tables over the borders.

use super::{Drain, EdgeState, EdgeStated, Edges, Pond};
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
pub(crate) fn edges_of(edges: Option<&Columns>, drains: Option<&Columns>) -> Edges {
    let mut found = Edges::default();
    if let Some(table) = edges {
        let row = |row: usize| {
            let edge = table.text(0, row).unwrap_or_default().to_owned();
            Some(EdgeStated { edge, state: EdgeState::at(table.choice(1, row)?)? })
        };
        found.stated = (0..table.rows).filter_map(row).collect();
    }
    if let Some(table) = drains {
        for row in 0..table.rows {
            let place = |column: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
            let (at, name) = (Corner::new(place(0), place(1)), table.text(2, row).map(str::to_owned));
            let known = found.drains.iter_mut().find(|drain| name.is_some() && drain.name == name);
            match known {
                Some(line) => line.at.push(at),
                None => found.drains.push(Drain { name, at: vec![at] }),
            }
        }
    }
    found
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
