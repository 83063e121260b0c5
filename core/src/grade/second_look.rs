//! The shots that fix the grade, always up for a second look.
//!
//! Least concrete fits a whole floor to its highest shot. That shot is looked at again whether or not it goes with its
//! neighbours: a minute with the rod against yards of concrete.

use super::finish::Finish;
use crate::quantity::{Length, Typed, Volume, feet_and_inches, number_in, volume};
use crate::survey::Survey;
use crate::survey::trust::suspects;

/// Shots within this of the least thickness fix the grade together, in metres: 1/8 in, what is set out on site.
const TOGETHER: f64 = crate::quantity::units::INCH / 8.0;

/// A drop of less than this is not told, in metres: 1/16 in.
const TOLD: f64 = crate::quantity::units::INCH / 16.0;

/// A shot with the least thickness over it.
#[derive(Clone, Debug, PartialEq)]
pub struct GoverningShot {
    /// Its name.
    pub name: String,
    /// Distance from the left and from the front.
    pub at: [Length; 2],
    /// The thickness over it.
    pub thickness: Length,
    /// How far the finish could drop if this shot alone did not count.
    pub drop_without: Length,
    /// The concrete that this would save.
    pub saved: Volume,
    /// Why to look again, for the crew.
    pub said: String,
}

/// The shots that fix the grade under a finish.
#[derive(Clone, Debug, PartialEq)]
pub struct SecondLook {
    /// They, the thinnest first.
    pub governing: Vec<GoverningShot>,
    /// How far the finish could drop if none of them counted.
    pub drop_without_all: Length,
}

/// The shots with the least thickness of concrete over them, and what each costs.
///
/// Between shots the old slab is plane, so under a plane finish nothing between them is thinner; where facets meet in a valley
/// it may be. What was ground off or filled counts as it is now. Extended ground beyond the shots is not looked at, nor shots where there is no finish.
#[must_use]
pub fn second_look(survey: &Survey, finish: &Finish) -> SecondLook {
    let over = survey.heights().filter_map(|(shot, [x, y], height)| {
        let thickness = finish.height_at(x, y)? - height;
        Some((thickness.base(), shot, [x, y]))
    });
    let mut thinnest: Vec<_> = over.collect();
    thinnest.sort_by(|a, b| {
        let place = |at: [Length; 2]| (at[0].base(), at[1].base());
        let ((ax, ay), (bx, by)) = (place(a.2), place(b.2));
        a.0.total_cmp(&b.0).then(ay.total_cmp(&by)).then(ax.total_cmp(&bx))
    });
    let Some(&(least, ..)) = thinnest.first() else {
        return SecondLook { governing: Vec::new(), drop_without_all: Length::from_base(0.0) };
    };
    let together = thinnest.iter().take_while(|(thickness, ..)| *thickness <= least + TOGETHER).count();
    let next = |index: usize| thinnest.get(index).map_or(least, |(thickness, ..)| *thickness);
    let drop_without_all = Length::from_base(next(together) - least);
    let (area, suspected) = (survey.surface().whole().area(), suspects(survey, None));
    let shot = |(index, &(thickness, shot, at)): (usize, &(f64, usize, [Length; 2]))| {
        let drop = if index == 0 { next(1) - least } else { 0.0 };
        let suspicion = suspected.list.iter().find(|suspect| suspect.shot == shot);
        let mut governing = GoverningShot {
            name: survey.shots().name(shot),
            at,
            thickness: Length::from_base(thickness),
            drop_without: Length::from_base(drop),
            saved: Volume::from_base(drop * area),
            said: String::new(),
        };
        governing.said = governing.sentence(together, suspicion.map(|suspect| suspect.said.as_str()));
        governing
    };
    SecondLook { governing: thinnest.iter().enumerate().take(together).map(shot).collect(), drop_without_all }
}

impl GoverningShot {
    fn sentence(&self, together: usize, suspicion: Option<&str>) -> String {
        let fixes = if together == 1 { "alone fixes the grade" } else { "fixes the grade with others" };
        let mut text = format!("{} {fixes}: {} over it", self.name, feet_and_inches(self.thickness, 16));
        if self.drop_without.base() >= TOLD {
            let saved = number_in(self.saved, &volume::unit::cubic_yard, 2);
            let drop = feet_and_inches(self.drop_without, 16);
            text += &format!(", without it the new floor could drop {drop} and save {saved}");
        }
        match suspicion {
            Some(said) => text + ". " + said,
            None => text + ". It goes with its neighbours; look again all the same",
        }
    }
}
