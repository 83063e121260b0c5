//! The surface over a part of its region.

use super::frame::Frame;
use super::tiling::{BETWEEN, BEYOND, IN_REGION, INSIDE, NO_SHOT, Tiling};
use super::{Cut, Node, Surface, SurfaceError};
use crate::geometry::Region;
use crate::geometry::clip::Vertex;

impl Surface {
    /// The surface over a part of its region. Parts that tile the region add up to the whole, for all are cut from the
    /// same triangles. What of the part is outside the region is left out.
    ///
    /// # Errors
    /// When the part and the region have no area in common.
    pub fn within(&self, part: &Region) -> Result<Cut, SurfaceError> {
        let frame = Frame::new(part, self.whole.origin());
        let nodes = self.whole.nodes();
        let mut tiling = Tiling::new(Vec::with_capacity(nodes.len()), self.whole.pieces().len());
        // The number of each node in the part, once it has one there.
        let mut numbers = vec![NO_SHOT; nodes.len()];
        let mut scratch = [Vec::new(), Vec::new()];
        let mut renumbered: Vec<Vertex> = Vec::with_capacity(8);
        for piece in self.whole.pieces() {
            let triangle = piece.corners.map(|corner| super::frame::vertex(nodes, corner));
            frame.cut(&triangle, &mut scratch, |kept| {
                renumbered.clear();
                renumbered.extend(kept.iter().map(|corner| Vertex {
                    id: number_in_part(corner.id, nodes, &mut numbers, &mut tiling.nodes),
                    ..*corner
                }));
                tiling.polygon(&renumbered, piece.ground, piece.source);
            });
        }
        if tiling.pieces.is_empty() {
            return Err(SurfaceError::Apart);
        }
        // Shots of the part that no triangle of it has as a corner: those a little outside the outline, on its run.
        for (id, node) in (0_u32..).zip(&nodes[..self.mesh.places]).filter(|(_, node)| node.has(IN_REGION)) {
            let clearance = frame.clearance(node.at());
            if clearance >= -frame.hair || (!node.has(INSIDE) && clearance >= -self.on_run) {
                let number = number_in_part(id, nodes, &mut numbers, &mut tiling.nodes);
                tiling.nodes[number as usize].flags |= IN_REGION;
            }
        }
        Ok(Cut::new(self.whole.origin(), tiling))
    }
}

/// The number of a node in a part; a new one where it has none there yet.
pub(super) fn number_in_part(id: u32, nodes: &[Node], numbers: &mut [u32], in_part: &mut Vec<Node>) -> u32 {
    // A corner made by the cut has no number yet.
    let Some(number) = numbers.get_mut(id as usize) else { return id };
    if *number == NO_SHOT {
        *number = in_part.len() as u32;
        let flags = nodes[id as usize].flags & !(BETWEEN | BEYOND | IN_REGION);
        in_part.push(Node { flags, ..nodes[id as usize] });
    }
    *number
}
