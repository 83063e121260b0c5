//! The marks as a list for the site: rod first, then the distance below the line, then the check.

use super::levels::Told;
use super::{EdgeMarks, Mark, MarkKind, Marks, Material};
use crate::quantity::{Elevation, elevation, number_in};

/// The widest line.
const WIDTH: usize = 86;

/// A part of the list under its own label.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct SheetPart {
    pub(crate) label: &'static str,
    pub(crate) lines: Vec<String>,
}

impl Marks {
    /// The list for the site.
    #[must_use]
    pub fn text(&self) -> String {
        let mut text = String::new();
        for part in self.sheet() {
            text.push_str(part.label);
            text.push('\n');
            for line in part.lines {
                text.push_str("  ");
                text.push_str(&line);
                text.push('\n');
            }
        }
        text
    }

    /// The list by its parts; those without a line are left out.
    pub(crate) fn sheet(&self) -> Vec<SheetPart> {
        let parts = [
            ("MARKS", self.edge_lines()),
            ("PADS", self.pad_lines()),
            ("RAILS", self.rail_lines()),
            ("LINES", self.chalk_lines()),
            ("SQUARE", self.diagonal_lines()),
            ("RIPS", self.rip_lines()),
        ];
        let parts = parts.into_iter().filter(|(_, lines)| !lines.is_empty());
        parts.map(|(label, lines)| SheetPart { label, lines }).collect()
    }

    fn edge_lines(&self) -> Vec<String> {
        let mut lines = self.preface();
        for edge in &self.edges {
            lines.extend(if edge.level { self.level_edge(edge) } else { self.sloping_edge(edge) });
        }
        lines
    }

    /// How the list is used.
    fn preface(&self) -> Vec<String> {
        let mut lines = Vec::new();
        if let Some(first) = self.edges.first() {
            lines
                .push(format!("Walk with the new floor on your left, from where the {} starts.", first.name));
            lines.push("On each edge the tape starts anew where the walk meets it.".to_owned());
        }
        for (index, sight) in self.levels.sights.iter().enumerate() {
            let on_line = self.levels.line.map(|line| self.division.say(sight.height - line));
            let on_line = on_line.map(|rod| format!("; on the line it reads {rod}")).unwrap_or_default();
            lines.push(format!("{}: level set up by {}{on_line}.", self.rod_name(index), sight.name));
        }
        if self.levels.line.is_some() {
            lines.push("Below: down from the line.".to_owned());
        }
        lines.push(
            "Check: new floor over old slab, to see whether it is right, never to mark from.".to_owned(),
        );
        lines.iter().flat_map(|line| wrap(line)).collect()
    }

    /// The head of the column of a set-up.
    fn rod_name(&self, index: usize) -> String {
        if self.levels.sights.len() > 1 { format!("Rod {}", index + 1) } else { "Rod".to_owned() }
    }

    fn level_edge(&self, edge: &EdgeMarks) -> Vec<String> {
        let mut head =
            vec![format!("{}, {}", self.title(edge), self.division.taped(edge.length)), "LEVEL".to_owned()];
        head.extend(self.heights(edge.end.height));
        let checks: Vec<String> = edge.with_end().map(|mark| self.check_in_a_row(mark)).collect();
        let mut lines = vec![head.join("   ")];
        lines.extend(
            wrap(&format!("check: {}", checks.join("; "))).into_iter().map(|line| format!("  {line}")),
        );
        lines
    }

    /// All the ways a height is told, each with its name.
    fn heights(&self, height: Elevation) -> Vec<String> {
        let mut told: Vec<String> = (self.levels.sights.iter().enumerate())
            .map(|(index, sight)| {
                format!(
                    "{} {}",
                    self.rod_name(index).to_lowercase(),
                    self.say(self.levels.rod_from(sight, height))
                )
            })
            .collect();
        told.extend(self.levels.below_line(height).map(|below| format!("below {}", self.say(below))));
        if told.is_empty() {
            told.push(format!("elevation {}", self.elevation(height)));
        }
        told
    }

    fn check_in_a_row(&self, mark: &Mark) -> String {
        let what = remark(mark);
        let what = if what.is_empty() { String::new() } else { format!(" ({what})") };
        let along = mark.along.map(|along| self.division.taped(along)).unwrap_or_default();
        // Told together, what belongs to one mark is not parted at the end of a line.
        format!("{} at {along}{what} {}", mark.number, self.division.taped(mark.over_old_slab))
            .replace(' ', "\u{a0}")
    }

    fn sloping_edge(&self, edge: &EdgeMarks) -> Vec<String> {
        let head = format!("{}, {}", self.title(edge), self.division.taped(edge.length));
        let mut lines = vec![head, self.table_head(&["at"])];
        lines.extend(edge.with_end().map(|mark| {
            let along = mark.along.map(|along| self.division.taped(along)).unwrap_or_default();
            self.table_row(mark, &[along])
        }));
        lines
    }

    fn title(&self, edge: &EdgeMarks) -> String {
        match edge.material {
            Material::Form => format!("{} (form: mark its top)", edge.name),
            Material::Strip => edge.name.clone(),
        }
    }

    fn pad_lines(&self) -> Vec<String> {
        if self.pads.is_empty() {
            return Vec::new();
        }
        let mut lines = vec![self.table_head(&["from left", "in"])];
        lines.extend(
            self.pads
                .iter()
                .map(|pad| self.table_row(pad, &[self.division.taped(pad.x), self.division.taped(pad.y)])),
        );
        lines
    }

