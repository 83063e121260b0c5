//! PLY in its three encodings.

use super::damage::{changed, cut_with_counts};
use super::*;
use crate::note::NoteCode;
use crate::survey::read::{Reason, SurfaceReading, read_surface};

fn surface(bytes: impl AsRef<[u8]>) -> SurfaceReading {
    read_surface(bytes.as_ref(), &unit(FileUnit::Metre), None).unwrap_or_else(|failure| panic!("{failure}"))
}

const TEXT: &str = "ply\nformat ascii 1.0\ncomment an invented slab\nelement vertex 5\nproperty uchar red\nproperty float x\n\
property double y\nproperty int z\nproperty list uchar int neighbours\nelement face 3\n\
property list uchar uint vertex_indices\nelement edge 1\nproperty int a\nend_header\n\
7 0 0 1 0\n7 1.5 0 2 2 0 2\n7 1.5 1 3 1 4\n7 0 1e0 4 0\n7 -1 0.5 -5 0\n\
3 0 1 2\n3 0 2 3\n3 0 3 4\n1\n";

/// The same in binary: red as a byte, x as a float, y as a double, z as an int, one list.
fn binary(little: bool) -> Vec<u8> {
    let order = if little { "binary_little_endian" } else { "binary_big_endian" };
    let header = &TEXT[..TEXT.find("end_header\n").unwrap() + 11];
    let mut bytes = header.replace("ascii", order).into_bytes();
    let mut put = |number: &[u8]| {
        let turned: Vec<u8> = if little { number.to_vec() } else { number.iter().rev().copied().collect() };
        bytes.extend(turned);
    };
    let vertices: [(f32, f64, i32, &[i32]); 5] = [
        (0.0, 0.0, 1, &[]),
        (1.5, 0.0, 2, &[0, 2]),
        (1.5, 1.0, 3, &[4]),
        (0.0, 1.0, 4, &[]),
        (-1.0, 0.5, -5, &[]),
    ];
    for (x, y, z, list) in vertices {
        put(&[7]);
        put(&x.to_le_bytes());
        put(&y.to_le_bytes());
        put(&z.to_le_bytes());
        put(&[list.len() as u8]);
        list.iter().for_each(|item| put(&item.to_le_bytes()));
    }
    for face in [[0_u32, 1, 2], [0, 2, 3], [0, 3, 4]] {
        put(&[3]);
        face.iter().for_each(|corner| put(&corner.to_le_bytes()));
    }
    put(&1_i32.to_le_bytes());
    bytes
}

#[test]
fn three_encodings_give_the_same() {
    let text = surface(TEXT);
    assert_eq!(text.tin.points.x, [0.0, 1.5, 1.5, 0.0, -1.0]);
    assert_eq!(text.tin.points.y, [0.0, 0.0, 1.0, 1.0, 0.5]);
    assert_eq!(text.tin.points.z, [1.0, 2.0, 3.0, 4.0, -5.0]);
    assert_eq!(text.tin.faces, [[0, 1, 2], [0, 2, 3], [0, 3, 4]]);
    assert_eq!(surface(binary(true)), text);
    assert_eq!(surface(binary(false)), text);
    let crlf = TEXT.replace('\n', "\r\n");
    assert_eq!(surface(crlf), text);
    let notes: Vec<&str> = text.notes.iter().map(|note| note.text.as_str()).collect();
    assert_eq!(notes, ["not read: element edge"]);
    let reading = points(binary(true), &unit(FileUnit::SurveyFoot));
    assert_eq!(reading.points.x[1], 1.5 * 1200.0 / 3937.0);
    assert_eq!(reading.points.len(), 5);
}

