//! The triangles of one or several cuts over shared corners.

use super::Cut;
use crate::geometry::network::{Joined, Made, Network};

/// Cuts as one network, in the axes of the job.
#[derive(Clone, Debug)]
pub(crate) struct Welded {
    /// The triangles over shared corners; a triangle's parent is the number of its piece, one cut after the other.
    pub(crate) network: Network,
    /// Which corner of the network every node of every cut became, one cut after the other.
    became: Vec<u32>,
    /// The corners of the network that no node is.
    made: Vec<Made>,
}

/// Joins cuts that tile neighbouring regions (or one cut with itself: its cutting made corners twice).
pub(crate) fn weld<'a>(cuts: impl IntoIterator<Item = &'a Cut>) -> Welded {
    let (mut corners, mut triangles) = (Vec::new(), Vec::new());
    for cut in cuts {
        let (first, origin) = (corners.len() as u32, cut.origin());
        corners.extend(cut.nodes().iter().map(|node| [node.x + origin.x, node.y + origin.y, node.z]));
        triangles.extend(cut.pieces().iter().map(|piece| piece.corners.map(|corner| corner + first)));
    }
    let Joined { network, became, made } = Network::joined(&corners, &triangles);
    Welded { network, became, made }
}

impl Welded {
    /// What was known at every node of every cut, at every corner of the network. Of nodes that became one corner the
    /// first tells.
    pub(crate) fn at_corners<T: Copy>(
        &self,
        of_nodes: &[T],
        none: T,
        between: impl Fn(T, T, f64) -> T,
    ) -> Vec<T> {
        let mut values = vec![none; self.network.corners().len()];
        for (&corner, &value) in self.became.iter().zip(of_nodes).rev() {
            values[corner as usize] = value;
        }
        for made in &self.made {
            let [from, to] = made.ends.map(|end| values[end as usize]);
            values[made.corner as usize] = between(from, to, made.share);
        }
        values
    }

    /// The numbers of a field at every corner of the network, from those at every node of every cut.
    pub(crate) fn field(&self, of_nodes: &[f64]) -> Vec<f64> {
        self.at_corners(of_nodes, 0.0, |from, to, share| from + share * (to - from))
    }
}
