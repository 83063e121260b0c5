//! The triangles of one or several cuts over shared corners.

use super::Cut;
use crate::geometry::Point;
use crate::geometry::network::Network;

/// Cuts as one network, in the axes of the job.
#[derive(Clone, Debug)]
pub(crate) struct Welded {
    /// The triangles over shared corners.
    pub(crate) network: Network,
    /// Which corner of the network every node of every cut became, one cut after the other.
    pub(crate) became: Vec<u32>,
}

/// Joins cuts that tile neighbouring regions (or one cut with itself: its cutting made corners twice).
pub(crate) fn weld<'a>(cuts: impl IntoIterator<Item = &'a Cut>) -> Welded {
    let (mut corners, mut triangles) = (Vec::new(), Vec::new());
    for cut in cuts {
        let (first, origin) = (corners.len() as u32, cut.origin());
        corners.extend(cut.nodes().iter().map(|node| Point::new(node.x + origin.x, node.y + origin.y)));
        triangles.extend(cut.pieces().iter().map(|piece| piece.corners.map(|corner| corner + first)));
    }
    let (network, became) = Network::welded(&corners, &triangles);
    Welded { network, became }
}
