//! What stands in each column of a table: from its header, or as the caller says.
//!
//! A heading is a word and perhaps a unit: `x [ft]`, `elevation (m)`, `rod_in`, `Northing`. The caller's list uses the same
//! words, parted by commas: `point, y [ft], x [ft], elevation [in], skip`.

use super::unit::FileUnit;
use crate::failure::{Code, Failure, Result, nearest};

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Role {
    X,
    Y,
    Elevation,
    Rod,
    Point,
    Skip,
}

/// The words for a role; the first is the one for messages.
const WORDS: [(Role, &[&str]); 6] = [
    (Role::X, &["x", "easting", "east", "e", "xcoordinate", "xcoord"]),
    (Role::Y, &["y", "northing", "north", "n", "ycoordinate", "ycoord"]),
    (Role::Elevation, &["elevation", "elev", "z", "height", "level", "zcoordinate", "zcoord"]),
    (Role::Rod, &["rod", "rodreading", "reading", "staff"]),
    (
        Role::Point,
        &[
            "point",
            "name",
            "id",
            "pt",
            "shot",
            "station",
            "label",
            "no",
            "number",
            "pointname",
            "pointnumber",
        ],
    ),
    (Role::Skip, &["skip"]),
];

impl Role {
    pub(super) fn word(self) -> &'static str {
        WORDS.iter().find(|(role, _)| *role == self).and_then(|(_, words)| words.first()).unwrap_or(&"")
    }

    fn of(words: &[&str]) -> Option<Self> {
        let name: String = words.concat().to_ascii_lowercase();
        WORDS.iter().find(|(_, words)| words.contains(&name.as_str())).map(|(role, _)| *role)
    }
}

/// One column.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Column {
    pub(super) role: Role,
    pub(super) unit: Option<FileUnit>,
    pub(super) heading: String,
}

/// What stands in each column of a table, from the first to the last.
#[derive(Clone, Debug, PartialEq)]
pub struct Columns(pub(super) Vec<Column>);

impl Columns {
    /// The caller's list: `point, y [ft], x [ft], elevation [in], skip`.
    ///
    /// # Errors
    /// A word that is not known, a unit that is not known or belongs to another quantity, two units in one heading.
    pub fn read(list: &str) -> Result<Self> {
        let columns: Vec<Column> = list.split([',', ';']).map(Column::read).collect::<Result<_>>()?;
        match columns.iter().find(|column| column.role == Role::Skip && column.heading != "skip") {
            None => Ok(Self(columns)),
            Some(strange) => Err(unknown(&strange.heading)),
        }
    }

    /// The headings of a file; what is none of our columns is skipped.
    pub(super) fn of_header<'a>(headings: impl Iterator<Item = &'a str>) -> Result<Self> {
        headings.map(Column::read).collect::<Result<_>>().map(Self)
    }
}

fn unknown(heading: &str) -> Box<Failure> {
    let words = WORDS.iter().filter_map(|(_, words)| words.first().copied());
    let remedy = match nearest(heading, words.clone()) {
        Some(near) => format!("did you mean {near}?"),
        None => "write skip for a column that is not wanted".to_owned(),
    };
    Failure::new(Code::WordUnknown, "columns")
        .written(format!("\"{heading}\""))
        .allowed(words.collect::<Vec<_>>().join(", "))
        .remedy(remedy)
}

impl Column {
    fn read(heading: &str) -> Result<Self> {
        let heading = heading.trim();
        let (name, bracketed) = bracket(heading);
        let words: Vec<&str> =
            name.split([' ', '_', '-', '\t', '.', ',']).filter(|word| !word.is_empty()).collect();
        let (role, suffix) = split(&words);
        let mut column = Self { role, unit: None, heading: heading.to_owned() };
        if matches!(role, Role::Skip | Role::Point) {
            return Ok(column);
        }
        let bracketed = bracketed.map(|spelling| FileUnit::read(spelling, role.word())).transpose();
        let bracketed = bracketed.map_err(|failure| failure.written(format!("\"{heading}\"")))?;
        column.unit = match (bracketed, suffix) {
            (Some(one), Some(other)) if one != other => {
                return Err(doubtful(&column, "two units in one heading"));
            }
            (one, other) => one.or(other),
        };
        Ok(column)
    }
}

