//! A triangulated surface as a record over the borders.

use super::json;
use super::record::{COORDINATE, MOST, POINT_TABLE};
use super::{Points, Tin};
use crate::failure::{Code, Failure, Result};
use crate::operation::decode::unknown_key;
use crate::operation::record::{self, Record};
use crate::operation::{Column, Columns, Kind, Port, RecordType, TableType, Value};
use crate::{number, port};
use serde_json::{Value as Json, json};

const CORNER: Kind = Kind::Count(1, MOST);

static FACE_COLUMNS: &[Port] = &[
    port!(first: CORNER, "the number of one point"),
    port!(second: CORNER, "the number of another"),
    port!(third: CORNER, "the number of the third"),
];

static FACE_TABLE: TableType = TableType {
    name: "faces",
    meaning: "a triangle by the numbers of its three points; the first point is number 1",
    columns: FACE_COLUMNS,
    least_rows: 1,
};

/// The record type of triangulated surfaces.
pub static TIN: RecordType = RecordType {
    name: "tin",
    class: "Tin",
    meaning: "A triangulated surface as it was handed over: points, and the faces between them.",
    fields: &[
        port!(name: Kind::Text, "its name"; optional),
        port!(point_count: Kind::Count(3, MOST), "how many points there are"),
        port!(face_count: Kind::Count(1, i64::MAX), "how many faces there are"),
        number!(lowest: elevation in foot | meter, COORDINATE, "height of the lowest point"),
        number!(highest: elevation in foot | meter, COORDINATE, "height of the highest point"),
        port!(points: Kind::Table(&POINT_TABLE), "the points"),
        port!(faces: Kind::Table(&FACE_TABLE), "the faces"),
    ],
    get: record::get::<Tin>,
    to_json: record::to_json::<Tin>,
    from_json: record::from_json::<Tin>,
    is: record::is::<Tin>,
    example: r#"{"name": "old floor", "points": {"unit": "ft", "x": [1, 11, 11, 1], "y": [1, 1, 9, 9],
        "elevation": [99.20, 99.15, 99.25, 99.22]}, "faces": [[1, 2, 3], [1, 3, 4]]}"#,
};

const KEYS: [&str; 3] = ["name", "points", "faces"];

impl Record for Tin {
    const TYPE: &'static RecordType = &TIN;

    fn fields(&self) -> Vec<Value> {
        let (lowest, highest) = super::ends(&self.points.z);
        vec![
            self.name.clone().map_or(Value::Absent, Value::Text),
            Value::Count(self.points.len() as i64),
            Value::Count(self.faces.len() as i64),
            Value::Number(lowest),
            Value::Number(highest),
            Value::Table(self.points.table()),
            Value::Table(self.face_table()),
        ]
    }

    fn to_json(&self) -> Json {
        let from_one: Vec<[i64; 3]> = self.faces.iter().map(|face| face.map(from_one)).collect();
        let mut json = json!({ "points": self.points.to_json(), "faces": from_one });
        if let Some(name) = &self.name {
            json["name"] = json!(name);
        }
        json
    }

    fn from_json(json: Json) -> Result<Self> {
        let Json::Object(mut map) = json else {
            return Err(json::wrong("", &json, "an object of points and faces"));
        };
        if let Some(key) = map.keys().find(|key| !KEYS.contains(&key.as_str())) {
            return Err(unknown_key(key, KEYS.into_iter()));
        }
        let name = match map.remove("name") {
            None | Some(Json::Null) => None,
            Some(Json::String(name)) => Some(name),
            Some(other) => return Err(json::wrong("name", &other, "a text")),
        };
        let points = map.remove("points").ok_or_else(|| missing("points"))?;
        let points = Points::from_json(points).map_err(|failure| failure.under("points"))?;
        let faces = map.remove("faces").ok_or_else(|| missing("faces"))?;
        Ok(Self { name, faces: faces_of(&faces, points.len())?, points })
    }
}

