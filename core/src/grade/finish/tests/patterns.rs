use super::support::*;
use crate::failure::Code;
use crate::grade::finish::patterns::{
    BreakLine, DrainSet, EdgeTrench, LineTrench, Reach, Strip, ToDrain, Toward,
};
use crate::grade::finish::{Beyond, Finish, FinishPoint};
use crate::grade::thickness::Thickness;
use crate::quantity::{Length, Slope, Typed};
use crate::survey::Survey;

const SIX_BY_FOUR: [(f64, f64); 4] = [(0.0, 0.0), (6.0, 0.0), (6.0, 4.0), (0.0, 4.0)];
/// An L: the corner at (2, 2) points inward.
const CORNERED: [(f64, f64); 6] = [(0.0, 0.0), (6.0, 0.0), (6.0, 2.0), (2.0, 2.0), (2.0, 5.0), (0.0, 5.0)];

fn point(x: f64, y: f64, z: f64) -> FinishPoint {
    FinishPoint { x: metres(x), y: metres(y), elevation: height(z) }
}

fn line(from: (f64, f64, f64), to: (f64, f64, f64)) -> BreakLine {
    BreakLine { from: point(from.0, from.1, from.2), to: point(to.0, to.1, to.2) }
}

fn slope(share: f64) -> Slope {
    Slope::from_base(share)
}

fn fill(slab: &Survey, finish: &Finish) -> f64 {
    let thickness = Thickness::of(slab, finish, None).unwrap();
    close(thickness.area.base(), slab.outline().region().area());
    thickness.net.base()
}

fn height_at(finish: &Finish, x: f64, y: f64) -> f64 {
    finish.height_at(metres(x), metres(y)).unwrap().base()
}

fn drain(x: f64, y: f64, set: DrainSet, rim: Option<[f64; 2]>) -> ToDrain {
    ToDrain { x: metres(x), y: metres(y), elevation: height(10.2), set, rim: rim.map(|rim| rim.map(metres)) }
}

/// Two wedges: half the height at the walls over all of the area.
#[test]
fn a_valley_holds_two_wedges() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let valley = line((2.0, 0.0, 10.0), (2.0, 4.0, 10.0));
    let finish = Finish::to_valley(slab.outline(), &valley, [slope(0.02), slope(0.01)]).unwrap();
    // Looking along +y the left is where x is small.
    close(fill(&slab, &finish), 4.0 * (2.0 * 0.02 + 4.0 * 0.02));
    assert_eq!(finish.facet_name(0), "left");
    assert_eq!(finish.drains_over(0), [Beyond::Facet(1)]);
    assert_eq!(finish.drains_over(1), [Beyond::Facet(0)]);
    let crown = Finish::crown(slab.outline(), &valley, [slope(0.02), slope(0.01)]).unwrap();
    close(fill(&slab, &crown), -0.48);
    assert_eq!(crown.drains_over(0), [Beyond::Edge]);
}

#[test]
fn a_valley_may_run_askew_and_fall_along_its_length() {
    let slab = slab(&CORNERED, &[]);
    let valley = line((1.0, 0.0, 10.2), (3.0, 4.0, 10.1));
    let finish = Finish::to_valley(slab.outline(), &valley, [slope(0.02), slope(0.02)]).unwrap();
    fill(&slab, &finish);
    close(height_at(&finish, 1.25, 0.5), 10.1875);
    // Square to the valley: 1 m to the left.
    let (dx, dy) = (-4.0 / 20_f64.sqrt(), 2.0 / 20_f64.sqrt());
    close(height_at(&finish, 2.0 + dx, 2.0 + dy), 10.17);
}

#[test]
fn a_line_beside_the_work_is_refused() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let make = |from, to| Finish::to_valley(slab.outline(), &line(from, to), [slope(0.02), slope(0.02)]);
    refused(make((7.0, 0.0, 10.0), (7.0, 4.0, 10.0)), Code::OffWork, "no work on one side");
    refused(make((6.0, 0.0, 10.0), (6.0, 4.0, 10.0)), Code::OffWork, "no work on one side");
    refused(make((3.0, 0.0, 10.0), (3.0, 0.0, 10.1)), Code::FinishUndetermined, "two points at one place");
    assert_eq!(make((3.0, 0.0, 10.0), (3.0, 0.1, 11.0)).unwrap_err().code, Code::OutOfRange);
    assert_eq!(make((f64::NAN, 0.0, 10.0), (3.0, 0.1, 11.0)).unwrap_err().code, Code::NotFinite);
}

