//! The report as plain text for the site: one label and one idea to a line, fractions in eighths.

mod approach;
mod as_built;
mod clearances;
mod conflict;
mod drainage;
mod key_cuts;
mod look_again;
mod marks;
mod old_slab;
mod order;
mod overlay;
mod places;
mod solved;
mod surface;
mod tear_out;
mod thin_zones;
mod water;

use super::{NewFloor, Report};
use std::fmt::Write;

/// Where the text behind a label begins.
const INDENT: usize = 12;
/// The widest line.
const WIDTH: usize = 100;

impl Report {
    /// The report in plain text.
    #[must_use]
    pub fn to_text(&self) -> String {
        let mut page = Page::default();
        let floor = &self.old_floor;
        let [wide, long] = &floor.size;
        page.heading(&format!("{}: {} x {}, {}", self.name, wide.text, long.text, floor.area.text));
        old_slab::old_slab(&mut page, self);
        match &self.new_floor {
            Some(floor) => self.floors(&mut page, floor),
            None => self.old_floor_alone(&mut page),
        }
        page.section("CARE", &self.cautions.join(" "));
        page.text
    }

    fn floors(&self, page: &mut Page, floor: &NewFloor) {
        let level = self.level.as_ref();
        conflict::conflict(page, floor);
        surface::old_floor(page, self);
        water::clean_up(page, self);
        surface::new_floor(page, level, floor);
        surface::thickness(page, floor);
        places::zones(page, floor);
        water::standing(page, self);
        surface::fits(page, floor);
        approach::approaches(page, floor);
        clearances::clearances(page, floor);
        solved::demands(page, floor);
        solved::concrete(page, floor);
        overlay::overlay(page, floor);
        key_cuts::key_cuts(page, floor);
        thin_zones::thin_zones(page, floor);
        tear_out::tear_out(page, floor);
        look_again::look_again(page, self);
        order::order(page, floor);
        order::rounding(page, floor);
        let fall = &floor.finish.fall.text;
        page.section("FALL", fall);
        self.taken_and_notes(page, |note| note != fall);
        page.section("NOT YET", &format!("answered: {}.", self.not_answered.join("; ")));
        places::sections(page, floor);
        as_built::as_built(page, floor);
        marks::marks(page, level, floor);
    }

    /// Over a slab that spans free.
    fn old_floor_alone(&self, page: &mut Page) {
        surface::old_floor(page, self);
        water::clean_up(page, self);
        water::standing(page, self);
        page.section("NEW FLOOR", "No height, thickness or order is told for a slab that spans free.");
        if let Some(weight) = self.old_slab.as_ref().and_then(|slab| slab.added_weight.as_ref()) {
            page.line(&format!("It would add {} on average: tell the engineer.", weight.text));
        }
        look_again::look_again(page, self);
        self.taken_and_notes(page, |_| true);
    }

    fn taken_and_notes(&self, page: &mut Page, told: impl Fn(&str) -> bool) {
        page.list(
            "TAKEN",
            self.taken.iter().map(|taken| format!("{}: {} - {}", taken.what, taken.value, taken.why)),
        );
        let notes = self.notes.iter().filter(|note| told(&note.text));
        page.list("NOTES", notes.map(|note| format!("- {}", note.text)));
    }
}

/// A page being written.
#[derive(Default)]
struct Page {
    text: String,
}

impl Page {
    fn heading(&mut self, text: &str) {
        let _ = writeln!(self.text, "{text}");
    }

    /// A label with its text, wrapped.
    fn section(&mut self, label: &str, text: &str) {
        for (index, line) in wrap(text).iter().enumerate() {
            let label = if index == 0 { label } else { "" };
            let _ = writeln!(self.text, "{}", format!("{label:INDENT$}{line}").trim_end());
        }
    }

    /// A line without a label.
    fn line(&mut self, text: &str) {
        self.section("", text);
    }

    /// A line that keeps its blanks, as a table does.
    fn raw(&mut self, text: &str) {
        let _ = writeln!(self.text, "{:INDENT$}{text}", "");
    }

    /// A label with a line that keeps its blanks.
    fn labelled(&mut self, label: &str, text: &str) {
        let _ = writeln!(self.text, "{}", format!("{label:INDENT$}{text}").trim_end());
    }

    /// A label with one item to a line.
    fn list(&mut self, label: &str, items: impl Iterator<Item = String>) {
        for (index, item) in items.enumerate() {
            self.section(if index == 0 { label } else { "" }, &item);
        }
    }

    /// Columns: a name, a number that ends where the others end, a remark.
    fn row(&mut self, label: &str, name: &str, number: &str, remark: &str) {
        let _ =
            writeln!(self.text, "{}", format!("{label:INDENT$}{name:26}{number:>10}  {remark}").trim_end());
    }
}

/// The text in lines that fit beside the labels.
fn wrap(text: &str) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in unbroken(text) {
        let last = lines.len() - 1;
        if !lines[last].is_empty() && lines[last].chars().count() + 1 + word.chars().count() > WIDTH - INDENT
        {
            lines.push(word);
            continue;
        }
        if !lines[last].is_empty() {
            lines[last].push(' ');
        }
        lines[last].push_str(&word);
    }
    lines
}

/// The words of a text; a number stays with its fraction and its unit: `3 1/2 in`.
fn unbroken(text: &str) -> Vec<String> {
    const UNITS: [&str; 7] = ["in", "ft", "ft2", "ft3", "yd3", "m", "%"];
    let mut words: Vec<String> = Vec::new();
    for word in text.split(' ') {
        let bare = word.trim_end_matches([',', '.', ';', ':', ')']);
        let fraction = bare.starts_with(|sign: char| sign.is_ascii_digit()) && bare.contains('/');
        match words.last_mut() {
            Some(last) if is_number(last) && (fraction || UNITS.contains(&bare)) => {
                last.push(' ');
                last.push_str(word);
            }
            _ => words.push(word.to_owned()),
        }
    }
    words
}

/// Whether a text ends in a number, `4` or `1/2`, and not in a unit such as `ft2`.
fn is_number(text: &str) -> bool {
    let last = text.rsplit(' ').next().unwrap_or(text);
    last.starts_with(|sign: char| sign.is_ascii_digit()) && last.ends_with(|sign: char| sign.is_ascii_digit())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_keeps_its_fraction_and_its_unit() {
        let words = unbroken("falls 3 1/2 in, over 4' 9 1/8\" in all; 0.12 yd3 in 2 bays");
        assert_eq!(
            words,
            ["falls", "3 1/2 in,", "over", "4'", "9 1/8\"", "in", "all;", "0.12 yd3", "in", "2", "bays"]
        );
    }
}
