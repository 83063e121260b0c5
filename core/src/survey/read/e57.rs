//! E57 (ASTM E2807): the points of all scans, each set into the common axes by its pose. Metres by the standard.
//!
//! A point that the scanner marks as invalid, or that is a direction without a distance, is left out. Spherical coordinates are
//! turned into cartesian ones where the latter are absent.

use super::Reading;
use super::asked::Asked;
use super::format::Format;
use super::gather::Gather;
use super::left_out::Reason;
use super::refusal::{broken, short};
use super::unit::FileUnit;
use crate::failure::{Failure, Result};
use e57::{E57Reader, PointCloud, Quaternion, RecordDataType, RecordName, RecordValue, Transform};
use std::io::Cursor;

/// Reads the points of all scans.
pub(super) fn read(bytes: &[u8], asked: &Asked) -> Result<Reading> {
    check_sizes(bytes)?;
    let mut notes = Vec::new();
    let unit = asked.settle(Some(FileUnit::Metre), "unit", &mut notes)?.unwrap_or(FileUnit::Metre);
    let mut file = E57Reader::new(Cursor::new(bytes)).map_err(|error| refused(&error))?;
    let mut gather = Gather::default();
    for scan in file.pointclouds() {
        let fields = Fields::new(&scan)?;
        let pose = Pose::new(scan.transform.as_ref())?;
        let points = file.pointcloud_raw(&scan).map_err(|error| refused(&error))?;
        for values in points {
            let values = values.map_err(|error| refused(&error))?;
            match fields.place(&values, &scan)? {
                Some(point) => drop(gather.push(pose.apply(point), unit)),
                None => gather.left_out.add(Reason::Invalid),
            }
        }
    }
    let (points, left_out) = gather.finish(&mut notes);
    Ok(Reading { points, format: Format::E57, unit: Some(unit), left_out, notes })
}

/// The sizes that the header states, before anything is made of them.
fn check_sizes(bytes: &[u8]) -> Result<()> {
    let number = |at: usize| {
        let found = bytes.get(at..).and_then(|rest| rest.first_chunk());
        found
            .map(|bytes| u64::from_le_bytes(*bytes))
            .ok_or_else(|| short(format!("{} bytes", bytes.len()), "a header"))
    };
    for stated in [number(16)?, number(24)?, number(32)?] {
        if stated > bytes.len() as u64 {
            return Err(short(format!("{} bytes", bytes.len()), format!("{stated} as the header states")));
        }
    }
    Ok(())
}

/// What the library says of a file that breaks the rules.
fn refused(error: &e57::Error) -> Box<Failure> {
    broken(error.to_string())
}

/// Where the coordinates stand among the values of a point.
struct Fields {
    cartesian: Option<[usize; 3]>,
    cartesian_state: Option<usize>,
    spherical: Option<[usize; 3]>,
    spherical_state: Option<usize>,
}

impl Fields {
    fn new(scan: &PointCloud) -> Result<Self> {
        let place = |name: RecordName| scan.prototype.iter().position(|record| record.name == name);
        let all = |[a, b, c]: [RecordName; 3]| Some([place(a)?, place(b)?, place(c)?]);
        // A point of no bits at all would come without end.
        if scan.records > 0 && !scan.prototype.iter().any(|record| has_bits(&record.data_type)) {
            return Err(broken("points without any bits"));
        }
        Ok(Self {
            cartesian: all([RecordName::CartesianX, RecordName::CartesianY, RecordName::CartesianZ]),
            cartesian_state: place(RecordName::CartesianInvalidState),
            spherical: all([
                RecordName::SphericalRange,
                RecordName::SphericalAzimuth,
                RecordName::SphericalElevation,
            ]),
            spherical_state: place(RecordName::SphericalInvalidState),
        })
    }

    /// The place of a point in the axes of its scan; none where it has none.
    fn place(&self, values: &[RecordValue], scan: &PointCloud) -> Result<Option<[f64; 3]>> {
        let number = |place: usize| match (values.get(place), scan.prototype.get(place)) {
            (Some(value), Some(record)) => value.to_f64(&record.data_type).map_err(|error| refused(&error)),
            _ => Err(broken("a point without all its values")),
        };
        let numbers = |[a, b, c]: [usize; 3]| Ok([number(a)?, number(b)?, number(c)?]);
        let valid =
            |state: Option<usize>| state.map_or(Ok(true), |place| number(place).map(|state| state == 0.0));
        match (self.cartesian, self.spherical) {
            (Some(fields), _) if valid(self.cartesian_state)? => numbers(fields).map(Some),
            (_, Some(fields)) if valid(self.spherical_state)? => numbers(fields).map(cartesian).map(Some),
            _ => Ok(None),
        }
    }
}

fn has_bits(kind: &RecordDataType) -> bool {
    match kind {
        RecordDataType::Single { .. } | RecordDataType::Double { .. } => true,
        RecordDataType::ScaledInteger { min, max, .. } | RecordDataType::Integer { min, max } => max > min,
    }
}

/// Range, azimuth from the x axis towards y, elevation above the plane (the standard, 6.4.2).
fn cartesian([range, azimuth, elevation]: [f64; 3]) -> [f64; 3] {
    let flat = range * elevation.cos();
    [flat * azimuth.cos(), flat * azimuth.sin(), range * elevation.sin()]
}

/// How a scan stands in the common axes: turned by a unit quaternion, then moved.
struct Pose {
    rows: [[f64; 3]; 3],
    shift: [f64; 3],
}

impl Pose {
    fn new(transform: Option<&Transform>) -> Result<Self> {
        let Some(Transform { rotation, translation }) = transform else {
            return Ok(Self { rows: [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]], shift: [0.0; 3] });
        };
        let Quaternion { w, x, y, z } = *rotation;
        let size = w * w + x * x + y * y + z * z;
        // Files write the four numbers with seven digits at least.
        if (size - 1.0).abs() > 1.0e-5 || !size.is_finite() {
            return Err(broken(format!("a pose that is no rotation: {w} {x} {y} {z}")));
        }
        let double = 2.0 / size;
        let rows = [
            [1.0 - double * (y * y + z * z), double * (x * y - w * z), double * (x * z + w * y)],
            [double * (x * y + w * z), 1.0 - double * (x * x + z * z), double * (y * z - w * x)],
            [double * (x * z - w * y), double * (y * z + w * x), 1.0 - double * (x * x + y * y)],
        ];
        Ok(Self { rows, shift: [translation.x, translation.y, translation.z] })
    }

    fn apply(&self, point: [f64; 3]) -> [f64; 3] {
        let [a, b, c] = self.rows.map(|row| row[0] * point[0] + row[1] * point[1] + row[2] * point[2]);
        [a + self.shift[0], b + self.shift[1], c + self.shift[2]]
    }
}
