//! The table of things that a floor meets.

use crate::clearance::{ABOVE, Clearance, End, Kind, Measures, SIZE, Swing};
use crate::failure::{Code, Failure, Place, Result};
use crate::grade::finish::HEIGHT;
use crate::grade::sections::PLACE;
use crate::operation::{Choice, Columns, Kind as PortKind, Port, TableType};
use crate::quantity::{Elevation, Length, Typed, read};
use crate::survey::outline::Corner;
use crate::{number, port};

const YES_NO: PortKind = PortKind::Choice(bool::WORDS);

/// The columns.
const COLUMNS: &[Port] = &[
    port!(name: PortKind::Text, "what it is called"),
    port!(kind: PortKind::Choice(Kind::WORDS), "what kind of thing it is"),
    number!(x: length in foot | meter, PLACE, "its place, from the left; of a line one end"),
    number!(y: length in foot | meter, PLACE, "its place, from the front"),
    number!(to_x: length in foot | meter, PLACE, "the other end of its line, from the left: doors and edges have one"; optional),
    number!(to_y: length in foot | meter, PLACE, "the other end of its line, from the front"; optional),
    number!(elevation: elevation in foot | meter, HEIGHT, "how high it is: header of a vehicle door, leaf of a passage door, sill, lower edge, rim, cap, hole; every kind but stair, open_edge, buried_service"; optional),
    number!(above_slab: length in inch | millimeter, ABOVE, "the same as found with a tape above the old slab, in place of elevation; not passage_door"; optional),
    number!(needed: length in inch | millimeter, SIZE, "clear height needed: vehicle doors, headroom"; optional),
    number!(seal_takes: length in inch | millimeter, SIZE, "how much out of level the bottom seal takes up: vehicle doors"; optional),
    number!(eyes_now: length in inch | millimeter, SIZE, "photo-eyes above the old slab: sectional_door, roll_door"; optional),
    number!(gap_now: length in inch | millimeter, SIZE, "gap under the leaf now, above the old slab: swinging_door, sliding_door, passage_door"; optional),
    number!(gap: length in inch | millimeter, SIZE, "gap wanted under the leaf: swinging_door, sliding_door, passage_door"; optional),
    number!(covering: length in inch | millimeter, SIZE, "covering to come on the floor: passage_door, threshold"; optional),
    number!(may_lose: length in inch | millimeter, SIZE, "how much may be cut off the leaf: swinging_door, passage_door"; optional),
    port!(swing: PortKind::Choice(Swing::WORDS), "in over this floor or out: swinging_door, threshold"; optional),
    port!(runs_outside: YES_NO, "whether the leaf runs outside the wall: sliding_door"; optional),
    port!(fire_rated: YES_NO, "whether it is a fire-rated door: passage_door"; optional),
    port!(exit: YES_NO, "whether it is a required exit: threshold"; optional),
    port!(risers: PortKind::Text, "risers from the bottom up, with semicolons between: stair"; optional),
    port!(riser_count: PortKind::Count(1, 100), "number of even risers: stair"; optional),
    number!(flight: length in inch | millimeter, SIZE, "height of the even risers together: stair"; optional),
    port!(end: PortKind::Choice(End::WORDS), "which end of the stair this floor is: stair"; optional),
    number!(ground: elevation in foot | meter, HEIGHT, "ground outside: vehicle doors, wall_sill, siding, and open_edge at its first end"; optional),
    number!(ground_to: elevation in foot | meter, HEIGHT, "ground at the other end: as ground"; optional),
    number!(free: length in inch | millimeter, SIZE, "how much stays free: threshold, termite_strip, panel, cleanout, weep_hole, crawl_vent, shut_off, hose_bib, gas_riser"; optional),
    port!(exposed: YES_NO, "whether weather reaches the wood: siding"; optional),
    port!(vehicles: YES_NO, "whether vehicles are parked in the room: ignition_source"; optional),
    port!(listed: YES_NO, "whether it is listed as resistant to flammable vapour: ignition_source"; optional),
    port!(kept_free: YES_NO, "whether it is kept out of the concrete, boxed out or sleeved: framing, post, anchor, wire"; optional),
    port!(located: YES_NO, "whether services are located and marked: buried_service"; optional),
    port!(route: YES_NO, "whether anybody walks over it: open_edge"; optional),
];

/// Things.
pub(super) static THINGS: TableType = TableType {
    name: "things",
    meaning: "one thing that the floor meets, with the measures that its kind reads",
    columns: COLUMNS,
    least_rows: 1,
};

/// The place of a column, found while compiling: a name that is no column does not compile.
macro_rules! column {
    ($name:literal) => {
        const { position($name) }
    };
}

