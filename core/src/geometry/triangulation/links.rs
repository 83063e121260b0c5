//! Half-edges and the rings they form around points and faces.

/// No half-edge.
pub(crate) const NONE: u32 = u32::MAX;

/// Half-edge `e` and its other half `e ^ 1` lie beside one another.
#[derive(Clone, Copy, Debug)]
struct HalfEdge {
    /// The point it starts from; `NONE` once it is taken out.
    from: u32,
    /// The next half-edge from the same point, counter-clockwise.
    next: u32,
    /// The next half-edge from the same point, clockwise.
    previous: u32,
    /// Free for whoever walks over the edges.
    mark: u32,
}

/// Half-edges linked into rings around the points they start from.
#[derive(Clone, Debug)]
pub(crate) struct Links {
    edges: Vec<HalfEdge>,
    /// The first edge that was taken out and may be used again.
    spare: u32,
}

impl Links {
    /// No edges yet, room for the given number of them.
    pub(crate) fn with_capacity(edges: usize) -> Self {
        Self { edges: Vec::with_capacity(2 * edges), spare: NONE }
    }

    /// One more than the greatest half-edge number.
    pub(crate) fn len(&self) -> usize {
        self.edges.len()
    }

    /// All half-edges in use.
    pub(crate) fn alive(&self) -> impl Iterator<Item = u32> + '_ {
        (0u32..).zip(&self.edges).filter(|(_, e)| e.from != NONE).map(|(i, _)| i)
    }

    /// Both ends of every edge in use.
    pub(crate) fn edges(&self) -> impl Iterator<Item = [u32; 2]> + '_ {
        let pairs = self.edges.chunks_exact(2).map(|halves| [halves[0].from, halves[1].from]);
        pairs.filter(|ends| ends[0] != NONE)
    }

    /// The point a half-edge starts from.
    #[inline]
    pub(crate) fn from(&self, edge: u32) -> u32 {
        self.edges[edge as usize].from
    }

    /// The point a half-edge ends at.
    #[inline]
    pub(crate) fn to(&self, edge: u32) -> u32 {
        self.edges[(edge ^ 1) as usize].from
    }

    /// The next half-edge from the same point, counter-clockwise.
    #[inline]
    pub(crate) fn next(&self, edge: u32) -> u32 {
        self.edges[edge as usize].next
    }

    /// The next half-edge from the same point, clockwise.
    #[inline]
    pub(crate) fn previous(&self, edge: u32) -> u32 {
        self.edges[edge as usize].previous
    }

    /// The half-edge that follows along the face on the left.
    #[inline]
    pub(crate) fn around_left(&self, edge: u32) -> u32 {
        self.edges[(edge ^ 1) as usize].previous
    }

    /// What was last marked on a half-edge; zero on a new one.
    #[inline]
    pub(crate) fn mark(&self, edge: u32) -> u32 {
        self.edges[edge as usize].mark
    }

    /// Marks a half-edge.
    #[inline]
    pub(crate) fn set_mark(&mut self, edge: u32, mark: u32) {
        self.edges[edge as usize].mark = mark;
    }

    /// A loose edge between two points.
    #[inline]
    pub(super) fn add(&mut self, from: u32, to: u32) -> u32 {
        let edge = if self.spare == NONE { self.edges.len() as u32 } else { self.spare };
        let half = |from: u32, half: u32| HalfEdge { from, next: half, previous: half, mark: 0 };
        self.place(half(from, edge), half(to, edge ^ 1))
    }

    /// Stores both halves of an edge, where one was taken out if possible.
    #[inline]
    fn place(&mut self, forth: HalfEdge, back: HalfEdge) -> u32 {
        if self.spare == NONE {
            let edge = self.edges.len() as u32;
            self.edges.push(forth);
            self.edges.push(back);
            return edge;
        }
        let edge = self.spare;
        self.spare = self.edges[edge as usize].next;
        self.edges[edge as usize] = forth;
        self.edges[(edge ^ 1) as usize] = back;
        edge
    }

    /// Puts a loose half-edge into a ring, counter-clockwise after another.
    #[inline]
    pub(super) fn insert_after(&mut self, edge: u32, after: u32) {
        let next = self.edges[after as usize].next;
        self.edges[edge as usize].next = next;
        self.edges[edge as usize].previous = after;
        self.edges[next as usize].previous = edge;
        self.edges[after as usize].next = edge;
    }

    /// Takes a half-edge out of its ring.
    #[inline]
    fn unlink(&mut self, edge: u32) {
        let HalfEdge { next, previous, .. } = self.edges[edge as usize];
        self.edges[previous as usize].next = next;
        self.edges[next as usize].previous = previous;
    }

    /// Joins the end of `a` to the start of `b` across the face on the left of both.
    #[inline]
    pub(super) fn connect(&mut self, a: u32, b: u32) -> u32 {
        let after = self.around_left(a);
        let HalfEdge { from: start, next: next_at_start, .. } = self.edges[after as usize];
        let HalfEdge { from: end, next: next_at_end, .. } = self.edges[b as usize];
        let forth = HalfEdge { from: start, next: next_at_start, previous: after, mark: 0 };
        let back = HalfEdge { from: end, next: next_at_end, previous: b, mark: 0 };
        let edge = self.place(forth, back);
        self.edges[after as usize].next = edge;
        self.edges[next_at_start as usize].previous = edge;
        self.edges[b as usize].next = edge ^ 1;
        self.edges[next_at_end as usize].previous = edge ^ 1;
        edge
    }

    /// Takes an edge out.
    #[inline]
    pub(crate) fn remove(&mut self, edge: u32) {
        for half in [edge, edge ^ 1] {
            self.unlink(half);
            self.edges[half as usize].from = NONE;
        }
        let low = edge & !1;
        self.edges[low as usize].next = self.spare;
        self.spare = low;
    }

    /// Turns the edge between two triangles to their other two corners.
    pub(super) fn flip(&mut self, edge: u32) {
        let (a, b) = (self.previous(edge), self.previous(edge ^ 1));
        let (after_a, after_b) = (self.around_left(a), self.around_left(b));
        for (half, after) in [(edge, after_a), (edge ^ 1, after_b)] {
            self.unlink(half);
            self.insert_after(half, after);
            self.edges[half as usize].from = self.edges[after as usize].from;
        }
    }
}
