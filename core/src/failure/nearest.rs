//! The known name nearest to a mistyped one.

/// The nearest of the known names, if one is near enough to be meant.
#[must_use]
pub fn nearest<'a>(name: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let length = name.chars().count();
    // A word all of whose letters are changed is another word.
    let limit = (1 + length / 3).min(length.saturating_sub(1));
    let measured = known.into_iter().map(|other| (distance(name, other), other));
    measured.filter(|&(far, _)| far <= limit).min_by_key(|&(far, _)| far).map(|(_, other)| other)
}

/// Edits from one name to the other: insert, delete, change, or swap two neighbours.
fn distance(a: &str, b: &str) -> usize {
    let (a, b): (Vec<char>, Vec<char>) =
        (a.to_lowercase().chars().collect(), b.to_lowercase().chars().collect());
    let width = b.len() + 1;
    let mut table = vec![0; (a.len() + 1) * width];
    for i in 0..=a.len() {
        for j in 0..=b.len() {
            let here = i * width + j;
            if i == 0 || j == 0 {
                table[here] = i + j;
                continue;
            }
            let change = usize::from(a[i - 1] != b[j - 1]);
            let mut best =
                (table[here - width] + 1).min(table[here - 1] + 1).min(table[here - width - 1] + change);
            if i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1] {
                best = best.min(table[here - 2 * width - 2] + 1);
            }
            table[here] = best;
        }
    }
    table[table.len() - 1]
}

#[cfg(test)]
mod tests {
    use super::nearest;

    #[test]
    fn finds_slips_and_leaves_strangers() {
        let known = ["outline", "level", "finish", "order"];
        assert_eq!(nearest("oultine", known), Some("outline"));
        assert_eq!(nearest("finsh", known), Some("finish"));
        assert_eq!(nearest("weather", known), None);
        assert_eq!(nearest("X", ["A", "B"]), None);
    }
}