#[test]
fn polygons_are_cut_by_a_fan_if_convex() {
    let with = |vertices: &str, face: &str| {
        let count = vertices.lines().count();
        format!(
            "ply\nformat ascii 1.0\nelement vertex {count}\nproperty float x\nproperty float y\nproperty float z\n\
             element face 1\nproperty list uchar int vertex_index\nend_header\n{vertices}\n{face}\n"
        )
    };
    let square = "0 0 0\n1 0 0\n1 1 0\n0 1 0";
    let reading = surface(with(square, "4 0 1 2 3"));
    assert_eq!(reading.tin.faces, [[0, 1, 2], [0, 2, 3]]);
    assert!(reading.notes[0].text.starts_with("1 faces of more"), "{:?}", reading.notes);
    // Upright: convex in its own plane.
    assert_eq!(surface(with("0 0 0\n1 0 0\n1 0 1\n0 0 1", "4 3 2 1 0")).tin.faces.len(), 2);
    let asked = unit(FileUnit::Metre);
    let refused = |vertices: &str, face: &str| {
        read_surface(with(vertices, face).as_bytes(), &asked, None).unwrap_err().code
    };
    assert_eq!(refused("0 0 0\n2 0 0\n0.4 0.4 0\n0 2 0", "4 1 2 3 0"), Code::FileBroken);
    assert_eq!(refused(square, "4 0 2 1 3"), Code::FileBroken);
    assert_eq!(refused(square, "2 0 1"), Code::FileBroken);
    assert_eq!(refused(square, "3 0 1 4"), Code::FileBroken);
    assert_eq!(refused(square, "3 0 1 -1"), Code::FileBroken);
    assert_eq!(refused(square, "3 0 1 1.5"), Code::FileBroken);
    assert_eq!(refused(square, "3 0 1 1"), Code::SurfaceUnclear);
    let five = "0 1 0\n0.59 -0.81 0\n-0.95 0.31 0\n0.95 0.31 0\n-0.59 -0.81 0";
    assert_eq!(refused(five, "5 0 1 2 3 4"), Code::FileBroken);
}

#[test]
fn vertices_that_are_not_finite_take_their_faces_with_them() {
    let reading = surface(TEXT.replace("7 0 1e0 4 0", "7 nan 1e0 4 0"));
    assert_eq!(reading.tin.points.len(), 4);
    assert_eq!(reading.tin.faces, [[0, 1, 2]]);
    assert_eq!((reading.left_out[0].reason, reading.left_out[0].count), (Reason::NotFinite, 1));
    assert!(
        reading.notes.iter().any(|note| note.text.starts_with("2 faces were left out")),
        "{:?}",
        reading.notes
    );
}

#[test]
fn headers_that_lie() {
    let asked = unit(FileUnit::Metre);
    for (from, to, expected) in [
        ("vertex 5", "vertex 4", Code::FileBroken),
        ("vertex 5", "vertex 6", Code::FileBroken),
        ("vertex 5", "vertex 18446744073709551615", Code::FileShort),
        ("vertex 5", "vertex 99999999999999999999999", Code::FileBroken),
        ("vertex 5", "vertex -1", Code::FileBroken),
        ("element edge 1", "element edge 2", Code::FileShort),
        ("float x", "float u", Code::ColumnMissing),
        ("float x", "list uchar float x", Code::ColumnMissing),
        ("double y", "double x", Code::FileBroken),
        ("float x", "quad x", Code::FileBroken),
        ("ascii 1.0", "ascii 2.0", Code::FileBroken),
        ("7 0 1e0 4 0", "7 0 1e0 4", Code::FileBroken),
        ("7 0 1e0 4 0", "7 0 1,5 4 0", Code::NotReadable),
        ("7 0 1e0 4 0", "7 0 1 2 3 4 0", Code::FileBroken),
        ("end_header", "end", Code::FileBroken),
    ] {
        assert!(TEXT.contains(from));
        let failure = refusal(TEXT.replace(from, to), &asked);
        assert_eq!(failure.code, expected, "{to}: {failure}");
    }
    let long = String::from_utf8_lossy(&binary(true)).contains("vertex 5");
    assert!(long);
    for count in ["vertex 6", "vertex 4294967295"] {
        let mut bytes = binary(true);
        let at = bytes.windows(8).position(|w| w == b"vertex 5").unwrap();
        bytes.splice(at..at + 8, count.bytes());
        assert!(matches!(code(&bytes, &asked), Code::FileShort | Code::FileBroken), "{count}");
    }
    assert_eq!(code(TEXT, &plain()), Code::UnitMissing);
    assert_eq!(
        code(
            "ply\nformat ascii 1.0\nelement vertex 0\nproperty float x\nproperty float y\nproperty float z\nend_header\n",
            &asked
        ),
        Code::NoPoints
    );
    assert_eq!(
        code("ply\nformat ascii 1.0\nelement thing 18446744073709551615\nend_header\n", &asked),
        Code::FileShort
    );
}

#[test]
fn cut_and_changed() {
    let asked = unit(FileUnit::Metre);
    cut_with_counts(TEXT.as_bytes(), &asked);
    for little in [true, false] {
        cut_with_counts(&binary(little), &asked);
        changed(&binary(little), &asked, 3, 3000);
    }
    changed(TEXT.as_bytes(), &asked, 4, 4000);
}

#[test]
fn bytes_behind_the_last_element_are_said() {
    let mut bytes = binary(true);
    bytes.extend(b"more");
    let notes = points(bytes, &unit(FileUnit::Metre)).notes;
    assert!(notes.iter().any(|n| n.code == NoteCode::FileParts && n.text.contains("4 bytes")), "{notes:?}");
}
