# The C library as a C program meets it: header, shared library, test programs, example.

# The second folder has the header of the test-only operations.
c_flags=(-Wall -Wextra -pedantic -Werror -I ffi/include -I tests/specimen)

# Cargo names the library after its crate; here it gets the name and the major version that it is shipped with.
# The tests are named in the same call so that features, and with them all that is compiled, are those of `cargo test`.
build_c_library() {
    rm -rf build/lib
    cargo build --locked -p overslab-ffi -p overslab-tests -p overslab-examples --lib --bins --examples "${specimen[@]}"
    install -D -m 755 "$(target_dir)/debug/liboverslab_ffi.so" build/lib/liboverslab.so.0
    ln -sfn liboverslab.so.0 build/lib/liboverslab.so
    note "build/lib/liboverslab.so.0"
}

run_c_tests() {
    local passed=0 failed=0 check source
    rm -rf build/c
    mkdir -p build/c
    local checks=(carries_its_name needs_only_the_system)
    for check in "${checks[@]}" "header_compiles cc -x c -std=c89" "header_compiles cc -x c -std=c99" \
        "header_compiles cc -x c -std=c2x" "header_compiles c++ -x c++ -std=c++98" "header_compiles c++ -x c++ -std=c++17"; do
        verdict "$check" $check
    done
    for source in tests/c/*.c examples/boat_store.c; do
        verdict "$source" c_program "$source"
    done
    printf '%d passed, %d failed\n' "$passed" "$failed"
    [[ $failed == 0 ]]
}

# verdict TITLE COMMAND...: runs one check and counts it in the caller's `passed` and `failed`.
verdict() {
    local title=$1
    shift
    if "$@"; then
        passed=$((passed + 1))
        note "ok      $title"
    else
        failed=$((failed + 1))
        note "FAILED  $title"
    fi
}

# A program linked with it asks for this name, so that two majors can lie side by side.
carries_its_name() { readelf -d build/lib/liboverslab.so.0 | grep -q 'SONAME.*\[liboverslab\.so\.0\]'; }

needs_only_the_system() {
    local others
    others=$(readelf -d build/lib/liboverslab.so.0 | sed -n 's/.*(NEEDED).*\[\(.*\)\]/\1/p' |
        grep -vE '^(lib(c|m|gcc_s|pthread|dl|rt)\.so\.[0-9]+|ld-linux-.*)$') || return 0
    echo "needs also: $others"
    return 1
}

header_compiles() { echo '#include "overslab.h"' | "$@" "${c_flags[@]}" -fsyntax-only -; }

# Compiles one file against the shared library and runs it with an empty environment; it tells by its status.
c_program() {
    local source=$1 program
    program=$(basename "$source")
    program="build/c/${program//./_}"
    cc -std=c99 "${c_flags[@]}" -O1 -g "$source" -o "$program" -L build/lib -loverslab -lm \
        -Wl,-rpath,"$PWD/build/lib" || return 1
    env -i timeout --kill-after=5 120 "$program" </dev/null || {
        echo "$source ended with status $?"
        return 1
    }
}
