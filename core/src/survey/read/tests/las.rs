//! LAS and LAZ, written by the crate `las`.

use super::damage::{changed, cut_with_counts};
use super::*;
use crate::note::NoteCode;
use crate::survey::read::{LeftOut, Reason};
use ::las::point::{Classification, Format as PointFormat};
use ::las::{Builder, Color, Point, Transform, Vector, Version, Vlr, Writer};
use std::io::Cursor;

/// Points on an invented slab: every fifth withheld, every seventh noise, every third ground.
fn point(place: usize, format: &PointFormat) -> Point {
    Point {
        x: 100.0 + 0.25 * place as f64,
        y: 50.0 - 0.5 * (place % 7) as f64,
        z: 1.0 + 0.001 * (place * place % 97) as f64,
        classification: Classification::new(if place.is_multiple_of(7) {
            7
        } else {
            1 + u8::from(place.is_multiple_of(3))
        })
        .unwrap(),
        is_withheld: place.is_multiple_of(5),
        intensity: (place * 31 % 65536) as u16,
        return_number: 1,
        number_of_returns: 1,
        gps_time: format.has_gps_time.then_some(place as f64),
        color: format.has_color.then_some(Color::new(place as u16, 2, 3)),
        nir: format.has_nir.then_some(9),
        extra_bytes: vec![place as u8; usize::from(format.extra_bytes)],
        ..Point::default()
    }
}

struct File {
    format: u8,
    minor: u8,
    packed: bool,
    extra: u16,
    vlrs: Vec<Vlr>,
    evlrs: Vec<Vlr>,
    count: usize,
}

const FILE: File =
    File { format: 0, minor: 2, packed: false, extra: 0, vlrs: vec![], evlrs: vec![], count: 40 };

impl File {
    fn bytes(self) -> Vec<u8> {
        let mut builder = Builder::from(Version::new(1, self.minor));
        builder.point_format = PointFormat::new(self.format).unwrap();
        builder.point_format.extra_bytes = self.extra;
        builder.point_format.is_compressed = self.packed;
        let transform = |offset| Transform { scale: 0.001, offset };
        builder.transforms = Vector { x: transform(100.0), y: transform(50.0), z: transform(0.0) };
        builder.vlrs = self.vlrs;
        builder.evlrs = self.evlrs;
        let format = builder.point_format;
        let mut writer = Writer::new(Cursor::new(Vec::new()), builder.into_header().unwrap()).unwrap();
        for place in 0..self.count {
            writer.write_point(point(place, &format)).unwrap();
        }
        writer.into_inner().unwrap().into_inner()
    }
}

fn expected(place: usize) -> [f64; 3] {
    let point = point(place, &PointFormat::default());
    let whole = |c: f64, offset: f64| 0.001 * ((c - offset) / 0.001).round() + offset;
    [whole(point.x, 100.0), whole(point.y, 50.0), whole(point.z, 0.0)]
}

#[test]
fn every_point_format_plain_and_packed() {
    let kept: Vec<[f64; 3]> = (0..40_usize)
        .filter(|&place| !place.is_multiple_of(5) && !place.is_multiple_of(7))
        .map(expected)
        .collect();
    for format in [0, 1, 2, 3, 6, 7, 8] {
        for (packed, extra) in [(false, 0), (true, 0), (false, 3), (true, 3)] {
            let minor = if format > 5 { 4 } else { 2 };
            let reading = points(File { format, minor, packed, extra, ..FILE }.bytes(), &plain());
            let found: Vec<[f64; 3]> =
                (0..reading.points.len()).filter_map(|i| reading.points.get(i)).collect();
            assert_eq!(found, kept, "format {format}, packed {packed}, extra {extra}");
            assert_eq!((reading.format, reading.unit), (Format::Las, Some(FileUnit::Metre)));
            let out = |reason, count| LeftOut { reason, count };
            assert_eq!(reading.left_out, [out(Reason::Withheld, 8), out(Reason::Noise, 4)]);
            let codes: Vec<NoteCode> = reading.notes.iter().map(|note| note.code).collect();
            assert_eq!(codes, [NoteCode::UnitTaken, NoteCode::PointsLeftOut], "{:?}", reading.notes);
        }
    }
}

