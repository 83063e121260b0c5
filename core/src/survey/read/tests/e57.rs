//! E57, written by the crate `e57`.

use super::damage::{changed_and_mended, cut_with_counts};
use super::*;
use crate::survey::read::{LeftOut, Reason};
use ::e57::{
    E57Writer, Quaternion, RawValues, Record, RecordDataType, RecordName, RecordValue, Transform, Translation,
};
use std::io::{Cursor, Read, Seek, SeekFrom};

fn record(name: RecordName, data_type: RecordDataType) -> Record {
    Record { name, data_type }
}

/// A file of scans, each with its pose, its fields and its points.
fn file(scans: &[(Option<Transform>, Vec<Record>, Vec<RawValues>)]) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    let mut writer = E57Writer::new(&mut bytes, "{invented}").unwrap();
    for (transform, prototype, points) in scans {
        let mut scan = writer.add_pointcloud("{invented scan}", prototype.clone()).unwrap();
        scan.set_transform(transform.clone());
        points.iter().for_each(|point| scan.add_point(point.clone()).unwrap());
        scan.finalize().unwrap();
    }
    writer.finalize().unwrap();
    drop(writer);
    bytes.seek(SeekFrom::Start(0)).unwrap();
    let mut out = Vec::new();
    bytes.read_to_end(&mut out).unwrap();
    out
}

fn doubles(place: [f64; 3]) -> RawValues {
    place.into_iter().map(RecordValue::Double).collect()
}

fn cartesian() -> Vec<Record> {
    vec![Record::CARTESIAN_X_F64, Record::CARTESIAN_Y_F64, Record::CARTESIAN_Z_F64]
}

fn pose(rotation: [f64; 4], shift: [f64; 3]) -> Option<Transform> {
    let [w, x, y, z] = rotation;
    let [a, b, c] = shift;
    Some(Transform { rotation: Quaternion { w, x, y, z }, translation: Translation { x: a, y: b, z: c } })
}

/// Two scans: one plain, one in whole numbers, turned a quarter about the vertical and moved.
fn sample() -> Vec<u8> {
    let scaled = |name| {
        record(name, RecordDataType::ScaledInteger { min: -1000, max: 1000, scale: 0.001, offset: 1.0 })
    };
    let fields = vec![
        scaled(RecordName::CartesianX),
        Record::CARTESIAN_INVALID_STATE,
        scaled(RecordName::CartesianY),
        record(RecordName::Intensity, RecordDataType::Integer { min: 5, max: 5 }),
        scaled(RecordName::CartesianZ),
    ];
    let whole = |x, state, y, z| {
        let s = RecordValue::ScaledInteger;
        vec![s(x), RecordValue::Integer(state), s(y), RecordValue::Integer(5), s(z)]
    };
    let half = std::f64::consts::FRAC_1_SQRT_2;
    file(&[
        (
            None,
            cartesian(),
            vec![doubles([1.5, 2.5, 3.5]), doubles([f64::NAN, 0.0, 0.0]), doubles([-1.0, 1e-3, 1e6])],
        ),
        (
            pose([half, 0.0, 0.0, half], [10.0, 20.0, 30.0]),
            fields,
            vec![whole(250, 0, -500, 1000), whole(1, 2, 3, 4), whole(0, 1, 0, 0), whole(-1000, 0, 0, -1)],
        ),
    ])
}

#[test]
fn scans_come_by_their_pose_and_lose_what_is_invalid() {
    let reading = points(sample(), &plain());
    assert_eq!((reading.format, reading.unit), (Format::E57, Some(FileUnit::Metre)));
    let found: Vec<[f64; 3]> =
        (0..reading.points.len()).filter_map(|place| reading.points.get(place)).collect();
    // (1.25, 0.5, 2) turned a quarter to the left is (-0.5, 1.25, 2).
    let expected = [[1.5, 2.5, 3.5], [-1.0, 1e-3, 1e6], [9.5, 21.25, 32.0], [9.0, 20.0, 30.999]];
    assert_eq!(found.len(), expected.len());
    for (found, expected) in found.iter().zip(expected) {
        assert!(
            found.iter().zip(expected).all(|(a, b)| (a - b).abs() < 1e-14 * b.abs().max(10.0)),
            "{found:?}"
        );
    }
    let out = |reason, count| LeftOut { reason, count };
    assert_eq!(reading.left_out, [out(Reason::NotFinite, 1), out(Reason::Invalid, 2)]);
}

