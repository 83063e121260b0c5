//! Site words: one of a fixed list.

use crate::failure::{Code, Failure, Result, nearest};

/// An enum whose members are words in files, sheets and Python and numbers in C.
pub trait Choice: Copy + Sized + 'static {
    /// The words, in the order of the numbers.
    const WORDS: &'static [&'static str];
    /// The members, in the same order.
    const MEMBERS: &'static [Self];

    /// The member at that place.
    #[must_use]
    fn at(place: usize) -> Option<Self> {
        Self::MEMBERS.get(place).copied()
    }
}

impl Choice for bool {
    const WORDS: &'static [&'static str] = &["no", "yes"];
    const MEMBERS: &'static [Self] = &[false, true];
}

/// The place of a word among the choices, case aside.
///
/// # Errors
/// `WORD_UNKNOWN`, with the nearest word.
pub fn place_of(word: &str, words: &[&str], path: &str) -> Result<usize> {
    let wanted = word.trim();
    if let Some(place) = words.iter().position(|known| known.eq_ignore_ascii_case(wanted)) {
        return Ok(place);
    }
    let remedy = match nearest(wanted, words.iter().copied()) {
        Some(near) => format!("did you mean {near}?"),
        None => "use one of the words".to_owned(),
    };
    let code = if wanted.is_empty() { Code::EmptyCell } else { Code::WordUnknown };
    Err(Failure::new(code, path).written(format!("\"{wanted}\"")).allowed(words.join(", ")).remedy(remedy))
}

/// Declares an enum of site words:
/// `choice! { /// doc pub enum Texture { /// doc Trowelled = "trowelled", ... } }`.
#[macro_export]
macro_rules! choice {
    ($(#[$doc:meta])* pub enum $name:ident { $($(#[$member_doc:meta])* $member:ident = $word:literal),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
        pub enum $name { $($(#[$member_doc])* #[serde(rename = $word)] $member),+ }

        impl $crate::operation::Choice for $name {
            const WORDS: &'static [&'static str] = &[$($word),+];
            const MEMBERS: &'static [Self] = &[$(Self::$member),+];
        }

        impl $name {
            /// The word for it.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self { $(Self::$member => $word),+ }
            }
        }
    };
}
