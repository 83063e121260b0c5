# The Rust code: its form, its tests, its documentation.

check_format() { cargo fmt --all --check; }

# The test-only operations of the engine go through every binding in a test run. Every cargo call here names the
# same features, so that nothing is compiled twice.
specimen=(--features overslab-ffi/specimen)
specimen_everywhere=(--features overslab-ffi/specimen,overslab-python/specimen)

# The Python crate is compiled here too, but as a module that finds Python's own symbols when it is loaded; so
# it cannot be linked into a test program, and its tests are those in tests/python.
check_lints() { cargo clippy --locked --workspace --all-targets "${specimen_everywhere[@]}" -- -D warnings; }

# The same for what is shipped, which has no test-only operations.
check_shipped_lints() { cargo clippy --locked -p overslab -p overslab-ffi -p overslab-python -p overslab-examples -- -D warnings; }

run_rust_tests() {
    OVERSLAB_LIBRARY="$PWD/build/lib/liboverslab.so.0" \
        timeout --kill-after=10 2400 cargo test --locked --workspace --exclude overslab-python "${specimen[@]}" --no-fail-fast
}

check_docs() { RUSTDOCFLAGS="-D warnings" cargo doc --locked --workspace --no-deps "${specimen_everywhere[@]}"; }
