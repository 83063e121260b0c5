//! Names of the shots of a grid: rows lettered from the front, columns numbered from the left.
//!
//! Row A is the row nearest the front, A1 its first shot from the left; after row Z come AA, AB and so on.

/// The letters of a row; the first row, 0, is A.
#[must_use]
pub fn row_letters(row: u32) -> String {
    let mut left = u64::from(row) + 1;
    let mut letters = Vec::new();
    while left > 0 {
        left -= 1;
        letters.push(char::from(b'A' + (left % 26) as u8));
        left /= 26;
    }
    letters.iter().rev().collect()
}

/// The name of a shot; row and column count from 0: `shot_name(3, 2)` is D3.
#[must_use]
pub fn shot_name(row: u32, column: u32) -> String {
    format!("{}{}", row_letters(row), u64::from(column) + 1)
}

/// [`shot_name`] for places in a list.
#[must_use]
pub(crate) fn grid_shot(row: usize, column: usize) -> String {
    shot_name(u32::try_from(row).unwrap_or(u32::MAX), u32::try_from(column).unwrap_or(u32::MAX))
}

/// The row and column, from 0, of a name that [`shot_name`] could have made, small letters allowed; none for any other.
#[must_use]
pub fn row_and_column(name: &str) -> Option<(u32, u32)> {
    let name = name.trim();
    let split = name.find(|c: char| !c.is_ascii_alphabetic())?;
    let (letters, digits) = name.split_at(split);
    if letters.is_empty() || digits.starts_with('0') || !digits.bytes().all(|b| b.is_ascii_digit()) {
        return None;
    }
    let mut row: u64 = 0;
    for letter in letters.bytes() {
        let value = u64::from(letter.to_ascii_uppercase() - b'A') + 1;
        row = row.checked_mul(26)?.checked_add(value)?;
    }
    let column: u64 = digits.parse().ok()?;
    Some((u32::try_from(row - 1).ok()?, u32::try_from(column - 1).ok()?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_go_on_after_z() {
        let letters = [0, 25, 26, 27, 51, 52, 701, 702].map(row_letters);
        assert_eq!(letters, ["A", "Z", "AA", "AB", "AZ", "BA", "ZZ", "AAA"]);
        assert_eq!(shot_name(3, 2), "D3");
        assert_eq!(shot_name(u32::MAX, u32::MAX), format!("{}4294967296", row_letters(u32::MAX)));
    }

    #[test]
    fn names_read_back() {
        for row in (0..2000).chain([u32::MAX]) {
            for column in [0, 8, 9, 99, u32::MAX] {
                assert_eq!(row_and_column(&shot_name(row, column)), Some((row, column)));
            }
        }
        assert_eq!(row_and_column(" d3 "), Some((3, 2)));
        for other in
            ["", "A", "3", "A0", "A03", "A-1", "A1B", "Ä1", "A1 1", "ZZZZZZZZZZZZZZZZZZ1", "A4294967297"]
        {
            assert_eq!(row_and_column(other), None, "{other}");
        }
    }

    #[test]
    fn every_name_is_another() {
        let names: std::collections::HashSet<String> =
            (0..800).flat_map(|row| (0..30).map(move |column| shot_name(row, column))).collect();
        assert_eq!(names.len(), 800 * 30);
    }
}
