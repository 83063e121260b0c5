//! Every generated file is as its generator makes it.

use overslab_tests::generate::{files, root};
use std::fs;

#[test]
fn generated_files_are_fresh() {
    let bless = std::env::var_os("BLESS").is_some();
    let mut stale = Vec::new();
    for file in files() {
        let path = root().join(&file.path);
        if fs::read_to_string(&path).ok().as_deref() == Some(file.text.as_str()) {
            continue;
        }
        if bless {
            fs::create_dir_all(path.parent().unwrap()).unwrap();
            fs::write(&path, &file.text).unwrap();
        }
        stale.push(file.path);
    }
    let cure = "run `BLESS=1 cargo test -p overslab-tests fresh` and commit what it writes";
    assert!(bless || stale.is_empty(), "these files lag behind the table: {stale:?}; {cure}");
}
