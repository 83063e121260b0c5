# How the scripts speak: a line for what is being done, one clear line when something cannot go on.

step() { printf '\n== %s\n' "$*"; }
note() { printf '   %s\n' "$*"; }
die() {
    printf 'error: %s\n' "$*" >&2
    exit 1
}
have() { command -v "$1" >/dev/null 2>&1; }

# Where a step keeps its full output.
log_file() {
    mkdir -p build/logs
    echo "build/logs/$1.log"
}
