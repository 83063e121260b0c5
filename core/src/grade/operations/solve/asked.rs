//! What all rows of the solver are asked: the old slab, demands with their zones, a layout, prices.

use crate::failure::{Failure, Result, nearest};
use crate::geometry::{Point, Region};
use crate::grade::fall::FALL;
use crate::grade::finish::{Finish, HEIGHT, LEAST};
use crate::grade::operations::zones::read_zones;
use crate::grade::solve::{Asked, Demand, Kind as DemandKind, MayGrind, Said, Steps};
use crate::grade::thin_zones::VOLUME_PRICE;
use crate::grade::zones::Zone;
use crate::number;
use crate::operation::{Args, Choice, Columns, Kind, TableType};
use crate::port;
use crate::quantity::{Elevation, Length, Range, Slope, Typed};
use crate::survey::Survey;

/// A place in plan.
const PLACE: Range = Range::closed(-1.0e5, 1.0e5);

/// Demands.
pub(super) static DEMANDS: TableType = TableType {
    name: "demands",
    meaning: "a demand on the finish",
    columns: &[
        port!(name: Kind::Text, "what it is called in the answer: side door"),
        port!(kind: Kind::Choice(DemandKind::WORDS), "what is demanded"),
        number!(thickness: length in inch | millimeter, LEAST, "a least or greatest thickness"; optional),
        number!(fall: slope in inch_per_foot | percent, FALL, "a least or greatest fall; steepest: in any direction; cross_fall: along the line"; optional),
        number!(elevation: elevation in foot | meter, HEIGHT, "a height that is not passed, reached, or had exactly"; optional),
        number!(tolerance: length in inch | millimeter, LEAST, "how far a level line may be out of level; none for dead level"; optional),
        port!(edge: Kind::Text, "an edge of the outline: where a fall goes, or the line"; optional),
        number!(x: length in foot | meter, PLACE, "or a place: a drain, a point, the start of a line, from the left"; optional),
        number!(y: length in foot | meter, PLACE, "from the front"; optional),
        number!(x_to: length in foot | meter, PLACE, "the end of the line, from the left"; optional),
        number!(y_to: length in foot | meter, PLACE, "from the front"; optional),
        port!(facet: Kind::Text, "which facets a fall is of: their name, or what they fall to; all if it is left out"; optional),
        port!(zone: Kind::Text, "where a thickness is demanded: a name among the zones; everywhere if it is left out"; optional),
        port!(firm: Kind::Choice(<bool as Choice>::WORDS), "whether it stands firm: no conflict blames it"; optional),
        number!(weight: ratio in one | one, Range::POSITIVE, "what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is usual"; optional),
    ],
    least_rows: 1,
};

/// The ports that all rows begin with, and more behind them.
macro_rules! ports {
    ($($more:expr),* $(,)?) => {
        &[
            port!(survey: Kind::Record(&SURVEY), "the old slab"),
            port!(demands: Kind::Table(&super::asked::DEMANDS), "what the finish must keep"),
            port!(zones: Kind::Table(&crate::grade::operations::zones::ZONES), "corners of the zones that demands name"; optional),
            port!(layout: Kind::Record(&FINISH), "the facets in plan: a finish whose heights do not count; one plane if it is left out"; optional),
            number!(margin: length in inch | millimeter, LEAST, "margin on every least thickness"; or assumption::MARGIN),
            port!(edges_bind: Kind::Choice(<bool as crate::operation::Choice>::WORDS), "whether thickness binds beyond the shots too, where the old slab is extended"; optional),
            $($more),*
        ]
    };
}
pub(super) use ports;

/// What was read; the demands are asked of it.
pub(super) struct Read<'a> {
    pub(super) survey: &'a Survey,
    pub(super) demands: Vec<Demand>,
    layout: Option<&'a Finish>,
    margin: Length,
    edges_bind: bool,
}

impl<'a> Read<'a> {
    pub(super) fn of(args: &Args<'a>) -> Result<Self> {
        let zones = args.table(2)?.map(read_zones).transpose()?.unwrap_or_default();
        Ok(Self {
            survey: args.required_record(0)?,
            demands: demands(args.required_table(1)?, &zones)?,
            layout: args.record(3)?,
            margin: args.required(4)?,
            edges_bind: args.choice(5)?.unwrap_or(false),
        })
    }

