//! The formats by name.

crate::choice! {
    /// What a file of points is.
    pub enum Format {
        /// A table as text, its columns parted by commas, semicolons or tabs.
        Csv = "csv",
        /// Coordinates alone, line by line.
        Xyz = "xyz",
        /// The polygon file format: vertices and faces, as text or binary.
        Ply = "ply",
        /// The ASPRS laser format, LAS or its packed form LAZ.
        Las = "las",
        /// The ASTM E57 format of scanners.
        E57 = "e57",
        /// LandXML 1.0 to 1.2: points and triangulated surfaces.
        LandXml = "landxml",
    }
}

impl Format {
    /// What the word means.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::Csv => "a table as text, columns parted by commas, semicolons or tabs",
            Self::Xyz => "coordinates alone, line by line",
            Self::Ply => "vertices and faces, as text or binary",
            Self::Las => "laser points, LAS or LAZ",
            Self::E57 => "scans by ASTM E2807",
            Self::LandXml => "LandXML 1.0 to 1.2",
        }
    }
}
