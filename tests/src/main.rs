//! Writes every generated file: `cargo run -p overslab-tests`. The tests can do it as well, see `fresh.rs`, but only while all
//! that is generated compiles.

use overslab_tests::generate::{files, root};
use std::fs;

fn main() -> std::io::Result<()> {
    for file in files() {
        let path = root().join(&file.path);
        if fs::read_to_string(&path).ok().as_deref() == Some(file.text.as_str()) {
            continue;
        }
        if let Some(directory) = path.parent() {
            fs::create_dir_all(directory)?;
        }
        fs::write(&path, &file.text)?;
        println!("{}", file.path);
    }
    Ok(())
}
