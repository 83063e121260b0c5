//! The triangulated surface of the old slab.
