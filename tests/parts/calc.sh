# The spreadsheet add-in as a person meets it: packed, installed by an ordinary user, recalculated headlessly.

pack_addin() {
    rm -f build/overslab.oxt
    present ffi/calc || return $absent
    "$(system_python)" tests/calc/pack.py ffi/calc build/overslab.oxt build/lib/liboverslab.so.0
}

run_calc_tests() {
    timeout --kill-after=10 1200 "$(system_python)" -m pytest -q -c tests/calc/pytest.ini --rootdir tests/calc tests/calc
}
