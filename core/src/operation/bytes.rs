//! The bytes of a file as a value: shared, cheap to clone, and written as text where a border knows text only.

use crate::failure::{Code, Failure, Place, Result};
use base64::DecodeError;
use base64::Engine;
use base64::alphabet::STANDARD;
use base64::engine::{DecodePaddingMode, GeneralPurpose, GeneralPurposeConfig};
use std::borrow::Cow;
use std::fmt;
use std::sync::Arc;

/// What a text starts with whose rest is base64.
const MARK: &str = "base64:";

/// The standard alphabet; the signs that fill up the end may be left out.
const BASE64: GeneralPurpose = GeneralPurpose::new(
    &STANDARD,
    GeneralPurposeConfig::new().with_decode_padding_mode(DecodePaddingMode::Indifferent),
);

/// The bytes of a file.
///
/// As text, in JSON, TOML and sheets: a text that starts with `base64:` is the bytes that the rest stands for, by the
/// standard alphabet of RFC 4648, with or without the filling signs, white space left out; any other text is its own
/// UTF-8.
#[derive(Clone)]
pub struct Bytes(Arc<dyn AsRef<[u8]> + Send + Sync>);

impl Bytes {
    /// Bytes that their owner keeps; nothing is copied.
    pub fn shared(owner: impl AsRef<[u8]> + Send + Sync + 'static) -> Self {
        Self(Arc::new(owner))
    }

    /// The bytes that a text stands for.
    ///
    /// # Errors
    /// `NOT_BASE64`, with the place of the sign in the text.
    pub fn from_text(text: &str) -> Result<Self> {
        let Some(code) = text.strip_prefix(MARK) else { return Ok(Self::shared(text.to_owned())) };
        let close = match code.bytes().any(|byte| byte.is_ascii_whitespace()) {
            true => Cow::Owned(code.split_ascii_whitespace().collect::<String>()),
            false => Cow::Borrowed(code),
        };
        BASE64.decode(close.as_bytes()).map(Self::shared).map_err(|error| refused(code, &error))
    }

    /// The text that stands for these bytes: their own, where they are UTF-8, else base64.
    #[must_use]
    pub fn to_text(&self) -> String {
        match std::str::from_utf8(self.as_slice()) {
            Ok(text) if !text.starts_with(MARK) => text.to_owned(),
            _ => format!("{MARK}{}", BASE64.encode(self.as_slice())),
        }
    }

    /// The bytes.
    #[must_use]
    pub fn as_slice(&self) -> &[u8] {
        (*self.0).as_ref()
    }
}

/// The failure for what is no base64: the sign and its place, or the length.
fn refused(code: &str, error: &DecodeError) -> Box<Failure> {
    let failure = Failure::new(Code::NotBase64, "")
        .allowed("letters, digits, + and /, in groups of four")
        .remedy("encode the bytes in base64, or leave base64: out where the text is the file itself");
    match error {
        DecodeError::InvalidByte(at, sign) | DecodeError::InvalidLastSymbol(at, sign) => {
            // The sign was counted without the white space.
            let at = code.bytes().enumerate().filter(|(_, byte)| !byte.is_ascii_whitespace()).nth(*at);
            let place = MARK.len() + at.map_or(0, |(at, _)| at);
            let sign =
                if sign.is_ascii() { format!("\"{}\"", char::from(*sign)) } else { "no ASCII".to_owned() };
            failure.written(sign).at(Place::Index(place))
        }
        _ => failure.written(format!("a length of {}", code.len())),
    }
}

impl fmt::Debug for Bytes {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} bytes", self.as_slice().len())
    }
}

impl PartialEq for Bytes {
    fn eq(&self, other: &Self) -> bool {
        self.as_slice() == other.as_slice()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Vec<u8> {
        Bytes::from_text(text).unwrap().as_slice().to_vec()
    }

    #[test]
    fn a_plain_text_is_its_own_bytes() {
        for text in ["", "x,y\n1,2\n", "\u{bd} in", "Base64:AA==", " base64:AA=="] {
            assert_eq!(read(text), text.as_bytes());
        }
    }

    /// The test vectors of RFC 4648, section 10.
    #[test]
    fn base64_is_that_of_the_standard() {
        let vectors = [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg=="),
            ("fooba", "Zm9vYmE="),
            ("foobar", "Zm9vYmFy"),
        ];
        for (plain, code) in vectors {
            assert_eq!(read(&format!("base64:{code}")), plain.as_bytes());
            assert_eq!(read(&format!("base64:{}", code.trim_end_matches('='))), plain.as_bytes());
        }
        assert_eq!(read("base64: Zm9v\r\nYmFy\n"), b"foobar");
    }

    #[test]
    fn every_file_comes_back_from_its_text() {
        let all: Vec<u8> = (0..=255).collect();
        for file in [&b""[..], b"base64:", b"x y", &all, &[0xff], &[0, 0]] {
            let bytes = Bytes::shared(file.to_vec());
            assert_eq!(Bytes::from_text(&bytes.to_text()).unwrap(), bytes);
        }
    }

    #[test]
    fn what_is_no_base64_is_refused_at_its_place() {
        let refused = |text: &str| {
            let failure = Bytes::from_text(text).unwrap_err();
            assert_eq!(failure.code, Code::NotBase64);
            (failure.written.clone(), failure.place)
        };
        assert_eq!(refused("base64:Zm9v*mFy"), ("\"*\"".to_owned(), Place::Index(11)));
        assert_eq!(refused("base64:Zm\n9v\n*mFy"), ("\"*\"".to_owned(), Place::Index(13)));
        assert_eq!(refused("base64:\u{e9}").0, "no ASCII");
        assert_eq!(refused("base64:Z"), ("a length of 1".to_owned(), Place::Unknown));
    }
}
