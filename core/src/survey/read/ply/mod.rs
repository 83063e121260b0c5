//! PLY: vertices and faces, as text or in either binary order. Vertices may have any scalar type; what stands beside x, y, z is
//! passed over. Faces of more than three corners are cut by a fan from their first corner, if they are convex.

mod body;
mod header;
mod source;

use super::asked::Asked;
use super::faces::Faces;
use super::format::Format;
use super::gather::Gather;
use super::refusal::unit_missing;
use super::table::check_end;
use super::{Reading, SurfaceReading};
use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::survey::points::Tin;
use body::Body;
use header::{Encoding, Header};
use source::{Binary, Lines, Source};

/// Reads the vertices.
pub(super) fn read(bytes: &[u8], asked: &Asked) -> Result<Reading> {
    let (body, unit, mut notes) = whole(bytes, asked)?;
    if body.faces.len() > 0 {
        let text = format!("{} faces were not used: read the file as a surface for them", body.faces.len());
        notes.push(Note::new(NoteCode::FileParts, text));
    }
    let (points, left_out) = body.gather.finish(&mut notes);
    Ok(Reading { points, format: Format::Ply, unit: Some(unit), left_out, notes })
}

/// Reads the vertices and the faces.
pub(super) fn read_surface(bytes: &[u8], asked: &Asked) -> Result<SurfaceReading> {
    let (body, unit, mut notes) = whole(bytes, asked)?;
    let faces = body.faces.triangles(&body.gather.points, &body.kept, &mut notes)?;
    if faces.is_empty() {
        return Err(Failure::new(Code::SurfaceUnclear, "file")
            .written("no face")
            .remedy("read its points instead: the file has no faces that can be used"));
    }
    let (points, left_out) = body.gather.finish(&mut notes);
    Ok(SurfaceReading {
        tin: Tin { name: None, points, faces },
        format: Format::Ply,
        unit: Some(unit),
        left_out,
        notes,
    })
}

fn whole(bytes: &[u8], asked: &Asked) -> Result<(Body, super::FileUnit, Vec<Note>)> {
    let (header, rest) = Header::read(bytes)?;
    let mut notes = Vec::new();
    let unit = asked.settle(None, "unit", &mut notes)?.ok_or_else(|| unit_missing("unit", Format::Ply))?;
    let mut body = Body {
        gather: Gather::default(),
        kept: Vec::new(),
        faces: Faces::default(),
        unit,
        strange: Vec::new(),
    };
    let left = match header.encoding {
        Encoding::Ascii => {
            check_end(bytes, &mut notes);
            run(&mut body, &header, Lines::new(rest, header.lines))
        }
        Encoding::Little => run(&mut body, &header, Binary::new(rest, true)),
        Encoding::Big => run(&mut body, &header, Binary::new(rest, false)),
    }?;
    let strange = body.strange.iter().map(|name| format!("element {name}"));
    let behind = (left > 0).then(|| format!("{left} bytes behind the last element"));
    let parts: Vec<String> = strange.chain(behind).collect();
    if !parts.is_empty() {
        notes.push(Note::new(NoteCode::FileParts, format!("not read: {}", parts.join(", "))));
    }
    Ok((body, unit, notes))
}

/// Reads the body; how many bytes are left behind it.
fn run<S: Source>(body: &mut Body, header: &Header, mut source: S) -> Result<usize> {
    body.read(&header.elements, &mut source)?;
    Ok(source.left())
}
