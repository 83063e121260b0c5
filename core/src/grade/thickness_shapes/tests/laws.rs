//! Laws over random surveys.

use super::support::{assert_near, metres, places, random, ring_area, shoelace};
use crate::grade::finish::Finish;
use crate::grade::thickness::Thickness;
use crate::grade::thickness_shapes::{Field, Levels, Side};
use crate::quantity::{Length, Typed};
use crate::survey::Survey;

const SURVEYS: u64 = 60;

fn height(finish: &Finish, at: crate::geometry::Point) -> f64 {
    finish.plane().expect("one plane").height_at(at)
}

fn field(survey: &Survey, finish: &Finish) -> Field<Length> {
    Field::thickness(survey, finish).expect("a field")
}

/// Depths from under the least to over the greatest thickness.
fn depths(field: &Field<Length>) -> impl Iterator<Item = Length> {
    let [least, greatest] = field.reach().map(Typed::base);
    (-1..=9).map(move |step| metres(least + (greatest - least) * (f64::from(step) + 0.37) / 8.0))
}

#[test]
fn a_work_is_one_part_with_its_holes() {
    for seed in 1..=SURVEYS {
        let (survey, finish) = random(seed);
        let all = field(&survey, &finish).areas(metres(90.0), Side::Thinner).expect("areas");
        assert_eq!(all.parts.len(), 1, "survey {seed}");
        assert_eq!(all.parts[0].shape.holes.len(), survey.outline().holes().len(), "survey {seed}");
        assert_near(shoelace(&all.parts[0].shape), survey.outline().region().area(), 1e-9);
    }
}

#[test]
fn rings_hold_the_exact_area_and_both_sides_are_the_whole() {
    for seed in 1..=SURVEYS {
        let (survey, finish) = random(seed);
        let field = field(&survey, &finish);
        for depth in depths(&field) {
            let exact = Thickness::of(&survey, &finish, Some(depth)).expect("a thickness");
            let [thinner, thicker] =
                [Side::Thinner, Side::Thicker].map(|side| field.areas(depth, side).expect("areas"));
            let all = exact.area.base();
            assert_near(thinner.area.base(), exact.thinner.expect("an area").base(), 1e-11 * all);
            assert_near(thinner.area.base() + thicker.area.base(), all, 1e-11 * all);
            let over = exact.net.base() - depth.base() * all;
            assert_near(thicker.volume.base() - thinner.volume.base(), over, 1e-11 * all);
            for areas in [thinner, thicker] {
                let drawn: f64 = areas.parts.iter().map(|part| shoelace(&part.shape)).sum();
                assert_near(drawn, areas.area.base(), 1e-9 * all);
                for part in &areas.parts {
                    assert_near(shoelace(&part.shape), part.area.base(), 1e-10 * all);
                    assert!(ring_area(&places(&part.shape.outer)) > 0.0);
                    assert!(part.shape.holes.iter().all(|hole| ring_area(&places(hole)) < 0.0));
                    let beyond = part.extreme.thickness.base() - depth.base();
                    assert!(if areas.side == Side::Thinner { beyond < 0.0 } else { beyond >= 0.0 });
                }
            }
        }
    }
}

