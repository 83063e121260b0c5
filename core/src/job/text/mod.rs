//! The report as plain text for the site: one label and one idea to a line, fractions in eighths.

mod look_again;
mod order;
mod surface;

use super::Report;
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
        surface::old_floor(&mut page, self);
        surface::new_floor(&mut page, self);
        surface::thickness(&mut page, self);
        surface::fits(&mut page, self);
        look_again::look_again(&mut page, self);
        order::order(&mut page, self);
        order::rounding(&mut page, self);
        page.section("FALL", &self.finish.fall.text);
        page.list(
            "TAKEN",
            self.taken.iter().map(|taken| format!("{}: {} - {}", taken.what, taken.value, taken.why)),
        );
        let silent = |note: &&super::SaidNote| note.text == self.finish.fall.text;
        let notes = self.notes.iter().filter(|note| !silent(note));
        page.list("NOTES", notes.map(|note| format!("- {}", note.text)));
        page.section("NOT YET", &format!("answered: {}.", self.not_answered.join("; ")));
        page.section("CARE", &self.cautions.join(" "));
        page.text
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
    for word in text.split(' ') {
        let last = lines.len() - 1;
        if !lines[last].is_empty() && lines[last].chars().count() + 1 + word.chars().count() > WIDTH - INDENT
        {
            lines.push(word.to_owned());
            continue;
        }
        if !lines[last].is_empty() {
            lines[last].push(' ');
        }
        lines[last].push_str(word);
    }
    lines
}
