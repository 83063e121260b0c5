//! One macro declares a quantity: its uom type, its units, and the run-time table that reading, printing and
//! the bindings use. A factor stands once, so a text, a C argument and a typed call cannot disagree.

/// Declares one module per quantity, each with the uom quantity and the run-time units in `unit`.
macro_rules! declare_quantities {
    ($(
        $(#[$doc:meta])*
        $module:ident :: $quantity:ident, $title:literal, <$($dimension:ident)+> $(, kind $kind:path)?;
        sign $sign:ident;
        $( @$unit:ident = $coefficient:expr $(, $constant:expr)?; $symbol:literal, $suffix:literal,
            [$($spelling:literal),*]; )+
    )+) => {
        $(
            $(#[$doc])*
            pub mod $module {
                #![allow(missing_docs, reason = "uom's macro writes these items, their names say it")]
                uom::quantity! {
                    $(#[$doc])*
                    quantity: $quantity; $title;
                    /// Dimension: length, mass, time, temperature, money.
                    dimension: Q<$($dimension),+>;
                    $(kind: dyn $kind;)?
                    units {
                        $( @$unit: $coefficient $(, $constant)?; $symbol, $symbol, $symbol; )+
                    }
                }

                /// The run-time units of this quantity.
                #[allow(non_upper_case_globals, reason = "each is named as its uom unit")]
                pub mod unit {
                    use crate::quantity::unit::Unit;
                    type Typed = crate::quantity::$quantity;
                    $(
                        #[doc = concat!("The unit `", $symbol, "`.")]
                        pub static $unit: Unit = {
                            #[inline(always)]
                            fn to_base(number: f64) -> f64 {
                                Typed::new::<super::$unit>(number).value
                            }
                            #[inline(always)]
                            fn from_base(base: f64) -> f64 {
                                <Typed as $crate::quantity::Typed>::from_base(base).get::<super::$unit>()
                            }
                            Unit {
                                symbol: $symbol,
                                suffix: $suffix,
                                spellings: &[$symbol, $($spelling),*],
                                to_base,
                                from_base,
                                all_to_base: |numbers, bases| {
                                    bases.iter_mut().zip(numbers).for_each(|(base, number)| *base = to_base(*number));
                                },
                                all_from_base: |bases, numbers| {
                                    numbers.iter_mut().zip(bases).for_each(|(number, base)| *number = from_base(*base));
                                },
                            }
                        };
                    )+
                }
            }
        )+

        /// Every quantity at run time, named as its module.
        #[allow(non_upper_case_globals, reason = "each is named as its module")]
        pub mod kinds {
            use crate::quantity::unit::{QuantityType, Sign};
            $(
                $(#[$doc])*
                pub static $module: QuantityType = QuantityType {
                    name: $title,
                    sign: Sign::$sign,
                    units: &[$(&super::$module::unit::$unit),+],
                };
            )+
            /// All of them, in the order of declaration.
            pub static ALL: &[&QuantityType] = &[$(&$module),+];
        }

        $(
            impl $crate::quantity::Typed for $quantity {
                const TYPE: &'static $crate::quantity::unit::QuantityType = &kinds::$module;
                #[inline(always)]
                fn from_base(base: f64) -> Self {
                    Self { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value: base }
                }
                #[inline(always)]
                fn base(self) -> f64 {
                    self.value
                }
            }
            impl serde::Serialize for $quantity {
                fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                    serializer.serialize_str(&$crate::quantity::write::si_text(*self))
                }
            }
            impl<'de> serde::Deserialize<'de> for $quantity {
                fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                    $crate::quantity::given::deserialize_typed(deserializer)
                }
            }
        )+
    };
}
