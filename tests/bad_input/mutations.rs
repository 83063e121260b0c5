//! Spoilt jobs: cut off anywhere, or with one byte changed. Nothing panics; what is refused says where.

use super::cases::{boat_store, boat_store_in_json};
use crate::laws::random::Random;
use overslab::failure::Place;
use overslab::job::JobFile;

/// A spoilt text gives a report, or a failure with a line of the text.
fn told(text: &str) -> Result<bool, String> {
    let Err(failure) = JobFile::read(text).and_then(|job| job.report()) else { return Ok(true) };
    let lines = text.lines().count().max(1);
    match failure.place {
        // An error at the end of a text may stand behind its last line feed.
        Place::Line(line) if (1..=lines + 1).contains(&line) && !failure.remedy.is_empty() => Ok(false),
        _ => Err(format!("{failure}; {:?}", failure.place)),
    }
}

#[test]
fn a_job_cut_off_anywhere_says_where() {
    for whole in [boat_store(), boat_store_in_json()] {
        let mut reports = 0;
        for end in 0..whole.len() {
            let Some(text) = whole.get(..end) else { continue };
            match told(text) {
                Ok(report) => reports += usize::from(report),
                Err(problem) => panic!("cut off at byte {end}: {problem}"),
            }
        }
        // Only what ends the file may be missing: the order, whose parts all have defaults, and limits.
        assert!(reports * 4 < whole.len(), "{reports} of {} are still jobs", whole.len());
    }
}

#[test]
fn a_job_with_one_byte_changed_is_reported_on_or_refused() {
    let mut random = Random::new(5);
    for whole in [boat_store(), boat_store_in_json()] {
        let mut refused = 0;
        const TRIES: usize = 4000;
        for _ in 0..TRIES {
            let mut bytes = whole.clone().into_bytes();
            let at = random.below(bytes.len());
            // A printable sign, a line feed, or a byte that is no text by itself.
            let signs = b"0123456789'\"=[]{},.- \n\tabzAZ/%#\\\x00\x7f\xc3\xff";
            let sign = signs[random.below(signs.len())];
            match random.below(3) {
                0 => bytes[at] = sign,
                1 => bytes.insert(at, sign),
                _ => drop(bytes.remove(at)),
            }
            let Ok(text) = String::from_utf8(bytes) else { continue };
            match told(&text) {
                Ok(report) => refused += usize::from(!report),
                Err(problem) => panic!("byte {at} changed: {problem}\n{text}"),
            }
        }
        assert!(refused > TRIES / 4, "only {refused} of {TRIES} are refused");
    }
}
