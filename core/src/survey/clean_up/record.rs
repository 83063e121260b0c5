//! Changes as a table over the borders.

use super::{Changed, Done, Work};
use crate::operation::{Choice, Column, Columns, Kind, TableType};
use crate::quantity::{Range, Typed};
use crate::{number, port};

/// What was done to the old slab.
pub(crate) static CHANGES: TableType = TableType {
    name: "changes",
    meaning: "a change of the old slab since it was shot, in the order they are done",
    columns: &[
        port!(work: Kind::Choice(Work::WORDS), "what is done"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area ground or filled"),
        number!(volume: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "volume taken off or filled"),
        number!(deepest: length in inch | millimeter, Range::NOT_NEGATIVE, "deepest cut or fill; none where nothing is changed"; optional),
        number!(deepest_x: length in foot | meter, Range::ANY, "where it is, from the left"; optional),
        number!(deepest_y: length in foot | meter, Range::ANY, "where it is, from the front"; optional),
    ],
    least_rows: 0,
};

/// Changes as columns.
pub(crate) fn changes_table(changes: &[Changed]) -> Columns {
    let column = |of: fn(&Changed) -> f64| Column::Numbers(changes.iter().map(of).collect());
    let work = |changed: &Changed| match changed.change.done {
        Done::Grind(_) => Work::Grind,
        Done::Fill(_) => Work::Fill,
        Done::FillPonds { .. } => Work::FillPonds,
    };
    let columns = vec![
        Column::Choices(changes.iter().map(|changed| Some(work(changed) as usize)).collect()),
        column(|changed| changed.area.base()),
        column(|changed| changed.volume.base()),
        column(|changed| changed.deepest.map_or(f64::NAN, |(depth, _)| depth.base())),
        column(|changed| changed.deepest.map_or(f64::NAN, |(_, at)| at.x.base())),
        column(|changed| changed.deepest.map_or(f64::NAN, |(_, at)| at.y.base())),
    ];
    Columns { rows: changes.len(), columns }
}
