//! A reader of our own C header: its prototypes, constants, opaque types and comments. It knows only what may cross the
//! border and stops at anything else.
#![expect(clippy::panic, clippy::expect_used, reason = "a reader for tests stops at what it does not know")]

use std::collections::BTreeMap;

/// What the header declares.
#[derive(Debug, Default)]
pub struct Header {
    /// Functions, in order.
    pub functions: Vec<Prototype>,
    /// Constants and their numbers.
    pub constants: BTreeMap<String, i64>,
    /// Opaque types.
    pub types: Vec<String>,
}

/// One function.
#[derive(Debug)]
pub struct Prototype {
    /// Its name.
    pub name: String,
    /// What it takes.
    pub arguments: Vec<Argument>,
    /// What it gives.
    pub gives: Type,
    /// The comment above it.
    pub comment: String,
}

/// One argument.
#[derive(Debug)]
pub struct Argument {
    /// Its name.
    pub name: String,
    /// Its type.
    pub kind: Type,
}

/// A type that may cross the border.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Type {
    /// Nothing; of results only.
    Void,
    /// `double`
    Double,
    /// `int`
    Int,
    /// A pointer to what may not be changed, by the word for it.
    In(String),
    /// A pointer to what may be changed, by the word for it.
    Out(String),
}

impl Header {
    /// Reads a header.
    ///
    /// # Panics
    /// At what it does not know.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let mut header = Self::default();
        let mut comment = String::new();
        let mut rest = text;
        loop {
            rest = rest.trim_start();
            if rest.is_empty() {
                return header;
            }
            if let Some(after) = rest.strip_prefix("/*") {
                let (inside, after) = after.split_once("*/").expect("a comment that ends");
                comment = inside.to_owned();
                rest = after;
            } else if rest.starts_with('#') || rest.starts_with('}') {
                let (line, after) = rest.split_once('\n').unwrap_or((rest, ""));
                header.directive(line);
                rest = after;
            } else if let Some(after) = rest.strip_prefix("extern \"C\" {") {
                rest = after;
            } else {
                let (declaration, after) = rest.split_once(';').expect("a declaration that ends");
                header.declaration(declaration, &comment);
                rest = after;
            }
        }
    }

    /// The function of that name.
    #[must_use]
    pub fn function(&self, name: &str) -> Option<&Prototype> {
        self.functions.iter().find(|function| function.name == name)
    }

    fn directive(&mut self, line: &str) {
        let words: Vec<&str> = line.split_whitespace().collect();
        if let ["#define", name, number] = words.as_slice() {
            let number = number.parse().expect("a constant that is a whole number");
            let before = self.constants.insert((*name).to_owned(), number);
            assert!(before.is_none(), "{name} is defined twice");
        }
    }

    fn declaration(&mut self, declaration: &str, comment: &str) {
        let words: Vec<&str> = declaration.split_whitespace().collect();
        if let ["typedef", "struct", tag, name] = words.as_slice() {
            assert_eq!(tag, name, "an opaque type has one name");
            self.types.push((*name).to_owned());
            return;
        }
        let (head, arguments) = declaration.split_once('(').expect("a function");
        let arguments = arguments.trim_end().strip_suffix(')').expect("arguments that end");
        let (gives, name) = self.named(head);
        let arguments = match arguments.trim() {
            "void" => Vec::new(),
            list => list.split(',').map(|argument| self.named(argument)).collect(),
        };
        let arguments = arguments.into_iter().map(|(kind, name)| Argument { name, kind }).collect();
        self.functions.push(Prototype { name, arguments, gives, comment: comment.to_owned() });
    }

    /// A type and the name behind it.
    fn named(&self, text: &str) -> (Type, String) {
        let text = text.trim();
        let split = text.rfind([' ', '*']).expect("a type and a name") + 1;
        let (kind, name) = text.split_at(split);
        assert!(name.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'_'));
        (self.kind(&kind.split_whitespace().collect::<Vec<_>>().join(" ")), name.to_owned())
    }

    fn kind(&self, text: &str) -> Type {
        let pointed = |word: &str| {
            let known = ["double", "int", "char", "unsigned char"].contains(&word)
                || self.types.iter().any(|name| name == word);
            assert!(known, "a pointer to {word} may not cross the border");
            word.to_owned()
        };
        match (text, text.strip_suffix(" *")) {
            ("void", _) => Type::Void,
            ("double", _) => Type::Double,
            ("int", _) => Type::Int,
            (_, Some(word)) => match word.strip_prefix("const ") {
                Some(word) => Type::In(pointed(word)),
                None => Type::Out(pointed(word)),
            },
            _ => panic!("{text} may not cross the border"),
        }
    }
}

impl Prototype {
    /// Its form for a call: a letter per argument, behind `>` one for what it gives. `d` a double, `i` an int, `p` a pointer,
    /// `v` nothing.
    #[must_use]
    pub fn signature(&self) -> String {
        let letters: String = self.arguments.iter().map(|argument| argument.kind.letter()).collect();
        format!("{letters}>{}", self.gives.letter())
    }
}

impl Type {
    /// The letter of the type in a signature.
    #[must_use]
    pub const fn letter(&self) -> char {
        match self {
            Self::Void => 'v',
            Self::Double => 'd',
            Self::Int => 'i',
            Self::In(_) | Self::Out(_) => 'p',
        }
    }
}