/// A pyramid is a third of its prism (Euclid XII 7), wherever its point.
#[test]
fn four_planes_to_a_drain_make_a_pyramid() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    for (x, y) in [(3.0, 2.0), (1.0, 0.5), (5.9, 3.9)] {
        let finish =
            Finish::to_drain(slab.outline(), &drain(x, y, DrainSet::At(height(10.0)), None)).unwrap();
        close(fill(&slab, &finish), 24.0 * 0.2 * (1.0 - 1.0 / 3.0));
        assert_eq!(finish.facets().len(), 4);
        assert!(finish.facets().iter().all(|facet| facet.falls_to() == Some("drain")));
    }
}

#[test]
fn a_drain_is_set_down_along_the_longest_or_the_shortest_way() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let make = |reach, rim| {
        Finish::to_drain(slab.outline(), &drain(3.0, 1.5, DrainSet::By(slope(0.02), reach), rim)).unwrap()
    };
    close(height_at(&make(Reach::Longest, None), 3.0, 1.5), 10.2 - 0.02 * 3_f64.hypot(2.5));
    close(height_at(&make(Reach::Shortest, None), 3.0, 1.5), 10.2 - 0.02 * 1.5);
    let rim = Some([1.0, 0.5]);
    close(height_at(&make(Reach::Longest, rim), 3.0, 1.5), 10.2 - 0.02 * 2.5_f64.hypot(2.25));
    close(height_at(&make(Reach::Shortest, rim), 3.0, 1.5), 10.2 - 0.02 * 1.25);
    close(make(Reach::Shortest, None).fall().base(), 0.02);
}

/// The hollow is a prismatoid: V = h (A1 + 4 Am + A2) / 6 (geometry).
#[test]
fn a_level_rim_makes_a_hopper() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let asked = drain(2.0, 1.5, DrainSet::At(height(10.0)), Some([1.0, 0.5]));
    let finish = Finish::to_drain(slab.outline(), &asked).unwrap();
    let hollow = 0.2 * (24.0 + 4.0 * (7.0 / 2.0) * (4.5 / 2.0) + 0.5) / 6.0;
    close(fill(&slab, &finish), 24.0 * 0.2 - hollow);
    assert_eq!(finish.facets().len(), 5);
    close(height_at(&finish, 2.3, 1.6), 10.0);
}

/// One corner may lie farthest out from two sides of the rim, and an edge may be called what a facet is.
#[test]
fn facets_of_a_pattern_are_told_apart() {
    let slab = slab(&[(0.0, 0.0), (6.0, 1.0), (1.0, 5.0)], &[]);
    let asked = drain(2.0, 2.0, DrainSet::At(height(10.0)), Some([0.4, 0.4]));
    let finish = Finish::to_drain(slab.outline(), &asked).unwrap();
    assert_eq!(finish.facets().len(), 3 + 4 + 1);
    fill(&slab, &finish);
    let edge = slab.outline().runs()[0].name().to_owned();
    let strip =
        |width| Strip { edge: edge.clone(), width: metres(width), fall: slope(0.1), toward: Toward::Edge };
    let level = Finish::level(height(10.1)).unwrap();
    let once = level.with_strip(slab.outline(), &strip(0.5)).unwrap();
    let twice = once.with_strip(slab.outline(), &strip(0.2)).unwrap();
    assert_eq!(twice.facets().len(), 3);
    fill(&slab, &twice);
}

