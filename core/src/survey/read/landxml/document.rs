//! Walking over a LandXML document, element by element.

use super::surface::Surface;
use super::{numbers, units};
use crate::failure::{Code, Failure, Result};
use crate::survey::read::refusal::{at_line, broken, short};
use crate::survey::read::unit::FileUnit;
use quick_xml::Reader;
use quick_xml::events::{BytesStart, Event};

/// What was found.
#[derive(Debug, Default)]
pub(super) struct Document {
    units: Vec<Result<FileUnit>>,
    /// Points of the survey, in the file's unit, and their names.
    pub(super) points: Vec<[f64; 3]>,
    pub(super) names: Vec<Option<String>>,
    pub(super) without_height: u64,
    pub(super) surfaces: Vec<Surface>,
}

/// The element whose text is being gathered.
enum Within {
    Point { name: Option<String> },
    SurfacePoint { id: Option<String> },
    Face { invisible: bool },
}

/// The walk: names of the open elements, and the text of the one that matters.
struct Walk {
    document: Document,
    open: Vec<String>,
    within: Option<(usize, Within)>,
    text: String,
    ended: bool,
}

impl Document {
    pub(super) fn read(text: &str) -> Result<Self> {
        let mut reader = Reader::from_str(text);
        let mut walk =
            Walk { document: Self::default(), open: vec![], within: None, text: String::new(), ended: false };
        loop {
            let event = reader.read_event().map_err(|error| broken(error.to_string()));
            let step = event.and_then(|event| walk.take(event));
            match step {
                Ok(true) => {}
                Ok(false) => return Ok(walk.document),
                Err(failure) => return Err(at_line(failure, line(text, reader.buffer_position()))),
            }
        }
    }

    /// The unit of the file; where it is to be overruled, what is wrong with it does not matter.
    pub(super) fn unit(&self, overruled: bool) -> Result<Option<FileUnit>> {
        let stated: Result<Vec<FileUnit>> = self.units.iter().cloned().collect();
        let stated = match stated {
            Err(_) if overruled => return Ok(None),
            other => other?,
        };
        match stated[..] {
            [first, ref others @ ..] if others.iter().any(|other| *other != first) && !overruled => {
                Err(Failure::new(Code::Contradiction, "Units")
                    .written("two units")
                    .remedy("give the unit, and say that it overrules the file"))
            }
            [first, ..] => Ok(Some(first)),
            [] => Ok(None),
        }
    }
}

/// The line of a place in the text, the first being 1.
fn line(text: &str, at: u64) -> u64 {
    let before = usize::try_from(at).ok().and_then(|at| text.as_bytes().get(..at)).unwrap_or(text.as_bytes());
    1 + before.iter().filter(|&&byte| byte == b'\n').count() as u64
}

impl Walk {
    /// Takes one event; false at the end of the document.
    fn take(&mut self, event: Event<'_>) -> Result<bool> {
        match event {
            Event::Start(start) => self.start(&start)?,
            Event::Empty(start) => {
                self.start(&start)?;
                self.end()?;
            }
            Event::End(_) => self.end()?,
            Event::Text(text) => self.gather(&text)?,
            Event::CData(text) => self.gather(&text)?,
            Event::GeneralRef(_) if self.within.is_some() => return Err(broken("an entity among numbers")),
            Event::Eof if self.ended && self.open.is_empty() => return Ok(false),
            Event::Eof => return Err(short("elements that are not closed", "a document with its end")),
            _ => {}
        }
        Ok(true)
    }

    fn gather(&mut self, text: &str) -> Result<()> {
        if self.within.is_some() {
            self.text.push_str(text);
        } else if self.open.is_empty() && !text.trim().is_empty() {
            return Err(broken("text outside the document"));
        }
        Ok(())
    }

    /// Whether the innermost open elements are these.
    fn inside(&self, path: &[&str]) -> bool {
        let names = self.open.iter().map(String::as_str);
        names.rev().zip(path.iter().rev().copied()).filter(|(open, wanted)| open == wanted).count()
            == path.len()
    }

    fn start(&mut self, start: &BytesStart<'_>) -> Result<()> {
        let name = start.local_name().as_ref().to_owned();
        if self.open.is_empty() {
            self.root(&name)?;
        }
        match name.as_str() {
            "Metric" | "Imperial" if self.inside(&["Units"]) => {
                let linear = attribute(start, "linearUnit")?;
                let elevation = attribute(start, "elevationUnit")?;
                self.document.units.push(units::read(&name, linear.as_deref(), elevation.as_deref()));
            }
            // One that names another point brings no place of its own.
            "CgPoint" if self.inside(&["CgPoints"]) && attribute(start, "pntRef")?.is_none() => {
                let name = attribute(start, "name")?;
                self.open_text(Within::Point { name });
            }
            "Surface" if self.inside(&["Surfaces"]) => {
                self.document.surfaces.push(Surface::new(attribute(start, "name")?));
            }
            "P" if self.inside(&["Surface", "Definition", "Pnts"]) => {
                let id = attribute(start, "id")?;
                self.open_text(Within::SurfacePoint { id });
            }
            "F" if self.inside(&["Surface", "Definition", "Faces"]) => {
                let invisible = attribute(start, "i")?.is_some_and(|mark| mark.trim() == "1");
                self.open_text(Within::Face { invisible });
            }
            "Breakline" | "Boundary" | "DataPoints" | "Contour" | "PointFile"
                if self.open.iter().any(|open| open == "SourceData") =>
            {
                if let Some(surface) = self.document.surfaces.last_mut() {
                    surface.sources += 1;
                }
            }
            _ => {}
        }
        self.open.push(name);
        Ok(())
    }

    fn root(&mut self, name: &str) -> Result<()> {
        if name != "LandXML" || self.ended {
            return Err(Failure::new(Code::FormatUnknown, "file")
                .written(format!("XML with the root {}", name.chars().take(40).collect::<String>()))
                .allowed("LandXML")
                .remedy("write the points as LandXML, CSV or another of the formats"));
        }
        Ok(())
    }

    fn open_text(&mut self, within: Within) {
        if self.within.is_none() {
            self.text.clear();
            self.within = Some((self.open.len(), within));
        }
    }

    fn end(&mut self) -> Result<()> {
        self.open.pop();
        self.ended |= self.open.is_empty();
        let depth = self.open.len();
        let Some((_, within)) = self.within.take_if(|(at, _)| *at == depth) else { return Ok(()) };
        let document = &mut self.document;
        match within {
            Within::Point { name } => match numbers::place(&self.text)? {
                Some(place) => {
                    document.points.push(place);
                    document.names.push(name);
                }
                None => document.without_height += 1,
            },
            Within::SurfacePoint { id } => {
                if let Some(surface) = document.surfaces.last_mut() {
                    surface.point(id.as_deref(), &self.text)?;
                }
            }
            Within::Face { invisible } => {
                if let Some(surface) = document.surfaces.last_mut() {
                    surface.face(invisible, &self.text)?;
                }
            }
        }
        Ok(())
    }
}

/// An attribute by its local name.
fn attribute(start: &BytesStart<'_>, name: &str) -> Result<Option<String>> {
    for attribute in start.attributes() {
        let attribute = attribute.map_err(|error| broken(error.to_string()))?;
        if attribute.key.local_name().as_ref() == name {
            let value = attribute.normalized_value(quick_xml::XmlVersion::Implicit1_0);
            return value.map(|value| Some(value.into_owned())).map_err(|error| broken(error.to_string()));
        }
    }
    Ok(None)
}