/// A heading that contradicts itself or another.
pub(super) fn doubtful(column: &Column, what: &str) -> Box<Failure> {
    Failure::new(Code::ColumnDoubtful, column.role.word())
        .written(format!("\"{}\", {what}", column.heading))
        .allowed("one heading for each thing, with one unit")
        .remedy("give the columns in place of the header")
}

/// `x [ft]`: what stands before the bracket, and in it.
fn bracket(heading: &str) -> (&str, Option<&str>) {
    for (open, close) in [('[', ']'), ('(', ')')] {
        let inside = heading.strip_suffix(close).and_then(|rest| rest.split_once(open));
        if let Some((name, spelling)) = inside {
            return (name, Some(spelling));
        }
    }
    (heading, None)
}

/// `rod in`, `elevation in us survey ft`: the role, and the unit behind it. What is no role is skipped.
fn split(words: &[&str]) -> (Role, Option<FileUnit>) {
    for count in (1..=words.len()).rev() {
        let (name, rest) = words.split_at(count);
        let Some(role) = Role::of(name) else { continue };
        let rest = match rest {
            [] => return (role, None),
            ["in", more @ ..] if !more.is_empty() => more,
            other => other,
        };
        return match FileUnit::from_spelling(&rest.join(" ")) {
            Some(unit) => (role, Some(unit)),
            None => (Role::Skip, None),
        };
    }
    (Role::Skip, None)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn one(heading: &str) -> (Role, Option<FileUnit>) {
        let column = Column::read(heading).unwrap();
        (column.role, column.unit)
    }

    #[test]
    fn headings() {
        assert_eq!(one("x"), (Role::X, None));
        assert_eq!(one(" X [ft] "), (Role::X, Some(FileUnit::Foot)));
        assert_eq!(one("elevation (m)"), (Role::Elevation, Some(FileUnit::Metre)));
        assert_eq!(one("rod_in"), (Role::Rod, Some(FileUnit::Inch)));
        assert_eq!(one("Elev. in ft"), (Role::Elevation, Some(FileUnit::Foot)));
        assert_eq!(one("Northing US survey ft"), (Role::Y, Some(FileUnit::SurveyFoot)));
        assert_eq!(one("point number"), (Role::Point, None));
        assert_eq!(one("x_ft [ft]"), (Role::X, Some(FileUnit::Foot)));
        assert_eq!(one("remark"), (Role::Skip, None));
        assert_eq!(one("x offset"), (Role::Skip, None));
        assert_eq!(one(""), (Role::Skip, None));
    }

    #[test]
    fn wrong_units_name_their_column() {
        for (heading, code, path) in [
            ("x [furlong]", Code::UnitUnknown, "x"),
            ("elevation (psi)", Code::UnitWrong, "elevation"),
            ("y_ft [m]", Code::ColumnDoubtful, "y"),
        ] {
            let failure = Column::read(heading).unwrap_err();
            assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
            assert!(failure.written.contains(heading), "{failure}");
        }
    }

    #[test]
    fn the_callers_list() {
        let columns = Columns::read("point, y [ft], x [ft], elevation [in], skip").unwrap();
        let roles: Vec<Role> = columns.0.iter().map(|column| column.role).collect();
        assert_eq!(roles, [Role::Point, Role::Y, Role::X, Role::Elevation, Role::Skip]);
        let failure = Columns::read("x, y, elevaton").unwrap_err();
        assert_eq!(failure.code, Code::WordUnknown);
        assert!(failure.remedy.contains("elevation"), "{failure}");
    }
}
