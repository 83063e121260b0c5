//! The forms of call that the tests of the C library need: Rust calls a loaded function only by a type known when it is
//! compiled, so the types come from the header.

use super::{Generated, header};
use crate::c_header::{Header, Prototype};
use std::collections::BTreeSet;
use std::fmt::Write;

/// The list of forms in the header with the test-only operations.
#[must_use]
pub fn files(headers: &[Generated]) -> Vec<Generated> {
    let specimen = headers.iter().filter(|file| file.path == header::SPECIMEN);
    specimen.map(|file| Generated::new("tests/bindings/c_signatures.rs", list(&file.text))).collect()
}

fn list(header: &str) -> String {
    let header = Header::read(header);
    let signatures: BTreeSet<String> = header.functions.iter().map(Prototype::signature).collect();
    let mut text = String::from(
        "//! The forms of call in the C header: `d` a double, `i` an int, `p` a pointer, `v` nothing.\n//!\n\
         //! Made from the header: run `cargo run -p overslab-tests`.\n\nsuper::c_library::signatures! {\n",
    );
    for signature in signatures {
        let letters: Vec<String> = signature.chars().map(String::from).collect();
        let _ = writeln!(text, "    \"{signature}\": {};", letters.join(" "));
    }
    text.push_str("}\n");
    text
}