#[test]
fn ground_only() {
    let reading = points(FILE.bytes(), &Asked { ground_only: true, ..plain() });
    let ground = (0..40_usize)
        .filter(|&place| !place.is_multiple_of(5) && !place.is_multiple_of(7) && place.is_multiple_of(3))
        .count();
    assert_eq!(reading.points.len(), ground);
    assert!(reading.left_out.iter().any(|left| left.reason == Reason::NotGround));
}

fn projection(record_id: u16, data: Vec<u8>) -> Vlr {
    Vlr { user_id: "LASF_Projection".to_owned(), record_id, description: String::new(), data }
}

fn keys(keys: &[[u16; 4]]) -> Vlr {
    let head = [1, 1, 0, keys.len() as u16];
    projection(34735, head.iter().chain(keys.iter().flatten()).flat_map(|key| key.to_le_bytes()).collect())
}

#[test]
fn units_by_geotiff_keys() {
    let with = |list: &[[u16; 4]]| File { vlrs: vec![keys(list)], ..FILE }.bytes();
    let x = expected(1)[0];
    for (code, unit) in [(9001, FileUnit::Metre), (9002, FileUnit::Foot), (9003, FileUnit::SurveyFoot)] {
        let reading = points(with(&[[1024, 0, 1, 1], [3076, 0, 1, code]]), &plain());
        assert_eq!((reading.unit, reading.points.x[0]), (Some(unit), unit.metres(x)));
    }
    let mixed = points(with(&[[3076, 0, 1, 9001], [4099, 0, 1, 9002]]), &plain());
    assert_eq!((mixed.unit, mixed.points.x[0], mixed.points.z[0]), (None, x, expected(1)[2] * 0.3048));
    let feet = with(&[[3076, 0, 1, 9003]]);
    assert_eq!(code(&feet, &unit(FileUnit::Foot)), Code::Contradiction);
    let overruled = points(&feet, &unit(FileUnit::Foot).overruling());
    assert_eq!((overruled.unit, overruled.points.x[0]), (Some(FileUnit::Foot), x * 0.3048));
    assert_eq!(code(with(&[[3072, 0, 1, 2992]]), &plain()), Code::UnitMissing);
    assert_eq!(points(with(&[[3072, 0, 1, 2992]]), &unit(FileUnit::Foot)).unit, Some(FileUnit::Foot));
    assert_eq!(code(with(&[[1024, 0, 1, 2]]), &plain()), Code::UnitWrong);
    assert_eq!(code(with(&[[3076, 0, 1, 9036]]), &plain()), Code::UnitUnknown);
    assert_eq!(code(with(&[[3076, 34736, 9, 9]]), &plain()), Code::FileBroken);
}

#[test]
fn units_by_text_also_behind_the_points() {
    let text = br#"PROJCS["invented",GEOGCS["g",UNIT["degree",0.0174532925199433]],UNIT["US survey foot",0.304800609601219]]"#;
    for (vlrs, evlrs) in
        [(vec![projection(2112, text.to_vec())], vec![]), (vec![], vec![projection(2112, text.to_vec())])]
    {
        let bytes = File { format: 6, minor: 4, vlrs, evlrs, ..FILE }.bytes();
        assert_eq!(points(&bytes, &plain()).unit, Some(FileUnit::SurveyFoot));
        assert!(points(&bytes, &plain()).notes.iter().all(|note| note.code == NoteCode::PointsLeftOut));
    }
}

/// A file with some bytes of its header set.
fn set(mut bytes: Vec<u8>, at: usize, new: &[u8]) -> Vec<u8> {
    bytes[at..at + new.len()].copy_from_slice(new);
    bytes
}

