//! Numbers as a tape shows them: whole numbers, decimals, fractions and mixed numbers.

/// What stands at the front of a text.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Scan {
    /// A number and how many bytes it took.
    Number(f64, usize),
    /// A comma that could be a decimal comma; the number it would be with it taken as thousands.
    Comma(usize),
    /// No number.
    None,
}

/// Reads a number without sign: `5`, `4.62`, `.5`, `3/4`, `3 1/2`, `3-1/2`, `4,000`.
pub(super) fn scan(text: &str) -> Scan {
    let bytes = text.as_bytes();
    let Some((whole, used, commas)) = decimal(bytes) else { return Scan::None };
    let Some((value, plain)) = parse(&text[..used], commas) else { return Scan::Comma(used) };
    if !plain {
        return Scan::Number(value, used);
    }
    debug_assert!(whole);
    match fraction(&bytes[used..]) {
        Some((bottom, more)) => Scan::Number(value / bottom, used + more),
        None => mixed(bytes, used, value),
    }
}

/// The extent of a decimal number; whether it holds digits only; how many commas it has.
fn decimal(bytes: &[u8]) -> Option<(bool, usize, usize)> {
    let (mut used, mut digits, mut dots, mut commas) = (0, 0, 0, 0);
    while let Some(&byte) = bytes.get(used) {
        let next_is_digit = bytes.get(used + 1).is_some_and(u8::is_ascii_digit);
        match byte {
            b'0'..=b'9' => digits += 1,
            b'.' if dots == 0 && (next_is_digit || digits > 0) => dots = 1,
            b',' if digits > 0 && next_is_digit => commas += 1,
            _ => break,
        }
        used += 1;
    }
    used += exponent(&bytes[used..], digits);
    (digits > 0).then_some((dots == 0 && commas == 0, used, commas))
}

/// The bytes of an exponent such as `e-7`.
fn exponent(bytes: &[u8], digits: usize) -> usize {
    if digits == 0 || !matches!(bytes.first(), Some(b'e' | b'E')) {
        return 0;
    }
    let sign = usize::from(matches!(bytes.get(1), Some(b'+' | b'-')));
    let power = bytes[1 + sign..].iter().take_while(|byte| byte.is_ascii_digit()).count();
    if power == 0 { 0 } else { 1 + sign + power }
}

/// The value, and whether the text is digits alone. Commas must part thousands.
fn parse(text: &str, commas: usize) -> Option<(f64, bool)> {
    if commas == 0 {
        let plain = text.bytes().all(|byte| byte.is_ascii_digit());
        return text.parse().ok().map(|value| (value, plain));
    }
    let whole = text.split_once('.').map_or(text, |(whole, _)| whole);
    let mut groups = whole.split(',');
    let lead = groups.next()?.len();
    let thousands =
        (1..=3).contains(&lead) && groups.clone().count() == commas && groups.all(|g| g.len() == 3);
    let digits: String = text.chars().filter(|&c| c != ',').collect();
    if thousands { digits.parse().ok().map(|value| (value, false)) } else { None }
}

/// `/8`: the bottom of a fraction and its bytes. A bottom of zero is no fraction.
fn fraction(bytes: &[u8]) -> Option<(f64, usize)> {
    let rest = bytes.strip_prefix(b"/")?;
    let digits = rest.iter().take_while(|byte| byte.is_ascii_digit()).count();
    if digits == 0 || digits > 9 {
        return None;
    }
    let bottom = rest[..digits].iter().fold(0.0, |sum, byte| sum * 10.0 + f64::from(byte - b'0'));
    (bottom > 0.0).then_some((bottom, digits + 1))
}

/// A whole number, then perhaps ` 1/2` or `-1/2`.
fn mixed(bytes: &[u8], used: usize, whole: f64) -> Scan {
    let gap = bytes[used..].iter().take_while(|&&byte| byte == b' ').count();
    let hyphen = usize::from(gap == 0 && bytes.get(used) == Some(&b'-'));
    let start = used + gap + hyphen;
    let digits = bytes[start..].iter().take_while(|byte| byte.is_ascii_digit()).count();
    if gap + hyphen == 0 || digits == 0 || digits > 9 {
        return Scan::Number(whole, used);
    }
    let top = bytes[start..start + digits].iter().fold(0.0, |sum, byte| sum * 10.0 + f64::from(byte - b'0'));
    match fraction(&bytes[start + digits..]) {
        // One division of exact whole numbers: `3 1/3` is as near as a double can be.
        Some((bottom, more)) => Scan::Number((whole * bottom + top) / bottom, start + digits + more),
        None => Scan::Number(whole, used),
    }
}
