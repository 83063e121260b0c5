//! What a great many shots cost: surface, thickness and volume over a rectangle, and the memory it takes at its peak.
//!
//! `scale COUNT [ROUNDS]` prints one line of JSON for the next lower square number of shots. The shots themselves are in memory before the clock starts, and are not
//! counted. Memory is the growth of the process's resident peak, as Linux tells it; elsewhere it is left out.

use overslab::geometry::{Plane, Point, Region};
use overslab::grade::thickness_field::ThicknessField;
use overslab::survey::surface::{Rules, Shot, Surface};
use std::time::Instant;

/// One shot in every square of this width, in metres, somewhere in its middle 80 %; and how uneven the floor is.
const PITCH: f64 = 0.5;
const UNEVEN: f64 = 0.05;
/// The squares are shot in no order: a step through all of them by this prime.
const STRIDE: u64 = 2_654_435_761;
/// Height of the finish.
const FINISH: f64 = 0.1;

/// A number from 0 up to 1 by its place in the sequence (splitmix64): the twin in NumPy makes the same.
fn number(place: u64) -> f64 {
    let mut mixed = place.wrapping_add(1).wrapping_mul(0x9E37_79B9_7F4A_7C15);
    mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    ((mixed ^ (mixed >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
}

/// A value of the process's memory in bytes: `VmRSS`, `VmHWM`.
fn memory(key: &str) -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find(|line| line.starts_with(key))?;
    Some(1024 * line.split_whitespace().nth(1)?.parse::<u64>().ok()?)
}

/// The seconds for which this process has had a processor so far, as Linux tells it.
fn on_processor() -> Option<f64> {
    let told = std::fs::read_to_string("/proc/self/schedstat").ok()?;
    Some(1e-9 * told.split_whitespace().next()?.parse::<f64>().ok()?)
}

/// The volume between the finish and the surface through the shots.
fn volume(shots: &[Shot], region: &Region) -> Result<f64, Box<dyn std::error::Error>> {
    let surface = Surface::from_shots(shots, region, &Rules::DEFAULT)?;
    Ok(ThicknessField::new(surface.whole(), Plane::new(FINISH, 0.0, 0.0))?.net())
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut given = std::env::args().skip(1);
    let count: u64 = given.next().ok_or("scale COUNT [ROUNDS]")?.parse()?;
    let rounds: u32 = given.next().map_or(Ok(1), |rounds| rounds.parse())?;
    let side = count.isqrt();
    let count = side * side;
    let shots: Vec<Shot> = (0..count)
        .map(|shot| {
            let square = shot * STRIDE % count;
            let [x, y, z] = [0, 1, 2].map(|axis| number(3 * shot + axis));
            let along = |squares: u64, share: f64| PITCH * (squares as f64 + 0.1 + 0.8 * share);
            Shot::new(along(square % side, x), along(square / side, y), UNEVEN * z)
        })
        .collect();
    let size = PITCH * side as f64;
    let region = Region::rectangle(Point::default(), Point::new(size, size))?;
    let before = memory("VmRSS");
    let (mut best, mut processor, mut made, mut peak) = (f64::INFINITY, f64::INFINITY, 0.0, None);
    for round in 0..rounds.max(1) {
        let (start, had) = (Instant::now(), on_processor());
        made = volume(&shots, &region)?;
        best = best.min(start.elapsed().as_secs_f64());
        if let (Some(had), Some(has)) = (had, on_processor()) {
            processor = processor.min(has - had);
        }
        if round == 0 {
            peak = memory("VmHWM");
        }
    }
    let bytes = match (before, peak) {
        (Some(before), Some(peak)) => format!("{:.0}", peak.saturating_sub(before) as f64 / count as f64),
        _ => "null".to_owned(),
    };
    let processor = if processor.is_finite() { format!("{processor:.6}") } else { "null".to_owned() };
    println!(
        "{{\"shots\": {count}, \"seconds\": {best:.6}, \"processor\": {processor}, \"bytes_per_shot\": {bytes}, \
         \"volume\": {made:.9}}}"
    );
    Ok(())
}
