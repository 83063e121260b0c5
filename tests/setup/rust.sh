# The Rust tool chain is presumed, not installed: choosing one is the developer's business.

ensure_rust() {
    local home_bin="${CARGO_HOME:-$HOME/.cargo}/bin" wanted found
    if ! have cargo && [[ -x $home_bin/cargo ]]; then
        export PATH="$home_bin:$PATH"
    fi
    wanted=$(sed -n 's/^rust-version = "\(.*\)"/\1/p' Cargo.toml)
    have cargo || die "no Rust tool chain: install Rust $wanted or newer with cargo, rustfmt and clippy, then run again"
    found=$(cargo --version | cut -d' ' -f2)
    at_least "$found" "$wanted" || die "Rust $found is too old: $wanted or newer is needed"
    export CARGO_NET_RETRY=${CARGO_NET_RETRY:-5}
    note "Rust $found"
}

# Only the test run needs these two.
ensure_rust_checkers() {
    cargo fmt --version >/dev/null 2>&1 || die "rustfmt is missing: rustup component add rustfmt"
    cargo clippy --version >/dev/null 2>&1 || die "clippy is missing: rustup component add clippy"
}

# at_least FOUND WANTED: dotted numbers.
at_least() { [[ $(printf '%s\n%s\n' "$1" "$2" | sort -V | head -n 1) == "$2" ]]; }

target_dir() { echo "${CARGO_TARGET_DIR:-$PWD/target}"; }
