//! What is found in a thousand invented books, and what is taken for wrong in the same books without a slip.

use super::books::Book;
use crate::operation::Choice;
use crate::quantity::Typed;
use crate::survey::trust::{SlipKind, Suspect, suspects};
use crate::survey::varied::Varied;

/// How many books, and the tallies over them.
const BOOKS: u64 = 1_000;

#[derive(Clone, Copy, Default)]
struct Tally {
    planted: usize,
    found: usize,
    /// The kind is the first named.
    first: usize,
    /// The kind is the first or the second named.
    named: usize,
}

#[test]
fn planted_slips_are_found_and_named() {
    let (mut great, mut small) = (Tally::default(), [Tally::default(); 3]);
    let (mut books, mut clean, mut innocent) = ([0_usize; 3], [0_usize; 3], [0_usize; 3]);
    for seed in (1..=BOOKS).map(|seed| (seed + 250) % BOOKS + 1) {
        let mut varied = Varied::new(seed);
        let book = Book::invented(&mut varied);
        let texture = (book.texture as usize).min(2);
        let found = suspects(&book.survey(), None);
        books[texture] += 1;
        clean[texture] += usize::from(found.list.is_empty());
        innocent[texture] += found.list.len();
        let (place, up) = (varied.count(0, book.heights.len()), varied.count(0, 2) == 0);
        let plant = |slip: SlipKind| {
            let amount = slip.amount().unwrap().base();
            let mut wrong = book.clone();
            wrong.heights[place] += if up { amount } else { -amount };
            suspects(&wrong.survey(), None).list.into_iter().find(|suspect| suspect.shot == place)
        };
        let of_rod = SlipKind::on(found.graduation);
        let large: Vec<SlipKind> = of_rod
            .iter()
            .copied()
            .filter(|slip| slip.amount().unwrap() >= SlipKind::HalfAFoot.amount().unwrap())
            .collect();
        let slip = large[seed as usize / 3 % large.len()];
        let suspect = plant(slip);
        if suspect.as_ref().is_none_or(|s| s.kind != slip) {
            println!(
                "{seed} {slip:?} {:?} {:?}",
                suspect.as_ref().map(|s| &s.said),
                suspect.as_ref().map(|s| s.off.base() / s.deviation.base())
            );
        }
        great.count(suspect.as_ref(), slip);
        let least = of_rod[0];
        small[least as usize].count(plant(least).as_ref(), least);
    }
    println!("great {} found {} first {} named {}", great.planted, great.found, great.first, great.named);
    for (least, tally) in SlipKind::MEMBERS.iter().zip(&small) {
        println!(
            "{least:?} {} found {} first {} named {}",
            tally.planted, tally.found, tally.first, tally.named
        );
    }
    println!("books {books:?} clean {clean:?} innocent {innocent:?}");
    assert_eq!(great.found, great.planted);
    assert_eq!(great.named, great.planted);
    for tally in small {
        assert!(tally.found * 10 >= tally.planted * 9);
    }
}

impl Tally {
    fn count(&mut self, suspect: Option<&Suspect>, slip: SlipKind) {
        self.planted += 1;
        let Some(suspect) = suspect else { return };
        self.found += 1;
        self.first += usize::from(suspect.kind == slip);
        self.named += usize::from(suspect.kind == slip || suspect.second == Some(slip));
    }
}
