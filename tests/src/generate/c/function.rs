//! One exported function as Rust text.

use std::fmt::Write;

/// The type of an argument. There are no others: these are what cross the border.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Type {
    /// `double`
    Double,
    /// `int`
    Int,
    /// `const double *`
    Doubles,
    /// `double *`
    DoublesOut,
    /// `const int *`
    Ints,
    /// `int *`
    IntsOut,
    /// `const char *`
    Text,
    /// `const unsigned char *`
    Bytes,
    /// `char *`
    TextOut,
    /// `const ovs_... *`, by its name
    Opaque(String),
    /// `ovs_... *`, by its name
    OpaqueOut(String),
}

impl Type {
    fn rust(&self) -> String {
        match self {
            Self::Double => "f64".to_owned(),
            Self::Int => "c_int".to_owned(),
            Self::Doubles => "*const f64".to_owned(),
            Self::DoublesOut => "*mut f64".to_owned(),
            Self::Ints => "*const c_int".to_owned(),
            Self::IntsOut => "*mut c_int".to_owned(),
            Self::Text => "*const c_char".to_owned(),
            Self::Bytes => "*const c_uchar".to_owned(),
            Self::TextOut => "*mut c_char".to_owned(),
            Self::Opaque(name) => format!("*const {name}"),
            Self::OpaqueOut(name) => format!("*mut {name}"),
        }
    }
}

/// One argument: its name and its type.
#[derive(Clone, Debug)]
pub(super) struct Argument {
    pub(super) name: String,
    pub(super) kind: Type,
}

/// An argument of that name and type.
pub(super) fn argument(name: impl Into<String>, kind: Type) -> Argument {
    Argument { name: name.into(), kind }
}

/// One exported function.
#[derive(Clone, Debug)]
pub(super) struct Function {
    /// Its name in C.
    pub(super) name: String,
    /// What is said of it, line by line.
    pub(super) doc: Vec<String>,
    /// What it takes.
    pub(super) arguments: Vec<Argument>,
    /// What it gives; nothing for `void`.
    pub(super) gives: Option<Type>,
    /// The call of the border.
    pub(super) body: String,
}

impl Function {
    /// The function as Rust text.
    pub(super) fn text(&self) -> String {
        let mut names: Vec<&str> = self.arguments.iter().map(|argument| argument.name.as_str()).collect();
        names.sort_unstable();
        if let Some(pair) = names.windows(2).find(|pair| pair[0] == pair[1]) {
            panic!("{}: two arguments are called {}", self.name, pair[0]);
        }
        let mut text = doc(&self.doc);
        let gives = self.gives.as_ref().map_or(String::new(), |gives| format!(" -> {}", gives.rust()));
        let _ = writeln!(text, "#[unsafe(no_mangle)]\npub unsafe extern \"C\" fn {}(", self.name);
        for Argument { name, kind } in &self.arguments {
            let _ = writeln!(text, "    {name}: {},", kind.rust());
        }
        let _ = writeln!(text, "){gives} {{");
        for line in self.body.lines() {
            let _ = writeln!(text, "    {line}");
        }
        text.push_str("}\n");
        text
    }
}

/// Lines as a doc comment, in ASCII, fit for a C comment and not too wide.
pub(super) fn doc(lines: &[String]) -> String {
    let mut text = String::new();
    for line in lines {
        let line = ascii(line).replace("*/", "* /").replace("/*", "/ *");
        for part in folded(&line) {
            let _ = writeln!(text, "{}", format!("/// {part}").trim_end());
        }
    }
    text
}

/// The widest line of a comment.
const WIDTH: usize = 112;

/// A line in parts that are not too wide; those that follow are set in below the text of a list item.
fn folded(line: &str) -> Vec<String> {
    // What is to be copied stays in one piece.
    if line.starts_with("Example") {
        return vec![line.to_owned()];
    }
    let text = line.trim_start();
    let item = if text.starts_with("- ") { 2 } else { 0 };
    let indent = " ".repeat(line.len() - text.len() + item);
    let mut parts = vec![line[..line.len() - text.len()].to_owned()];
    for (place, word) in text.split(' ').enumerate() {
        let Some(last) = parts.last_mut() else { continue };
        if last.len() + 1 + word.len() > WIDTH && last.trim().len() > item {
            parts.push(format!("{indent}{word}"));
        } else {
            last.push_str(if place == 0 { "" } else { " " });
            last.push_str(word);
        }
    }
    parts
}

/// ASCII for the signs of the trade; a question mark for what has no such form.
fn ascii(line: &str) -> String {
    let mut text = String::with_capacity(line.len());
    for sign in line.chars() {
        match sign {
            '\u{d7}' => text.push('x'),
            '\u{b2}' => text.push('2'),
            '\u{b3}' => text.push('3'),
            '\u{b7}' => text.push(' '),
            '\u{2212}' | '\u{2013}' | '\u{2014}' => text.push('-'),
            '\u{2264}' => text.push_str("<="),
            '\u{2265}' => text.push_str(">="),
            sign if sign.is_ascii() => text.push(sign),
            _ => text.push('?'),
        }
    }
    text
}
