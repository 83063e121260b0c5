//! The table of loads that the rows of stress and of thickness share.

use crate::failure::{Code, Failure, Place, Result, together};
use crate::operation::{Args, Choice, Columns, Kind, TableType};
use crate::overlay::strength::contact::{LOAD, PRESSURE, RADIUS, radius};
use crate::overlay::strength::several::{Forms, Load, Position};
use crate::quantity::{Force, Length, Pressure, Range, Typed};
use crate::{number, port};

/// A place on the slab: within a kilometre.
const PLACE: Range = Range::closed(-1000.0, 1000.0);
/// The most loads that are added up at once.
const MOST: usize = 200;

/// Loads on the slab.
pub(super) static LOADS: TableType = TableType {
    name: "loads",
    meaning: "a load on the slab, its contact by radius or by pressure",
    columns: &[
        port!(name: Kind::Text, "what it is"; optional),
        number!(load: force in pound_force | kilonewton, LOAD, "how heavy"),
        number!(radius: length in inch | millimeter, RADIUS, "radius of the circle it stands on"; optional),
        number!(pressure: pressure in psi | kilopascal, PRESSURE, "contact pressure, in place of a radius"; optional),
        number!(x: length in foot | meter, PLACE, "from the left"),
        number!(y: length in foot | meter, PLACE, "from the front"),
        port!(position: Kind::Choice(Position::WORDS), "where on the slab it stands"),
    ],
    least_rows: 1,
};

/// The loads of a table.
pub(super) fn loads(table: &Columns) -> Result<Vec<Load>> {
    if table.rows > MOST {
        return Err(Failure::new(Code::TooManyLoads, "loads")
            .written(format!("{} loads", table.rows))
            .allowed(format!("at most {MOST}"))
            .remedy("leave out those farther than five radii of relative stiffness from all others"));
    }
    (0..table.rows).map(|row| load(table, row).map_err(|failure| failure.at(Place::Index(row)))).collect()
}

fn load(table: &Columns, row: usize) -> Result<Load> {
    let heavy = Force::from_base(table.number(1, row).unwrap_or(f64::NAN));
    let length = |column: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
    let (circle, pressure) = (table.number(2, row), table.number(3, row));
    let radius = match (circle, pressure) {
        (Some(circle), None) => Length::from_base(circle),
        (None, Some(pressure)) => radius(heavy, Pressure::from_base(pressure))?,
        _ => return Err(unclear(circle.is_some(), pressure.is_some())),
    };
    let position = table.choice(6, row).and_then(Position::at).unwrap_or(Position::Interior);
    Ok(Load { load: heavy, radius, x: length(4), y: length(5), position })
}

fn unclear(radius: bool, pressure: bool) -> Box<Failure> {
    Failure::new(Code::ContactUnclear, "loads.radius")
        .written(together(&[("radius", radius), ("pressure", pressure)]))
        .allowed("a radius or a pressure, one of the two")
        .remedy("give the one you know")
}

/// The forms of edges, corners and joints from three ports in a row.
pub(super) fn forms(args: &Args<'_>, first: usize) -> Result<Forms> {
    Ok(Forms {
        edge: super::minimum::word(args, first, "edge_form")?,
        corner: super::minimum::word(args, first + 1, "corner_form")?,
        transfer: args.required(first + 2)?,
    })
}