#[test]
fn headers_that_lie() {
    let old = || FILE.bytes();
    let new = || File { format: 6, minor: 4, ..FILE }.bytes();
    let packed = || File { format: 6, minor: 4, packed: true, ..FILE }.bytes();
    for (bytes, expected) in [
        (set(old(), 107, &41_u32.to_le_bytes()), Code::FileShort),
        (set(old(), 107, &u32::MAX.to_le_bytes()), Code::FileShort),
        (set(old(), 96, &u32::MAX.to_le_bytes()), Code::FileShort),
        (set(old(), 100, &u32::MAX.to_le_bytes()), Code::FileShort),
        (set(old(), 105, &0_u16.to_le_bytes()), Code::FileBroken),
        (set(old(), 131, &f64::NAN.to_le_bytes()), Code::FileBroken),
        (set(old(), 131, &0.0_f64.to_le_bytes()), Code::FileBroken),
        (set(old(), 155, &f64::INFINITY.to_le_bytes()), Code::FileBroken),
        (set(old(), 107, &0_u32.to_le_bytes()), Code::NoPoints),
        (set(new(), 247, &u64::MAX.to_le_bytes()), Code::FileShort),
        (set(new(), 107, &39_u32.to_le_bytes()), Code::FileBroken),
        (set(new(), 243, &1_u32.to_le_bytes()), Code::FileShort),
        (set(packed(), 247, &u64::MAX.to_le_bytes()), Code::FileShort),
        (set(packed(), 247, &41_u64.to_le_bytes()), Code::FileBroken),
        (set(packed(), 247, &39_u64.to_le_bytes()), Code::FileBroken),
    ] {
        let failure = refusal(bytes, &plain());
        assert!(
            failure.code == expected || (expected == Code::FileShort && failure.code == Code::FileBroken),
            "{failure}"
        );
    }
    // An offset that sends the points out of all bounds.
    let far = set(old(), 155, &1e12_f64.to_le_bytes());
    assert_eq!(code(far, &plain()), Code::NoPoints);
    // Fewer points stated than the bytes hold.
    let fewer = points(set(old(), 107, &30_u32.to_le_bytes()), &plain());
    assert!(fewer.notes.iter().any(|note| note.code == NoteCode::FileParts), "{:?}", fewer.notes);
    let outside = points(set(old(), 179, &101.0_f64.to_le_bytes()), &plain());
    assert!(outside.notes.iter().any(|note| note.code == NoteCode::FileDoubtful), "{:?}", outside.notes);
}

#[test]
fn cut_and_changed() {
    for (format, minor, packed) in [(0, 2, false), (3, 2, true), (6, 4, false), (7, 4, true)] {
        let bytes = File { format, minor, packed, count: 20, ..FILE }.bytes();
        cut_with_counts(&bytes, &plain());
        changed(&bytes, &plain(), 5 + u64::from(format), if packed { 800 } else { 3000 });
    }
}

/// Bytes changed in the packed points alone.
#[test]
fn packed_points_changed() {
    for (format, minor, rounds) in [(1, 2, 1500), (6, 4, 500)] {
        let bytes = File { format, minor, packed: true, count: 60, ..FILE }.bytes();
        let mut random = crate::geometry::random::Random::new(u64::from(format));
        let start = u32::from_le_bytes(*bytes[96..].first_chunk().unwrap()) as usize;
        for _ in 0..rounds {
            let mut bytes = bytes.clone();
            for _ in 0..3 {
                let at = start + random.below(bytes.len() - start);
                bytes[at] = random.below(256) as u8;
            }
            if let Ok(reading) = read_points(&bytes, &plain()) {
                let left: u64 = reading.left_out.iter().map(|left| left.count).sum();
                assert_eq!(reading.points.len() as u64 + left, 60);
            }
        }
    }
}
