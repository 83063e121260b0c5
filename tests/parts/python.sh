# The wheel as a Python program meets it: built by maturin, installed into .venv, typed.

# Built in the profile the tests use; a released wheel differs in the profile only.
build_wheel() {
    rm -rf build/wheels
    VIRTUAL_ENV=$PWD/.venv PATH="$PWD/.venv/bin:$PATH" "$(venv_python)" -m maturin build --locked --profile dev --features specimen \
        --manifest-path python/Cargo.toml --compatibility linux --out build/wheels
    "$(venv_python)" -m pip install --quiet --disable-pip-version-check --no-deps --force-reinstall build/wheels/*.whl
}

run_python_tests() {
    OVERSLAB_LIBRARY="$PWD/build/lib/liboverslab.so.0" \
        timeout --kill-after=10 1200 "$(venv_python)" -m pytest -q -p no:cacheprovider tests/python
}
