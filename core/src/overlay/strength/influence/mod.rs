//! How a load bends a large plate on springs at a distance: the exact solution for a load spread evenly over a circle.
//!
//! With `K0`, `I0` the modified Bessel functions, `s = exp(i pi / 4)`, `x = r / l`, `c = a / l`, the mean of `K0(s x)` over the circle is
//! `F = K0(s x) 2 I1(s c) / (s c)` outside it and `F = 2 / (s c)^2 (1 - s c K1(s c) I0(s x))` inside. Then
//! `w = -P / (2 pi k l^2) Im F`, and with `Q = F' / x`:
//! `Mr = P / (2 pi) (Re F - (1 - nu) Im Q)`, `Mt = P / (2 pi) (nu Re F + (1 - nu) Im Q)`.
//! For a point load `F = K0(s x) = ker x + i kei x`: the solution of Hertz in Kelvin functions.

mod bessel;
mod disc;
#[cfg(test)]
mod tests;

pub use disc::{DISTANCE, Influence, influence};

pub(crate) use disc::disc;
