//! CSV and XYZ.

use super::*;
use crate::failure::Place;
use crate::note::NoteCode;
use crate::quantity::Typed;
use crate::survey::read::{LeftOut, Reason};

const FOOT: f64 = 0.3048;

#[test]
fn a_header_with_units_in_many_writings() {
    for header in ["x [ft],y [ft],elevation [in]", "x_ft,y_ft,z_in", "\"Easting, (ft)\",North ft,Elev. in in"]
    {
        let text = format!("{header}\n10,20,6\n-1.5,0,1e1\n");
        let reading = points(&text, &plain());
        assert_eq!(reading.format, Format::Csv);
        assert_eq!(reading.points.x, [10.0 * FOOT, -1.5 * FOOT], "{header}");
        assert_eq!(reading.points.y, [20.0 * FOOT, 0.0]);
        assert_eq!(reading.points.z, [6.0 * 0.0254, 10.0 * 0.0254]);
        assert_eq!((reading.unit, reading.notes.len()), (None, 0), "{:?}", reading.notes);
    }
}

#[test]
fn delimiters_line_ends_mark_remarks_and_blank_records() {
    for (delimiter, end) in [(",", "\n"), (";", "\r\n"), ("\t", "\r"), (";", "\n")] {
        let lines = [
            "# an invented shed",
            "point|y|x|elevation|remark",
            "A1|1|2|3|\"by the door\"",
            "||||",
            "|4|5|6|",
        ];
        let text = lines.join(end).replace('|', delimiter) + end;
        let text = format!("\u{feff}{text}");
        let reading = points(&text, &unit(FileUnit::Metre));
        assert_eq!(reading.points.x, [2.0, 5.0], "{text:?}");
        assert_eq!(reading.points.y, [1.0, 4.0]);
        assert_eq!(reading.points.z, [3.0, 6.0]);
        assert_eq!(reading.points.names, [Some("A1".to_owned()), None]);
        assert_eq!(reading.unit, Some(FileUnit::Metre));
        assert!(reading.notes[0].text.contains("remark"), "{:?}", reading.notes);
    }
}

#[test]
fn cells_as_a_tape_shows_them() {
    let text = "x [ft];y;elevation_in\n1' 6\";2 1/2;4\n1 ft;36 in;1/2\n";
    let reading = points(text, &unit(FileUnit::Foot).overruling());
    assert_eq!(reading.points.x, [18.0 * 0.0254, FOOT]);
    assert_eq!(reading.points.y, [2.5 * FOOT, 36.0 * 0.0254]);
    assert_eq!(reading.points.z, [4.0 * FOOT, 0.5 * FOOT]);
    assert_eq!(reading.notes[0].code, NoteCode::UnitOverruled);
}

#[test]
fn units_missing_wrong_or_contradicted() {
    assert_eq!(code("x,y,z\n1,2,3\n", &plain()), Code::UnitMissing);
    assert_eq!(code("x [ft],y [ft],z\n1,2,3\n", &plain()), Code::UnitMissing);
    for (text, expected, path) in [
        ("x [furlong],y [ft],z [ft]\n1,2,3\n", Code::UnitUnknown, "x"),
        ("x [ft],y [ft],elevation (psi)\n1,2,3\n", Code::UnitWrong, "elevation"),
        ("x [ft],y_m [ft],z [ft]\n1,2,3\n", Code::ColumnDoubtful, "y"),
        ("x [ft],y [ft],z [ft],elevation [m]\n1,2,3,4\n", Code::ColumnDoubtful, "elevation"),
        ("x [ft],y [ft],height\n1,2,3 m\n4,5,6\n", Code::UnitMissing, "records[1].elevation"),
        ("x [ft],y [ft],z [ft]\n1,2,3 m\n", Code::Contradiction, "records[0].elevation"),
        ("x [ft],y [ft],z [ft]\n1,2,3 psi\n", Code::UnitWrong, "records[0].elevation"),
    ] {
        let failure = refusal(text, &plain());
        assert_eq!((failure.code, failure.path.as_str()), (expected, path), "{failure}");
        assert!(matches!(failure.place, Place::Line(_)), "{failure}");
    }
    assert_eq!(code("x [ft],y [ft],z [ft]\n1,2,3\n", &unit(FileUnit::Metre)), Code::Contradiction);
    assert_eq!(code("x [ft],y [ft],z [ft]\n1,2,3\n", &unit(FileUnit::SurveyFoot)), Code::Contradiction);
}

