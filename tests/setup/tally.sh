# Runs the parts one after the other, whatever becomes of those before, and adds up what their runners counted.

tally_passed=0
tally_failed=0
tally_lines=()

# part NAME WHAT FUNCTION: one line on what is done, its output to the screen and to a log, its time.
part() {
    local name=$1 what=$2 action=$3 log code began=$SECONDS
    step "$what"
    log=$(log_file "$name")
    set +e
    (
        set -e
        "$action"
    ) </dev/null 2>&1 | tee "$log"
    code=${PIPESTATUS[0]}
    set -e
    count "$name" "$log" "$code" $((SECONDS - began))
}

# The counts as cargo, pytest and the C runner print them. A part that counts nothing is itself one check, and
# one that failed without a failed test (it did not compile, say) is one failure.
count() {
    local name=$1 log=$2 code=$3 seconds=$4 passed failed
    passed=$(sum_before passed "$log")
    failed=$(sum_before '\(failed\|errors\?\)' "$log")
    if [[ $code != 0 && $failed == 0 ]]; then
        failed=1
    elif [[ $code == 0 && $passed == 0 ]]; then
        passed=1
    fi
    tally_passed=$((tally_passed + passed))
    tally_failed=$((tally_failed + failed))
    tally_lines+=("$(printf '%-9s %6d passed %4d failed %5d s' "$name" "$passed" "$failed" "$seconds")")
}

# Adds the numbers that stand before a word in summary lines: cargo's, pytest's, and plain ones.
sum_before() {
    sed 's/\x1b\[[0-9;]*m//g' "$2" |
        sed -n '/^test result: /p; /^=* *[0-9].* in [0-9.]*s/p; /^[0-9]* passed, [0-9]* failed$/p' |
        { grep -o "[0-9]* $1" || true; } | awk '{ total += $1 } END { print total + 0 }'
}

# The closing lines; fails when anything has failed.
close_tally() {
    printf '\n'
    printf '%s\n' "${tally_lines[@]}"
    printf '\n%d passed, %d failed\n' "$tally_passed" "$tally_failed"
    [[ $tally_failed == 0 ]]
}
