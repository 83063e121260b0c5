use super::*;

fn ends(network: &Network) -> Vec<[u32; 2]> {
    let mut border = network.border();
    border.sort_unstable();
    border
}

#[test]
fn two_triangles_that_share_a_side_know_each_other() {
    // The second triangle has its own copies of the shared corners, a rounding away.
    let corners = [
        [0.0, 0.0, 1.0],
        [1.0, 0.0, 1.0],
        [0.0, 1.0, 2.0],
        [1.0, 1e-12, 1.0],
        [1.0, 1.0, 3.0],
        [-1e-12, 1.0, 2.0 + 1e-12],
    ];
    let Joined { network, became, made } = Network::joined(&corners, &[[0, 1, 2], [3, 4, 5]]);
    assert_eq!((network.corners().len(), made.len()), (4, 0));
    assert_eq!((became[3], became[5]), (became[1], became[2]));
    assert_eq!(network.neighbours()[0], [BORDER, 1, BORDER]);
    assert_eq!(network.neighbours()[1], [BORDER, BORDER, 0]);
}

#[test]
fn a_triangle_welded_to_a_line_is_left_out() {
    let corners = [[0.0, 0.0, 0.0], [1e-9, 0.0, 0.0], [0.0, 1.0, 0.0]];
    assert!(Network::joined(&corners, &[[0, 1, 2]]).network.triangles().is_empty());
}

/// One large triangle, and on two of its sides two small ones each that meet amid the side.
#[test]
fn a_side_met_in_part_is_split_at_the_corner_on_it() {
    let corners = [
        [0.0, 0.0, 0.0],
        [4.0, 0.0, 4.0],
        [0.0, 4.0, 0.0],
        [1.0, 1e-9, 1.0],
        [2.0, -2.0, 2.0],
        [-2.0, 2.0, 0.0],
        [0.0, 1.0, 0.0],
    ];
    let triangles = [[0, 1, 2], [0, 4, 3], [4, 1, 3], [0, 6, 5], [6, 2, 5]];
    let Joined { network, made, .. } = Network::joined(&corners, &triangles);
    assert!(made.is_empty());
    assert_eq!(network.triangles().len(), 7);
    assert_eq!(network.parents(), [0, 0, 0, 1, 2, 3, 4]);
    assert_eq!(ends(&network), [[0, 4], [1, 2], [2, 5], [4, 1], [5, 0]]);
}

/// Both sides of a step have corners of their own, and each is split where the other has one.
#[test]
fn a_step_keeps_both_heights_and_is_no_border() {
    let corners = [
        [0.0, 0.0, 1.0],
        [4.0, 0.0, 2.0],
        [0.0, 4.0, 1.0],
        // The lower side, with a corner amid the step.
        [0.0, 0.0, 0.0],
        [1.0, 0.0, 0.5],
        [4.0, 0.0, 0.5],
        [2.0, -2.0, 0.0],
    ];
    let Joined { network, made, .. } = Network::joined(&corners, &[[0, 1, 2], [3, 6, 4], [6, 5, 4]]);
    assert_eq!(made, [Made { corner: 7, ends: [0, 1], share: 0.25 }]);
    let split = network.corners()[7];
    assert_eq!((split.height, split.place), (1.25, network.corners()[4].place));
    assert_eq!(network.triangles().len(), 4);
    assert_eq!(ends(&network), [[1, 2], [2, 0], [3, 6], [6, 5]]);
}
