# System packages. Each need is told by what it provides, so that a machine which has it from elsewhere is
# left alone; the package list is fetched only when something is missing, and once.

# The LibreOffice program folder, or nothing.
office_program() {
    local starter
    starter=$(command -v soffice) || return 0
    dirname "$(readlink -f "$starter")"
}

# The interpreter that can `import uno`: the system's own, never that of a virtual environment.
system_python() { echo "${OVERSLAB_SYSTEM_PYTHON:-/usr/bin/python3}"; }

has_c_compiler() { have cc && have c++ && have readelf; }
has_calc() { have soffice && [[ -e $(office_program)/libsclo.so ]]; }
has_python_macros() { have soffice && [[ -e $(office_program)/pythonscript.py ]]; }
has_uno() { "$(system_python)" -c 'import uno' >/dev/null 2>&1; }
has_system_pytest() { "$(system_python)" -c 'import pytest' >/dev/null 2>&1; }
has_idl_compiler() {
    have unoidl-write || [[ -x $(office_program)/../sdk/bin/unoidl-write || -x $(office_program)/unoidl-write ]]
}

# check -> packages that bring it
declare -A packages_for=(
    [has_c_compiler]="build-essential"
    [has_base_python]="python3 python3-venv"
    [has_calc]="libreoffice-calc"
    [has_python_macros]="libreoffice-script-provider-python"
    [has_uno]="python3-uno"
    [has_system_pytest]="python3-pytest"
    [has_idl_compiler]="libreoffice-dev"
)

# ensure_packages CHECK...: installs what the failing checks need, then asks them again.
ensure_packages() {
    local check missing=()
    for check in "$@"; do
        "$check" || missing+=(${packages_for[$check]})
    done
    if [[ ${#missing[@]} == 0 ]]; then
        note "system packages: all there"
        return
    fi
    install_packages "${missing[@]}"
    for check in "$@"; do
        "$check" || die "after installing ${packages_for[$check]}, $check still says no"
    done
}

install_packages() {
    local command="apt-get install --no-install-recommends $*"
    have apt-get || die "install these by your system's own means, then run again: $*"
    local root=()
    if [[ $(id -u) != 0 ]]; then
        have sudo && sudo -n true 2>/dev/null || die "packages are missing and only root can install them; ask for: $command"
        root=(sudo -n)
    fi
    note "installing: $*"
    local log options=(-q -y -o DPkg::Lock::Timeout=300 -o Acquire::Retries=3)
    log=$(log_file packages)
    "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get "${options[@]}" update >"$log" 2>&1 &&
        "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get "${options[@]}" install --no-install-recommends "$@" >>"$log" 2>&1 ||
        {
            tail -n 40 "$log" >&2
            die "could not install: $*"
        }
}