const fn position(name: &str) -> usize {
    let mut place = 0;
    while !same(COLUMNS[place].name.as_bytes(), name.as_bytes()) {
        place += 1;
    }
    place
}

const fn same(a: &[u8], b: &[u8]) -> bool {
    let mut place = 0;
    while place < a.len() && place < b.len() && a[place] == b[place] {
        place += 1;
    }
    place == a.len() && place == b.len()
}

/// A row of the table, by the names of its columns.
struct Row<'a> {
    table: &'a Columns,
    row: usize,
}

impl Row<'_> {
    fn quantity<Q: Typed>(&self, column: usize) -> Option<Q> {
        self.table.number(column, self.row).map(Q::from_base)
    }

    fn choice<C: Choice>(&self, column: usize) -> Option<C> {
        self.table.choice(column, self.row).and_then(C::at)
    }

    fn text(&self, column: usize) -> Option<&str> {
        self.table.text(column, self.row)
    }

    fn corner(&self, at: [usize; 2]) -> Result<Option<Corner>> {
        let [x, y] = at.map(|column| COLUMNS[column].name);
        match (self.quantity(at[0]), self.quantity(at[1])) {
            (Some(x), Some(y)) => Ok(Some(Corner::new(x, y))),
            (None, None) => Ok(None),
            (given, _) => {
                let (missing, there) = if given.is_some() { (y, x) } else { (x, y) };
                Err(wanted(missing, there))
            }
        }
    }

    fn ground(&self) -> Result<Vec<Elevation>> {
        match (self.quantity(column!("ground")), self.quantity(column!("ground_to"))) {
            (None, Some(_)) => Err(wanted("ground", "ground_to")),
            (from, to) => Ok(from.into_iter().chain(to).collect()),
        }
    }

    fn risers(&self) -> Result<Vec<Length>> {
        let list = self.text(column!("risers")).map(|text| text.split(';')).into_iter().flatten();
        let list = list.filter(|one| !one.trim().is_empty());
        list.map(|one| read::<Length>(one).map_err(|failure| failure.under("risers"))).collect()
    }

    fn measures(&self) -> Result<Measures> {
        Ok(Measures {
            elevation: self.quantity(column!("elevation")),
            above_slab: self.quantity(column!("above_slab")),
            needed: self.quantity(column!("needed")),
            seal_takes: self.quantity(column!("seal_takes")),
            eyes_now: self.quantity(column!("eyes_now")),
            gap_now: self.quantity(column!("gap_now")),
            gap: self.quantity(column!("gap")),
            covering: self.quantity(column!("covering")),
            may_lose: self.quantity(column!("may_lose")),
            swing: self.choice(column!("swing")),
            runs_outside: self.choice(column!("runs_outside")),
            fire_rated: self.choice(column!("fire_rated")),
            exit: self.choice(column!("exit")),
            risers: self.risers()?,
            riser_count: self.count(column!("riser_count")),
            flight: self.quantity(column!("flight")),
            end: self.choice(column!("end")),
            ground: self.ground()?,
            free: self.quantity(column!("free")),
            exposed: self.choice(column!("exposed")),
            vehicles: self.choice(column!("vehicles")),
            listed: self.choice(column!("listed")),
            kept_free: self.choice(column!("kept_free")),
            located: self.choice(column!("located")),
            route: self.choice(column!("route")),
        })
    }

    fn count(&self, column: usize) -> Option<usize> {
        self.table.count(column, self.row).and_then(|count| usize::try_from(count).ok())
    }

    fn clearance(&self) -> Result<Clearance> {
        let missing = |name: &str| Failure::new(Code::KeyMissing, name).remedy("give this value");
        let name = self.text(column!("name")).map(str::trim).filter(|name| !name.is_empty());
        let name = name.ok_or_else(|| missing("name"))?.to_owned();
        let kind = self.choice(column!("kind")).ok_or_else(|| missing("kind"))?;
        let from = self.corner([column!("x"), column!("y")])?.ok_or_else(|| missing("x"))?;
        let to = self.corner([column!("to_x"), column!("to_y")])?;
        let line = std::iter::once(from).chain(to).collect();
        Ok(Clearance { name, kind, line, thing: self.measures()?.thing(kind)? })
    }
}

fn wanted(missing: &str, there: &str) -> Box<Failure> {
    Failure::new(Code::KeyMissing, missing)
        .written("nothing")
        .allowed(format!("{missing} beside {there}"))
        .remedy(format!("give {missing}"))
}

/// The things of the table.
pub(super) fn read_things(table: &Columns) -> Result<Vec<Clearance>> {
    let row = |row: usize| {
        let read = Row { table, row }.clearance();
        read.map_err(|failure| failure.under("things").at(Place::Index(row)))
    };
    (0..table.rows).map(row).collect()
}
