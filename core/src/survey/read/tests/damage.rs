//! Files cut short at every byte, and files with bytes changed.

use super::*;
use crate::geometry::random::Random;
use crate::note::NoteCode;
use crate::survey::read::read_surface;

/// A file of a format that states how much it holds, cut at every byte: refused, or all of it is there. Only the last number of
/// a text may have lost digits, and then the reading says so.
pub(super) fn cut_with_counts(bytes: &[u8], asked: &Asked) {
    let whole = points(bytes, asked);
    for end in 0..bytes.len() {
        let Ok(reading) = read_points(&bytes[..end], asked) else { continue };
        assert_eq!(reading.points.len(), whole.points.len(), "cut at {end}");
        let said = reading.notes.iter().any(|note| note.code == NoteCode::FileDoubtful);
        assert!(said || reading.points == whole.points, "cut at {end}: {:?}", reading.points);
    }
    cut_surface(bytes, asked);
}

fn cut_surface(bytes: &[u8], asked: &Asked) {
    let Ok(whole) = read_surface(bytes, asked, None) else { return };
    for end in 0..bytes.len() {
        let Ok(reading) = read_surface(&bytes[..end], asked, None) else { continue };
        let said = reading.notes.iter().any(|note| note.code == NoteCode::FileDoubtful);
        assert!(said || reading.tin == whole.tin, "cut at {end}");
        assert_eq!(reading.tin.faces.len(), whole.tin.faces.len(), "cut at {end}");
    }
}

/// A text that states no count: what is left of it, and a note where the cut is not at the end of a line.
pub(super) fn cut_without_counts(text: &str, asked: &Asked) {
    let whole = points(text, asked);
    for end in 0..text.len() {
        let Ok(reading) = read_points(&text.as_bytes()[..end], asked) else { continue };
        assert!(reading.points.len() <= whole.points.len(), "cut at {end}");
        let at_end = matches!(text.as_bytes()[end - 1], b'\n' | b'\r');
        let said = reading.notes.iter().any(|note| note.code == NoteCode::FileDoubtful);
        assert_eq!(said, !at_end, "cut at {end}");
        if at_end {
            assert_eq!(reading.points.x, whole.points.x[..reading.points.len()], "cut at {end}");
        }
    }
}

/// One to four bytes changed, dropped or doubled, many times: a failure with a remedy, or finite points and no more than the
/// bytes can hold.
pub(super) fn changed(bytes: &[u8], asked: &Asked, seed: u64, rounds: usize) {
    changed_and_mended(bytes, asked, seed, rounds, |_| {});
}

/// The same, with checksums mended, so that the change is not found by them.
pub(super) fn changed_and_mended(
    bytes: &[u8],
    asked: &Asked,
    seed: u64,
    rounds: usize,
    mend: fn(&mut Vec<u8>),
) {
    let mut random = Random::new(seed);
    let mut read = 0;
    for round in 0..rounds {
        let mut damaged = bytes.to_vec();
        for _ in 0..=random.below(3) {
            damage(&mut damaged, &mut random);
        }
        mend(&mut damaged);
        match read_points(&damaged, asked) {
            Ok(reading) => {
                read += 1;
                sound(&reading.points, damaged.len(), round);
            }
            Err(failure) => assert!(!failure.remedy.is_empty() && failure.line().len() <= 200, "{failure}"),
        }
        if let Ok(surface) = read_surface(&damaged, asked, None) {
            sound(&surface.tin.points, damaged.len(), round);
            let count = surface.tin.points.len() as u32;
            assert!(surface.tin.faces.iter().flatten().all(|&corner| corner < count), "round {round}");
        }
    }
    assert!(read > 0 && read < rounds, "{read} of {rounds} were read: the test does not bite");
}

fn damage(bytes: &mut Vec<u8>, random: &mut Random) {
    let place = random.below(bytes.len());
    match random.below(6) {
        0 => drop(bytes.remove(place)),
        1 => bytes.insert(place, bytes[place]),
        2 => bytes[place] = b"0123456789.-+eE,; \n\t<>\"'/"[random.below(25)],
        3 => bytes[place] = [0, 1, 0x7f, 0x80, 0xfe, 0xff][random.below(6)],
        4 => bytes[place] ^= 1 << random.below(8),
        _ => bytes[place] = random.below(256) as u8,
    }
}

fn sound(points: &crate::survey::points::Points, bytes: usize, round: usize) {
    let count = points.len();
    assert!(count <= bytes && points.y.len() == count && points.z.len() == count, "round {round}");
    assert!(points.names.is_empty() || points.names.len() == count, "round {round}");
    let all = points.x.iter().chain(&points.y).chain(&points.z);
    assert!(all.into_iter().all(|c| c.is_finite() && c.abs() <= 1.0e9), "round {round}");
}

const CSV: &str = "point,x [ft],y [ft],elevation [in]\r\nA,1.5,2,3.25\nB,2.5,\"4' 3 1/2\"\"\",-1e-2\nC,3,none,none\nD,6,7,8\n";

#[test]
fn tables_cut_and_changed() {
    cut_without_counts(CSV, &plain());
    changed(CSV.as_bytes(), &plain(), 1, 4000);
    let xyz = "1.25 2.5 3.75 9\n# remark\n4 5 -6\r\n7.5,8,9\nnan 1 2\n";
    cut_without_counts(xyz, &unit(FileUnit::Foot));
    changed(xyz.as_bytes(), &unit(FileUnit::Foot), 2, 4000);
}
