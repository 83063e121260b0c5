//! What the caller says of a file.

use super::columns::Columns;
use super::format::Format;
use super::unit::FileUnit;
use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::quantity::Elevation;

/// What the caller says of a file; all of it may be left open.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Asked {
    /// What the file is; found from its first bytes where not given.
    pub format: Option<Format>,
    /// The unit of its numbers; needed where the file does not state one.
    pub unit: Option<FileUnit>,
    /// The unit given holds even where the file states another.
    pub overrule: bool,
    /// What stands in each column, in place of a header.
    pub columns: Option<Columns>,
    /// Height of the line of sight: a column of rod readings is taken down from it.
    pub height_of_instrument: Option<Elevation>,
    /// Only points that the file classes as ground.
    pub ground_only: bool,
}

impl Asked {
    /// Refuses what has no meaning for a format, so that nothing asked is passed over.
    pub(super) fn check(&self, format: Format) -> Result<()> {
        let table = matches!(format, Format::Csv | Format::Xyz);
        let wrong = [
            ("columns", self.columns.is_some() && !table),
            ("height_of_instrument", self.height_of_instrument.is_some() && format != Format::Csv),
            ("ground_only", self.ground_only && format != Format::Las),
        ];
        if let Some((port, _)) = wrong.into_iter().find(|(_, wrong)| *wrong) {
            return Err(Failure::new(Code::Contradiction, port)
                .written(format!("given with a file in {}", format.word()))
                .allowed("nothing")
                .remedy(format!("leave {port} out, it has no meaning for this format")));
        }
        if self.overrule && self.unit.is_none() {
            return Err(Failure::new(Code::KeyMissing, "unit")
                .remedy("give the unit that is to hold in place of the one in the file"));
        }
        Ok(())
    }

    /// The unit to read in, of the one given and the one the file states.
    pub(super) fn settle(
        &self,
        stated: Option<FileUnit>,
        path: &str,
        notes: &mut Vec<Note>,
    ) -> Result<Option<FileUnit>> {
        let (Some(given), Some(stated)) = (self.unit, stated) else { return Ok(self.unit.or(stated)) };
        if given == stated {
            return Ok(Some(given));
        }
        if !self.overrule {
            return Err(Failure::new(Code::Contradiction, path)
                .written(format!("{} in the file, {} given", stated.word(), given.word()))
                .allowed("one unit")
                .remedy("leave the unit out, or say that the one given overrules the file"));
        }
        let text = format!("{path}: the file states {}, {} was used as given", stated.word(), given.word());
        notes.push(Note::new(NoteCode::UnitOverruled, text));
        Ok(Some(given))
    }
}
