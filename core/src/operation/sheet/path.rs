//! Paths to a value in a record: `level.rows[2].rod`, `walls["north.west"].length`.

/// One step of a path: a key, or a place in a list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Step {
    /// A key of an object.
    Key(String),
    /// A place in a list.
    Index(usize),
}

/// The steps of a path; `None` where it cannot be read. The first step is a key.
pub(super) fn parse(path: &str) -> Option<Vec<Step>> {
    let (first, mut rest) = step(path.trim())?;
    if matches!(first, Step::Index(_)) {
        return None;
    }
    let mut steps = vec![first];
    while !rest.is_empty() {
        let behind = match rest.strip_prefix('.') {
            Some(key) if !key.starts_with('[') => key,
            None if rest.starts_with('[') => rest,
            _ => return None,
        };
        let (next, more) = step(behind)?;
        steps.push(next);
        rest = more;
    }
    Some(steps)
}

/// The step at the front, and what follows it.
fn step(path: &str) -> Option<(Step, &str)> {
    let Some(inside) = path.strip_prefix('[') else {
        let (key, rest) = path.split_at(path.find(['.', '[']).unwrap_or(path.len()));
        return (!key.is_empty()).then(|| (Step::Key(key.to_owned()), rest));
    };
    if inside.starts_with('"') {
        let mut stream = serde_json::Deserializer::from_str(inside).into_iter::<String>();
        let key = stream.next()?.ok()?;
        let rest = inside.get(stream.byte_offset()..)?.strip_prefix(']')?;
        return Some((Step::Key(key), rest));
    }
    let (index, rest) = inside.split_once(']')?;
    Some((Step::Index(index.parse().ok()?), rest))
}

/// The path one key further down.
pub(super) fn below(path: &str, key: &str) -> String {
    let special = |c: char| matches!(c, '.' | '[' | ']' | '"') || c.is_control();
    let quoted = key.is_empty() || key.trim() != key || key.contains(special) || is_title(key);
    match (quoted, path.is_empty()) {
        (true, _) => format!("{path}[{}]", serde_json::Value::from(key)),
        (false, true) => key.to_owned(),
        (false, false) => format!("{path}.{key}"),
    }
}

/// Whether a text in the first row is the title of the column of paths.
pub(super) fn is_title(text: &str) -> bool {
    text.trim().eq_ignore_ascii_case("path")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn key(key: &str) -> Step {
        Step::Key(key.to_owned())
    }

    #[test]
    fn paths_are_read() {
        assert_eq!(parse("a"), Some(vec![key("a")]));
        assert_eq!(
            parse(" a.b[2][0].c "),
            Some(vec![key("a"), key("b"), Step::Index(2), Step::Index(0), key("c")])
        );
        assert_eq!(parse(r#"walls["north.west"].x"#), Some(vec![key("walls"), key("north.west"), key("x")]));
        assert_eq!(parse(r#"["path"]"#), Some(vec![key("path")]));
    }

    #[test]
    fn what_is_no_path_is_refused() {
        for wrong in ["", ".", "a.", "a..b", ".a", "[0]", "a[", "a[x]", "a[-1]", "a[0]b", "a.[0]", "a[\"b]"] {
            assert_eq!(parse(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn any_key_comes_back() {
        for name in
            ["plain", "north wall", "north.west", "a[0]", "", " x", "say \"hi\"", "path", "PATH", "\n"]
        {
            assert_eq!(parse(&below("", name)), Some(vec![key(name)]), "{name:?}");
            assert_eq!(parse(&below("up", name)), Some(vec![key("up"), key(name)]), "{name:?}");
        }
    }
}
