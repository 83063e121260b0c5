# The spreadsheet add-in as a person meets it: packed, installed by an ordinary user, recalculated headlessly.

pack_addin() {
    rm -f build/overslab.oxt build/specimen.oxt
    ffi/calc/pack
    # The test-only operations in an add-in of their own; the library of a test run holds them too.
    ffi/calc/pack tests/specimen/calc build/specimen.oxt
}

run_calc_tests() {
    timeout --kill-after=10 1200 "$(system_python)" -m pytest -q -c tests/calc/pytest.ini --rootdir tests/calc tests/calc
}
