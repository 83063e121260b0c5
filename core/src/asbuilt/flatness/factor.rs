//! The constants of the F-numbers.

use crate::choice;

choice! {
    /// The constant over which flatness is told. The standard's text in inches and its text in millimetres, as remembered, do not
    /// say exactly the same.
    pub enum Factor {
        /// 4.57 in.
        Inches = "4.57 in",
        /// 115.8 mm, which is 0.24 % less.
        Millimetres = "115.8 mm",
    }
}

impl Factor {
    /// The constant for flatness, in metres.
    #[must_use]
    pub const fn flatness(self) -> f64 {
        match self {
            Self::Inches => 4.57 * 0.0254,
            Self::Millimetres => 0.1158,
        }
    }

    /// The constant for levelness, in metres: 12.5 in, which is 317.5 mm.
    pub const LEVELNESS: f64 = 12.5 * 0.0254;

    /// By what share the two constants differ: what is nearer to a limit than this cannot be judged from memory.
    pub const DOUBT: f64 = 1.0 - 0.1158 / (4.57 * 0.0254);
}
