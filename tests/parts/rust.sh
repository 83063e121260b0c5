# The Rust code: its form, its tests, its documentation.

check_format() { cargo fmt --all --check; }

# The Python crate is compiled here too, but as a module that finds Python's own symbols when it is loaded; so
# it cannot be linked into a test program, and its tests are those in tests/python.
check_lints() { cargo clippy --locked --workspace --all-targets -- -D warnings; }

run_rust_tests() {
    OVERSLAB_LIBRARY="$PWD/build/lib/liboverslab.so.0" \
        timeout --kill-after=10 2400 cargo test --locked --workspace --exclude overslab-python --no-fail-fast
}

check_docs() { RUSTDOCFLAGS="-D warnings" cargo doc --locked --workspace --no-deps; }
