//! One zone under the minimum.

use super::asked::AskedOfThinZones;
use super::choice::{Choice, Cure};
use super::overlay::Overlay;
use super::plan_box::PlanBox;
use super::raise::Raising;
use super::{bond, break_out, grind, say};
use crate::grade::thickness_shapes::{PartExtreme, Shape, ThinPart};
use crate::quantity::{Area, Length, Money, Typed, Volume, feet_and_inches};
use crate::survey::Survey;

/// A connected zone thinner than the unbonded minimum.
#[derive(Clone, Debug, PartialEq)]
pub struct ThinZone {
    /// What it is called: zone 1 is the largest.
    pub name: String,
    /// Its polygon.
    pub shape: Shape,
    /// Its area.
    pub area: Area,
    /// The volume it lacks to the minimum.
    pub lacking: Volume,
    /// What its thinnest place lacks to the minimum.
    pub deficit: Length,
    /// What its thinnest place between the shots lacks; none where it lies wholly beyond them.
    pub deficit_measured: Option<Length>,
    /// The area of it beyond the shots, where the old slab is extended, not measured.
    pub beyond: Area,
    /// Its thinnest place.
    pub thinnest: PartExtreme,
    /// The name of the shot there, if it is at one.
    pub shot: Option<String>,
    /// The straight joints around it.
    pub bounds: PlanBox,
    /// The area of the work within them.
    pub boxed: Area,
    /// The length of the joints inside the work.
    pub joint: Length,
    /// Whether the edge of the work bounds a part of it.
    pub reaches_edge: bool,
    /// What may be done, in the order of [`Cure`].
    pub choices: Vec<Choice>,
}

/// What choices are worked out from.
pub(super) struct Basics<'a> {
    pub(super) asked: &'a AskedOfThinZones,
    pub(super) raising: Raising<'a>,
    pub(super) overlay: Overlay,
}

impl ThinZone {
    pub(super) fn of(survey: &Survey, (index, found): (usize, ThinPart), basics: &Basics<'_>) -> Self {
        let ThinPart { part, high, beyond, least_measured } = found;
        let bounds = PlanBox::around(&part.shape);
        let (joint, reaches_edge) = bounds.joint(survey.outline().region());
        let boxed = basics.overlay.within(&bounds);
        let mut zone = Self {
            name: format!("zone {}", index + 1),
            shape: part.shape,
            area: part.area,
            lacking: part.volume,
            deficit: basics.asked.minimum - part.extreme.thickness,
            deficit_measured: least_measured.map(|least| basics.asked.minimum - least),
            beyond,
            thinnest: part.extreme,
            shot: part.extreme.shot.map(|shot| survey.shots().name(shot)),
            bounds,
            boxed: boxed.area(),
            joint,
            reaches_edge,
            choices: Vec::with_capacity(4),
        };
        zone.choices = vec![
            basics.raising.for_zone(&zone, basics.asked),
            bond::of_zone(&zone, basics.asked),
            grind::of_zone(&zone, high, basics.asked),
            break_out::of_zone(&zone, &boxed, basics.asked),
        ];
        zone
    }

    /// The choice of that kind.
    #[must_use]
    pub fn choice(&self, cure: Cure) -> Option<&Choice> {
        self.choices.iter().find(|choice| choice.cure == cure)
    }

    /// The cheapest choice that is enough, among those that have a price.
    #[must_use]
    pub fn cheapest(&self) -> Option<&Choice> {
        cheapest(self.choices.iter()).map(|(choice, _)| choice)
    }

    /// The cheapest that leaves the finish as it is.
    pub(super) fn cheapest_here(&self) -> Option<Money> {
        cheapest(self.choices.iter().filter(|choice| choice.cure != Cure::Raise)).map(|(_, money)| money)
    }

    /// Where its thinnest place is, in words.
    #[must_use]
    pub fn thinnest_place(&self) -> String {
        self.shot.as_ref().map_or_else(
            || {
                let at = &self.thinnest;
                format!(
                    "{} from the left, {} from the front",
                    feet_and_inches(at.x, 8),
                    feet_and_inches(at.y, 8)
                )
            },
            String::clone,
        )
    }

    /// Where its straight joints run, in words: outward to whole inches.
    pub(super) fn said_bounds(&self) -> String {
        let PlanBox { from, to } = &self.bounds;
        let (x, y) = (say::span(from.x, to.x), say::span(from.y, to.y));
        let joint = if self.joint.base() > 0.0 {
            format!("with {} of straight full-depth joint around it", say::along(self.joint))
        } else {
            "with no joint, for the edges of the work bound it".to_owned()
        };
        format!("within {x} from the left and {y} from the front, {joint}")
    }
}

fn cheapest<'a>(choices: impl Iterator<Item = &'a Choice>) -> Option<(&'a Choice, Money)> {
    let priced = choices.filter_map(|choice| Some((choice, choice.price_if_enough()?)));
    priced.min_by(|(_, a), (_, b)| a.base().total_cmp(&b.base()))
}
