//! What may not change what is suspected: the order of the shots, a turn of the axes, a plane added to the floor.

use super::books::Book;
use crate::quantity::Typed;
use crate::survey::trust::{Suspect, suspects};
use crate::survey::varied::Varied;

/// Scattered books with a slip of a foot or two.
fn books() -> impl Iterator<Item = Book> {
    let made = (1..40).map(|seed| {
        let mut varied = Varied::new(1_000 + seed);
        let mut book = Book::invented(&mut varied);
        book.columns = None;
        let place = varied.count(0, book.heights.len());
        book.heights[place] += 0.3048;
        book
    });
    made.filter(|book| book.heights.len() > 20).take(12)
}

/// What is suspected, by height and place in the list of the book.
fn found(book: &Book, number: impl Fn(usize) -> usize) -> Vec<(usize, f64, f64)> {
    let mut list: Vec<_> = suspects(&book.survey(), None)
        .list
        .iter()
        .map(|s: &Suspect| (number(s.shot), s.off.base(), s.deviation.base()))
        .collect();
    list.sort_by_key(|suspect| suspect.0);
    list
}

#[track_caller]
fn assert_same(found: &[(usize, f64, f64)], expected: &[(usize, f64, f64)], within: f64) {
    assert_eq!(found.len(), expected.len());
    for (a, b) in found.iter().zip(expected) {
        assert_eq!(a.0, b.0);
        assert!((a.1 - b.1).abs() <= within && (a.2 - b.2).abs() <= within, "{a:?} {b:?}");
    }
}

#[test]
fn the_order_of_the_shots_changes_nothing() {
    for book in books() {
        let count = book.heights.len();
        let mut turned = book.clone();
        for list in [&mut turned.xs, &mut turned.ys, &mut turned.heights] {
            list.reverse();
            list.rotate_left(5);
        }
        let was = |shot: usize| count - 1 - (shot + 5) % count;
        assert_same(&found(&turned, was), &found(&book, |shot| shot), 1e-9);
    }
}

#[test]
fn axes_that_change_places_change_nothing() {
    for book in books() {
        let mut turned = book.clone();
        std::mem::swap(&mut turned.xs, &mut turned.ys);
        turned.size.reverse();
        assert_same(&found(&turned, |shot| shot), &found(&book, |shot| shot), 1e-9);
    }
}

#[test]
fn a_plane_under_the_floor_changes_nothing() {
    for book in books() {
        let mut tilted = book.clone();
        for (place, height) in tilted.heights.iter_mut().enumerate() {
            *height += 30.0 + 0.02 * book.xs[place] - 0.01 * book.ys[place];
        }
        assert_same(&found(&tilted, |shot| shot), &found(&book, |shot| shot), 1e-9);
    }
}