#[test]
fn missing_values_and_bad_numbers_name_record_and_line() {
    let header = "# two lines above\n\nx,y,z\n1,2,3\n";
    for (record, expected) in [
        ("1,,3", Code::EmptyCell),
        ("1,2,", Code::EmptyCell),
        ("1,2,nan", Code::NotFinite),
        ("1,2,-inf", Code::NotFinite),
        ("1,2,1e300", Code::NotFinite),
        ("1,2,1e999", Code::NotFinite),
        ("1,2,\"3,5\"", Code::DecimalComma),
        ("1,2,\"1,234\"", Code::DecimalComma),
        ("1,5,2,5,3,5", Code::LengthMismatch),
        ("1,2", Code::LengthMismatch),
        ("1,2,three", Code::NotReadable),
    ] {
        let failure = refusal(format!("{header}{record}\n"), &unit(FileUnit::Metre));
        assert_eq!((failure.code, failure.place), (expected, Place::Line(5)), "{failure}");
        assert!(failure.path.starts_with("records[1]"), "{failure}");
        assert!(!failure.remedy.is_empty(), "{failure}");
    }
    assert_eq!(code("x;y;z\n1;2;3,5\n", &unit(FileUnit::Metre)), Code::DecimalComma);
    assert_eq!(code("x;y;z\n1;2;3,500\n", &unit(FileUnit::Foot)), Code::DecimalComma);
}

#[test]
fn a_place_not_shot_is_left_out_and_counted() {
    let reading = points("x [m],y [m],z [m]\n1,2,none\n1,3,0.5\n", &plain());
    assert_eq!(reading.points.y, [3.0]);
    assert_eq!(reading.left_out, [LeftOut { reason: Reason::NotShot, count: 1 }]);
    assert_eq!(reading.notes[0].code, NoteCode::PointsLeftOut);
    let failure = refusal("x [m],y [m],z [m]\n1,2,none\n", &plain());
    assert_eq!(failure.code, Code::NoPoints);
    assert!(failure.written.contains("not shot"), "{failure}");
}

#[test]
fn rods_need_the_line_of_sight() {
    let text = "point,x_ft,y_ft,rod_in\nA,1,2,48\n";
    assert_eq!(code(text, &plain()), Code::KeyMissing);
    let sight = |metres: f64| Asked { height_of_instrument: Some(Typed::from_base(metres)), ..plain() };
    assert_eq!(points(text, &sight(5.0)).points.z, [5.0 - 48.0 * 0.0254]);
    assert_eq!(code("x_ft,y_ft,rod_in\n1,2,-4\n", &sight(5.0)), Code::OutOfRange);
    assert_eq!(code("x_ft,y_ft,z_in,rod_in\n1,2,3,4\n", &sight(5.0)), Code::Contradiction);
    assert_eq!(points("x_ft,y_ft,z_ft,rod_in\n1,2,3,4\n", &plain()).points.z, [3.0 * FOOT]);
}

#[test]
fn columns_by_the_caller() {
    let asked = columns("point, y [ft], x [ft], elevation [in], skip");
    for text in ["P1,1,2,3,curb\n", "Nr,N,E,H,code\nP1,1,2,3,curb\n", "P1,1,2,3,curb,and more\n"] {
        let reading = points(text, &asked);
        assert_eq!((reading.points.x[0], reading.points.y[0]), (2.0 * FOOT, FOOT));
        assert_eq!(reading.points.names, [Some("P1".to_owned())]);
    }
    assert_eq!(code("1,2\n", &asked), Code::LengthMismatch);
    assert_eq!(code("1,2,3\n4,5,6\n", &unit(FileUnit::Foot).in_format(Format::Csv)), Code::ColumnMissing);
    assert_eq!(code("x,y,z\n1,2,3\n", &columns("x, y")), Code::ColumnMissing);
}

