//! What a suspect changes in the volume, and the slab without shots.

use super::books::Book;
use crate::failure::Code;
use crate::note::NoteCode;
use crate::quantity::Typed;
use crate::survey::trust::suspects;
use crate::survey::varied::Varied;

#[test]
fn volumes_are_those_of_the_slab_built_again() {
    let mut weighed = 0;
    for seed in 1..30 {
        let mut varied = Varied::new(seed);
        let mut book = Book::invented(&mut varied);
        let place = varied.count(0, book.heights.len());
        book.heights[place] += 0.3048;
        let survey = book.survey();
        let under = |survey: &crate::survey::Survey| survey.surface().whole().integrals().height;
        for suspect in suspects(&survey, None).list {
            if let (Some(more), Some(proposed)) = (suspect.more_if_corrected, suspect.proposed) {
                let mut mended = book.clone();
                mended.heights[suspect.shot] = proposed.base();
                let expected = under(&survey) - under(&mended.survey());
                assert!((more.base() - expected).abs() < 1e-9, "{more:?} {expected}");
                weighed += 1;
            }
            let left = survey.without_named(&[&suspect.name]).unwrap();
            let expected = under(&survey) - under(&left);
            assert!((suspect.more_without.unwrap().base() - expected).abs() < 1e-12);
        }
    }
    assert!(weighed > 20, "{weighed}");
}

#[test]
fn shots_are_left_out_by_name_and_said_so() {
    let mut varied = Varied::new(2);
    let book =
        std::iter::repeat_with(|| Book::invented(&mut varied)).find(|book| book.columns.is_none()).unwrap();
    let survey = book.survey();
    let left = survey.without_named(&[" SHOT 3"]).unwrap();
    assert_eq!(left.shots().count(), survey.shots().count() - 1);
    // The others keep their names, also once more.
    assert_eq!(left.shots().name(2), "shot 4");
    assert_eq!(left.without_named(&["shot 4"]).unwrap().shots().name(2), "shot 5");
    assert!(left.notes().iter().any(|note| note.code == NoteCode::LeftOut && note.text.contains("shot 3")));
    let failure = left.without_named(&["shot 5", "shot 3"]).unwrap_err();
    assert_eq!((failure.code, failure.place), (Code::ShotUnknown, crate::failure::Place::Index(1)));
}
