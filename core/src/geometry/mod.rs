//! Plane geometry that the survey and the grade share: points, regions, exact clipping, careful sums.
