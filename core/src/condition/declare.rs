//! How a finding is declared: its words in order of worse, and what is said of each.

/// Declares every finding: an enum of its words, its name, and its place in the records.
///
/// `field: Type, "meaning", ask "how to find out" [, taken Member because "why"] { Member = "word" "what it says", ... }`. Words grow
/// worse from the first to the last; a last word `unknown` stands outside that order.
macro_rules! findings {
    ($( $field:ident: $Type:ident, $meaning:literal, ask $ask:literal $(, taken $Taken:ident because $why:literal)?
        { $( $Member:ident = $word:literal $said:literal ),+ $(,)? } )+) => {
        $( $crate::choice! {
            #[doc = $meaning]
            pub enum $Type { $( #[doc = $said] $Member = $word ),+ }
        } )+

        /// A finding by its name.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
        pub enum Finding { $( #[doc = $meaning] $Type ),+ }

        impl Finding {
            /// Every finding.
            pub const ALL: &'static [Self] = &[$(Self::$Type),+];
            /// Their names, in the same order.
            pub const NAMES: &'static [&'static str] = &[$(stringify!($field)),+];

            /// What it is about.
            #[must_use]
            pub const fn meaning(self) -> &'static str {
                match self { $( Self::$Type => $meaning, )+ }
            }

            /// How to find it out.
            #[must_use]
            pub const fn ask(self) -> &'static str {
                match self { $( Self::$Type => $ask, )+ }
            }

            /// Its words, each worse than the one before; `unknown` behind them stands outside the order.
            #[must_use]
            pub const fn words(self) -> &'static [&'static str] {
                match self { $( Self::$Type => <$Type as $crate::operation::Choice>::WORDS, )+ }
            }

            /// What each word says.
            #[must_use]
            pub const fn said(self) -> &'static [&'static str] {
                match self { $( Self::$Type => &[$($said),+], )+ }
            }

            /// The word that is taken where nothing is said, and why; most findings have none and are asked for.
            #[must_use]
            pub const fn taken(self) -> Option<(usize, &'static str)> {
                match self { $( Self::$Type => findings!(@taken $Type $($Taken $why)?), )+ }
            }
        }

        /// What was found on the old slab, and what is wanted of it: nothing of it must be given.
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
        #[serde(deny_unknown_fields)]
        pub struct Findings {
            $( #[doc = $meaning] #[serde(default, skip_serializing_if = "Option::is_none")] pub $field: Option<$Type>, )+
        }

        impl Findings {
            /// The place of the word given.
            #[must_use]
            pub fn get(&self, finding: Finding) -> Option<usize> {
                match finding { $( Finding::$Type => self.$field.map(|word| word as usize), )+ }
            }

            /// With another word; the place of no word takes the finding out.
            pub fn set(&mut self, finding: Finding, word: Option<usize>) {
                match finding {
                    $( Finding::$Type => self.$field = word.and_then(<$Type as $crate::operation::Choice>::at), )+
                }
            }
        }

        /// The findings as a crew writes them: words, or a measure in place of a word, or the five short answers.
        #[derive(Clone, Debug, Default, PartialEq, serde::Serialize, serde::Deserialize, schemars::JsonSchema)]
        #[serde(deny_unknown_fields)]
        pub struct FindingsInput {
            /// The five short answers. What is given beside them goes before them.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub quick: Option<QuickInput>,
            /// Whether pouring straight on, with nothing done to make or break bond, is judged too.
            #[serde(default, skip_serializing_if = "std::ops::Not::not")]
            pub judge_partly_bonded: bool,
            /// Width of the widest crack, measured.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub measured_crack: Option<Given<Length>>,
            /// Greatest step across a crack or a joint, measured.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub measured_step: Option<Given<Length>>,
            /// Share of the slab that sounds hollow, measured.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub measured_hollow: Option<Given<Share>>,
            /// Greatest depth of scaling, measured.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub measured_scaling: Option<Given<Length>>,
            /// Thickness of the old slab, measured in a hole or at an edge.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub measured_thickness: Option<Given<Length>>,
            /// Strength of the old concrete, tested.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub measured_strength: Option<Given<Pressure>>,
            /// The least thickness that the overlay has room for.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub measured_room: Option<Given<Length>>,
            $( #[doc = $meaning] #[serde(default, skip_serializing_if = "Option::is_none")] pub $field: Option<$Type>, )+
        }

        impl FindingsInput {
            /// The words as they were given.
            pub(super) fn words(&self) -> Findings {
                Findings { $( $field: self.$field ),+ }
            }
        }

        impl From<Findings> for FindingsInput {
            fn from(words: Findings) -> Self {
                Self { $( $field: words.$field, )+ ..Self::default() }
            }
        }
    };
    (@taken $Type:ident) => { None };
    (@taken $Type:ident $Taken:ident $why:literal) => { Some(($Type::$Taken as usize, $why)) };
}
pub(super) use findings;

use super::findings::Finding;

/// The word behind the order: asked, and not to be known.
pub const UNKNOWN: &str = "unknown";

impl Finding {
    /// Its name: `crack_width`.
    #[must_use]
    pub fn name(self) -> &'static str {
        Self::NAMES.get(self as usize).copied().unwrap_or_default()
    }

    /// The place of the word `unknown`, where the finding has it.
    #[must_use]
    pub fn unknown(self) -> Option<usize> {
        self.words().iter().position(|word| *word == UNKNOWN)
    }

    /// The place of its worst word.
    #[must_use]
    pub fn worst(self) -> usize {
        self.words().len().saturating_sub(if self.unknown().is_some() { 2 } else { 1 })
    }

    /// What a word of it says.
    #[must_use]
    pub fn says(self, word: usize) -> &'static str {
        self.said().get(word).copied().unwrap_or_default()
    }
}
