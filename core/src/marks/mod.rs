//! What a crew sets out: heights at the walls, wet pads, forms.

pub mod operations;