#[test]
fn bands_and_bins_add_up_to_the_whole() {
    for seed in 1..=SURVEYS {
        let (survey, finish) = random(seed);
        let field = field(&survey, &finish);
        let whole = Thickness::of(&survey, &finish, None).expect("a thickness");
        let all = whole.area.base();
        let listed = Levels::Listed(depths(&field).skip(2).step_by(2).collect());
        let every = Levels::Every { interval: metres(0.00635), from: metres(0.0) };
        for levels in [listed, every] {
            let bands = field.bands(&levels).expect("bands");
            let bins = field.histogram(&levels).expect("a histogram").bins;
            assert_eq!(bands.len(), bins.len());
            assert_near(bands.iter().map(|band| band.area.base()).sum(), all, 1e-11 * all);
            assert_near(bands.iter().map(|band| band.share.base()).sum(), 1.0, 1e-11);
            assert_near(bands.iter().map(|band| band.volume.base()).sum(), whole.net.base(), 1e-11 * all);
            for (band, bin) in bands.iter().zip(&bins) {
                assert_eq!((band.from, band.to), (bin.from, bin.to));
                assert_near(band.area.base(), bin.area.base(), 1e-12 * all);
                assert_near(band.volume.base(), bin.volume.base(), 1e-12 * all);
                let drawn: f64 = band.parts.iter().map(|part| shoelace(&part.shape)).sum();
                assert_near(drawn, band.area.base(), 1e-9 * all);
                if let Some(to) = bin.to {
                    let exact = Thickness::of(&survey, &finish, Some(to)).expect("a thickness").thinner;
                    assert_near(bin.thinner.base() * all, exact.expect("an area").base(), 1e-10 * all);
                }
            }
        }
    }
}

#[test]
fn as_much_as_was_asked_lies_below_a_quantile() {
    for seed in 1..=SURVEYS {
        let (survey, finish) = random(seed);
        let field = field(&survey, &finish);
        let shares: Vec<_> = (0..=20).map(|step| Typed::from_base(f64::from(step) / 20.0)).collect();
        let found = field.quantiles(&shares).expect("quantiles");
        let whole = Thickness::of(&survey, &finish, None).expect("a thickness");
        assert_near(found[0].thickness.base(), whole.least.thickness.base(), 1e-12);
        assert_near(found[20].thickness.base(), whole.greatest.thickness.base(), 1e-12);
        assert!(found.windows(2).all(|pair| pair[0].thickness <= pair[1].thickness));
        for quantile in &found {
            let below =
                Thickness::of(&survey, &finish, Some(quantile.thickness)).expect("a thickness").thinner;
            assert_near(below.expect("an area").base() / whole.area.base(), quantile.share.base(), 1e-10);
        }
    }
}

#[test]
fn contour_lines_bound_what_is_below_them_and_end_on_the_outline() {
    for seed in 1..=SURVEYS {
        let (survey, finish) = random(seed);
        let field = field(&survey, &finish);
        let region = survey.outline().region();
        for depth in depths(&field) {
            let lines = field.contours(&Levels::Listed(vec![depth])).expect("contours");
            let below = field.areas(depth, Side::Thinner).expect("areas");
            let above = field.areas(depth, Side::Thicker).expect("areas");
            // Both sides' rings run along the lines, and together along all of the outline.
            let around = |areas: &crate::grade::thickness_shapes::ThicknessAreas| -> f64 {
                let rings = areas.parts.iter().flat_map(|part| part.shape.rings().collect::<Vec<_>>());
                rings
                    .map(|ring| {
                        let ring = places(ring);
                        ring.iter().zip(ring.iter().cycle().skip(1)).map(|(a, b)| a.distance(*b)).sum::<f64>()
                    })
                    .sum()
            };
            let length: f64 = lines.iter().map(|line| line.length.base()).sum();
            assert_near(
                around(&below) + around(&above),
                region.perimeter() + 2.0 * length,
                1e-9 * region.perimeter(),
            );
            for line in &lines {
                let ends = [line.places[0], line.places[line.places.len() - 1]]
                    .map(crate::survey::outline::Corner::place);
                if line.closed {
                    assert_eq!(ends[0], ends[1]);
                } else {
                    assert!(ends.iter().all(|end| region.nearest_run(*end).distance < 1e-9), "survey {seed}");
                }
                for place in places(&line.places) {
                    let old = crate::survey::surface::Locator::new(survey.surface().whole())
                        .at(place)
                        .expect("on the work");
                    assert_near(height(&finish, place) - old.height, depth.base(), 1e-9);
                }
            }
        }
    }
}
