//! What the readers take, refuse and leave out, and how they stand up to damaged files.

mod damage;
#[cfg(feature = "e57")]
mod e57;
#[cfg(feature = "landxml")]
mod landxml;
#[cfg(feature = "las")]
mod las;
mod ply;
mod tables;

use super::{Asked, Columns, FileUnit, Format, Reading, read_points};
use crate::failure::{Code, Failure};

/// The reading, or the failure in words.
fn points(bytes: impl AsRef<[u8]>, asked: &Asked) -> Reading {
    read_points(bytes.as_ref(), asked).unwrap_or_else(|failure| panic!("{failure}"))
}

fn refusal(bytes: impl AsRef<[u8]>, asked: &Asked) -> Failure {
    *read_points(bytes.as_ref(), asked).err().unwrap_or_else(|| panic!("it was read"))
}

fn code(bytes: impl AsRef<[u8]>, asked: &Asked) -> Code {
    refusal(bytes, asked).code
}

fn plain() -> Asked {
    Asked::default()
}

fn unit(unit: FileUnit) -> Asked {
    Asked { unit: Some(unit), ..Asked::default() }
}

fn columns(list: &str) -> Asked {
    Asked { columns: Some(Columns::read(list).unwrap()), ..Asked::default() }
}

impl Asked {
    fn overruling(self) -> Self {
        Self { overrule: true, ..self }
    }

    fn in_format(self, format: Format) -> Self {
        Self { format: Some(format), ..self }
    }
}