impl Tin {
    fn face_table(&self) -> Columns {
        let corner = |place: usize| {
            let corners = self.faces.iter().map(|face| face.get(place).copied().map(from_one));
            Column::Counts(corners.collect())
        };
        Columns { rows: self.faces.len(), columns: [0, 1, 2].map(corner).into() }
    }
}

/// The number of a point for the reader, who counts from 1.
fn from_one(corner: u32) -> i64 {
    i64::from(corner) + 1
}

fn missing(key: &str) -> Box<Failure> {
    Failure::new(Code::KeyMissing, key)
        .written("nothing")
        .allowed("points and faces")
        .remedy(format!("give {key}"))
}

/// The faces of a list of lists, each of three different points.
fn faces_of(json: &Json, points: usize) -> Result<Vec<[u32; 3]>> {
    let Json::Array(list) = json else { return Err(json::wrong("faces", json, "a list of faces")) };
    if list.is_empty() {
        return Err(Failure::new(Code::EmptyList, "faces")
            .written("no faces")
            .allowed("at least one face: the numbers of its three points")
            .remedy("give the faces, or take the points alone"));
    }
    let face = |(place, face): (usize, &Json)| {
        corners(face, points).map_err(|failure| failure.under(&format!("faces[{place}]")))
    };
    list.iter().enumerate().map(face).collect()
}

fn corners(face: &Json, points: usize) -> Result<[u32; 3]> {
    let allowed = || format!("three different whole numbers from 1 to {points}");
    let list = face.as_array().map(Vec::as_slice);
    let Some([a, b, c]) = list else { return Err(json::wrong("", face, &allowed())) };
    let corner = |json: &Json| {
        let number = json.as_u64().filter(|&number| number <= points as u64);
        let corner = number.and_then(|number| u32::try_from(number.checked_sub(1)?).ok());
        corner.ok_or_else(|| {
            Failure::new(Code::OutOfRange, "")
                .written(face.to_string())
                .allowed(allowed())
                .remedy("count the points from 1")
        })
    };
    let corners = [corner(a)?, corner(b)?, corner(c)?];
    let [a, b, c] = corners;
    if a == b || b == c || c == a {
        return Err(Failure::new(Code::Contradiction, "")
            .written(face.to_string())
            .allowed(allowed())
            .remedy("leave the face out: it has no area"));
    }
    Ok(corners)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn code(change: &str, by: &str) -> (Code, String) {
        let text = TIN.example.replace(change, by);
        assert_ne!(text, TIN.example);
        let failure = Tin::from_json(serde_json::from_str(&text).unwrap()).unwrap_err();
        assert!(!failure.remedy.is_empty(), "{failure}");
        (failure.code, failure.path.clone())
    }

    #[test]
    fn faces_name_three_different_points() {
        let at = |code, path: &str| (code, path.to_owned());
        assert_eq!(code("[1, 3, 4]", "[1, 3, 5]"), at(Code::OutOfRange, "faces[1]"));
        assert_eq!(code("[1, 3, 4]", "[1, 3, 0]"), at(Code::OutOfRange, "faces[1]"));
        assert_eq!(code("[1, 3, 4]", "[1, 3, 1.5]"), at(Code::OutOfRange, "faces[1]"));
        assert_eq!(code("[1, 3, 4]", "[1, 3, 3]"), at(Code::Contradiction, "faces[1]"));
        assert_eq!(code("[1, 3, 4]", "[1, 3, 4, 2]"), at(Code::KindMismatch, "faces[1]"));
        assert_eq!(code("[[1, 2, 3], [1, 3, 4]]", "[]"), at(Code::EmptyList, "faces"));
        assert_eq!(code("\"x\": [1, 11, 11, 1]", "\"x\": [1, 11, 11]"), at(Code::LengthMismatch, "points.y"));
        assert_eq!(code("\"faces\"", "\"face\""), at(Code::KeyUnknown, "face"));
    }
}
