//! The marks as a CSV file: one line per mark, units in the head, numbers to a part in 1e9 of the unit.

use super::levels::Told;
use super::{Mark, Marks, Part};
use crate::operation::Choice;
use crate::quantity::length::unit::{foot, inch, meter, millimeter};
use crate::quantity::write::shortest;
use crate::quantity::{Typed, Unit};

/// Numbers are whole parts of their unit: a nanometre shows what the rod cannot, and hides what the arithmetic leaves.
const PARTS: f64 = 1e9;

impl Marks {
    /// One line per mark behind a head that names every unit, by RFC 4180: feet and inches, or metres and millimetres where the
    /// step is one of millimetres. Further set-ups have columns of their own at the end.
    #[must_use]
    pub fn csv(&self) -> String {
        let mut writer = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(Vec::new());
        // Writing to memory cannot fail.
        let _ = writer.write_record(self.head());
        for (part, belongs_to, mark) in self.all() {
            let _ = writer.write_record(self.row(part, belongs_to, mark));
        }
        let bytes = writer.into_inner().unwrap_or_default();
        String::from_utf8(bytes).unwrap_or_default()
    }

    /// The unit of distances and heights, and that of small heights.
    fn units(&self) -> [&'static Unit; 2] {
        if self.division.is_metric() { [&meter, &millimeter] } else { [&foot, &inch] }
    }

    fn head(&self) -> Vec<String> {
        let [long, small] = self.units().map(|unit| unit.symbol);
        let mut head: Vec<String> = ["mark", "part", "of", "kind", "name"].map(str::to_owned).to_vec();
        head.extend(["along", "x", "y", "elevation"].map(|name| format!("{name} {long}")));
        head.extend([
            format!("rod {long}"),
            format!("rod marked {long}"),
            format!("below line {long}"),
            format!("below line marked {long}"),
            format!("over old slab {small}"),
            "ground".to_owned(),
        ]);
        for sight in self.levels.sights.iter().skip(1) {
            head.push(format!("rod from {} {long}", sight.name));
            head.push(format!("rod marked from {} {long}", sight.name));
        }
        head
    }

    fn row(&self, part: Part, belongs_to: &str, mark: &Mark) -> Vec<String> {
        let [long, small] = self.units();
        let number = |unit: &Unit, base: f64| shortest(((unit.from_base)(base) * PARTS).round() / PARTS);
        let told = |told: Option<Told>| {
            told.map_or_else(Default::default, |told| {
                [told.exact, told.marked].map(|height| number(long, height.base()))
            })
        };
        let mut row = vec![
            mark.number.to_string(),
            part.words().to_owned(),
            belongs_to.to_owned(),
            mark.kind.word().to_owned(),
            mark.name.clone().unwrap_or_default(),
            mark.along.map_or_else(String::new, |along| number(long, along.base())),
            number(long, mark.x.base()),
            number(long, mark.y.base()),
            number(long, mark.height.base()),
        ];
        row.extend(told(self.levels.rod(mark.height)));
        row.extend(told(self.levels.below_line(mark.height)));
        row.push(number(small, mark.over_old_slab.base()));
        row.push(crate::survey::surface::Ground::WORDS[mark.ground as usize].to_owned());
        for sight in self.levels.sights.iter().skip(1) {
            row.extend(told(Some(self.levels.rod_from(sight, mark.height))));
        }
        row
    }
}