#[test]
fn xyz_lines() {
    let text = "// a scan, invented\n\n1.5 2 3 0.4 255\r\n4,5,6,7\n  7\t8 -9e-1\n";
    let reading = points(text, &unit(FileUnit::Millimetre));
    assert_eq!(reading.format, Format::Xyz);
    assert_eq!(reading.points.x, [0.0015, 0.004, 0.007]);
    assert_eq!(reading.points.z[2], -0.9 * 0.001);
    assert!(reading.notes[0].text.starts_with("2 more columns"), "{:?}", reading.notes);
    assert_eq!(code("1 2 3\n", &plain()), Code::UnitMissing);
    assert_eq!(code("1 2\n", &unit(FileUnit::Foot)), Code::LengthMismatch);
    assert_eq!(code("1 2 3\n1 2 x\n", &unit(FileUnit::Foot)), Code::NotReadable);
    let reading = points("x[ft] y[ft] z[ft]\n1 2 3\n", &plain());
    assert_eq!((reading.format, reading.unit), (Format::Xyz, Some(FileUnit::Foot)));
    assert_eq!(code("x[ft] y[ft] z[m]\n1 2 3\n", &plain()), Code::ColumnDoubtful);
    let swapped = Asked { unit: Some(FileUnit::Metre), ..columns("y, x, z") };
    assert_eq!(points("1 2 3\n", &swapped).points.x, [2.0]);
}

#[test]
fn points_of_a_cloud_that_are_not_finite_are_left_out_and_counted() {
    let reading = points("1 2 nan\n1 2 inf\n1 2 1e12\n1 2 3\n", &unit(FileUnit::Metre));
    assert_eq!(reading.points.len(), 1);
    let counted: Vec<_> = reading.left_out.iter().map(|left| (left.reason, left.count)).collect();
    assert_eq!(counted, [(Reason::NotFinite, 2), (Reason::TooFar, 1)]);
}

#[test]
fn a_last_line_without_end_is_said() {
    let noted = |text: &str| {
        let notes = points(text, &unit(FileUnit::Metre)).notes;
        notes.iter().any(|note| note.code == NoteCode::FileDoubtful)
    };
    assert!(noted("x,y,z\n1,2,3.2") && noted("1 2 3"));
    assert!(!noted("x,y,z\n1,2,3.25\n") && !noted("1 2 3\n"));
}

#[test]
fn files_that_are_something_else() {
    for bytes in
        [&b""[..], b"\xef\xbb\xbf", b"\n\n# nothing\n", b"PK\x03\x04rest", b"\xff\xfex\0", b"\0\x01\x02"]
    {
        let failure = refusal(bytes, &plain());
        assert_eq!(failure.code, Code::FormatUnknown, "{bytes:?}");
    }
    assert_eq!(code("x,y,z\n1,2,\u{e9}\n".replace('\u{e9}', "3").into_bytes(), &plain()), Code::UnitMissing);
    let failure = refusal(b"x [m],y [m],z [m],name\n1,2,3,ok\n1,2,3,caf\xe9\n", &plain());
    assert_eq!((failure.code, failure.place), (Code::FileBroken, Place::Line(3)));
}

#[test]
fn what_has_no_meaning_is_refused() {
    let ground = Asked { ground_only: true, ..unit(FileUnit::Metre) };
    assert_eq!(code("1 2 3\n", &ground), Code::Contradiction);
    assert_eq!(code("1 2 3\n", &Asked { overrule: true, ..plain() }), Code::KeyMissing);
}
