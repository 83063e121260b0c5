//! Which edges carry a form.

use super::rips::Material;
use super::walk::Edge;
use crate::failure::{Place, Result};
use crate::survey::outline::Outline;

/// What stands at each edge: a form where it is named, an isolation strip elsewhere.
pub(super) fn materials(edges: &[Edge], forms: &[String], outline: &Outline) -> Result<Vec<Material>> {
    for (index, name) in forms.iter().enumerate() {
        outline.edge(name).map_err(|failure| failure.under("forms.edge").at(Place::Index(index)))?;
    }
    let is_form = |edge: &Edge| forms.iter().any(|name| edge.is_called(name, outline));
    Ok(edges.iter().map(|edge| if is_form(edge) { Material::Form } else { Material::Strip }).collect())
}
