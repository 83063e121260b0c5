//! The cases of `bad_input.toml`.

use overslab::job::Job;
use overslab_tests::generate::root;
use serde_json::{Map, Value as Json};

/// What a failure must say.
#[derive(Clone, Debug)]
pub(crate) struct Wanted {
    pub(crate) id: String,
    pub(crate) code: String,
    pub(crate) path: String,
    /// The line of a text, the first being 1.
    pub(crate) line: Option<usize>,
    pub(crate) index: Option<usize>,
    pub(crate) written: String,
    pub(crate) allowed: String,
    pub(crate) remedy: String,
}

/// What an operation is called with.
#[derive(Clone, Debug)]
pub(crate) enum Inputs {
    Json(Map<String, Json>),
    Flat(Vec<f64>),
}

/// One operation with bad inputs.
#[derive(Clone, Debug)]
pub(crate) struct BadCall {
    pub(crate) operation: String,
    pub(crate) inputs: Inputs,
    pub(crate) wanted: Wanted,
}

/// One job with a bad place.
#[derive(Clone, Debug)]
pub(crate) struct BadJob {
    case: toml::Table,
}

fn file() -> toml::Table {
    let path = root().join("tests/bad_input.toml");
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    text.parse().unwrap_or_else(|error| panic!("{error}"))
}

fn list(name: &str) -> Vec<toml::Table> {
    let list = file()[name].as_array().unwrap().clone();
    list.into_iter().map(|case| case.as_table().unwrap().clone()).collect()
}

fn text<'a>(case: &'a toml::Table, key: &str) -> &'a str {
    let text = case.get(key).and_then(toml::Value::as_str);
    text.unwrap_or_else(|| panic!("{:?} has no {key}", case.get("id")))
}

impl Wanted {
    fn of(case: &toml::Table, line: Option<usize>) -> Self {
        let own = |key: &str| text(case, key).to_owned();
        let index = case.get("index").map(|index| usize::try_from(index.as_integer().unwrap()).unwrap());
        let words = [own("written"), own("allowed"), own("remedy")];
        assert!(
            words.iter().all(|word| !word.is_empty()),
            "{}: a word that is empty finds everything",
            own("id")
        );
        let [written, allowed, remedy] = words;
        Self { id: own("id"), code: own("code"), path: own("path"), line, index, written, allowed, remedy }
    }
}

/// Every bad call.
pub(crate) fn calls() -> Vec<BadCall> {
    let call = |case: toml::Table| BadCall {
        operation: text(&case, "operation").to_owned(),
        inputs: match case.get("flat") {
            Some(flat) => {
                Inputs::Flat(flat.as_array().unwrap().iter().map(|n| n.as_float().unwrap()).collect())
            }
            None => Inputs::Json(serde_json::from_str(text(&case, "args")).unwrap()),
        },
        wanted: Wanted::of(
            &case,
            case.get("line").map(|line| usize::try_from(line.as_integer().unwrap()).unwrap()),
        ),
    };
    list("call").into_iter().map(call).collect()
}

/// Every bad job.
pub(crate) fn jobs() -> Vec<BadJob> {
    list("job").into_iter().map(|case| BadJob { case }).collect()
}

/// The good job that the bad ones are made from.
pub(crate) fn boat_store() -> String {
    std::fs::read_to_string(root().join("examples/boat_store.toml")).unwrap()
}

/// The same as JSON, one value on a line.
pub(crate) fn boat_store_in_json() -> String {
    serde_json::to_string_pretty(&Job::read(&boat_store()).unwrap()).unwrap()
}

impl BadJob {
    pub(crate) fn in_toml(&self) -> (String, Wanted) {
        match self.case.get("whole") {
            Some(whole) => self.with_line(whole.as_str().unwrap().to_owned(), &self.case, "as it is"),
            None => self.edited(&boat_store(), &self.case, "TOML"),
        }
    }

    pub(crate) fn in_json(&self) -> Option<(String, Wanted)> {
        let edit = self.case.get("json")?.as_table().unwrap();
        Some(self.edited(&boat_store_in_json(), edit, "JSON"))
    }

    fn edited(&self, job: &str, edit: &toml::Table, form: &str) -> (String, Wanted) {
        let (from, to) = (text(edit, "from"), text(edit, "to"));
        let id = text(&self.case, "id");
        assert_eq!(job.matches(from).count(), 1, "{id}: {from:?} must stand once in the {form}");
        self.with_line(job.replace(from, to), edit, form)
    }

    /// The text with what is wanted: the line is that of the marking text, else the first.
    fn with_line(&self, job: String, edit: &toml::Table, form: &str) -> (String, Wanted) {
        let line = match edit.get("line") {
            Some(mark) => {
                let mark = mark.as_str().unwrap();
                let found: Vec<usize> = job
                    .lines()
                    .enumerate()
                    .filter(|(_, line)| line.contains(mark))
                    .map(|(n, _)| n + 1)
                    .collect();
                assert_eq!(found.len(), 1, "{}: {mark:?} must stand on one line", text(&self.case, "id"));
                let offset = edit.get("line_offset").and_then(toml::Value::as_integer).unwrap_or(0);
                usize::try_from(i64::try_from(found[0]).unwrap() + offset).unwrap()
            }
            None => 1,
        };
        let mut wanted = Wanted::of(&self.case, Some(line));
        wanted.id = format!("{} ({form})", wanted.id);
        (job, wanted)
    }
}