#[test]
fn an_outline_that_the_drain_sees_whole_may_have_corners_inward() {
    let slab = slab(&CORNERED, &[]);
    for rim in [None, Some([0.3, 0.3])] {
        let asked = drain(1.0, 1.0, DrainSet::At(height(10.1)), rim);
        let finish = Finish::to_drain(slab.outline(), &asked).unwrap();
        fill(&slab, &finish);
        for (x, y) in CORNERED {
            close(height_at(&finish, x, y), 10.2);
        }
    }
    // From a leg the other one is out of sight.
    let hidden = Finish::to_drain(slab.outline(), &drain(5.0, 1.0, DrainSet::At(height(10.1)), None));
    refused(hidden, Code::CornerUnseen, "the corner at x 6' 6 3/4\", y 16' 4 7/8\" (2.000 m, 5.000 m)");
    let in_the_wall = Finish::to_drain(slab.outline(), &drain(3.0, 2.0, DrainSet::At(height(10.1)), None));
    assert_eq!(in_the_wall.unwrap_err().code, Code::CornerUnseen);
    let outside = Finish::to_drain(slab.outline(), &drain(4.0, 4.0, DrainSet::At(height(10.1)), None));
    refused(outside, Code::OffWork, "4.000 m");
    let above = Finish::to_drain(slab.outline(), &drain(1.0, 1.0, DrainSet::At(height(10.3)), None));
    refused(above, Code::Contradiction, "above the perimeter");
}

#[test]
fn a_column_takes_nothing_away_from_the_pattern() {
    let columned = slab(&SIX_BY_FOUR, &[&[(4.0, 1.0), (5.0, 1.0), (5.0, 2.0), (4.0, 2.0)]]);
    let asked = drain(2.0, 2.0, DrainSet::At(height(10.0)), Some([0.4, 0.4]));
    let finish = Finish::to_drain(columned.outline(), &asked).unwrap();
    let whole = slab(&SIX_BY_FOUR, &[]);
    let under_column =
        Thickness::within(&whole, &region(&[(4.0, 1.0), (5.0, 1.0), (5.0, 2.0), (4.0, 2.0)]), &finish, None);
    close(fill(&columned, &finish), fill(&whole, &finish) - under_column.unwrap().net.base());
    let in_column = drain(4.5, 1.5, DrainSet::At(height(10.0)), None);
    assert_eq!(Finish::to_drain(columned.outline(), &in_column).unwrap_err().code, Code::OffWork);
}

#[test]
fn a_trench_is_level_across() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let middle = line((0.0, 2.0, 10.1), (6.0, 2.0, 10.04));
    let trench = LineTrench { middle, width: metres(0.4), falls: [slope(0.02), slope(0.03)] };
    let finish = Finish::to_trench(slab.outline(), &trench).unwrap();
    close(fill(&slab, &finish), 24.0 * 0.07 + 6.0 * (1.8 * 1.8 / 2.0) * (0.02 + 0.03));
    close(height_at(&finish, 3.0, 2.15), 10.07);
    close(height_at(&finish, 3.0, 3.2), 10.09);
    let slot = Finish::to_trench(slab.outline(), &LineTrench { width: metres(0.0), ..trench }).unwrap();
    assert_eq!(slot.facets().len(), 2);
}

#[test]
fn a_trench_along_an_edge_starts_where_the_edge_does() {
    let ways = [SIX_BY_FOUR.to_vec(), SIX_BY_FOUR.iter().rev().copied().collect::<Vec<_>>()];
    for corners in ways {
        let slab = slab(&corners, &[]);
        // The run from (6, 0) to (6, 4), or from (6, 4) to (6, 0).
        let edge = slab.outline().runs().iter().find(|run| run.from().x.base() + run.to().x.base() == 12.0);
        let (edge, start) = edge.map(|run| (run.name().to_owned(), run.from().y.base())).unwrap();
        let trench = EdgeTrench {
            edge,
            elevation: height(10.1),
            elevation_end: height(10.02),
            width: metres(0.5),
            fall: slope(0.02),
        };
        let finish = Finish::to_edge_trench(slab.outline(), &trench).unwrap();
        close(height_at(&finish, 5.7, start), 10.1);
        close(height_at(&finish, 6.0, 4.0 - start), 10.02);
        close(height_at(&finish, 0.0, start), 10.1 + 5.5 * 0.02);
        fill(&slab, &finish);
    }
}

