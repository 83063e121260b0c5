//! A direction in words: towards an edge, or between two.

use crate::geometry::RingId;
use crate::survey::outline::Outline;

/// A direction this near to square to an edge goes towards it (a cosine): 10 degrees.
const SQUARE: f64 = 0.984_807_753_012_208;

/// The edges of the work that a direction goes towards: the one it is most nearly square to, and the one on its other side.
pub(super) fn toward(outline: &Outline, down: [f64; 2]) -> String {
    let runs = outline.region().runs().filter(|run| run.id.ring == RingId::Outer);
    let faced: Vec<Faced> = runs
        .enumerate()
        .filter_map(|(order, run)| {
            let (dx, dy) = (run.to.x - run.from.x, run.to.y - run.from.y);
            let length = dx.hypot(dy);
            let out = [dy / length, -dx / length];
            let straight = out[0] * down[0] + out[1] * down[1];
            let turned = out[0] * down[1] - out[1] * down[0];
            let name = outline.run(run.id)?.name().to_owned();
            (straight > 0.0).then_some(Faced { order, straight, turned, name })
        })
        .collect();
    let nearest = |side: &dyn Fn(f64) -> bool| {
        let on_side = faced.iter().filter(|faced| side(faced.turned));
        on_side.reduce(|best, next| if next.straight > best.straight { next } else { best })
    };
    match (nearest(&|turned| turned < 0.0), nearest(&|turned| turned >= 0.0)) {
        (Some(left), Some(right)) => between(left, right),
        (Some(one), None) | (None, Some(one)) => format!("towards {}", one.name),
        (None, None) => "away from every edge".to_owned(),
    }
}

/// An edge that a direction goes towards.
struct Faced {
    order: usize,
    /// The cosine and the sine of the turn from square to it.
    straight: f64,
    turned: f64,
    name: String,
}

/// Cosines nearer than this are alike.
const ALIKE: f64 = 1e-9;

fn between(left: &Faced, right: &Faced) -> String {
    let alike = (left.straight - right.straight).abs() <= ALIKE;
    let left_first = if alike { left.order < right.order } else { left.straight > right.straight };
    let (first, second) = if left_first { (left, right) } else { (right, left) };
    if first.straight >= SQUARE || first.name == second.name {
        format!("towards {}", first.name)
    } else {
        format!("between {} and {}", first.name, second.name)
    }
}
