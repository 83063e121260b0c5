//! The C header, made by cbindgen from the sources of the C library.
#![expect(clippy::expect_used, reason = "a generator stops where it cannot read or write")]

use super::{Generated, c, root};
use std::fs;
use std::path::PathBuf;

/// The header that ships.
pub const SHIPPED: &str = "ffi/include/overslab.h";
/// The header with the test-only operations.
pub const SPECIMEN: &str = "tests/specimen/overslab_specimen.h";

/// The shipped header, and the one with the test-only operations.
#[must_use]
pub fn files() -> Vec<Generated> {
    let generated = c::files();
    let (shipped, specimen): (Vec<&Generated>, Vec<&Generated>) =
        generated.iter().partition(|file| file.path != c::SPECIMEN);
    vec![
        Generated::new(SHIPPED, header(&shipped)),
        Generated::new(SPECIMEN, header(&[shipped, specimen].concat())),
    ]
}

/// The header of the hand-written files and these generated ones. They are read as the generator makes them now, not as they
/// lie in the tree, so that one run brings everything up to date.
fn header(generated: &[&Generated]) -> String {
    let directory = std::env::temp_dir().join(format!("overslab-header-{}", std::process::id()));
    fs::create_dir_all(&directory).expect("a temporary directory");
    let mut builder = cbindgen::Builder::new().with_config(config());
    for path in hand_written() {
        builder = builder.with_src(path);
    }
    for (place, file) in generated.iter().enumerate() {
        let path = directory.join(format!("{place}.rs"));
        fs::write(&path, &file.text).expect("a temporary file");
        builder = builder.with_src(path);
    }
    let mut text = Vec::new();
    builder.generate().expect("sources that cbindgen reads").write(&mut text);
    fs::remove_dir_all(&directory).expect("the temporary directory again");
    clean(&String::from_utf8(text).expect("a header in UTF-8"))
}

/// The files with exports that belong to no operation.
fn hand_written() -> Vec<PathBuf> {
    let entries = fs::read_dir(root().join("ffi/src")).expect("the sources of the C library");
    let mut paths: Vec<PathBuf> = entries.map(|entry| entry.expect("an entry").path()).collect();
    // From `lib.rs` cbindgen would follow the modules on its own.
    paths.retain(|path| {
        path.extension().is_some_and(|extension| extension == "rs") && !path.ends_with("lib.rs")
    });
    paths.sort();
    paths
}

fn config() -> cbindgen::Config {
    cbindgen::Config {
        language: cbindgen::Language::C,
        header: Some(HEAD.trim_end().to_owned()),
        include_guard: Some("OVERSLAB_H".to_owned()),
        no_includes: true,
        cpp_compat: true,
        style: cbindgen::Style::Type,
        documentation: true,
        documentation_style: cbindgen::DocumentationStyle::Doxy,
        line_length: 110,
        ..cbindgen::Config::default()
    }
}

/// What every reader of the header must know once.
const HEAD: &str = "/*
 * liboverslab: computation engine for pouring new concrete floors over old ones.
 *
 * Made from the sources; do not edit.
 *
 * Every function that can fail gives a status: 0 is success, other numbers are the constants OVS_... below; a function
 * that makes something gives NULL instead and writes the status to `status`, which may be NULL.
 *
 * Numbers are double in the unit that the argument's name ends with; counts and words are int, a word by its constant.
 * Inputs come first, by value or const; outputs follow. A pointer may be NULL only where it is said. On failure outputs
 * stay as they were, but a text buffer is emptied and bad elements of an array become NaN (int: -1).
 *
 * `msg`, `msg_len`: a buffer for one line of at most 200 bytes of ASCII that says which argument is refused, what was given
 * and what is allowed; empty on success; NULL, 0 where it is not wanted. The reason in full comes from the function
 * whose name ends in _why, called with the same inputs.
 *
 * Text comes in as UTF-8 with its length in bytes and no zero byte. Text goes out into a buffer of the caller, always
 * terminated and never cut inside a character; `needed` (may be NULL) gets the bytes needed with the terminator. A
 * NULL buffer of length 0 asks for `needed` alone. A text that is of no use cut short gives OVS_BUFFER_SHORT.
 *
 * Pointers to ovs_... types are made by the library and freed by the _free function of their type, once; free takes NULL.
 * What they point to never changes, so threads may share it. The library keeps no state between calls, starts no threads,
 * reads no file, environment or clock, and prints nothing.
 *
 * Beside the statuses listed with it, any function may give OVS_NULL_POINTER, OVS_LENGTH_NEGATIVE, or OVS_INTERNAL for a
 * fault of the library itself.
 */
";

/// What cbindgen writes is C99 in two places; block comments make it C89.
fn clean(text: &str) -> String {
    let mut lines = String::with_capacity(text.len());
    for line in text.lines() {
        let tail = ["#endif", "}"].into_iter().find_map(|code| {
            line.strip_prefix(code)?
                .trim_start()
                .strip_prefix("// ")
                .map(|comment| format!("{code} /* {comment} */"))
        });
        lines.push_str(tail.as_deref().unwrap_or(line).trim_end());
        lines.push('\n');
    }
    lines
}
