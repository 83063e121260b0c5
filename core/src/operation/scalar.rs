//! From a plain typed function to the flat call of a scalar row.

use super::choice::Choice;
use crate::failure::{Code, Failure, Result};
use crate::note::NoteCode;
use crate::quantity::Typed;

/// A whole number in a typed function.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Count(pub i64);

/// What a scalar port can be made into.
pub trait Scalar: Sized {
    /// From the flat number.
    ///
    /// # Errors
    /// `NOT_A_COUNT`, `WORD_UNKNOWN`.
    fn from_number(number: f64) -> Result<Self>;
}

impl<Q: Typed> Scalar for Q {
    #[inline(always)]
    fn from_number(number: f64) -> Result<Self> {
        Ok(Q::from_base(number))
    }
}

impl Scalar for Count {
    #[inline]
    fn from_number(number: f64) -> Result<Self> {
        whole(number).map(Self)
    }
}

/// A site word as a scalar port takes it.
#[derive(Clone, Copy, Debug)]
pub struct Word<C>(pub C);

impl<C: Choice> Scalar for Word<C> {
    fn from_number(number: f64) -> Result<Self> {
        let place = whole(number).ok().and_then(|place| usize::try_from(place).ok());
        place.and_then(C::at).map(Self).ok_or_else(|| {
            let allowed = format!("a whole number from 0 to {}", C::WORDS.len().saturating_sub(1));
            Failure::new(Code::WordUnknown, "")
                .written(number.to_string())
                .allowed(allowed)
                .remedy("use the constants")
        })
    }
}

/// The whole number behind a double.
///
/// # Errors
/// `NOT_A_COUNT`.
pub fn whole(number: f64) -> Result<i64> {
    const EXACT: f64 = 9_007_199_254_740_992.0;
    if number.fract() == 0.0 && number.abs() <= EXACT {
        return Ok(number as i64);
    }
    Err(Failure::new(Code::NotACount, "")
        .written(number.to_string())
        .allowed("a whole number")
        .remedy("give a whole number"))
}

/// What the closure of [`scalar!`](crate::scalar) may give: numbers, with or without a note.
pub trait Flat {
    /// Writes the numbers and gives the note.
    fn write(self, results: &mut [f64]) -> Option<NoteCode>;

    /// Writes the numbers into a row of columns and gives the note.
    fn put(self, columns: &mut [&mut [f64]], row: usize) -> Option<NoteCode>;
}

impl<const N: usize> Flat for [f64; N] {
    #[inline(always)]
    fn write(self, results: &mut [f64]) -> Option<NoteCode> {
        for (result, number) in results.iter_mut().zip(self) {
            *result = number;
        }
        None
    }

    #[inline(always)]
    fn put(self, columns: &mut [&mut [f64]], row: usize) -> Option<NoteCode> {
        for (column, number) in columns.iter_mut().zip(self) {
            if let Some(result) = column.get_mut(row) {
                *result = number;
            }
        }
        None
    }
}

impl<const N: usize> Flat for ([f64; N], Option<NoteCode>) {
    #[inline(always)]
    fn write(self, results: &mut [f64]) -> Option<NoteCode> {
        self.0.write(results);
        self.1
    }

    #[inline(always)]
    fn put(self, columns: &mut [&mut [f64]], row: usize) -> Option<NoteCode> {
        self.0.put(columns, row);
        self.1
    }
}

/// The call of a scalar row: `scalar!(super::fall, (drop: Length, run: Length) => |slope| [slope.base()])`.
/// Each name is the port's, so that a refusal at the conversion names it. Behind a semicolon `blocks` may name a function that works
/// a whole block out at once where it can, and says so.
#[macro_export]
macro_rules! scalar {
    ($function:path, ($($port:ident: $type:ty),+ $(,)?) => |$answer:ident| $flat:expr $(; blocks $blocks:path)?) => {{
        const PORTS: usize = [$(stringify!($port)),+].len();

        #[inline(always)]
        fn row([$($port),+]: [f64; PORTS]) -> $crate::failure::Result<impl $crate::operation::scalar::Flat> {
            use $crate::operation::scalar::Scalar;
            $(let $port = <$type as Scalar>::from_number($port).map_err(|failure| failure.under(stringify!($port)))?;)+
            let $answer = $function($($port),+)?;
            Ok($flat)
        }

        fn one(inputs: &[f64], results: &mut [f64]) -> $crate::failure::Result<Option<$crate::note::NoteCode>> {
            let Ok(inputs) = <[f64; PORTS]>::try_from(inputs) else {
                return Err($crate::operation::block::arity());
            };
            Ok($crate::operation::scalar::Flat::write(row(inputs)?, results))
        }

        fn block(inputs: &[&[f64]], results: &mut [&mut [f64]], told: $crate::operation::block::Told<'_>) {
            $(if $blocks(inputs, results) {
                return;
            })?
            $crate::operation::block::each(inputs, results, told, row);
        }

        $crate::operation::Call::Scalar($crate::operation::ScalarCall { one, block })
    }};
}
