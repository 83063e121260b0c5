//! What the surface must do, from cases worked by hand to laws that hold for every survey.

mod beyond;
mod drawing;
mod faces;
mod hand;
mod heights;
mod laws;
mod merging;
mod nasty;
mod polygons;
mod refusals;
mod scale;
mod steps;
mod support;
mod tributary;
mod unsurveyed;
mod welded;
