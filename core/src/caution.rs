//! What can hurt someone, in the usual words.

/// Declares every caution with its text.
macro_rules! cautions {
    ($( $id:ident, $name:literal, $text:literal; )+) => {
        /// A caution by name.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[non_exhaustive]
        pub enum Caution { $( #[doc = $text] $id, )+ }

        impl Caution {
            /// Every caution.
            pub const ALL: &'static [Self] = &[$(Self::$id),+];

            /// Its name in JSON.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$id => $name,)+ }
            }

            /// Its text.
            #[must_use]
            pub const fn text(self) -> &'static str {
                match self { $(Self::$id => $text,)+ }
            }
        }
    };
}

cautions! {
    Silica, "silica", "Dry sawing and grinding make silica dust: wet or with extraction, and a mask.";
    Caustic, "caustic", "Fresh concrete burns skin and eyes: gloves, boots, glasses, and water at hand.";
    LocalCode, "local_code", "Local code and licensed practice decide; this is arithmetic, not an approval.";
}
