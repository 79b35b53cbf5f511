# Read by try.sh, test.sh and .ci/run, from the checkout's folder: `set_up KIND` makes .venv and installs the locked
# versions of a kind ("", "-test" or "-postgres") and the project. A second time it installs nothing.
# Nothing is written outside the checkout.

say() {
    printf '%s\n' "$*" >&2
}

is_right_version() {
    "$1" -c 'import sys; sys.exit(not (3, 11) <= sys.version_info[:2] <= (3, 13))' >/dev/null 2>&1
}

find_python() {
    for candidate in ${PYTHON:-} python3.13 python3.12 python3.11 python3; do
        if command -v "$candidate" >/dev/null 2>&1 && is_right_version "$candidate"; then
            printf '%s\n' "$candidate"
            return 0
        fi
    done
    found=$(python3 -c 'import sys; print("%d.%d" % sys.version_info[:2])' 2>/dev/null) || found=""
    if [ -n "$found" ]; then
        say "Reminders needs Python 3.11, 3.12 or 3.13, and this machine's python3 is $found; install one of them beside it."
    else
        say "Reminders needs Python 3.11, 3.12 or 3.13, and this machine has no python3; install one of them."
    fi
    return 1
}

make_venv() {
    python=$(find_python) || exit 1
    if ! "$python" -c 'import ensurepip, venv' >/dev/null 2>&1; then
        version=$("$python" -c 'import sys; print("%d.%d" % sys.version_info[:2])')
        say "This Python cannot make a .venv; install what it lacks, on Debian with: apt install python$version-venv"
        exit 1
    fi
    say "Making .venv with $("$python" --version) ..."
    "$python" -m venv --clear .venv
}

# What an installation was made from: if any of it differs, it is made again. A .venv does not survive being moved.
stamp_of() {
    pwd
    cksum "deploy/requirements$1.txt" pyproject.toml
}

is_current() {
    [ -f ".venv/installed$1" ] && [ "$(cat ".venv/installed$1")" = "$(stamp_of "$1")" ]
}

run_pip() {
    TMPDIR="$(pwd)/.venv/tmp" .venv/bin/python -m pip --disable-pip-version-check install --quiet --quiet --no-cache-dir "$@"
}

install_locked() {
    mkdir -p .venv/tmp
    say "Installing $(grep -c '==' "deploy/requirements$1.txt") locked packages ..."
    run_pip -r "deploy/requirements$1.txt"
    run_pip --no-build-isolation --no-deps --editable .
}

set_up() {
    if [ -x .venv/bin/python ] && is_current "$1"; then
        return 0
    fi
    if ! is_right_version .venv/bin/python || { [ -f .venv/folder ] && [ "$(cat .venv/folder)" != "$(pwd)" ]; }; then
        make_venv
    fi
    rm -f .venv/installed*
    install_locked "$1"
    pwd >.venv/folder
    case $1 in
        -postgres) stamp_of -postgres >.venv/installed-postgres; stamp_of -test >.venv/installed-test ;;
        -test) stamp_of -test >.venv/installed-test ;;
    esac
    stamp_of "" >.venv/installed
}
