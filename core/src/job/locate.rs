//! The line of a text on which the value of a path stands.

use super::read::is_json;
use serde::de::IgnoredAny;

/// The line of the value at a path such as `level.setups[0].rows[1].rods[2]`, or of the nearest thing above it that stands in
/// the text. The first line is 1.
#[must_use]
pub(super) fn line_of(text: &str, path: &str) -> Option<usize> {
    let steps = steps(path);
    let offset = if is_json(text) { json(text, &steps) } else { toml(text, &steps) };
    offset.map(|offset| 1 + text.bytes().take(offset).filter(|&byte| byte == b'\n').count())
}

enum Step<'a> {
    Key(&'a str),
    Index(usize),
}

fn steps(path: &str) -> Vec<Step<'_>> {
    let parts = path.split(['.', '[']).map(|part| part.trim_end_matches(']')).filter(|part| !part.is_empty());
    parts.map(|part| part.parse().map_or(Step::Key(part), Step::Index)).collect()
}

/// The offset in a TOML text.
fn toml(text: &str, steps: &[Step<'_>]) -> Option<usize> {
    let root = toml::de::DeTable::parse(text).ok()?;
    let (first, rest) = steps.split_first()?;
    let Step::Key(key) = first else { return None };
    let mut here = root.get_ref().get(*key)?;
    let mut found = here.span().start;
    for step in rest {
        let next = match step {
            Step::Key(key) => here.get_ref().get(*key),
            Step::Index(index) => here.get_ref().get(*index),
        };
        let Some(next) = next else { break };
        here = next;
        found = here.span().start;
    }
    Some(found)
}

/// The offset in a JSON text, by a walk that skips whole values.
fn json(text: &str, steps: &[Step<'_>]) -> Option<usize> {
    let mut at = skip_blank(text, 0);
    for step in steps {
        let next = match step {
            Step::Key(key) => member(text, at, |name, _| name == Some(*key)),
            Step::Index(index) => member(text, at, |_, place| place == *index),
        };
        let Some(next) = next else { break };
        at = next;
    }
    (!steps.is_empty()).then_some(at)
}

/// The offset of the member of an object or a list that is wanted.
fn member(text: &str, open: usize, wanted: impl Fn(Option<&str>, usize) -> bool) -> Option<usize> {
    let object = text.as_bytes().get(open) == Some(&b'{');
    let mut at = skip_blank(text, open + 1);
    for place in 0.. {
        let mut name = None;
        if object {
            let (key, end) = value(text, at)?;
            name = Some(key.trim_matches('"'));
            at = skip_blank(text, end);
            at = skip_blank(text, text[at..].strip_prefix(':').map(|_| at + 1)?);
        }
        if wanted(name, place) {
            return text.get(at..).filter(|rest| !rest.is_empty()).map(|_| at);
        }
        let (_, end) = value(text, at)?;
        at = skip_blank(text, end);
        at = skip_blank(text, text[at..].strip_prefix(',').map(|_| at + 1)?);
    }
    None
}

/// The whole value that starts here, and its end.
fn value(text: &str, at: usize) -> Option<(&str, usize)> {
    let rest = text.get(at..)?;
    let mut stream = serde_json::Deserializer::from_str(rest).into_iter::<IgnoredAny>();
    stream.next()?.ok()?;
    let length = stream.byte_offset();
    Some((&rest[..length], at + length))
}

fn skip_blank(text: &str, at: usize) -> usize {
    let rest = text.get(at..).unwrap_or_default();
    at + rest.len() - rest.trim_start().len()
}

#[cfg(test)]
mod tests {
    use super::line_of;

    #[test]
    fn finds_lines_in_toml_and_json() {
        let toml = "a = 1\n[b]\nc = [\n  \"x\",\n  \"y\",\n]\n[[d]]\ne = 1\n[[d]]\ne = 2\n";
        assert_eq!(line_of(toml, "a"), Some(1));
        assert_eq!(line_of(toml, "b.c[1]"), Some(5));
        assert_eq!(line_of(toml, "d[1].e"), Some(10));
        assert_eq!(line_of(toml, "b.c[7]"), line_of(toml, "b.c"));
        assert_eq!(line_of(toml, "z"), None);
        let json =
            "{\n \"a\": 1,\n \"b\": {\"c\": [\n  \"x\",\n  \"y\"]},\n \"d\": [{\"e\": 1},\n {\"e\": 2}]\n}";
        assert_eq!(line_of(json, "b.c[1]"), Some(5));
        assert_eq!(line_of(json, "d[1].e"), Some(7));
        assert_eq!(line_of(json, "d[9]"), Some(6));
    }
}