#[test]
fn a_strip_meets_the_floor_it_lies_beside() {
    let slab = slab(&SIX_BY_FOUR, &[]);
    let edge = slab.outline().runs()[0].name().to_owned();
    let strip = |toward| Strip { edge: edge.clone(), width: metres(0.5), fall: slope(0.1), toward };
    let level = Finish::level(height(10.1)).unwrap();
    let apron = level.with_strip(slab.outline(), &strip(Toward::Edge)).unwrap();
    close(height_at(&apron, 3.0, 0.0), 10.05);
    close(fill(&slab, &apron), 24.0 * 0.1 - 6.0 * 0.5 * 0.05 / 2.0);
    let curb = level.with_strip(slab.outline(), &strip(Toward::Floor)).unwrap();
    close(height_at(&curb, 3.0, 0.0), 10.15);
    // Across a valley the strip is parted with it.
    let valley = line((2.0, 0.0, 10.0), (3.0, 4.0, 10.1));
    let finish = Finish::to_valley(slab.outline(), &valley, [slope(0.02), slope(0.01)]).unwrap();
    let both = finish.with_strip(slab.outline(), &strip(Toward::Floor)).unwrap();
    assert_eq!(both.facets().len(), 4);
    fill(&slab, &both);
    close(height_at(&both, 5.0, 0.1), height_at(&finish, 5.0, 0.5) + 0.04);
    assert_eq!(
        level
            .with_strip(slab.outline(), &Strip { width: metres(4.0), ..strip(Toward::Edge) })
            .unwrap_err()
            .code,
        Code::OutOfRange
    );
}

#[test]
fn work_behind_an_edge_is_refused() {
    let slab = slab(&CORNERED, &[]);
    let edge = slab.outline().runs()[2].name().to_owned();
    let strip = Strip { edge, width: metres(0.5), fall: slope(0.1), toward: Toward::Edge };
    let level = Finish::level(height(10.1)).unwrap();
    refused(level.with_strip(slab.outline(), &strip), Code::BehindEdge, "behind");
}

/// The highest place is where a line between shots crosses the valley, not at a shot.
#[test]
fn a_finish_is_raised_by_the_worst_place_wherever_it_is() {
    let corners = SIX_BY_FOUR.map(|(x, y)| serde_json::json!({"x": format!("{x} m"), "y": format!("{y} m")}));
    let shots = [(0.0, 0.0, 10.0), (6.0, 0.0, 10.0), (0.0, 2.0, 10.05), (6.0, 2.0, 10.05), (0.0, 4.0, 10.0), (6.0, 4.0, 10.0)]
        .map(|(x, y, z)| serde_json::json!({"x": format!("{x} m"), "y": format!("{y} m"), "elevation": format!("{z} m")}));
    let json = serde_json::json!({"outline": {"corners": corners}, "shots": shots});
    let slab = <Survey as crate::operation::record::Record>::from_json(json).unwrap();
    let valley = line((2.0, 0.0, 9.0), (2.0, 4.0, 9.0));
    let finish = Finish::to_valley(slab.outline(), &valley, [slope(0.02), slope(0.01)]).unwrap();
    let raised = finish.raised(&slab, metres(0.08), None).unwrap();
    close(raised.by.base(), 1.13);
    close(raised.at.x.base(), 2.0);
    close(raised.at.y.base(), 2.0);
    assert_eq!((raised.at.shot, raised.facet.is_some()), (None, true));
    close(Thickness::of(&slab, &raised.finish, None).unwrap().least_measured.unwrap().thickness.base(), 0.08);
    let stepped = finish.raised(&slab, metres(0.08), Some(metres(0.02))).unwrap();
    close(stepped.by.base(), 1.14);
    close(stepped.rounded_by.base(), 0.01);
    // What stands high enough is lowered.
    close(finish.moved_up(metres(5.0)).raised(&slab, metres(0.08), None).unwrap().by.base(), 1.13 - 5.0);
    let none = Length::from_base(f64::NAN);
    assert_eq!(finish.raised(&slab, none, None).unwrap_err().code, Code::NotFinite);
}
