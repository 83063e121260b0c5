# The virtual environment `.venv`: pinned packages, and the built wheel.

venv_python() { echo "$PWD/.venv/bin/python"; }

# The first interpreter that is new enough and can make a virtual environment, or nothing.
base_python() {
    local name
    for name in ${OVERSLAB_PYTHON:-} python3 python3.13 python3.12 python3.11 python3.10 /usr/bin/python3; do
        if have "$name" && "$name" -c 'import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 10))' 2>/dev/null; then
            "$name" -c 'import sys; print(sys.executable)'
            return
        fi
    done
}
has_base_python() { [[ -n $(base_python) ]]; }

# What the environment is made from: when this text changes it is made again.
venv_recipe() {
    echo "$PWD" "$1" "$("$1" --version)"
    sha256sum <tests/python/requirements.txt
}

ensure_venv() {
    local python recipe
    python=$(base_python)
    recipe=$(venv_recipe "$python")
    if [[ -f .venv/recipe && $(<.venv/recipe) == "$recipe" ]] && "$(venv_python)" -c '' 2>/dev/null; then
        note "Python packages in .venv: unchanged"
        return
    fi
    note "Python packages: making .venv with $("$python" --version)"
    rm -rf .venv
    "$python" -m venv .venv
    "$(venv_python)" -m pip install --quiet --disable-pip-version-check --retries 5 --requirement tests/python/requirements.txt
    echo "$recipe" >.venv/recipe
}

# pyo3 is compiled anew whenever its settings change, so every cargo call is given those that maturin sets.
share_pyo3_settings() {
    local config
    export PYO3_BUILD_EXTENSION_MODULE=1 PYO3_PYTHON PYO3_ENVIRONMENT_SIGNATURE
    PYO3_PYTHON=$(venv_python)
    PYO3_ENVIRONMENT_SIGNATURE=$("$PYO3_PYTHON" -c \
        'import struct, sys; print("{0.name}-{1.major}.{1.minor}-{2}bit".format(sys.implementation, sys.version_info, 8 * struct.calcsize("P")))')
    for config in "$(target_dir)"/maturin/pyo3-config-*-abi3.txt; do
        if [[ -f $config ]]; then
            export PYO3_CONFIG_FILE=$config
        fi
    done
}
