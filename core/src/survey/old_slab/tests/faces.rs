use super::*;
use crate::failure::{Code, Place};
use crate::note::NoteCode;

fn with(points: &[[f64; 3]], triangles: Value) -> Value {
    let points: Vec<Value> = points
        .iter()
        .map(|[x, y, z]| json!({"x": format!("{x} ft"), "y": format!("{y} ft"), "elevation": format!("{z} ft")}))
        .collect();
    json!({"outline": rectangle(12.0, 10.0), "faces": {"points": points, "triangles": triangles}})
}

const SQUARE: [[f64; 3]; 4] = [[0.0, 0.0, 99.0], [12.0, 0.0, 99.3], [12.0, 10.0, 99.0], [0.0, 10.0, 99.0]];

#[test]
fn triangles_make_a_survey_and_are_written_out_again() {
    let survey = survey(with(&SQUARE, json!([[1, 2, 4], [2, 3, 4]])));
    assert_canonical(&survey);
    // The other diagonal would give 99.1 ft.
    let mean = crate::quantity::Typed::base(survey.facts().mean) / 0.3048;
    assert!((mean - (99.0 + 0.3 / 3.0)).abs() < 1e-12, "{mean}");
    let other = self::survey(with(&SQUARE, json!([[1, 2, 3], [1, 3, 4]])));
    let mean = crate::quantity::Typed::base(other.facts().mean) / 0.3048;
    assert!((mean - (99.0 + 0.3 / 6.0)).abs() < 1e-12, "{mean}");
}

#[test]
fn names_and_the_name_of_the_surface_stay() {
    let mut json = with(&SQUARE, json!([[1, 2, 4], [2, 3, 4]]));
    json["faces"]["name"] = json!("old floor");
    json["faces"]["points"][1]["name"] = json!("by the door");
    let survey = survey(json);
    assert_canonical(&survey);
    assert_eq!(survey.facts().highest.shot.as_deref(), Some("by the door"));
    assert_eq!(survey.shots().name(0), "point 1");
}

#[test]
fn a_point_left_out_is_noted_by_name() {
    let mut points = SQUARE.to_vec();
    points.push([5.0, 5.0, 98.0]);
    let survey = survey(with(&points, json!([[1, 2, 4], [2, 3, 4]])));
    let note = survey.notes().iter().find(|note| note.code == NoteCode::PointsUnused).expect("a note");
    assert_eq!(note.text, "point 5 is a corner of no triangle and was left out");
}

#[test]
fn failures_stand_where_the_file_has_them() {
    let failure = |json: Value| {
        let failure = Survey::from_json(json).expect_err("a refusal");
        (failure.code, failure.path.clone(), failure.place)
    };
    let unknown = failure(with(&SQUARE, json!([[1, 2, 4], [2, 3, 5]])));
    assert_eq!(unknown, (Code::FacePointUnknown, "faces.triangles".to_owned(), Place::Index(1)));
    let zero = failure(with(&SQUARE, json!([[1, 2, 4], [0, 3, 4]])));
    assert_eq!(zero, (Code::FacePointUnknown, "faces.triangles".to_owned(), Place::Index(1)));
    assert_eq!(failure(with(&SQUARE, json!([]))).0, Code::EmptyList);
    let mut double = SQUARE.to_vec();
    double.extend([[12.0, 0.0, 98.0], [12.0, -4.0, 99.0], [6.0, -4.0, 99.0]]);
    let heights = failure(with(&double, json!([[1, 2, 4], [2, 3, 4], [5, 6, 7]])));
    assert_eq!(heights, (Code::TwoHeights, "faces.points".to_owned(), Place::Index(4)));
    let mut both = with(&SQUARE, json!([[1, 2, 4], [2, 3, 4]]));
    both["shots"] = json!([]);
    assert_eq!(failure(both).0, Code::Contradiction);
}