#[test]
fn spherical_coordinates_are_turned() {
    let fields =
        vec![Record::SPHERICAL_RANGE_F64, Record::SPHERICAL_AZIMUTH_F64, Record::SPHERICAL_ELEVATION_F64];
    let quarter = std::f64::consts::FRAC_PI_2;
    let bytes =
        file(&[(None, fields, vec![doubles([2.0, quarter, 0.0]), doubles([3.0, 0.0, quarter / 3.0])])]);
    let reading = points(bytes, &plain());
    let expected = [[0.0, 2.0, 0.0], [3.0 * 0.75_f64.sqrt(), 0.0, 1.5]];
    for (place, expected) in expected.iter().enumerate() {
        let found = reading.points.get(place).unwrap();
        assert!(found.iter().zip(expected).all(|(a, b)| (a - b).abs() < 1e-14), "{found:?}");
    }
}

#[test]
fn units_and_poses_that_cannot_be() {
    assert_eq!(code(sample(), &unit(FileUnit::Foot)), Code::Contradiction);
    assert_eq!(points(sample(), &unit(FileUnit::Foot).overruling()).points.x[0], 1.5 * 0.3048);
    let bent = file(&[(pose([1.0, 1.0, 0.0, 0.0], [0.0; 3]), cartesian(), vec![doubles([1.0; 3])])]);
    assert_eq!(code(bent, &plain()), Code::FileBroken);
    assert_eq!(code(file(&[]), &plain()), Code::NoPoints);
    let narrow = RecordDataType::Integer { min: 1, max: 2 };
    let fields = cartesian().into_iter().map(|field| record(field.name, narrow.clone())).collect();
    let bytes = file(&[(None, fields, vec![vec![RecordValue::Integer(1); 3]; 4])]);
    assert_eq!(points(&bytes, &plain()).points.x, [1.0; 4]);
    let mut without_bits = replaced(replaced(replaced(bytes, TWO, ONE), TWO, ONE), TWO, ONE);
    mend(&mut without_bits);
    assert_eq!(code(without_bits, &plain()), Code::FileBroken);
}

const TWO: &str = "maximum=\"2\"";
const ONE: &str = "maximum=\"1\"";

/// CRC-32C of each page (the standard, 6.2; polynomial of RFC 3720, appendix B.4), as E57 files keep it.
fn mend(bytes: &mut Vec<u8>) {
    bytes.resize(bytes.len().next_multiple_of(1024), 0);
    for page in bytes.chunks_exact_mut(1024) {
        let (data, sum) = page.split_at_mut(1020);
        let mut crc = u32::MAX;
        for byte in data {
            crc ^= u32::from(*byte);
            for _ in 0..8 {
                crc = if crc & 1 == 1 { (crc >> 1) ^ 0x82f6_3b78 } else { crc >> 1 };
            }
        }
        sum.copy_from_slice(&(!crc).to_be_bytes());
    }
}

fn replaced(mut bytes: Vec<u8>, from: &str, to: &str) -> Vec<u8> {
    assert_eq!(from.len(), to.len());
    let at = bytes.windows(from.len()).position(|window| window == from.as_bytes()).unwrap();
    bytes[at..at + to.len()].copy_from_slice(to.as_bytes());
    bytes
}

#[test]
fn what_is_damaged_is_refused() {
    assert_eq!(
        code(replaced(sample(), "recordCount=\"3\"", "recordCount=\"9\""), &plain()),
        Code::FileBroken
    );
    for (from, to) in [("recordCount=\"3\"", "recordCount=\"9\""), ("recordCount=\"4\"", "recordCount=\"5\"")]
    {
        let mut bytes = replaced(sample(), from, to);
        mend(&mut bytes);
        assert_eq!(code(bytes, &plain()), Code::FileBroken, "{to}");
    }
    for at in [16, 24, 32] {
        let mut bytes = sample();
        bytes[at..at + 8].copy_from_slice(&(u64::MAX >> 2).to_le_bytes());
        mend(&mut bytes);
        assert_eq!(code(bytes, &plain()), Code::FileShort, "{at}");
    }
}

#[test]
fn cut_and_changed() {
    let whole = sample();
    let mut mended = whole.clone();
    mend(&mut mended);
    assert_eq!(mended, whole, "the checksum of the test is that of the library");
    cut_with_counts(&whole, &plain());
    changed_and_mended(&whole, &plain(), 21, 4000, mend);
}
