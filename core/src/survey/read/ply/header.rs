//! The header of a PLY file: which elements follow, with which properties, in which encoding.

use crate::failure::Result;
use crate::survey::read::refusal::{broken, short};

/// How the numbers are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Encoding {
    Ascii,
    Little,
    Big,
}

/// The type of one number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Scalar {
    I8,
    U8,
    I16,
    U16,
    I32,
    U32,
    F32,
    F64,
}

impl Scalar {
    fn of(word: &str) -> Result<Self> {
        Ok(match word {
            "char" | "int8" => Self::I8,
            "uchar" | "uint8" => Self::U8,
            "short" | "int16" => Self::I16,
            "ushort" | "uint16" => Self::U16,
            "int" | "int32" => Self::I32,
            "uint" | "uint32" => Self::U32,
            "float" | "float32" => Self::F32,
            "double" | "float64" => Self::F64,
            _ => return Err(broken(format!("type \"{word}\" in the header"))),
        })
    }

    /// Bytes of it in a binary file.
    pub(super) const fn size(self) -> usize {
        match self {
            Self::I8 | Self::U8 => 1,
            Self::I16 | Self::U16 => 2,
            Self::I32 | Self::U32 | Self::F32 => 4,
            Self::F64 => 8,
        }
    }
}

/// One property: a number, or a list with the type of its length.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    One(Scalar),
    List { length: Scalar, item: Scalar },
}

/// A property with its name.
#[derive(Clone, Debug)]
pub(super) struct Property {
    pub(super) name: String,
    pub(super) kind: Kind,
}

/// One element: how many there are and what each holds.
#[derive(Clone, Debug)]
pub(super) struct Element {
    pub(super) name: String,
    pub(super) count: u64,
    pub(super) properties: Vec<Property>,
}

impl Element {
    /// The place of a property.
    pub(super) fn place(&self, name: &str) -> Option<usize> {
        self.properties.iter().position(|property| property.name == name)
    }
}

/// What the header says.
#[derive(Debug)]
pub(super) struct Header {
    pub(super) encoding: Encoding,
    pub(super) elements: Vec<Element>,
    /// Lines of the header, the last one with `end_header`.
    pub(super) lines: u64,
}

impl Header {
    /// The header, and the bytes behind it.
    pub(super) fn read(bytes: &[u8]) -> Result<(Self, &[u8])> {
        let mut rest = bytes;
        let mut encoding = None;
        let mut header = Self { encoding: Encoding::Ascii, elements: Vec::new(), lines: 0 };
        loop {
            let (line, behind) = line(rest).ok_or_else(|| short("no end_header", "a header with its end"))?;
            rest = behind;
            header.lines += 1;
            let mut words = line.split_ascii_whitespace();
            match (header.lines, words.next()) {
                (1, Some("ply")) => {}
                (1, _) => return Err(broken("the first line is not \"ply\"")),
                (_, None | Some("comment" | "obj_info")) => {}
                (_, Some("format")) if encoding.is_none() => encoding = Some(encoding_of(line)?),
                (_, Some("element")) => header.elements.push(element(line)?),
                (_, Some("property")) => {
                    let element = header.elements.last_mut().ok_or_else(|| strange(line))?;
                    let property = property(line)?;
                    if element.place(&property.name).is_some() {
                        return Err(broken(format!(
                            "property {} twice in element {}",
                            property.name, element.name
                        )));
                    }
                    element.properties.push(property);
                }
                (_, Some("end_header")) => break,
                _ => return Err(strange(line)),
            }
        }
        header.encoding = encoding.ok_or_else(|| broken("a header without its format"))?;
        Ok((header, rest))
    }
}

/// One line and the bytes behind its end.
fn line(bytes: &[u8]) -> Option<(&str, &[u8])> {
    let end = bytes.iter().position(|byte| matches!(byte, b'\n' | b'\r'))?;
    let (line, rest) = bytes.split_at_checked(end)?;
    let rest = rest.strip_prefix(b"\r\n").or_else(|| rest.get(1..))?;
    // Remarks may be in any encoding; what is no text is no keyword either.
    Some((std::str::from_utf8(line).unwrap_or("comment"), rest))
}

fn strange(line: &str) -> Box<crate::failure::Failure> {
    broken(format!("header line \"{}\"", line.chars().take(60).collect::<String>()))
}

fn encoding_of(line: &str) -> Result<Encoding> {
    match line.split_ascii_whitespace().collect::<Vec<_>>()[..] {
        ["format", "ascii", "1.0"] => Ok(Encoding::Ascii),
        ["format", "binary_little_endian", "1.0"] => Ok(Encoding::Little),
        ["format", "binary_big_endian", "1.0"] => Ok(Encoding::Big),
        _ => Err(strange(line)),
    }
}

fn element(line: &str) -> Result<Element> {
    let mut words = line.split_ascii_whitespace().skip(1);
    let (Some(name), Some(count), None) = (words.next(), words.next(), words.next()) else {
        return Err(strange(line));
    };
    let count = count.parse().map_err(|_| strange(line))?;
    Ok(Element { name: name.to_owned(), count, properties: Vec::new() })
}

fn property(line: &str) -> Result<Property> {
    let (name, kind) = match line.split_ascii_whitespace().collect::<Vec<_>>()[..] {
        ["property", "list", length, item, name] => {
            (name, Kind::List { length: Scalar::of(length)?, item: Scalar::of(item)? })
        }
        ["property", scalar, name] => (name, Kind::One(Scalar::of(scalar)?)),
        _ => return Err(strange(line)),
    };
    Ok(Property { name: name.to_owned(), kind })
}
