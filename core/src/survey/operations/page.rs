//! The page of a level book: rows in the order they were booked, made into set-ups.

use crate::failure::{Code, Failure, Result};
use crate::operation::Columns;
use crate::quantity::{Length, Typed};
use crate::survey::level_book::{Backsight, SetUp, Sight};

/// The set-ups of a page: a backsight opens one, a foresight ends one.
#[derive(Default)]
pub(super) struct Page {
    /// The set-ups.
    pub(super) setups: Vec<SetUp>,
    /// Where the readings of each stand.
    rows: Vec<Rows>,
}

/// The rows of the readings of one set-up.
#[derive(Default)]
struct Rows {
    backsight: usize,
    sights: Vec<usize>,
    foresight: usize,
    close: usize,
}

impl Page {
    /// Reads the rows: point, backsight, sight, foresight, repeated backsight.
    pub(super) fn read(table: &Columns) -> Result<Self> {
        let mut page = Self::default();
        for row in 0..table.rows {
            page.row(table, row)?;
        }
        Ok(page)
    }

    fn row(&mut self, table: &Columns, row: usize) -> Result<()> {
        let point = table.text(0, row).unwrap_or_default();
        let rod = |column: usize| table.number(column, row).map(Length::from_base);
        let (backsight, sight, foresight, close) = (rod(1), rod(2), rod(3), rod(4));
        if backsight.or(sight).or(foresight).or(close).is_none() {
            return Err(Failure::new(Code::BookIncomplete, format!("page[{row}]"))
                .written(format!("`{point}` without a reading"))
                .allowed("a backsight, a sight, a foresight or a repeated backsight")
                .remedy("book the reading or strike the row out"));
        }
        if sight.or(foresight).or(close).is_some() {
            let open = self.setups.last_mut().filter(|setup| setup.foresight.is_none());
            let (Some(setup), Some(rows)) = (open, self.rows.last_mut()) else {
                return Err(no_setup(row, point));
            };
            if let Some(rod) = sight {
                setup.sights.push(Sight::point(point, rod));
                rows.sights.push(row);
            }
            if let Some(rod) = foresight {
                setup.foresight = Some(Sight::point(point, rod));
                rows.foresight = row;
            }
            if close.is_some() {
                setup.close = close;
                rows.close = row;
            }
        }
        if let Some(rod) = backsight {
            let backsight = Backsight { point: point.to_owned(), rod: Some(rod) };
            self.setups.push(SetUp { backsight, sights: Vec::new(), foresight: None, close: None });
            self.rows.push(Rows { backsight: row, ..Rows::default() });
        }
        Ok(())
    }

    /// A failure of the book told of the page, where the readings stand: `setups[1].foresight.point` is some `page[4].point`.
    pub(super) fn told(&self, mut failure: Box<Failure>) -> Box<Failure> {
        if let Some(path) = self.cell(&failure.path) {
            failure.path = path;
        }
        failure
    }

    fn cell(&self, path: &str) -> Option<String> {
        let (setup, rest) = path.strip_prefix("setups[")?.split_once(']')?;
        let rows = self.rows.get(setup.parse::<usize>().ok()?)?;
        let rest = rest.strip_prefix('.').unwrap_or_default();
        let (row, column) = match rest.split(['.', '[']).next() {
            Some("sights") => {
                let sight = rest.strip_prefix("sights[")?.split_once(']')?.0.parse::<usize>().ok()?;
                (*rows.sights.get(sight)?, "sight")
            }
            Some("foresight") => (rows.foresight, "foresight"),
            Some("close") => (rows.close, "close"),
            _ => (rows.backsight, "backsight"),
        };
        let column = if rest.ends_with(".point") { "point" } else { column };
        Some(format!("page[{row}].{column}"))
    }
}

fn no_setup(row: usize, point: &str) -> Box<Failure> {
    Failure::new(Code::BookIncomplete, format!("page[{row}]"))
        .written(format!("`{point}` is read before a backsight"))
        .allowed("a backsight first in every set-up")
        .remedy("book the backsight on the benchmark or the turning point")
}