    pub(super) fn asked(&self) -> Asked<'_> {
        Asked {
            layout: self.layout,
            demands: &self.demands,
            margin: self.margin,
            edges_bind: self.edges_bind,
            concrete_price: None,
            grinding: None,
            steps: None,
        }
    }
}

/// The prices and the leave to grind, which start at a port.
pub(super) fn with_prices<'a>(mut asked: Asked<'a>, args: &Args<'_>, first: usize) -> Result<Asked<'a>> {
    asked.concrete_price = args.quantity(first)?;
    let price = args.quantity(first + 2)?;
    asked.grinding = args.quantity(first + 1)?.map(|at_most| MayGrind { at_most, price });
    if asked.grinding.is_none() && price.is_some() {
        return Err(Failure::new(crate::failure::Code::KeyMissing, "grind_at_most")
            .written("a price of grinding, and no depth")
            .allowed("how deep may be ground")
            .remedy("give the depth, or leave the price out"));
    }
    Ok(asked)
}

/// The steps of rounding, which start at a port.
pub(super) fn steps(args: &Args<'_>, first: usize) -> Result<Steps> {
    let (heights, datum, falls): (Length, Elevation, Slope) =
        (args.required(first)?, args.required(first + 1)?, args.required(first + 2)?);
    Ok(Steps { heights, datum, falls })
}

/// The range of a price, for the rows.
pub(super) const PRICE: Range = VOLUME_PRICE;

fn demands(table: &Columns, zones: &[Zone]) -> Result<Vec<Demand>> {
    let demand = |row: usize| -> Result<Demand> {
        let text = |column: usize| table.text(column, row).map(str::trim).filter(|text| !text.is_empty());
        let place = |x: usize| Some(Point::new(table.number(x, row)?, table.number(x + 1, row)?));
        let zone = text(12).map(|name| zone_named(name, zones)).transpose()?;
        half_a_place(table, row)?;
        Said {
            name: text(0).unwrap_or_default().to_owned(),
            kind: table.choice(1, row).and_then(DemandKind::at).unwrap_or(DemandKind::LeastThickness),
            thickness: table.number(2, row).map(Length::from_base),
            fall: table.number(3, row).map(Slope::from_base),
            elevation: table.number(4, row).map(Elevation::from_base),
            tolerance: table.number(5, row).map(Length::from_base),
            edge: text(6).map(str::to_owned),
            places: place(7).into_iter().chain(place(9)).collect(),
            on: text(11).map(str::to_owned),
            zone,
            firm: table.choice(13, row).and_then(bool::at).unwrap_or(false),
            weight: table.number(14, row),
        }
        .demand()
    };
    let each =
        (0..table.rows).map(|row| demand(row).map_err(|failure| failure.under(&format!("demands[{row}]"))));
    each.collect()
}

/// Refuses one coordinate without the other, and the end of a line without its start.
fn half_a_place(table: &Columns, row: usize) -> Result<()> {
    let given = [7, 8, 9, 10].map(|column| table.number(column, row).is_some());
    let missing = match given {
        [true, false, ..] => "y",
        [false, true, ..] | [false, false, true, _] | [false, false, _, true] => "x",
        [_, _, true, false] => "y_to",
        [_, _, false, true] => "x_to",
        _ => return Ok(()),
    };
    Err(Failure::new(crate::failure::Code::KeyMissing, missing)
        .written("half a place")
        .allowed("x and y together, x_to and y_to behind them")
        .remedy("give both"))
}

fn zone_named(name: &str, zones: &[Zone]) -> Result<Region> {
    let found = zones.iter().find(|zone| zone.name.trim().eq_ignore_ascii_case(name));
    found.map(|zone| zone.region.clone()).ok_or_else(|| {
        let names = || zones.iter().map(|zone| zone.name.as_str());
        Failure::new(crate::failure::Code::ZoneUnknown, "zone")
            .written(format!("\"{name}\""))
            .allowed(if zones.is_empty() {
                "no zones are given".to_owned()
            } else {
                names().collect::<Vec<_>>().join(", ")
            })
            .remedy(match nearest(name, names()) {
                Some(near) => format!("did you mean `{near}`?"),
                None => "give the corners of the zone".to_owned(),
            })
    })
}