    fn rail_lines(&self) -> Vec<String> {
        let mut lines = Vec::new();
        for rail in &self.rails {
            lines.push(format!("{}: the top of the rail", rail.name));
            lines.push(self.table_head(&["at", "from left", "in"]));
            lines.extend(rail.marks.iter().map(|mark| {
                let along = mark.along.map(|along| self.division.taped(along)).unwrap_or_default();
                self.table_row(mark, &[along, self.division.taped(mark.x), self.division.taped(mark.y)])
            }));
        }
        lines
    }

    fn table_head(&self, places: &[&str]) -> String {
        let mut head = format!("  {:>4}", "no");
        for place in places {
            head.push_str(&format!("  {place:>10}"));
        }
        for index in 0..self.levels.sights.len() {
            head.push_str(&format!("  {:>12}", self.rod_name(index).to_lowercase()));
        }
        if self.levels.line.is_some() {
            head.push_str(&format!("  {:>12}", "below"));
        }
        if self.levels.line.is_none() && self.levels.sights.is_empty() {
            head.push_str(&format!("  {:>12}", "elevation"));
        }
        head.push_str(&format!("  {:>9}", "check"));
        head
    }

    fn table_row(&self, mark: &Mark, places: &[String]) -> String {
        let mut row = format!("  {:>4}", mark.number);
        for place in places {
            row.push_str(&format!("  {place:>10}"));
        }
        let told: Vec<Told> =
            self.levels.sights.iter().map(|sight| self.levels.rod_from(sight, mark.height)).collect();
        for told in told.into_iter().chain(self.levels.below_line(mark.height)) {
            row.push_str(&format!("  {:>12}", self.say(told)));
        }
        if self.levels.line.is_none() && self.levels.sights.is_empty() {
            row.push_str(&format!("  {:>12}", self.elevation(mark.height)));
        }
        row.push_str(&format!("  {:>9}  {}", self.division.taped(mark.over_old_slab), remark(mark)));
        row.trim_end().to_owned()
    }

    fn chalk_lines(&self) -> Vec<String> {
        let line = |line: &super::ChalkLine| {
            let end = |end: usize| {
                let place = line.marks[end].map_or_else(
                    || {
                        format!(
                            "{} from left, {} in",
                            self.division.taped(line.x[end]),
                            self.division.taped(line.y[end])
                        )
                    },
                    |number| number.to_string(),
                );
                format!("{place} ({})", self.heights(line.height[end]).join(", "))
            };
            let text = format!("from {} to {}, {} long", end(0), end(1), self.division.taped(line.length));
            wrap(&text)
        };
        let mut lines: Vec<String> = self.lines.iter().flat_map(line).collect();
        if !lines.is_empty() {
            lines.insert(0, "Planes meet here; a line from mark to mark is straight already:".to_owned());
        }
        lines
    }

    fn diagonal_lines(&self) -> Vec<String> {
        let lengths: Vec<String> = self
            .diagonals
            .iter()
            .map(|diagonal| {
                format!("{} to {} {}", diagonal.from, diagonal.to, self.division.taped(diagonal.length))
                    .replace(' ', "\u{a0}")
            })
            .collect();
        if lengths.is_empty() {
            Vec::new()
        } else {
            wrap(&format!("Corner to corner: {}.", lengths.join("; ")))
        }
    }

    fn rip_lines(&self) -> Vec<String> {
        self.edges.iter().flat_map(|edge| wrap(&self.edge_rips(edge))).collect()
    }

    /// The cuts of one edge in a sentence.
    fn edge_rips(&self, edge: &EdgeMarks) -> String {
        let say = |length| self.division.taped(length);
        let what = match edge.material {
            Material::Form => "form",
            Material::Strip => "strip",
        };
        let cut = |rip: &super::Rip| {
            format!(
                "{} to {}: {} to {}",
                say(rip.from),
                say(rip.to),
                say(rip.height_from),
                say(rip.height_to)
            )
            .replace(' ', "\u{a0}")
        };
        let cuts: Vec<String> = edge.rips.iter().map(cut).collect();
        format!(
            "{}, {what}, {} to {} high: {}",
            edge.name,
            say(edge.least.height),
            say(edge.greatest.height),
            cuts.join("; ")
        )
    }

    fn say(&self, told: Told) -> String {
        self.division.say(told.marked)
    }

    fn elevation(&self, height: Elevation) -> String {
        if self.division.is_metric() {
            number_in(height, &elevation::unit::meter, 3)
        } else {
            number_in(height, &elevation::unit::foot, 3)
        }
    }
}

/// What a mark is there for, where that is not plain from its place.
fn remark(mark: &Mark) -> String {
    let kind = match mark.kind {
        MarkKind::Corner => "corner",
        MarkKind::Break | MarkKind::FacetLine => "planes meet",
        MarkKind::FacetCorner => "planes meet in a point",
        MarkKind::Point | MarkKind::Station | MarkKind::Grid => "",
    };
    match (&mark.name, kind) {
        (Some(name), "") => name.clone(),
        (Some(name), kind) => format!("{name}, {kind}"),
        (None, kind) => kind.to_owned(),
    }
}

/// The text in lines; blanks that must not be parted come as no-break spaces and leave as plain ones.
fn wrap(text: &str) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split(' ') {
        match lines.last_mut() {
            Some(line) if line.chars().count() + 1 + word.chars().count() <= WIDTH - 2 => {
                line.push(' ');
                line.push_str(word);
            }
            Some(_) => lines.push(format!("  {word}")),
            None => lines.push(word.to_owned()),
        }
    }
    lines.into_iter().map(|line| line.replace('\u{a0}', " ")).collect()
}
