//! The header as compilers of C and C++ see it, and a C program that uses every kind of port.

use super::c_library::library_path;
use overslab_tests::generate::{header, root};
use std::path::Path;
use std::process::Command;

const STRICT: &[&str] = &["-Wall", "-Wextra", "-pedantic", "-Werror"];

/// Runs a command; its words are shown where it fails.
fn run(command: &mut Command) -> String {
    let output = command.output().unwrap_or_else(|error| panic!("{command:?}: {error}"));
    let (said, warned) = (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    assert!(output.status.success() && warned.is_empty(), "{command:?}: {}\n{said}{warned}", output.status);
    said.into_owned()
}

fn compiles(compiler: &str, language: &str, standard: &str) {
    for path in [header::SHIPPED, header::SPECIMEN] {
        let mut command = Command::new(compiler);
        command.args(["-x", language, &format!("-std={standard}"), "-fsyntax-only"]).args(STRICT);
        run(command.arg(root().join(path)));
    }
}

#[test]
fn the_header_is_c() {
    for standard in ["c89", "c99", "c11", "c2x"] {
        compiles("cc", "c", standard);
    }
}

#[test]
fn the_header_is_cpp() {
    for standard in ["c++98", "c++17"] {
        compiles("c++", "c++", standard);
    }
}

/// A folder for what a test builds, beside the test program.
fn folder(name: &str) -> std::path::PathBuf {
    let folder = library_path().with_file_name(format!("c_{name}"));
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

/// Compiles a source against the library and runs it in an empty environment; it must end well and say nothing on the error
/// stream.
fn builds_and_runs(compiler: &[&str], source: &Path, name: &str) {
    let folder = folder(name);
    // The library is asked for by the name it is shipped with.
    std::fs::copy(library_path(), folder.join("liboverslab.so.0")).unwrap();
    let program = folder.join(name);
    let mut command = Command::new(compiler[0]);
    command.args(&compiler[1..]).args(STRICT).arg("-I").arg(root().join("tests/specimen"));
    command.arg(source).arg("-o").arg(&program).arg("-L").arg(&folder).arg("-l:liboverslab.so.0");
    run(command.arg(format!("-Wl,-rpath,{}", folder.display())).arg("-lm"));
    let said = run(Command::new(&program).env_clear());
    assert!(said.trim_end().ends_with("0 failed"), "{said}");
}

#[cfg(target_os = "linux")]
#[test]
fn a_c_program_uses_every_kind_of_port() {
    builds_and_runs(&["cc", "-std=c99"], &root().join("tests/c/smoke.c"), "smoke_c");
}

#[cfg(target_os = "linux")]
#[test]
fn the_same_program_is_cpp() {
    builds_and_runs(&["c++", "-x", "c++", "-std=c++17"], &root().join("tests/c/smoke.c"), "smoke_cpp");
}
